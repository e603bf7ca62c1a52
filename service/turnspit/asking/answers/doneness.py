"""A thermometer reading: how the roast is going, when it is ready; without one, where to probe and when it is out."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Any

from turnspit.asking.answers import holding, safety, under_way
from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.danger import IN_THE_MEAT
from turnspit.asking.answers.plain_words import is_out
from turnspit.asking.answers.roasting import (
    before_carving,
    clock_window,
    done_when,
    forecast_document,
    reasons,
    rest_line,
    roast_cautions,
    tender,
)
from turnspit.asking.answers.taken import Taken, forecast_of, kind_of, name_of, roast_case_of, target_of
from turnspit.asking.answers.topics import topic_of
from turnspit.message import Message, Value
from turnspit.reference import caution

if TYPE_CHECKING:
    from turnspit.heat import RoastCase, RoastForecast, RoastRow
    from turnspit.tracking import Placed

CARVE_MIN = 15.0
WELL_PAST_K = 3.0
ABOUT_K = 1.0
ROUNDED_K = 0.2
"""165 F and 74 C are one temperature."""
FRESH = timedelta(minutes=10)
"""A reading older than this is taken again before anything is said of it."""
DANGERS = ("thermometer", "receiving", "power_cut", "interrupted", "warm_holding", "cold_holding", "cooling", "pink")
"""Readings that are not of a roast in its oven."""


@dataclass(frozen=True, slots=True)
class Read:
    """One reading placed on the forecast."""

    at: datetime
    placed: Placed


def answer(enquiry: Enquiry) -> Answer:
    """When it is ready by the readings given, or the rule that decides where none is."""
    off = enquiry.said("reading.place") in IN_THE_MEAT and safety.speaks_of(enquiry, "thermometer")
    if (safety.speaks_of(enquiry, *DANGERS) and not off) or enquiry.said("reading.place") == "leftovers":
        return safety.answer(enquiry)
    if _for_people_at_risk(enquiry) or topic_of(enquiry.line, "oven_off_by_slip"):
        return safety.answer(enquiry)
    asked_apart = topic_of(enquiry.line, "doneness") and not any(sign.isdigit() for sign in enquiry.line)
    if enquiry.said("reading.temperature_c") is None or asked_apart:
        return _without_reading(enquiry)
    from turnspit.heat import roast

    taken = Taken(_with_stuffing(enquiry))
    case = roast_case_of(taken)
    row = roast(case.kind)
    case = _to_pull_apart(taken, case, row)
    forecast = forecast_of(case)
    slowest = _slowest(_read(taken, forecast), forecast.pull_c)
    return _asking_what(enquiry, _told(taken, forecast, row, slowest))


def _slowest(reads: list[Read], pull_c: float) -> Read:
    """The reading that still takes longest; a place that is hot enough is passed over while another is not."""
    short = [read for read in reads if read.placed.temperature_c < pull_c - ROUNDED_K]
    return max(short or reads, key=lambda read: (not read.placed.done, read.placed.minutes_left.p50))


ASKED_KINDS = ("turkey", "chicken", "beef_rib", "pork_loin")


def _asking_what(enquiry: Enquiry, told: Answer) -> Answer:
    """ "Probe says 60, is it done?": of a turkey it is far from it, of beef it is past it; so what it is is asked."""
    known = any(enquiry.said(path) is not None for path in ("roast.kind", "reading.place")) or enquiry.likely_kind
    if known or told.question is not None or enquiry.said("serve_at") is not None:
        return told
    choices = tuple(name_of(kind) for kind in ASKED_KINDS)
    return replace(told, question=Message("asking-ask-kind"), choices=choices, asks="roast.kind")


def _to_pull_apart(taken: Taken, case: RoastCase, row: RoastRow) -> RoastCase:
    """A cut full of sinew that is well past its safe minimum and still roasts is meant to be pulled apart."""
    pulled_c = row.doneness.get("pulled")
    coolest_c = min(float(reading["temperature_c"]) for reading in _said(taken.enquiry))
    if pulled_c is None or case.target_c is not None or coolest_c < row.safe_c + WELL_PAST_K:
        return case
    taken.assumed["roast.target_c"] = pulled_c
    taken.told.append(Message("asking-taken-to-pull", c=pulled_c, safe_c=row.safe_c))
    return replace(case, target_c=pulled_c)


def _for_people_at_risk(enquiry: Enquiry) -> bool:
    """Whether it is asked if so many degrees are right for children, the old or the ill."""
    asks = topic_of(enquiry.text, "safety_at_risk") and topic_of(enquiry.text, "safety_asked")
    return bool(asks) and enquiry.said("reading.temperature_c") is not None


def _with_stuffing(enquiry: Enquiry) -> Enquiry:
    """A reading in the stuffing tells that there is some."""
    places = [reading.get("place") for reading in _said(enquiry)]
    if "stuffing" not in places:
        return enquiry
    roast = {**(enquiry.said("roast") or {}), "stuffed": True}
    return replace(enquiry, understood={**enquiry.understood, "roast": roast})


def _said(enquiry: Enquiry) -> list[Mapping[str, Any]]:
    """What was read; of a roast that was pulled and read again, what it reads now."""
    latest = enquiry.said("reading")
    readings = enquiry.said("readings") or [latest]
    coolest_c = min(reading["temperature_c"] for reading in readings)
    return [latest] if latest and latest["temperature_c"] > coolest_c else readings


def _told(taken: Taken, forecast: RoastForecast, row: RoastRow, read: Read) -> Answer:
    case, placed = forecast.case, read.placed
    if is_out(taken.enquiry):
        return _resting(taken, forecast, row, read)
    others = [Message("asking-doneness-others")] if row.poultry else []
    after = [*others, *before_carving(row, forecast), *tender(row, forecast)]
    lines = [*done_when(row, forecast)] if not placed.done else after
    if _stalls(taken.enquiry, row, placed):
        lines.insert(0, Message("asking-doneness-stall"))
    elif not placed.expected:
        lines.insert(0, Message("asking-doneness-unexpected"))
    dinner = _against_dinner(taken.enquiry, row, read)
    lines += dinner
    return Answer(
        headline=_headline(read, forecast, taken.enquiry.now),
        lines=tuple(lines),
        reasons=(Message(_how_placed(taken), members=case.members), *reasons(case, row, forecast)),
        assumptions=taken.assumptions,
        assumed=taken.assumed,
        cautions=(*taken.cautions, *roast_cautions(forecast, row)),
        next=(
            _what_next(taken.enquiry, placed.done, any(said.key == "asking-doneness-late" for said in dinner)),
            Message("asking-next-hold" if placed.done else "asking-next-probe"),
            Message("asking-next-why"),
        ),
        data={"doneness": _document(read, forecast), "forecast": forecast_document(forecast)},
    )


STALL_C = (63.0, 82.0)
"""Where a cut that is pulled apart stands still for hours (common practice, no source)."""


def _stalls(enquiry: Enquiry, row: RoastRow, placed: Placed) -> bool:
    """ "Stuck at 160 for two hours", of a shoulder: what evaporates cools it as fast as the oven heats it."""
    stuck = topic_of(enquiry.line, "stuck") and "pulled" in row.doneness and not placed.done
    return bool(stuck) and STALL_C[0] <= placed.temperature_c <= STALL_C[1]


def _what_next(enquiry: Enquiry, done: bool, late: bool) -> Message:
    """What most cooks ask next: the rest, a later dinner, or what to do when it runs late."""
    serve_at = enquiry.moment("serve_at")
    if done or (late and serve_at is None):
        return Message("asking-next-rest")
    if late and serve_at is not None:
        return Message("asking-next-push", at=serve_at + timedelta(hours=1))
    return Message("asking-next-late")


def _resting(taken: Taken, forecast: RoastForecast, row: RoastRow, read: Read) -> Answer:
    """Out of the oven: how far it may still rise by itself, which proves nothing until it is measured."""
    station, c = read.placed.station, read.placed.temperature_c
    rise_k = max(0.0, forecast.peak_c[station].p50 - forecast.pull_c)
    goal_c = min(row.safe_c, forecast.target_c)
    likely = c + rise_k >= goal_c - ABOUT_K
    key = "done" if c >= row.safe_c else "rising" if likely else "back"
    if key != "done" and goal_c < row.safe_c - ABOUT_K:
        key += "-wished"
    said: dict[str, Value] = {
        "c": c,
        "place": Message(f"asking-station-{station}"),
        "safe_c": row.safe_c,
        "target_c": goal_c,
    }
    return Answer(
        headline=Message(f"asking-doneness-resting-{key}", rise_k=rise_k, **said),
        lines=(Message("asking-doneness-others"), rest_line(row, forecast.case.mass_kg)),
        reasons=(
            Message("asking-why-rise", members=forecast.case.members, c=forecast.pull_c, rise_k=rise_k),
            *reasons(forecast.case, row, forecast),
        ),
        assumptions=taken.assumptions,
        assumed=taken.assumed,
        cautions=(*taken.cautions, *roast_cautions(forecast, row)),
        next=(Message("asking-next-probe"), Message("asking-next-rest"), Message("asking-next-why")),
        data={"doneness": {**_document(read, forecast), "oven_left_on": False, "rise_k": round(rise_k, 1)}},
    )


def _how_placed(taken: Taken) -> str:
    timed = any(taken.enquiry.said(path) is not None for path in ("start_at", "elapsed_h"))
    return "asking-why-placed" if timed else "asking-why-placed-untimed"


def _headline(read: Read, forecast: RoastForecast, now: datetime) -> Message:
    placed = read.placed
    said: dict[str, Value] = {
        "c": placed.temperature_c,
        "place": Message(f"asking-station-{placed.station}"),
        "pull_c": forecast.pull_c,
    }
    if placed.done:
        if placed.temperature_c < forecast.target_c > forecast.pull_c:
            return Message("asking-doneness-pull", target_c=forecast.target_c, **said)
        return Message("asking-doneness-done" if len(forecast.history_c) > 1 else "asking-doneness-reached", **said)
    low_at, high_at = _window(read)
    if high_at <= now:
        return Message("asking-doneness-overdue", at=read.at, high_at=high_at, **said)
    if low_at <= now and now - read.at > FRESH:
        return Message("asking-doneness-due", at=read.at, low_at=low_at, high_at=high_at, **said)
    return Message(
        "asking-doneness-ready",
        at=read.at,
        low_at=low_at,
        high_at=high_at,
        low_min=placed.minutes_left.p10,
        high_min=placed.minutes_left.p90,
        check_at=low_at,
        **said,
    )


def _window(read: Read) -> tuple[datetime, datetime]:
    return clock_window(read.at, read.placed.minutes_left)


def _read(taken: Taken, forecast: RoastForecast) -> list[Read]:
    """Every reading said, each placed on the forecast."""
    return [_place(taken, forecast, reading) for reading in _said(taken.enquiry)]


def _place(taken: Taken, forecast: RoastForecast, reading: Mapping[str, Any]) -> Read:
    from turnspit.tracking import place_reading

    place = reading.get("place")
    station = str(place) if place in forecast.history_c else forecast.deciding_station
    if station != place and "reading.place" not in taken.assumed:
        taken.assumed["reading.place"] = station
        taken.told.append(Message("asking-taken-place", place=Message(f"asking-station-{station}")))
    said_at = reading.get("at") or taken.enquiry.said("reading.at")
    if said_at is None and "reading.at" not in taken.assumed:
        taken.assumed["reading.at"] = taken.enquiry.now.isoformat()
        taken.told.append(Message("asking-taken-reading-now"))
    at = datetime.fromisoformat(said_at) if said_at else taken.enquiry.now
    elapsed_min = _elapsed_min(taken.enquiry, at)
    if elapsed_min is not None and elapsed_min < 0:
        not_yet = Message("asking-taken-not-in-yet", start_at=taken.enquiry.moment("start_at") or at)
        taken.told += [] if not_yet in taken.told else [not_yet]
        elapsed_min = None
    return Read(at, place_reading(forecast, station, float(reading["temperature_c"]), elapsed_min))


def _elapsed_min(enquiry: Enquiry, at: datetime) -> float | None:
    start_at = enquiry.moment("start_at")
    if start_at is not None:
        return (at - start_at).total_seconds() / 60
    elapsed_h = enquiry.said("elapsed_h")
    return None if elapsed_h is None else float(elapsed_h) * 60


def _against_dinner(enquiry: Enquiry, row: RoastRow, read: Read) -> list[Message]:
    """Whether the dinner holds, from the window, the shortest rest and the carving."""
    serve_at = enquiry.moment("serve_at")
    if serve_at is None:
        return []
    after_min = row.rest_min_range[0] + CARVE_MIN
    low_at, high_at = (at + timedelta(minutes=after_min) for at in _window(read))
    said: dict[str, Value] = {"serve_at": serve_at, "rest_min": row.rest_min_range[0], "carve_min": CARVE_MIN}
    if high_at <= serve_at:
        spare_min = (serve_at - high_at).total_seconds() / 60
        key = "asking-doneness-early" if spare_min > 30 else "asking-doneness-on-time"
        return [Message(key, spare_min=spare_min, **said)]
    late_min = (high_at - serve_at).total_seconds() / 60
    key = "asking-doneness-maybe-late" if low_at <= serve_at else "asking-doneness-will-be-late"
    ways = Message("asking-doneness-late", c=row.safe_c)
    return [Message(key, late_min=late_min, low_at=low_at, high_at=high_at, **said), ways]


def where_to_stop(enquiry: Enquiry) -> Answer:
    """At which reading a joint comes out for its wish."""
    return _unmeasured(Taken(enquiry), "when")


def _without_reading(enquiry: Enquiry) -> Answer:
    taken = Taken(enquiry)
    topic = topic_of(enquiry.line, "doneness") or topic_of(enquiry.text, "doneness", "when")
    if topic == "early" or holding.is_early(enquiry):
        return holding.early(taken)
    start_at = under_way.start_of(enquiry)
    if topic in ("when", "late") and start_at is not None:
        return under_way.due(enquiry, start_at)
    return _unmeasured(taken, topic)


def _unmeasured(taken: Taken, topic: str) -> Answer:
    """Where to probe and at what it is out, the asked one first."""
    from turnspit.heat import roast

    enquiry, row = taken.enquiry, roast(kind_of(taken))
    c = target_of(taken, row) or row.default_target_c
    form = "bird" if row.poultry else "joint"
    told = {
        "when": _when(taken, row, c),
        "probe": (Message(f"asking-doneness-probe-{form}", c=c, safe_c=row.safe_c),),
        "late": (Message("asking-doneness-late", c=row.safe_c),),
        "unmeasured": (
            Message("asking-doneness-unmeasured", safe_c=row.safe_c),
            Message("asking-doneness-till-then"),
        ),
    }
    headline, *first = told[topic]
    by_weight = under_way.takes(enquiry) if topic in ("when", "unmeasured") else ()
    behind = [] if topic == "unmeasured" else [name for name in ("when", "probe") if name != topic]
    signs = () if topic == "unmeasured" else (Message("asking-doneness-signs"),)
    stuffed = (Message("asking-doneness-stuffed"),) if row.poultry else ()
    pink = c < row.safe_c - ABOUT_K
    return Answer(
        headline=headline,
        lines=(*first, *by_weight, *(line for name in behind for line in told[name]), *stuffed, *signs),
        reasons=(Message("asking-why-safe", c=row.safe_c), Message("asking-why-coldest")),
        assumptions=taken.assumptions,
        assumed=taken.assumed,
        cautions=(
            *taken.cautions,
            caution("poultry-165", "info") if row.poultry else caution("meat-145", "warn" if pink else "info"),
            *([caution("beef-lamb-time-table", "warn")] if pink and row.kind.startswith(("beef", "lamb")) else []),
            caution("colour-no-proof", "info"),
        ),
        next=(
            Message("asking-next-doneness" if row.poultry else "asking-next-doneness-joint"),
            Message("asking-next-early"),
            Message("asking-next-rest"),
            Message("asking-next-why"),
        ),
    )


def _when(taken: Taken, row: RoastRow, c: float) -> tuple[Message, ...]:
    """When it is out: a joint of which the end or the weight is told that much before as it still rises, as in a
    forecast; without either at the safe minimum."""
    if not row.poultry and any(taken.enquiry.said(path) is not None for path in ("roast.target_c", "roast.mass_kg")):
        return done_when(row, forecast_of(roast_case_of(taken)))
    form = "bird" if row.poultry else "joint"
    is_safe = "yes" if c >= row.safe_c else "no"
    said: dict[str, Value] = {"c": c, "safe_c": row.safe_c, "is_safe": is_safe, "roast": name_of(row.kind)}
    return (Message(f"asking-doneness-when-{form}", **said),)


def _document(read: Read, forecast: RoastForecast) -> dict[str, Any]:
    low_at, high_at = _window(read)
    return {
        "station": read.placed.station,
        "temperature_c": round(read.placed.temperature_c, 1),
        "read_at": read.at.isoformat(),
        "minutes_left": read.placed.minutes_left.document(1),
        "ready_at": [low_at.isoformat(timespec="minutes"), high_at.isoformat(timespec="minutes")],
        "pull_c": round(forecast.pull_c, 1),
        "done": read.placed.done,
        "expected": read.placed.expected,
    }
