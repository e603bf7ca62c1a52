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

MEASURED = {"kg": "mass", "c": "temperature", "l": "volume", "h": "hours", "hours": "hours", "m": "height"}
"""By what the last part of a name says it is measured in."""
MOST_KNOWN = 8
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


def told_problem(problem: Problem, reader: Reader) -> str:
    """One line: what is wrong and what would do. English has the way out of the core's own refusals."""
    if isinstance(problem, Message):
        return say(problem, reader)
    if isinstance(problem, Unknown):
        known = ", ".join(problem.known[:MOST_KNOWN])
        return say(Message("form-unknown", text=_shown(problem.value), known=known), reader)
    if isinstance(problem, ValidationError) and problem.errors()[0]["type"] in LEFT_OUT:
        return say(Message("form-needed"), reader)
    if isinstance(problem, OutOfRange) and (bound := _BOUND.fullmatch(problem.limit)):
        measured = MEASURED.get(problem.name.rpartition("_")[2], "number")
        told = say(Message(f"form-{bound[1]}-{measured}", limit=float(bound[2])), reader)
        return f"{told} {_way_out(problem)}" if reader.language == "en" else told
    if reader.language == "en":
        return _line(problem)
    value = problem.errors()[0]["input"] if isinstance(problem, ValidationError) else problem.value
    return say(Message("form-refused", text=_shown(value)), reader)


def _line(problem: TurnspitError | ValidationError) -> str:
    if isinstance(problem, ValidationError):
        return str(problem.errors()[0]["msg"]).removeprefix("Value error, ")
    return f"{_shown(problem.value)} {problem.limit}: {problem.way_out}"


def _way_out(problem: TurnspitError) -> str:
    """As a sentence; of the core's hints only those that say more than the bound does."""
    text = problem.way_out.strip()
    return text[:1].upper() + text[1:] + ("" if text.endswith((".", "?")) else ".")


def _shown(value: object) -> str:
    text = f"{value:g}" if isinstance(value, float) else str(value)
    return text if len(text) <= 60 else f"{text[:57]}..."
