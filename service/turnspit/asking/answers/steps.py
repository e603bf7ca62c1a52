"""Single steps of a plan: what comes next, and what can be done on the days before."""

from __future__ import annotations

from typing import TYPE_CHECKING

from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.answers.topics import topic_of
from turnspit.message import Caution, Message
from turnspit.reference import caution

if TYPE_CHECKING:
    from turnspit.planning import Timetable

SHOWN = 4


def asked(enquiry: Enquiry) -> str:
    """ "next" or "ahead" where the line asks for that alone, else ""."""
    return topic_of(enquiry.line, "steps")


def next_steps(enquiry: Enquiry, timetable: Timetable) -> tuple[Message, ...]:
    """What comes next, the first as the headline."""
    coming = [task for task in timetable.tasks if task.end > enquiry.now][:SHOWN]
    return tuple(
        Message(
            "asking-plan-first" if not place else "asking-plan-task",
            title=task.title,
            at=max(task.start, enquiry.now),
        )
        for place, task in enumerate(coming)
    )


def before_the_day(enquiry: Enquiry, timetable: Timetable | None) -> tuple[Message, ...]:
    """What the plan itself does on the days before, then what can be made ahead (common practice, no source)."""
    always = (Message("asking-ahead"), Message("asking-ahead-roast"), Message("asking-ahead-not"))
    if timetable is None:
        return always
    day = timetable.serve_at.astimezone(enquiry.now.tzinfo).date()
    early = [task for task in timetable.tasks if task.start.astimezone(enquiry.now.tzinfo).date() < day]
    return (*(Message("asking-plan-task", title=task.title, at=task.start) for task in early), *always)


def ahead_cautions() -> tuple[Caution, ...]:
    """The rules on what waits overnight."""
    return (caution("stuffing-just-before", "warn"), caution("cold-hold", "warn"))
