"""The roast as cooks name it (`roasts.txt`), its weight (`masses.txt`), its state, what stood and how high (`states.txt`)."""

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
    "roasts": {"k": "roast.kind", "stuffed": "roast.stuffed", "bone": "roast.bone_in", "inj": "roast.injected"},
    "masses": {"m": "roast.mass_kg", "range": "roast.mass_kg_range"},
    "states": {"st": "roast.state", "h": "elapsed_h", "alt": "altitude_m"},
}
SI = {"kg": 1.0, "lb": 0.45359237, "oz": 0.028349523125, "ft": 0.3048, "g": 0.001, "m": 1.0}
ROWS = [
    (table, *row.rsplit(" => ", 1))
    for table in PATHS
    for row in Path(__file__).with_name(f"{table}.txt").read_text(encoding="utf-8").splitlines()
    if not row.startswith("#")
]


def _wanted(told: str) -> dict[str, Any]:
    """`m=12-14lb bone=y` by name, in SI."""
    wanted: dict[str, Any] = {}
    for name, _, value in (pair.partition("=") for pair in told.split() if pair != "-"):
        if name in ("m", "alt"):
            unit = next(unit for unit in SI if value.endswith(unit))
            ends = [float(end) * SI[unit] for end in value.removesuffix(unit).removeprefix("-").split("-")]
            sign = -1 if value.startswith("-") else 1
            wanted[name] = pytest.approx(sign * sum(ends) / len(ends), abs=0.1 if name == "alt" else 0.001)
            if len(ends) == 2:
                wanted["range"] = pytest.approx(ends, abs=0.001)
        elif name == "h":
            wanted[name] = pytest.approx(float(value), abs=0.005)
        else:
            wanted[name] = {"y": True, "n": False}.get(value, value)
    return wanted


@pytest.mark.parametrize(("table", "text", "told"), ROWS)
def test_roast_is_read_as_it_is_told(table: str, text: str, told: str) -> None:
    understood = flat(read_line(Line(text, NOW), None).understood)
    found = {name: understood[path] for name, path in PATHS[table].items() if path in understood}
    assert found == _wanted(told)
