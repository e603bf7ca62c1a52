"""What a conversation holds: what was said, by whom each value was set, and what the last answer rests on."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Literal

from turnspit.asking.contract import Intent, Understood

SetBy = Literal["said", "assumed", "asked"]


@dataclass(frozen=True, slots=True)
class Conversation:
    """One conversation, as a value: each line gives the next one.

    `set_by` maps a path of `understood` ("roast.mass_kg") to who set it; `assumed` holds the values the last answer
    assumed, by path. `pending` is the path an open question asks for, "" without one. `units` are those the lines
    use; `day` (ISO date, "" for none) is a day said without a time, `meal` its meal; `shelved` holds, by path, what
    another subject set aside. `lone` is a bare number of which nothing could be made. `answered` are the words that
    the last answer was about: the question and what amended it. `technique` is the one that the last answer was
    about, `said` the paths that the last line gave. `earlier` are the values that a path had before the one that is
    held, the latest last, and the path that changed last behind the others; `roasts` what was said, by path, of each
    kind that was left for another. `main` are the intents of the dinner that the talk is about, to which it goes back
    from a question asked in between, `main_answered` the words that its last answer was about.
    """

    id: str
    language: Literal["en", "es"] = "en"
    understood: Understood = field(default_factory=dict)
    set_by: Mapping[str, SetBy] = field(default_factory=dict)
    assumed: Mapping[str, Any] = field(default_factory=dict)
    intents: tuple[Intent, ...] = ()
    pending: str = ""
    clock: Literal["12h", "24h"] | None = None
    lines: tuple[str, ...] = ()
    units: Literal["us", "metric"] | None = None
    day: str = ""
    shelved: Understood = field(default_factory=dict)
    answered: str = ""
    lone: float | None = None
    meal: str = ""
    technique: str = ""
    said: tuple[str, ...] = ()
    children: int = 0
    non_eaters: int = 0
    earlier: Mapping[str, Sequence[Any]] = field(default_factory=dict)
    roasts: Mapping[str, Mapping[str, Any]] = field(default_factory=dict)
    main: tuple[Intent, ...] = ()
    main_answered: str = ""

    def document(self) -> dict[str, Any]:
        """The JSON form, for keeping and for showing."""
        return {
            "id": self.id,
            "language": self.language,
            "understood": dict(self.understood),
            "set_by": dict(self.set_by),
            "assumed": dict(self.assumed),
            "intents": list(self.intents),
            "pending": self.pending,
            "clock": self.clock,
            "lines": list(self.lines),
            "units": self.units,
            "day": self.day,
            "shelved": dict(self.shelved),
            "answered": self.answered,
            "lone": self.lone,
            "meal": self.meal,
            "technique": self.technique,
            "said": list(self.said),
            "children": self.children,
            "non_eaters": self.non_eaters,
            "earlier": {path: list(values) for path, values in self.earlier.items()},
            "roasts": {kind: dict(values) for kind, values in self.roasts.items()},
            "main": list(self.main),
            "main_answered": self.main_answered,
        }

    @classmethod
    def from_document(cls, document: Mapping[str, Any]) -> Conversation:
        """The conversation that `document` was made from; keys that an older one lacks take their defaults."""
        known = {name: document[name] for name in cls.__dataclass_fields__ if name in document}
        for name in ("intents", "lines", "said", "main"):
            known[name] = tuple(known.get(name, ()))
        return cls(**known)
