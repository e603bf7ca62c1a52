"""Done before its time: the rest under foil, then the heat that keeps it safe, or the two-hour clock."""

from __future__ import annotations

from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.taken import Taken
from turnspit.asking.answers.topics import topic_of
from turnspit.message import Message
from turnspit.reference import caution


def is_early(enquiry: Enquiry) -> bool:
    """Whether it is told that the roast is done and dinner is not yet: not asked when it will be."""
    return bool(topic_of(enquiry.text, "done_early")) and not topic_of(enquiry.text, "asks_when")


def early(taken: Taken) -> Answer:
    """The roast is done before its time: tent it, then hold it hot, or start the two-hour clock."""
    return Answer(
        headline=Message("asking-early-headline"),
        lines=(Message("asking-early-hold"), Message("asking-early-carved"), Message("asking-early-clock")),
        reasons=(Message("asking-why-early"),),
        assumptions=taken.assumptions,
        assumed=taken.assumed,
        cautions=(
            caution("hot-hold", "warn"),
            caution("two-hours", "warn"),
            caution("thermometer-decides", "info"),
        ),
        next=(Message("asking-next-hold"), Message("asking-next-carve"), Message("asking-next-why")),
    )
