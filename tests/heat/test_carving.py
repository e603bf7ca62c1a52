"""Carving starts the cooling: what the meat on a platter does."""

from dataclasses import replace

import numpy as np
import pytest

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.heat import Platter, PlatterForecast, RoastCase, forecast_roast

TURKEY = RoastCase("turkey", 6.35, members=24, platter=Platter())


def on(platter: Platter, **changed: object) -> PlatterForecast:
    forecast = forecast_roast(replace(TURKEY, platter=platter, **changed)).platter  # type: ignore[arg-type]
    assert forecast is not None
    return forecast


def test_without_a_platter_nothing_is_told_of_one() -> None:
    forecast = forecast_roast(replace(TURKEY, platter=None))
    assert forecast.platter is None
    assert "heat-platter" not in {message.key for message in forecast.assumptions}


def test_the_meat_starts_at_the_mean_of_the_rested_roast_and_falls_toward_the_room() -> None:
    forecast = forecast_roast(TURKEY)
    platter = on(Platter(), members=24)
    assert platter.carved_c.p50 == pytest.approx(forecast.peak_c["breast"].p50, abs=8.0)
    falling = platter.curve_c[1]
    assert np.all(np.diff(falling) < 0.0)
    assert 21.0 < falling[-1] < 45.0
    assert platter.curve_min[-1] == pytest.approx(120.0)
    assert platter.warm_min.p10 < platter.warm_min.p50 < platter.warm_min.p90
    at_warm = np.interp(platter.warm_min.p50, platter.curve_min, falling)
    assert at_warm == pytest.approx(45.0, abs=1.0)


@pytest.mark.parametrize(
    "warmer", [Platter(cover="foil"), Platter(warmed=True), Platter(depth_mm=40.0), Platter(served_c=40.0)]
)
def test_foil_a_warm_platter_and_a_heap_keep_it_warm_longer(warmer: Platter) -> None:
    assert on(warmer).warm_min.p50 > on(Platter()).warm_min.p50


def test_single_slices_are_cold_in_minutes() -> None:
    """Common practice, no source."""
    assert on(Platter(depth_mm=8.0)).warm_min.p90 < 15.0


def test_the_clock_runs_from_the_oven_on() -> None:
    assert on(Platter(), rest_min=30.0).clock_left_min == pytest.approx(90.0)
    assert on(Platter(), rest_min=150.0).clock_left_min == 0.0
    assert "two-hours" in {caution.rule for caution in forecast_roast(TURKEY).cautions}


def test_the_layer_cools_by_what_air_walls_and_drying_carry_off() -> None:
    """Late, against a lumped layer of meat and platter: dry loss from the mean is too much, with drying too little."""
    platter = on(Platter(), members=1)
    late = len(platter.curve_min) // 2
    mean_c = platter.curve_c[1]
    rate = -np.gradient(mean_c, platter.curve_min)[late] / 60.0
    held = (25e-3 * 3.6e6 + 9e-3 * 2.0e6) / (1.0 + 13.7 * 25e-3)
    dry = (6.0 + 5.5) * (mean_c[late] - 21.0)
    assert 0.7 * dry < rate * held < 1.8 * dry


@pytest.mark.parametrize(
    ("platter", "error"),
    [
        (Platter(depth_mm=float("nan")), OutOfRange),
        (Platter(depth_mm=500.0), OutOfRange),
        (Platter(served_c=90.0), OutOfRange),
        (Platter(cover="cloth"), Unknown),  # type: ignore[arg-type]
        (Platter(warmed="yes"), Impossible),  # type: ignore[arg-type]
        ("big", Impossible),
    ],
)
def test_what_is_no_platter_is_refused(platter: Platter, error: type[Exception]) -> None:
    with pytest.raises(error):
        forecast_roast(replace(TURKEY, platter=platter))
