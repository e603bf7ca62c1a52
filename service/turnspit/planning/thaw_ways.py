"""The ways to thaw a roast in time: in the refrigerator, in cold water, or in both in turn."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

from turnspit.heat import ThawCase, ThawForecast, ThawMethod, forecast_thaw
from turnspit.message import Message, Value
from turnspit.planning.brining import needed_before_oven_min
from turnspit.planning.hours import ceil_step, earlier, floor_step, in_work_hours, later, minutes, not_after
from turnspit.planning.route import Route, title
from turnspit.planning.settle import Settled
from turnspit.planning.timetable import Way
from turnspit.planning.timing import PREP_MIN, Timing

RAW_ABOVE_5C_LIMIT_H = 4.0
"""Food Code 3-501.13: no thawed raw part above 5 C (41 F) for more than four hours, preparation included."""
LEAST_REFRIGERATOR_H = 6.0
"""In the cold before the water; less of it is not worth telling apart."""
HALVINGS = 7


def thawed_first(settled: Settled, timing: Timing, now: datetime) -> tuple[Route, ...]:
    """The ways that thaw it, the safest first; both in turn only where the refrigerator alone comes too late."""
    refrigerator = _by_refrigerator(settled, timing, now)
    both = None if refrigerator.way.possible else _by_both(settled, timing, now)
    return (refrigerator, *((both,) if both else ()), _by_cold_water(settled, timing, now))


def _thaw(settled: Settled, method: ThawMethod) -> ThawForecast:
    return forecast_thaw(ThawCase(settled.row.kind, settled.mass_kg, method, seed=settled.dinner.seed))


def _thaw_in_both(settled: Settled, refrigerator_h: float) -> ThawForecast:
    case = ThawCase(settled.row.kind, settled.mass_kg, "cold_water", seed=settled.dinner.seed)
    return forecast_thaw(replace(case, refrigerator_h=refrigerator_h))


def _by_refrigerator(settled: Settled, timing: Timing, now: datetime) -> Route:
    thaw = _thaw(settled, "refrigerator")
    hours = (settled.dinner.work_from, settled.dinner.work_until)
    until = earlier(timing.oven_in, minutes(needed_before_oven_min(settled)))
    start = floor_step(not_after(earlier(until, minutes(60 * thaw.plan_h)), *hours))
    possible = start >= now
    key = "planning-way-refrigerator-why" if possible else "planning-way-refrigerator-late-why"
    why = Message(key, span_min=60 * thaw.plan_h, at=start)
    way = Way("refrigerator", title("refrigerator", settled), why, possible, timing.serve_at, start, timing.oven_in)
    return Route(way, settled, timing, thaw, start, until)


def _by_cold_water(settled: Settled, timing: Timing, now: datetime) -> Route:
    thaw = _thaw(settled, "cold_water")
    dry = replace(settled, brined=False)
    until = earlier(timing.oven_in, minutes(PREP_MIN))
    start = floor_step(earlier(until, minutes(60 * thaw.plan_h)))
    attended = all(in_work_hours(at, settled.dinner.work_from, settled.dinner.work_until) for at in (start, until))
    attended = attended and start.date() == until.date()
    lawful = _lawful(settled, thaw)
    if not lawful:
        why = Message(
            "planning-way-cold-water-licensed-why",
            warm_h=round(_warm_h(thaw), 1),
            named="no" if settled.stricter else "yes",
        )
    elif start >= now and not attended:
        why = Message("planning-way-cold-water-night-why", span_min=60 * thaw.plan_h, at=start)
    else:
        why = Message("planning-way-cold-water-why", span_min=60 * thaw.plan_h, at=start)
    possible = lawful and attended and start >= now
    way = Way("cold_water", title("cold-water", settled), why, possible, timing.serve_at, start, timing.oven_in)
    return Route(way, dry, timing, thaw, start, until)


def _by_both(settled: Settled, timing: Timing, now: datetime) -> Route | None:
    """In the refrigerator from now on, the rest of the ice in cold water just before it is made ready; None where
    even that comes too late."""
    dry, start = replace(settled, brined=False), ceil_step(now)
    until = earlier(timing.oven_in, minutes(PREP_MIN))
    room_h = (until - start).total_seconds() / 3600
    if room_h < LEAST_REFRIGERATOR_H or _thaw_in_both(settled, LEAST_REFRIGERATOR_H).plan_h > room_h:
        return None
    low_h, high_h = LEAST_REFRIGERATOR_H, room_h
    for _ in range(HALVINGS):
        middle_h = (low_h + high_h) / 2
        fits = _thaw_in_both(settled, middle_h).plan_h <= room_h
        low_h, high_h = (middle_h, high_h) if fits else (low_h, middle_h)
    thaw = _thaw_in_both(settled, low_h)
    water_from = floor_step(later(start, minutes(60 * low_h)))
    hours = settled.dinner.work_from, settled.dinner.work_until
    attended = (
        in_work_hours(water_from, *hours) and in_work_hours(until, *hours) and water_from.date() == until.date()
    )
    possible = attended and _lawful(settled, thaw)
    said: dict[str, Value] = {"span_min": 60 * (thaw.plan_h - low_h), "at": start, "water_from": water_from}
    key = "planning-way-both-why" if possible else "planning-way-both-not-why"
    way = Way("both", title("both", settled), Message(key, **said), possible, timing.serve_at, start, timing.oven_in)
    return Route(way, dry, timing, thaw, start, until, water_from)


def _lawful(settled: Settled, thaw: ThawForecast) -> bool:
    """Whether its surface stays above 5 C no longer than a licensed kitchen may allow, where that rule holds."""
    return _warm_h(thaw) <= RAW_ABOVE_5C_LIMIT_H or not (settled.licensed or settled.stricter)


def _warm_h(thaw: ThawForecast) -> float:
    return thaw.surface_above_5c_h.p90 + PREP_MIN / 60
