"""The whole of asking: a reply as the contract has it, the conversation after it, the turns about the answer."""

import json
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import INTENTS, Conversation, Line, ask

NOW = datetime(2026, 11, 25, 9, tzinfo=ZoneInfo("America/New_York"))

ISSUE_LINES = [
    "16 lb bird, dinner at 6",
    "turkey for 14 with leftovers, how big?",
    "frozen 20 lb turkey, dinner tomorrow at 2",
    "7.5 kg turkey stuffed fan oven 160C, lunch 13:30",
    "two 13 lb birds one oven dinner 5:30",
    "brine for an 18 lb bird in a 5 gallon bucket",
    "how long to thaw 22 lbs in the fridge",
    "130 in the breast at 4:30, dinner at 6",
    "2 cups kosher salt in grams",
    "is 160 in the thigh ok?",
    "left it out 3 hours",
    "goose 11 lb at 7pm",
    "",
    "900 lb bird",
    "dinner yesterday at 6",
]


def talk(*lines, **options):
    """The reply to the last line of a conversation, and the conversation."""
    conversation = None
    for text in lines:
        reply, conversation = ask(Line(text, NOW, **options), conversation, "id")
    return reply, conversation


def words(reply):
    return "\n".join((reply.headline, *reply.lines))


@pytest.mark.parametrize("text", ISSUE_LINES)
def test_a_reply_is_plain_json_as_the_contract_has_it(text):
    reply, conversation = talk(text)
    document = reply.document()
    assert json.loads(json.dumps(document)) == document
    assert document["intent"] == document["intents"][0]
    assert set(document["intents"]) <= set(INTENTS)
    assert document["answer"]["headline"]
    assert 2 <= len(document["next"]) <= 3
    assert json.loads(json.dumps(conversation.document()))["id"] == "id"


@pytest.mark.parametrize("text", ISSUE_LINES)
def test_the_same_line_gives_the_same_reply(text):
    assert talk(text)[0].document() == talk(text)[0].document()


def test_a_plan_carries_window_check_and_timetable():
    reply, _ = talk("16 lb bird, dinner at 6")
    assert reply.intent == "plan"
    assert "start checking at" in reply.headline
    assert "serve at 6 pm" in reply.headline
    assert reply.data["plan"]["tasks"]
    assert reply.data["forecast"]["ready_min"]["p10"] < reply.data["forecast"]["ready_min"]["p90"]
    assert any("turkey" in assumption for assumption in reply.assumptions)
    assert [caution.rule for caution in reply.cautions] == ["poultry-165", "local-codes"]


def test_the_gravest_caution_stands_first():
    reply, _ = talk("stuffed 16 lb turkey at 300F, dinner at 7")
    order = [("stop", "warn", "info").index(caution.severity) for caution in reply.cautions]
    assert order == sorted(order)
    assert {"oven-325", "stuffing-165"} <= {caution.rule for caution in reply.cautions}


def test_the_clock_follows_the_reader():
    assert "13:30" in talk("7.5 kg turkey, lunch 13:30 tomorrow")[0].headline
    assert "1:30 pm" in talk("16 lb turkey, lunch 1:30 tomorrow")[0].headline


def test_units_follow_the_text_then_the_request():
    assert "7.3 kg (16 lb)" in talk("16 lb turkey, how long", units="metric")[0].headline
    assert "7 kg (15.4 lb)" in talk("how long for a 7 kg turkey")[0].headline
    assert "325 °F (163 °C)" in talk("how long for a turkey")[0].headline


def test_the_units_of_a_conversation_last():
    reply, _ = talk("7 kg turkey, dinner at 6", "what if it's stuffed?")
    assert "7 kg (15.4 lb)" in reply.headline


@pytest.mark.parametrize("text", ["dinner yesterday at 6", "900 lb bird, dinner at 6", "-16 lb bird, dinner at 6"])
def test_no_plan_is_invented_for_what_cannot_be(text):
    reply, _ = talk(text)
    assert "plan" not in reply.data
    assert reply.data["refused"]
    assert reply.question is not None


def test_a_passed_dinner_is_asked_back_with_times_to_tap():
    reply, conversation = talk("16 lb turkey, dinner yesterday at 6")
    assert "already passed" in reply.headline
    assert reply.question.choices == ("dinner 6 pm", "dinner tomorrow 6 pm")
    assert conversation.pending == "serve_at"
    again, _ = ask(Line(reply.question.choices[1], NOW), conversation, "id")
    assert again.data["plan"]["serve_at"].startswith("2026-11-26T18:00")


def test_several_intents_are_answered_together():
    reply, _ = talk("how big a turkey for 12 and when do I put it in for dinner at 6")
    assert reply.intents == ("size", "plan")
    assert "12 lb" in reply.headline
    assert "start checking at" in words(reply)
    assert {"size", "plan"} <= set(reply.data)


def test_why_gives_numbers_and_sources_for_the_same_answer():
    first, _ = talk("16 lb bird, dinner at 6")
    reply, conversation = talk("16 lb bird, dinner at 6", "why?")
    assert reply.headline == first.headline
    assert "256 computed roasts" in words(reply)
    assert "Sources:" in words(reply)
    assert conversation.lines == ("16 lb bird, dinner at 6",)


