"""A brine of the strength and the water that were said, and whether it fits with them."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask
from turnspit.asking.answers.brine_strength import named_percent

NOW = datetime(2026, 12, 24, 10, 0, tzinfo=ZoneInfo("Europe/London"))


@pytest.mark.parametrize(
    ("line", "percent"),
    [
        ("5% brine 12 L how many g salt", 5.0),
        ("brine at 6.5 percent for 10 litres", 6.5),
        ("salmuera al 6 % para 10 litros", 6.0),
        ("equilibrium brine 1,5 %", 1.5),
        ("contains up to 8% solution, can I brine it", None),
        ("brine with 10% more water", None),
        ("brine for a 14 lb turkey", None),
    ],
)
def test_strength_is_the_one_that_was_named(line, percent):
    assert named_percent(line) == percent


def test_salt_is_weighed_at_the_strength_that_was_named():
    reply, _ = ask(Line("5% brine 12 L how many g salt", NOW), None, "a")
    salt_g = reply.data["brine"]["salt_g"]
    assert salt_g / (salt_g + 12 * 998.2) == pytest.approx(0.05, abs=0.0005)


def test_vessel_must_take_the_water_that_was_said():
    _, talk = ask(Line("brine for a 7 kilo turkey, 9 litres of water", NOW), None, "a")
    reply, _ = ask(Line("will that fit a 15 litre tub", NOW), talk, "a")
    brine = reply.data["brine"]
    assert brine["fits"] is False
    assert brine["vessel_needed_l"] == pytest.approx(9 + 7 / 1.055, abs=0.01)
    assert reply.headline.startswith("It does not fit with 9 L of water")
