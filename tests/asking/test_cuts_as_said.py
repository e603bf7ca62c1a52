"""A cut that the heat room knows apart: what `roast.kind` says of it is the roast it is bought as."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask

NOW = datetime(2026, 12, 25, 9, 5, tzinfo=ZoneInfo("Europe/London"))


def answer(text):
    return ask(Line(text, NOW), None, "id")[0]


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("lamb shoulder at 150 fan from noon", "shoulder of lamb"),
        ("lamb shoulder 2.2 kg slow roast how long", "shoulder of lamb"),
        ("lamb shoulder for 8, dinner at 6", "shoulder of lamb"),
        ("paletilla de cordero de 2 kg, cena a las 20:00", "paletilla de cordero"),
        ("spatchcocked turkey for 8, dinner at 6", "spatchcocked turkey"),
        ("how many does a 2 kg lamb shoulder feed", "shoulder of lamb"),
    ],
)
def test_it_is_planned_as_the_cut_that_it_is(text, name):
    assert name in answer(text).headline


def test_a_shoulder_is_tender_where_a_leg_is_done():
    shoulder, leg = (answer(f"{cut} of lamb 2 kg at 160C how long").data["forecast"] for cut in ("shoulder", "leg"))
    assert shoulder["ready_min"]["p50"] > 1.4 * leg["ready_min"]["p50"]
    assert shoulder["target_c"] > 80.0 if "target_c" in shoulder else shoulder["pull_c"] > 80.0
