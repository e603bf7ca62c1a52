"""Talks on the day of the dinner: what is answered when the cook corrects, goes back, or tells of the oven."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, Reply, ask
from turnspit.asking.conversation import Conversation

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


def talk(*lines: str) -> Reply:
    """The last reply of a talk that is kept and read back between its lines."""
    conversation: Conversation | None = None
    for line in lines:
        reply, conversation = ask(Line(line, NOW), conversation, "c")
        conversation = Conversation.from_document(conversation.document())
    return reply


def test_a_garage_that_is_cold_enough_is_no_counter() -> None:
    told = "I left the bird on the counter since 10 last night, thats fine right?"
    assert "cold enough" in talk(told, "no wait it was in the garage, 38 degrees in there").headline
    assert "Throw it away" in talk(told, "no wait it was in the garage, 48 degrees in there").headline
    assert "Throw it away" in talk(told, "no wait it was on the table, 68 degrees").headline


def test_what_was_pulled_is_judged_by_its_reading() -> None:
    reply = talk(
        "prime rib 7.5 lb in at 6 am at 250, medium rare", "what if I drop the oven to 200", "pulled it at 126"
    )
    assert reply.headline.startswith("126 °F")


def test_a_guest_at_risk_is_answered_before_the_plan() -> None:
    reply = talk("8 guests, 5 lb beef tenderloin at 8pm", "one guest is pregnant, is medium rare still ok?")
    assert reply.understood["covers"] == 8
    assert reply.headline.startswith("No")
    assert "145 °F" in reply.headline
    assert not any("brined" in told for told in reply.assumptions)


@pytest.mark.parametrize(
    ("line", "dial"),
    [
        ("my oven runs about 25 degrees cold", "350 °F"),
        ("oven is 15 degrees hot btw", "310 °F"),
        ("the oven runs 10C hot", "307 °F"),
    ],
)
def test_the_dial_of_an_oven_that_is_off(line: str, dial: str) -> None:
    reply = talk("14 lb turkey dinner at 6, oven at 325", line, "make it 6:30")
    assert any(f"set its dial to {dial}" in told for told in reply.lines)
    assert reply.understood["oven"]["temperature_c"] == pytest.approx(162.78)


def test_an_oven_that_is_right_needs_no_other_setting() -> None:
    reply = talk("14 lb turkey dinner at 6, oven at 325", "the kitchen is 85 degrees")
    assert not any("dial" in told for told in reply.lines)


def test_who_has_bought_a_fresh_bird_is_not_told_to_thaw_one() -> None:
    fresh = talk("we're 14 for dinner tomorrow, how big a bird", "got a 22 pounder fresh")
    assert not any(told.startswith(("Frozen", "Fresh")) for told in fresh.lines)
    open_ = talk("how big a turkey for 14")
    assert any(told.startswith("Fresh") for told in open_.lines)


def test_one_thing_of_the_recipe_is_scaled() -> None:
    reply = talk("my mash recipe is for 6, need it for 14", "it takes 3 lb potatoes, how many is that then")
    assert "7 lb of potatoes" in reply.headline


def test_a_roast_that_was_left_is_taken_up_as_it_was() -> None:
    reply = talk("capon 3.2 kg tomorrow 1pm", "and a pork loin 2 kg at 220", "and the capon again, how long?")
    assert reply.understood["roast"] == {"kind": "capon", "mass_kg": 3.2}
    assert "oven" not in reply.understood


def test_what_is_not_understood_leaves_the_dinner_standing() -> None:
    lines = ("14 lb turkey dinner at 6", "what's the capital of France")
    reply = talk(*lines)
    assert reply.headline.startswith("I did not catch that. Your dinner stands")
    assert reply.next == ("why?", "what do you have so far?", "start over")
    assert talk(*lines, "make it 16 lb").headline.startswith("Put the 16 lb")
    assert talk("what's the capital of France").question is not None


def test_a_probe_in_something_unnamed_asks_what_it_is() -> None:
    reply = talk("probe says 60, is it done?")
    assert reply.question is not None
    assert reply.question.text == "Which roast is it?"
    assert talk("probe says 60, is it done?", "turkey breast, bone in, 3 kg").question is None
