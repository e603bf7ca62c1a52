import math
from dataclasses import fields, replace

import numpy as np
import pytest

from turnspit.errors import Impossible, OutOfRange, TurnspitError, Unknown
from turnspit.heat.cases import ChillCase
from turnspit.heat.chill import depth_for, forecast_chill
from turnspit.words import keys

SLAB = {"food": "cooked beef", "shape": "slab", "dims_mm": (50.0,), "medium_c": 0.0, "from_c": 70.0, "to_c": 10.0}
POT = {"food": "stock", "shape": "pot", "dims_mm": (250.0, 200.0), "medium_c": 3.0, "from_c": 57.0, "to_c": 21.0}


def median_h(base, **changed):
    return forecast_chill(ChillCase(**{"members": 16, **base, **changed})).hours.p50


def test_faster_air_colder_water_smaller_pieces_cool_sooner():
    still = median_h(SLAB)
    assert median_h(SLAB, air_m_s=1.0) < still
    assert median_h(SLAB, air_m_s=3.0) < median_h(SLAB, air_m_s=1.0)
    assert median_h(SLAB, medium="water") < median_h(SLAB, air_m_s=3.0)
    assert median_h(SLAB, dims_mm=(40.0,)) < still
    assert median_h(SLAB, medium_c=-5.0) < still
    assert median_h(SLAB, to_c=15.0) < still
    assert median_h(SLAB, from_c=60.0) < still


def test_what_is_packed_cools_slower():
    bare = median_h(SLAB, air_m_s=1.0)
    bag, mould, wrap = (median_h(SLAB, air_m_s=1.0, packaging=cover) for cover in ("bag", "mould", "wrap"))
    assert bare < mould < bag < wrap


def test_a_stirred_pot_in_ice_is_the_quickest():
    air = median_h(POT)
    ice = median_h(POT, medium="ice_bath")
    assert median_h(POT, medium="ice_bath", stirred=True) < ice < air / 3


@pytest.mark.parametrize("stirred", [False, True])
@pytest.mark.parametrize("medium", ["air", "ice_bath"])
def test_more_in_a_pot_takes_longer_at_every_size(medium, stirred):
    pot = {"food": "stock", "shape": "pot", "medium": medium, "stirred": stirred, "medium_c": 0.0, "from_c": 95.0}
    hours = [
        median_h(pot, mass_kg=kg, to_c=5.0) for kg in (0.3, 0.6, 1.0, 1.4, 2.0, 3.0, 5.0, 10.0, 20.0, 30.0, 60.0)
    ]
    assert hours == sorted(hours)


def test_a_roll_or_a_boned_joint_told_by_mass_cools_sooner_than_a_block():
    joint = {"shape": "brick", "mass_kg": 6.4, "medium_c": 0.0, "air_m_s": 1.2, "from_c": 70.0, "to_c": 10.0}
    assert median_h(joint, food="boned turkey") < median_h(joint, food="turkey roast")
    assert median_h(joint, food="boned turkey") == pytest.approx(
        median_h({**joint, "shape": "cylinder"}, food="turkey"), rel=0.05
    )


def test_a_large_load_warms_a_still_refrigerator():
    pot = {"food": "stew", "shape": "pot", "mass_kg": 50.0, "medium_c": 4.0, "from_c": 57.0, "to_c": 10.0}
    still = forecast_chill(ChillCase(**pot, members=16))
    assert "heat-chill-large-load" in {told.key for told in still.assumptions}
    assert "heat-chill-large-load" not in {
        told.key for told in forecast_chill(ChillCase(**{**pot, "mass_kg": 1.0}, members=16)).assumptions
    }
    assert "heat-chill-large-load" not in {
        told.key for told in forecast_chill(ChillCase(**pot, air_m_s=1.0, members=16)).assumptions
    }


def test_thick_soup_is_slower_than_stock():
    assert median_h(POT, food="chili", medium="ice_bath") > 2 * median_h(POT, medium="ice_bath")


def test_it_is_said_whether_a_pot_was_taken_as_thick_or_thin():
    told = {
        food: {message.key for message in forecast_chill(ChillCase(**{**POT, "food": food}, members=4)).assumptions}
        for food in ("stock", "chicken soup", "lentils", "something")
    }
    assert "heat-chill-thin" in told["stock"]
    assert all("heat-chill-thick" in told[food] for food in ("chicken soup", "lentils", "something"))
    stirred = forecast_chill(ChillCase(**POT, stirred=True, members=4)).assumptions
    assert not {"heat-chill-thin", "heat-chill-thick"} & {message.key for message in stirred}


def test_a_layer_of_given_mass_is_quicker_than_an_endless_one():
    assert median_h(SLAB, mass_kg=0.94) < median_h(SLAB)


