from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from turnspit.errors import Impossible
from turnspit.recipes import Recipe, Yield, read_ingredient, read_starter, shopping_list
from turnspit.recipes.shopping import LOOSE_G, _line, food_key
from turnspit.reference import table

LONG_TABLE = [
    "roast-turkey",
    "brine-federal",
    "dressing",
    "gravy",
    "neck-stock",
    "mashed-potatoes",
    "braised-greens",
    "cranberry",
    "glazed-carrots",
]


def recipe(*lines, name="a dish", makes=None):
    return Recipe(name, makes, tuple(read_ingredient(line, "US") for line in lines), region="US")


def one(*lines, market="us", **recipes):
    bought = shopping_list([recipe(*lines)], market).lines
    assert len(bought) == 1
    return bought[0]


def test_the_same_food_is_summed_across_recipes_and_bought_in_packs():
    bought = shopping_list([recipe("1 cup butter", name="one"), recipe("6 tbsp butter, melted", name="two")]).lines[0]
    assert bought.need.amount == pytest.approx(227 + 6 * 14.2, rel=0.01)
    assert (bought.pack, bought.packs) == ("block", 1)
    assert bought.left_over == pytest.approx(454 - bought.need.amount)
    assert bought.recipes == ("one", "two")
    assert bought.lines == ("1 cup butter", "6 tbsp butter, melted")


def test_aisles_stand_in_the_order_of_a_shop():
    listed = shopping_list([read_starter(key).recipe for key in LONG_TABLE])
    order = [str(row["aisle"]) for row in table("aisles")]
    assert list(listed.aisles) == [aisle for aisle in order if aisle in listed.aisles]
    assert {"meat", "produce", "dairy", "bakery", "baking", "spices"} <= set(listed.aisles)
    assert "tap" not in listed.aisles
    assert [line.item for line in listed.at_home if "water" in line.item] == ["water"]


def test_a_metric_shop_has_other_packs():
    assert one("1 cup butter").pack_size == 454
    assert one("1 cup butter", market="metric").pack_size == 250


def test_eggs_are_counted_and_sold_by_the_dozen():
    bought = one("3 large eggs, beaten", "2 eggs")
    assert (bought.need.measure, bought.need.amount, bought.packs, bought.left_over) == ("piece", 5, 1, 7)


def test_a_bird_is_bought_whole():
    bought = one("1 (14 lb) turkey")
    assert (bought.aisle, bought.pack, bought.packs) == ("meat", "piece", 1)


def test_what_is_sold_loose_is_weighed_up():
    bought = one("1 lb onions, chopped")
    assert bought.pack == "loose"
    assert bought.buy == pytest.approx(453.59237)
    assert one("500 g onions", market="metric").buy == pytest.approx(500)
    assert one("510 g onions", market="metric").buy == pytest.approx(600)


def test_a_cup_of_chopped_vegetables_is_bought_with_its_trim():
    cut = one("4 cups chopped celery").need
    assert cut.trimmed == pytest.approx(cut.amount / (1 - 0.11))  # USDA SR28: 11 percent root and leaf trimmings
    weighed = one("1 lb celery").need
    assert weighed.trimmed == weighed.amount


def test_salt_to_taste_joins_the_salt_that_is_measured():
    bought = one("1 tbsp table salt", "table salt to taste")
    assert bought.need.amount == pytest.approx(18, rel=0.02)
    assert len(bought.lines) == 2


def test_what_cannot_be_measured_keeps_its_text():
    listed = shopping_list([recipe("3 dollops of something unheard of", "~~~ 12", "edible flowers")])
    said = {text for line in (*listed.lines, *listed.at_home) for text in line.lines}
    assert said == {"3 dollops of something unheard of", "~~~ 12", "edible flowers"}


def test_stock_that_is_made_and_drippings_are_not_bought():
    stock = recipe("1 gallon water", name="Turkey stock", makes=Yield(Fraction(2), "L"))
    gravy = recipe("1 L turkey stock", "1/2 cup turkey drippings")
    listed = shopping_list([stock, gravy])
    assert listed.lines == ()
    more = shopping_list([stock, recipe("3 L turkey stock")]).lines[0]
    assert more.made == pytest.approx(2000, rel=0.02)
    assert more.buy - more.left_over == pytest.approx(1000, rel=0.02)
    assert shopping_list([gravy]).lines[0].packs >= 1


