"""The forecast of a roast as a whole: what it holds, what moves it, what it refuses."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.heat import KINDS, OvenStep, RoastCase, forecast_roast, roast

TURKEY = RoastCase("turkey", 6.35, members=32)


def median_min(case: RoastCase) -> float:
    return forecast_roast(replace(case, members=1)).ready_min.p50


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_is_forecast_at_its_usual_mass_and_oven(kind: str) -> None:
    row = roast(kind)
    case = RoastCase(kind, row.usual_mass_kg, oven=(OvenStep(0.0, row.usual_oven_c),), members=16)
    forecast = forecast_roast(case)
    names = {place.name for place in row.stations}
    assert forecast.deciding_station in names
    assert set(forecast.peak_c) == set(forecast.curve_c) == set(forecast.history_c) == names
    assert 0.0 < forecast.ready_min.p10 < forecast.ready_min.p50 < forecast.ready_min.p90
    assert 0.05 < forecast.loss_fraction.p50 < 0.45
    assert forecast.advised_pull_c <= forecast.target_c
    assert forecast.calibration == row.calibration
    assert any(caution.rule == "thermometer-decides" for caution in forecast.cautions)


def test_the_shapes_are_those_of_the_contract() -> None:
    forecast = forecast_roast(TURKEY)
    assert forecast.ready_members_min.shape == (32,)
    for name, curve in forecast.curve_c.items():
        assert curve.shape == (3, len(forecast.curve_min)), name
        assert np.all(np.diff(curve, axis=0) >= 0.0)
    for history in forecast.history_c.values():
        assert history.shape == (len(forecast.history_min), 32)
        assert history[-1].min() > forecast.target_c


def test_the_same_seed_gives_the_same_forecast_and_another_seed_another() -> None:
    first, again = forecast_roast(TURKEY), forecast_roast(TURKEY)
    np.testing.assert_array_equal(first.ready_members_min, again.ready_members_min)
    other = forecast_roast(replace(TURKEY, seed=2))
    assert not np.array_equal(first.ready_members_min, other.ready_members_min)
    assert other.ready_min.p50 == pytest.approx(first.ready_min.p50, rel=0.05)


def test_one_member_sits_at_the_median() -> None:
    """Of a roast with one place; with several the slowest of them is later than any one's median."""
    rib = RoastCase("beef_rib", 3.0, target_c=57.0)
    assert median_min(rib) == pytest.approx(forecast_roast(rib).ready_min.p50, rel=0.02)
    assert median_min(TURKEY) < forecast_roast(replace(TURKEY, members=256)).ready_min.p50


@settings(max_examples=15, deadline=None)
@given(st.floats(3.0, 13.0), st.floats(1.02, 1.4))
def test_a_heavier_bird_takes_longer(mass_kg: float, factor: float) -> None:
    heavier = min(mass_kg * factor, 14.0)
    assert median_min(RoastCase("turkey", heavier)) > median_min(RoastCase("turkey", mass_kg))


@settings(max_examples=15, deadline=None)
@given(st.floats(120.0, 220.0), st.floats(2.0, 15.0))
def test_a_hotter_oven_is_quicker_and_loses_no_less_in_an_hour(oven_c: float, more_k: float) -> None:
    def at(c: float) -> float:
        return median_min(replace(TURKEY, oven=(OvenStep(0.0, c),)))

    assert at(oven_c + more_k) < at(oven_c)


@pytest.mark.parametrize(
    ("slower", "quicker"),
    [
        (TURKEY, replace(TURKEY, oven=(OvenStep(0.0, 163.0, True),))),
        (TURKEY, replace(TURKEY, start_c=15.0)),
        (TURKEY, replace(TURKEY, oven_vapour_pa=30000.0)),
        (TURKEY, replace(TURKEY, oven=(OvenStep(0.0, 220.0), OvenStep(30.0, 163.0)))),
        (TURKEY, replace(TURKEY, oven=(OvenStep(0.0, 163.0, cover="bag"),))),
        (replace(TURKEY, target_c=82.0), TURKEY),
        (replace(TURKEY, count=2), TURKEY),
        (replace(TURKEY, stuffed=True), TURKEY),
        (replace(TURKEY, state="part_frozen"), TURKEY),
        (replace(TURKEY, state="frozen"), replace(TURKEY, state="part_frozen")),
        (replace(TURKEY, preheated=False), TURKEY),
        (replace(TURKEY, openings_min=(60.0, 120.0)), TURKEY),
        (replace(TURKEY, oven=(OvenStep(0.0, 163.0), OvenStep(100.0, 140.0))), TURKEY),
        (replace(TURKEY, oven=(OvenStep(0.0, 163.0, cover="foil"), OvenStep(90.0, 163.0))), TURKEY),
    ],
)
def test_what_makes_a_roast_slower(slower: RoastCase, quicker: RoastCase) -> None:
    assert median_min(slower) > median_min(quicker)


