"""What a conversation holds: what was said, by whom each value was set, and what the last answer rests on."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any, Literal

from turnspit.asking.contract import Intent, Understood

SetBy = Literal["said", "assumed", "asked"]


@dataclass(frozen=True, slots=True)
class Conversation:
    """One conversation, as a value: each line gives the next one.

    `set_by` maps a path of `understood` ("roast.mass_kg") to who set it; `assumed` holds the values the last answer
    assumed, by path. `pending` is the path an open question asks for, "" without one.
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

    def document(self) -> dict[str, Any]:
        """The JSON form, for keeping and for showing."""
        raise NotImplementedError

    @classmethod
    def from_document(cls, document: Mapping[str, Any]) -> Conversation:
        """The conversation that `document` was made from."""
        raise NotImplementedError
