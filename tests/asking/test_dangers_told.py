"""Answers to dangers say yes or no the right way round, and forget no reading that was told beside."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, Reply, ask

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


def _ask(text: str) -> Reply:
    return ask(Line(text, NOW), None, "c")[0]


@pytest.mark.parametrize(
    ("safe", "risky", "rule"),
    [
        ("can I roast overnight at 200 degrees", "is overnight roasting at 200 degrees dangerous", "slow-oven"),
        ("can I thaw the turkey on the counter", "is it risky to thaw turkey on the counter", "thaw-counter"),
        ("can I wash the bird", "is it bad to wash the bird", "no-washing"),
    ],
)
def test_who_asks_if_it_is_dangerous_gets_a_yes(safe: str, risky: str, rule: str) -> None:
    assert _ask(safe).headline.startswith("No")
    told = _ask(risky)
    assert told.headline.startswith("Yes, it is")
    assert any(caution.rule == rule for caution in told.cautions)


def test_a_low_reading_beside_another_question_is_not_forgotten() -> None:
    reply = _ask("is stuffing safe at 150 and how long can leftovers sit out")
    assert any("150" in line and "165" in line for line in reply.lines)
    assert any(caution.severity == "stop" for caution in reply.cautions)


def test_a_bird_that_still_roasts_is_not_held_hot() -> None:
    for text in (
        "probe in the breast went from 130 to 138, 90 minutes to dinner, are we ok",
        "thigh 140, is that ok",
    ):
        reply = _ask(text)
        assert "165" in reply.headline
        assert "Keep it" not in reply.headline


def test_raw_meat_in_brine_out_of_the_cold_is_thrown_away() -> None:
    assert "Throw it away" in _ask("turkey in brine went out of fridge for 5 hours").headline


def test_a_pot_that_cools_in_the_cold_is_worked_out_and_not_taken_for_left_out() -> None:
    reply = _ask("cooling 10 qts turkey stock overnight in the walkin")
    assert "70 °F" in reply.headline
    assert "stood out" not in reply.headline


def test_a_roast_kept_in_a_low_oven_is_held_and_not_left_over() -> None:
    reply = _ask("keep it in a 150F oven for 4 hours")
    assert "140 °F" in reply.headline
    assert "kept for" not in reply.headline


def test_raw_meat_is_held_to_its_days_and_not_reheated() -> None:
    reply = _ask("raw 16 lb turkey in the fridge since sunday, roasting thursday ok?")
    assert "Throw it away" in reply.headline


@pytest.mark.parametrize(
    ("text", "rule"),
    [
        ("¿Es seguro descongelar el pavo fuera de la nevera?", "thaw-counter"),
        ("lamb at 56 °C for a care home, ok?", "at-risk"),
        ("Is brine reusable or do I throw it out", "brine-discard"),
        ("fastest way to cool 10 litres of stock", "cooling-two-stage"),
    ],
)
def test_a_danger_in_other_words_is_answered_by_its_rule(text: str, rule: str) -> None:
    assert any(caution.rule == rule for caution in _ask(text).cautions)


def test_more_birds_than_an_oven_takes_asks_for_the_ovens() -> None:
    reply = _ask("15 ducks, dinner at 7")
    assert reply.question is not None
    assert "oven" in reply.question.text


@pytest.mark.parametrize(
    "text",
    [
        "can my gran eat medium rare lamb leg",
        "a 2 kg lamb leg rare for gran, dinner at 6",
        "prime rib medium rare, my wife is pregnant, dinner at 6",
    ],
)
def test_rare_meat_for_one_at_risk_is_stopped_whatever_is_asked(text: str) -> None:
    assert "at-risk" in {caution.rule for caution in _ask(text).cautions if caution.severity == "stop"}
