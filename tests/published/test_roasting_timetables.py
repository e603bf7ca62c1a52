"""Timetables and rises of the trade beside the federal charts. All were in view while the model was shaped (fitted)."""

import numpy as np
import pytest

from turnspit.heat import OvenStep, RoastCase, RoastForecast, forecast_roast
from turnspit.heat.fits import case_of as case_from
from turnspit.heat.fits import minutes
from turnspit.reference import Row, table

TIMES = list(table("roasting_timetables"))
RISES = list(table("roasting_rises"))
ROUND_K = 1.0
"""The printed rises are round figures: 5 F, 10 F."""
KINDS_OF_MANY = sorted(kind for kind in {row["kind"] for row in TIMES} if sum(r["kind"] == kind for r in TIMES) > 3)
"""The rest have three rows or fewer, which part among themselves by a third."""


@pytest.fixture(scope="module")
def forecasts() -> dict[str, RoastForecast]:
    return {row["id"]: forecast_roast(case_of(row)) for row in TIMES}


def case_of(row: Row) -> RoastCase:
    return RoastCase(
        row["kind"],
        row["mass_kg"],
        bone_in=row.get("bone_in"),
        stuffed=row.get("stuffed", False),
        oven=tuple(OvenStep(float(minute), oven_c, row.get("fan", False)) for minute, oven_c in row["oven"]),
        target_c=row["target_c"],
        members=96,
    )


def test_four_windows_in_five_overlap_their_row(forecasts: dict[str, RoastForecast]) -> None:
    windows = [(forecasts[row["id"]].ready_min, row["minutes"]) for row in TIMES]
    overlaps = [window.p10 <= high and window.p90 >= low for window, (low, high) in windows]
    inside = [window.p10 <= (low + high) / 2 <= window.p90 for window, (low, high) in windows]
    assert np.mean(overlaps) >= 0.8
    assert np.mean(inside) >= 0.7


def test_of_all_published_rows_seven_to_nine_in_ten_middles_lie_inside(forecasts: dict[str, RoastForecast]) -> None:
    """P10 to P90 promises eight in ten: neither too narrow for the world nor wider than it is."""
    windows = [(forecasts[row["id"]].ready_min, row["minutes"]) for row in TIMES]
    for name in ("roasting_charts", "roasting_measured"):
        windows += [
            (forecast_roast(case_from(row, 96)).ready_min, minutes(row)) for row in table(name) if "minutes" in row
        ]
    inside = [window.p10 <= (low + high) / 2 <= window.p90 for window, (low, high) in windows]
    assert len(inside) > 140
    assert 0.7 <= np.mean(inside) <= 0.9


@pytest.mark.parametrize("kind", KINDS_OF_MANY)
def test_no_kind_is_off_as_a_whole(kind: str, forecasts: dict[str, RoastForecast]) -> None:
    ratios = [forecasts[row["id"]].ready_min.p50 / (sum(row["minutes"]) / 2) for row in TIMES if row["kind"] == kind]
    assert np.median(ratios) == pytest.approx(1.0, abs=0.2)


@pytest.mark.parametrize("row", RISES, ids=lambda row: row["id"])
def test_the_window_holds_the_printed_rise(row: Row) -> None:
    case = RoastCase(
        row["kind"],
        row["mass_kg"],
        bone_in=row["bone_in"],
        oven=(OvenStep(0.0, row["oven_c"]),),
        pull_c=row["pull_c"],
        target_c=row["pull_c"],
        rest_min=row["rest_min"],
        rest_place=row["rest_place"],
    )
    peak = forecast_roast(case).peak_c["centre"]
    assert peak.p10 - ROUND_K <= row["pull_c"] + row["rise_k"] <= peak.p90 + ROUND_K
