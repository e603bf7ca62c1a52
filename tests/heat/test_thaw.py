from dataclasses import fields

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from turnspit.errors import Impossible, OutOfRange, TurnspitError, Unknown
from turnspit.heat.cases import ThawCase
from turnspit.heat.roasts import KINDS
from turnspit.heat.thaw import THAWED_C, forecast_thaw
from turnspit.reference import table
from turnspit.words import keys


def few(*args, **kw):
    return forecast_thaw(ThawCase(*args, **{"members": 16, **kw}))


@pytest.mark.parametrize("kind", KINDS)
def test_every_piece_thaws_and_plans_by_the_safer(kind):
    thaw = few(kind, 2.0)
    assert thaw.plan_h >= thaw.model_h.p90
    if thaw.rule_h:
        assert thaw.plan_h >= thaw.rule_h[1]
    assert thaw.model_h.p10 < thaw.model_h.p50 < thaw.model_h.p90


def test_a_big_bird_in_the_refrigerator_goes_by_the_rule_and_a_small_one_by_the_model():
    large, small = few("turkey", 10.0), few("chicken", 1.5)
    assert large.plan_h == pytest.approx(large.rule_h[1])
    assert large.rule_h[1] == pytest.approx(10 / 0.45359237 * 6, rel=1e-3)  # a day for every 4 lb
    assert small.plan_h == pytest.approx(small.model_h.p90)
    assert small.plan_h > small.rule_h[1]


def test_a_cut_without_a_federal_table_says_so():
    beef = few("beef_rib", 4.0)
    assert beef.rule_h is None
    assert "heat-thaw-no-rule" in [told.key for told in beef.assumptions]
    assert "heat-thaw-no-rule" not in [told.key for told in few("turkey", 6.0).assumptions]


def test_the_core_is_thawed_at_the_median_hour():
    thaw = few("turkey", 6.0, members=1)
    assert np.interp(thaw.model_h.p50, thaw.curve_h, thaw.core_c) == pytest.approx(THAWED_C, abs=0.02)


def test_the_surface_stays_cold_in_the_refrigerator_and_not_in_water():
    cold, water = few("turkey", 9.0), few("turkey", 9.0, "cold_water")
    assert cold.surface_above_5c_h.p90 == 0
    assert water.surface_above_5c_h.p10 > 4
    assert "thaw-four-hours" in [told.rule for told in water.cautions]
    assert "thaw-four-hours" not in [told.rule for told in cold.cautions]
    assert few("turkey", 9.0, "cold_water", medium_c=2.0).surface_above_5c_h.p90 == 0


def test_both_in_turn_lies_between_the_two():
    water, cold = few("turkey", 7.0, "cold_water"), few("turkey", 7.0)
    both = few("turkey", 7.0, "cold_water", refrigerator_h=30.0)
    assert 30 < both.model_h.p50 < cold.model_h.p50
    assert both.model_h.p50 - 30 < water.model_h.p50
    assert both.rule_h[1] < 30 + water.rule_h[1]
    assert few("turkey", 7.0, "cold_water", refrigerator_h=190.0).model_h.p50 == pytest.approx(
        cold.model_h.p50, rel=0.02
    )


def test_the_same_case_gives_the_same_hours():
    assert few("duck", 2.5).model_h == few("duck", 2.5).model_h
    assert few("duck", 2.5).model_h != few("duck", 2.5, seed=2).model_h


def test_fine_steps_change_nothing(monkeypatch):
    coarse = few("turkey", 7.0).model_h
    monkeypatch.setattr("turnspit.heat.thaw._STEPS_TO_EXPECTED", 500)
    fine = few("turkey", 7.0).model_h
    assert coarse.p50 == pytest.approx(fine.p50, rel=0.01)
    assert coarse.p90 == pytest.approx(fine.p90, rel=0.015)


