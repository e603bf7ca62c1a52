"""The surface laws: slopes, saturation pressure, the boiling point with height."""

import numpy as np
import pytest
from iapws import IAPWS97

from turnspit.heat.surface import DRY_KG_M2, Film, HotAir, boiling_c, pressure_at_altitude, saturation

OVEN = HotAir(air_c=163.0, wall_c=163.0, convection=7.7, radiation=0.85, crust_kg_m2=0.8)


@pytest.mark.parametrize("temperature_c", [5.0, 20.0, 40.0, 60.0, 80.0, 95.0])
def test_saturation_pressure_is_that_of_the_steam_tables(temperature_c: float) -> None:
    pressure, _ = saturation(np.array([temperature_c]))
    assert pressure[0] == pytest.approx(IAPWS97(T=temperature_c + 273.15, x=0).P * 1e6, rel=0.0025)


def test_above_the_boiling_point_the_pressure_is_that_of_the_air() -> None:
    pressure, slope = saturation(np.array([99.0, 110.0]), 80000.0)
    assert list(pressure) == [80000.0, 80000.0]
    assert list(slope) == [0.0, 0.0]


@pytest.mark.parametrize("surface", [OVEN, Film(20.0, 12.0)])
def test_slopes_are_the_derivatives(surface: HotAir | Film) -> None:
    at, step = np.linspace(0.0, 130.0, 14), 1e-4
    lost = np.full_like(at, 0.5)
    here, there = surface.exchange(at, lost, 0.0), surface.exchange(at + step, lost, 0.0)
    np.testing.assert_allclose((there.heat_w_m2 - here.heat_w_m2) / step, here.heat_slope, rtol=1e-3, atol=1e-3)
    np.testing.assert_allclose((there.water_kg_m2_s - here.water_kg_m2_s) / step, here.water_slope, atol=1e-8)
    assert np.all(here.heat_slope < 0.0)


def test_a_crust_slows_the_drying_and_a_seal_stops_it() -> None:
    at = np.array([80.0])
    fresh, dried = (OVEN.exchange(at, np.array([lost]), 0.0).water_kg_m2_s[0] for lost in (0.0, 0.8))
    assert dried == pytest.approx(fresh / (2 + (0.8 / DRY_KG_M2) ** 2))
    sealed = HotAir(163.0, 163.0, 7.7, 0.85, 0.8, wetness=0.0)
    assert sealed.exchange(at, np.array([0.0]), 0.0).water_kg_m2_s[0] == 0.0


def test_water_never_condenses_in_this_model() -> None:
    assert OVEN.exchange(np.array([-10.0]), np.array([0.0]), 0.0).water_kg_m2_s[0] == 0.0


@pytest.mark.parametrize(("altitude_m", "pressure_pa"), [(0, 101325.0), (1524, 84311.0), (3000, 70121.1)])
def test_pressure_with_height_is_the_standard_atmosphere(altitude_m: float, pressure_pa: float) -> None:
    """ICAO 1993 by the ambiance library."""
    assert pressure_at_altitude(altitude_m) == pytest.approx(pressure_pa, rel=3e-4)


@pytest.mark.parametrize(("pressure_pa", "boils_c"), [(101325.0, 99.97), (84311.0, 94.90), (70121.1, 89.98)])
def test_boiling_point_is_that_of_the_steam_tables(pressure_pa: float, boils_c: float) -> None:
    """IAPWS-IF97 by the iapws library."""
    assert boiling_c(pressure_pa) == pytest.approx(boils_c, abs=0.1)
