"""Brine against independent property libraries: CoolProp INCOMP::MNA (Melinder, IIR) and IAPWS water and ice."""

import pytest
from CoolProp.CoolProp import PropsSI
from iapws import IAPWS97
from iapws._iapws import _Ice

from turnspit.brine import cold_brine, ice_to_chill_kg
from turnspit.brine import solution as nacl

STRENGTHS = (1.0, 2.0, 3.0, 4.0, 5.0, 5.48, 6.0, 7.17, 8.0, 9.0, 10.0, 13.0, 15.0, 17.5, 20.0, 22.0)


def coolprop(name, strength_percent, temperature_c=4.0):
    return PropsSI(name, "T", temperature_c + 273.15, "P", 101325, f"INCOMP::MNA[{strength_percent / 100}]")


def water_j_kg(temperature_c):
    return IAPWS97(T=temperature_c + 273.15, P=0.101325).h * 1000


def ice_j_kg(temperature_c):
    return _Ice(temperature_c + 273.15, 0.101325)["h"] * 1000


@pytest.mark.parametrize("strength", STRENGTHS)
@pytest.mark.parametrize("temperature_c", [4.0, 15.0, 20.0])
def test_density_is_within_one_percent_of_coolprop(strength, temperature_c):
    expected = coolprop("D", strength, temperature_c)
    assert nacl.density_kg_l(strength, temperature_c) * 1000 == pytest.approx(expected, rel=0.01)


@pytest.mark.parametrize("strength", STRENGTHS)
def test_freezing_point_is_within_one_percent_of_coolprop(strength):
    expected = coolprop("T_freeze", strength) - 273.15
    # between the rows, 2 percent apart from 10 to 14, the straight line lies a little above the curve
    assert nacl.freezing_c(strength) == pytest.approx(expected, rel=0.01 if strength != 13.0 else 0.011)


@pytest.mark.parametrize("strength", [2.0, 5.48, 8.0, 13.0, 18.0])
def test_specific_heat_between_the_rows_is_coolprops(strength):
    # the rows themselves were computed with CoolProp: this checks only what lies between them
    assert nacl.specific_heat_j_kg_k(strength) == pytest.approx(coolprop("C", strength), rel=0.01)


@pytest.mark.parametrize("strength", [1.0, 5.48, 10.0, 20.0])
@pytest.mark.parametrize(("from_c", "to_c", "ice_c"), [(38.0, 4.0, 0.0), (25.0, 3.0, 0.0), (15.0, 2.0, -18.0)])
def test_ice_balance_is_within_one_percent_of_coolprop_and_iapws(strength, from_c, to_c, ice_c):
    given_up = coolprop("H", strength, from_c) - coolprop("H", strength, to_c)
    taken = water_j_kg(to_c) - ice_j_kg(ice_c - 0.001)
    assert ice_to_chill_kg(10.0, strength, from_c, to_c, ice_c) == pytest.approx(10.0 * given_up / taken, rel=0.01)


@pytest.mark.parametrize(("strength", "tap_c"), [(17.0, 15.0), (18.5, 10.0), (20.0, 15.0)])
def test_a_strong_brine_closes_its_balance(strength, tap_c):
    """Its concentrate is below 40 C, so that CoolProp knows it; heat of dilution is left out on both sides."""
    water_l = 8.0
    cold = cold_brine(water_l, strength, tap_c=tap_c, to_c=3.0)
    assert cold.hot_c < 40
    salt_kg = nacl.salt_g(water_l, strength) / 1000
    hot_kg = cold.concentrate_water_l * nacl.WATER_KG_L + salt_kg
    hot_percent = min(100 * salt_kg / hot_kg, 22.99)  # CoolProp knows it to 23
    given_up = hot_kg * (coolprop("H", hot_percent, cold.hot_c) - coolprop("H", hot_percent, 3.0))
    given_up += cold.cold_water_l * (water_j_kg(tap_c) - water_j_kg(3.0))
    assert cold.ice_kg * (water_j_kg(3.0) - ice_j_kg(-0.001)) == pytest.approx(given_up, rel=0.01)


def test_plain_boiling_water_closes_its_balance_with_iapws():
    cold = cold_brine(10.0, 0.0, tap_c=15.0, to_c=3.0)
    given_up = 0.9982 * cold.concentrate_water_l * (water_j_kg(99.9) - water_j_kg(3.0))
    given_up += 0.9982 * cold.cold_water_l * (water_j_kg(15.0) - water_j_kg(3.0))
    assert cold.ice_kg * (water_j_kg(3.0) - ice_j_kg(-0.001)) == pytest.approx(given_up, rel=0.01)


@pytest.mark.parametrize(
    ("degrees", "strength", "salt_lb_per_gallon"), [(20, 5.279, 0.465), (50, 13.198, 1.268), (100, 26.395, 2.99)]
)
def test_salometer_degrees(degrees, strength, salt_lb_per_gallon):
    # The Salometer and How to Use It: 26.395 percent is 100 degrees at 60 F; columns computed from it
    assert nacl.salometer_deg(strength) == pytest.approx(degrees, abs=0.01)
    assert nacl.salt_g(3.785411784, strength) / 453.59237 == pytest.approx(salt_lb_per_gallon, rel=0.002)


@pytest.mark.parametrize(
    ("salt_g", "water_kg", "percent"),
    [(0.75 * 292, 3.7786, 5.48), (292, 3.7786, 7.17), (292, 7.5572, 3.72), (60, 0.9982, 5.67), (50, 1.0, 4.76)],
)
def test_household_brines_by_weight(salt_g, water_kg, percent):
    # USDA SR28 NDB 02047: 292 g of table salt to a US cup; mass balance
    of_water = 0.1 * salt_g / water_kg
    assert nacl.of_brine_percent(of_water) == pytest.approx(percent, abs=0.01)
    assert nacl.of_water_percent(nacl.of_brine_percent(of_water)) == pytest.approx(of_water)


def test_the_general_handbook_and_the_trade_table_differ_by_less_than_a_tenth_of_a_degree():
    from turnspit.reference import table

    for row in table("nacl_freezing"):
        if "trade_freezing_c" in row:
            assert row["freezing_c"] == pytest.approx(row["trade_freezing_c"], abs=0.1)
