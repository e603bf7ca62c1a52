"""Thawed in the refrigerator and the last of the ice in cold water, where the refrigerator alone comes too late."""

from __future__ import annotations

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from turnspit.heat import ThawCase, forecast_thaw
from turnspit.planning import Dinner, RoastWish, plan_dinner

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))
WISH = RoastWish(kind="turkey", mass_kg=8.165, state="frozen")


def test_both_in_turn_is_chosen_when_the_refrigerator_alone_is_late() -> None:
    plan = plan_dinner(Dinner(WISH, serve_at=datetime(2026, 11, 29, 17, 0, tzinfo=NOW.tzinfo)), NOW)
    chosen = next(way for way in plan.ways if way.chosen)
    assert chosen.id == "both"
    assert not next(way for way in plan.ways if way.id == "refrigerator").possible
    cold, water = (next(task for task in plan.tasks if task.id == name) for name in ("thaw", "thaw_2"))
    assert cold.start == NOW
    assert cold.end == water.start
    assert (cold.place, water.place) == ("refrigerator", "sink")
    assert plan.oven_in_at is not None
    assert plan.oven_in_at - water.end == timedelta(minutes=45)


def test_the_whole_takes_what_was_computed_and_stays_within_four_warm_hours() -> None:
    plan = plan_dinner(Dinner(WISH, serve_at=datetime(2026, 11, 29, 17, 0, tzinfo=NOW.tzinfo)), NOW)
    assert plan.thaw is not None
    refrigerator_h = plan.thaw.case.refrigerator_h
    again = forecast_thaw(ThawCase("turkey", 8.165, "cold_water", refrigerator_h=refrigerator_h))
    room_h = (next(task.end for task in plan.tasks if task.id == "thaw_2") - NOW).total_seconds() / 3600
    assert again.plan_h <= room_h
    assert again.surface_above_5c_h.p90 + 0.75 <= 4.0


def test_with_time_enough_the_refrigerator_does_it_alone() -> None:
    plan = plan_dinner(Dinner(WISH, serve_at=datetime(2026, 12, 2, 17, 0, tzinfo=NOW.tzinfo)), NOW)
    assert not any(task.id == "thaw_2" for task in plan.tasks)
    assert next(task for task in plan.tasks if task.id == "thaw").place == "refrigerator"


def test_too_little_time_is_for_neither() -> None:
    plan = plan_dinner(Dinner(WISH, serve_at=NOW + timedelta(hours=30)), NOW)
    assert "both" not in {way.id for way in plan.ways if way.possible}
