"""What the pages show of a plan: tasks by day, times as the reader tells them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, datetime, time
from itertools import groupby
from typing import Any

from turnspit.api.schemas.lists import OrderGiven
from turnspit.message import Message, Value
from turnspit.safety.courses import BIRD_PLACES
from turnspit.words import Reader, say
from turnspit.words.days import day_heading, day_name, short_day
from turnspit.words.measures import clock, when

EXAMPLES = 4
STATIONS = (*BIRD_PLACES, "stuffing", "centre")


def label(key: str, reader: Reader, **values: Value) -> str:
    """One of the pages' own texts."""
    return say(Message(f"page-{key}", **values), reader)


def spoken_examples(reader: Reader) -> list[str]:
    """Lines that show what can be asked."""
    return [label(f"example-{number}", reader) for number in range(1, EXAMPLES + 1)]


def reader_of(document: Mapping[str, Any], now: datetime) -> Reader:
    """The reader that a document was worded for, at `now` told in the zone of its plan."""
    plan = document.get("plan") or document
    at = plan.get("serve_at")
    zone = datetime.fromisoformat(at).tzinfo if at else None
    return Reader(now.astimezone(zone) if zone else now, **document.get("reader", {}))


def sheet_title(plan: Mapping[str, Any], reader: Reader) -> str:
    """What and when, in words that are still true on another day ("tomorrow" on a wall is a mistake)."""
    roast = plan.get("roast")
    if not roast:
        return str(plan["headline"])
    serve_at = datetime.fromisoformat(plan["serve_at"])
    what = Message(f"roast-{roast['kind']}")
    day = day_name(serve_at, reader)
    return label("sheet-title", reader, **_kept(roast, "mass_kg", "count"), roast=what, day=day, serve_at=serve_at)


def beside_tasks(plan: Mapping[str, Any]) -> list[Mapping[str, Any]]:
    """The plan's grave cautions that stand beside none of its tasks; the others are read where they matter."""
    told_there = {caution["rule"] for task in plan["tasks"] for caution in task["cautions"]}
    return [c for c in plan["cautions"] if c["severity"] != "info" and c["rule"] not in told_there]


def sheet_times(plan: Mapping[str, Any], reader: Reader) -> str:
    """The three times of the day that matter, "" for a plan without a roast in the oven."""
    if not plan["oven_in_at"] or not plan["check_from"]:
        return ""
    moments = {name: datetime.fromisoformat(plan[name]) for name in ("oven_in_at", "check_from", "serve_at")}
    return label("sheet-times", reader, **moments)


def told(at: str, reader: Reader, *, day: bool = False) -> str:
    """An ISO time as the reader tells it, with its day where that is asked for and not today."""
    moment = datetime.fromisoformat(at)
    return when(moment, reader) if day else clock(moment, reader)


def days(tasks: Sequence[Mapping[str, Any]], reader: Reader) -> list[tuple[str, list[Mapping[str, Any]]]]:
    """The tasks by their day, each with the day's name."""
    return [
        (day_heading(datetime.fromisoformat(day), reader), list(on_it))
        for day, on_it in groupby(tasks, key=lambda task: str(task["start"])[:10])
    ]


def clock_told(at: datetime, reader: Reader) -> str:
    """The clock time of `at` in the reader's zone."""
    return clock(at, reader)


def day_told(day: date, reader: Reader) -> str:
    """A day by its short name: "Thu, Nov 26"."""
    return short_day(datetime.combine(day, time(12)), reader)


def ordered(lines: list[OrderGiven]) -> list[tuple[tuple[date, date], list[OrderGiven]]]:
    """What is ordered on one day and comes on one day, together."""
    days = sorted({(line.order_by, line.deliver_on) for line in lines})
    return [(both, [line for line in lines if (line.order_by, line.deliver_on) == both]) for both in days]


def allergen_told(name: str, reader: Reader) -> str:
    """One of the nine major allergens in the reader's language."""
    return say(Message(f"safety-allergen-{name.replace(' ', '-')}"), reader)


def place_told(station: str, reader: Reader) -> str:
    """Where it was probed: in the reader's language, or as it was written."""
    return label(f"station-{station}", reader) if station in STATIONS else station


def unknown_told(name: str, reader: Reader) -> str:
    """What a check took at its less safe value: in words, or a place of probing as it was written."""
    try:
        return say(Message(f"form-unknown-{name}"), reader)
    except KeyError:
        return name


def _kept(given: Mapping[str, Any], *names: str) -> dict[str, Any]:
    return {name: given[name] for name in names}
