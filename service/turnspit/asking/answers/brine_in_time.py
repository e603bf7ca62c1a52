"""Whether there is still time to brine before a dinner, by the plan itself."""

from __future__ import annotations

import re
from contextlib import suppress
from dataclasses import replace
from typing import TYPE_CHECKING

from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.answers.topics import topic_of
from turnspit.asking.answers.wishes import dinner_of
from turnspit.asking.clean import clean
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


_UNTIL = re.compile(r"\b(?:till|til|until|hasta)\b")
_IN_IT = re.compile(r"\b(?:ago|since|been in|has been|already|hace|lleva|desde)\b")


def with_what_is_to_come(enquiry: Enquiry) -> Enquiry:
    """`put it in the brine 8 hours ago, can it go till tomorrow noon`: the hours so far with those until then."""
    until, hours, line = enquiry.moment("serve_at"), enquiry.said("brine.hours"), clean(enquiry.line)
    if until is None or hours is None or until <= enquiry.now or not (_UNTIL.search(line) and _IN_IT.search(line)):
        return enquiry
    total = float(hours) + (until - enquiry.now).total_seconds() / 3600
    brine = {**enquiry.said("brine"), "hours": round(total, 2)}
    understood = {name: value for name, value in enquiry.understood.items() if name != "serve_at"}
    return replace(enquiry, understood={**understood, "brine": brine})