def test_what_was_assumed_is_told_and_kept_by_path():
    reply, conversation = talk("16 lb bird, dinner at 6", "what did you assume?")
    assert "turkey" in words(reply)
    assert conversation.assumed["roast.kind"] == "turkey"
    assert conversation.set_by["roast.kind"] == "assumed"
    assert conversation.set_by["roast.mass_kg"] == "said"


def test_an_amendment_changes_the_answer_and_what_was_assumed():
    reply, conversation = talk("16 lb bird, dinner at 6", "what if it's stuffed?")
    assert reply.understood["roast"]["stuffed"] is True
    assert conversation.set_by["roast.stuffed"] == "said"
    assert "roast.stuffed" not in conversation.assumed
    assert "stuffing-165" in {caution.rule for caution in reply.cautions}


def test_an_answered_question_is_set_by_asking():
    reply, conversation = talk("brine for a 16 lb turkey", "it is injected")
    assert reply.data["brine"]["allowed"] is False
    assert conversation.set_by["roast.injected"] == "asked"


def test_all_that_is_held_can_be_shown():
    reply, _ = talk("16 lb bird, dinner at 6", "what do you know so far?")
    assert "Weight: 16 lb (7.3 kg) (you said so)" in words(reply)
    assert "(assumed)" in words(reply)


def test_starting_over_clears_the_table():
    reply, conversation = talk("16 lb bird, dinner at 6", "start over")
    assert conversation.understood == {}
    assert conversation.lines == ()
    assert "Cleared" in reply.headline


def test_explaining_shows_the_words_behind_each_value():
    reply, _ = talk("16 lb bird, dinner at 6", explain=True)
    traces = {trace["path"]: trace for trace in reply.data["trace"]}
    assert "16" in traces["roast.mass_kg"]["words"]
    assert traces["roast.mass_kg"]["rule"]
    assert "trace" not in talk("16 lb bird, dinner at 6")[0].data


def test_a_licensed_kitchen_is_told_its_own_rules():
    home = talk("leftovers", kitchen="home")[0]
    licensed = talk("leftovers", kitchen="licensed")[0]
    assert "date-marking" in {caution.rule for caution in licensed.cautions}
    assert "date-marking" not in {caution.rule for caution in home.cautions}


@pytest.mark.parametrize(
    "text",
    [
        "<script>alert(1)</script>",
        "\x00\x01\x02",
        "🦃" * 500,
        "16 " * 3000,
        "a" * 10_000,
        "turkey at 5000 degrees how long",
        "turkey for 99999999999999999999 people how big",
        "convert 1e308 cups flour to grams",
        "scale 0 servings to 14",
        "-3 kg turkey how long to thaw",
        "brine for a 1 lb turkey in a 1 cup bucket",
        "1e400 lb turkey",
        "0 lb turkey dinner at 6",
        "turkey dinner in 400 years",
        "999 C in the breast",
        "-300 F in the breast",
        "beef rib 0.1 lb dinner at 6",
        "turkey 16 lb oven 50F dinner at 6",
    ],
)
def test_nothing_a_person_types_raises(text):
    reply, conversation = talk(text)
    assert reply.headline
    json.dumps(reply.document(), allow_nan=False)
    assert Conversation.from_document(json.loads(json.dumps(conversation.document()))) == conversation


def test_fahrenheit_or_celsius_is_asked_back_where_both_could_be():
    reply, conversation = talk("turkey at 210 how long")
    assert conversation.pending == "oven.temperature_c"
    assert reply.question.text == "Is that °F or °C?"
    again, after = ask(Line(reply.question.choices[0], NOW), conversation, "id")
    assert again.understood["oven"]["temperature_c"] == pytest.approx(98.9, abs=0.1)
    assert after.set_by["oven.temperature_c"] == "asked"
    assert "too slow an oven" in again.headline


def test_a_dinner_far_ahead_is_asked_again_nearer_the_day():
    reply, _ = talk("14 lb turkey, dinner on march 28 at 6pm")
    assert "more than two months away" in reply.headline
    assert "plan" not in reply.data


def test_nothing_assumed_and_nothing_said_are_told_as_such():
    reply, _ = talk("2 lb in grams", "what did you assume?")
    assert reply.headline == "I took nothing for granted: all of it was said."


@pytest.mark.parametrize("text", ["resting a 16 lb turkey, how long", "¿cuánto reposa un pavo de 7 kg?"])
def test_the_rest_tells_how_far_it_still_rises(text):
    assert "rises about" in words(talk(text)[0]) or "sube todavía" in words(talk(text)[0])


def test_the_freezer_undoes_no_hours_outside():
    reply, _ = talk("curry of leftover turkey, kept in fridge 3 days, ok?", "outside 4 hours", "then freezer?")
    assert ("two-hours", "stop") in [(one["rule"], one["severity"]) for one in reply.document()["cautions"]]


def test_warming_loads_the_words_of_both_languages() -> None:
    from turnspit.asking import warm
    from turnspit.asking.vocabulary.everyday import everyday_words

    everyday_words.cache_clear()
    warm()
    assert everyday_words.cache_info().currsize == 2
