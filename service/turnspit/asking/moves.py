"""Turns that ask about the answer itself: why, what was assumed, what is held of the conversation, starting over."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from datetime import datetime
from typing import Any

from turnspit.asking.answers import Answer
from turnspit.asking.answers.answer import once
from turnspit.message import Message, Value

WORDS = {
    "roast.kind": "roast",
    "roast.state": "asking-word",
    "brine.salt_kind": "brine-salt",
    "units": "asking-word",
}
"""Paths whose value is one of a few names, with the beginning of the key that puts the name into words."""


REASONS = 3
SOURCES = ("asking-why-sources", "asking-why-source")


def why(answer: Answer, explain: bool = False) -> Answer:
    """The reasons that weigh most, with their numbers, in the place of the lines, then the sources; all reasons where
    an explanation was asked for."""
    told = [reason for reason in answer.reasons if reason.key not in SOURCES]
    sources = [reason for reason in answer.reasons if reason.key in SOURCES]
    lines = once([*(told if explain else told[:REASONS]), *sources])
    following = tuple(message for message in answer.next if message.key != "asking-next-why")
    return replace(
        answer, lines=lines, question=None, choices=(), asks="", next=(*following, Message("asking-next-assumed"))
    )


def as_before(answer: Answer) -> Answer:
    """What a line that should change something, of which nothing could be made, leaves as it was."""
    return replace(answer, headline=Message("asking-as-before", answer=answer.headline))


def thanked() -> Answer:
    """A thank-you is answered in kind, and the talk goes on where it stood."""
    examples = (Message("asking-next-carve"), Message("asking-next-leftovers"), Message("asking-next-help"))
    return Answer(headline=Message("asking-thanked"), next=examples)


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
