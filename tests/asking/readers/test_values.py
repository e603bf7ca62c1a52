"""Each dimension by itself: what is said, and the value its grammar makes of it."""

from __future__ import annotations

from datetime import date, datetime, time
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking.clean import clean
from turnspit.asking.readers import GRAMMARS
from turnspit.asking.readers.company import covers
from turnspit.asking.readers.heat import temperature
from turnspit.asking.readers.hours import clock, duration
from turnspit.asking.readers.hours.day import Day
from turnspit.asking.readers.measures import length, mass, volume
from turnspit.asking.readers.measures.measures import KG, LITRES, METRES
from turnspit.asking.tokens import Number, tokenize
from turnspit.quantities import convert

WEDNESDAY = date(2026, 11, 25)


def values(text: str, tag: str, language: str = "en") -> list[Any]:
    items = tokenize(clean(text), "es" if language == "es" else "en").items
    for grammar in GRAMMARS:
        items = grammar.reduce(items)
    return [item.tags[tag] for item in items if tag in item.tags]


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("16", 16),
        ("16 1/2", 16.5),
        ("16½", 16.5),
        ("1,500", 1500),
        ("7,5", 7.5),
        (".5", 0.5),
        ("sixteen", 16),
        ("twenty two", 22),
        ("twenty-two", 22),
        ("two and a half", 2.5),
        ("eleven and a quarter", 11.25),
        ("one hundred and sixty", 160),
        ("a hundred and five", 105),
        ("one sixty five", 165),
        ("three twenty five", 325),
        ("two hundred", 200),
        ("half a dozen", 6),
        ("two dozen", 24),
        ("-5", -5),
    ],
)
def test_numbers(text: str, value: float) -> None:
    found = [number.value for number in values(text, "<number>") if isinstance(number, Number)]
    assert found == [pytest.approx(value)]


@pytest.mark.parametrize(
    ("text", "kilograms"),
    [
        ("16 lb", 7.2575),
        ("16#", 7.2575),
        ("16lbs", 7.2575),
        ("7 kilos", 7.0),
        ("seven and a half kg", 7.5),
        ("16 lb 8 oz", 7.4843),
        ("16lb4oz", 7.3709),
        ("3 kg 200 g", 3.2),
        ("half a pound", 0.2268),
        ("a pound and a half", 0.6804),
        ("500 grams", 0.5),
        ("7 kilos and a half", 7.5),
    ],
)
def test_masses(text: str, kilograms: float) -> None:
    assert [found.si for found in values(text, "<mass>")] == [pytest.approx(kilograms, abs=1e-4)]


@pytest.mark.parametrize(
    "text", ["12-14 lb", "12 to 14 pounds", "12 lb to 14 lb", "between 12 and 14 lb", "12 or 14 lb"]
)
def test_a_range_of_masses_has_its_middle_and_its_ends(text: str) -> None:
    (found,) = values(text, "<mass>")
    assert found.si == pytest.approx(13 * KG["lb"])
    assert found.si_range == pytest.approx((12 * KG["lb"], 14 * KG["lb"]))


def test_two_masses_far_apart_are_no_range() -> None:
    assert len(values("2 to 40 lb", "<mass>")) == 1
    assert values("2 to 40 lb", "<mass>")[0].si_range is None


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("5 gallon", 18.927),
        ("5-gallon", 18.927),
        ("8 qt", 7.571),
        ("half a gallon", 1.893),
        ("2 c flour", 0.473),
        ("per quart", 0.946),
        ("250 ml", 0.25),
        ("1½ cups", 0.355),
        ("8 fl oz", 0.2366),
    ],
)
def test_volumes(text: str, litres: float) -> None:
    assert [found.si for found in values(text, "<volume>")] == [pytest.approx(litres, abs=1e-3)]


def test_units_agree_with_the_quantities_room() -> None:
    for si, base in ((KG, "g"), (LITRES, "mL"), (METRES, "cm")):
        for unit, in_si in si.items():
            if unit in ("stick", "ft", "m", "mile"):
                continue
            factor = 100 if base == "cm" else 1000
            assert convert(1.0, unit, base).value == pytest.approx(in_si * factor, rel=1e-9)


@pytest.mark.parametrize(
    ("text", "unit", "celsius"),
    [
        ("325F", "degF", 162.78),
        ("160 C", "degC", 160),
        ("160 degrees celsius", "degC", 160),
        ("165°F", "degF", 73.89),
        ("gas 4", "gas_mark", 176.67),
        ("gas mark 6", "gas_mark", 204.44),
    ],
)
def test_temperatures(text: str, unit: str, celsius: float) -> None:
    (found,) = values(text, "<temperature>")
    assert found.unit == unit
    assert found.celsius == pytest.approx(celsius, abs=0.01)


@pytest.mark.parametrize(
    ("value", "usual", "unit", "guessed"),
    [
        (325, None, "degF", False),
        (160, None, "degC", False),
        (200, "us", "degF", False),
        (200, "metric", "degC", False),
        (225, None, "degF", True),
        (200, None, "degC", True),
        (4, None, "gas_mark", False),
    ],
)
def test_a_bare_oven_setting_takes_the_plausible_unit(value: float, usual: Any, unit: str, guessed: bool) -> None:
    assert temperature.plausible_oven(value, usual) == (unit, guessed)


@pytest.mark.parametrize(("value", "unit"), [(68, "degC"), (82, "degC"), (95, "degF"), (130, "degF"), (165, "degF")])
def test_a_bare_reading_takes_the_plausible_unit(value: float, unit: str) -> None:
    assert temperature.plausible_core(value) == unit


