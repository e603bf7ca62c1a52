"""The federal roasting charts and the measured birds against the default ensemble and the named fits."""

from dataclasses import replace

import pytest

from turnspit.errors import Impossible
from turnspit.heat import OvenStep, RoastCase, RoastForecast, forecast_roast, roast
from turnspit.heat.fits import case_of, minutes, ready_min, turkey_fits, turkey_rows
from turnspit.reference import Row, table

CHART = list(table("roasting_charts"))
MEASURED = list(table("roasting_measured"))
HALF_A_DEGREE = 0.5
"""The measured rises are printed in whole degrees C."""


@pytest.fixture(scope="module")
def chart_forecasts() -> dict[str, RoastForecast]:
    return {row["id"]: forecast_roast(case_of(row, members=256)) for row in CHART}


@pytest.mark.parametrize("row", CHART, ids=lambda row: row["id"])
def test_the_window_overlaps_the_chart_row(row: Row, chart_forecasts: dict[str, RoastForecast]) -> None:
    low, high = minutes(row)
    window = chart_forecasts[row["id"]].ready_min
    assert window.p10 <= high
    assert window.p90 >= low
    widest = 1.8 if roast(row["kind"]).calibration == "shape only" else 1.5
    assert window.p90 / window.p10 <= widest


@pytest.mark.parametrize("use", ["fitted", "checked"])
def test_most_row_middles_lie_in_the_window_and_near_the_median(
    use: str, chart_forecasts: dict[str, RoastForecast]
) -> None:
    rows = [row for row in CHART if row["use"] == use]
    middles = {row["id"]: sum(minutes(row)) / 2 for row in rows}
    windows = {name: chart_forecasts[name].ready_min for name in middles}
    inside = [windows[name].p10 <= middle <= windows[name].p90 for name, middle in middles.items()]
    near = [abs(windows[name].p50 / middle - 1) <= 0.15 for name, middle in middles.items()]
    assert sum(inside) >= 0.7 * len(rows)
    assert sum(near) >= 0.85 * len(rows)


@pytest.mark.parametrize("name", ["A", "A'"])
def test_the_table_fit_is_near_every_row_it_was_not_fitted_on(name: str) -> None:
    fit = turkey_fits()[name]
    for row in CHART:
        if row["kind"] == "turkey" and row["id"] not in fit.fitted_on:
            low, high = minutes(row)
            assert low - 15 <= ready_min(fit, row) <= high + 15, row["id"]


def test_the_table_fit_meets_its_own_rows() -> None:
    fit = turkey_fits()["A"]
    for name in fit.fitted_on:
        assert ready_min(fit, turkey_rows()[name]) == pytest.approx(sum(minutes(turkey_rows()[name])) / 2, abs=15)


@pytest.mark.parametrize(
    "row", [r for r in MEASURED if "minutes" in r and not r.get("stuffed")], ids=lambda r: r["id"]
)
def test_the_measured_fit_is_within_five_minutes_of_the_measured_birds(row: Row) -> None:
    assert ready_min(turkey_fits()["C"], row) == pytest.approx(row["minutes"], abs=5)


@pytest.mark.parametrize("row", [r for r in MEASURED if "minutes" in r], ids=lambda row: row["id"])
def test_the_default_window_holds_the_measured_birds(row: Row) -> None:
    window = forecast_roast(case_of(row, members=256)).ready_min
    assert window.p10 <= row["minutes"] <= window.p90


@pytest.mark.parametrize("row", [r for r in MEASURED if "rise_k" in r], ids=lambda row: row["id"])
def test_the_default_window_holds_the_measured_rises(row: Row) -> None:
    case = replace(case_of(row, members=256), rest_min=60.0)  # until the large ones have turned
    peak = forecast_roast(case).peak_c["centre"]
    measured_c = row["target_c"] + row["rise_k"]
    assert peak.p10 - HALF_A_DEGREE <= measured_c <= peak.p90 + HALF_A_DEGREE


def test_a_large_bird_rises_five_to_eight_fahrenheit() -> None:
    """A rule of the trade for 13 to 14 lb pulled at 158.5 F (common practice, no source)."""
    forecast = forecast_roast(RoastCase("turkey", 6.12, pull_c=70.3, rest_min=25))
    rise_k = forecast.peak_c[forecast.deciding_station].p50 - 70.3
    assert 5 / 1.8 <= rise_k <= 8 / 1.8 + 0.6


def test_a_fourteen_pound_bird_takes_twelve_to_sixteen_minutes_a_pound() -> None:
    """12 to 15 minutes a pound (common practice, no source)."""
    ready = forecast_roast(RoastCase("turkey", 6.35, pull_c=70.3)).ready_min
    assert 12.0 <= ready.p50 / 14.0 <= 16.0


def test_a_frozen_bird_takes_half_as_long_again() -> None:
    """USDA FSIS: at least 1.5 times as long from the frozen state."""
    thawed = forecast_roast(RoastCase("turkey", 6.35)).ready_min
    frozen = forecast_roast(RoastCase("turkey", 6.35, state="frozen")).ready_min
    assert 1.45 <= frozen.p50 / thawed.p50 <= 1.75


@pytest.mark.parametrize("pounds", [4.0, 6.0, 8.0])
def test_a_rib_left_in_the_oven_turned_off_comes_out_medium_rare(pounds: float) -> None:
    """5 min/lb at 500 F, then two hours with the oven off: 130 to 135 F (kitchen practice, several recipes)."""
    steps = (OvenStep(0.0, 260.0), OvenStep(5.0 * pounds, 0.0))
    for target_c in (50.0, 62.0):
        case = RoastCase("beef_rib", pounds * 0.4536, start_c=18.0, oven=steps, target_c=target_c, members=1)
        if target_c == 50.0:
            assert forecast_roast(case).ready_min.p50 < 120.0
        else:
            with pytest.raises(Impossible):
                forecast_roast(case)


def test_a_fan_saves_what_a_lower_setting_costs() -> None:
    """Fan ovens are set some 20 C lower for the same time (kitchen charts; a rule, not a measurement)."""
    still = forecast_roast(RoastCase("turkey", 6.35)).ready_min.p50
    fan = forecast_roast(RoastCase("turkey", 6.35, oven=(OvenStep(0, 163, True),))).ready_min.p50
    fan_lower = forecast_roast(RoastCase("turkey", 6.35, oven=(OvenStep(0, 143, True),))).ready_min.p50
    assert 0.75 <= fan / still <= 0.92
    assert 0.9 <= fan_lower / still <= 1.1
