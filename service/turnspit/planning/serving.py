"""Tasks from the rest to the cold: stock, gravy, carving, the table, leftovers."""

from __future__ import annotations

from datetime import datetime

from turnspit.message import Message
from turnspit.planning.hours import earlier, later, minutes
from turnspit.planning.remind import remind
from turnspit.planning.settle import Settled
from turnspit.planning.timetable import Task
from turnspit.planning.timing import Timing

STOCK_AFTER_MIN = 30.0
GRAVY_MIN = 25.0
COLD_WITHIN_MIN = 120.0
"""The two-hour rule; the clock is started when the roast is due out of the oven, the safer reading."""


def serving_tasks(settled: Settled, timing: Timing, now: datetime) -> tuple[Task, ...]:
    """Stock, gravy, carve, serve and the leftovers' deadline."""
    name = Message(f"roast-{settled.row.kind}")
    gravy = Task(
        "gravy",
        Message("planning-gravy"),
        Message("planning-gravy-salty-why" if settled.salted else "planning-gravy-why"),
        earlier(timing.carve_at, minutes(GRAVY_MIN)),
        timing.carve_at,
        "stove",
        slack_min=10.0,
        cautions=(remind("hot-hold"),),
    )
    carve = Task(
        "carve",
        Message(
            _carve_key(settled),
            roast=name,
            span_min=settled.carve_min,
            alone_min=settled.carve_alone_min,
            hands=settled.carving_hands,
            hot_c=settled.hot_hold_c,
        ),
        Message("planning-carve-why"),
        timing.carve_at,
        timing.serve_at,
        "counter",
        cautions=(remind("raw-juices"),),
    )
    serve = Task(
        "serve",
        Message("planning-serve", covers=settled.dinner.covers or 0),
        Message("planning-serve-why"),
        timing.serve_at,
        later(timing.serve_at, minutes(45)),
        "table",
        hands=False,
    )
    deadline = later(timing.out_by, minutes(COLD_WITHIN_MIN))
    cold = Task(
        "leftovers",
        Message("planning-leftovers", by=deadline),
        Message("planning-leftovers-why"),
        max(earlier(deadline, minutes(30)), timing.serve_at),
        max(deadline, later(timing.serve_at, minutes(10))),
        "refrigerator",
        cautions=(
            remind("cooling-two-stage" if settled.licensed or settled.stricter else "two-hours"),
            remind("two-hours"),
            remind("leftovers-days"),
            remind("reheat-165"),
        ),
    )
    return (*_stock(settled, timing, now), gravy, carve, serve, cold)


def _carve_key(settled: Settled) -> str:
    if settled.carving_hands > 1:
        return "planning-carve-many" if settled.holds_hot else "planning-carve-many-pink"
    if settled.whole_bird:
        return "planning-carve-bird"
    return "planning-carve-breast" if settled.row.kind == "turkey_breast" else "planning-carve"


def _stock(settled: Settled, timing: Timing, now: datetime) -> tuple[Task, ...]:
    """Neck and giblets simmer unsalted while the bird roasts."""
    at = later(timing.oven_in, minutes(STOCK_AFTER_MIN))
    if not settled.whole_bird or settled.state == "frozen" or at < now:
        return ()
    return (
        Task(
            "stock",
            Message("planning-stock"),
            Message("planning-stock-why"),
            at,
            earlier(timing.carve_at, minutes(GRAVY_MIN)),
            "stove",
            hands=False,
            slack_min=60.0,
        ),
    )
