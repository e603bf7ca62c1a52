"""Answers on amounts: recipes that are cut, how big, brines in few words, pints by the place of the reader."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask
from turnspit.asking.contract import Reply


def reply(text: str, zone: str = "America/New_York") -> Reply:
    now = datetime(2026, 11, 25, 9, tzinfo=ZoneInfo(zone))
    conversation = None
    for turn in text.split(" | "):
        answered, conversation = ask(Line(turn, now), conversation, "id")
    return answered


@pytest.mark.parametrize(
    ("text", "headline"),
    [
        ("recipe's for 6, two of us, divided by three", "From 6 to 2 servings: divide every amount by 3."),
        ("recipe's for 6, two of us, can everything be multiplied by three", "divide every amount by 3."),
        ("a third of this recipe", "Divide every amount by 3."),
        ("recipe for 4, make it 10", "multiply every amount by 2.5."),
        ("receta para 6, somos 2, divido entre tres?", "divida todas las cantidades entre 3."),
    ],
)
def test_who_eats_decides_by_what_a_recipe_is_divided(text: str, headline: str) -> None:
    assert headline in reply(text).headline


def test_an_amount_to_convert_is_none_of_the_recipe_that_is_doubled() -> None:
    told = reply("Double the stuffing for me, and how many grams is 3 cups breadcrumbs?")
    assert "(times 2, from 16)" in told.headline
    assert not any("6 cups of breadcrumbs" in line for line in (told.headline, *told.lines))


@pytest.mark.parametrize(
    ("text", "zone", "headline"),
    [
        ("2 pints of stock in litres", "Europe/London", "2 pints = 1.14 L"),
        ("2 us pints in litres", "Europe/London", "2 pints = 0.9"),
        ("2 pints of stock in litres", "America/New_York", "2 pints = 0.9"),
        ("5 imperial gallons in litres", "America/New_York", "5 gallons = 22.7 L"),
    ],
)
def test_a_pint_is_that_of_the_place(text: str, zone: str, headline: str) -> None:
    """The imperial pint is 568.26 mL, the US liquid pint 473.18 mL (exact by definition)."""
    assert reply(text, zone).headline.startswith(headline)


def test_what_a_recipe_weighs_in_does_not_make_a_talk_metric() -> None:
    assert "8 lb (3.6 kg)" in reply("200 g honey in tablespoons | how big a turkey for 8").headline


@pytest.mark.parametrize(
    ("text", "rules"),
    [
        ("how big a turkey for 8, no leftovers", set()),
        ("how big a turkey for 8", {"leftovers-days", "local-codes"}),
        ("how big a turkey for 8 with leftovers", {"leftovers-days", "local-codes"}),
        ("is a frozen 14 lb turkey enough for 10?", {"thaw-counter", "local-codes"}),
    ],
)
def test_how_big_warns_of_what_was_spoken_of(text: str, rules: set[str]) -> None:
    assert {caution.rule for caution in reply(text).cautions} == rules


def test_what_is_enough_is_told_in_one_figure() -> None:
    told = reply("is a 10 pounder enough for 7")
    assert told.headline.startswith("10 lb (4.5 kg) turkey is enough for 7: it takes about 7 lb")
    assert not any("for 7" in line for line in told.lines)


@pytest.mark.parametrize(
    ("text", "opens"),
    [
        ("16 lb frozen turkey, will it thaw in time for thursday 4 pm", "No: the refrigerator takes 4 days"),
        ("10 lb frozen turkey, will it be thawed in time for sunday dinner at 6", "Yes: it thaws in time"),
    ],
)
def test_whether_it_thaws_in_time_is_said_first(text: str, opens: str) -> None:
    assert reply(text).headline.startswith(opens)


def test_what_is_thawed_first_is_not_timed_from_frozen() -> None:
    told = reply("16 lb frozen turkey: how many days to thaw, and how long at 325?")
    assert not any("from frozen and unstuffed, at" in line for line in told.lines)


@pytest.mark.parametrize(
    "text",
    ["brine for a 14 lb turkey", "wet brine 14 lb turkey overnight in a 5 gal bucket", "dry brine a 14 lb turkey"],
)
def test_a_brine_is_told_in_few_words_with_its_amounts_hours_and_cold(text: str) -> None:
    told = reply(text)
    assert len(told.lines) <= 4
    assert " at 40 °F (4 °C) or below" in told.headline or "in the cold for 24–48 h" in told.headline
    assert "g (" in told.headline
    assert {"injected-no-brine"} < {caution.rule for caution in told.cautions}


def test_a_brine_that_is_too_long_keeps_its_stop() -> None:
    told = reply("brine a 14 lb turkey for 72 hours")
    assert any(caution.severity == "stop" for caution in told.cautions)


@pytest.mark.parametrize(
    ("text", "headline"),
    [
        ("diamond crystal per pound for a dry brine?", "3.1 g of salt a pound (7 g a kilo)"),
        ("what if I left it in the brine 36 hours instead of 24, too salty?", "36 h is right (8 to 48 h)"),
        ("425 fahrenheit", "425 °F = 218 °C"),
    ],
)
def test_what_was_asked_is_in_the_headline(text: str, headline: str) -> None:
    assert reply(text).headline.startswith(headline)


@pytest.mark.parametrize(
    "text", ["chicken out since 5", "chicken out from 4 until 7, ok?", "chicken in the car from 5 until now"]
)
def test_what_stood_from_one_hour_to_another_is_thrown_away(text: str) -> None:
    assert "Throw it away" in reply(text).headline


@pytest.mark.parametrize(
    "text",
    [
        "power was out between 1 and 4am, is my fridge turkey safe",
        "power out from 2 to 5, is the turkey in the fridge ok",
    ],
)
def test_the_hours_of_a_power_cut_are_no_degrees(text: str) -> None:
    assert reply(text).headline == "There was no power for 3 h. Measure it with a thermometer."
