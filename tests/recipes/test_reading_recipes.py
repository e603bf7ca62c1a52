import json
from datetime import UTC, datetime
from fractions import Fraction

import pytest

from turnspit.errors import Impossible, Unknown
from turnspit.message import Message
from turnspit.recipes import (
    Yield,
    infer_region,
    read_recipe,
)
from turnspit.words import Reader, say

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


def test_pasted_text_is_read_part_by_part():
    recipe = read_recipe(PASTED)
    assert recipe.name == "Herb-brined turkey"
    assert recipe.description == "A plain brine for a big bird."
    assert recipe.makes == Yield(Fraction(12), "serving", Fraction(14))
    assert (recipe.prep_min, recipe.cook_min) == (40, 240)
    assert [one.section for one in recipe.ingredients] == ["For the brine"] * 3 + ["For the bird"] * 4
    assert [one.item for one in recipe.ingredients][:4] == ["water", "table salt", "brown sugar", "turkey"]
    assert recipe.ingredients[3].amount.each.value == 14
    assert recipe.unread[0].text == "½½ of something"
    assert [step.minutes for step in recipe.steps] == [(5, 5), (480, 720), (210, 240)]
    assert recipe.steps[1].text == "Brine overnight in the refrigerator. Turn once."
    assert recipe.steps[2].temperatures_c == (162.8, 165.0)
    assert recipe.equipment == ("stockpot", "roasting rack", "roasting pan")
    assert recipe.remarks == ("Do not salt the gravy before tasting.",)


def test_what_was_inferred_or_not_read_is_said():
    recipe = read_recipe(PASTED)
    reader = Reader(datetime(2026, 11, 25, tzinfo=UTC))
    said = [say(note, reader) for note in recipe.notes]
    assert said[0].startswith("Its measures are taken as US ones, by: quart")
    assert said[1] == "One line could not be read and stands as it was: ½½ of something"
    assert read_recipe(PASTED, "AU").notes[0].key == "recipes-unread"
    assert read_recipe("Tea\n1 cup water\nBoil it well for five minutes before you pour.").notes == (
        Message("recipes-region-assumed"),
        Message("recipes-no-yield"),
    )


def test_text_without_headings_is_told_apart_line_by_line():
    recipe = read_recipe(
        "Gravy\n2 cups stock\n3 tbsp flour\nsalt\n"
        "Whisk the flour into the stock and simmer for 10 minutes. Season.\nServe hot."
    )
    assert [one.item for one in recipe.ingredients] == ["stock", "flour", "salt"]
    assert [step.text for step in recipe.steps][1] == "Serve hot."
    assert recipe.steps[0].minutes == (10, 10)


@pytest.mark.parametrize(
    ("text", "region"),
    [
        ("200 g plain flour, 1 tin tomatoes, caster sugar, gas mark 4", "UK"),
        ("2 cups all-purpose flour, 1 lb ground beef", "US"),
        ("1 capsicum, 300 ml thickened cream, 1 tbsp plain flour", "AU"),
        ("Uses Australian measures. 1 cup all-purpose flour, 2 lb beef, quarts, skillet", "AU"),
        ("imperial pints, 1 pint milk", "imperial"),
        ("all spoons level, 20 ml tablespoon, 1 cup all-purpose flour", "AU"),
        ("water", None),
    ],
)
def test_the_region_is_inferred_from_words(text, region):
    assert infer_region(text).region == region


def test_a_stated_region_sets_the_spoon():
    recipe = read_recipe("Dressing\nIngredients\n2 tbsp vinegar\nMethod\nShake.", "AU")
    assert recipe.ingredients[0].litres() == pytest.approx(0.04)
    with pytest.raises(Unknown, match="Mars"):
        read_recipe("x", "Mars")