def test_an_opened_door_costs_one_to_three_minutes() -> None:
    cost = median_min(replace(TURKEY, openings_min=(100.0,))) - median_min(TURKEY)
    assert 1.0 <= cost <= 3.0


def test_pulling_at_the_advised_temperature_peaks_at_the_target() -> None:
    case = RoastCase("beef_rib", 3.0, target_c=57.0)
    advised_c = forecast_roast(case).advised_pull_c
    forecast = forecast_roast(replace(case, pull_c=advised_c))
    assert advised_c < 57.0
    assert forecast.peak_c["centre"].p50 == pytest.approx(57.0, abs=0.4)


@pytest.mark.parametrize(
    ("kind", "mass_kg", "oven_c"), [("turkey", 6.4, 163.0), ("goose", 4.5, 163.0), ("duck", 2.2, 200.0)]
)
def test_a_bird_at_its_advised_pull_has_every_place_at_the_target(kind: str, mass_kg: float, oven_c: float) -> None:
    case = RoastCase(kind, mass_kg, oven=(OvenStep(0.0, oven_c),))
    advised_c = forecast_roast(case).advised_pull_c
    peaks = forecast_roast(replace(case, pull_c=advised_c)).peak_c
    assert advised_c < 74.0
    assert min(peak.p50 for peak in peaks.values()) >= 74.0
    assert forecast_roast(replace(case, rest_min=0.0)).advised_pull_c == 74.0


@pytest.mark.parametrize("oven_c", [177.0, 205.0, 230.0])
@pytest.mark.parametrize("fan", [False, True])
@pytest.mark.parametrize("kind", KINDS)
def test_no_advice_counts_on_a_rise_that_nobody_saw(kind: str, oven_c: float, fan: bool) -> None:
    row = roast(kind)
    for target_c in (min(row.doneness.values()), max(row.doneness.values())):
        case = RoastCase(kind, row.usual_mass_kg, oven=(OvenStep(0.0, oven_c, fan),), target_c=target_c, members=48)
        forecast = forecast_roast(case)
        assert max(40.0, target_c - 10.0) <= forecast.advised_pull_c <= target_c
        forecast_roast(replace(case, pull_c=forecast.advised_pull_c))  # as a plan asks it again


@pytest.mark.parametrize(
    ("case", "widest"),
    [
        (RoastCase("pork_shoulder", 3.5, oven=(OvenStep(0.0, 121.0),), target_c=93.0), 1.8),
        (RoastCase("pork_shoulder", 3.5, oven=(OvenStep(0.0, 107.0),), target_c=93.0), 2.2),
        (RoastCase("beef_rib", 4.0, oven=(OvenStep(0.0, 93.0),), target_c=57.0), 1.8),
        (RoastCase("beef_tenderloin", 1.5, oven=(OvenStep(0.0, 80.0),), target_c=57.0), 2.3),
        (RoastCase("turkey", 6.0, oven=(OvenStep(0.0, 107.0),)), 1.8),
        (RoastCase("chicken", 1.8, oven=(OvenStep(0.0, 105.0),)), 1.9),
        (RoastCase("fresh_ham", 4.0, oven=(OvenStep(0.0, 93.0, cover="bag"),), target_c=74.0), 1.8),
    ],
    ids=lambda case: f"{case.kind} {case.oven[0].temperature_c:g} C" if isinstance(case, RoastCase) else "",
)
def test_low_ovens_arrive_in_a_window_with_an_end(case: RoastCase, widest: float) -> None:
    ready = forecast_roast(case).ready_min
    assert ready.p90 < 40 * 60
    assert ready.p90 / ready.p10 < widest