def test_mass_tells_how_full_the_box_is():
    box = {**SLAB, "shape": "brick", "dims_mm": (330.0, 160.0, 130.0), "packaging": "bag"}
    assert median_h(box, mass_kg=3.75) < median_h(box)
    with pytest.raises(Impossible, match="do not fit into 6"):
        median_h(box, mass_kg=12.0)


@pytest.mark.parametrize("mass_kg", [None, 1.8])
def test_edges_may_be_told_in_any_order(mass_kg: float | None) -> None:
    one, other = (
        forecast_chill(ChillCase("cooked beef", "slab", dims_mm, mass_kg, members=8)).hours.p50
        for dims_mm in ((50.0, 200.0), (200.0, 50.0))
    )
    assert one == other


def test_a_rectangular_pan_is_a_pot_whose_least_edge_is_the_depth() -> None:
    pan = {"food": "chili", "shape": "pot", "medium_c": 3.0}
    assert median_h(pan, dims_mm=(530.0, 325.0, 65.0)) == median_h(pan, dims_mm=(65.0, 325.0, 530.0))
    assert median_h(pan, dims_mm=(530.0, 325.0, 65.0)) < median_h(pan, dims_mm=(530.0, 325.0, 100.0))
    half_full = median_h(pan, dims_mm=(530.0, 325.0, 100.0), mass_kg=8.0)
    assert half_full < median_h(pan, dims_mm=(530.0, 325.0, 100.0))
    with pytest.raises(Impossible, match="do not fit"):
        median_h(pan, dims_mm=(530.0, 325.0, 65.0), mass_kg=40.0)


def test_a_pot_told_by_its_width_is_full_and_as_deep_as_wide() -> None:
    wide = ChillCase("stock", "pot", (300.0,), members=8)
    forecast = forecast_chill(wide)
    assert "heat-chill-full-pot" in {message.key for message in forecast.assumptions}
    both = forecast_chill(replace(wide, dims_mm=(300.0, 300.0)))
    assert forecast.hours.p50 == pytest.approx(both.hours.p50, rel=0.05)


@pytest.mark.parametrize("dims_mm", [(95.0,), (95.0, 115.0), (115.0, 267.0)])
def test_what_is_not_told_of_a_brick_follows_from_its_mass(dims_mm: tuple[float, ...]) -> None:
    forecast = forecast_chill(ChillCase("cooked beef", "brick", dims_mm, 2.0, members=8))
    assert "heat-chill-edges-by-mass" in {message.key for message in forecast.assumptions}
    by_mass = forecast_chill(ChillCase("cooked beef", "brick", (), 2.0, members=8)).hours.p50
    assert forecast.hours.p50 == pytest.approx(by_mass, rel=0.2)


def test_a_bird_is_sized_by_its_mass_whatever_its_dimensions() -> None:
    bird = ChillCase("turkey", "bird", (), 6.0, members=8)
    told = forecast_chill(replace(bird, dims_mm=(300.0, 220.0)))
    assert told.hours == forecast_chill(bird).hours
    assert "heat-chill-bird-by-mass" in {message.key for message in told.assumptions}


def test_what_does_not_freeze_there_may_be_chilled_below_zero() -> None:
    cold = {**SLAB, "medium_c": -2.0, "air_m_s": 2.0}
    assert median_h(cold, to_c=1.0) < median_h(cold, to_c=0.0) < median_h(cold, to_c=-1.0)
    with pytest.raises(OutOfRange, match="begins to freeze"):
        median_h(cold, food="stock", shape="pot", dims_mm=(200.0, 200.0), to_c=-0.5)


def test_a_pan_on_a_shelf_cools_more_slowly_than_a_slab_and_says_so() -> None:
    slices = ChillCase("beef", "slab", (50.0,))
    ground = forecast_chill(replace(slices, food="ground beef"))
    assert "heat-chill-pan-on-shelf" in {message.key for message in ground.assumptions}
    assert ground.hours.p90 > 1.15 * forecast_chill(slices).hours.p90


def test_carved_meat_lies_in_a_pan() -> None:
    whole, carved, bagged = (
        forecast_chill(ChillCase(food, "slab", (40.0,), packaging=packaging)).hours.p90
        for food, packaging in (("turkey", None), ("carved turkey", None), ("carved turkey", "bag"))
    )
    assert bagged < carved
    assert carved > 1.15 * whole


def test_a_slab_of_two_edges_is_a_square_one_and_a_roll_without_height_a_long_one():
    assert median_h(SLAB, dims_mm=(50.0, 130.0)) == pytest.approx(median_h(SLAB, dims_mm=(50.0, 130.0, 130.0)))
    roll = {**SLAB, "shape": "cylinder"}
    assert median_h(roll, dims_mm=(110.0,)) > median_h(roll, dims_mm=(110.0, 250.0))


