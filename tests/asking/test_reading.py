"""The lines every cook types first: each must be read whole and right."""

from __future__ import annotations

from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking.contract import Line
from turnspit.asking.reading import flat, read_line

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))
TODAY, TOMORROW, YESTERDAY = "2026-11-25", "2026-11-26", "2026-11-24"


def at(day: str, clock: str) -> str:
    return f"{day}T{clock}:00-05:00"


CASES: list[tuple[str, tuple[str, ...], dict[str, Any]]] = [
    ("16 lb bird, dinner at 6", ("plan",), {"roast.mass_kg": 7.257, "serve_at": at(TODAY, "18:00")}),
    (
        "turkey for 14 with leftovers, how big?",
        ("size",),
        {"roast.kind": "turkey", "covers": 14, "leftovers_wanted": True},
    ),
    (
        "frozen 20 lb turkey, dinner tomorrow at 2",
        ("plan",),
        {
            "roast.kind": "turkey",
            "roast.mass_kg": 9.072,
            "roast.state": "frozen",
            "serve_at": at(TOMORROW, "14:00"),
        },
    ),
    (
        "7.5 kg turkey stuffed fan oven 160C, lunch 13:30",
        ("plan",),
        {
            "roast.kind": "turkey",
            "roast.mass_kg": 7.5,
            "roast.stuffed": True,
            "oven.convection": True,
            "oven.temperature_c": 160.0,
            "serve_at": at(TODAY, "13:30"),
        },
    ),
    (
        "two 13 lb birds one oven dinner 5:30",
        ("plan",),
        {"roast.count": 2, "roast.mass_kg": 5.897, "oven.count": 1, "serve_at": at(TODAY, "17:30")},
    ),
    (
        "how long to thaw 22 lbs in the fridge",
        ("thaw",),
        {"roast.mass_kg": 9.979},
    ),
    (
        "130 in the breast at 4:30, dinner at 6",
        ("doneness",),
        {
            "reading.temperature_c": 54.44,
            "reading.place": "breast",
            "reading.at": at(TODAY, "16:30"),
            "serve_at": at(TODAY, "18:00"),
        },
    ),
    (
        "2 cups kosher salt in grams",
        ("convert",),
        {"amount.value": 2, "amount.unit": "cup", "amount.item": "kosher salt", "amount.target_unit": "g"},
    ),
    ("is 160 in the thigh ok?", ("safety",), {"reading.temperature_c": 71.11, "reading.place": "thigh"}),
    ("left it out 3 hours", ("safety",), {"elapsed_h": 3.0}),
    (
        "goose 11 lb at 7pm",
        ("plan",),
        {"roast.kind": "goose", "roast.mass_kg": 4.99, "serve_at": at(TODAY, "19:00")},
    ),
    ("", ("unknown",), {}),
    ("900 lb bird", ("plan",), {"roast.mass_kg": 408.233}),
    ("dinner yesterday at 6", ("plan",), {"serve_at": at(YESTERDAY, "18:00")}),
    (
        "how big a turkey for 12 and when do I put it in for dinner at 6",
        ("size", "plan"),
        {"roast.kind": "turkey", "covers": 12, "serve_at": at(TODAY, "18:00")},
    ),
]


@pytest.mark.parametrize(("text", "intents", "understood"), CASES, ids=[case[0] or "empty" for case in CASES])
def test_line_is_read_whole(text: str, intents: tuple[str, ...], understood: dict[str, Any]) -> None:
    reading = read_line(Line(text, NOW), None)
    assert reading.intents == intents
    assert flat(reading.understood) == understood


def test_every_value_has_its_words() -> None:
    reading = read_line(Line("7.5 kg turkey stuffed fan oven 160C, lunch 13:30", NOW), None)
    assert {trace.path for trace in reading.traces} == set(flat(reading.understood))
    assert next(trace.words for trace in reading.traces if trace.path == "roast.mass_kg") == "7.5 kg"