def test_a_shoulder_to_pull_takes_a_night_at_250_fahrenheit() -> None:
    """1 to 1.5 hours a pound at 250 F, 8 to 12 for 7.7 lb (common practice, no source)."""
    ready = forecast_roast(RoastCase("pork_shoulder", 3.5, oven=(OvenStep(0.0, 121.0),), target_c=93.0)).ready_min
    assert ready.p10 / 60 < 12.0
    assert ready.p90 / 60 > 8.0


def test_an_oven_that_is_too_cool_says_how_many_it_leaves() -> None:
    with pytest.raises(Impossible, match=r"oven at 80 C leaves \d+% of such roasts under 75 C"):
        forecast_roast(RoastCase("beef_rib", 5.0, oven=(OvenStep(0.0, 80.0),), target_c=75.0))


def test_without_a_rest_nothing_rises() -> None:
    forecast = forecast_roast(RoastCase("beef_rib", 3.0, target_c=57.0, rest_min=0.0))
    assert forecast.peak_c["centre"].p50 == pytest.approx(57.0, abs=0.02)
    assert forecast.advised_pull_c == 57.0


def test_foil_and_a_warm_cupboard_keep_the_heat() -> None:
    board = forecast_roast(TURKEY).peak_c["breast"].p50
    assert forecast_roast(replace(TURKEY, rest_place="foil")).peak_c["breast"].p50 > board
    assert forecast_roast(replace(TURKEY, rest_place="cupboard")).peak_c["breast"].p50 > board


def test_a_stuffed_bird_is_never_advised_to_be_pulled_early() -> None:
    forecast = forecast_roast(replace(TURKEY, stuffed=True))
    assert forecast.deciding_station == "stuffing"
    assert forecast.advised_pull_c == forecast.target_c
    assert any(caution.rule == "stuffing-165" for caution in forecast.cautions)


def test_a_later_pull_costs_juice() -> None:
    early = forecast_roast(RoastCase("pork_loin", 1.6, target_c=62.8, members=16)).loss_fraction.p50
    late = forecast_roast(RoastCase("pork_loin", 1.6, target_c=75.0, members=16)).loss_fraction.p50
    assert late > early + 0.02


@pytest.mark.parametrize(
    ("case", "rules"),
    [
        (replace(TURKEY, oven=(OvenStep(0.0, 150.0),)), {"oven-325"}),
        (replace(TURKEY, oven=(OvenStep(0.0, 150.0, True),)), set()),
        (replace(TURKEY, target_c=68.0), {"poultry-165"}),
        (replace(TURKEY, pull_c=70.0), {"poultry-165"}),
        (replace(TURKEY, state="frozen"), {"from-frozen"}),
        (RoastCase("beef_rib", 3.0, target_c=57.0, members=8), {"beef-lamb-time-table"}),
        (RoastCase("pork_loin", 1.6, target_c=58.0, members=8), {"meat-145"}),
    ],
)
def test_the_rules_above_the_forecast_are_cited(case: RoastCase, rules: set[str]) -> None:
    cited = {caution.rule for caution in forecast_roast(case).cautions}
    assert cited - {"thermometer-decides"} == rules


@pytest.mark.parametrize(
    ("case", "error", "name"),
    [
        (RoastCase("unicorn", 3.0), Unknown, "kind"),
        (RoastCase("turkey", 408.0), OutOfRange, "mass_kg"),
        (RoastCase("turkey", float("nan")), OutOfRange, "mass_kg"),
        (RoastCase("turkey", 1.0), OutOfRange, "mass_kg"),
        (RoastCase("turkey", 6.0, oven=(OvenStep(0.0, 325.0),)), OutOfRange, "oven.temperature_c"),
        (RoastCase("turkey", 6.0, oven=()), Impossible, "oven"),
        (RoastCase("turkey", 6.0, oven=(OvenStep(-5.0, 163.0),)), Impossible, "oven.from_min"),
        (RoastCase("turkey", 6.0, target_c=165.0), OutOfRange, "target_c"),
        (RoastCase("turkey", 6.0, pull_c=20.0), OutOfRange, "pull_c"),
        (RoastCase("turkey", 6.0, start_c=80.0), OutOfRange, "start_c"),
        (RoastCase("turkey", 6.0, rest_min=-1.0), OutOfRange, "rest_min"),
        (RoastCase("turkey", 6.0, altitude_m=9000.0), OutOfRange, "altitude_m"),
        (RoastCase("turkey", 6.0, oven_vapour_pa=2e5), OutOfRange, "oven_vapour_pa"),
        (RoastCase("turkey", 6.0, count=0), OutOfRange, "count"),
        (RoastCase("turkey", 6.0, members=0), OutOfRange, "members"),
        (RoastCase("duck", 2.3, stuffed=True), Impossible, "stuffed"),
        (RoastCase("turkey", 6.0, stuffed=True, state="frozen"), Impossible, "stuffed"),
        (RoastCase("turkey", 6.0, oven=(OvenStep(0.0, 163.0), OvenStep(20.0, 0.0)), members=4), Impossible, "oven"),
    ],
)
def test_what_the_model_was_not_checked_for_is_refused_by_name(
    case: RoastCase, error: type[Exception], name: str
) -> None:
    with pytest.raises(error) as refused:
        forecast_roast(case)
    assert getattr(refused.value, "name") == name  # noqa: B009


