"""Tasks at the oven: heat it, roast, baste, check, out, rest."""

from __future__ import annotations

from datetime import datetime

from turnspit.message import Caution, Message
from turnspit.planning.hours import earlier, floor_step, later, minutes
from turnspit.planning.remind import remind
from turnspit.planning.settle import Settled
from turnspit.planning.timetable import Task
from turnspit.planning.timing import Timing

PREHEAT_MIN = 20.0
BASTE_SLACK_MIN = 45.0
BASTING_COST_MIN = 4.0
"""What one basting adds to the roast: computed, 3.7 to 4.3 min for turkeys of 4 to 10 kg (tests/planning)."""

PROBE_PLACES = {True: "planning-probe-bird", False: "planning-probe-meat"}


def oven_tasks(settled: Settled, timing: Timing, now: datetime) -> tuple[Task, ...]:
    """From a hot oven to a rested roast."""
    name = Message(f"roast-{settled.row.kind}")
    heat_at = earlier(timing.oven_in, minutes(PREHEAT_MIN))
    heat_at = max(heat_at, min(now, timing.oven_in))
    heat = Task(
        "oven_on",
        Message("planning-oven-on", oven_c=settled.oven_c, fan="yes" if settled.convection else "no"),
        Message("planning-oven-on-why"),
        heat_at,
        timing.oven_in,
        "oven",
        hands=False,
    )
    start_cautions = [remind("raw-juices")]
    if settled.state == "frozen":
        start_cautions.append(remind("from-frozen"))
    roast = Task(
        "roast_in",
        Message("planning-roast-in", roast=name, count=settled.count, mass_kg=settled.mass_kg, oven_c=settled.oven_c),
        Message(
            "planning-roast-in-why", low_min=timing.forecast.ready_min.p10, high_min=timing.forecast.ready_min.p90
        ),
        timing.oven_in,
        timing.out_by,
        "oven",
        hands=False,
        slack_min=max(0.0, (timing.out_by - timing.ready.p90).total_seconds() / 60),
        details=_in_details(settled),
        cautions=tuple(start_cautions),
        window=timing.ready,
    )
    return (
        heat,
        roast,
        *_bastes(settled, timing),
        *_frozen_giblets(settled, timing),
        _check(settled, timing),
        *_hold(settled, timing),
        _out_and_rest(settled, timing, name),
    )


def _in_details(settled: Settled) -> tuple[Message, ...]:
    details = [Message("planning-rack-bird" if settled.row.poultry else "planning-rack")]
    if settled.row.poultry:
        details.append(Message("planning-tent"))
    if settled.per_oven > 1:
        details.append(Message("planning-apart", count=settled.per_oven))
    return tuple(details)


def _bastes(settled: Settled, timing: Timing) -> tuple[Task, ...]:
    """Brush with butter and drippings until the checks begin; the forecast has paid for each opening."""
    found = []
    for number, minute in enumerate(settled.bastings_min, 1):
        at = floor_step(later(timing.oven_in, minutes(minute)))
        if at >= timing.check_from:
            break
        found.append(
            Task(
                f"baste_{number}",
                Message("planning-baste"),
                Message("planning-baste-why", cost_min=BASTING_COST_MIN),
                at,
                later(at, minutes(5)),
                "oven",
                slack_min=BASTE_SLACK_MIN,
            )
        )
    return tuple(found)


def _frozen_giblets(settled: Settled, timing: Timing) -> tuple[Task, ...]:
    """A bird roasted from frozen gives up its giblet bag only once the cavity has thawed."""
    if settled.state != "frozen" or not settled.row.poultry:
        return ()
    at = floor_step(later(timing.oven_in, minutes(0.5 * timing.forecast.ready_min.p50)))
    return (
        Task(
            "giblets_out",
            Message("planning-giblets-frozen"),
            Message("planning-giblets-frozen-why"),
            at,
            later(at, minutes(10)),
            "oven",
            slack_min=30.0,
            cautions=(remind("raw-juices"),),
        ),
    )


def _check(settled: Settled, timing: Timing) -> Task:
    probe = Message(PROBE_PLACES[settled.row.poultry])
    return Task(
        "check",
        Message("planning-check", pull_c=timing.forecast.pull_c),
        Message("planning-check-why", p10=timing.ready.p10, p90=timing.ready.p90),
        timing.check_from,
        timing.out_by,
        "oven",
        details=(probe, *((Message("planning-probe-stuffing"),) if settled.stuffed else ())),
        cautions=tuple(_done_cautions(settled)),
        window=timing.ready,
    )


def _done_cautions(settled: Settled) -> list[Caution]:
    if not settled.row.poultry:
        return []
    found = [remind("poultry-165"), remind("colour-no-proof")]
    return [*found, remind("stuffing-165")] if settled.stuffed else found


def _hold(settled: Settled, timing: Timing) -> tuple[Task, ...]:
    """An early finish is a task of its own: held hot, or, where heat would cook it on, on the two-hour clock."""
    early_min = (timing.out_by - timing.ready.p10).total_seconds() / 60
    if early_min < 10:
        return ()
    hot_c, kind = settled.hot_hold_c, "hold" if settled.holds_hot else "hold-warm"
    return (
        Task(
            "hold",
            Message(f"planning-{kind}", hot_c=hot_c),
            Message(f"planning-{kind}-why", early_min=early_min, hot_c=hot_c),
            timing.check_from,
            timing.out_by,
            "oven" if settled.holds_hot else "counter",
            hands=False,
            cautions=(remind("hot-hold" if settled.holds_hot else "two-hours"),),
        ),
    )


def _out_and_rest(settled: Settled, timing: Timing, name: Message) -> Task:
    forecast = timing.forecast
    peak = forecast.peak_c[forecast.deciding_station]
    rise_k = max(0.0, peak.p50 - forecast.pull_c)
    return Task(
        "rest",
        Message("planning-rest", roast=name, count=settled.count, pull_c=forecast.pull_c, span_min=settled.rest_min),
        Message("planning-rest-why", rise_k=rise_k, station=Message(f"planning-station-{forecast.deciding_station}")),
        timing.out_by,
        timing.carve_at,
        "counter",
        hands=False,
        details=_rest_details(settled, forecast.pull_c),
        cautions=(remind("poultry-165"),) if settled.row.poultry else (remind("meat-145"),),
    )


def _rest_details(settled: Settled, pull_c: float) -> tuple[Message, ...]:
    """How long, and, for meat pulled below its safe minimum, the measurement the plan then asks for."""
    details = [Message("planning-rest-long" if settled.large else "planning-rest-short")]
    if pull_c < settled.row.safe_c <= settled.target_c:
        details.append(Message("planning-measure-before-carving", safe_c=settled.row.safe_c))
    return tuple(details)