@settings(max_examples=15, deadline=None)
@given(
    st.floats(0.5, 12.0),
    st.sampled_from(["turkey", "pork_loin", "lamb_leg"]),
    st.sampled_from(["refrigerator", "cold_water"]),
)
def test_heavier_or_colder_takes_longer(mass_kg, kind, method):
    here = few(kind, mass_kg, method)
    assert few(kind, mass_kg * 1.2, method).model_h.p50 > here.model_h.p50
    assert few(kind, mass_kg, method, start_c=-5.0).model_h.p50 < here.model_h.p50
    warmer = 6.0 if method == "refrigerator" else 15.0
    assert few(kind, mass_kg, method, medium_c=warmer).model_h.p50 < here.model_h.p50


@pytest.mark.parametrize(
    ("changed", "error", "told"),
    [
        ({"mass_kg": 410.0}, OutOfRange, "is above 20: give the mass of one piece; is that pounds"),
        ({"mass_kg": float("nan")}, Impossible, "is not above 0"),
        ({"mass_kg": -1.0}, Impossible, "is not above 0"),
        ({"medium_c": 21.0}, OutOfRange, "not on the counter"),
        ({"medium_c": 24.0, "method": "cold_water"}, OutOfRange, "cool warm tap water with ice"),
        ({"start_c": 5.0}, OutOfRange, "a freezer is about -18 C"),
        ({"kind": "unicorn"}, Unknown, "turkey"),
        ({"refrigerator_h": -1.0, "method": "cold_water"}, OutOfRange, "is below 0"),
        ({"refrigerator_h": 1e6, "method": "cold_water"}, OutOfRange, "is above 200"),
        ({"refrigerator_h": 12.0}, Impossible, "give method cold_water"),
        ({"start_c": -0.5}, Impossible, "is not frozen: meat holds ice below -1.7 C only"),
        ({"method": "microwave"}, Unknown, "refrigerator, cold_water"),
        ({"members": 1.5}, Impossible, "is no whole number"),
        ({"seed": -1}, OutOfRange, "is below 0"),
        ({"members": 0}, OutOfRange, "is below 1"),
    ],
)
def test_what_cannot_be_is_refused(changed, error, told):
    with pytest.raises(error, match=told):
        forecast_thaw(ThawCase(**{"kind": "turkey", "mass_kg": 6.0, **changed}))


def test_a_piece_with_some_ice_is_told_apart_from_one_without():
    part = few("turkey", 6.0, start_c=-2.0)
    assert 0 < part.model_h.p50 < 0.5 * few("turkey", 6.0).model_h.p50
    assert "heat-thaw-part-frozen" in {told.key for told in part.assumptions}
    assert "heat-thaw-part-frozen" not in {told.key for told in few("turkey", 6.0).assumptions}


NONSENSE = ("3", "", None, float("nan"), float("inf"), -float("inf"), 1e300, True, [], (), {}, b"x", 1 + 2j)


@pytest.mark.parametrize("field", [field.name for field in fields(ThawCase)])
@pytest.mark.parametrize("value", NONSENSE, ids=repr)
def test_nonsense_in_any_field_is_refused_by_name(field, value):
    if field == "medium_c" and value is None:
        return  # the usual one
    with pytest.raises(TurnspitError) as refused:
        forecast_thaw(ThawCase(**{"kind": "turkey", "mass_kg": 6.0, field: value}))
    assert refused.value.name == field


def test_all_that_is_said_has_a_text():
    said = {told.key for kind in ("turkey", "beef_rib") for told in few(kind, 5.0, "cold_water").assumptions}
    said |= {told.key for told in few("turkey", 5.0).assumptions}
    both = few("turkey", 5.0, "cold_water", refrigerator_h=24.0).assumptions
    assert "heat-thaw-both" in {told.key for told in both}
    said |= {told.key for told in both}
    said |= {told.key for told in few("turkey", 5.0, start_c=-3.0).assumptions}
    assert said <= keys("en") & keys("es")


def test_every_shape_belongs_to_a_roast():
    shapes = set(table("pieces").by("piece")) - {"bird", "joint"}
    assert shapes <= set(KINDS)