@pytest.mark.parametrize(
    ("field", "value", "error", "name"),
    [
        *[
            (field, value, (Impossible, OutOfRange), field)
            for field in ("mass_kg", "count", "start_c", "target_c", "pull_c", "rest_min", "altitude_m", "members")
            for value in (float("nan"), float("inf"), -float("inf"), "6", True, -1e9, 1e9)
        ],
        *[("seed", value, (Impossible, OutOfRange), "seed") for value in (-1, 1.5, None, "x", 2**40)],
        *[("oven_vapour_pa", value, (Impossible, OutOfRange), "oven_vapour_pa") for value in (None, -1.0, "5000")],
        *[("kind", value, Unknown, "kind") for value in ("", None, "TURKEY", ["turkey"])],
        *[("state", value, Unknown, "state") for value in ("", "icy", None)],
        *[("rest_place", value, Unknown, "rest_place") for value in ("sofa", 3)],
        *[("stuffed", value, Impossible, "stuffed") for value in ("no", None, 1)],
        *[("preheated", value, Impossible, "preheated") for value in ("no", None)],
        ("bone_in", "x", Impossible, "bone_in"),
        ("members", 1.5, Impossible, "members"),
        ("count", 2.7, Impossible, "count"),
        *[
            ("openings_min", value, (Impossible, OutOfRange), "openings_min")
            for value in ((float("nan"),), (-5,), (float("inf"),), (30,) * 500, 5, ("a",))
        ],
        ("oven", None, Impossible, "oven"),
        ("oven", (163,), Impossible, "oven"),
        ("oven", (OvenStep(0.0, 163.0),) * 60, OutOfRange, "oven"),
        ("oven", (OvenStep(float("nan"), 163.0),), Impossible, "oven.from_min"),
        ("oven", (OvenStep(0.0, 163.0), OvenStep(1e9, 163.0)), OutOfRange, "oven.from_min"),
        ("oven", (OvenStep(500.0, 163.0),), Impossible, "oven.from_min"),
        ("oven", (OvenStep(0.0, 163.0), OvenStep(0.0, 200.0)), Impossible, "oven.from_min"),
        ("oven", (OvenStep(0.0, 163.0, "yes"),), Impossible, "oven.convection"),
        ("oven", (OvenStep(0.0, 163.0, False, "tinfoil"),), Unknown, "oven.cover"),
        ("oven", (OvenStep(0.0, float("nan")),), Impossible, "oven.temperature_c"),
        ("oven", (OvenStep(0.0, "163"),), Impossible, "oven.temperature_c"),
    ],
)
def test_a_field_that_cannot_be_is_refused_by_its_name(
    field: str, value: object, error: type[Exception] | tuple[type[Exception], ...], name: str
) -> None:
    with pytest.raises(error) as refused:
        forecast_roast(replace(TURKEY, **{field: value}))
    assert getattr(refused.value, "name") == name  # noqa: B009


@pytest.mark.parametrize(
    ("state", "start_c", "way_out"),
    [
        ("thawed", -18.0, "say state frozen"),
        ("thawed", -30.0, "say state frozen"),
        ("frozen", 25.0, "say state thawed"),
        ("part_frozen", -18.0, "say state frozen"),
        ("part_frozen", 20.0, "say state thawed"),
    ],
)
def test_a_state_and_a_temperature_that_contradict_each_other_are_refused(
    state: str, start_c: float, way_out: str
) -> None:
    with pytest.raises(Impossible, match=way_out):
        forecast_roast(replace(TURKEY, state=state, start_c=start_c))


