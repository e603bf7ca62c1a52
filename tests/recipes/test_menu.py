from datetime import date

import pytest

from turnspit.errors import Unknown
from turnspit.recipes import SizeCase, menu, order_sheet, read_starter, shopping_list


def grams(listed, item):
    return next(line.need.amount for line in (*listed.lines, *listed.at_home) if item in line.item)


def test_a_dinner_for_two_hundred_takes_what_six_do_each():
    few, many = (shopping_list(menu(SizeCase(covers=covers)).recipes) for covers in (60, 600))
    # foods that no scaling rule bends
    for item in ("bread", "carrots", "kale", "cranberries", "celery"):
        assert grams(many, item) == pytest.approx(10 * grams(few, item), rel=0.001)


def test_the_roast_is_as_many_and_as_heavy_as_it_was_sized():
    dinner = menu(SizeCase(covers=200))
    roast = dinner.recipes[0].ingredients[0]
    assert roast.amount.value == dinner.sizing.count == 13
    assert roast.kilograms() == pytest.approx(dinner.sizing.total_kg, rel=0.002)
    turkeys = next(line for line in shopping_list(dinner.recipes).lines if line.item == "turkeys")
    assert turkeys.packs == 13


def test_sides_are_for_every_diner_and_half_for_a_child():
    servings = {recipe.name: recipe.makes.count for recipe in menu(SizeCase(covers=14, children=4)).recipes}
    assert servings["Mashed potatoes"] == 12
    assert servings["Pan gravy on unsalted stock"] == 12


def test_only_a_bird_is_brined():
    assert "Plain brine for the Thursday bird" in [
        dish.name for dish in menu(SizeCase(covers=14), brine=True).recipes
    ]
    for dinner in (menu(SizeCase(covers=14)), menu(SizeCase(covers=14, kind="beef_rib"), brine=True)):
        assert "Plain brine for the Thursday bird" not in [dish.name for dish in dinner.recipes]


def test_yields_hold_when_scaled():
    dressing = next(dish for dish in menu(SizeCase(covers=200)).recipes if "dressing" in dish.name)
    cooked_kg = sum(one.kilograms() or 0 for one in dressing.ingredients) * (
        1 - read_starter("dressing").lost_percent / 100
    )
    # sage, salt and thyme grow less than the diners (the scaling rules), which is little of the weight
    assert cooked_kg == pytest.approx(200 * 0.165, rel=0.03)


def test_two_hundred_are_ordered_by_the_case():
    lines = order_sheet(shopping_list(menu(SizeCase(covers=200)).recipes), date(2026, 11, 26), prep_days=3).lines
    cased = {line.item for line in lines if line.case_of}
    assert {"turkeys", "russet potatoes", "carrots", "white bread"} <= cased


def test_a_roast_without_a_recipe_and_an_unknown_side_are_refused():
    with pytest.raises(Unknown, match="turkey"):
        menu(SizeCase(covers=14, kind="capon"))
    with pytest.raises(Unknown, match="dressing"):
        menu(SizeCase(covers=14), ("ambrosia",))