def test_quarters_cool_sooner_than_the_whole():
    whole = {"food": "turkey roast", "shape": "brick", "mass_kg": 5.0, "medium_c": 4.0, "from_c": 74.0, "to_c": 21.0}
    assert median_h(whole, mass_kg=1.25) < 0.5 * median_h(whole)


def test_the_curve_falls_from_start_to_end_and_holds_the_hours():
    forecast = forecast_chill(ChillCase(**SLAB))
    assert forecast.slowest_c[:, 0] == pytest.approx(70.0)
    assert np.all(np.diff(forecast.slowest_c, axis=1) < 0.05)
    between = forecast.hours_between(70.0, 10.0)
    assert between.p50 == pytest.approx(forecast.hours.p50, rel=0.02)
    assert forecast.hours_between(57.2, 21.1).p50 < between.p50
    assert math.isinf(forecast.hours_between(70.0, 1.0).p50)
    assert forecast.hours_between(20.0, 60.0).p90 == 0.0


@pytest.mark.parametrize("ends", [(math.nan, 10.0), (70.0, math.nan), (70.0, -math.inf), (500.0, 10.0)])
def test_hours_between_what_is_no_temperature_are_refused(ends: tuple[float, float]) -> None:
    forecast = forecast_chill(ChillCase("cooked beef", "slab", (50.0,), members=4))
    with pytest.raises(OutOfRange, match="_c "):
        forecast.hours_between(*ends)


def test_the_depth_that_makes_the_hours():
    layer = ChillCase("cooked beef", "slab", (50.0,), medium_c=3.3, air_m_s=1.0, from_c=57.2, to_c=21.1, members=16)
    depth_mm = depth_for(layer, 2.0)
    assert 10 < depth_mm < 100
    assert (
        forecast_chill(
            ChillCase(
                "cooked beef", "slab", (depth_mm,), medium_c=3.3, air_m_s=1.0, from_c=57.2, to_c=21.1, members=16
            )
        ).hours.p90
        <= 2.0
    )
    assert depth_for(layer, 100.0) == 150.0
    with pytest.raises(OutOfRange, match="use smaller pieces or an ice bath"):
        depth_for(layer, 0.05)


def test_a_slow_cooling_is_warned_about():
    slow = forecast_chill(ChillCase("turkey", "bird", mass_kg=7.0, medium_c=3.3, from_c=74.0, to_c=5.5, members=16))
    assert [(told.rule, told.severity) for told in slow.cautions] == [("cooling-two-stage", "warn")]
    quick = forecast_chill(ChillCase("beef", "slab", (20.0,), medium="ice_bath", from_c=60.0, to_c=5.0, members=16))
    assert [told.severity for told in quick.cautions] == ["info"]


def test_a_forecast_that_ends_above_the_stages_is_judged_as_far_as_it_goes():
    brief = forecast_chill(ChillCase(**{**SLAB, "to_c": 50.0, "members": 8}))
    assert [told.severity for told in brief.cautions] == ["info"]


def test_fine_steps_change_nothing(monkeypatch):
    coarse = median_h(SLAB, air_m_s=1.2), median_h(POT, medium="ice_bath")
    monkeypatch.setattr("turnspit.heat.chill._STEPS_TO_EXPECTED", 400)
    assert coarse == pytest.approx((median_h(SLAB, air_m_s=1.2), median_h(POT, medium="ice_bath")), rel=0.005)


