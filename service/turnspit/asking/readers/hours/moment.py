"""Moments: clock times and days of the line put together, and what each is for: serving, putting in, or a reading.

Precedence: a cue just before the time, then one just after, then serving. The half of the day comes from am or pm,
the day
("tonight"), the meal, and else the next such time after now; for what has happened, the last such time before now.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta

from turnspit.asking.readers.hours.bare_clock import clocks, goes_in, meal_over_is
from turnspit.asking.readers.hours.clock import Clock, digits_clock
from turnspit.asking.readers.hours.day import Day
from turnspit.asking.readers.hours.just_in import just_in
from turnspit.asking.readers.hours.next_hour import at_clock, halves, last_before, next_after
from turnspit.asking.readers.hours.past import left_at, thawed_on
from turnspit.asking.readers.hours.put_in import asks_its_end, goes_in_at, is_turned_on, off_since, oven_stopped_at
from turnspit.asking.readers.talk.bare import is_of_the_roast
from turnspit.asking.scene import Scene

_SERVE, _START, _STARTED, _READ = "serve_at", "start_at", "started", "reading.at"
_ROLES = {
    "<meal>": _SERVE, "<serve>": _SERVE, "<started>": _STARTED, "<start>": _START, "<temperature_read>": _READ,
}  # fmt: skip
_AFTER_COSTS = 0.5
_LONGEST_ROAST = timedelta(hours=14)
_ROLE_REACH = 4.5


@dataclass(frozen=True, slots=True)
class _Time:
    place: int
    clock: Clock
    role: str
    cue: int | None
    meal: str


def read(scene: Scene) -> None:
    """Put `serve_at`, `start_at` and `reading.at`; a day without a time is left in `scene.hints["day"]`."""
    times_told = _without_for(scene, _without_now(scene, clocks(scene)))
    claims = _claims(scene, [place for place, _ in times_told])
    for place, clock in times_told:
        if oven_stopped_at(scene, place):
            off_since(scene, clock)
    times = [
        _role(scene, place, clock, claims)
        for place, clock in times_told
        if not (oven_stopped_at(scene, place) or is_turned_on(scene, place))
    ]
    for place, _ in scene.find("<starts_now>"):
        if not any(found.role == _STARTED for found in times):
            scene.put("start_at", scene.now.isoformat(), "moment: in just now", place, keep=True)
    days = [(place, item.tags["<when_day>"]) for place, item in scene.find("<when_day>", unused=True)]
    if times:
        # "bought 2 days ago, dinner at 6": that day is not of the dinner.
        days = [
            (place, day)
            for place, day in days
            if "<duration>" not in scene.items[place] or _is_coming(scene, place, day)
        ]
    if any(found.role == _SERVE for found in times):
        # "para las doce de la noche, lo macero desde anoche"
        days = [row for row in days if not _is_since(scene, row[0])]
    if len(days) > 1:
        # "thawed tuesday, roasting saturday", "thawing since monday, for thursday": the roast's day is the other.
        past = [place for place, _ in days if thawed_on(scene, place) or _is_since(scene, place)]
        days = [row for row in days if row[0] not in past] or days
    if any(found.role == _SERVE and not _of_another_event(scene, found) for found in times):
        times = [found for found in times if not _of_another_event(scene, found)]
    ranked = sorted(
        times,
        key=lambda found: (
            found.meal == "",
            not _put_off(scene, found),
            not (found.cue is not None and "<meal>" in scene.items[found.cue]),
            _of_guests(scene, found),
            found.cue is None,
            found.place,
        ),
    )
    for found in ranked:
        if _only_stood(scene, found, _day_for(found, days, times)):
            continue
        if found.role in (_START, _STARTED) and scene.nearest(found.place, "<habit>", reach=5) is not None:
            # "my grandmother always put hers in at six".
            continue
        _put(scene, found, _day_for(found, days, times))
    if days and not times:
        scene.hints["day"] = days[0][1].on(scene.now)
        scene.hints["day_half"] = days[0][1].half


def _is_since(scene: Scene, place: int) -> bool:
    return place > 0 and scene.items[place - 1].words.endswith(("since", "desde"))


# What stands before the hour of something else than the dinner or the roast.
_NO_DINNER = ("<other_event>", "<roast>", "<meal>", "<serve>", "<break>", "<start>", "<started>")
_TAKEN_OUT = ("took it out", "took out", "pulled it", "pulled", "came out", "took", "lo saque", "saque")


def _of_another_event(scene: Scene, found: _Time) -> bool:
    """`starters at 5`, `church lets out 12:15`, `oven free from noon`."""
    for _, at, item in scene.walk(found.place, -1):
        if "<other_event>" in item:
            return found.cue is None or found.cue >= found.place or found.cue == at
        if any(tag in item for tag in _NO_DINNER):
            break
    for_at = scene.after_is(found.place, "<for>")
    if for_at is not None and scene.after_is(for_at, "<clock>") is not None:
        # "half four for half five"
        return True
    before = [item.words for item in scene.items[max(0, found.place - _CLAUSE) : found.place]]
    free = before[-1:] == ["free from"] or bool({"from", "until", "till", "til"}.intersection(before[-2:]))
    return free and any(words.startswith(_TAKEN) for words in before)


_TAKEN = ("free", "busy", "taken", "full", "available")


def _was_taken_out(scene: Scene, found: _Time) -> bool:
    """`took it out at 9:50`: what was done, and no dinner."""
    before = [item.words for item in scene.items[max(0, found.place - _CLAUSE) : found.place]]
    return found.role == _SERVE and any(words in _TAKEN_OUT for words in before)


_CLAUSE = 6


def _is_coming(scene: Scene, place: int, day: Day) -> bool:
    on = day.on(scene.now)
    return on is None or on >= scene.now.date() or scene.before_is(place, "<meal>") is not None


def _without_now(scene: Scene, told: list[tuple[int, Clock]]) -> list[tuple[int, Clock]]:
    """The times without that of the clock itself: `on the stove since 9, it's 1 now`; it ends what began then."""
    now = next(((place, clock) for place, clock in [*told, *_bare(scene)] if _is_now(scene, place)), None)
    if now is None and len(told) > 1 and scene.has("<out>") and not scene.has("<meal>", "<serve>"):
        # "delivered at 9 and left on the doorstep until 2".
        now = next((row for row in told if scene.before_is(row[0], "'until", "'till", "'til", "'hasta")), None)
    if now is None or (
        len(told) == 1 and not scene.has("<started>", "<out>", "<been_in>", "<temperature_read>", "<danger>")
    ):
        return told
    since = next(
        (row for row in told if scene.before_is(row[0], "<started>", "<at>") is not None and row != now), None
    )
    if since is not None and scene.has("<out>", "<started>") and not scene.has("<temperature_read>"):
        spans = 12 if now[1].is_open or since[1].is_open else 24
        hours = (now[1].minutes() - since[1].minutes()) / 60 % spans
        scene.hints["stood_h"] = round(hours, 2)
    scene.used.add(now[0])
    return [row for row in told if row != now]


def _without_for(scene: Scene, told: list[tuple[int, Clock]]) -> list[tuple[int, Clock]]:
    """`ready 4 sat 5pm`: a thumb's "for"."""
    sure = any(not clock.is_open for _, clock in told)
    return [
        row
        for row in told
        if not (sure and scene.items[row[0]].words == "4" and scene.after_is(row[0], "<when_day>") is not None)
    ]


