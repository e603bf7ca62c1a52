"""Turns that ask about the answer itself: why, what was assumed, what is held of the conversation, starting over."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from datetime import datetime
from typing import Any

from turnspit.asking.answers import Answer
from turnspit.message import Message, Value

WORDS = {
    "roast.kind": "roast",
    "roast.state": "asking-word",
    "brine.salt_kind": "brine-salt",
    "units": "asking-word",
}
"""Paths whose value is one of a few names, with the beginning of the key that puts the name into words."""


def why(answer: Answer) -> Answer:
    """The reasoning behind the answer, with its numbers and sources, in the place of its lines."""
    return replace(answer, lines=answer.reasons, question=None, choices=(), asks="")


def assumptions(answer: Answer) -> Answer:
    """What was taken for granted, as lines, each open to one reply."""
    if not answer.assumptions:
        return replace(answer, headline=Message("asking-assumed-nothing"), lines=(), assumptions=())
    headline = Message("asking-assumed-headline", count=len(answer.assumptions))
    return replace(answer, headline=headline, lines=answer.assumptions)


def started_over() -> Answer:
    """An empty table."""
    examples = (Message("asking-next-plan"), Message("asking-next-size"), Message("asking-next-help"))
    return Answer(headline=Message("asking-started-over"), next=examples)


def shown(answer: Answer, understood: Mapping[str, Any], assumed: Mapping[str, Any]) -> Answer:
    """All that the conversation holds: what was said first, then what was assumed."""
    said = [Message("asking-shown-said", what=what) for what in _values(understood)]
    supposed = [Message("asking-shown-assumed", what=_value(path, value)) for path, value in assumed.items()]
    if not said and not supposed:
        return replace(started_over(), headline=Message("asking-shown-nothing"))
    return replace(answer, headline=Message("asking-shown-headline"), lines=(*said, *supposed))


def _values(understood: Mapping[str, Any], above: str = "") -> Iterator[Message]:
    for name, value in understood.items():
        path = f"{above}{name}"
        if isinstance(value, Mapping):
            yield from _values(value, f"{path}.")
        elif not isinstance(value, list | tuple):
            yield _value(path, value)


def _value(path: str, value: Any) -> Message:
    return Message(f"asking-value-{path.replace('.', '-')}", value=_worded(path, value))


def _worded(path: str, value: Any) -> Value:
    if isinstance(value, bool):
        return Message("asking-yes" if value else "asking-no")
    if path in WORDS:
        return Message(f"{WORDS[path]}-{value}")
    if path.endswith("_at") or path == "reading.at":
        return value if isinstance(value, datetime) else datetime.fromisoformat(value)
    return value if isinstance(value, int | float) else str(value)
