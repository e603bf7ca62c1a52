"""Scaling against the worked examples of its sources.

Canadian Spice Association, usage notes: dried leaf herbs, nutmeg and mace, 1 tbsp for 10 becomes 6 tbsp for 100; hot red
pepper, 1 tsp for 10 becomes 4 tsp for 100; pepper, cinnamon, ginger and the like are linear. US Armed Forces Recipe Service,
TM 10-412 (2003), General Information: factor = needed portions / recipe portions; by an ingredient on hand, factor =
weight on hand / weight in the recipe.
"""

import pytest

from turnspit.recipes import read_recipe, scale_recipe

FOR_TEN = read_recipe(
    """Seasoned potatoes
Serves 10
Ingredients
5 lb potatoes
1 tbsp dried thyme
1 tsp cayenne pepper
1 tsp ground cinnamon
Method
Roast."""
)


@pytest.mark.parametrize(
    ("item", "for_hundred"), [("dried thyme", 6), ("cayenne pepper", 4), ("ground cinnamon", 10), ("potatoes", 50)]
)
def test_ten_become_a_hundred(item, for_hundred):
    scaled = scale_recipe(FOR_TEN, servings=100)
    assert next(one.amount.value for one in scaled.recipe.ingredients if one.item == item) == for_hundred


def test_the_factor_is_what_is_on_hand_by_what_is_needed():
    assert float(scale_recipe(FOR_TEN, short=("potatoes", 3, "lb")).factor) == pytest.approx(0.6)
    assert float(scale_recipe(FOR_TEN, servings=250).factor) == 25
