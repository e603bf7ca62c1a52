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


# A line with a gap, what is said there first, and what is meant.
LINES = [
    ("{} turkey, dinner at 6", "16 lb", "18 lb"),
    ("16 lb turkey, dinner at {}", "6", "7:30"),
    ("16 lb turkey, dinner {} at 6", "tomorrow", "friday"),
    ("16 lb turkey at {} how long", "325", "350"),
    ("how long for a 3 kg {}", "duck", "goose"),
    ("how big a turkey for {}", "12", "14"),
    ("152 in the {}", "thigh", "breast"),
    ("{} in the thigh", "152", "158"),
    ("3 kg beef rib {}, dinner at 6", "medium", "rare"),
    ("brine a 12 lb turkey for {}", "12 hours", "18 hours"),
    ("12 lb turkey at {} how long at 325", "7000 feet", "5000 feet"),
    ("thaw a 12 lb {} turkey", "frozen", "half frozen"),
    ("turkey left out for {}, is it safe", "3 hours", "4 hours"),
    ("convert {} flour to grams", "2 cups", "3 cups"),
]
BESIDE = [
    "{x} no {y}", "{x}, no, {y}", "{x} sorry {y}", "{x} I mean {y}", "{x} oops {y}", "{x}, make that {y}",
    "{x} scratch that {y}", "{x} er {y}", "{x}, or rather {y}", "{x} actually {y}", "{y} not {x}", "{y} (not {x})",
    "{x} whoops, {y}", "{x} wait {y}", "{x} correction {y}",
]  # fmt: skip
AT_THE_END = ["{line}, sorry {y}", "{line}. oops I mean {y}", "{line} - make that {y}", "{line} (sorry, {y})"]


@pytest.mark.parametrize(("line", "was", "meant"), LINES)
@pytest.mark.parametrize("slip", [*BESIDE, *AT_THE_END])
def test_a_line_put_right_reads_as_if_it_had_been_said_so(line, was, meant, slip):
    if slip in AT_THE_END:
        text = slip.format(line=line.format(was), y=meant)
    else:
        text = line.format(slip.format(x=was, y=meant))
    assert understood(text) == understood(line.format(meant))


@pytest.mark.parametrize(
    ("text", "path", "value"),
    [
        ("not 2 turkeys but 3, 12 lb each, dinner at 6", "roast.count", 3),
        ("brine a 12 lb turkey for 18 not 12 hours", "brine.hours", 18.0),
        ("2 kg pork shoulder i mean loin, how long", "roast.kind", "pork_loin"),
        ("350 C sorry F to celsius", "amount.unit", "degF"),
        ("two turkeys, actually three, 12 lb each, dinner at 6", "roast.count", 3),
    ],
)
def test_what_the_later_word_leaves_out_the_earlier_one_said(text, path, value):
    assert understood(text)[path] == value
