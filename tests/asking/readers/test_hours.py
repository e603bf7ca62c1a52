"""Hours and days as cooks tell them, and what each is for (`hours.txt`)."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking.contract import Line
from turnspit.asking.reading import flat, read_line

NOW = datetime(2026, 11, 24, 10, 20, tzinfo=ZoneInfo("America/New_York"))
PATHS = {"serve": "serve_at", "start": "start_at", "read": "reading.at", "stood": "elapsed_h"}
ROWS = [
    tuple(row.rsplit(" => ", 1))
    for row in Path(__file__).with_name("hours.txt").read_text(encoding="utf-8").splitlines()
    if not row.startswith("#")
]


@pytest.mark.parametrize(("text", "told"), ROWS)
def test_hour_is_read_for_what_it_is(text: str, told: str) -> None:
    understood = flat(read_line(Line(text, NOW), None).understood)
    found = {name: understood[path] for name, path in PATHS.items() if path in understood}
    wanted = dict(pair.split("=") for pair in told.split())
    assert {name: str(value)[5:16] if name != "stood" else str(value) for name, value in found.items()} == wanted