def test_costs_are_summed_where_prices_are_given():
    recipes = [recipe("1 cup butter", "1 kg onions", "2 carrots")]
    listed = shopping_list(recipes, "metric", {"butter": 3.0, "onion_raw": 1.5})
    assert listed.cost == pytest.approx(3.0 + 1.5)
    assert listed.unpriced == 1
    assert shopping_list(recipes).cost is None
    with pytest.raises(Impossible, match="price"):
        shopping_list(recipes, "metric", {"butter": -1.0})


def test_a_line_is_optional_only_where_all_are():
    assert one("1 cup pecans (optional)").optional
    assert not one("1 cup pecans (optional)", "1 cup pecans").optional


def test_names_that_hold_a_bird_are_not_a_bird():
    assert food_key("whole fresh turkey") == "roast_turkey"
    assert food_key("turkey stock") == "stock_chicken"
    assert food_key("turkey necks") == "turkey neck"
    assert food_key("leg of lamb") == "roast_lamb_leg"
    assert food_key("chickens") == "roast_chicken"


def test_a_price_is_found_by_any_name_of_the_food():
    listed = shopping_list(
        [recipe("2 lb russet potatoes", "1 lb unsalted butter")], prices={"potatoes": 2.0, "mantequilla": 5}
    )
    costs = {line.item: line.cost for line in listed.lines}
    assert costs["unsalted butter"] == 5
    assert costs["russet potatoes"] == pytest.approx(2 * 2 * 0.45359237)
    assert listed.unpriced == 0


def test_the_same_lemons_give_juice_and_zest():
    listed = shopping_list(
        [
            recipe("juice of 2 lemons", "zest of 1 lemon", "2 lemons, halved"),
            recipe("3 tbsp lemon juice", "1 tsp lemon zest"),
        ]
    )
    packs = {line.item: line.packs for line in (*listed.lines, *listed.at_home)}
    assert packs == {"lemon juice": 3, "lemon zest": 0, "lemons": 2}
    alone = shopping_list([recipe("zest of 2 lemons")])
    assert [(line.pack, line.packs) for line in alone.lines] == [("lemon", 2)]


@pytest.mark.parametrize("market", ["us", "metric"])
def test_mass_is_conserved_through_the_list_of_a_whole_dinner(market):
    recipes = [read_starter(key).recipe for key in LONG_TABLE]
    listed = shopping_list(recipes, market)
    lines = (*listed.lines, *listed.at_home)
    weighed = sum(line.need.amount for line in lines if line.need and line.need.measure == "g")
    whole = ("egg", "turkey", "lemon", "orange", "bay", "bunch", "head")
    wanted = sum(
        1000 * (ingredient.kilograms() or 0)
        for dish in recipes
        for ingredient in dish.ingredients
        if not any(word in ingredient.text for word in whole)
        or "stock" in ingredient.text
        or "juice" in ingredient.text
    )
    others = sum(1000 * (i.kilograms() or 0) for d in recipes for i in d.ingredients if "zest" in i.text)
    others += sum(1000 * (i.kilograms() or 0) for d in recipes for i in d.ingredients if "drippings" in i.text)
    others += sum(1000 * (i.kilograms() or 0) for d in recipes for i in d.ingredients if "necks" in i.text)
    bunches = 20.0  # a bunch of thyme, by its pack
    peel = 2 * 12.0  # of two oranges, by its pack
    assert weighed == pytest.approx(wanted + others + bunches + peel, rel=1e-6)
    assert {text for line in lines for text in line.lines} == {
        _line(i, market) for d in recipes for i in d.ingredients
    }


@settings(deadline=None)
@given(
    st.lists(
        st.tuples(
            st.sampled_from(
                ["butter", "flour", "onions", "carrots", "milk", "sugar", "rice", "pecans", "turkey stock"]
            ),
            st.integers(1, 5000),
        ),
        min_size=1,
        max_size=30,
    ),
    st.sampled_from(["us", "metric"]),
)
def test_mass_is_conserved_and_packs_cover_it(rows, market):
    listed = shopping_list([recipe(*(f"{grams} g {food}" for food, grams in rows))], market)
    assert sum(line.need.amount for line in listed.lines) == pytest.approx(sum(grams for _, grams in rows))
    for line in listed.lines:
        assert line.buy >= line.need.trimmed - 1e-6
        assert line.left_over < line.pack_size
        assert line.buy - line.left_over == pytest.approx(line.need.trimmed)
        if line.pack == "loose":
            assert line.pack_size == pytest.approx(LOOSE_G[market])
