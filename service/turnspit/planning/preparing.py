"""Tasks of the days before: shop, thaw, and the roast made ready for the oven."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, time, timedelta

from turnspit.heat import ThawForecast
from turnspit.message import Message
from turnspit.planning.hours import earlier, floor_step, later, minutes, not_after, not_before
from turnspit.planning.remind import remind
from turnspit.planning.route import Route
from turnspit.planning.settle import Settled
from turnspit.planning.timetable import Task
from turnspit.planning.timing import PREP_MIN

BUY_FRESH_BEFORE = timedelta(hours=30)
"""Fresh birds are bought one to two days before they are cooked (USDA FSIS, Let's Talk Turkey)."""

SHOP_HOURS = time(8, 0), time(20, 0)

WATER_CHANGE_MIN = 30
LAST_ICE_LEAST_MIN, LAST_ICE_IN_WATER_MIN = 60.0, 240.0
"""Less is not worth it; what has longer in cold water has its surface too warm for a licensed kitchen (3-501.13)."""


def shop_task(settled: Settled, needed_at: datetime, now: datetime) -> tuple[Task, ...]:
    """Buy the roast fresh a day or two before, where there is a day and nothing says it is in the house."""
    if settled.dinner.roast.state is not None or settled.dinner.roast.in_house:
        return ()
    at = not_after(earlier(needed_at, BUY_FRESH_BEFORE), *SHOP_HOURS)
    if at <= now:
        at = not_before(later(now, minutes(60)), *SHOP_HOURS)
        if settled.dinner.roast.mass_kg is not None or at > earlier(needed_at, minutes(60)):
            return ()
    # "Fresh ham" says so itself.
    key = "planning-shop-named" if settled.dinner.roast.kind == "fresh_ham" else "planning-shop"
    task = Task(
        "shop",
        Message(key, roast=_name(settled), mass_kg=settled.mass_kg, count=settled.count),
        Message("planning-shop-why"),
        at,
        later(at, minutes(60)),
        "shop",
        slack_min=(needed_at - at).total_seconds() / 60 - 60,
        cautions=(remind("cold-hold"),),
    )
    return (task,)


def thaw_tasks(route: Route) -> tuple[Task, ...]:
    """Thaw it where the route says; nothing for a roast that needs none."""
    if route.thaw is None or route.thaw_from is None or route.thaw_until is None:
        return ()
    spare_min = (route.thaw_until - route.thaw_from).total_seconds() / 60 - 60 * route.thaw.plan_h
    slack_min = max(0.0, spare_min)
    if route.water_from is None:
        in_water = route.thaw.case.method == "cold_water"
        return (_thaw(route, route.thaw, (route.thaw_from, route.thaw_until), slack_min, in_water),)
    return (
        _thaw(route, route.thaw, (route.thaw_from, route.water_from), slack_min, in_water=False),
        replace(
            _thaw(route, route.thaw, (route.water_from, route.thaw_until), slack_min, in_water=True), id="thaw_2"
        ),
    )


def _thaw(
    route: Route, thaw: ThawForecast, between: tuple[datetime, datetime], slack_min: float, in_water: bool
) -> Task:
    start, end = between
    key = "cold-water" if in_water else "refrigerator"
    details = [*_thaw_windows(thaw), Message("planning-thaw-check")]
    if in_water:
        details.insert(0, Message("planning-thaw-water-change", every_min=WATER_CHANGE_MIN))
    return Task(
        "thaw",
        Message(
            f"planning-thaw-{key}",
            roast=_name(route.settled),
            mass_kg=route.settled.mass_kg,
            count=route.settled.count,
        ),
        Message(f"planning-thaw-{key}-why", span_min=(end - start).total_seconds() / 60 - slack_min),
        start,
        end,
        "sink" if in_water else "refrigerator",
        hands=in_water,
        slack_min=slack_min,
        details=tuple(details),
        cautions=(remind("thaw-cold-water" if in_water else "thaw-refrigerator"), *thaw.cautions),
    )


def last_ice_tasks(settled: Settled, oven_in: datetime, now: datetime) -> tuple[Task, ...]:
    """What still holds ice goes on thawing from now on, in the cold or, with few hours left, in cold water; the roast
    is timed as it is, so that ice left in the cavity makes no dinner late."""
    until = earlier(oven_in, minutes(PREP_MIN))
    room_min = (until - now).total_seconds() / 60
    if settled.state != "part_frozen" or settled.brined or room_min < LAST_ICE_LEAST_MIN:
        return ()
    way = "cold-water" if room_min < LAST_ICE_IN_WATER_MIN else "refrigerator"
    task = Task(
        "thaw",
        Message(f"planning-last-ice-{way}", roast=_name(settled), at=until),
        Message("planning-last-ice-why"),
        now,
        until,
        "sink" if way == "cold-water" else "refrigerator",
        hands=way == "cold-water",
        details=(Message("planning-thaw-check"),),
        cautions=(remind(f"thaw-{way}"),),
    )
    return (task,)


def _thaw_windows(thaw: ThawForecast) -> tuple[Message, ...]:
    """The federal rule where there is one, and what was computed."""
    model = Message("planning-thaw-computed", low_min=60 * thaw.model_h.p10, high_min=60 * thaw.model_h.p90)
    if thaw.rule_h is None:
        return (model,)
    low_h, high_h = thaw.rule_h
    return Message("planning-thaw-rule", low_min=60 * low_h, high_min=60 * high_h), model


def ready_the_roast(settled: Settled, oven_in: datetime, now: datetime) -> tuple[Task, ...]:
    """Giblets, neck and plastic out, patted dry, trussed and seasoned; tempered only where asked for."""
    temper_min = settled.dinner.temper_min
    room_min = max(0.0, min(PREP_MIN, (oven_in - now).total_seconds() / 60))
    begin_at = floor_step(earlier(oven_in, minutes(room_min + temper_min)))
    begin_at = max(begin_at, now) if oven_in > now else begin_at
    season_at = max(begin_at, floor_step(earlier(oven_in, minutes(0.6 * room_min + temper_min))))
    ready_at = earlier(oven_in, minutes(temper_min))
    bird = settled.whole_bird and settled.state != "frozen"
    return (
        *((_giblets_out(settled, begin_at, season_at),) if bird else ()),
        _season(settled, season_at, ready_at),
        *((_temper(settled, ready_at, oven_in),) if temper_min else ()),
    )


def _giblets_out(settled: Settled, start: datetime, end: datetime) -> Task:
    return Task(
        "giblets_out",
        Message("planning-giblets", roast=_name(settled)),
        Message("planning-giblets-why"),
        start,
        end,
        "sink",
        cautions=(remind("no-washing"), remind("raw-juices")),
    )


def _season(settled: Settled, start: datetime, end: datetime) -> Task:
    """Truss or tie, salt by what it holds already, and stuff at the last moment."""
    from_frozen = settled.state == "frozen"
    key = "planning-truss" if settled.whole_bird else "planning-pat-dry" if settled.row.poultry else "planning-tie"
    key = "planning-season-frozen" if from_frozen else key
    salt = Message("planning-salt-lightly" if settled.salted else "planning-salt")
    rules = ["raw-juices", *(["no-washing"] if key == "planning-pat-dry" else [])]
    rules += ["stuffing-just-before", "stuffing-165"] if settled.stuffed else []
    rules += ["injected-no-brine"] if settled.sold_as != "plain" else []
    return Task(
        "truss_season",
        Message(key, roast=_name(settled)),
        Message(f"{key}-why"),
        start,
        end,
        "counter",
        details=(*(() if from_frozen else (salt,)), *((Message("planning-stuff"),) if settled.stuffed else ())),
        cautions=tuple(remind(rule) for rule in rules),
    )


def _temper(settled: Settled, start: datetime, end: datetime) -> Task:
    return Task(
        "temper",
        Message("planning-temper", roast=_name(settled), span_min=settled.dinner.temper_min),
        Message("planning-temper-why"),
        start,
        end,
        "counter",
        hands=False,
        cautions=(remind("two-hours"),),
    )


def _name(settled: Settled) -> Message:
    return Message(f"roast-{settled.row.kind}")
