"""Readings as they are typed or pasted: a time and a temperature on each line, perhaps where it was probed.

Read are "95 151 F breast" (minutes), "12:40 151 thigh", "2:10 pm, 66 C", times in ISO 8601, and columns with a line
of headings above them: our own log as CSV, or one column of temperatures a place ("time;breast;thigh").
"""

from __future__ import annotations

import csv
import re
from collections.abc import Iterator, Sequence
from contextlib import suppress
from datetime import datetime

from turnspit.errors import Impossible
from turnspit.quantities import typed_celsius, typed_number
from turnspit.safety.proof import Measured

WAY_OUT = 'write a time and a temperature on each line, as "12:40 151 F breast"'
DAY_MIN = 1440.0
LONGEST_LINE = 200
_TIME = r"\d{4}-\d\d-\d\d[T ]\d\d:\d\d\S*|\d{1,2}:\d\d(?::\d\d)?(?:\s*[ap]\.?\s?m\b\.?)?|\d+(?:[.,]\d+)?(?:\s*min\b)?"
_DEGREES = r"-?\d+(?:[.,]\d+)?\s*(?:[°º]?\s*[CF]\b)?"
_LINE = re.compile(rf"({_TIME})[\s,;|]+({_DEGREES})[\s,;|]*(.*)", re.IGNORECASE)
_CLOCK = re.compile(r"(\d{1,2}):(\d\d)(?::(\d\d))?\s*(?:([ap])\.?\s?m\.?)?", re.IGNORECASE)
_OWN = ("measured_at", "temperature_c", "station")


def read_measured(text: str, degrees: str = "") -> tuple[Measured, ...]:
    """The readings of a text; `degrees` ("F" or "C") holds for bare numbers. Raises Impossible, which names the line.

    Minutes count from any zero, clock times from midnight; of one place a clock that falls back by more than half a
    day has gone on to the next. A temperature nobody gave the degrees of is refused.
    """
    lines = [line.strip() for line in text.splitlines()]
    rows = _columns(lines) if lines and not re.search(r"\d", lines[0]) else _lines(lines)
    latest: dict[str, float] = {}
    measured = []
    for line, at, reading, station in rows:
        minute = (
            _on_its_day(_minute(at, line), latest.get(station)) if ":" in at and "-" not in at else _minute(at, line)
        )
        latest[station] = minute
        measured.append(Measured(minute, _degrees(reading, degrees, line), station))
    if not measured:
        raise Impossible("readings", text[:60], "hold no reading", WAY_OUT)
    return tuple(measured)


def _lines(lines: Sequence[str]) -> Iterator[tuple[str, str, str, str]]:
    for line in filter(None, lines):
        found = _LINE.fullmatch(line) if len(line) <= LONGEST_LINE else None
        if found is None:
            raise Impossible("readings", line[:60], "is no reading", WAY_OUT)
        yield line, found[1], found[2], found[3].strip()


def _columns(lines: Sequence[str]) -> Iterator[tuple[str, str, str, str]]:
    """Columns under their headings: those of our own log, else the time first and then a place each."""
    mark = next((mark for mark in (";", "\t", ",") if mark in lines[0]), None)
    if mark is None:
        yield from _lines(lines[1:])
        return
    head, *rows = csv.reader(lines, delimiter=mark)
    names = [name.strip() for name in head]
    own = set(_OWN) <= set(names)
    for row in rows:
        cells = dict(zip(names, (cell.strip() for cell in row), strict=False))
        line = mark.join(row)
        if own:
            if cells.get("temperature_c") and cells.get("stands") != "no":
                yield line, cells["measured_at"], f"{cells['temperature_c']} C", cells.get("station", "")
            continue
        for station in names[1:]:
            if cells.get(station):
                yield line, cells[names[0]], cells[station], "" if len(names) == 2 else station


def _minute(at: str, line: str) -> float:
    clock = _CLOCK.fullmatch(at.strip())
    if clock is not None:
        hour, minute, second = int(clock[1]), int(clock[2]), int(clock[3] or 0)
        if clock[4]:
            hour = hour % 12 + (12 if clock[4].casefold() == "p" else 0)
        if hour < 24 and minute < 60 and second < 60:
            return hour * 60 + minute + second / 60
    else:
        with suppress(ValueError):
            if "-" in at:
                return datetime.fromisoformat(at.strip()).timestamp() / 60
            return typed_number(re.sub(r"\s*min$", "", at.strip(), flags=re.IGNORECASE))
    raise Impossible("readings", line, f"has no time in {at}", WAY_OUT)


def _on_its_day(minute: float, before: float | None) -> float:
    if before is None:
        return minute
    minute += DAY_MIN * (before // DAY_MIN)
    return minute + DAY_MIN if before - minute > DAY_MIN / 2 else minute


def _degrees(reading: str, degrees: str, line: str) -> float:
    try:
        return typed_celsius(reading, degrees)
    except Impossible as error:
        raise Impossible("readings", line, "has no degrees", 'write them as "151 F" or "66 C"') from error
