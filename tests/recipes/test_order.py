from datetime import UTC, date, datetime, timedelta

import pytest

from turnspit.recipes import Recipe, order_line, order_sheet, read_ingredient, read_starter, shopping_list
from turnspit.words import Reader, say

READER = Reader(datetime(2026, 11, 20, tzinfo=UTC))
THURSDAY = date(2026, 11, 26)


def sheet(*lines, **wishes):
    dish = Recipe("a dish", None, tuple(read_ingredient(line, "US") for line in lines), region="US")
    return order_sheet(shopping_list([dish]), THURSDAY, **wishes)


def test_two_hundred_covers_are_ordered_by_the_case():
    line = sheet("100 lb russet potatoes").lines[0]
    assert (line.case_of, line.cases) == ("sack", 2)
    assert line.cases * line.case - line.left_over == pytest.approx(line.amount)


def test_a_little_is_ordered_by_the_pack():
    line = sheet("1 lb russet potatoes").lines[0]
    assert (line.cases, line.case_of, line.packs) == (0, "", 4)
    assert line.pack_size == pytest.approx(453.59237 / 4)


def test_from_half_a_case_on_it_is_a_case():  # common practice, no source
    assert sheet("24 lb russet potatoes").lines[0].case_of == ""
    assert sheet("26 lb russet potatoes").lines[0].case_of == "sack"


def test_cream_by_the_cup_comes_in_cases_of_cartons():
    line = sheet("50 cups heavy cream").lines[0]
    assert line.case_of == "case"
    assert (line.cases, line.packs, line.pack) == (1, 2, "carton")  # 11.8 L in cases of 11.35 L


def test_one_bird_is_no_case_of_two_and_half_a_sack_beside_one_is_loose():
    one = sheet("1 (14 lb) turkey").lines[0]
    assert (one.cases, one.packs, one.left_over) == (0, 1, 0)
    potatoes = sheet("70 lb russet potatoes").lines[0]
    assert (potatoes.cases, potatoes.pack, potatoes.packs) == (1, "loose", 80)
    assert say(order_line(potatoes), READER) == "russet potatoes: 1 sack of 50 lb (22.7 kg) and 20 lb (9.1 kg)"
    oranges = sheet("juice of 3 oranges").lines[0]
    assert say(order_line(oranges), READER).startswith("oranges: 3 oranges of ")


def test_cold_goods_are_received_cold():
    ordered = sheet("100 lb butter", "100 lb flour")
    by = {line.item: line.receive_at_most_c for line in ordered.lines}
    assert by == {"butter": 5.0, "flour": None}
    assert [caution.rule for caution in ordered.cautions] == ["receiving-41"]
    assert sheet("100 lb flour").cautions == ()


def test_days_before_the_dinner():
    butter = sheet("100 lb butter", prep_days=1).lines[0]
    assert butter.deliver_on == THURSDAY - timedelta(days=2)
    assert butter.order_by == date(2026, 11, 21)
    by_sunday = sheet("100 lb butter", prep_days=3).lines[0]
    assert by_sunday.deliver_on == date(2026, 11, 21)  # the 22nd is a Sunday
    assert all(
        day.weekday() != 6
        for days in range(7)
        for line in sheet("100 lb butter", prep_days=days).lines
        for day in (line.order_by, line.deliver_on)
    )


def test_a_frozen_bird_comes_early_enough_to_thaw():
    fresh = sheet("2 (14 lb) turkeys").lines[0]
    frozen = sheet("2 (14 lb) turkeys", frozen_roast_kg=6.35).lines[0]
    assert fresh.deliver_on == date(2026, 11, 24)
    assert frozen.deliver_on == date(2026, 11, 21)  # 4 days and a day of preparation
    assert (frozen.case_of, frozen.cases) == ("birds", 1)


def test_the_sheet_is_in_the_order_of_its_days():
    dinner = [read_starter(key).recipe for key in ("roast-turkey", "dressing", "mashed-potatoes")]
    lines = order_sheet(shopping_list(dinner), THURSDAY).lines
    assert [line.order_by for line in lines] == sorted(line.order_by for line in lines)
    assert all(line.order_by < line.deliver_on < THURSDAY for line in lines)
