"""Who eats, how many roasts, brines, scaling, amounts and subjects: one table a dimension, nothing else of it is read."""

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
    "brines": {
        "wanted": "brine.wanted", "hours": "brine.hours", "water": "brine.water_l", "vessel": "brine.vessel_l",
        "salt": "brine.salt_kind",
    },
    "scales": {"from": "scale.from", "to": "scale.to", "by": "scale.factor"},
    "amounts": {
        "val": "amount.value", "unit": "amount.unit", "item": "amount.item", "to": "amount.target_unit",
        "units": "units",
    },
    "subjects": {"of": "subject"},
    "company": {"cov": "covers", "left": "leftovers_wanted"},
    "roasts_counted": {"n": "roast.count"},
}  # fmt: skip
LITRES = {"gal": 3.785411784, "quart": 0.946352946, "L": 1.0}
ROWS = [
    (table, *row.rsplit(" => ", 1))
    for table in PATHS
    for row in Path(__file__).with_name(f"{table}.txt").read_text(encoding="utf-8").splitlines()
    if not row.startswith("#")
]


def told_as(name: str, value: str) -> Any:
    """A value of the table as the contract has it."""
    if name in ("water", "vessel"):
        unit = value.lstrip("0123456789.")
        return pytest.approx(float(value.removesuffix(unit)) * LITRES[unit], abs=1e-3)
    if name in ("hours", "val", "from", "to", "by", "cov", "n") and value[0].isdigit():
        return pytest.approx(float(value), rel=1e-3)
    return value == "y" if name in ("wanted", "left") else value.replace("_", " ") if name == "item" else value


@pytest.mark.parametrize(("table", "text", "told"), ROWS)
def test_dimension_is_read(table: str, text: str, told: str) -> None:
    reading = read_line(Line(text, NOW), None)
    understood = flat(reading.understood)
    found = {name: understood[path] for name, path in PATHS[table].items() if path in understood}
    pairs = f"of={told}" if table == "subjects" and told else told
    wanted = {name: told_as(name, value) for name, _, value in (pair.partition("=") for pair in pairs.split())}
    if reading.intents[0] == "brine" and "wanted" not in wanted and found.get("wanted") is True:
        # Who asks about a brine may or may not have said that one is wanted.
        del found["wanted"]
    assert found == wanted
