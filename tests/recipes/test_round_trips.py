"""What is written is read back: lines, whole recipes, any text."""

import json
import tomllib
from contextlib import suppress
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from turnspit.errors import Impossible
from turnspit.quantities import unit
from turnspit.recipes import (
    read_ingredient,
    read_recipe,
    write_ingredient,
    write_json_ld,
    write_text,
)

PASTED = """
# Herb-brined turkey

A plain brine for a big bird.
Serves 12 to 14 | Prep time: 40 min | Cook time: 4 hours

Ingredients
For the brine:
1 gallon water, divided
3/4 cup table salt
½ cup brown sugar, packed
For the bird
1 (14 lb) turkey, thawed
4 tbsp unsalted butter, softened, or margarine
Salt and pepper, to taste
½½ of something

Directions
1. Dissolve the salt in a quart of the water in a stockpot; boil 5 minutes.
2. Brine overnight in the refrigerator.
   Turn once.
3. Roast at 325°F (165°C) on a rack in a roasting pan for 3 1/2 to 4 hours.

Notes
Do not salt the gravy before tasting.
"""


def bare(recipe):
    """A recipe without the wording of its lines, which export does not keep."""

    def line(one):
        return replace(one, text="", alternatives=tuple(map(line, one.alternatives)))

    return replace(recipe, ingredients=tuple(map(line, recipe.ingredients)), notes=())


LINES = [
    line[0]
    for lines in tomllib.loads(Path(__file__).with_name("recipe_lines.toml").read_text(encoding="utf-8")).values()
    for line in lines
]


@pytest.mark.parametrize("line", LINES)
def test_every_line_of_the_corpus_is_the_same_after_export(line):
    once = read_ingredient(line)
    again = read_ingredient(write_ingredient(once))
    assert bare_line(again) == bare_line(once, near=0.03 if line in ROUNDED else 1e-9)


ROUNDED = ("1/3 cup + 1 tablespoon flour",)
"""An amount that no one measure holds is written by the nearest."""


def bare_line(ingredient, near=None):
    """An ingredient with its amounts in kg or L where they have a size, so that 1500 g is 1.5 kg.

    An equivalent is written as it is measured, within three percent (2.2 lb as 2 1/4 lb).
    """

    def size(amount, rel=near):
        if amount is None:
            return None
        per = unit(amount.unit).si if amount.unit else 0
        name = unit(amount.unit).dimension if per else amount.unit
        ends = [float(end) * (per or 1) for end in (amount.value, amount.high) if end is not None]
        inner = size(amount.each), size(amount.equals, near and 0.03)
        return pytest.approx(ends, rel=rel) if near else ends, name, amount.approximate, amount.size, inner

    fields = ("item", "preparation", "notes", "optional", "to_taste", "purpose", "extra", "read")
    kept = {field: getattr(ingredient, field) for field in fields}
    return kept, size(ingredient.amount), [bare_line(one, near) for one in ingredient.alternatives]


def test_an_amount_of_each_is_an_ingredient_each():
    recipe = read_recipe(
        "Rub\nIngredients\n1 tsp each dried sage, thyme and salt\n2 cans (14 oz each) beans and pork\nMethod\nMix."
    )
    assert [one.item for one in recipe.ingredients] == ["dried sage", "thyme", "salt", "beans and pork"]
    assert {one.amount.value for one in recipe.ingredients[:3]} == {1}


def test_spanish_text_is_read_back():
    recipe = read_recipe(PASTED)
    again = read_recipe(write_text(recipe, language="es"), recipe.region)
    assert [one.amount for one in again.ingredients] == [one.amount for one in recipe.ingredients]
    assert (again.makes, again.prep_min, again.cook_min) == (recipe.makes, recipe.prep_min, recipe.cook_min)
    assert len(again.steps) == len(recipe.steps)


def test_nothing_is_lost_through_text_and_json_ld():
    recipe = read_recipe(PASTED)
    through_text = read_recipe(write_text(recipe), recipe.region)
    assert bare(through_text) == replace(bare(recipe), region_signs=())
    through_json = read_recipe(json.dumps(write_json_ld(recipe)))
    assert bare(through_json) == replace(bare(recipe), region_signs=())


def test_what_is_not_ours_is_passed_on():
    node = {
        "@context": "https://schema.org",
        "@type": "Recipe",
        "name": "Pie",
        "author": {"@type": "Person", "name": "A. Cook"},
        "nutrition": {"@type": "NutritionInformation", "calories": "300 kcal"},
        "recipeIngredient": ["For the crust:", "2 cups flour", "For the filling:", "3 eggs"],
        "recipeInstructions": [
            {"@type": "HowToStep", "text": "Bake.", "turnspit:station": "oven", "turnspit:daysBefore": 1}
        ],
    }
    recipe = read_recipe(json.dumps(node))
    assert [(one.section, one.item) for one in recipe.ingredients] == [
        ("For the crust", "flour"),
        ("For the filling", "eggs"),
    ]
    assert (recipe.steps[0].station, recipe.steps[0].days_before) == ("oven", 1)
    written = write_json_ld(recipe)
    assert written["author"] == node["author"]
    assert written["nutrition"] == node["nutrition"]
    assert written["@context"][0] == "https://schema.org"
    again = read_recipe(json.dumps(written))
    assert bare(again) == bare(recipe)


ITEMS = ["flour", "butter", "carrots", "turkey stock", "black pepper", "table salt", "unheard-of root"]
AMOUNTS = [
    "",
    "2 cups",
    "1/2 tsp",
    "3 lb 4 oz",
    "2–3",
    "2 (400 g) tins",
    "1 (14 lb)",
    "about 300 g",
    "2 cups (250 g)",
    "4 large",
]
lines = st.builds(
    lambda amount, item, preparation, note, aside: f"{amount} {item}{note}{preparation}{aside}".strip(),
    st.sampled_from(AMOUNTS),
    st.sampled_from(ITEMS),
    st.sampled_from(["", ", finely chopped", ", melted"]),
    st.sampled_from(["", " or margarine", " (from the shop)"]),
    st.sampled_from(["", ", optional", ", to taste", ", for greasing", ", plus more for dusting"]),
)


@given(lines)
def test_a_line_that_was_written_is_read_back(line):
    once = read_ingredient(line)
    again = read_ingredient(write_ingredient(once))

    def plain(one):
        return replace(one, text="", alternatives=tuple(map(plain, one.alternatives)))

    assert plain(again) == plain(once)


@given(st.text(max_size=120))
@example("1 (")
@example("or or or")
@example("½")
@example("1 cup , , ,")
@example(", ")
@example("to taste")
@example("optional")
def test_no_line_raises_and_none_is_dropped(line):
    found = read_ingredient(line)
    assert found.text == " ".join(line.split())
    assert found.item or not found.read


@given(
    st.lists(
        st.sampled_from(
            [
                "1",
                "2",
                "½",
                "1/2",
                "cup",
                "cups",
                "tbsp",
                "g",
                "kg",
                "(",
                ")",
                ",",
                "or",
                "-",
                "x",
                "tin",
                "can",
                "flour",
                "butter",
                "salt",
                "plus",
                "more",
                "to",
                "taste",
                "of",
                "lemon",
                "juice",
                "optional",
                "about",
                "each",
            ]
        ),
        max_size=16,
    )
)
def test_no_shuffled_line_raises(words):
    read_ingredient(" ".join(words))


@given(st.text(max_size=400))
def test_no_text_raises_but_with_our_errors(text):
    with suppress(Impossible):
        assert read_recipe(text).name
