"""Checks of a log. A `stop` once recorded stays until the action that answers it is recorded; a gap is never `ok`."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import pairwise

from turnspit.errors import Impossible, OutOfRange
from turnspit.message import Message
from turnspit.reference import KITCHENS, Kitchen
from turnspit.safety.courses import COURSES, Course, Point
from turnspit.safety.finding import GRADES, Finding, Grade, finding, grade, gravest_first, local_codes
from turnspit.safety.log import CORRECTS, Corrective, Log, LogEntry, LogKind

INTERVAL_MIN: Mapping[LogKind, float] = {
    "roast": 60.0,
    "cooling": 60.0,
    "hot_holding": 120.0,
    "cold_holding": 240.0,
    "thaw": 720.0,
}
"""How long between readings, unless the kitchen's own procedure says otherwise (common practice, no source)."""

INTERVAL_MIN_RANGE = (1.0, 1440.0)

RESTARTS: tuple[Corrective, ...] = ("reheated", "cooked_on")
"""Only heat starts the clocks anew: hours spent warm are not undone by cooling."""

GAP_RULE: Mapping[LogKind, str] = {
    "roast": "thermometer-decides",
    "cooling": "cooling-two-stage",
    "hot_holding": "hot-hold",
    "cold_holding": "cold-hold",
    "thaw": "thaw-refrigerator",
}


@dataclass(frozen=True, slots=True)
class Gap:
    """A stretch without a reading that is longer than the monitoring interval."""

    since: datetime
    until: datetime


@dataclass(frozen=True, slots=True)
class LogVerdict:
    """What a log shows.

    `findings` holds the stops that no recorded action has answered first, then what the standing readings show, local
    codes last. `closed` is True once the food was thrown away.
    """

    severity: Grade
    findings: tuple[Finding, ...]
    open_stops: tuple[Finding, ...]
    gaps: tuple[Gap, ...]
    closed: bool


def check_log(
    log: Log, now: datetime, kitchen: Kitchen | None = None, interval_min: float | None = None, finished: bool = False
) -> LogVerdict:
    """What a log shows as it stands at `now` (aware); what is dated later does not count.

    `interval_min` (1 to 1440) is the monitoring interval, by default that of the kind of log. `finished` tells that
    the food has been served or stored, so that no further reading is due. Unstated, the rules of both kitchens are
    applied and the stricter answer is given. Raises Impossible for a `now` without a zone, OutOfRange, Unknown.
    """
    if now.utcoffset() is None:
        raise Impossible("now", now, "has no time zone", "give the offset")
    if interval_min is not None:
        OutOfRange.check("interval_min", interval_min, *INTERVAL_MIN_RANGE, "give minutes, a day at most")
    log = log.until(now)
    allowed_min = INTERVAL_MIN[log.kind] if interval_min is None else interval_min
    kitchens = KITCHENS if kitchen is None else (kitchen,)
    verdicts = [_in_kitchen(log, now, each, allowed_min, finished) for each in kitchens]
    return max(verdicts, key=lambda verdict: GRADES.index(verdict.severity))


def _in_kitchen(log: Log, now: datetime, kitchen: Kitchen, interval_min: float, finished: bool) -> LogVerdict:
    actions = log.actions()
    closed = any(entry.action == "discarded" for entry in actions)
    open_stops: tuple[Finding, ...] = ()
    for state, seen_at in (*log.before_corrections(), *log.before_late_readings()):
        past, _ = _judged(state, seen_at, kitchen, finished=False)
        open_stops = _joined(open_stops, _unanswered(past, set(actions) - set(state.actions())))
    stops, standing = _judged(log, now, kitchen, finished=finished)
    open_stops = () if closed else _joined(open_stops, stops)
    gaps = () if closed else gaps_of([*log.readings(), *actions], now, interval_min, finished)
    told = [*open_stops, *_gap_findings(log.kind, gaps, kitchen)]
    if not closed:
        told += [found for found in standing if found.severity != "stop"]
        if not standing:
            told.append(finding(kitchen, GAP_RULE[log.kind], "warn", "measure", Message("safety-log-empty")))
    severity = grade(told)
    return LogVerdict(severity, (*gravest_first(told), local_codes(kitchen)), open_stops, gaps, closed)


def _judged(
    log: Log, now: datetime, kitchen: Kitchen, *, finished: bool
) -> tuple[tuple[Finding, ...], tuple[Finding, ...]]:
    """The stops still open at `now`, and the findings about the course since the last action."""
    open_stops: tuple[Finding, ...] = ()
    since: datetime | None = None
    for action in log.actions():
        findings = _course_findings(log, since, action.at, kitchen, finished=False, now=now)
        open_stops = _unanswered(_joined(open_stops, findings), (action,))
        since = action.at if action.action in RESTARTS else since
    findings = _course_findings(log, since, None, kitchen, finished=finished, now=now)
    return _joined(open_stops, findings), findings


def _unanswered(stops: Sequence[Finding], actions: Iterable[LogEntry]) -> tuple[Finding, ...]:
    """The stops that none of the actions answers."""
    done = {action.action for action in actions}
    return tuple(stop for stop in stops if done.isdisjoint(CORRECTS.get(stop.do, ("discarded",))))


def _course_findings(
    log: Log, since: datetime | None, until: datetime | None, kitchen: Kitchen, *, finished: bool, now: datetime
) -> tuple[Finding, ...]:
    """The findings about the readings after `since` and up to `until`, as they stood then, or stand at `now`."""
    points = tuple(
        Point(entry.at, entry.temperature_c, entry.station)
        for entry in log.readings()
        if entry.temperature_c is not None
        and (since is None or entry.at > since)
        and (until is None or entry.at <= until)
    )
    if not points:
        return ()
    end = until or max(now, points[-1].at)
    if finished and log.kind != "cooling":  # a food stored before it was cold is still on its clock
        end = points[-1].at
    return COURSES[log.kind](Course(log.item, points, end, since, finished), kitchen)


def _joined(stops: Sequence[Finding], more: Iterable[Finding]) -> tuple[Finding, ...]:
    """The stops and those among `more` that are new; the same stop is kept as it was first found."""
    known = {(stop.rule, stop.do) for stop in stops}
    return (*stops, *(found for found in more if found.severity == "stop" and (found.rule, found.do) not in known))


def gaps_of(
    entries: Sequence[LogEntry], now: datetime, interval_min: float, finished: bool = False
) -> tuple[Gap, ...]:
    """Where nothing was measured or done for longer than the interval, up to `now` unless the log is finished."""
    times = sorted(entry.at for entry in entries)
    if times and not finished:
        times.append(max(now, times[-1]))
    longest = timedelta(minutes=interval_min)
    return tuple(Gap(one, other) for one, other in pairwise(times) if other - one > longest)


def _gap_findings(kind: LogKind, gaps: Sequence[Gap], kitchen: Kitchen) -> list[Finding]:
    return [
        finding(kitchen, GAP_RULE[kind], "warn", "measure",
                Message("safety-gap", since=gap.since, until=gap.until), unknown=("temperature_c",))
        for gap in gaps
    ]  # fmt: skip
