from dataclasses import replace
from datetime import UTC, datetime
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.quantities import pan
from turnspit.recipes import read_recipe, scale_recipe, scaling_rules, total_litres
from turnspit.recipes.inflection import in_number
from turnspit.reference import table
from turnspit.words import LANGUAGES, Reader, say

GRAVY = read_recipe(
    """Turkey gravy
Serves 8
Ingredients
4 cups turkey stock
1/4 cup all-purpose flour
3 tbsp butter
1/2 tsp dried thyme
1/8 tsp cayenne pepper
3/4 tsp salt
1 egg yolk
2 tbsp fresh thyme
Method
Brown the flour in the butter in a saucepan.
Add the stock, simmer uncovered for 30 minutes until thick."""
)
BRINE = read_recipe(
    """Plain brine
Ingredients
1 gallon water
3/4 cup table salt
1 tbsp dried thyme
1 (14 lb) turkey
Method
Dissolve and boil 5 minutes. Chill."""
)
READER = Reader(datetime(2026, 11, 25, tzinfo=UTC))


def amount_of(scaled, item):
    return next(line.ingredient.amount.usual for line in scaled.lines if line.ingredient.item == item)


@pytest.mark.parametrize(
    ("recipe", "target", "factor"),
    [
        (GRAVY, {"factor": 2.5}, Fraction(5, 2)),
        (GRAVY, {"servings": 40}, Fraction(5)),
        (GRAVY, {"covers": 6}, Fraction(3, 4)),
        (GRAVY, {"short": ("stock", 2, "cup")}, Fraction(1, 2)),
        (GRAVY, {"short": ("butter", 85.2, "g")}, Fraction(2)),
        (BRINE, {"roast_kg": 6.35029318}, Fraction(1)),
        (BRINE, {"short": ("turkey", 7, "lb")}, Fraction(1, 2)),
        (BRINE, {"pan_from": pan("GN 1/2 100 mm"), "pan_to": pan("GN 1/1 100 mm")}, Fraction(126, 55)),
    ],
)
def test_the_factor_comes_from_the_target(recipe, target, factor):
    assert float(scale_recipe(recipe, **target).factor) == pytest.approx(float(factor), rel=2e-3)


def test_a_vessel_is_filled_to_85_percent():
    scaled = scale_recipe(GRAVY, vessel_l=10)
    assert total_litres(scaled.linear) == pytest.approx(8.5, rel=1e-4)


def test_a_roast_stays_one_and_weighs_more():
    scaled = scale_recipe(BRINE, roast_kg=9.0)
    turkey = scaled.linear.ingredients[3]
    assert turkey.amount.value == 1
    assert turkey.kilograms() == pytest.approx(9.0, rel=1e-5)
    assert [scaled.lines[3].text(system) for system in (None, "metric")] == [
        "1 (19 3/4 lb) turkey",
        "1 (9 kg) turkey",
    ]
    assert scaled.linear.ingredients[0].litres() == pytest.approx(3.7854 * 9.0 / 6.3503, rel=1e-4)


def test_amounts_are_scaled_and_written():
    texts = [line.text() for line in scale_recipe(GRAVY, servings=40).lines]
    assert texts[1:4] == ["1 1/4 cups all-purpose flour", "3/4 cup + 3 tbsp butter", "1 3/4 tsp dried thyme"]
    metric = [line.text("metric") for line in scale_recipe(GRAVY, servings=16).lines]
    assert metric[:3] == ["1.85 L turkey stock", "62 g all-purpose flour", "85 g butter"]


def test_counted_things_take_their_number():
    texts = [line.text() for line in scale_recipe(BRINE, factor=2).lines]
    assert texts[3] == "2 (14 lb) turkeys"
    one = read_recipe("Pie\nIngredients\n2 large eggs\n3 cloves garlic\nMethod\nBake.")
    assert [line.text() for line in scale_recipe(one, factor=0.5).lines] == ["1 large egg", "1 1/2 cloves garlic"]


