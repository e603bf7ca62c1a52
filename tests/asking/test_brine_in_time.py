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


def test_hours_in_the_brine_so_far_count_with_those_to_come():
    now = datetime(2026, 11, 26, 0, 30, tzinfo=ZoneInfo("America/New_York"))
    may = ask(Line("Put turkey in brine 8 hours ago, can it go till tomorrow noon?", now), None, "id")[0]
    assert "43 h 30 min" in may.headline
    assert not any("salt" in line for line in may.lines)
    lost = ask(Line("turkey has been in the brine 40 hours, can it stay till tomorrow 6pm?", now), None, "id")[0]
    assert "Too long" in lost.headline