@pytest.mark.parametrize(
    ("text", "makes"),
    [
        ("Serves 6", Yield(Fraction(6))),
        ("Serves 6 to 8 people", Yield(Fraction(6), "serving", Fraction(8))),
        ("Makes 2 loaves", Yield(Fraction(2), "loaves")),
        ("Makes about 24 rolls (3 oz each)", Yield(Fraction(24), "rolls")),
        ("Para 4 personas", Yield(Fraction(4))),
        ("Yield: 8 servings", Yield(Fraction(8))),
        ("For 8", Yield(Fraction(8))),
    ],
)
def test_a_yield_is_read(text, makes):
    recipe = read_recipe(f"Soup\n{text}\nIngredients\n1 cup water\nMethod\nBoil.")
    assert recipe.makes == makes


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "has no text"),
        ("  \n ", "has no text"),
        ("x" * 300_000, "is longer than 200000"),
        ("{", "cannot be read"),
        ('{"a": 1}', "is not in the JSON-LD"),
        ("Soup\nServes 0\nIngredients\n1 cup water", "yield 0 is not above zero"),
        ("[" * 100_000 + '"', "cannot be read"),
    ],
)
def test_what_is_no_recipe_is_refused_with_the_way_out(text, said):
    with pytest.raises(Impossible, match=said):
        read_recipe(text)


NODE = {
    "@context": "https://schema.org",
    "@graph": [
        {"@type": "WebPage", "name": "A page"},
        {
            "@type": ["Recipe", "NewsArticle"],
            "name": "Roast &amp; gravy",
            "recipeYield": ["6", "6 servings"],
            "prepTime": "PT20M",
            "cookTime": "PT1H30M",
            "totalTime": "P0DT1H50M",
            "ingredients": ["2 cups <b>stock</b>", "3 tbsp all-purpose flour", "salt, to taste"],
            "recipeInstructions": [
                {
                    "@type": "HowToSection",
                    "name": "Gravy",
                    "itemListElement": [{"@type": "HowToStep", "text": "Whisk<br>well."}],
                },
                {"@type": "HowToStep", "name": "Serve."},
            ],
            "recipeCategory": ["Main"],
            "keywords": "roast, gravy",
        },
    ],
}


@pytest.mark.parametrize(
    "text",
    [
        json.dumps(NODE),
        json.dumps([NODE]),
        f'<html><script>var a = "<";</script><script type="application/ld+json">{{bad</script>'
        f'<script type="application/ld+json; charset=utf-8">{json.dumps(NODE)}</script></html>',
    ],
)
def test_json_ld_is_read_wherever_it_stands(text):
    recipe = read_recipe(text)
    assert recipe.name == "Roast & gravy"
    assert recipe.makes == Yield(Fraction(6))
    assert (recipe.prep_min, recipe.cook_min, recipe.total_min) == (20, 90, 110)
    assert [one.item for one in recipe.ingredients] == ["stock", "all-purpose flour", "salt"]
    assert [(step.section, step.text) for step in recipe.steps] == [("Gravy", "Whisk well."), ("", "Serve.")]
    assert (recipe.kind, recipe.keywords) == ("Main", ("roast", "gravy"))


@pytest.mark.parametrize(
    ("value", "makes"),
    [
        (8, Yield(Fraction(8))),
        ({"@type": "QuantitativeValue", "value": 3, "unitText": "loaves"}, Yield(Fraction(3), "loaves")),
        ("a crowd of hungry people", Yield(Fraction(1), "crowd of hungry people")),
        ("plenty", None),
        (None, None),
    ],
)
def test_a_yield_in_json_ld_may_have_many_forms(value, makes):
    node = {"@type": "Recipe", "name": "x", "recipeYield": value, "recipeInstructions": "One.\nTwo."}
    recipe = read_recipe(json.dumps(node))
    assert recipe.makes == makes
    assert len(recipe.steps) == 2


