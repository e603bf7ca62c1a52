from datetime import UTC, datetime

import pytest

from turnspit.errors import Unknown
from turnspit.reference import table
from turnspit.safety import check_allergens
from turnspit.words import Reader, say

READER = Reader(datetime(2026, 11, 25, 9, tzinfo=UTC))
DINNER = {"dressing": ["wheat", "milk"], "pie": ["tree nuts", "wheat"], "cranberries": [], "turkey": []}


def by_dish(*avoid):
    return {each.dish: each.finding for each in check_allergens(DINNER, avoid)}


def test_the_dish_that_holds_it_is_a_stop_and_the_others_carry_cross_contact():
    found = by_dish("Tree nuts")
    assert {dish: each.severity for dish, each in found.items()} == {
        "pie": "stop",
        "dressing": "warn",
        "cranberries": "warn",
        "turkey": "warn",
    }
    assert all(each.rule == "allergens" for each in found.values())


def test_only_what_is_to_be_avoided_is_named_where_it_is_a_stop():
    assert say(by_dish("wheat")["pie"].seen, READER) == "It holds wheat."


def test_without_an_allergy_what_is_held_is_told():
    found = by_dish()
    assert {dish: each.severity for dish, each in found.items()} == {
        "pie": "info",
        "dressing": "info",
        "cranberries": "ok",
        "turkey": "ok",
    }
    assert say(found["pie"].seen, READER) == "It holds tree nuts, wheat."
    assert say(found["pie"].seen, Reader(READER.now, language="es")) == "Lleva frutos secos, trigo."


def test_gravest_first():
    severities = [each.finding.severity for each in check_allergens(DINNER, ["milk"])]
    assert severities[0] == "stop"


@pytest.mark.parametrize("allergen", [row["allergen"] for row in table("allergens")])
def test_each_of_the_nine_stops_and_has_its_words(allergen):
    found = check_allergens({"dish": [allergen]}, [allergen])[0].finding
    assert found.severity == "stop"
    for language in ("en", "es"):
        assert say(found.seen, Reader(READER.now, language=language))


def test_an_allergen_beyond_the_nine_is_held_to_as_well():
    found = check_allergens({"soup": ["celery"]}, ["celery"])[0].finding
    assert (found.severity, say(found.seen, READER)) == ("stop", "It holds celery.")


@pytest.mark.parametrize(
    ("called", "held"),
    [("dairy", "milk"), ("gluten", "wheat"), ("shellfish", "crustacean shellfish"), ("Nuts", "tree nuts"), ("nuts", "peanuts"),
     ("eggs", "egg"), ("almonds", "tree nuts"), ("soy", "soybeans"), ("mariscos", "crustacean shellfish")],
)  # fmt: skip
def test_what_a_guest_calls_it_stops_the_dish(called, held):
    assert check_allergens({"dish": [held]}, [called])[0].finding.severity == "stop"
    assert check_allergens({"dish": [called]}, [held])[0].finding.severity == "stop"


def test_a_word_that_no_recipe_can_show_is_refused_and_not_called_free():
    with pytest.raises(Unknown, match="celery is not known: use one of milk, egg"):
        check_allergens(DINNER, ["celery"])