@pytest.mark.parametrize(
    ("changed", "error", "told"),
    [
        ({"to_c": 80.0}, Impossible, "cooling goes downward"),
        ({"medium_c": 12.0}, Impossible, "use a colder place"),
        ({"from_c": 120.0}, OutOfRange, "is above 100"),
        ({"from_c": float("nan")}, OutOfRange, "from_c"),
        ({"medium_c": -60.0}, OutOfRange, "is below -30"),
        ({"medium_c": -15.0, "medium": "water"}, OutOfRange, "is below -10"),
        ({"air_m_s": 30.0}, OutOfRange, "is above 10"),
        ({"dims_mm": (5000.0,)}, OutOfRange, "full thicknesses in mm"),
        ({"dims_mm": (50.0, 60.0), "shape": "brick"}, Impossible, "are too few"),
        ({"dims_mm": (50.0, 60.0, 70.0, 80.0)}, Impossible, "are too many"),
        ({"dims_mm": ()}, Impossible, "or give mass_kg"),
        ({"dims_mm": (), "shape": "bird"}, Impossible, "a bird is sized by its mass"),
        ({"mass_kg": -2.0}, Impossible, "is not above 0"),
        ({"mass_kg": 900.0}, OutOfRange, "is that pounds"),
        ({"members": 0}, OutOfRange, "is below 1"),
        ({"seed": -1}, OutOfRange, "is below 0"),
        ({"shape": "cone"}, Unknown, "slab, cylinder"),
        ({"medium": "oil"}, Unknown, "air, water, ice_bath"),
        ({"packaging": "box"}, Unknown, "bag, mould, wrap"),
        ({"medium": "ice_bath", "medium_c": 30.0}, OutOfRange, "ice holds its bath near 0.5 C"),
        ({"dims_mm": (1000.0, 1000.0, 1000.0), "shape": "brick"}, OutOfRange, "is above 520 in the thinnest"),
        ({"dims_mm": (400.0, 800.0, 900.0), "shape": "brick"}, OutOfRange, "which is above 100"),
        ({"dims_mm": (), "mass_kg": 100.0, "shape": "bird"}, OutOfRange, "is above 20"),
    ],
)
def test_what_cannot_be_is_refused(changed, error, told):
    with pytest.raises(error, match=told):
        forecast_chill(ChillCase(**{**SLAB, **changed}))


NONSENSE = ("3", "", None, float("nan"), float("inf"), -float("inf"), 1e300, True, {}, b"x", 1 + 2j)
SENSE = {("mass_kg", None), ("packaging", None), ("stirred", True), ("food", "3")}


@pytest.mark.parametrize("field", [field.name for field in fields(ChillCase)])
@pytest.mark.parametrize("value", NONSENSE, ids=repr)
def test_nonsense_in_any_field_is_refused_by_name(field, value):
    if (field, value) in SENSE if isinstance(value, str | bool | None) else False:
        return
    with pytest.raises(TurnspitError) as refused:
        forecast_chill(ChillCase(**{**SLAB, field: value}))
    assert refused.value.name == field


@pytest.mark.parametrize("value", [value for value in NONSENSE if value is not None], ids=repr)
def test_nonsense_among_the_dimensions_is_refused(value):
    with pytest.raises(TurnspitError, match="dims_mm"):
        forecast_chill(ChillCase(**{**SLAB, "dims_mm": (value,)}))


def test_a_depth_for_no_hours_is_refused():
    layer = ChillCase(**SLAB, members=8)
    for hours in (float("nan"), float("inf"), "2", None):
        with pytest.raises(TurnspitError, match="hours"):
            depth_for(layer, hours)
    with pytest.raises(Impossible, match="certainty"):
        depth_for(layer, 2.0, certainty=0.8)


def test_all_that_is_said_has_a_text():
    cases = (
        {**SLAB, "medium": "water", "food": "something"},
        {**POT, "food": "something", "medium": "ice_bath"},
        {**SLAB, "shape": "brick", "dims_mm": (), "mass_kg": 3.0},
        {**SLAB, "shape": "bird", "dims_mm": (), "mass_kg": 3.0},
    )
    said = {told.key for case in cases for told in forecast_chill(ChillCase(**case, members=4)).assumptions}
    assert len(said) == 9
    said |= {
        told.key
        for told in forecast_chill(ChillCase(**{**POT, "mass_kg": 50.0, "dims_mm": ()}, members=4)).assumptions
    }
    assert said <= keys("en") & keys("es")


@pytest.mark.parametrize("cover", ["bag", "mould", "wrap"])
def test_a_pot_that_is_packed_is_slower_than_a_bare_one_of_any_size(cover):
    for mass_kg in (0.3, 1.0, 10.0):
        pot = {**POT, "dims_mm": (), "mass_kg": mass_kg, "medium": "ice_bath"}
        assert median_h(pot) < median_h(pot, packaging=cover)


def test_brine_below_freezing_cools_sooner_and_is_told() -> None:
    medians = [
        median_h(SLAB, medium="water", medium_c=medium_c, packaging="bag") for medium_c in (2.0, 0.0, -4.0, -10.0)
    ]
    assert medians == sorted(medians, reverse=True)
    told = forecast_chill(ChillCase(**{**SLAB, "medium": "water", "medium_c": -4.0})).assumptions
    assert "heat-chill-glycol" in {message.key for message in told}


def test_a_pan_on_ice_is_far_slower_than_a_bag_in_it() -> None:
    rice = {"food": "cooked rice", "shape": "slab", "dims_mm": (50.0,), "medium": "ice_bath", "from_c": 57.0}
    assert median_h(rice) > 1.7 * median_h(rice, packaging="bag")
    told = {message.key for message in forecast_chill(ChillCase(**rice)).assumptions}
    assert "heat-chill-pan-on-ice" in told
    assert "heat-chill-bare" not in told
