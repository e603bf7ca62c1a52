"""Children, and those who do not eat the roast, are counted among the diners and apart."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Conversation, Line, Reply, ask

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


def _ask(text: str, before: Conversation | None = None) -> tuple[Reply, Conversation]:
    return ask(Line(text, NOW), before, "c")


@pytest.mark.parametrize(
    ("text", "covers", "children", "non_eaters"),
    [
        ("how big a turkey for 9 adults and 4 kids", 13, 4, 0),
        ("turkey for 10, 2 of us kids, dinner at 6", 10, 2, 0),
        ("how big a turkey for 12, 3 of them vegetarian", 12, 0, 3),
        ("turkey for 8 people and 2 vegans", 10, 0, 2),
        ("how big a turkey for 12", 12, 0, 0),
        ("qué pavo para 6 adultos y 3 niños", 9, 3, 0),
    ],
)
def test_who_is_apart_is_kept(text: str, covers: int, children: int, non_eaters: int) -> None:
    reply, talk = _ask(text)
    assert reply.understood["covers"] == covers
    assert (talk.children, talk.non_eaters) == (children, non_eaters)


def test_children_eat_half_and_the_answer_says_so() -> None:
    grown, _ = _ask("how big a turkey for 16")
    mixed, talk = _ask("how big a turkey for 10 adults and 6 kids")
    assert mixed.data["size"]["total_kg"] == pytest.approx(13 / 16 * grown.data["size"]["total_kg"], rel=0.05)
    assert any("half" in told for told in mixed.assumptions)
    _, talk = _ask("and with leftovers?", talk)
    assert talk.children == 6
    _, talk = _ask("how about for 10?", talk)
    assert talk.children == 0


def test_a_plan_buys_for_the_children_as_half() -> None:
    plan, _ = _ask("turkey for 12, 4 of them kids, dinner at 6")
    whole, _ = _ask("turkey for 10, dinner at 6")
    assert plan.headline == whole.headline


def test_a_roast_that_is_a_little_short_wants_no_second_one() -> None:
    reply, _ = _ask("is a 14 lb turkey enough for 16?")
    assert "a little short" in reply.headline
    assert "2 turkeys" not in reply.headline


@pytest.mark.parametrize(
    ("text", "covers"),
    [
        ("12 of us now", 12),
        ("make it 12 people", 12),
        ("make that 12", 12),
        ("2 more are coming", 12),
        ("two more", 12),
        ("one fewer", 9),
        ("my brother isn't coming", 9),
        ("my brother can't make it", 9),
        ("plus my mum", 11),
        ("my mum and dad are coming too", 12),
        ("actually we'll be 14", 14),
        ("turns out there's 14 of us", 14),
        ("we're up to 14", 14),
        ("three dropped out", 7),
        ("3 cancelled", 7),
        ("2 of them are kids", 10),
        ("and 4 kids", 14),
        ("add 4 kids", 14),
        ("4 extra guests", 14),
        ("the neighbours are coming, that's 3 more", 13),
        ("what about for 15", 15),
        ("what if it's 15 people", 15),
        ("and for 15?", 15),
        ("sorry, 11", 11),
        ("no, 11 people", 11),
        ("my sister's bringing her boyfriend", 11),
        ("somos 12", 12),
        ("dos más", 12),
        ("uno menos", 9),
        ("vienen 3 más", 13),
        ("what time does it go in", 10),
        ("oven is 325", 10),
        ("it's 14 lb", 10),
        ("push dinner to 7", 10),
        ("everyone is early, 5 instead", 10),
        ("half of us are vegetarian", 10),
        ("one guest is vegan", 10),
        ("grandma's not coming so 9", 9),
        ("that's 13 with the neighbours", 13),
        ("all 10 of us eat at 7", 10),
    ],
)
def test_company_that_changes_in_a_talk(text: str, covers: int) -> None:
    _, talk = _ask("turkey for 10, dinner at 6")
    reply, _ = _ask(text, talk)
    assert reply.understood["covers"] == covers


def test_some_of_a_counted_company_are_kept_apart() -> None:
    _, talk = _ask("turkey for 10, dinner at 6")
    reply, talk = _ask("2 of them are kids", talk)
    assert reply.understood["covers"] == 10
    assert "count" not in reply.understood["roast"]
    assert talk.children == 2
