"""A probe that may be off by some degrees, nobody knows which way: what it reads is judged at its worst."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.clean import clean
from turnspit.message import Message

_WORDS = {"a degree or two": 2.0, "a couple": 2.0, "one": 1.0, "two": 2.0, "three": 3.0, "four": 4.0, "five": 5.0}
_OFF = re.compile(
    r"\b(?:probe|thermometer|therm|cal|termometro|sonda)\b[^.;?!\d]{0,20}?\b(?:off|out|wrong|desviad[oa]|falla)"
    rf"(?: by| por| en)?(?: about| maybe| around)? ({'|'.join(_WORDS)}|\d{{1,2}}(?:\.\d)?)\b"
    r"(?! ?(?:min|h|deg\w* (?:low|high)))"
)
MOST_OFF = 15.0
_K_OF_F = 1 / 1.8


def at_worst(enquiry: Enquiry) -> tuple[Enquiry, tuple[Message, ...]]:
    """The enquiry with every reading lowered by what the probe may be off, and that it is; as it is for one that is
    not said to be."""
    found = _OFF.search(clean(enquiry.line))
    if found is None or enquiry.said("reading.temperature_c") is None:
        return enquiry, ()
    said_off = _WORDS.get(found[1]) or float(found[1])
    if said_off > MOST_OFF:
        return enquiry, ()
    off_k = said_off * (_K_OF_F if _in_fahrenheit(enquiry) else 1.0)
    understood: dict[str, Any] = {**enquiry.understood, "reading": _lowered(enquiry.said("reading"), off_k)}
    if enquiry.said("readings") is not None:
        understood["readings"] = [_lowered(one, off_k) for one in enquiry.said("readings")]
    worst_c = understood["reading"]["temperature_c"]
    return replace(enquiry, understood=understood), (Message("asking-taken-probe-off", off_k=off_k, c=worst_c),)


def told(answers: Sequence[Answer], taken: tuple[Message, ...]) -> list[Answer]:
    """The answers with what was taken of the probe, said first."""
    if not taken or not answers:
        return list(answers)
    first, *others = answers
    return [replace(first, lines=(*taken, *first.lines)), *others]


def _lowered(reading: Mapping[str, Any], off_k: float) -> dict[str, Any]:
    return {**reading, "temperature_c": float(reading["temperature_c"]) - off_k}


def _in_fahrenheit(enquiry: Enquiry) -> bool:
    """Whether it was read in Fahrenheit: those are the degrees that stand in the line."""
    f = float(enquiry.said("reading.temperature_c")) * 1.8 + 32
    return f"{round(f)}" in re.findall(r"\d+", enquiry.line)
