"""What a line says, read in the light of the conversation before it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from turnspit.asking.contract import Intent, Trace, Understood

Move = Literal["ask", "amend", "why", "assumptions", "start_over", "show"]


@dataclass(frozen=True, slots=True)
class Reading:
    """The reading of one line.

    `understood` is already merged with the conversation (keys accumulate until the subject changes). `move` tells
    what kind of turn it is: a new question, an amendment of the last one ("make it 20 lb"), or a question about the
    answer itself. `corrections` are spelling corrections that could change the meaning. `ambiguous` is the path that
    has to be asked back ("" for none) with `choices` as lines that would settle it.
    """

    intents: tuple[Intent, ...]
    understood: Understood
    move: Move = "ask"
    language: Literal["en", "es"] = "en"
    units: Literal["us", "metric"] | None = None
    clock: Literal["12h", "24h"] | None = None
    traces: tuple[Trace, ...] = ()
    corrections: tuple[tuple[str, str], ...] = ()
    ambiguous: str = ""
    choices: tuple[str, ...] = ()
