"""What is to be said, before it is put into words.

Rooms below `words` never write sentences. They give a `Message`: the key of a text and its values in SI units, and
`words.say` renders it for one reader (language, units, clock). So a plan is one value in every language.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from types import MappingProxyType
from typing import Literal, TypeAlias, Union

Value: TypeAlias = Union[str, int, float, datetime, "Message"]
Severity = Literal["info", "warn", "stop"]
SEVERITIES: tuple[Severity, ...] = ("info", "warn", "stop")


class Message:
    """The key of a text in `words`, with the values it speaks of (SI; a value may be a Message too)."""

    __slots__ = ("key", "values")

    key: str
    values: Mapping[str, Value]

    def __init__(self, key: str, /, **values: Value) -> None:
        object.__setattr__(self, "key", key)
        object.__setattr__(self, "values", MappingProxyType(values))

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError(f"a Message is immutable: {name} cannot be set")

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Message) and (self.key, self.values) == (other.key, other.values)

    def __hash__(self) -> int:
        return hash((self.key, tuple(sorted((name, str(value)) for name, value in self.values.items()))))

    def __repr__(self) -> str:
        return f"Message({', '.join([repr(self.key), *(f'{k}={v!r}' for k, v in self.values.items())])})"


@dataclass(frozen=True, slots=True)
class Caution:
    """A warning where someone could be hurt, with the id of the rule it rests on.

    `info` is worth knowing, `warn` wants a decision, `stop` may not be passed and no option turns it off.
    """

    rule: str
    severity: Severity
    message: Message
