from dataclasses import replace
from datetime import UTC, datetime

import pytest

from turnspit.errors import Impossible, OutOfRange
from turnspit.heat import ChillCase, forecast_chill
from turnspit.safety import depth_that_cools, plan_cooling
from turnspit.safety.cooling import advice, stages_grade
from turnspit.spread import Spread
from turnspit.words import Reader, say

SLICES = ChillCase("cooked turkey", "slab", (25,), medium_c=3.0, from_c=70.0)
POT = ChillCase("stock", "pot", (250, 200), medium_c=3.0, from_c=95.0)


def test_a_shallow_pan_makes_both_stages_and_a_deep_pot_does_not():
    shallow, deep = plan_cooling(SLICES), plan_cooling(POT)
    assert (shallow.finding.severity, deep.finding.severity) == ("ok", "stop")
    assert deep.finding.rule == "cooling-two-stage"
    assert deep.total_h.p50 > 6


def test_the_hours_are_those_of_the_heat_room():
    plan = plan_cooling(SLICES)
    forecast = forecast_chill(replace(SLICES, to_c=5.0))
    assert plan.first_h == forecast.hours_between(57.22, 21.11)
    assert plan.total_h == forecast.hours_between(57.22, 5.0)


def test_the_depth_that_is_advised_cools_in_time_and_twice_it_does_not():
    depth_mm = depth_that_cools(SLICES)
    assert depth_mm is not None
    layer = replace(SLICES, dims_mm=(depth_mm,), from_c=57.22)
    assert plan_cooling(layer).finding.severity == "ok"
    assert plan_cooling(replace(layer, dims_mm=(2 * depth_mm,))).finding.severity == "stop"


def test_an_ice_bath_allows_a_deeper_layer():
    plan = plan_cooling(SLICES)
    assert plan.iced_depth_mm is not None
    assert plan.depth_mm is not None
    assert plan.iced_depth_mm > plan.depth_mm


@pytest.mark.parametrize("case", [SLICES, POT, replace(POT, medium="ice_bath", medium_c=0.0, stirred=True)])
def test_the_plan_can_be_said(case):
    found = plan_cooling(case).finding
    for language in ("en", "es"):
        for message in (found.seen, found.action):
            assert say(message, Reader(datetime(2026, 11, 25, 9, tzinfo=UTC), language=language))


@pytest.mark.parametrize(
    ("first_p50", "first_p90", "total_p50", "total_p90", "grade"),
    [
        (1.0, 2.0, 4.0, 6.0, "ok"),
        (1.0, 2.1, 4.0, 6.0, "warn"),
        (1.0, 2.0, 4.0, 6.1, "warn"),
        (2.1, 2.2, 4.0, 6.0, "stop"),
        (1.0, 2.0, 6.1, 6.2, "stop"),
        (1.0, 2.0, 5.0, float("inf"), "warn"),
    ],
)
def test_both_stages_must_be_made(first_p50, first_p90, total_p50, total_p90, grade):
    first_h, total_h = Spread(0.5, first_p50, first_p90), Spread(1.0, total_p50, total_p90)
    assert stages_grade(first_h, total_h) == grade


@pytest.mark.parametrize(
    ("severity", "depth_mm", "iced_mm", "key"),
    [
        ("ok", 30.0, 60.0, "measure-stages"),
        ("stop", 30.0, 60.0, "shallower"),
        ("stop", None, 60.0, "ice-bath"),
        ("stop", None, None, "cool-two-stage"),
    ],
)
def test_what_is_advised_is_what_would_do(severity, depth_mm, iced_mm, key):
    assert advice(severity, depth_mm, iced_mm).key == f"safety-do-{key}"


def test_a_place_that_is_not_cold_is_refused():
    with pytest.raises(Impossible, match="colder"):
        plan_cooling(replace(SLICES, medium_c=6.0))
    with pytest.raises(OutOfRange, match="from_c"):
        plan_cooling(replace(SLICES, from_c=15.0))


def test_a_warmer_refrigerator_allows_only_a_thinner_layer():
    assert depth_that_cools(replace(SLICES, medium_c=4.5)) < depth_that_cools(replace(SLICES, medium_c=1.0))
