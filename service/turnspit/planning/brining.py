"""Where the brine and the drying stand on the clock."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from turnspit.brine import BrineCase, BrinePlan, plan_brine
from turnspit.message import Message
from turnspit.planning.hours import earlier, later, minutes, not_after, not_before
from turnspit.planning.remind import remind
from turnspit.planning.settle import Settled
from turnspit.planning.timetable import Task
from turnspit.planning.timing import PREP_MIN

DRY_MIN = 60.0
MAKE_MIN = 120.0
USUAL_HOURS = 16.0


@dataclass(frozen=True, slots=True)
class Brining:
    """A brine with its place on the clock."""

    brine: BrinePlan
    make_at: datetime
    into_at: datetime
    out_at: datetime


def brine_for(settled: Settled) -> BrinePlan:
    """The brine for this roast, by the wish or the federal strength."""
    wish = settled.dinner.brine
    return plan_brine(
        BrineCase(
            kind=settled.row.bought_as,
            mass_kg=settled.mass_kg,
            count=settled.count,
            sold_as=settled.dinner.roast.sold_as,
            vessel_l=wish.vessel_l,
            water_l=wish.water_l,
            strength_percent=wish.strength_percent,
            hours=wish.hours,
            salt_kind=wish.salt_kind or "table",
        )
    )


def needed_before_oven_min(settled: Settled) -> float:
    """Minutes a thawed roast is wanted before the oven: preparation, and brine and drying where asked for."""
    if not settled.brined:
        return PREP_MIN
    hours = settled.dinner.brine.hours or USUAL_HOURS
    return PREP_MIN + DRY_MIN + 60 * hours


def schedule_brine(settled: Settled, oven_in: datetime, not_until: datetime) -> Brining | None:
    """The brine between `not_until` and the oven, in work hours; None where even the shortest has no room."""
    brine = brine_for(settled)
    if not brine.allowed:
        return None
    hours = (settled.dinner.work_from, settled.dinner.work_until)
    wished = settled.dinner.brine.hours or min(max(USUAL_HOURS, brine.hours_low), brine.hours_high)
    out_at = not_after(earlier(oven_in, minutes(PREP_MIN + DRY_MIN)), *hours)
    into_at = not_after(earlier(out_at, minutes(60 * wished)), *hours)
    if out_at - into_at > minutes(60 * brine.hours_high):
        into_at = not_before(earlier(out_at, minutes(60 * brine.hours_high)), *hours)
    earliest = not_before(later(not_until, minutes(MAKE_MIN)), *hours)
    into_at = max(into_at, earliest)
    if out_at - into_at < minutes(60 * min(brine.hours_low, wished)):
        return None
    return Brining(brine, earlier(into_at, minutes(MAKE_MIN)), into_at, out_at)


def brine_tasks(settled: Settled, brining: Brining, oven_in: datetime) -> tuple[Task, ...]:
    """Make and chill it, the roast in, out, and its skin dried in the cold."""
    brine = brining.brine
    hours = (brining.out_at - brining.into_at).total_seconds() / 3600
    roast = Message(f"roast-{settled.row.kind}")
    make = Task(
        "brine_make",
        Message("planning-brine-make", water_l=brine.water_l, salt_kg=brine.salt_g / 1000),
        Message("planning-brine-make-why", percent=brine.strength_percent),
        brining.make_at,
        brining.into_at,
        "stove",
        details=brine.steps,
        cautions=(remind("brine-cold"),),
    )
    into = Task(
        "brine_in",
        Message("planning-brine-in", roast=roast),
        Message("planning-brine-in-why", hours=round(hours), low=brine.hours_low, high=brine.hours_high),
        brining.into_at,
        brining.out_at,
        "refrigerator",
        hands=False,
        details=(Message("planning-brine-place", weight_kg=brine.full_weight_kg),),
        cautions=brine.cautions,
    )
    out = Task(
        "brine_out",
        Message("planning-brine-out", roast=roast),
        Message("planning-brine-out-why"),
        brining.out_at,
        later(brining.out_at, minutes(20)),
        "sink",
        cautions=(remind("brine-discard"), remind("raw-juices")),
    )
    dry = Task(
        "dry",
        Message("planning-dry", roast=roast),
        Message("planning-dry-why"),
        later(brining.out_at, minutes(20)),
        earlier(oven_in, minutes(PREP_MIN)),
        "refrigerator",
        hands=False,
    )
    return (make, into, out, dry)
