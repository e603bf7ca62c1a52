"""A line that tells of two roasts is answered for the first, which is said, and the other is offered."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


@pytest.mark.parametrize(
    ("text", "other"),
    [
        ("12 lb turkey thursday at 4 and a 5 lb rib roast friday at 7", "5 lb rib roast friday at 7"),
        ("two 12 lb birds and a 6 lb breast for dinner at 6", "6 lb breast for dinner at 6"),
        ("pavo de 6 kg y un pato de 2 kg, cena a las 9", "pato de 2 kg"),
    ],
)
def test_the_other_is_told_and_offered(text: str, other: str) -> None:
    reply, _ = ask(Line(text, NOW), None, "c")
    assert reply.next[0] == other
    assert any(other in told for told in reply.assumptions)


@pytest.mark.parametrize(
    "text", ["12 lb turkey and 2 lb of potatoes at 6", "14 lb turkey, dinner at 6", "12 or 14 lb"]
)
def test_one_roast_is_one(text: str) -> None:
    reply, _ = ask(Line(text, NOW), None, "c")
    assert not any("first roast" in told for told in reply.assumptions)
