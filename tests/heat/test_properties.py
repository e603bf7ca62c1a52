import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from turnspit.errors import Impossible, Unknown
from turnspit.heat import properties as p
from turnspit.reference import table

FOODS = sorted(table("composition").by("food"))


@st.composite
def compositions(draw):
    water = draw(st.floats(0.30, 0.85))
    fat = draw(st.floats(0.0, 1.0)) * (1 - water) * 0.9
    ash = draw(st.floats(0.002, 0.03))
    protein = max(1 - water - fat - ash, 0.0)
    return p.Composition(water, protein, fat, ash, freezing_c=draw(st.floats(-4.0, -0.5)))


def test_a_food_that_is_in_no_table_is_refused_with_the_known_ones():
    with pytest.raises(Unknown, match="beef brisket"):
        p.composition("unicorn")


@pytest.mark.parametrize("bad", [(-0.1, 0.6, 0.3, 0.2), (0.7, 0.2, 0.2, 0.1), (float("nan"), 0.2, 0.08, 0.01)])
def test_fractions_that_cannot_be_are_refused(bad):
    with pytest.raises(Impossible):
        p.Composition(*bad)


def test_a_freezing_point_above_zero_is_refused():
    with pytest.raises(Impossible, match="food freezes below 0 C"):
        p.Composition(0.7, 0.2, 0.09, 0.01, freezing_c=1.0)


@pytest.mark.parametrize("food", FOODS)
def test_every_row_adds_up_and_lies_in_the_bracket_of_meats(food):
    meat = p.composition(food)
    assert meat.water + sum(meat.dry_parts().values()) == pytest.approx(1)
    assert 900 < p.density(meat, 4.0) < 1120
    assert 2300 < p.specific_heat(meat, 20.0) < 3800
    assert 0.2 < p.conductivity_levy(meat, 20.0) < 0.55


@given(compositions(), st.floats(-40, 130))
def test_the_mixing_rules_lie_between_their_bounds(food, temperature_c):
    low = p.conductivity_perpendicular(food, temperature_c)
    high = p.conductivity_parallel(food, temperature_c)
    for rule in (p.conductivity_levy, p.conductivity_maxwell_eucken):
        assert low * 0.999 <= rule(food, temperature_c) <= high * 1.001


@given(compositions())
def test_hotter_holds_more_heat_and_the_material_inverts(food):
    grid = np.linspace(-40, 130, 3000)
    assert np.all(np.diff(p.enthalpy(food, grid)) > 0)
    material = p.material(food)
    h = material.enthalpy(grid)
    assert np.all(np.diff(h) > 0)
    assert np.max(np.abs(material.temperature_c(h) - grid)) < 1e-9


@given(compositions(), st.floats(-40, -0.01))
def test_ice_grows_as_it_gets_colder_and_leaves_the_bound_water(food, temperature_c):
    for rule in (p.ice_chen, p.ice_tchigeov):
        assert 0 <= rule(food, temperature_c) <= rule(food, temperature_c - 1) * (1 + 1e-12) + 1e-12
    assert p.ice_chen(food, temperature_c) <= food.water - food.bound_water + 1e-12


def test_no_ice_above_the_freezing_point():
    turkey = p.composition("turkey")
    for rule in (p.ice_chen, p.ice_tchigeov):
        assert float(rule(turkey, turkey.freezing_c + 0.01)) == 0.0
        assert float(rule(turkey, 20.0)) == 0.0


@pytest.mark.parametrize("food", FOODS)
def test_the_solvers_material_keeps_to_the_equations(food):
    meat = p.composition(food)
    material = p.material(meat)
    grid = np.array([-30.0, -18.0, -10.0, -5.0, -3.5, 0.0, 4.0, 40.0, 70.0, 90.0])
    exact = p.density(meat, 4.0) * (p.enthalpy(meat, grid) - p.enthalpy(meat, 0.0))
    heat = exact[8] - exact[1]
    assert np.max(np.abs(material.enthalpy(grid) - exact)) < 0.002 * heat
    ratio = material.conductivity_at(grid) / p.conductivity_levy(meat, grid)
    assert np.max(np.abs(ratio - 1)) < 0.08
    assert np.max(np.abs(ratio[grid > 0] - 1)) < 0.02


def test_two_equal_phases_conduct_like_one():
    k = np.array([0.5])
    assert p.levy(k, k, np.array([0.3]))[0] == pytest.approx(0.5, rel=1e-6)
    assert p.maxwell_eucken(k, k, np.array([0.3]))[0] == pytest.approx(0.5)


def test_chang_1998_conductivity_of_turkey():
    # k 0.464 W/mK from 0 to 80 C, fitted to measured roasts (Chang et al., J. Food Sci. 63(2), 1998, abstract)
    turkey = p.composition("turkey")
    assert np.mean(p.conductivity_levy(turkey, np.linspace(0, 80, 9))) == pytest.approx(0.464, rel=0.06)


def test_frozen_enthalpies_by_other_authors_agree_within_ten_percent():
    lean = p.composition("lamb leg, whole, lean")
    ours = float(p.enthalpy(lean, lean.freezing_c) - p.enthalpy(lean, -20.0))
    chen = float(p.enthalpy_chen(lean, lean.freezing_c) - p.enthalpy_chen(lean, -20.0))
    tao = float(p.enthalpy_chang_tao(lean, lean.freezing_c) - p.enthalpy_chang_tao(lean, -20.0))
    assert ours == pytest.approx(chen, rel=0.10)
    assert ours == pytest.approx(tao, rel=0.10)
    assert p.freezing_chang_tao(0.74) == pytest.approx(-0.88, abs=0.01)


def test_specific_heats_by_other_authors():
    lean = p.composition("lamb leg, whole, lean")
    assert p.specific_heat_unfrozen_chen(lean) == pytest.approx(float(p.specific_heat(lean, 20.0)), rel=0.02)
    step = float(p.enthalpy_chen(lean, -9.999) - p.enthalpy_chen(lean, -10.001)) / 0.002
    assert float(p.specific_heat_frozen_chen(lean, -10.0)) == pytest.approx(step, rel=0.02)
    # an effective molar mass that puts the same freezing point: xw / (1 + E xs / xw) by Raoult
    apparent = float(p.specific_heat_frozen_schwartzberg(lean, -10.0, solute_kg_kmol=380.0))
    assert 1500 < apparent < 12000