@pytest.mark.parametrize(
    ("text", "hours"),
    [
        ("3 hrs", 3),
        ("90 min", 1.5),
        ("two and a half hours", 2.5),
        ("an hour and a half", 1.5),
        ("half an hour", 0.5),
        ("2 hours 30 minutes", 2.5),
        ("an hour and 20 minutes", 4 / 3),
        ("1h30", 1.5),
        ("overnight", 12),
        ("3 days", 72),
        ("a week", 168),
        ("2-3 hours", 2.5),
        ("a couple of hours", 2),
    ],
)
def test_durations(text: str, hours: float) -> None:
    assert [found.hours for found in values(text, "<duration>")] == [pytest.approx(hours)]


@pytest.mark.parametrize(
    ("text", "hour", "minute", "half"),
    [
        ("5:30", 5, 30, ""),
        ("5:30pm", 5, 30, "pm"),
        ("6 p.m.", 6, 0, "pm"),
        ("6ish", 6, 0, ""),
        ("half past five", 5, 30, ""),
        ("quarter to 7", 6, 45, ""),
        ("quarter past seven", 7, 15, ""),
        ("ten to seven", 6, 50, ""),
        ("five past seven", 7, 5, ""),
        ("half seven", 7, 30, ""),
        ("18:00", 18, 0, ""),
        ("noon", 12, 0, "pm"),
        ("midnight", 0, 0, ""),
        ("6 o'clock", 6, 0, ""),
        ("five thirty p.m.", 5, 30, "pm"),
    ],
)
def test_clock_times(text: str, hour: int, minute: int, half: str) -> None:
    (found,) = values(text, "<clock>")
    assert (found.hour, found.minute, found.half) == (hour, minute, half)


@pytest.mark.parametrize(
    ("text", "minutes"),
    [("a las seis y media", 390), ("a las 8 menos cuarto", 465), ("a las 9 y cuarto", 555), ("a las 15 horas", 900)],
)
def test_clock_times_in_spanish(text: str, minutes: int) -> None:
    clocks = [found.minutes() for found in values(text, "<clock>", "es")]
    numbers = [clock.digits_clock(found) for found in values(text, "<number>", "es") if isinstance(found, Number)]
    assert clocks + [found.minutes() for found in numbers if found is not None] == [minutes]


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("today", "2026-11-25"),
        ("tomorrow", "2026-11-26"),
        ("day after tomorrow", "2026-11-27"),
        ("yesterday", "2026-11-24"),
        ("wednesday", "2026-11-25"),
        ("next wednesday", "2026-12-02"),
        ("thursday", "2026-11-26"),
        ("last thursday", "2026-11-19"),
        ("friday week", "2026-12-04"),
        ("the 24th", "2026-12-24"),
        ("the 30th", "2026-11-30"),
        ("dec 24", "2026-12-24"),
        ("24 december", "2026-12-24"),
        ("the 5th of january", "2027-01-05"),
        ("12/24", "2026-12-24"),
        ("24/12", "2026-12-24"),
        ("2026-12-01", "2026-12-01"),
        ("thanksgiving", "2026-11-26"),
        ("christmas", "2026-12-25"),
        ("christmas eve", "2026-12-24"),
        ("easter", "2027-03-28"),
        ("new year's eve", "2026-12-31"),
        ("in three days", "2026-11-28"),
        ("a week from thursday", "2026-12-03"),
        ("day after thanksgiving", "2026-11-27"),
    ],
)
def test_days(text: str, day: str) -> None:
    found = [said for said in values(text, "<when_day>") if isinstance(said, Day)]
    assert [str(said.on(datetime.combine(WEDNESDAY, time()))) for said in found] == [day]


def test_thanksgiving_is_the_fourth_thursday_of_november() -> None:
    (said,) = values("thanksgiving", "<when_day>")
    assert [str(said.on(datetime(year, 1, 1))) for year in (2023, 2024, 2025)] == [
        "2023-11-23",
        "2024-11-28",
        "2025-11-27",
    ]


def test_thanksgiving_in_canada_is_the_second_monday_of_october() -> None:
    (said,) = values("thanksgiving", "<when_day>")
    days = [(2026, 10, 9), (2026, 10, 12), (2026, 11, 20), (2027, 1, 5)]
    assert [str(said.on(datetime(*day, tzinfo=ZoneInfo("America/Toronto")))) for day in days] == [
        "2026-10-12",
        "2026-10-12",
        "2026-11-26",
        "2027-10-11",
    ]


def test_the_31st_is_looked_for_in_a_month_that_has_one() -> None:
    (said,) = values("the 31st", "<when_day>")
    assert str(said.on(datetime(2027, 2, 3))) == "2027-03-31"


@pytest.mark.parametrize(
    ("text", "count", "more"),
    [
        ("for 12", 12, 0),
        ("feeds 8", 8, 0),
        ("9 adults and 4 kids", 13, 0),
        ("a dozen of us", 12, 0),
        ("party of ten", 10, 0),
        ("10-12 people", 11, 0),
        ("two more guests", 0, 2),
        ("3 fewer people", 0, -3),
        ("add 4 people", 0, 4),
    ],
)
def test_covers(text: str, count: int, more: int) -> None:
    (found,) = values(text, "<covers>")
    assert (found.count, found.more) == (count, more)


def test_each_grammar_names_its_rules_like_their_phrases() -> None:
    grammars = (mass, volume, temperature, length, clock, duration, covers)
    names = [rule.name for grammar in grammars for rule in grammar.grammar.rules]
    assert len(set(names)) == len(names)
    assert "<clock>: half <number> <ampm>?" in names
