"""What a kitchen at work asks in one line, and what its answer must hold."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, Reply, ask

NOW = datetime(2026, 12, 24, 11, 40, tzinfo=ZoneInfo("Europe/London"))


def replied(text: str) -> Reply:
    return ask(Line(text, NOW), None, "a")[0]


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("2 kg sugar how many cups, and 500 ml oil in tbsp", ("2 kg of sugar", "500 mL")),
        ("350F in C and 14 lb in kg", ("177 °C", "6.35 kg")),
        ("180C in F, 8 oz butter in grams, 2 pints in litres", ("356 °F", "227 g", "1.14 L")),
        ("350 F en C y 2 tazas de harina en gramos", ("177 °C", "250 g")),
    ],
)
def test_every_conversion_of_a_line_is_answered(line, told):
    reply = replied(line)
    said = " ".join((reply.headline, *reply.lines))
    assert all(words in said for words in told)


def test_rest_for_a_carvery_is_a_rest():
    assert replied("how long to rest 5 kg rib before slicing for a carvery").headline.startswith("Rest it")


def test_portions_come_first_where_they_are_asked():
    assert "plates" in replied("portions from one 14lb tky").headline


@pytest.mark.parametrize(
    "line",
    [
        "oven died at 10.20, turkey 17 lb was in 2 hours at 325, breast 120 now",
        "turkey in at 8, oven died at 10.20, 17 lb, breast 120 now",
        "gas went off at 10.20, 17 lb turkey breast 120",
    ],
)
def test_oven_that_died_has_been_off_since_then(line):
    assert "off for 1 h 20 min" in replied(line).headline


def test_roast_in_the_oven_is_not_put_in_again():
    reply = replied("turkey went in 0730 5 kg stuffed at 170, done by 12?")
    assert "In since 07:30" in reply.headline
    assert "Put the" not in reply.headline


def test_what_is_short_of_its_temperature_is_foretold_and_not_what_has_reached_it():
    reply = replied("turkey thigh 165 breast 165 stuffing 159")
    said = " ".join((reply.headline, *reply.lines))
    assert "deepest breast at" not in said


def test_two_hours_on_the_side_are_judged_however_they_are_clipped():
    assert "2 h" in replied("6kg pork shoulder, 2h on the side, can i chill it now").headline
