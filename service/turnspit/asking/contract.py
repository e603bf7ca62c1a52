"""The ask contract as values: a line in, a reply out. Field names are stable; fields may be added, none renamed."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, Literal, get_args

from turnspit.message import Severity

Intent = Literal[
    "plan",
    "size",
    "roast_time",
    "thaw",
    "brine",
    "scale",
    "convert",
    "safety",
    "doneness",
    "carve",
    "leftovers",
    "help",
    "unknown",
]
INTENTS: tuple[Intent, ...] = get_args(Intent)
Understood = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class Line:
    """One line a person typed. `now` is aware and in the person's zone; None means "by what the text uses"."""

    text: str
    now: datetime
    units: Literal["us", "metric"] | None = None
    kitchen: Literal["home", "licensed"] | None = None
    explain: bool = False


@dataclass(frozen=True, slots=True)
class Trace:
    """Which words gave which value: the rule's name, the words, the path in `understood` and the value."""

    rule: str
    words: str
    path: str
    value: Any


@dataclass(frozen=True, slots=True)
class Question:
    """One short question asked back, with choices that can be tapped."""

    text: str
    choices: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class SaidCaution:
    """A caution in the reader's words."""

    text: str
    rule: str
    severity: Severity


@dataclass(frozen=True, slots=True)
class Reply:
    """What `POST /v1/ask` gives."""

    conversation: str
    intent: Intent
    intents: tuple[Intent, ...]
    understood: Understood
    headline: str
    lines: tuple[str, ...] = ()
    assumptions: tuple[str, ...] = ()
    cautions: tuple[SaidCaution, ...] = ()
    question: Question | None = None
    next: tuple[str, ...] = ()
    data: Mapping[str, Any] = field(default_factory=dict)

    def document(self) -> dict[str, Any]:
        """The JSON form, as in the contract."""
        return {
            "conversation": self.conversation,
            "intent": self.intent,
            "intents": list(self.intents),
            "understood": dict(self.understood),
            "answer": {"headline": self.headline, "lines": list(self.lines)},
            "assumptions": list(self.assumptions),
            "cautions": [{"text": c.text, "rule": c.rule, "severity": c.severity} for c in self.cautions],
            "question": (
                {"text": self.question.text, "choices": list(self.question.choices)} if self.question else None
            ),
            "next": list(self.next),
            "data": dict(self.data),
        }
