"""A danger that takes over is listed behind what the line was read as asking."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

from turnspit.asking import Line, ask

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


def test_the_intent_stays_what_was_asked() -> None:
    reply, _ = ask(Line("frozen stuffed turkey how long", NOW), None, "c")
    assert reply.intents == ("roast_time", "safety")
    assert any(caution.severity == "stop" for caution in reply.cautions)


def test_nothing_is_listed_where_nothing_gave_way() -> None:
    reply, _ = ask(Line("how long for a 14 lb turkey at 325", NOW), None, "c")
    assert reply.intents == ("roast_time",)