def _bare(scene: Scene) -> list[tuple[int, Clock]]:
    """Numbers that are an hour because they stand before "now", and not what they count: "it's three turkeys"."""
    found = [
        (place, digits_clock(item.tags["<number>"]))
        for place, item in scene.find("<number>", unused=True)
        if scene.after_is(place, "<roast>", "<generic>", "<mass>", "<birds>", "<people>") is None
        and not is_of_the_roast(scene, place, item.tags["<number>"])
    ]
    return [(place, clock) for place, clock in found if clock is not None and clock.is_open]


def _is_now(scene: Scene, place: int) -> bool:
    at = scene.before_is(place, "<at>")
    if scene.before_is(place if at is None else at, "<meal>", "<serve>") is not None:
        # "dinner at 6:45 now" is another hour of dinner.
        return False
    before = [item.words for item in scene.items[max(0, place - 2) : place]]
    behind = scene.items[place + 1].words if place + 1 < len(scene.items) else ""
    led = before[-1:] in (["its"], ["now"], ["ahora"], ["its now"])
    return behind in ("now", "ahora") or led or before[:1] == ["son"]


def _only_stood(scene: Scene, found: _Time, dated: tuple[int, Day] | None) -> bool:
    """`stock hot at 9pm, leave it out overnight?`, `taken out yesterday at 10`: no hour at which anyone eats."""
    if found.role != _SERVE or found.cue is not None:
        return False
    if _was_taken_out(scene, found):
        return True
    day = dated[1].on(scene.now) if dated else None
    if day is not None and day < scene.now.date():
        return True
    return scene.has("<out>", "<danger>", "<overnight>") and not scene.has("<roast>", "<generic>", "<mass>")


def _of_guests(scene: Scene, found: _Time) -> bool:
    """When the guests come is the hour of dinner only where no other is said."""
    return found.cue is not None and scene.items[found.cue].get("<serve>") == "arrive"


