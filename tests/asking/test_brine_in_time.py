"""Whether there is still time to brine, by the plan."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("is it too late to brine? 14 lb turkey, eating at 3", "Too late for a brine"),
        ("is it too late to brine a 14 lb turkey for dinner tomorrow at 5", "In time"),
        ("¿todavía puedo poner en salmuera un pavo de 6 kg para la cena de hoy a las 9?", "Ya es tarde"),
    ],
)
def test_the_answer_says_yes_or_no_first(text: str, told: str) -> None:
    reply, _ = ask(Line(text, NOW), None, "c")
    assert reply.intents == ("brine",)
    assert reply.headline.startswith(told)
    assert any(caution.rule == "brine-cold" for caution in reply.cautions)
