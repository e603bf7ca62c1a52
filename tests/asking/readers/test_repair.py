"""Slips put right in the same breath, and which of two clock times a cue belongs to."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking.contract import Line
from turnspit.asking.reading import flat, read_line

NOW = datetime(2026, 11, 26, 16, 40, tzinfo=ZoneInfo("America/New_York"))


def understood(text: str) -> dict[str, object]:
    return flat(read_line(Line(text, NOW), None).understood)


@pytest.mark.parametrize(
    ("text", "path", "value"),
    [
        ("dinner at 6 no wait 7, 16 lb bird", "serve_at", "2026-11-26T19:00:00-05:00"),
        ("dinner at 6pm, sorry, 7", "serve_at", "2026-11-26T19:00:00-05:00"),
        ("16 lb, I mean 18 lb bird", "roast.mass_kg", 8.165),
        ("16 lb no wait 18, turkey", "roast.mass_kg", 8.165),
        ("turkey for 8 people no make that 10", "covers", 10),
    ],
)
def test_the_later_word_stands(text, path, value):
    assert understood(text)[path] == value


@pytest.mark.parametrize(
    ("text", "read", "served"),
    [
        ("thigh 148 at 3:55pm eating 6:30", "15:55", "18:30"),
        ("breast 142 at four o'clock dinner at six", "16:00", "18:00"),
        ("dinner at 6, thigh 148 at 4:10", "16:10", "18:00"),
    ],
)
def test_each_clock_time_has_its_own_cue(text, read, served):
    found = understood(text)
    assert found["reading.at"] == f"2026-11-26T{read}:00-05:00"
    assert found["serve_at"] == f"2026-11-26T{served}:00-05:00"


def test_a_meal_behind_the_time_takes_it_from_the_reading():
    found = understood("thigh 152 breast 157 5pm dinner")
    assert found["serve_at"] == "2026-11-26T17:00:00-05:00"
    assert "reading.at" not in found


@pytest.mark.parametrize("text", ["bird in at 1pm, 125 in the breast now", "in at 1, thigh 125"])
def test_what_is_probed_went_in_already(text):
    assert understood(text)["start_at"] == "2026-11-26T13:00:00-05:00"


def test_what_is_not_probed_is_still_to_go_in():
    assert understood("put it in at 5, 12 lb bird")["start_at"] == "2026-11-26T17:00:00-05:00"
