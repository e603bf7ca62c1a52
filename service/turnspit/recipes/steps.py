"""What the text of a step names: how long, how hot, with what."""

from __future__ import annotations

import re
from functools import cache

from turnspit.errors import TurnspitError
from turnspit.quantities import celsius, plain, take_range
from turnspit.recipes.recipe import Step
from turnspit.reference import table

_MINUTES_IN = {"s": 1 / 60, "m": 1.0, "h": 60.0, "d": 1440.0}
_TIME_UNIT = re.compile(
    r"\s*-?(?:more\s+|further\s+|additional\s+)?(?P<unit>s(?:ec(?:ond)?s?)?|m(?:in(?:ute)?s?)?|h(?:(?:ou)?rs?)?|days?|"
    r"minutos?|horas?|d[ií]as?)\b",
    re.IGNORECASE,
)
_NUMBER_STARTS = re.compile(r"(?<![\w./-])(?=\d|half an?\b|an?\s+(?:hour|minute)|one\b|two\b|three\b)", re.IGNORECASE)
_TO = re.compile(r"\s*(?:-|to\b|or\b)\s*", re.IGNORECASE)
_PER = re.compile(r"\s*(?:per|a|for each|for every)\s+(?:lb|pound|kg|kilo|500|por)", re.IGNORECASE)
_OVERNIGHT = re.compile(r"\bovernight\b", re.IGNORECASE)
OVERNIGHT_MIN = (480.0, 720.0)
_DEGREES = re.compile(
    r"(?<![\w.])(?P<value>\d{2,3})\s*(?:°|º|degrees?|deg)?\s*(?P<unit>[CF])\b(?!\w)|(?i:gas(?:\s+mark)?)\s*(?P<mark>[1-9]|1/[24])\b"
)


def read_step(text: str, section: str = "") -> Step:
    """The step with what its text names. Where several times stand, the step takes their sum; an hour is 60."""
    said = plain(text)
    return Step(text.strip(), step_minutes(said), step_temperatures_c(said), step_equipment(said), section)


def step_minutes(text: str) -> tuple[float, float] | None:
    """Shortest and longest time that the text gives in minutes, all its times together, or None."""
    low = high = 0.0
    end = 0
    for start in _NUMBER_STARTS.finditer(text):
        one = _time_at(text, start.start()) if start.start() >= end else None
        if one is None or _PER.match(text, one[2]):
            continue
        joint = _TO.match(text, one[2])
        other = _time_at(text, joint.end()) if joint else None
        if other is not None and other[1] > one[1]:  # "50 min - 1 hour"
            one = (one[0], other[1], other[2])
        low, high, end = low + one[0], high + one[1], one[2]
    if not high and _OVERNIGHT.search(text):
        return OVERNIGHT_MIN
    return (low, high) if high else None


def _time_at(text: str, start: int) -> tuple[float, float, int] | None:
    """Shortest and longest minutes of the time that begins there, and where it ends."""
    number = take_range(text, start)
    unit = _TIME_UNIT.match(text, number[2]) if number else None
    if number is None or unit is None:
        return None
    per = _MINUTES_IN[unit["unit"][0].casefold()]
    return float(number[0]) * per, float(number[1] or number[0]) * per, unit.end()


def step_temperatures_c(text: str) -> tuple[float, ...]:
    """Every temperature that the text names, in C, each once; "350°F (180°C)" and "180C/160C fan/gas 4" give all."""
    found: list[float] = []
    for match in _DEGREES.finditer(text):
        value, unit = (match["mark"], "gas_mark") if match["mark"] else (match["value"], f"deg{match['unit']}")
        try:
            found.append(round(celsius(_mark(value), unit), 1))
        except TurnspitError:
            continue
    return tuple(dict.fromkeys(found))


def step_equipment(text: str) -> tuple[str, ...]:
    """The equipment that the text names, by the name we write, in the order of the text."""
    names, pattern = _equipment()
    return tuple(dict.fromkeys(names[match.group().casefold()] for match in pattern.finditer(text)))


def _mark(value: str) -> float:
    top, _, bottom = value.partition("/")
    return float(top) / float(bottom or 1)


@cache
def _equipment() -> tuple[dict[str, str], re.Pattern[str]]:
    names = {name: row["names"][0] for row in table("kitchen_equipment") for name in row["names"]}
    longest_first = "|".join(re.escape(name) for name in sorted(names, key=len, reverse=True))
    return names, re.compile(rf"(?<![^\W\d_])(?:{longest_first})(?![^\W\d_])", re.IGNORECASE)
