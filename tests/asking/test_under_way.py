"""A roast in the oven without a reading: when it is due by the clock, and a plan that knows that it is in."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, Reply, ask

NOON = datetime(2026, 11, 25, 12, 45, tzinfo=ZoneInfo("America/New_York"))


def _talk(now: datetime, *lines: str) -> list[Reply]:
    replies, talk = [], None
    for text in lines:
        reply, talk = ask(Line(text, now), talk, "c")
        replies.append(reply)
    return replies


@pytest.mark.parametrize(
    "text", ["turkey 14lb went in at 11, when is it done?", "14 lb turkey in for 1 hour 45 min, how much longer"]
)
def test_the_answer_is_a_window_on_the_clock(text: str) -> None:
    (reply,) = _talk(NOON, text)
    assert "in at 11 am: ready 1:55 pm to 3:20 pm" in reply.headline
    assert reply.data["forecast"]["check_from_min"] == pytest.approx(175, abs=15)


def test_once_the_window_has_come_the_thermometer_is_read_now() -> None:
    (due,) = _talk(NOON.replace(hour=14), "turkey 14lb went in at 11, when is it done?")
    assert "read the thermometer now" in due.headline
    (overdue,) = _talk(NOON.replace(hour=18), "turkey 14lb went in at 11, when is it done?")
    assert "was due by" in overdue.headline
    assert "165" in overdue.headline


def test_when_a_weight_is_done_is_told_in_hours_too() -> None:
    (reply,) = _talk(NOON, "when is a 14 lb turkey done")
    assert any(line.startswith("14 lb") for line in reply.lines)


def test_who_says_when_it_goes_in_is_believed() -> None:
    """A quarter of an hour is short to make it ready, and no reason to refuse."""
    (reply,) = _talk(NOON, "in at 1, 13 lb turkey, when do we eat?")
    assert reply.headline.startswith("Put the 13 lb (5.9 kg) turkey in at 1 pm")


def test_a_plan_knows_that_the_roast_is_in() -> None:
    (reply,) = _talk(NOON.replace(hour=13), "16 lb turkey went in at 11, dinner at 6")
    assert reply.headline.startswith("In since 11 am")
    assert not any("into the oven" in line for line in reply.lines)


def test_a_breast_has_no_giblets_and_no_legs() -> None:
    (reply,) = _talk(NOON, "4 lb turkey breast dinner at 6")
    text = " ".join((reply.headline, *reply.lines))
    assert "iblets" not in text
    assert "legs" not in text


def test_a_shoulder_past_its_safe_minimum_goes_on_to_be_pulled() -> None:
    (reply,) = _talk(NOON, "pork shoulder stalled at 162")
    assert reply.data["doneness"]["done"] is False
    assert reply.data["forecast"]["target_c"] == pytest.approx(93)
    assert any("pulled" in told for told in reply.assumptions)
    (sliced,) = _talk(NOON, "pork shoulder is at 130")
    assert sliced.data["forecast"]["target_c"] == pytest.approx(62.8, abs=0.3)
