"""One amount typed into a field or an argument."""

from collections.abc import Callable
from typing import Any

import pytest

from turnspit.errors import TurnspitError
from turnspit.quantities import (
    typed_amount,
    typed_celsius,
    typed_hours,
    typed_kilograms,
    typed_kilograms_or_litres,
    typed_litres,
    typed_metres,
    typed_number,
    typed_whole,
)


@pytest.mark.parametrize(
    ("read", "text", "value"),
    [
        (typed_kilograms, "18 lb", 18 * 0.45359237),
        (typed_kilograms, " 7,5 kg ", 7.5),
        (typed_kilograms, "3 lb 4 oz", 3.25 * 0.45359237),
        (typed_litres, "5 gal", 5 * 3.785411784),
        (typed_litres, "20L", 20.0),
        (typed_metres, "2 in", 0.0508),
        (typed_metres, "5,000 ft", 1524.0),
        (typed_celsius, "212 F", 100.0),
        (typed_celsius, "-4 °F", -20.0),
        (typed_celsius, "71.5 C", 71.5),
        (typed_hours, "3", 3.0),
        (typed_hours, "90 min", 1.5),
        (typed_hours, "1 h 30 min", 1.5),
        (typed_hours, "1 hour and 30 minutes", 1.5),
        (typed_hours, "2 días", 48.0),
        (typed_hours, "2½ h", 2.5),
        (typed_number, "1,5", 1.5),
        (typed_number, "5.5 %", 5.5),
        (typed_whole, "14", 14),
    ],
)
def test_an_amount_is_read_in_si(read: Callable[[str], float], text: str, value: float) -> None:
    assert read(text) == pytest.approx(value)


def test_a_bare_temperature_takes_the_degrees_beside_it_and_its_own_before_those() -> None:
    assert typed_celsius("212", "F") == pytest.approx(100.0)
    assert typed_celsius("100 C", "F") == pytest.approx(100.0)


def test_an_amount_of_food_is_a_mass_or_a_volume_by_its_unit() -> None:
    assert typed_kilograms_or_litres("8 L") == (None, 8.0)
    assert typed_kilograms_or_litres("500 g") == (0.5, None)
    with pytest.raises(TurnspitError, match="measures length"):
        typed_kilograms_or_litres("2 in")


def test_a_unit_is_kept_as_written_but_for_degrees() -> None:
    assert typed_amount("2 1/2 cups") == (2.5, "cups")
    assert typed_amount("325 F") == (325.0, "degF")
    assert typed_amount("2 c") == (2.0, "cup")
    assert typed_amount("gas mark 4") == typed_amount("Gas 4") == (4.0, "gas_mark")
    assert typed_amount("gas mark 1/2") == (0.5, "gas_mark")


@pytest.mark.parametrize(
    ("read", "text", "told"),
    [
        (typed_kilograms, "18", "has no unit"),
        (typed_kilograms, "18 gal", "measures volume"),
        (typed_kilograms, "heavy", "is not an amount"),
        (typed_kilograms, "-3 kg", "is not an amount"),
        (typed_metres, "2", "has no unit"),
        (typed_celsius, "60", "is no temperature"),
        (typed_celsius, "60 kg", "is no temperature"),
        (typed_hours, "a while", "is no span of time"),
        (typed_hours, "", "is no span of time"),
        (typed_hours, "3 kg", "is no span of time"),
        (typed_hours, "3 h of it", "is no span of time"),
        (typed_number, "14 lb", "is no number"),
        (typed_number, "nan", "is no number"),
        (typed_whole, "1.5", "is no whole number"),
        (typed_amount, "many", "is not an amount"),
        (typed_amount, "3-4 cups", "is not an amount"),
    ],
)
def test_what_is_no_such_amount_is_refused_with_the_way_out(read: Callable[[str], Any], text: str, told: str) -> None:
    with pytest.raises(TurnspitError, match=told):
        read(text)
