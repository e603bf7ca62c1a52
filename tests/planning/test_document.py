"""Every text a plan can say is said, in both languages; the document is plain JSON and stable."""

import json
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.planning import BrineWish, Dinner, OvenWish, RoastWish, plan_dinner, timetable_document
from turnspit.words import LANGUAGES, Reader

ZONE = ZoneInfo("America/New_York")
NOW = datetime(2026, 11, 25, 9, tzinfo=ZONE)


def at(hour: int, day: int = 25) -> datetime:
    return datetime(2026, 11, day, hour, tzinfo=ZONE)


DINNERS = {
    "plain": Dinner(RoastWish("turkey", 7.257), serve_at=at(18)),
    "stuffed, fan, tempered": Dinner(
        RoastWish("turkey", 6.0, stuffed=True),
        serve_at=at(19),
        oven=OvenWish(165.0, convection=True),
        temper_min=30.0,
        kitchen="licensed",
    ),
    "frozen, tomorrow": Dinner(RoastWish("turkey", 9.0, state="frozen"), serve_at=at(14, day=26)),
    "frozen, home, late": Dinner(RoastWish("turkey", 4.0, state="frozen"), serve_at=at(22, day=26), kitchen="home"),
    "frozen, next week": Dinner(RoastWish("turkey", 5.0, state="frozen"), serve_at=at(18, day=30)),
    "frozen, too soon": Dinner(RoastWish("turkey", 9.0, state="frozen"), serve_at=at(12)),
    "brined": Dinner(RoastWish("turkey", 6.0), serve_at=at(18, day=27), brine=BrineWish(wanted=True), covers=12),
    "no time to brine": Dinner(RoastWish(None, 6.0), serve_at=at(18), brine=BrineWish(wanted=True)),
    "injected": Dinner(RoastWish("turkey", 6.0, sold_as="injected"), serve_at=at(18), brine=BrineWish(wanted=True)),
    "a little late": Dinner(RoastWish("turkey", 6.35), serve_at=NOW.replace(hour=13, minute=40)),
    "too late": Dinner(RoastWish("turkey", 9.0), serve_at=at(13)),
    "a crowd": Dinner(RoastWish("turkey"), serve_at=at(18, day=28), covers=40, oven=OvenWish(count=2)),
    "beef": Dinner(RoastWish("beef_rib", 3.0, target_c=57.0), serve_at=at(18)),
    "goose, in already": Dinner(RoastWish("goose", 5.0), start_at=at(8), serve_at=at(13)),
}


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", DINNERS)
def test_every_plan_is_told_in_full(name, language):
    document = timetable_document(plan_dinner(DINNERS[name], NOW), Reader(NOW, language=language))
    assert json.loads(json.dumps(document, allow_nan=False)) == document
    assert document["tasks"]
    assert all(task["start"] <= task["end"] for task in document["tasks"])
    assert document["curve"][0]["minute"] == 0


def test_the_id_is_that_of_the_content():
    plan = plan_dinner(DINNERS["plain"], NOW)
    assert timetable_document(plan, Reader(NOW))["id"] == timetable_document(plan, Reader(NOW))["id"]
    assert timetable_document(plan, Reader(NOW))["id"] != timetable_document(plan, Reader(NOW, language="es"))["id"]


def test_the_reader_s_units_lead():
    plan = plan_dinner(DINNERS["plain"], NOW)
    assert "16 lb (7.3 kg)" in timetable_document(plan, Reader(NOW))["headline"]
    assert "7.3 kg (16 lb)" in timetable_document(plan, Reader(NOW, units="metric", clock="24h"))["headline"]
