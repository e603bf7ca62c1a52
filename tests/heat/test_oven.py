"""The oven over time: settings, lags, openings."""

from dataclasses import replace

import pytest

from turnspit.heat import OvenStep, RoastCase
from turnspit.heat.oven import ROOM_C, stretches

CASE = RoastCase("turkey", 6.0)


def test_a_preheated_oven_is_at_its_setting_from_the_start() -> None:
    (stretch,) = stretches(CASE)
    assert stretch.air_c(0.0) == stretch.air_c(7200.0) == 163.0


def test_a_cold_oven_starts_at_room_temperature_and_gets_there() -> None:
    (stretch,) = stretches(replace(CASE, preheated=False))
    assert stretch.air_c(0.0) == pytest.approx(ROOM_C)
    assert 90.0 < stretch.air_c(600.0) < 163.0
    assert stretch.air_c(3600.0) == pytest.approx(163.0, abs=0.1)


def test_air_is_continuous_where_the_setting_changes() -> None:
    first, second, off = stretches(
        replace(CASE, oven=(OvenStep(60.0, 160.0, True), OvenStep(0.0, 220.0), OvenStep(120.0, 0.0)))
    )
    assert first.set_c == 220.0
    assert second.air_c(3600.0) == pytest.approx(first.air_c(3600.0))
    assert second.convection
    assert not first.convection
    assert off.set_c == ROOM_C
    assert 45.0 < off.air_c(7200.0 + 1800.0) < 60.0


def test_an_opening_cools_the_oven_and_it_recovers() -> None:
    before, after = stretches(replace(CASE, openings_min=(30.0,)))
    assert after.air_c(1800.0) < before.air_c(1800.0) - 20.0
    assert after.air_c(3600.0) == pytest.approx(163.0, abs=0.2)


def test_the_first_setting_holds_from_the_start() -> None:
    (stretch,) = stretches(replace(CASE, oven=(OvenStep(10.0, 180.0),)))
    assert stretch.start_s == 0.0


def test_a_basting_cools_more_than_a_look() -> None:
    _, looked = stretches(replace(CASE, openings_min=(30.0,)))
    _, basted = stretches(replace(CASE, bastings_min=(30.0,)))
    assert basted.air_c(1900.0) < looked.air_c(1900.0) < 163.0
    assert len(stretches(replace(CASE, openings_min=(30.0,), bastings_min=(30.0, 60.0)))) == 3
