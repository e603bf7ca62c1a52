"""What is wrong with a value, in the reader's language and units."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from pydantic import ValidationError

from turnspit.errors import OutOfRange, TurnspitError, Unknown
from turnspit.message import Message
from turnspit.words import Reader, say

Problem = Message | TurnspitError | ValidationError

MEASURED = {
    "kg": "mass",
    "c": "temperature",
    "l": "volume",
    "h": "hours",
    "hours": "hours",
    "m": "height",
    "mm": "length",
}
"""By what the last part of a name says it is measured in."""
MOST_KNOWN = 8
LACKING = "(none)"
"""How the core writes a value that nobody gave."""
LEFT_OUT = ("missing", "string_too_short")
_BOUND = re.compile(r"is (above|below) (-?[\d.]+(?:e[+-]?\d+)?)")


@dataclass(frozen=True, slots=True)
class Refused:
    """What a page could not do: `line` says it beside the field `at`, or, of none, above the form ("")."""

    at: str
    line: str


def refused_by(
    error: TurnspitError | ValidationError,
    reader: Reader,
    fields: Iterable[str],
    called: Mapping[str, str] | None = None,
) -> Refused:
    """The refusal beside the one of `fields` it speaks of; `called` are other names the core has for them."""
    names = names_in(error)
    known = {**{name: name for name in fields}, **(called or {})}
    return Refused(next((at for name, at in known.items() if name in names), ""), told_problem(error, reader))


def names_in(error: TurnspitError | ValidationError) -> set[str]:
    """The names of the values that a refusal speaks of."""
    if isinstance(error, ValidationError):
        return {str(part) for part in error.errors()[0]["loc"]}
    return set(error.name.split("."))


def told_problem(problem: Problem, reader: Reader, typed: str = "", like: str = "") -> str:
    """One line: what is wrong with what was `typed`, and what would do; in Spanish, for want of words, an example."""
    if isinstance(problem, Message):
        return say(problem, reader)
    if isinstance(problem, Unknown):
        return _unknown(problem, reader)
    if isinstance(problem, ValidationError) and problem.errors()[0]["type"] in LEFT_OUT:
        return say(Message("form-needed"), reader)
    if isinstance(problem, OutOfRange) and (bound := _BOUND.fullmatch(problem.limit)):
        measured = MEASURED.get(problem.name.rpartition("_")[2], "number")
        told = say(Message(f"form-{bound[1]}-{measured}", limit=float(bound[2])), reader)
        return f"{told} {_way_out(problem)}" if reader.language == "en" else told
    if isinstance(problem, TurnspitError) and problem.value in ("", LACKING):
        told = say(Message("form-needed"), reader)
        return f"{told} {_way_out(problem)}" if reader.language == "en" else told
    if reader.language == "en":
        return _line(problem, typed)
    value = typed or _shown(problem.errors()[0]["input"] if isinstance(problem, ValidationError) else problem.value)
    key = "form-refused-like" if like else "form-refused"
    return say(Message(key, text=_shown(value), like=like), reader)


def _unknown(problem: Unknown, reader: Reader) -> str:
    known = ", ".join(problem.known[:MOST_KNOWN])
    key = "form-unknown" if known else "form-not-known"
    return say(Message(key, text=_shown(problem.value), known=known), reader)


def _line(problem: TurnspitError | ValidationError, typed: str) -> str:
    if isinstance(problem, ValidationError):
        return str(problem.errors()[0]["msg"]).removeprefix("Value error, ")
    return f"{_shown(typed or problem.value)} {problem.limit}: {problem.way_out}"


def _way_out(problem: TurnspitError) -> str:
    """As a sentence."""
    text = problem.way_out.strip()
    return text[:1].upper() + text[1:] + ("" if text.endswith((".", "?")) else ".")


def _shown(value: object) -> str:
    text = f"{value:g}" if isinstance(value, float) else str(value)
    return text if len(text) <= 60 else f"{text[:57]}..."