MESSY = """GRANDMA'S ROAST POTATOES

These are the best.

Prep Time: 15 mins
Cook Time: 1 hr 10 mins
Ingredients (serves 6):
▢ 1.5 kg floury potatoes (Maris Piper), peeled
▢ 100g goose fat
▢ rosemary, a few sprigs

Equipment
1 large roasting tin

Method:
Step 1
Heat oven to 200C/180C fan/gas 6. Put the fat in the tin.
Step 2
Boil the potatoes for 8 mins, drain, shake.
They should be fluffy.
Step 3
Roast 50 mins - 1 hr, turning twice.

Nutrition
Calories: 300
"""


def test_a_page_pasted_whole_is_sorted_out():
    recipe = read_recipe(MESSY)
    assert (recipe.name, recipe.description) == ("GRANDMA'S ROAST POTATOES", "These are the best.")
    assert (recipe.makes, recipe.prep_min, recipe.cook_min) == (Yield(Fraction(6)), 15, 70)
    assert [one.item for one in recipe.ingredients] == ["floury potatoes", "goose fat", "rosemary"]
    assert recipe.ingredients[2].amount.unit == "sprig"
    assert [step.text for step in recipe.steps] == [
        "Heat oven to 200C/180C fan/gas 6. Put the fat in the tin.",
        "Boil the potatoes for 8 mins, drain, shake. They should be fluffy.",
        "Roast 50 mins - 1 hr, turning twice.",
    ]
    assert recipe.steps[2].minutes == (50, 60)
    assert recipe.remarks == ("1 large roasting tin", "Calories: 300")
    assert recipe.region == "UK"


def test_a_yield_after_the_method_counts_and_a_time_does_not():
    recipe = read_recipe("Soup\nIngredients\n1 cup water\nMethod\nFor 10 minutes, boil.\nServes 4.")
    assert recipe.makes == Yield(Fraction(4))
    assert [step.text for step in recipe.steps] == ["For 10 minutes, boil."]


PAGE = """<!doctype html><html><head><title>Roast potatoes | Our kitchen</title>
<script type="application/ld+json">{"@type": "WebSite", "name": "Our kitchen"}</script></head>
<body><nav><a>Home</a></nav><h1>Roast
potatoes</h1><p>Serves 4</p><h2>Ingredients</h2><ul><li>1 kg <b>potatoes</b></li><li>3 tbsp goose fat</ul>
<h2>Method</h2><ol><li>Boil.<li>Roast at 200&deg;C for 50 minutes.</ol><h3>Comments</h3><p>Lovely!</p></body></html>"""


def test_a_page_without_recipe_data_is_read_as_it_is_seen():
    recipe = read_recipe(PAGE)
    assert (recipe.name, recipe.makes.count) == ("Roast potatoes", 4)
    assert [one.item for one in recipe.ingredients] == ["potatoes", "goose fat"]
    assert [step.text for step in recipe.steps] == ["Boil.", "Roast at 200°C for 50 minutes."]
    assert recipe.steps[1].temperatures_c == (200.0,)


def test_a_page_that_holds_no_recipe_is_refused():
    with pytest.raises(Impossible, match="Ingredients"):
        read_recipe("<html><body><p>Hello</p></body></html>")


@pytest.mark.parametrize(
    ("text", "ingredients", "steps"),
    [
        ("Gravy\n4 cups stock\nsalt to taste\nSimmer until thick.", 2, 1),
        ("Gravy\nIngredients\n4 cups stock\nDry sherry\n\nWhisk flour in.\nSimmer 10 minutes.", 2, 2),
        ("Roast\n3 lb beef\nRoast beef drippings\nSalt\nSeason the beef.\nRoast 1 hour.", 3, 2),
        ("Mash\n2 lb potatoes\nButter\nBoil, drain, mash", 2, 1),
        ("Puré\n1 kg de patatas\nMantequilla\nCocer las patatas.\nEscurrir y servir", 2, 2),
    ],
)
def test_a_short_step_without_a_heading_is_a_step(text, ingredients, steps):
    recipe = read_recipe(text)
    assert (len(recipe.ingredients), len(recipe.steps)) == (ingredients, steps)
