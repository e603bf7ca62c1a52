from collections import Counter
from typing import get_args

import pytest

from turnspit.heat.cases import Packaging
from turnspit.heat.chill_food import STIRRED_MIXING, chill_food
from turnspit.reference import table

ROWS = list(table("chill_foods"))


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["food"])
def test_every_row_adds_up_and_is_found_by_its_words(row):
    parts = [row.get(name, 0.0) for name in ("water", "protein", "fat", "ash", "carbohydrate")]
    assert sum(parts) == pytest.approx(1.0, abs=0.005)
    for word in (*row["words"], *row.get("loose_words", ())):
        food = chill_food(f"cooked {word}", liquid=False)
        assert food.name == row["food"]
        assert food.assumptions == ()
        assert 950 < food.density_kg_m3 < 1150


def test_no_word_leads_two_ways():
    words = Counter(word for row in ROWS for word in (*row["words"], *row.get("loose_words", ())))
    assert [word for word, count in words.items() if count > 1] == []


@pytest.mark.parametrize(
    ("name", "food"),
    [
        ("turkey gravy", "sauce"),
        ("Turkey roast", "turkey"),
        ("roast beef", "beef"),
        ("chicken-soup", "soup"),
        ("mashed_potatoes", "mashed potato"),
        ("a rolled joint", "beef"),
        ("bread stuffing", "stuffing"),
    ],
)
def test_the_last_word_that_is_known_counts(name, food):
    assert chill_food(name, liquid=False).name == food


@pytest.mark.parametrize(
    ("name", "food"),
    [
        ("chili in broth", "stew"),
        ("lentils", "stew"),
        ("gumbo", "stew"),
        ("chicken soup", "soup"),
        ("vegetable stock", "stock"),
        ("chicken noodle soup", "soup"),
    ],
)
def test_in_a_pot_the_food_that_mixes_least_of_those_that_flow_counts(name, food):
    assert chill_food(name, liquid=True).name == food


def test_only_what_is_like_stock_is_thin():
    assert [row["food"] for row in ROWS if chill_food(row["words"][0], liquid=True).thin] == ["stock"]


def test_an_unknown_food_is_taken_as_meat_or_soup_and_said():
    meat, soup = chill_food("blorp", liquid=False), chill_food("blorp", liquid=True)
    assert (meat.name, soup.name) == ("beef", "soup")
    assert [told.key for told in (*meat.assumptions, *soup.assumptions)] == [
        "heat-chill-like-meat",
        "heat-chill-like-soup",
    ]


def test_what_flows_mixes_and_what_does_not_cannot_be_stirred():
    assert chill_food("stock", liquid=True).mixing > chill_food("soup", liquid=True).mixing > 1
    assert chill_food("stock", liquid=True).stirred == STIRRED_MIXING
    assert chill_food("beef", liquid=False).stirred == 1.0


def test_every_packaging_has_its_resistance():
    covers = table("chill_covers").by("cover")
    assert set(get_args(Packaging)) < set(covers)
    assert all(0 < row["resistance"] < 0.1 and 0 < row["spread"] < 1.5 for row in covers.values())
