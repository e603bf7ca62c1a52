import re
from datetime import UTC, datetime

import pytest

from turnspit.quantities import food_named
from turnspit.recipes import (
    bought_line,
    in_language,
    read_ingredient,
    read_starter,
    scale_recipe,
    shopping_list,
    starters,
    write_ingredient,
    write_text,
)
from turnspit.recipes.spanish import spanish_food
from turnspit.reference import table
from turnspit.words import Reader, say

READER = Reader(datetime(2026, 11, 25, tzinfo=UTC), language="es", units="metric")


@pytest.mark.parametrize(
    ("line", "spanish"),
    [
        ("2 large eggs, beaten", "2 huevos grandes, batidos"),
        ("1 cup unsalted turkey stock", "1 taza de caldo de pavo sin sal"),
        ("4 cloves garlic, finely chopped", "4 dientes de ajo, muy picado"),
        ("1 lb carrots, peeled and sliced", "1 lb de zanahorias, peladas y en rodajas"),
        ("juice of 2 lemons", "jugo de 2 limones"),
        ("flour, for dusting", "harina, para espolvorear"),
        ("1 cup butter or margarine", "1 taza de mantequilla o margarina"),
        ("2 cebollas moradas, picadas", "2 cebollas moradas, picadas"),
        ("1 cup unheard-of root", "1 taza de unheard-of root"),
    ],
)
def test_a_line_is_written_in_spanish(line, spanish):
    assert write_ingredient(read_ingredient(line), language="es") == spanish


def test_every_food_and_every_item_of_the_starters_has_a_spanish_name():
    named = {row["key"] for row in table("food_names_es") if "key" in row}
    assert {row["key"] for row in table("foods")} <= named
    items = {one.item for starter in starters() for one in starter.recipe.ingredients}
    assert [item for item in items if spanish_food(item) == item] == []


def test_amounts_are_those_of_the_food_whatever_it_is_called():
    for starter in starters():
        for line in scale_recipe(starter.recipe, factor=3).lines:
            english, spanish = line.text("metric"), line.text("metric", "es")
            number = english.split(maxsplit=1)[0]
            assert spanish.startswith(number.replace(".", ",")) or not number[0].isdigit()


def test_a_list_is_in_the_reader_s_language():
    listed = shopping_list([read_starter("gravy").recipe], "metric")
    lines = [say(bought_line(line), READER) for line in listed.lines]
    assert any(line.startswith("caldo de pavo sin sal: ") for line in lines)
    english = [say(bought_line(line), Reader(READER.now)) for line in listed.lines]
    assert any(line.startswith("unsalted turkey stock: ") for line in english)


def test_every_text_of_the_starters_is_there_in_spanish():
    recipes = [starter.recipe for starter in starters()]
    texts = {
        text for one in recipes for text in (one.name, one.description, *(step.text for step in one.steps)) if text
    }
    assert [text for text in texts if in_language(text, "es") == text] == []
    assert all(in_language(text, "en") == text for text in texts)


def test_temperatures_are_the_same_in_both_languages():
    for row in table("starter_texts_es"):
        figures = [sorted(re.findall(r"\d+(?= °?[CF]\b)", row[language])) for language in ("en", "es")]
        assert figures[0] == figures[1], row["en"]


def test_a_recipe_of_ones_own_keeps_its_words():
    text = write_text(read_starter("mashed-potatoes").recipe, language="es")
    assert text.startswith("Puré de papas")
    assert "1. Pele las papas" in text
    assert in_language("Fry it.", "es") == "Fry it."


def test_the_spanish_names_are_read_as_the_foods_they_are():
    rows = [row for row in table("food_names_es") if "key" in row and not row["key"].startswith("roast_")]
    names = [(name, row["key"]) for row in rows for name in (row["es"], row.get("many", row["es"]))]
    assert [(name, food_named(name)) for name, key in names if food_named(name) != key] == []