def test_a_part_of_a_thing_says_what_it_comes_to_and_small_things_stay_whole():
    recipe = read_recipe(
        "Pie\nIngredients\n4 large eggs\n2 (14 oz) cans tomatoes\njuice of 2 lemons\n2 bay leaves\n3 stalks celery\n"
        "1 (14 lb) turkey\n2 1/2 lb potatoes\nMethod\nBake."
    )
    scaled = scale_recipe(recipe, factor=Fraction(2, 3))
    assert [line.text("us") for line in scaled.lines] == [
        "2 2/3 large eggs (4 3/4 oz)",
        "1 1/3 (14 oz) cans (1 lb 3 oz) tomatoes",
        "juice of 1 1/3 lemons (4 tbsp)",
        "1 bay leaf",
        "2 stalks celery",
        "1 (14 lb) turkey",
        "1 lb 11 oz potatoes",
    ]
    assert scaled.lines[0].text("metric") == "2 2/3 large eggs (135 g)"
    assert scaled.lines[5].text("metric", "es") == "1 (6,4 kg) pavo"


@pytest.mark.parametrize(
    ("one", "many"),
    [
        ("egg", "eggs"),
        ("goose", "geese"),
        ("leg of lamb", "legs of lamb"),
        ("boneless leg of lamb", "boneless legs of lamb"),
        ("bay leaf", "bay leaves"),
        ("potato", "potatoes"),
        ("berry", "berries"),
        ("radish", "radishes"),
        ("turkey", "turkeys"),
        ("star anise", "star anise"),
        ("egg yolk", "egg yolks"),
    ],
)
def test_nouns_have_a_singular_and_a_plural(one, many):
    assert in_number(one, many=True) == many
    assert in_number(many, many=False) == one
    assert in_number(many, many=True) == many


def test_a_deeper_pan_takes_longer():
    shallow, deep = pan("GN 1/1 65 mm"), pan("GN 1/2 150 mm")
    assert scale_recipe(GRAVY, pan_from=shallow, pan_to=deep).by.key == "recipes-by-pan-deeper"
    assert scale_recipe(GRAVY, pan_from=deep, pan_to=shallow).by.key == "recipes-by-pan-shallower"


def test_herbs_and_hot_pepper_lag_behind_beyond_twice():
    scaled = scale_recipe(GRAVY, factor=10)
    assert amount_of(scaled, "dried thyme") == Fraction(1, 2) * 6  # the association's example: 1 becomes 6 of 10
    assert amount_of(scaled, "cayenne pepper") == Fraction(1, 8) * 4  # and 1 becomes 4
    assert amount_of(scaled, "fresh thyme") == 20
    assert amount_of(scaled, "salt") == Fraction(15, 2)
    assert [line.rule for line in scaled.lines][3:5] == ["herbs-half-steps", "hot-pepper-quarter-steps"]
    assert scaled.lines[3].linear_text() == "1 tbsp + 2 tsp"


def test_less_simmers_away_from_a_larger_pot():
    larger, smaller = scale_recipe(GRAVY, factor=5), scale_recipe(GRAVY, factor=0.5)
    assert 18 < amount_of(larger, "turkey stock") < 20
    assert 2 < amount_of(smaller, "turkey stock") < Fraction(22, 10)


def test_a_rule_can_be_turned_off_and_is_still_shown():
    off = scale_recipe(GRAVY, factor=10, rules_off=scaling_rules())
    assert off.recipe == off.linear
    shown = {rule.rule: rule.on for rule in off.rules}
    assert shown["herbs-half-steps"] is False
    assert set(shown.values()) == {False}
    with pytest.raises(Unknown, match="rule no-such is not known"):
        scale_recipe(GRAVY, factor=2, rules_off=["no-such"])


def test_a_brine_is_strictly_linear():
    scaled = scale_recipe(BRINE, factor=3)
    assert scaled.recipe == scaled.linear
    assert "salt-linear-in-brine" in {rule.rule for rule in scaled.rules}
    assert "salt-taste-last" not in {rule.rule for rule in scaled.rules}


