"""Done before its time: the rest under foil, then the heat that keeps it safe, or the two-hour clock."""

from __future__ import annotations

from turnspit.asking.answers.answer import Answer
from turnspit.asking.answers.taken import Taken
from turnspit.message import Message
from turnspit.reference import caution


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
