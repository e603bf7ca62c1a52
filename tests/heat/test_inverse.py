"""The forecast asked backward agrees with the forecast asked forward."""

from dataclasses import replace

import pytest

from turnspit.errors import Impossible, OutOfRange
from turnspit.heat import (
    OvenStep,
    RoastCase,
    forecast_roast,
    largest_mass_kg,
    minutes_to_allow,
    oven_for,
    roast,
    sensitivities,
    trades,
)
from turnspit.heat.ensemble import priors

TURKEY = RoastCase("turkey", 6.35, members=64)


def test_the_oven_for_a_clock_brings_the_roast_about_by_then() -> None:
    oven_c = oven_for(TURKEY, 180.0, certainty=0.8)
    forecast = forecast_roast(replace(TURKEY, oven=(OvenStep(0.0, oven_c),)))
    assert forecast.ready_quantile_min(0.8) == pytest.approx(180.0, abs=2.0)


def test_the_largest_bird_is_ready_just_in_time() -> None:
    mass_kg = largest_mass_kg(TURKEY, 240.0)
    assert forecast_roast(replace(TURKEY, mass_kg=mass_kg)).ready_quantile_min(0.9) == pytest.approx(240.0, abs=1.0)
    assert largest_mass_kg(TURKEY, 2000.0) == 14.0


def test_more_certainty_wants_more_time_and_the_rest_counts() -> None:
    assert minutes_to_allow(TURKEY, 0.9) > minutes_to_allow(TURKEY, 0.8) > TURKEY.rest_min
    unrested = replace(TURKEY, rest_min=0.0)
    assert minutes_to_allow(TURKEY, 0.8) - minutes_to_allow(unrested, 0.8) == pytest.approx(30.0)


def test_what_cannot_be_says_so() -> None:
    with pytest.raises(Impossible):
        oven_for(TURKEY, 40.0)
    with pytest.raises(Impossible):
        oven_for(TURKEY, 5000.0)
    with pytest.raises(Impossible):
        largest_mass_kg(TURKEY, 20.0)
    with pytest.raises(OutOfRange, match="certainty"):
        minutes_to_allow(TURKEY, 1.0)


def test_the_size_of_a_bird_is_what_makes_it_most_uncertain() -> None:
    found = sensitivities(TURKEY)
    assert found[0].name == "size"
    assert found[0].at_p10_min < 0.0 < found[0].at_p90_min
    assert {one.name for one in found} == {prior.name for prior in priors(roast("turkey"))}
    swings = [one.swing_min for one in found]
    assert swings == sorted(swings, reverse=True)
    assert {one.name for one in found if one.swing_min == 0.0} == {"room", "rest_exchange", "drip"}


def test_a_bird_is_given_no_oven_below_its_rule_and_no_clock_that_is_none() -> None:
    with pytest.raises(Impossible, match=r"162\.78"):
        oven_for(TURKEY, 900.0)
    assert oven_for(RoastCase("beef_rib", 3.2, target_c=57.0, members=64), 240.0) < 160.0
    for inverse in (oven_for, largest_mass_kg):
        with pytest.raises(OutOfRange, match="ready_min"):
            inverse(TURKEY, float("nan"))


def test_a_hotter_oven_and_a_later_pull_cost_juice() -> None:
    found = {one.change: one for one in trades(RoastCase("beef_rib", 3.2, target_c=57.0))}
    assert found["hotter"].ready_min < 0.0 < found["hotter"].loss_kg
    assert found["cooler"].ready_min > 0.0 > found["cooler"].loss_kg
    assert found["later"].ready_min > 0.0
    assert found["later"].loss_fraction > 0.0
    hottest = {one.change for one in trades(RoastCase("pork_loin", 1.6, oven=(OvenStep(0.0, 270.0),), members=8))}
    assert hottest == {"cooler", "later"}
    assert "cooler" not in {one.change for one in trades(TURKEY)}
