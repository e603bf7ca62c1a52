from datetime import UTC, date, datetime

import pytest

from turnspit.errors import Unknown
from turnspit.message import Message
from turnspit.recipes import (
    equipment_at_once,
    order_sheet,
    prep_list,
    read_ingredient,
    shopping_list,
    starters,
)
from turnspit.recipes.listed import (
    aisle_heading,
    bought_line,
    day_heading,
    equipment_line,
    order_line,
    station_heading,
)
from turnspit.recipes.recipe import Recipe
from turnspit.reference import table
from turnspit.words import LANGUAGES, Reader, say

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
DISHES = [one.recipe for one in starters()]


def us(*lines):
    dish = Recipe("a dish", None, tuple(read_ingredient(line, "US") for line in lines), region="US")
    listed = shopping_list([dish])
    return [say(bought_line(line), Reader(NOW)) for line in (*listed.lines, *listed.at_home)]


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("1 cup butter", "butter: 1 block of 1 lb (455 g); 8 oz (225 g) left over"),
        ("2 lb onions", "onions: 2 lb (905 g)"),
        ("3 eggs", "eggs: 1 carton of 12; 9 left over"),
        ("1 (14 lb) turkey", "turkey: 1 × 14 lb (6.4 kg)"),
        ("2 lemons", "lemons: 2"),
        ("2 cups milk", "milk: 1 carton of 1 qt (945 mL); 2 cups (475 mL) left over"),
        ("parsley, for the table", "parsley (parsley, for the table)"),
        ("1/2 cup turkey drippings", "turkey drippings: 3.6 oz (100 g), nothing to buy"),
    ],
)
def test_a_line_says_what_to_buy(line, said):
    assert us(line) == [said]


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_list_can_be_said(language):
    reader = Reader(NOW, language=language)
    shopping = shopping_list(DISHES)
    said = [aisle_heading(aisle) for aisle in shopping.aisles]
    said += [bought_line(line) for line in (*shopping.lines, *shopping.at_home)]
    said += [order_line(line) for line in order_sheet(shopping, date(2026, 11, 26)).lines]
    for day in prep_list(DISHES):
        said += [day_heading(day), *(station_heading(station) for station in day.stations)]
    said += [equipment_line(need) for need in equipment_at_once(DISHES)]
    assert all(say(message, reader) for message in said)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_pack_aisle_station_and_case_has_a_name(language):
    keys = [f"recipes-pack-{row['pack']}" for row in table("packs")]
    keys += [f"recipes-case-{row['case_of']}" for row in table("order_cases")]
    keys += [f"recipes-aisle-{row['aisle']}" for row in table("aisles")] + ["recipes-aisle-other"]
    keys += [f"recipes-station-{row['station']}" for row in table("stations")]
    assert all(say(Message(key, count=2), Reader(NOW, language=language)) for key in keys)


def test_the_days_of_a_prep_list():
    said = [say(day_heading(day), Reader(NOW)) for day in prep_list(DISHES)]
    assert said == ["3 days before", "2 days before", "The day before", "On the day"]


def test_a_market_that_is_none_is_refused():
    with pytest.raises(Unknown, match="use one of us, metric"):
        shopping_list(DISHES, market="moon")
