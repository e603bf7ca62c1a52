"""What every answer module takes and gives."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from turnspit.asking.contract import Understood
from turnspit.message import Caution, Message
from turnspit.planning import Kitchen
from turnspit.words import Reader


@dataclass(frozen=True, slots=True)
class Enquiry:
    """One intent to be answered."""

    understood: Understood
    reader: Reader
    now: datetime
    kitchen: Kitchen | None = None
    text: str = ""


@dataclass(frozen=True, slots=True)
class Answer:
    """An answer before it is put into words. `reasons` is what "why?" gives; `assumed` holds, by path, what was taken
    for granted; `asks` is the path of an open question."""

    headline: Message
    lines: tuple[Message, ...] = ()
    reasons: tuple[Message, ...] = ()
    assumptions: tuple[Message, ...] = ()
    assumed: Mapping[str, Any] = field(default_factory=dict)
    cautions: tuple[Caution, ...] = ()
    question: Message | None = None
    choices: tuple[Message, ...] = ()
    asks: str = ""
    next: tuple[Message, ...] = ()
    data: Mapping[str, Any] = field(default_factory=dict)
