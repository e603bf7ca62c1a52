import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from turnspit.errors import OutOfRange, Unknown
from turnspit.heat import RoastCase, forecast_roast
from turnspit.safety import (
    Conditions,
    Measured,
    forecast_log10,
    hold_table,
    log10_reduction,
    predicted_log10,
    prove,
    species_of,
)
from turnspit.spread import Spread

SPECIES = st.sampled_from(["turkey", "chicken", "other_poultry", "meat"])
HISTORY = st.lists(st.floats(0, 95), min_size=2, max_size=20)
GOOD = Conditions(moisture="sealed_bag", probe_error_k=0.0)


def celsius(fahrenheit):
    return (fahrenheit - 32) / 1.8


def bird(core_c=71.2, held_min=5, stations=("breast", "thigh"), come_up_min=200):
    times = [0, come_up_min, *(come_up_min + minute for minute in range(1, held_min + 1))]
    temperatures = [4.0, *[core_c] * (held_min + 1)]
    return [
        Measured(minute, core_c, station)
        for station in stations
        for minute, core_c in zip(times, temperatures, strict=True)
    ]


@pytest.mark.parametrize("history", [(64.0, 66.0), (66.0, 64.0)])
def test_between_two_readings_the_cooler_counts_on_the_way_up_and_down(history):
    hold = hold_table("turkey")
    assert log10_reduction(hold, [0, 1], history) == log10_reduction(hold, [0, 1], [64.0, 64.0])
    assert log10_reduction(hold, [0, 1], [64.0, 64.0]) < log10_reduction(hold, [0, 1], [66.0, 66.0])


@given(SPECIES, HISTORY, st.floats(0, 10))
def test_hotter_never_lowers_the_reduction(species, history, hotter):
    hold = hold_table(species)
    minutes = np.arange(len(history)) * 0.2
    warm = np.array(history)
    assert log10_reduction(hold, minutes, warm + hotter) >= log10_reduction(hold, minutes, warm)


@given(SPECIES, HISTORY, st.lists(st.floats(0, 95), min_size=1, max_size=5))
def test_longer_never_lowers_the_reduction(species, history, more):
    hold = hold_table(species)
    whole = np.array([*history, *more])
    minutes = np.arange(len(whole)) * 0.2
    n = len(history)
    assert log10_reduction(hold, minutes, whole) >= log10_reduction(hold, minutes[:n], whole[:n]) - 1e-9


@given(SPECIES, st.floats(0, 12))
def test_unknown_fat_is_never_credited_more_than_a_known_one(species, known):
    at = np.linspace(
        celsius(154), celsius(161), 40
    )  # above, cells printed 0 s take the last time of their own column
    assert (hold_table(species).hold_s(at) >= hold_table(species, known).hold_s(at) - 1e-9).all()


@given(SPECIES, st.floats(0, 100))
def test_the_time_never_grows_with_temperature(species, fat):
    at = np.linspace(50, 100, 400)
    assert (
        np.diff(hold_table(species, fat).hold_s(at)[np.isfinite(hold_table(species, fat).hold_s(at))]) <= 1e-9
    ).all()


def test_a_fat_between_two_columns_takes_the_longer_time():
    at = np.linspace(58, 74, 30)
    longer = np.maximum(hold_table("turkey", 5).hold_s(at), hold_table("turkey", 6).hold_s(at))
    assert (hold_table("turkey", 5.5).hold_s(at) >= longer - 1e-9).all()


def test_a_nonsense_fat_is_refused():
    with pytest.raises(OutOfRange, match="percent"):
        hold_table("turkey", 140)


def test_a_column_that_is_not_printed_is_refused():
    with pytest.raises(Unknown, match=r"6\.5"):
        hold_table("meat", log10=6.0)
    with pytest.raises(Unknown, match="7"):
        hold_table("turkey", log10=5.0)


def test_an_ensemble_gives_a_spread_of_the_coldest_station():
    minutes = np.array([0.0, 1.0, 2.0])
    thigh = np.array([[70.0, 71.0], [70.0, 71.0], [70.0, 71.0]])
    spread = predicted_log10(hold_table("turkey"), minutes, {"breast": thigh + 5, "thigh": thigh})
    assert isinstance(spread, Spread)
    alone = [float(log10_reduction(hold_table("turkey"), minutes, thigh[:, n])) for n in range(2)]
    assert (spread.p10, spread.p90) == pytest.approx(np.percentile(alone, (10, 90)))


