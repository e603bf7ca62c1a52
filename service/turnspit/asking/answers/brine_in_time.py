"""Whether there is still time to brine before a dinner, by the plan itself."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace
from typing import TYPE_CHECKING

from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.answers.topics import topic_of
from turnspit.asking.answers.wishes import dinner_of
from turnspit.errors import TurnspitError
from turnspit.message import Message, Value

if TYPE_CHECKING:
    from turnspit.brine import BrinePlan


def in_time(enquiry: Enquiry, plan: BrinePlan) -> tuple[Message, ...]:
    """By when the roast goes into the brine, or that it is too late for one; nothing where that is not asked."""
    if topic_of(enquiry.line, "brine_asked") != "late" or enquiry.said("serve_at") is None or not plan.allowed:
        return ()
    from turnspit.planning import plan_dinner

    dinner = dinner_of(enquiry)
    wished = replace(dinner, brine=replace(dinner.brine, wanted=True))
    with suppress(TurnspitError):
        timetable = plan_dinner(wished, enquiry.now)
        into = next((task for task in timetable.tasks if task.id == "brine_in"), None)
        said: dict[str, Value] = {
            "hours_min": plan.hours_low * 60,
            "oven_in": timetable.oven_in_at or timetable.serve_at,
        }
        if into is None:
            return (Message("asking-brine-too-late", **said), Message("asking-brine-late-instead"))
        return (Message("asking-brine-in-time", at=into.start, **said),)
    return ()
