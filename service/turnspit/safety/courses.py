"""What a course of readings shows: roasting, cooling, hot and cold holding, thawing.

Between two readings the worse of both is assumed, and after the last it is taken to last: what was not measured earns
nothing. Each check looks at the whole course, so what was broken once stays broken whatever is measured later.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from itertools import pairwise, takewhile

from turnspit.message import Message
from turnspit.reference import Action, Kitchen, is_licensed
from turnspit.safety.finding import Finding, Grade, finding, limit, reaches, within
from turnspit.safety.foods import family
from turnspit.safety.log import LogKind
from turnspit.safety.question import SafetyQuestion
from turnspit.safety.questions.doneness import need
from turnspit.safety.questions.serving import TWO_STAGE, hot_limit_c
from turnspit.safety.questions.standing import clock_h

BIRD_PLACES = ("breast", "thigh", "wing")


@dataclass(frozen=True, slots=True)
class Point:
    """One reading of a course."""

    at: datetime
    core_c: float
    station: str = ""


@dataclass(frozen=True, slots=True)
class Course:
    """The readings of one food in the order of time, up to `now`; `item` is the subject ("turkey", "gravy").

    `since` is when it was reheated or chilled anew. `finished` tells that it was served or stored.
    """

    item: str
    points: tuple[Point, ...]
    now: datetime
    since: datetime | None = None
    finished: bool = False


def roast_course(course: Course, kitchen: Kitchen) -> tuple[Finding, ...]:
    """Every place must once have read what the food needs; a place not measured is not done."""
    hottest: dict[str, float] = {}
    for point in course.points:
        hottest[point.station] = max(point.core_c, hottest.get(point.station, point.core_c))
    if family(course.item) in ("poultry", None) and set(hottest) != {""}:
        hottest = {**dict.fromkeys(BIRD_PLACES, float("-inf")), **hottest}
    return tuple(_place(course, kitchen, station, core_c) for station, core_c in hottest.items())


def _place(course: Course, kitchen: Kitchen, station: str, core_c: float) -> Finding:
    wanted = need(SafetyQuestion("reading", course.item, place=station), kitchen)
    if core_c == float("-inf"):
        seen = Message("safety-place-not-measured", place=Message(f"safety-place-{station}"))
        return finding(kitchen, wanted.rule, _if_served(course, "stop"), "measure", seen, unknown=(station,))
    seen = Message("safety-reads", temperature_c=core_c, needed_c=wanted.core_c)
    if reaches(core_c, wanted.core_c):
        return finding(kitchen, wanted.rule, "ok", wanted.then, seen)
    action = Message("safety-do-cook-on-to", temperature_c=wanted.core_c)
    return finding(kitchen, wanted.rule, _if_served(course, wanted.below), "cook_on", seen, action=action)


def _if_served(course: Course, severity: Grade) -> Grade:
    """How grave it is: while it roasts a warning, once it was served what the rule says."""
    return severity if course.finished else "warn"


@dataclass(frozen=True, slots=True)
class Stage:
    """One stage of cooling: down to `below_c` within `allowed_h` of leaving 57 C."""

    name: str
    below_c: float
    allowed_h: float


def cooling_course(course: Course, kitchen: Kitchen) -> tuple[Finding, ...]:
    """The two stages, counted from the last of the hot readings it begins with.

    The Food Code's limits hold at home too: the consumer guidance prints none. A food first measured below 57 C has
    an unknown start, taken as that reading. Hot readings farther apart than the first stage may take do not prove
    that it stayed hot between them.
    """
    hot_c, middle_c, cold_c, first_h, total_h = (
        limit(TWO_STAGE, name, kitchen) for name in ("from_c", "middle_c", "cold_c", "first_max_h", "total_max_h")
    )
    hot = _hot_before_cooling(course.points, hot_c, first_h)
    start = hot[-1].at if hot else course.since or course.points[0].at
    later = [point for point in course.points if point.at >= start]
    unknown = () if hot or course.since else ("start",)
    stages = (Stage("middle", middle_c, first_h), Stage("cold", cold_c, total_h))
    found = [replace(_stage(kitchen, stage, start, later, course.now), unknown=unknown) for stage in stages]
    return (*found, *_rewarmed(course, kitchen, later, cold_c))


def _hot_before_cooling(points: Sequence[Point], hot_c: float, longest_h: float) -> tuple[Point, ...]:
    """The hot readings a cooling begins with, as far as they follow one another within so many hours."""
    hot = tuple(takewhile(lambda point: reaches(point.core_c, hot_c), points))
    apart = next(
        (n for n, (one, other) in enumerate(pairwise(hot), 1) if _hours(one.at, other.at) > longest_h), len(hot)
    )
    return hot[:apart]


def _stage(kitchen: Kitchen, stage: Stage, start: datetime, later: Sequence[Point], now: datetime) -> Finding:
    arrived = next((point for point in later if within(point.core_c, stage.below_c)), None)
    spent_h = _hours(start, now if arrived is None else arrived.at)
    seen_c = later[-1].core_c if arrived is None else arrived.core_c
    seen = Message("safety-cooled-to", temperature_c=seen_c, minutes=spent_h * 60)
    if not within(spent_h, stage.allowed_h):
        return finding(kitchen, TWO_STAGE, "stop", "discard", seen)
    if arrived is not None:
        return finding(kitchen, TWO_STAGE, "ok", "go_on", seen)
    left = Message(f"safety-do-cool-to-{stage.name}", minutes=(stage.allowed_h - spent_h) * 60)
    return finding(kitchen, TWO_STAGE, "info", "chill", seen, action=left)


def _rewarmed(course: Course, kitchen: Kitchen, later: Sequence[Point], cold_c: float) -> tuple[Finding, ...]:
    """Food that has become cold is held cold from then on."""
    cold_from = next((number for number, point in enumerate(later) if within(point.core_c, cold_c)), None)
    if cold_from is None:
        return ()
    kept = replace(course, points=tuple(later[cold_from:]))
    held = _held(kept, kitchen, Holding("cold-hold", "chill", cold_c))
    return () if held.severity == "ok" else (held,)


@dataclass(frozen=True, slots=True)
class Holding:
    """A limit food is kept on the safe side of: at or above `limit_c` where it is `hot`, else at or below."""

    rule: str
    do: Action
    limit_c: float
    hot: bool = False

    def inside(self, core_c: float) -> bool:
        """Whether a temperature keeps the limit."""
        return reaches(core_c, self.limit_c) if self.hot else within(core_c, self.limit_c)


def hot_course(course: Course, kitchen: Kitchen) -> tuple[Finding, ...]:
    """Hot holding: every stretch that may have been too cool counts towards the hours allowed."""
    return (_held(course, kitchen, Holding("hot-hold", "reheat", hot_limit_c(course.item, kitchen), hot=True)),)


def cold_course(course: Course, kitchen: Kitchen) -> tuple[Finding, ...]:
    """Cold holding, in the same way."""
    return (_held(course, kitchen, Holding("cold-hold", "chill", limit("cold-hold", "food_max_c", kitchen))),)


def thaw_course(course: Course, kitchen: Kitchen) -> tuple[Finding, ...]:
    """Thawing: the warmest raw part, its hours above 5 C in a licensed kitchen, in the danger zone at home."""
    if is_licensed(kitchen):
        part_c = limit("thaw-four-hours", "part_max_c", kitchen)
        return (_held(course, kitchen, Holding("thaw-four-hours", "chill", part_c)),)
    return (_held(course, kitchen, Holding("thaw-refrigerator", "chill", limit("cold-hold", "food_max_c", kitchen))),)


def _held(course: Course, kitchen: Kitchen, holding: Holding) -> Finding:
    """Whether the hours that may have been outside the limit stay within those allowed."""
    outside_h = hours_outside(course.points, course.now, holding.inside)
    if outside_h == 0.0 and holding.inside(course.points[-1].core_c):
        seen = Message("safety-held", temperature_c=holding.limit_c)
        return finding(kitchen, holding.rule, "ok", "go_on", seen)
    seen = Message("safety-outside-for", temperature_c=course.points[-1].core_c, minutes=outside_h * 60)
    if within(outside_h, clock_h(SafetyQuestion("left_out", course.item), kitchen)):
        return finding(kitchen, holding.rule, "warn", holding.do, seen)
    return finding(kitchen, holding.rule, "stop", "discard", seen)


def hours_outside(points: Sequence[Point], now: datetime, inside: Callable[[float], bool]) -> float:
    """Hours in which the food may have been outside its limit: every stretch with a reading outside at either end."""
    total = sum(
        _hours(one.at, other.at)
        for one, other in pairwise(points)
        if not (inside(one.core_c) and inside(other.core_c))
    )
    if points and not inside(points[-1].core_c):
        total += _hours(points[-1].at, now)
    return total


def _hours(start: datetime, end: datetime) -> float:
    return max(0.0, (end - start).total_seconds() / 3600)


COURSES: Mapping[LogKind, Callable[[Course, Kitchen], tuple[Finding, ...]]] = {
    "roast": roast_course,
    "cooling": cooling_course,
    "hot_holding": hot_course,
    "cold_holding": cold_course,
    "thaw": thaw_course,
}
