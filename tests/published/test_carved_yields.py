"""Carved yields and portions against published tables that they were not copied from, and against each other."""

import pytest

from turnspit.recipes import SizeCase, carved, size_roast
from turnspit.reference import table

POUND_KG, OUNCE_KG = 0.45359237, 0.028349523125


@pytest.mark.parametrize(
    ("kind", "servings_per_lb"),
    [("turkey", 2.8), ("turkey_breast", 3.3)],
)
def test_three_ounce_servings_to_the_pound(kind, servings_per_lb):
    # USDA Food Buying Guide for Child Nutrition Programs (PA-1331), as restated by a trade manual: whole turkey 2.8,
    # breast with bone 3.3 servings of 3 oz from a pound as bought
    meat = carved(kind, 100 * POUND_KG, serving_kg=3 * OUNCE_KG)
    assert meat.servings / 100 == pytest.approx(servings_per_lb, rel=0.03)


def test_the_average_bird_of_the_nutrient_database():
    # USDA SR28 NDB 05165-05168: 5002 g raw, 3812 g roasted, of which 31 percent bone: 52.6 percent eaten
    meat = carved("turkey", 5.002)
    assert meat.cooked_kg.p50 == pytest.approx(3.812, rel=0.01)
    assert meat.meat_kg == pytest.approx(3.812 * (1 - 0.31), rel=0.01)


@pytest.mark.parametrize(
    ("kind", "grams_per_lb", "within"),
    [
        ("turkey", 229, 0.06),  # NDB 05200, fryer-roaster: a smaller bird than the one of the table
        ("chicken", 210, 0.03),  # NDB 05112, roaster
        ("capon", 196, 0.01),
        ("duck", 173, 0.01),
        ("goose", 188, 0.01),
        ("beef_rib", 289, 0.01),
        ("lamb_leg", 265, 0.01),
        ("pork_loin", 317, 0.01),
    ],
)
def test_roasted_meat_from_a_pound(kind, grams_per_lb, within):
    # USDA SR28 WEIGHT: edible roasted grams from a pound of ready-to-cook bird or raw meat with refuse
    assert 1000 * carved(kind, POUND_KG).meat_kg == pytest.approx(grams_per_lb, rel=within)


@pytest.mark.parametrize("row", list(table("portions_roast")), ids=lambda row: f"{row['kind']}-{row['bone_in']}")
def test_a_plain_portion_is_five_to_nine_ounces_of_carved_meat(row):
    # a pound of whole turkey is 8.5 oz of meat and skin (USDA), leftovers included; half a pound boneless is 5.5 oz
    sizing = size_roast(SizeCase(covers=100, kind=row["kind"], bone_in=row["bone_in"]))
    ounces = sizing.needed_kg * sizing.carved.meat_of_raw / 100 / OUNCE_KG
    assert 5 <= ounces <= 9


def test_how_big_for_fourteen():
    # USDA: a pound a person; with leftovers 1.3 to 1.5 lb (general planning pages)
    assert size_roast(SizeCase(covers=14)).total_kg == pytest.approx(14 * POUND_KG)
    assert size_roast(SizeCase(covers=14, leftovers=True)).total_kg == pytest.approx(21 * POUND_KG)
