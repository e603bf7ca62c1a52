"""Questions of how to roast are answered with advice, and with what the model makes of it for this roast."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, Reply, ask
from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.answers.technique import CAUTIONS, CHANGES, answer
from turnspit.asking.vocabulary import vocabulary
from turnspit.message import Message
from turnspit.words import Reader, say

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))
LANGUAGES = ("en", "es")


def _techniques(language: str) -> set[str]:
    phrases = vocabulary(language).phrases  # type: ignore[arg-type]
    rows = (row for seconds in phrases.values() for rows in seconds.values() for row in rows)
    return {tags["<technique>"] for _, tags in rows if "<technique>" in tags}


def _talk(*lines: str) -> list[Reply]:
    replies, talk = [], None
    for text in lines:
        reply, talk = ask(Line(text, NOW), talk, "c")
        replies.append(reply)
    return replies


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", sorted(_techniques("en")))
def test_every_technique_can_be_asked_and_is_answered_in_both_languages(name: str, language: str) -> None:
    assert name in _techniques(language)
    reader = Reader(NOW, language)  # type: ignore[arg-type]
    found = answer(Enquiry({}, reader, NOW, technique=name))
    for message in (found.headline, *found.lines, *found.reasons):
        assert say(message, reader)
    assert (len(found.lines) > 1) == (name in CHANGES)


def test_cautions_and_figures_are_of_techniques_that_can_be_asked() -> None:
    assert CAUTIONS.keys() | CHANGES.keys() <= _techniques("en")


@pytest.mark.parametrize(
    ("name", "longer"),
    [
        ("baste", True),
        ("cover", True),
        ("door", True),
        ("preheat", True),
        ("fan", False),
        ("hot_start", False),
        ("spatchcock", False),
    ],
)
def test_what_it_does_to_the_time_has_the_right_direction(name: str, longer: bool) -> None:
    understood = {"roast": {"kind": "turkey", "mass_kg": 6.0}}
    found = answer(Enquiry(understood, Reader(NOW), NOW, technique=name))
    computed = next(line for line in found.lines if isinstance(line, Message) and "before_min" in line.values)
    assert (computed.values["after_min"] > computed.values["before_min"]) is longer


def test_a_roast_that_cannot_be_timed_still_gets_the_advice() -> None:
    (reply,) = _talk("should I baste my 900 lb turkey")
    assert "baste" in reply.headline
    assert len(reply.lines) == 1


def test_a_question_in_passing_leaves_the_plan_where_it_was() -> None:
    _, advice, amended = _talk("16 lb bird, dinner at 6", "should I baste it?", "make it 20 lb")
    assert advice.intents == ("help",)
    assert "16 lb" in advice.lines[-1]
    assert amended.intents == ("plan",)
    assert "20 lb" in amended.headline
    assert not any("baste" in line for line in amended.lines)


def test_why_after_the_advice_tells_what_it_rests_on() -> None:
    *_, why = _talk("should I cover it with foil?", "why?")
    assert any("common practice" in line for line in why.lines)


def test_advice_beside_a_plan_is_given_and_not_counted_as_a_question_of_its_own() -> None:
    (reply,) = _talk("16 lb bird, dinner at 6, should I baste it")
    assert reply.intents == ("plan",)
    assert any("baste" in line for line in reply.lines)


def test_a_flattened_bird_is_timed_as_one() -> None:
    whole, flat = (
        _talk("how long for a 12 lb turkey at 425")[0],
        _talk("how long for a 12 lb spatchcocked turkey at 425")[0],
    )
    assert flat.understood["roast"]["kind"] == "turkey"
    assert "spatchcocked" in flat.headline
    assert flat.data["forecast"]["ready_min"]["p50"] < 0.75 * whole.data["forecast"]["ready_min"]["p50"]
    (plan,) = _talk("spatchcock turkey 12 lb dinner at 5")
    assert "spatchcocked turkey" in plan.headline
