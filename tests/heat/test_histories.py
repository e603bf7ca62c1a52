"""What happens to a roast in its oven and after: neighbours, pans, covers, bastings, hot starts, wrappings."""

from dataclasses import replace

import pytest

from turnspit.errors import Impossible, Unknown
from turnspit.heat import KINDS, OvenStep, RoastCase, forecast_roast, roast
from turnspit.heat.crowding import household_pieces

TURKEY = RoastCase("turkey", 6.35, members=32)


def median_min(case: RoastCase) -> float:
    return forecast_roast(replace(case, members=1)).ready_min.p50


def test_each_further_piece_takes_longer_and_what_no_household_oven_holds_is_said() -> None:
    minutes = [median_min(replace(TURKEY, count=count)) for count in (1, 2, 4, 5, 8, 12)]
    assert minutes == sorted(set(minutes))
    assert minutes[-1] < 1.5 * minutes[0]
    said = {
        count: {message.key for message in forecast_roast(replace(TURKEY, count=count, members=1)).assumptions}
        for count in (1, 2, 3)
    }
    assert "heat-count" in said[2]
    assert "heat-count-crowded" not in said[2]
    assert "heat-count-crowded" in said[3]


def test_a_household_oven_holds_fewer_the_heavier_they_are() -> None:
    assert [household_pieces(mass_kg) for mass_kg in (0.6, 2.0, 6.3, 9.0, 14.0)] == [12, 4, 2, 1, 1]


def test_a_dark_pan_is_quicker_than_a_light_one_and_each_is_told() -> None:
    # FSIS, Turkey from Farm to Table: dark roasting pans cook faster than shiny metals
    dark, untold, light = (median_min(replace(TURKEY, pan=pan)) for pan in ("dark", "any", "light"))
    assert dark < untold < light < 1.15 * dark
    for pan in ("dark", "light", "glass"):
        forecast = forecast_roast(replace(TURKEY, pan=pan, members=1))
        assert f"heat-pan-{pan}" in {message.key for message in forecast.assumptions}
        assert ("glass-pan" in {caution.rule for caution in forecast.cautions}) == (pan == "glass")
    with pytest.raises(Unknown, match="pan"):
        forecast_roast(replace(TURKEY, pan="copper"))  # type: ignore[arg-type]


def test_foil_all_along_slows_a_turkey_lid_and_bag_speed_it() -> None:
    # FSIS, Turkey from Farm to Table
    foil, bare, lid, bag = (
        median_min(replace(TURKEY, oven=(OvenStep(0.0, 163.0, cover=cover),)))
        for cover in ("foil", "none", "lid", "bag")
    )
    assert bag < lid < bare < foil


def test_each_basting_costs_more_than_a_look_and_is_told() -> None:
    shut, looked, basted = (
        median_min(replace(TURKEY, **{name: (60.0, 90.0, 120.0)} if name else {}))
        for name in ("", "openings_min", "bastings_min")
    )
    assert shut + 1.0 < looked + 1.0 < basted < shut + 20.0
    forecast = forecast_roast(replace(TURKEY, bastings_min=(60.0,), members=1))
    assert "heat-bastings" in {message.key for message in forecast.assumptions}
    with pytest.raises(Impossible, match="bastings_min"):
        forecast_roast(replace(TURKEY, bastings_min=("often",)))  # type: ignore[arg-type]


def test_what_rests_in_its_wrapping_rises_most() -> None:
    rises = [forecast_roast(replace(TURKEY, rest_place=place)).peak_c["breast"].p50 for place in ("board", "wrapped")]
    assert rises[0] < rises[1]


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_may_start_in_the_hottest_household_oven(kind: str) -> None:
    row = roast(kind)
    hot = RoastCase(kind, row.usual_mass_kg, oven=(OvenStep(0.0, 260.0), OvenStep(20.0, 163.0)), members=8)
    forecast = forecast_roast(hot)
    assert forecast.ready_min.p50 < median_min(replace(hot, oven=(OvenStep(0.0, 163.0),)))
    keys = {message.key for message in forecast.assumptions}
    assert keys & {"heat-oven-extrapolated", "heat-oven-extrapolated-one"}


def test_nothing_loses_more_than_its_water() -> None:
    parched = RoastCase(
        "capon",
        4.4,
        state="frozen",
        oven=(OvenStep(0.0, 257.0, True),),
        target_c=90.0,
        oven_vapour_pa=0.0,
        members=16,
    )
    assert forecast_roast(parched).loss_fraction.p90 <= 0.65


def test_tied_round_is_later_lying_flat_sooner_and_each_is_told() -> None:
    rib = RoastCase("beef_rib", 3.0, bone_in=False, target_c=57.0)
    for case, form in ((rib, "joint"), (TURKEY, "bird")):
        flat, untold, tied = (median_min(replace(case, tied=tied)) for tied in (False, None, True))
        assert flat < untold < tied < 1.25 * flat
        said = {message.key for message in forecast_roast(replace(case, tied=True, members=1)).assumptions}
        assert f"heat-tied-{form}" in said
    breasts = {forecast_roast(replace(TURKEY, tied=tied)).history_c["breast"][10, 0] for tied in (None, True)}
    assert len(breasts) == 1
    with pytest.raises(Impossible, match="tied"):
        forecast_roast(replace(rib, tied="with string"))  # type: ignore[arg-type]


def test_what_came_out_covered_rests_so_unless_it_is_said_otherwise() -> None:
    def rests(case: RoastCase) -> str:
        keys = (message.key for message in forecast_roast(replace(case, members=1)).assumptions)
        return next(key for key in keys if key.startswith("heat-rest-"))

    uncovered = (OvenStep(0.0, 163.0, cover="foil"), OvenStep(60.0, 163.0))
    wrapped = (OvenStep(0.0, 163.0, cover="foil"),)
    loin = RoastCase("pork_loin", 1.5)
    assert rests(replace(loin, oven=uncovered)) == "heat-rest-board"
    assert rests(replace(loin, oven=wrapped)) == "heat-rest-wrapped"
    assert rests(replace(loin, oven=wrapped, rest_place="board")) == "heat-rest-board"
    assert rests(replace(TURKEY, oven=wrapped)) == "heat-rest-foil"


def test_a_roast_that_cools_again_in_an_oven_turned_off_was_ready_when_it_got_there() -> None:
    oven = (OvenStep(0.0, 250.0), OvenStep(60.0, 20.0))
    ribs = RoastCase("beef_rib", 3.0, oven=oven, target_c=57.0, members=64)
    early, later = (forecast_roast(replace(ribs, pull_c=pull_c)).ready_min for pull_c in (53.5, 60.0))
    assert early.p50 < later.p50 < 2.0 * early.p50
    with pytest.raises(Impossible, match="turned off leaves 100% of such roasts under 90 C"):
        forecast_roast(replace(ribs, target_c=90.0))
