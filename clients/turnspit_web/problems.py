"""What is wrong with a value, in the reader's language and units."""

from __future__ import annotations

import re

from pydantic import ValidationError

from turnspit.errors import OutOfRange, TurnspitError, Unknown
from turnspit.message import Message
from turnspit.words import Reader, say

Problem = Message | TurnspitError | ValidationError

MEASURED = {"kg": "mass", "c": "temperature", "l": "volume", "h": "hours", "hours": "hours", "m": "height"}
"""By what the last part of a name says it is measured in."""
MOST_KNOWN = 8
_BOUND = re.compile(r"is (above|below) (-?[\d.]+(?:e[+-]?\d+)?)")


def told_problem(problem: Problem, reader: Reader) -> str:
    """One line: what is wrong and what would do. English has the way out of the core's own refusals."""
    if isinstance(problem, Message):
        return say(problem, reader)
    if isinstance(problem, Unknown):
        known = ", ".join(problem.known[:MOST_KNOWN])
        return say(Message("form-unknown", text=_shown(problem.value), known=known), reader)
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
