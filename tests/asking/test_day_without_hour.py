"""A day that is said without its hour: what is supposed is said, and asked."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, Reply, ask

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


def _ask(text: str, now: datetime = NOW) -> Reply:
    return ask(Line(text, now), None, "c")[0]


@pytest.mark.parametrize(
    ("text", "served"),
    [
        ("frozen 16 lb turkey, dinner in 4 days", "2026-11-29T18:00:00-05:00"),
        ("16 lb turkey, lunch on Sunday", "2026-11-29T13:00:00-05:00"),
        ("pavo de 6 kg, comida el domingo", "2026-11-29T14:00:00-05:00"),
    ],
)
def test_the_usual_hour_is_planned_said_and_asked(text: str, served: str) -> None:
    reply = _ask(text)
    assert "serve_at" not in reply.understood
    assert reply.data["plan"]["serve_at"] == served
    assert any("hour" in told or "hora" in told for told in reply.assumptions)
    assert reply.question is not None


def test_the_hour_that_follows_keeps_the_day_and_its_meal() -> None:
    _, talk = ask(Line("16 lb turkey, lunch on Sunday", NOW), None, "c")
    reply, _ = ask(Line("at 11", NOW), talk, "c")
    assert reply.understood["serve_at"] == "2026-11-29T11:00:00-05:00"


def test_an_evening_whose_usual_hour_is_past_is_not_refused() -> None:
    reply = _ask("5 lb chicken, dinner tonight", NOW.replace(hour=19))
    assert "plan" not in reply.data
    assert reply.question is not None


def test_thawing_by_a_day_says_by_when_it_is_needed() -> None:
    reply = _ask("thaw 16 lb turkey by sunday")
    assert any("needed by" in told for told in reply.assumptions)
