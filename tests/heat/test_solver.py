"""The solver against exact energy balance, order and bounds; exact series are in tests/published."""

import numpy as np
import pytest

from turnspit.heat.material import Material
from turnspit.heat.solver import Body, graded_times, march
from turnspit.heat.surface import Film, HotAir

MEAT = Material(
    capacity=3.7e6, conductivity=0.472, conductivity_slope=0.00104, freezing_c=-1.5, frozen_capacity=2.0e6,
    latent=2.2e8, ice_conductivity=0.95,
)  # fmt: skip
OVEN = HotAir(air_c=163.0, wall_c=163.0, convection=7.7, radiation=0.85, crust_kg_m2=0.8)


def body(*exponents: float, cells: int = 16, radius_m: float = 0.05) -> Body:
    return Body(np.full(len(exponents), radius_m), np.array(exponents), MEAT, cells)


def stored_j_m2(b: Body, enthalpy: np.ndarray) -> np.ndarray:
    return (enthalpy * b.volumes_m()).sum(axis=0)


@pytest.mark.parametrize(("start_c", "surface"), [(4.4, OVEN), (-18.0, OVEN), (-18.0, Film(4.0, 150.0))])
def test_heat_taken_up_is_the_change_of_enthalpy(start_c: float, surface: HotAir | Film) -> None:
    b = body(0.0, 0.5, 1.0, 2.0)
    start = b.state(start_c)
    history = march(b, start, surface, graded_times(4 * 3600.0, 20.0, 200.0))
    change = stored_j_m2(b, history.end.enthalpy) - stored_j_m2(b, start.enthalpy)
    np.testing.assert_allclose(history.end.heat_j_m2, change, rtol=1e-9)


def test_material_temperature_inverts_enthalpy() -> None:
    temperatures = np.linspace(-40.0, 100.0, 2001)
    np.testing.assert_allclose(MEAT.temperature_c(MEAT.enthalpy(temperatures)), temperatures, atol=1e-9)


def test_halving_the_step_divides_the_error_by_about_four() -> None:
    b = body(0.5)

    def core(step_s: float) -> float:
        return float(march(b, b.state(4.4), Film(163.0, 18.0), graded_times(9000.0, step_s, step_s)).core_c[-1, 0])

    exact = core(2.0)
    coarse, fine = core(240.0) - exact, core(120.0) - exact
    assert 3.0 < coarse / fine < 5.5


def test_nothing_leaves_the_bracket_of_start_and_surroundings() -> None:
    b = body(0.0, 1.0, 2.0)
    history = march(b, b.state(-18.0), OVEN, graded_times(8 * 3600.0, 60.0, 300.0), keep_states=True)
    temperatures = np.array([b.temperature_c(state) for state in history.states])
    assert temperatures.min() >= -18.0 - 1e-6
    assert temperatures.max() <= 163.0
    assert np.all(np.diff(history.core_c[:, 0]) > -1e-6)


@pytest.mark.parametrize("columns", [3, 400])
def test_columns_do_not_know_of_each_other(columns: int) -> None:
    radii = np.linspace(0.03, 0.06, columns)
    exponents = np.linspace(0.0, 2.0, columns)
    together = Body(radii, exponents, MEAT)
    times_s = graded_times(3600.0, 30.0, 120.0)
    all_at_once = march(together, together.state(4.0), OVEN, times_s).core_c[-1]
    alone = Body(radii[1:2], exponents[1:2], MEAT)
    assert march(alone, alone.state(4.0), OVEN, times_s).core_c[-1, 0] == pytest.approx(all_at_once[1], abs=1e-9)


def test_a_march_stops_when_told() -> None:
    b = body(0.5)
    history = march(
        b, b.state(4.4), OVEN, graded_times(36000.0, 30.0, 300.0), stop=lambda _, core_c: bool(core_c[0] > 74.0)
    )
    assert history.core_c[-1, 0] > 74.0 >= history.core_c[-2, 0]