def test_the_temperature_of_a_frozen_roast_counts() -> None:
    def frozen(start_c: float) -> float:
        return median_min(replace(TURKEY, state="frozen", start_c=start_c))

    assert frozen(-25.0) > frozen(-18.0) > frozen(-5.0)
    assert median_min(replace(TURKEY, state="frozen")) == frozen(-18.0)


def test_a_bird_given_in_pounds_is_asked_about() -> None:
    with pytest.raises(OutOfRange, match="pounds"):
        forecast_roast(RoastCase("turkey", 16.0))


@pytest.mark.parametrize(
    ("kind", "oven_c", "severity"),
    [("turkey", 93.0, "stop"), ("beef_rib", 70.0, "warn"), ("turkey", 121.0, None), ("beef_rib", 93.0, None)],
)
def test_a_slow_oven_is_taken_and_never_as_safe(kind: str, oven_c: float, severity: str | None) -> None:
    target_c = None if kind == "turkey" else 54.0
    forecast = forecast_roast(RoastCase(kind, 4.0, oven=(OvenStep(0.0, oven_c),), target_c=target_c, members=24))
    said = {caution.rule: caution.severity for caution in forecast.cautions}
    assert said.get("slow-oven") == severity
    assert said["oven-325"] == ("warn" if kind == "turkey" else "info")
    assert "heat-oven-extrapolated-one" in {message.key for message in forecast.assumptions}


@pytest.mark.parametrize(("kind", "mass_kg"), [("beef_round", 15.0), ("beef_round", 0.5), ("lamb_leg", 0.5)])
def test_past_the_usual_masses_the_window_is_that_of_a_shape_alone(kind: str, mass_kg: float) -> None:
    low_kg, high_kg = roast(kind).mass_kg_range
    case = RoastCase(kind, mass_kg, target_c=60.0, members=128)
    forecast, usual = (
        forecast_roast(one) for one in (case, replace(case, mass_kg=min(max(mass_kg, low_kg), high_kg)))
    )
    assert "heat-mass-extrapolated" in {message.key for message in forecast.assumptions}
    assert forecast.ready_min.p90 / forecast.ready_min.p10 > 1.03 * usual.ready_min.p90 / usual.ready_min.p10
    assert (forecast.ready_min.p50 > usual.ready_min.p50) == (mass_kg > high_kg)


def test_a_bone_that_changes_nothing_and_a_stuffed_bird_in_a_slow_oven_are_told() -> None:
    def said(case: RoastCase) -> set[str]:
        return {message.key for message in forecast_roast(replace(case, members=1)).assumptions}

    assert "heat-bone-untold" in said(RoastCase("pork_loin", 1.6, bone_in=True))
    assert "heat-bone-untold" not in said(RoastCase("lamb_leg", 2.5, bone_in=False))
    assert "heat-stuffed-slow" in said(
        replace(TURKEY, stuffed=True, oven=(OvenStep(0.0, 177.0), OvenStep(60.0, 107.0)))
    )
    assert "heat-stuffed-slow" not in said(replace(TURKEY, stuffed=True))


def test_meat_gets_no_hotter_than_boiling_water() -> None:
    bag = OvenStep(0.0, 235.0, cover="bag")
    forecast = forecast_roast(replace(TURKEY, oven=(bag,), target_c=94.0, rest_min=120.0, rest_place="foil"))
    assert all(peak.p90 <= 100.0 for peak in forecast.peak_c.values())
    with pytest.raises(OutOfRange, match="boiling"):
        forecast_roast(replace(TURKEY, target_c=90.0, altitude_m=3000.0))


def test_outside_the_published_rows_the_forecast_says_so() -> None:
    def said(case: RoastCase) -> set[str]:
        return {message.key for message in forecast_roast(case).assumptions}

    assert "heat-mass-extrapolated" not in said(TURKEY)
    assert "heat-mass-extrapolated" in said(replace(TURKEY, mass_kg=13.0))
    assert "heat-oven-extrapolated-one" in said(replace(TURKEY, oven=(OvenStep(0.0, 220.0),)))