def test_a_forecast_counts_oven_and_rest_at_the_coldest_station():
    forecast = forecast_roast(RoastCase("turkey", 6.5, members=32))
    spread = forecast_log10(forecast)
    assert 0 <= spread.p10 <= spread.p50 <= spread.p90
    hold = hold_table("turkey")
    each = [log10_reduction(hold, forecast.curve_min, curves[1]) for curves in forecast.curve_c.values()]
    assert spread.p50 == pytest.approx(float(min(each)))
    assert spread.p50 > 7


@pytest.mark.parametrize(
    ("kind", "species"),
    [
        ("turkey_breast", "turkey"),
        ("capon", "chicken"),
        ("goose", "other_poultry"),
        ("veal_loin", "meat"),
        ("zebra", "other_poultry"),
    ],
)
def test_which_table_a_roast_is_held_to(kind, species):
    assert species_of(kind) == species


def test_a_measured_history_with_its_conditions_earns_credit():
    proof = prove(bird(), "turkey", GOOD)
    assert proof.met
    assert proof.credited_log10 == proof.log10 >= 7.0
    assert {each.severity for each in proof.findings} == {"ok", "info"}


def test_the_coldest_station_decides():
    cold_wing = [Measured(0, 4.0, "wing"), Measured(200, 60.0, "wing"), Measured(205, 60.0, "wing")]
    proof = prove([*bird(), *cold_wing], "turkey", GOOD)
    assert proof.coldest == "wing"
    assert not proof.met


@pytest.mark.parametrize(
    ("conditions", "rule"),
    [
        (Conditions(probe_error_k=0.0), "moist-heat"),
        (Conditions(mass_kg=7.0, probe_error_k=0.0), "moist-heat"),
        (Conditions(mass_kg=4.0, lowest_oven_c=163.0, probe_error_k=0.0), "moist-heat"),
        (Conditions(mass_kg=7.0, lowest_oven_c=110.0, probe_error_k=0.0), "moist-heat"),
    ],
)
def test_no_credit_without_the_conditions(conditions, rule):
    proof = prove(bird(), "turkey", conditions)
    assert (proof.credited_log10, proof.met) == (0.0, False)
    assert proof.log10 >= 7.0
    assert rule in {each.rule for each in proof.findings if each.severity != "ok"}


def test_ten_pounds_in_a_hot_oven_need_no_humidity():
    assert prove(bird(), "turkey", Conditions(mass_kg=4.54, lowest_oven_c=121.2, probe_error_k=0.0)).met


def test_a_slow_come_up_earns_nothing_and_stops():
    proof = prove(bird(come_up_min=361), "turkey", GOOD)
    assert (proof.credited_log10, proof.met) == (0.0, False)
    assert ("come-up-six-hours", "stop") in {(each.rule, each.severity) for each in proof.findings}
    assert prove(bird(come_up_min=360), "turkey", GOOD).met


def test_the_slowest_station_decides_the_come_up():
    slow_thigh = [*bird(stations=("breast",)), *bird(stations=("thigh",), come_up_min=361)]
    assert not prove(slow_thigh, "turkey", GOOD).met


def test_a_history_that_begins_warm_needs_its_come_up_stated():
    warm = [each for each in bird() if each.minute > 0]
    assert not prove(warm, "turkey", GOOD).met
    assert prove(warm, "turkey", Conditions(moisture="sealed_bag", come_up_h=4.0, probe_error_k=0.0)).met


def test_the_error_of_the_probe_is_taken_off():
    certain = prove(bird(core_c=70.0, held_min=1), "turkey", GOOD)
    doubtful = prove(bird(core_c=70.0, held_min=1), "turkey", Conditions(moisture="sealed_bag"))
    assert doubtful.log10 < certain.log10


def test_a_gap_earns_nothing():
    short = [Measured(0, 4.0), Measured(100, 62.0), Measured(114, 62.0)]
    long = [Measured(0, 4.0), Measured(100, 62.0), Measured(116, 62.0)]
    assert prove(short, "turkey", GOOD).log10 > 0
    assert prove(long, "turkey", GOOD).log10 == 0


@given(st.permutations(bird()))
def test_the_order_of_readings_does_not_matter(readings):
    assert prove(readings, "turkey", GOOD) == prove(bird(), "turkey", GOOD)


def test_nothing_measured_proves_nothing():
    proof = prove([], "turkey", GOOD)
    assert (proof.log10, proof.met) == (0.0, False)


def test_a_reading_that_no_meat_has_earns_nothing_but_a_question():
    with pytest.raises(OutOfRange, match="is that Fahrenheit"):
        prove([*bird(), Measured(500.0, 165.0)], "turkey", GOOD)
