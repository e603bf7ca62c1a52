"""The starter recipes are checked by arithmetic: what goes in, less what is lost, is what each says it makes."""

import pytest

from turnspit.brine import solution as nacl
from turnspit.errors import Unknown
from turnspit.recipes import carved, read_starter, starter_keys, starters
from turnspit.recipes.carving import SERVING_KG
from turnspit.recipes.starter.read import SOURCE

WEIGHED = [one for one in starters() if one.portion_g and not one.roast]
ROASTS = [one for one in starters() if one.roast]


def kilograms(one):
    return sum(
        ingredient.kilograms() or 0
        for ingredient in one.recipe.ingredients
        if not one.counts or ingredient.item in one.counts
    )


def test_there_is_a_dinner_and_at_least_four_other_roasts():
    assert {"brine-federal", "brine-overnight", "dry-salt", "dressing", "gravy", "neck-stock"} <= set(starter_keys())
    assert {"mashed-potatoes", "braised-greens", "cranberry"} <= set(starter_keys())
    assert len({one.roast for one in ROASTS} - {"turkey"}) >= 4


@pytest.mark.parametrize("one", WEIGHED, ids=lambda one: one.key)
def test_a_dishs_servings_weigh_what_it_says(one):
    cooked_kg = kilograms(one) * (1 - one.lost_percent / 100)
    assert cooked_kg == pytest.approx(float(one.recipe.makes.count) * one.portion_g / 1000, rel=0.03)


@pytest.mark.parametrize("one", ROASTS, ids=lambda one: one.key)
def test_a_roasts_servings_come_off_its_bone(one):
    raw_kg = one.recipe.ingredients[0].kilograms()
    assert carved(one.roast, raw_kg).servings == one.recipe.makes.count
    assert one.portion_g / 1000 == SERVING_KG


@pytest.mark.parametrize("key", ["brine-federal", "brine-overnight"])
def test_a_brine_has_its_strength_and_volume(key):
    one = read_starter(key)
    salt, water = (
        next(i for i in one.recipe.ingredients if i.item == item).kilograms() for item in ("table salt", "water")
    )
    strength = 100 * salt / (salt + water)
    assert strength == pytest.approx(one.strength_percent, abs=0.06)
    assert (salt + water) / nacl.density_kg_l(strength) == pytest.approx(float(one.recipe.makes.count), rel=0.02)


def test_dry_salt_is_its_percent_of_the_bird():
    one = read_starter("dry-salt")
    assert 100 * kilograms(one) / one.bird_kg == pytest.approx(one.percent_of_bird, abs=0.01)


def test_stock_is_what_the_water_leaves():
    one = read_starter("neck-stock")
    assert kilograms(one) * (1 - one.lost_percent / 100) == pytest.approx(float(one.recipe.makes.count), rel=0.03)


@pytest.mark.parametrize("one", starters(), ids=lambda one: one.key)
def test_a_starter_recipe_is_whole(one):
    recipe = one.recipe
    assert recipe.source == SOURCE
    assert not recipe.unread
    assert recipe.makes.count > 0
    for step in recipe.steps:
        assert step.text.endswith(".")
        assert step.station in ("board", "stove", "oven", "cold", "pass")
        assert step.minutes[0] <= step.minutes[1]
        assert step.equipment


@pytest.mark.parametrize("one", ROASTS, ids=lambda one: one.key)
def test_a_roast_names_its_safe_temperature(one):
    from turnspit.heat import roast

    oven = next(step for step in one.recipe.steps if step.station == "oven")
    row = roast(one.roast)
    said_c = min(oven.temperatures_c)
    assert said_c >= round(row.safe_c)
    assert max(oven.temperatures_c) >= 163
    assert str(round(said_c * 9 / 5 + 32)) in oven.text


def test_a_name_that_is_not_there_is_refused():
    with pytest.raises(Unknown, match="roast-turkey"):
        read_starter("roast-swan")
