import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.message import Message
from turnspit.quantities import (
    convert,
    density,
    density_or_none,
    fan_oven_c,
    food_names,
    gas_mark,
    oven_word_c,
    piece_mass,
    still_oven_c,
)

VOLUMES = ["mL", "L", "tsp", "tbsp", "cup", "floz", "pint", "quart", "gal"]
FOODS = [name for name in food_names() if density_or_none(name)]
MASSES = ["mg", "g", "kg", "oz", "lb"]


@pytest.mark.parametrize(
    ("asked", "value", "low", "high", "weigh"),
    [
        ((2, "cup", "g", "kosher salt"), 380, 270, 500, True),
        ((2, "cup", "g", "flake kosher salt"), 285, 270, 300, True),
        ((1, "cup", "g", "table salt"), 292, 280, 304, False),
        ((1, "cup", "g", "all-purpose flour"), 125, 110, 140, True),
        ((1, "cup", "g", "honey"), 339, 332, 346, False),
        ((2, "stick", "g", "butter"), 226, 226, 226, False),
        ((3, "piece", "g", "large eggs"), 150, 135, 165, True),
        ((1, "dozen", "g", "eggs"), 600, 540, 660, True),
        ((4, "clove", "g", "garlic"), 12, 10.8, 13.2, True),
        ((1, "bunch", "g", "broccoli"), 608, 547, 669, True),
        ((2, "bunch", "g", "parsley"), 120, 70, 200, True),
        ((2, "stick", "g", "celery"), 80, 34, 128, True),
        ((1, "piece", "g", "lemon juice"), 48, 43.2, 52.8, True),
        ((500, "g", "cup", "flour"), 4, 3.57, 4.55, True),
        ((1, "lb", "cup", "granulated sugar"), 2.268, 2.18, 2.36, False),
    ],
)
def test_a_food_in_another_kind_of_measure(asked, value, low, high, weigh):
    answer = convert(*asked)
    assert answer.value == pytest.approx(value, rel=0.005)
    assert answer.low == pytest.approx(low, rel=0.01)
    assert answer.high == pytest.approx(high, rel=0.01)
    assert answer.weigh is weigh
    assert not answer.exact
    assert (Message("quantities-weigh") in answer.notes) is weigh
    assert answer.source


def test_kosher_salt_is_told_apart_both_ways():
    grams = convert(1, "cup", "g", "kosher salt")
    assert {kind: (low, high) for kind, low, high in grams.kinds} == {
        "coarse_kosher": (pytest.approx(225), pytest.approx(250)),
        "flake_kosher": (pytest.approx(135), pytest.approx(150)),
    }
    cups = convert(225, "g", "cup", "kosher salt")
    assert ("coarse_kosher", pytest.approx(0.9), pytest.approx(1.0)) in cups.kinds
    assert Message("quantities-which-salt") in cups.notes


def test_us_measures_are_assumed_and_said():
    assert Message("quantities-us-measures") in convert(1, "cup", "mL").notes
    assert convert(1, "cup", "mL", region="AU").notes == ()
    assert convert(1, "lb", "g").notes == ()


@pytest.mark.parametrize(
    ("asked", "expected", "low", "high"),
    [
        ((350, "degF", "degC"), 176.667, 176.667, 176.667),
        ((-40, "degC", "degF"), -40, -40, -40),
        ((4, "gas_mark", "degC"), 180, 176.667, 180),
        ((4, "gas_mark", "degF"), 350, 350, 356),
        ((180, "degC", "gas_mark"), 4, 4, 4),
        ((325, "degF", "gas_mark"), 3, 3, 3),
    ],
)
def test_oven_temperatures(asked, expected, low, high):
    answer = convert(*asked)
    assert (answer.value, answer.low, answer.high) == (
        pytest.approx(expected, abs=0.001),
        pytest.approx(low, abs=0.001),
        pytest.approx(high, abs=0.001),
    )


def test_gas_marks_follow_their_formula():
    for mark, f in [(1, 275), (4, 350), (9, 475)]:
        assert gas_mark(mark)["f"] == f == 275 + 25 * (mark - 1)
    for mark in (0.25, 0.5, 1):
        assert gas_mark(mark)["f"] == 275 + 25 * math.log2(mark)


def test_oven_words_are_ranges():
    low, high = oven_word_c("moderate oven")
    assert (low, high) == (pytest.approx(176.67, abs=0.01), pytest.approx(190.56, abs=0.01))
    with pytest.raises(Unknown, match="tepid"):
        oven_word_c("tepid")


