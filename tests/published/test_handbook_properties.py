"""Worked examples of the ASHRAE Handbook - Refrigeration (2006), chapter 9, and component values from CoolProp.

The printed answers of examples 1 to 3 are recalled, not read again; each was recomputed by hand and agrees.
"""

import pytest
from CoolProp.CoolProp import PropsSI

from turnspit.heat import properties as p

BEEF_CARCASS = p.Composition(0.5821, 0.1748, 0.2255, 0.0082, freezing_c=-1.7)
LAMB = p.Composition(0.7342, 0.2029, 0.0525, 0.0106, freezing_c=-1.9)
PORK_SHOULDER = p.Composition(0.7263, 0.1955, 0.0714, 0.0102, freezing_c=-2.2)


def test_example_1_ice_in_a_beef_carcass_at_minus_20():
    ice = float(p.ice_tchigeov(BEEF_CARCASS, -20.0))
    assert ice == pytest.approx(0.52, abs=0.005)  # printed
    assert 150 * ice == pytest.approx(78, abs=0.6)  # printed, kg in 150 kg
    assert 150 * (0.58 - ice) == pytest.approx(9, abs=0.6)  # printed
    assert float(p.ice_chen(BEEF_CARCASS, -20.0)) == pytest.approx(0.4687, abs=1e-3)  # recomputed


def test_example_2_specific_heat_of_lamb_and_the_heat_to_cool_it():
    heat = p.specific_heat(LAMB, 5.0)
    assert p.component_specific_heat("water", 5.0) == pytest.approx(4175.9, abs=0.1)
    assert p.component_specific_heat("protein", 5.0) == pytest.approx(2014.2, abs=0.1)
    assert p.component_specific_heat("fat", 5.0) == pytest.approx(1991.4, abs=0.2)
    assert p.component_specific_heat("ash", 5.0) == pytest.approx(1102.0, abs=0.1)
    assert heat == pytest.approx(3590, abs=5)  # printed 3.59
    assert 150 * 10 * heat == pytest.approx(5.39e6, rel=2e-3)  # printed 5390 kJ


def test_example_3_enthalpy_of_a_beef_carcass():
    h_minus_20, h_freezing, h_10 = (float(p.enthalpy_chen(BEEF_CARCASS, t)) / 1e3 for t in (-20.0, -1.7, 10.0))
    assert h_minus_20 == pytest.approx(48.79, abs=0.01)  # printed
    assert h_freezing == pytest.approx(243.14, abs=0.01)  # printed
    assert h_10 == pytest.approx(280.38, abs=0.01)  # printed
    assert 150 * (h_10 - h_minus_20) == pytest.approx(34700, abs=50)  # printed


def test_example_4_conductivity_of_pork_shoulder_at_minus_40():
    # recomputed from the handbook's inputs; its printed answers were not read
    ice = 0.67154
    shares = p.volume_fractions(PORK_SHOULDER, -40.0, ice)
    expected = {"water": 0.05481, "ice": 0.72232, "protein": 0.14357, "fat": 0.07515, "ash": 0.00415}
    for name, share in expected.items():
        assert float(shares[name]) == pytest.approx(share, rel=2e-3), name
    assert float(p.conductivity_parallel(PORK_SHOULDER, -40.0, ice)) == pytest.approx(1.9617, rel=1e-3)
    assert float(p.conductivity_perpendicular(PORK_SHOULDER, -40.0, ice)) == pytest.approx(0.5187, rel=1e-3)
    assert float(p.density(PORK_SHOULDER, -40.0, ice)) == pytest.approx(995.2, rel=1e-3)


ABOVE_0_C = [
    (name, t) for name in ("water", "protein", "fat", "carbohydrate", "fiber", "ash") for t in (5.0, 25.0, 60.0, 90.0)
]


@pytest.mark.parametrize(("name", "temperature_c"), [*ABOVE_0_C, ("ice", -20.0), ("protein", -20.0), ("fat", -20.0)])
def test_the_components_against_coolprop(name, temperature_c):
    fluid = f"INCOMP::Food{name.capitalize()}"

    def cool(quantity):
        return PropsSI(quantity, "T", temperature_c + 273.15, "P", 101325, fluid)

    assert p.component_density(name, temperature_c) == pytest.approx(cool("D"), rel=1e-9)
    assert p.component_conductivity(name, temperature_c) == pytest.approx(cool("L"), rel=1e-9)
    # CoolProp carries the handbook's constant for water, 4.1289 instead of the paper's 4.1762 kJ/kgK
    misprint = 47.3 if name == "water" else 0.0
    assert p.component_specific_heat(name, temperature_c) - misprint == pytest.approx(cool("C"), rel=1e-9)


def test_water_is_nearer_to_iapws_than_the_handbook_print():
    from iapws import IAPWS97

    measured = 1e3 * IAPWS97(T=313.15, P=0.101325).cp
    ours = float(p.component_specific_heat("water", 40.0))
    assert abs(ours - measured) < abs(ours - 47.3 - measured)
    assert ours == pytest.approx(measured, rel=0.003)