def _put_off(scene: Scene, found: _Time) -> bool:
    """`turkey ready at 1, dinner not till 3`: the later is when it is eaten."""
    return found.cue is not None and "<put_off>" in scene.items[found.cue]


_BESIDE = ("<meal>", "<serve>", "<started>", "<start>")


def _claims(scene: Scene, places: list[int]) -> dict[int, int]:
    """By clock time, the cue that stands right beside it: just before ("eating 6:30", "dinner at 6"), or a meal just
    behind ("5pm dinner"). No other time of the line may take it."""
    claims: dict[int, int] = {}
    for place in places:
        at = scene.before_is(place, "<at>", "<for>", "'by", "'before")
        cue = scene.before_is(place, *_BESIDE)
        if cue is None and at is not None:
            cue = (
                scene.before_is(at, *_BESIDE) if at == 0 else meal_over_is(scene, at) or scene.before_is(at, *_BESIDE)
            )
        if cue is not None:
            claims[place] = cue
    for place in places:
        behind = scene.after_is(place, "<meal>", "<serve>")
        if place not in claims and behind is not None and behind not in claims.values():
            claims[place] = behind
    return claims


# Dangers that have lasted since a time that is told.
_STOOD = ("warm_holding", "power_cut", "cooling")


def _role(scene: Scene, place: int, clock: Clock, claims: dict[int, int]) -> _Time:
    cue = claims.get(place)
    if cue is not None:
        role = next(role for tag, role in _ROLES.items() if tag in scene.items[cue])
        # "put the turkey on the table at 2", where it stands.
        role = _STARTED if "<out>" in scene.items[cue] else role
    else:
        near = scene.nearest(place, *_ROLES, reach=_ROLE_REACH, after_costs=_AFTER_COSTS, but=claims.values())
        cue = near[1] if near else None
        role = _ROLES[near[2]] if near else _SERVE
    if role == _SERVE and cue is None and left_at(scene, place):
        role = _STARTED
        scene.hints["left_at"] = place
    at = scene.before_is(place, "<at>")
    if cue is None and at and scene.items[at - 1].get("<danger>") in _STOOD and "<out>" in scene.items[at - 1]:
        # "power went out at 7"
        cue, role = at - 1, _STARTED
    if cue is None and scene.before_is(place, "'from") is not None and scene.nearest(place, "<cook>", "<convection>"):
        # "roast at 160 fan from 0930".
        role = _START
    if cue is None and _goes_in_behind(scene, place):
        cue, role = place + 1, _START
    if (cue is None or place not in claims) and (goes_in(scene, place) or goes_in_at(scene, place)):
        cue, role = place - 1, _START
    if place not in claims and just_in(scene, place, scene.now - last_before(scene.now, clock, None, "")):
        cue, role = None, _STARTED
    elif cue is None and role == _SERVE and scene.has("<roast>", "<generic>") and asks_its_end(scene):
        role = _START
    for_it = ("<covers>" in scene.items[place] and "<meal>" not in scene.items[place]) or _is_for(scene, place)
    if (
        role == _START
        and (scene.has("<when>", "<plan>") or (for_it and cue is not None and cue < place))
        and (for_it or (cue is not None and cue > place and _is_by(scene, place)))
    ):
        # "when does it go in for 7": seven is dinner.
        role = _SERVE
    meal = ""
    if role == _SERVE:
        close = scene.nearest(place, "<meal>", reach=_ROLE_REACH + 2, after_costs=_AFTER_COSTS)
        meal = scene.items[close[1]].tags["<meal>"] if close else ""
    return _Time(place, clock, role, cue, meal)


def _goes_in_behind(scene: Scene, place: int) -> bool:
    """`0940 in, 13 lb turkey`."""
    behind = [item.words for item in scene.items[place + 1 : place + 3]]
    return behind[:1] == ["in"] and behind[1:] in ([], [","], ["."], [";"])


def _is_for(scene: Scene, place: int) -> bool:
    led = scene.items[place - 1].words.endswith(" for") if place else False
    return led or scene.before_is(place, "<for>") is not None


def _is_by(scene: Scene, place: int) -> bool:
    """`thawed by saturday 4 pm, when do we start`."""
    day = scene.before_is(place, "<when_day>")
    return scene.before_is(place if day is None else day, "'by") is not None


def _day_for(found: _Time, days: list[tuple[int, Day]], times: list[_Time]) -> tuple[int, Day] | None:
    if not days:
        return None
    if len(times) == 1:
        return min(days, key=lambda day: abs(day[0] - found.place))
    place, day = min(days, key=lambda day: abs(day[0] - found.place))
    closest = min(times, key=lambda other: (abs(other.place - place), other.place < place))
    served = found.role == _SERVE and len(days) == 1
    return (place, day) if closest is found or served else None


