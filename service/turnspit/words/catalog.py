"""The texts themselves: found by key, formatted for one reader."""

from __future__ import annotations

from collections.abc import Callable
from contextvars import ContextVar
from functools import cache, partial
from importlib.resources import files
from typing import Any, get_args

from fluent.runtime import FluentBundle, FluentResource
from fluent.syntax import ast

from turnspit.message import Message
from turnspit.words.measures import FUNCTIONS
from turnspit.words.reader import Language, Reader

LANGUAGES: tuple[Language, ...] = get_args(Language)

_reading: ContextVar[Reader] = ContextVar("reading")


def say(message: Message, reader: Reader) -> str:
    """The text of `message` for `reader`. Raises KeyError without a text, ValueError for a value it lacks."""
    room = message.key.partition("-")[0]
    bundle = _bundle(reader.language, room)
    values: dict[str, Any] = {}
    for name, value in message.values.items():
        values |= _spoken(name, value, reader) if isinstance(value, Message) else {name: value}
    pattern = bundle.get_message(message.key).value if bundle.has_message(message.key) else None
    if pattern is None:
        raise KeyError(f"{message.key} has no text in words/{reader.language}/{room}.ftl")
    token = _reading.set(reader)
    try:
        text, problems = bundle.format_pattern(pattern, values)
    finally:
        _reading.reset(token)
    if problems:
        raise ValueError(f"{message.key} ({reader.language}): {problems}")
    return str(text)


def _spoken(name: str, value: Message, reader: Reader) -> dict[str, str]:
    """A value that is a text itself, with its attributes beside it: `roast` "pavo", `roast_the` "el pavo"."""
    bundle = _bundle(reader.language, value.key.partition("-")[0])
    attributes = bundle.get_message(value.key).attributes if bundle.has_message(value.key) else {}
    told = {f"{name}_{each}": str(bundle.format_pattern(pattern)[0]) for each, pattern in attributes.items()}
    return {name: say(value, reader), **told}


def keys(language: Language) -> frozenset[str]:
    """All keys that have a text in `language`."""
    folder = files("turnspit.words") / language
    found: set[str] = set()
    for file in folder.iterdir():
        if file.name.endswith(".ftl"):
            entries = FluentResource(file.read_text(encoding="utf-8")).body
            found |= {entry.id.name for entry in entries if isinstance(entry, ast.Message)}
    return frozenset(found)


@cache
def _bundle(language: Language, room: str) -> FluentBundle:
    source = files("turnspit.words") / language / f"{room}.ftl"
    if not source.is_file():
        raise KeyError(f"there is no file words/{language}/{room}.ftl")
    bundle = FluentBundle(
        [{"en": "en-US", "es": "es"}[language]],
        functions=_functions(),
        use_isolating=False,
    )
    bundle.add_resource(FluentResource(source.read_text(encoding="utf-8")))
    return bundle


def _functions() -> dict[str, Any]:
    return {name: partial(_for_the_reader, write) for name, write in FUNCTIONS.items()}


def _for_the_reader(write: Callable[..., str], *values: Any, **options: Any) -> str:
    return write(*values, _reading.get(), **{name: str(option) for name, option in options.items()})
