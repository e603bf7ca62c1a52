from datetime import UTC, datetime
from fractions import Fraction

import pytest

from turnspit.errors import Impossible
from turnspit.quantities import Amount
from turnspit.recipes import read_recipe, read_starter, scale_recipe, shortage, shortage_in
from turnspit.words import Reader, say

NOW = datetime(2026, 11, 24, 12, tzinfo=UTC)
CRUMBLE = read_recipe(
    "Crumble\nServes 6\nIngredients\n100 g butter, for the topping\n50 g butter, for the dish\n4 apples\n"
    "1 cup sugar\nMethod\nBake."
)


def test_what_there_is_of_what_is_needed_sets_the_factor():
    short = shortage("potatoes", Amount(Fraction(700), "g"), Amount(Fraction("1.2"), "kg"), serves=8)
    assert (short.factor, short.servings) == (Fraction(7, 12), Fraction(14, 3))
    assert say(short.message(), Reader(NOW)) == "By the potatoes there is: 700 g of 1.2 kg for 8, enough for 4."


def test_volumes_and_pieces_are_compared_by_published_measures():
    assert float(
        shortage("butter", Amount(Fraction(1), "stick"), Amount(Fraction(1, 2), "cup")).factor
    ) == pytest.approx(1, rel=0.01)
    assert shortage("eggs", Amount(Fraction(2)), Amount(Fraction(3))).factor == Fraction(2, 3)
    with pytest.raises(Impossible, match="cannot be compared"):
        shortage("unheard-of root", Amount(Fraction(2)), Amount(Fraction(1), "kg"))
    with pytest.raises(Impossible, match="not above zero"):
        shortage("potatoes", Amount(Fraction(0), "g"), Amount(Fraction(1), "kg"))


def test_all_lines_of_the_food_count_together():
    short = shortage_in(CRUMBLE, "butter", 75, "g")
    assert short.factor == Fraction(1, 2)
    assert say(short.message(), Reader(NOW)) == "By the butter there is: 75 g of 150 g for 6, enough for 3."
    assert scale_recipe(CRUMBLE, short=("butter", 75, "g")).factor == Fraction(1, 2)


def test_a_food_is_found_by_another_of_its_names():
    roast = read_starter("roast-potatoes").recipe
    assert float(shortage_in(roast, "papas", 700, "g").factor) == pytest.approx(
        float(shortage_in(roast, "potatoes", 700, "g").factor)
    )
    said = say(shortage_in(roast, "papas", 700, "g").message(), Reader(NOW))
    assert said == "By the potatoes there is: 700 g of 2.95 kg for 14, enough for 3."
    with pytest.raises(Impossible, match="not in the recipe"):
        shortage_in(roast, "saffron", 1, "g")