def _put(scene: Scene, found: _Time, dated: tuple[int, Day] | None) -> None:
    places = [found.place] + ([found.cue] if found.cue is not None else []) + ([dated[0]] if dated else [])
    day = dated[1].on(scene.now) if dated else None
    named_half = dated[1].half if dated else ""
    if found.role == _STARTED and (
        scene.has("<out>", "<thaw>")
        or scene.hints.get("left_at") == found.place
        or any(i.get("<danger>") in _STOOD for i in scene.items)
    ):
        # "on the counter since 8": how long it has stood.
        at = last_before(scene.now, found.clock, day, named_half)
        hours = scene.hints.get("stood_h", (scene.now - at).total_seconds() / 3600)
        scene.put("elapsed_h", round(hours, 2), "moment: out since", *places, keep=True)
    elif found.role == _STARTED:
        at = last_before(scene.now, found.clock, day, named_half)
        scene.put("start_at", at.isoformat(), "moment: went in at", *places, keep=True)
    elif found.role == _START:
        at = next_after(scene.now, found.clock, day, named_half, "start")
        went = last_before(scene.now, found.clock, None, named_half)
        if day is None and scene.now - went <= _LONGEST_ROAST and _is_in(scene, found, went, at):
            at = went
        scene.put("start_at", at.isoformat(), "moment: put it in at", *places, keep=True)
    elif found.role == _READ:
        at = _reading_at(scene, found.clock, day, named_half)
        scene.put("reading.at", at.isoformat(), "moment: reading at", *places, keep=True)
    else:
        at = next_after(scene.now, found.clock, day, named_half, found.meal or "serve")
        scene.put("serve_at", at.isoformat(), f"moment: {found.meal or 'serve'} at", *places, keep=True)
        scene.hints["serve_clock"] = found.clock
    scene.used.add(found.place)
    if found.clock.style:
        scene.hints["clock"] = found.clock.style


# Words that look ahead, and the verbs that may tell of what was done: "put it in at 11:30".
_AHEAD = (
    "<can>", "<when>", "<plan>", "'if", "'ill", "'will", "'well", "'gonna", "'going", "'want", "'should", "'once",
    "'to", "'lets", "'must", "'could", "'would",
)  # fmt: skip
_DONE = (
    "put ", "stuck ", "popped ", "shoved ", "in at", "in :", "oven in", "in the oven", "in oven", "into the oven",
    "bird on", "turkey on", "chicken on", "roast on", "goose on", "joint on", "meti ",
)  # fmt: skip


def _looks_ahead(scene: Scene, found: _Time) -> bool:
    """Whether the clause up to the time asks or plans: "if I put it in at 1"."""
    for _, _, item in scene.walk(found.place, -1):
        if "<break>" in item:
            return False
        if any(tag in item for tag in _AHEAD) or item.words.startswith(("if ", "when ", "ill ", "should ")):
            return True
    return False


def _is_in(scene: Scene, found: _Time, went: datetime, comes: datetime) -> bool:
    """`in at 1, 125 in the breast now`: what is probed is in already. `put it in at 11:30`, told in the afternoon,
    was three hours ago and not nine from now; nor is it after dinner."""
    served = scene.values.get("serve_at")
    if scene.has("<temperature_read>", "<been_in>") and not scene.has("<hold>"):
        return True
    if served is not None and comes < datetime.fromisoformat(served):
        # "in at 10, out for 13": what is yet to come, in its order.
        return False
    cue = scene.items[found.cue].words if found.cue is not None else ""
    if _looks_ahead(scene, found) or not (cue == "in" or f"{cue} ".startswith(_DONE)):
        return False
    if served is not None and went < datetime.fromisoformat(served) <= comes:
        return True
    return (scene.now - went) * 1.5 < comes - scene.now


def _reading_at(scene: Scene, clock: Clock, day: date | None, half: str) -> datetime:
    """A reading was taken lately, or is expected this afternoon: "at 4:30" with dinner at 6 is half past four pm."""
    if clock.hourless:
        return last_before(scene.now, clock, None, "")
    half = half or ("pm" if clock.is_open and (clock.hour == 12 or clock.hour <= 6) else "")
    if day is None and (half or not clock.is_open):
        at = at_clock(scene.now, scene.now.date(), halves(clock, half)[-1])
        return at if at - scene.now <= timedelta(hours=12) else at - timedelta(days=1)
    return last_before(scene.now, clock, day, half)