@pytest.mark.parametrize(
    ("asked", "error", "said"),
    [
        ((1, "cup", "g"), Impossible, "item .none. is needed from cup to g: say what it is"),
        ((1, "cup", "g", "plutonium"), Unknown, "item plutonium is not known"),
        ((1, "cup", "degF"), Impossible, "cup cannot become degF"),
        ((1, "cm", "g", "butter"), Impossible, "a length has no mass"),
        ((-1, "g", "kg"), Impossible, "value -1 is negative"),
        ((math.nan, "g", "kg"), Impossible, "is not a number"),
        ((1e300, "gal", "mL"), OutOfRange, "value 1e.300 is above 1e.12"),
        ((math.inf, "degC", "degF"), Impossible, "is not a number"),
        ((-300, "degC", "degF"), Impossible, "below absolute zero"),
        ((12, "gas_mark", "degC"), OutOfRange, "gas_mark 12 is above 9"),
        ((900, "degC", "gas_mark"), OutOfRange, "oven_f 1652 is above 500"),
        ((1, "furlong", "m"), Unknown, "unit furlong is not known"),
        ((2, "bunch", "g", "honey"), Impossible, "weigh one bunch"),
        ((1, "cup", "g", "flour", "Mars"), Unknown, "region Mars"),
    ],
)
def test_what_cannot_be_converted_is_refused_with_the_way_out(asked, error, said):
    with pytest.raises(error, match=said):
        convert(*asked)


@given(
    st.floats(1e-6, 1e6),
    st.sampled_from(VOLUMES),
    st.sampled_from(VOLUMES),
    st.sampled_from(["US", "UK", "AU", "CA"]),
)
def test_there_and_back_between_volumes(value, one, other, region):
    there = convert(value, one, other, region=region)
    assert there.exact
    assert convert(there.value, other, one, region=region).value == pytest.approx(value, rel=1e-9)


@given(st.floats(1e-3, 1e4), st.sampled_from(VOLUMES), st.sampled_from(MASSES), st.sampled_from(FOODS))
def test_there_and_back_through_a_food(value, volume, mass, food):
    there = convert(value, volume, mass, food)
    assert there.low <= there.value <= there.high
    back = convert(there.value, mass, volume, food)
    assert back.value == pytest.approx(value, rel=1e-9)
    assert back.low <= value * (1 + 1e-9)
    assert back.high >= value * (1 - 1e-9)


def test_every_food_has_a_density_with_its_source():
    with_density = [name for name in food_names() if density_or_none(name) is not None]
    assert len(with_density) >= 150
    for name in with_density:
        found = density(name)
        assert 0.02 < found.low <= found.kg_per_l <= found.high < 1.8
        assert found.source


@pytest.mark.parametrize(
    ("text", "item", "form"),
    [
        ("carrots, grated", "carrot", "grated"),
        ("diced onion", "onion", "chopped"),
        ("unsifted powdered sugar", "powdered sugar", "unsifted"),
        ("whole peppercorns", "black pepper", "whole"),
        ("boneless butter", "butter", ""),
        ("Sal", "table salt", ""),
        ("fresh parsley leaves", "parsley", "chopped"),
        ("harina de trigo", "all-purpose flour", ""),
    ],
)
def test_a_food_is_known_in_its_form(text, item, form):
    found = density(text)
    assert (found.item, found.form) == (item, form)


@pytest.mark.parametrize(
    "item",
    [
        "apple butter",
        "apple brandy snaps",
        "milk chocolate",
        "garlic salt",
        "cream crackers",
        "almond flour",
        "butter beans",
        "egg salad",
        "onion soup mix",
        "garlic bread",
    ],
)
def test_a_food_that_only_holds_a_known_name_is_not_it(item):
    with pytest.raises(Unknown, match="is not known"):
        density(item)


def test_a_size_that_is_said_narrows_the_range():
    assert piece_mass("onion", "piece", "large").kg == pytest.approx(0.150)
    unsaid = piece_mass("onion", "piece")
    assert (unsaid.kg, unsaid.low, unsaid.high) == (0.110, 0.070, 0.150)
    assert piece_mass("onion", "bunch") is None


def test_a_fan_oven_is_set_lower_and_back_again():
    assert fan_oven_c(180.0) == 160.0  # metric books: 15 to 20 C
    assert still_oven_c(fan_oven_c(163.0)) == 163.0


@pytest.mark.parametrize(
    ("given", "name"),
    [
        (("two", "cup", "g", "flour"), "value"),
        ((None, "cup", "mL"), "value"),
        ((True, "cup", "mL"), "value"),
        (([1], "cup", "mL"), "value"),
        ((10**400, "cup", "mL"), "value"),
        ((float("inf"), "cup", "mL"), "value"),
        ((2, None, "g", "flour"), "unit"),
        ((2, "cup", 5, "flour"), "unit"),
        ((2, "cup", "g", 5), "item"),
    ],
)
def test_what_is_of_no_use_is_refused_by_its_name(given, name):
    with pytest.raises(Impossible) as refused:
        convert(*given)
    assert refused.value.name == name


@pytest.mark.parametrize(
    ("item", "meant"),
    [("suger", "sugar"), ("potatoe", "potato"), ("brocoli", "broccoli"), ("dragonfruit", None), ("xyzzy", None)],
)
def test_an_unknown_food_is_only_likened_to_what_it_may_be_a_slip_of(item, meant):
    with pytest.raises(Unknown) as refused:
        convert(2, "cup", "g", item)
    assert meant in refused.value.known if meant else refused.value.known == ()
    assert refused.value.way_out.startswith("use one of" if meant else "weigh it")
