"""A dinner in, a timetable out."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime

from turnspit.errors import Impossible
from turnspit.heat import RoastForecast
from turnspit.message import SEVERITIES, Caution, Message
from turnspit.planning.brining import Brining, brine_for, brine_tasks, schedule_brine
from turnspit.planning.dinner import Dinner
from turnspit.planning.hours import earlier, in_work_hours, minutes
from turnspit.planning.lawful import findings_of, within_the_rules, within_the_rules_as_timed
from turnspit.planning.preparing import last_ice_tasks, ready_the_roast, shop_task, thaw_tasks
from turnspit.planning.remind import remind
from turnspit.planning.roasting import oven_tasks
from turnspit.planning.route import Route
from turnspit.planning.serving import serving_tasks
from turnspit.planning.settle import Settled, settle
from turnspit.planning.timetable import Task, Timetable
from turnspit.planning.timing import PREP_MIN
from turnspit.planning.ways import other_ways, routes
from turnspit.reference import rule
from turnspit.safety import Finding


def plan_dinner(dinner: Dinner, now: datetime) -> Timetable:
    """The timetable for `dinner` as seen at `now` (aware; its zone is the kitchen's).

    The first way that meets the wish is chosen, in the order of the trade: as it is, thawed in the refrigerator, in
    cold water, from frozen. Where none does, the timetable says so first and is made for the nearest dinner that can
    be served safely; the other ways stand beside it. Raises Impossible or OutOfRange (errors) for what no plan can
    serve: a past dinner, a mass or oven beyond the model.
    """
    if now.tzinfo is None:
        raise Impossible("now", now.isoformat(), "has no offset", "give it as ISO 8601 with its offset from UTC")
    settled, broken = within_the_rules(settle(dinner, now))
    weighed, chosen = _weigh(settled, now)
    settled, slow = within_the_rules_as_timed(settled, chosen)
    if slow:
        weighed, chosen = _weigh(settled, now)
    return _timetable(settled, weighed, chosen, (*broken, *slow), now)


def _weigh(settled: Settled, now: datetime) -> tuple[tuple[Route, ...], Route]:
    """The ways there are, and the first of them that can be gone."""
    wished = routes(settled, now)
    others = () if any(route.way.possible for route in wished) else other_ways(settled, now)
    chosen = next((route for route in (*wished, *others) if route.way.possible), None)
    if chosen is None:
        wish, way_out = (
            settled.dinner.serve_at or settled.dinner.start_at,
            "ask for a smaller roast or a later dinner",
        )
        raise Impossible("serve_at", wish, "cannot be met", way_out)
    return (*wished, *others), chosen


def _timetable(
    settled: Settled, weighed: tuple[Route, ...], chosen: Route, broken: tuple[Finding, ...], now: datetime
) -> Timetable:
    timing = chosen.timing
    ready_from = earlier(timing.oven_in, minutes(PREP_MIN + chosen.settled.dinner.temper_min))
    brining, notes = _brining(settled, chosen, now)
    roast = replace(chosen.settled, brined=brining is not None)
    tasks = (
        *shop_task(roast, brining.make_at if brining else ready_from, now),
        *thaw_tasks(chosen),
        *last_ice_tasks(roast, timing.oven_in, now),
        *(brine_tasks(roast, brining, timing.oven_in) if brining else ()),
        *ready_the_roast(roast, timing.oven_in, now),
        *oven_tasks(roast, timing, now),
        *serving_tasks(roast, timing, now),
    )
    ahead = tuple(sorted((task for task in tasks if task.end > now), key=lambda task: (task.start, task.end)))
    brine_h = (brining.out_at - brining.into_at).total_seconds() / 3600 if brining else None
    found = [*broken, *findings_of(roast, chosen, brine_h)]
    cautions = _gathered(
        [*(each.caution for each in found), *timing.forecast.cautions, *_brine_refusal(settled)], ahead
    )
    return Timetable(
        settled.dinner,
        as_wished=chosen is weighed[0] and not broken,
        headline=_headline(settled, weighed[0], chosen, broken, now),
        serve_at=timing.serve_at,
        tasks=ahead,
        ways=tuple(replace(route.way, chosen=route is chosen) for route in weighed) if len(weighed) > 1 else (),
        oven_in_at=timing.oven_in,
        check_from=timing.check_from,
        ready=timing.ready,
        pull_c=timing.forecast.pull_c,
        forecast=timing.forecast,
        thaw=chosen.thaw,
        brine=brining.brine if brining else None,
        assumptions=(*settled.assumptions, *_of_the_model(timing.forecast), *notes, *_night_work(settled, ahead)),
        cautions=cautions,
        sources=tuple(dict.fromkeys(rule(found.rule).citation for found in cautions)),
    )


SAID_ALREADY = ("heat-oven-still", "heat-oven-fan", "heat-thawed")
"""What the heat room assumes and the plan has said in its own words."""


def _of_the_model(forecast: RoastForecast) -> tuple[Message, ...]:
    return tuple(message for message in forecast.assumptions if message.key not in SAID_ALREADY)


def _brining(settled: Settled, chosen: Route, now: datetime) -> tuple[Brining | None, tuple[Message, ...]]:
    """The brine where it is wanted and has room, else why not."""
    if not settled.brined:
        return None, ()
    brining = (
        schedule_brine(settled, chosen.timing.oven_in, chosen.thaw_until or now) if chosen.settled.brined else None
    )
    if brining is None:
        return None, (Message("planning-no-time-for-brine", least_h=brine_for(settled).hours_low),)
    return brining, ()


def _brine_refusal(settled: Settled) -> tuple[Caution, ...]:
    """A wish to brine what was sold salted is refused with its rule."""
    wanted = settled.dinner.brine.wanted and settled.sold_as != "plain"
    return brine_for(settled).cautions if wanted else ()


def _headline(settled: Settled, first: Route, chosen: Route, broken: tuple[Finding, ...], now: datetime) -> Message:
    timing, name = chosen.timing, Message(f"roast-{chosen.settled.row.kind}")
    key = "planning-headline"
    if timing.oven_in < now:
        key = "planning-headline-in" if timing.check_from > now else "planning-headline-due"
    plain = Message(
        key,
        roast=name,
        mass_kg=chosen.settled.mass_kg,
        count=chosen.settled.count,
        oven_in=timing.oven_in,
        check_from=timing.check_from,
        serve_at=timing.serve_at,
    )
    if broken:
        plain = Message("planning-headline-refused", seen=broken[0].seen, action=broken[0].action, plan=plain)
    if chosen is first:
        return plain
    if chosen.way.id == "later":
        wished = settled.dinner.serve_at or chosen.timing.serve_at
        return Message("planning-headline-later", wished=wished, why=first.way.why, plan=plain)
    return Message("planning-headline-other", why=first.way.why, way=chosen.way.title, plan=plain)


def _night_work(settled: Settled, tasks: Iterable[Task]) -> tuple[Message, ...]:
    """What cannot be moved into the hours of work is said."""
    hours = settled.dinner.work_from, settled.dinner.work_until
    early = [task for task in tasks if task.hands and not in_work_hours(task.start, *hours)]
    return (Message("planning-outside-hours", at=early[0].start),) if early else ()


def _gathered(found: Iterable[Caution], tasks: Iterable[Task]) -> tuple[Caution, ...]:
    """Each rule once, at its highest severity, the gravest first; that local codes prevail stands last."""
    everything = [*found, *(one for task in tasks for one in task.cautions)]
    graver: dict[str, Caution] = {}
    for one in everything:
        kept = graver.get(one.rule)
        if kept is None or SEVERITIES.index(one.severity) > SEVERITIES.index(kept.severity):
            graver[one.rule] = one
    graver.pop("local-codes", None)
    ordered = sorted(graver.values(), key=lambda one: -SEVERITIES.index(one.severity))
    return (*ordered, remind("local-codes"))