def test_nothing_is_said_of_a_recipe_that_is_not_scaled():
    same = scale_recipe(GRAVY, factor=1)
    assert same.rules == ()
    assert same.recipe == GRAVY


def test_every_rule_has_its_words_and_its_source():
    for row in table("scaling_rules"):
        assert row["source"]
    for factor in (0.5, 10):
        for recipe in (GRAVY, BRINE):
            scaled = scale_recipe(recipe, factor=factor)
            for language in LANGUAGES:
                for message in (scaled.by, *(rule.message for rule in scaled.rules)):
                    assert say(message, replace(READER, language=language))


def test_allergens_are_flagged_with_the_caution():
    scaled = scale_recipe(GRAVY, factor=2)
    assert {flag.allergen for flag in scaled.allergens} == {"milk", "egg", "wheat"}
    assert [caution.rule for caution in scaled.cautions] == ["allergens"]


@pytest.mark.parametrize(
    ("recipe", "target", "error", "said"),
    [
        (GRAVY, {}, Impossible, "target .none. is not one target: give one of factor, servings"),
        (GRAVY, {"factor": 2, "servings": 3}, Impossible, "factor, servings is not one target"),
        (GRAVY, {"factor": 0}, Impossible, "factor 0 is not above zero"),
        (GRAVY, {"factor": float("nan")}, Impossible, "not above zero"),
        (GRAVY, {"servings": -2}, Impossible, "servings -2 is not above zero"),
        (GRAVY, {"factor": 10_000}, OutOfRange, "factor 10000 is above 1000"),
        (GRAVY, {"roast_kg": 6}, Impossible, "names no roast with its weight"),
        (
            GRAVY,
            {"short": ("saffron", 2, "g")},
            Impossible,
            "saffron is not in the recipe with an amount: name one of turkey",
        ),
        (GRAVY, {"short": ("yolk", 2, "cm")}, Impossible, "cannot be compared"),
        (GRAVY, {"pan_to": pan("GN 1/1 100 mm")}, Impossible, "say which pan the recipe is for"),
        (BRINE, {"servings": 4}, Impossible, "does not say how many it serves"),
        (
            read_recipe("Bread\nMakes 2 loaves\nIngredients\n500 g flour\nMethod\nBake."),
            {"servings": 4},
            Impossible,
            "makes 2 loaves, not servings",
        ),
        (
            read_recipe("Salt\nIngredients\nsalt\nMethod\nStrew."),
            {"vessel_l": 4},
            Impossible,
            "has no amounts with a volume",
        ),
    ],
)
def test_a_target_that_cannot_be_met_is_refused_with_the_way_out(recipe, target, error, said):
    with pytest.raises(error, match=said):
        scale_recipe(recipe, **target)


factors = st.fractions(min_value=Fraction(1, 8), max_value=20, max_denominator=50)


@given(factors)
def test_scaling_there_and_back_returns_the_recipe(factor):
    there = scale_recipe(GRAVY, factor=factor).linear
    assert scale_recipe(there, factor=1 / factor).linear == GRAVY


@given(factors, factors)
def test_scaling_composes(one, other):
    in_two = scale_recipe(scale_recipe(BRINE, factor=one).linear, factor=other).linear
    assert in_two == scale_recipe(BRINE, factor=one * other).linear


@given(factors)
def test_total_volume_scales_with_the_factor(factor):
    assert total_litres(scale_recipe(GRAVY, factor=factor).linear) == pytest.approx(
        total_litres(GRAVY) * float(factor)
    )


@pytest.mark.parametrize(("factor", "birds"), [(1.04, 2), (1.1, 3), (1.5, 3), (0.3, 1)])
def test_roasts_are_whole_and_never_a_tenth_too_few(factor, birds):
    roast = read_recipe("Roast chicken\nServes 8\nIngredients\n2 (4 lb) chickens\n1 tsp salt\nMethod\nRoast.")
    assert scale_recipe(roast, factor=factor).recipe.ingredients[0].amount.value == birds
