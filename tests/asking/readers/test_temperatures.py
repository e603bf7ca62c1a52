"""Every temperature of a line and what it is for: `ovens.txt` and `probes.txt`."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking.contract import Line
from turnspit.asking.reading import flat, read_line

NOW = datetime(2026, 11, 24, 10, 20, tzinfo=ZoneInfo("America/New_York"))
PATHS = {
    "oven.temperature_c": "oven", "oven.convection": "fan", "oven.count": "ovens", "roast.target_c": "tgt",
    "reading.temperature_c": "temp", "reading.place": "place", "readings": "temps", "reading.oven_left_on": "lefton",
}  # fmt: skip
DONENESS = {"rare": 52.0, "medium_rare": 57.0, "medium": 62.78, "medium_well": 68.0, "well_done": 71.0}
ROWS = [
    tuple(row.rsplit(" =>", 1))
    for table in ("ovens.txt", "probes.txt")
    for row in Path(__file__).with_name(table).read_text(encoding="utf-8").splitlines()
    if not row.startswith("#")
]


def celsius(told: str) -> int:
    """`325F`, `gas4`, `medium_rare`, in tenths of a degree."""
    if told in DONENESS:
        return round(10 * DONENESS[told])
    if told.startswith("gas"):
        return round((250 + 25 * float(told[3:]) - 32) / 0.18)
    return round(10 * float(told[:-1])) if told.endswith("C") else round((float(told[:-1]) - 32) / 0.18)


def wanted(told: str) -> dict[str, Any]:
    values: dict[str, Any] = {}
    for name, value in (pair.split("=") for pair in told.split()):
        if name == "temps":
            values[name] = [(celsius(one), place or None) for one, _, place in map(at_place, value.split(","))]
        elif name in ("oven", "tgt", "temp"):
            values[name] = celsius(value)
        else:
            values[name] = {"y": True, "n": False}.get(value, int(value) if value.isdigit() else value)
    return values


def at_place(told: str) -> tuple[str, str, str]:
    return told.partition("@")


def found(name: str, value: Any) -> Any:
    if name == "temps":
        return [(round(10 * row["temperature_c"]), row.get("place")) for row in value]
    return round(10 * value) if name in ("oven", "tgt", "temp") else value


@pytest.mark.parametrize(("text", "told"), ROWS)
def test_temperature_is_read_for_what_it_is(text: str, told: str) -> None:
    understood = flat(read_line(Line(text, NOW), None).understood)
    assert {name: found(name, understood[path]) for path, name in PATHS.items() if path in understood} == wanted(told)
