"""What a talk holds: who set a value, what is set aside, and its document."""

from __future__ import annotations

import json
from datetime import datetime
from zoneinfo import ZoneInfo

from turnspit.asking.contract import Line
from turnspit.asking.conversation import Conversation
from turnspit.asking.reading import Reading, flat, read_line, remember

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


def talk(*lines: str, pending: str = "") -> tuple[Reading, Conversation]:
    conversation: Conversation | None = None
    for text in lines:
        reading = read_line(Line(text, NOW), conversation)
        conversation = remember(conversation or Conversation("talk"), reading, text, pending=pending)
    assert conversation is not None
    return reading, conversation


def test_document_gives_the_conversation_back() -> None:
    _, conversation = talk("frozen 20 lb turkey thursday", "2 cups flour in grams", "and in ounces?")
    document = json.loads(json.dumps(conversation.document()))
    assert Conversation.from_document(document) == conversation


def test_document_of_an_older_version_takes_defaults_for_what_it_lacks() -> None:
    found = Conversation.from_document({"id": "old", "understood": {"covers": 8}, "intents": ["size"], "future": 1})
    assert (found.id, found.intents, found.lines, found.units) == ("old", ("size",), (), None)


def test_values_are_said_or_answer_a_question() -> None:
    _, conversation = talk("dinner at 6", "16 lb", pending="roast.mass_kg")
    assert conversation.set_by == {"serve_at": "said", "roast.mass_kg": "asked"}


def test_assumed_values_are_held_apart() -> None:
    reading = read_line(Line("16 lb bird, dinner at 6", NOW), None)
    conversation = remember(
        Conversation("talk"), reading, "16 lb bird, dinner at 6", assumed={"roast.kind": "turkey"}
    )
    assert conversation.set_by["roast.kind"] == "assumed"
    assert "kind" not in conversation.understood["roast"]


def test_dinner_is_taken_up_again_after_a_conversion() -> None:
    reading, conversation = talk("16 lb bird, dinner at 6", "2 cups flour in grams", "push dinner to 7")
    assert flat(reading.understood) == {"roast.mass_kg": 7.257, "serve_at": "2026-11-25T19:00:00-05:00"}
    assert conversation.shelved == {}


def test_starting_over_forgets_all() -> None:
    reading, conversation = talk("16 lb bird, dinner at 6", "start over")
    assert reading.move == "start_over"
    assert reading.understood == {}
    assert conversation.understood == {}
    assert conversation.lines == ()


def test_asking_about_the_answer_changes_nothing() -> None:
    for text, move in (("why?", "why"), ("what did you assume?", "assumptions"), ("what do you know", "show")):
        reading, conversation = talk("16 lb bird, dinner at 6", text)
        assert reading.move == move
        assert reading.intents == ("plan",)
        assert flat(reading.understood)["roast.mass_kg"] == 7.257
        assert conversation.lines == ("16 lb bird, dinner at 6",)


def test_cut_of_meat_is_asked_back_with_cuts_to_choose_from_and_the_choice_settles_it() -> None:
    first, _ = talk("roast beef 4 lb, dinner at 6")
    assert first.ambiguous == "roast.kind"
    assert "prime rib" in first.choices
    for choice in first.choices:
        second, _ = talk("roast beef 4 lb, dinner at 6", choice)
        assert second.understood["roast"]["kind"].startswith("beef_")
        assert second.ambiguous == ""
        assert second.intents == ("plan",)


def test_degrees_that_could_be_either_are_asked_back_and_settled() -> None:
    first, _ = talk("turkey, oven at 225, dinner at 6")
    assert first.ambiguous == "oven.temperature_c"
    assert first.choices == ("225 F", "225 C")
    for choice, celsius in (("225 C", 225), ("225 F", 107.22), ("celsius", 225), ("F", 107.22)):
        second, _ = talk("turkey, oven at 225, dinner at 6", choice)
        assert second.understood["oven"]["temperature_c"] == celsius


def test_units_of_the_talk_decide_a_bare_number() -> None:
    assert talk("7 kg turkey, dinner at 18:00", "make it 8")[0].understood["roast"]["mass_kg"] == 8
    assert talk("16 lb turkey, dinner at 18:00", "make it 20")[0].understood["roast"]["mass_kg"] == 9.072
