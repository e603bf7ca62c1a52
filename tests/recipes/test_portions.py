from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.recipes import SizeCase, size_roast
from turnspit.recipes.portions import thaw_days
from turnspit.reference import table
from turnspit.words import LANGUAGES, Reader, say

POUND_KG = 0.45359237
NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)


def pounds(sizing):
    return round(sizing.total_kg / POUND_KG, 2)


def test_a_turkey_for_fourteen_is_fourteen_pounds_and_twenty_one_with_leftovers():
    assert pounds(size_roast(SizeCase(covers=14))) == 14
    assert pounds(size_roast(SizeCase(covers=14, leftovers=True))) == 21


def test_hungry_diners_eat_more_children_half_and_some_nothing():
    assert pounds(size_roast(SizeCase(covers=14, appetite="hungry"))) == 17.5
    assert pounds(size_roast(SizeCase(covers=14, children=4))) == 12
    assert pounds(size_roast(SizeCase(covers=14, children=4, non_eaters=2))) == 10


def test_two_of_twelve_are_weighed_against_one_of_twenty_four():
    sizing = size_roast(SizeCase(covers=24))
    assert (sizing.count, pounds(sizing)) == (1, 24)
    two = sizing.others[0]
    assert (two.count, round(two.each_kg / POUND_KG, 2)) == (2, 12)
    assert two.carved.meat_kg == pytest.approx(sizing.carved.meat_kg)
    assert two.thaw_days == (3, 3)
    assert sizing.flock.thaw_days == (5, 6)


@pytest.mark.parametrize("covers", [6, 13, 60, 200, 1000])
def test_every_way_feeds_everyone(covers):
    sizing = size_roast(SizeCase(covers=covers))
    for flock in (sizing.flock, *sizing.others):
        assert flock.total_kg >= sizing.needed_kg - 1e-9
        assert flock.each_kg <= 24 * POUND_KG + 1e-9


def test_two_hundred_covers_take_what_six_do_each():
    few, many = size_roast(SizeCase(covers=6, kind="pork_loin")), size_roast(SizeCase(covers=200, kind="pork_loin"))
    assert many.needed_kg / 200 == pytest.approx(few.needed_kg / 6)
    for one, other in zip(few.sides, many.sides, strict=True):
        assert other.high / 200 == pytest.approx(one.high / 6)


def test_the_largest_piece_that_fits_is_kept():
    sizing = size_roast(SizeCase(covers=20, largest_piece_kg=5.0))
    assert all(flock.each_kg <= 5.0 + 1e-9 for flock in (sizing.flock, *sizing.others))


def test_nobody_is_sold_a_turkey_smaller_than_they_come():
    sizing = size_roast(SizeCase(covers=2))
    assert pounds(sizing) == 8
    assert "recipes-size-least" in [note.key for note in sizing.notes]


def test_a_hen_each():
    assert size_roast(SizeCase(covers=9, kind="game_hen")).count == 9


def test_the_day_to_buy():
    sizing = size_roast(SizeCase(covers=14))
    assert sizing.buy_by(date(2026, 11, 26), frozen=True) == date(2026, 11, 22)
    assert sizing.buy_by(date(2026, 11, 26), frozen=False) == date(2026, 11, 24)


@pytest.mark.parametrize(("mass_lb", "most"), [(12, 3), (16, 4), (20, 5), (24, 6)])
def test_days_to_thaw_are_those_of_the_federal_table(mass_lb, most):
    # USDA FSIS, Let's Talk Turkey: 4-12 lb 1-3 days, 12-16 3-4, 16-20 4-5, 20-24 5-6
    assert thaw_days(mass_lb * POUND_KG)[1] == most


def test_sides_for_fourteen():
    by = {side.item: side for side in size_roast(SizeCase(covers=14)).sides}
    assert by["gravy"].low == pytest.approx(14 * 0.25 * 0.2365882365)
    assert by["rolls"].high == 28
    assert by["potatoes"].high == pytest.approx(7 * POUND_KG)


@pytest.mark.parametrize("row", list(table("portions_roast")), ids=lambda row: f"{row['kind']}-{row['bone_in']}")
def test_every_roast_can_be_sized_and_said(row):
    case = SizeCase(covers=10, kind=row["kind"], bone_in=row["bone_in"], children=1, non_eaters=1, leftovers=True)
    for sizing in (size_roast(case), size_roast(replace(case, covers=50, appetite="hungry", leftovers=False))):
        assert row["plain_lb"] < row["leftovers_lb"]
        assert sizing.carved.meat_kg / sizing.eaters > 0.1
        for language in LANGUAGES:
            reader = Reader(NOW, language=language)
            for message in (sizing.headline, *sizing.notes, *sizing.assumptions):
                assert "recipes-" not in say(message, reader)


@pytest.mark.parametrize(
    ("change", "error", "said"),
    [
        ({"covers": 0}, Impossible, "say how many eat"),
        ({"covers": 100000}, OutOfRange, "in parts"),
        ({"children": 12, "non_eaters": 8}, Impossible, "among the covers"),
        ({"children": -1}, Impossible, "leave it out"),
        ({"non_eaters": 14}, Impossible, "no roast is needed"),
        ({"kind": "swan"}, Unknown, "use one of turkey"),
        ({"largest_piece_kg": 0.0}, Impossible, "largest_piece_kg"),
    ],
)
def test_what_cannot_be_is_refused(change, error, said):
    with pytest.raises(error, match=said):
        size_roast(replace(SizeCase(covers=14), **change))


def test_one_diner_is_one():
    headline = size_roast(SizeCase(covers=1, kind="game_hen")).headline
    assert say(headline, Reader(NOW)).startswith("For one diner: one game hen of about")
    assert say(headline, Reader(NOW, language="es")).startswith("Para un comensal: ")
