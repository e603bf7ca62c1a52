"""Numbers without a unit: which is a count, an hour, a weight, a company, and which is none of these."""

from __future__ import annotations

from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking.contract import Line
from turnspit.asking.reading import flat, read_line

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


def read(text: str) -> dict[str, Any]:
    return flat(read_line(Line(text, NOW), None).understood)


@pytest.mark.parametrize(
    "text", ["4 x 14 lb", "14 lb x4", "4 @ 14 lb", "4 no. birds, 14 lb", "four 14s", "(4) 14 lb birds"]
)
def test_roasts_are_counted_in_many_ways(text: str) -> None:
    found = read(f"{text}, dinner at 6")
    assert (found["roast.count"], round(found["roast.mass_kg"], 2)) == (4, 6.35)


@pytest.mark.parametrize(
    ("text", "hour"),
    [
        ("pass 330", "15:30"),
        ("serve 1845", "18:45"),
        ("dinner 6 30", "18:30"),
        ("on the table by half six", "18:30"),
        ("eat at two thirty", "14:30"),
        ("dinner 20h", "20:00"),
    ],
)
def test_hours_without_a_colon(text: str, hour: str) -> None:
    assert read(f"14 lb bird, {text}")["serve_at"][11:16] == hour


def test_an_oven_is_set_in_steps_of_25_and_an_hour_told_in_quarters() -> None:
    assert read("14 lb bird in at 330")["start_at"][11:16] == "15:30"
    assert round(read("14 lb bird in at 350")["oven.temperature_c"]) == 177


@pytest.mark.parametrize(
    ("text", "mass_kg"),
    [
        ("pavo de 6,5", 6.5),
        ("goose 6 kilo 500", 6.5),
        ("6.500 g goose", 6.5),
        ("6,500 kg goose", 6.5),
        ("bird's 16", 7.257),
        ("13 lb 4 bird", 6.01),
    ],
)
def test_weights_that_lack_a_unit_or_part_of_it(text: str, mass_kg: float) -> None:
    assert read(text)["roast.mass_kg"] == pytest.approx(mass_kg, abs=0.01)


@pytest.mark.parametrize(
    ("text", "covers"),
    [
        ("me, my wife, two kids and the in-laws", 6),
        ("my mum, her two sisters and the four of us so seven people", 7),
        ("7 adults, 4 kids under ten and my nephew", 12),
        ("12 tables of 10", 120),
        ("guest count went from 80 to 110", 110),
    ],
)
def test_company_told_one_by_one_is_summed(text: str, covers: int) -> None:
    assert read(f"{text}, what size turkey")["covers"] == covers


@pytest.mark.parametrize(
    "text",
    [
        "a pound a head for 14, turkey",
        "beef fillet, 10 covers, 200 g cooked portion",
        "a pound and a half each for 10, turkey",
    ],
)
def test_what_one_guest_gets_is_no_weight_of_the_roast(text: str) -> None:
    assert "roast.mass_kg" not in read(text)


def test_ages_and_the_hour_it_is_are_no_diners_and_no_dinner() -> None:
    assert "covers" not in read("lamb at 54C inside for my 80 yr old dad")
    assert read("its 9am now, 15 lb bird, when do I put it in for 4")["serve_at"][11:16] == "16:00"
