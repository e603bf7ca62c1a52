"""The plan: tasks on the clock with their reasons, and the ways that were weighed."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from turnspit.brine import BrinePlan
from turnspit.heat import RoastForecast, ThawForecast
from turnspit.message import Caution, Message
from turnspit.planning.dinner import Dinner

Place = Literal["shop", "refrigerator", "sink", "counter", "stove", "oven", "table"]


@dataclass(frozen=True, slots=True)
class Window:
    """When something uncertain is expected: the tenth, fiftieth and ninetieth percentile as clock times."""

    p10: datetime
    p50: datetime
    p90: datetime


@dataclass(frozen=True, slots=True)
class Task:
    """One thing to do. `id` is unique in its timetable and stable for the same dinner ("roast_in", "baste_2").

    `slack_min` is how far the start may slip before the serving time does. `hands` tells whether the cook is busy for
    the whole of it (False for waiting: thawing, roasting, resting).
    """

    id: str
    title: Message
    why: Message
    start: datetime
    end: datetime
    place: Place
    hands: bool = True
    slack_min: float = 0.0
    details: tuple[Message, ...] = ()
    cautions: tuple[Caution, ...] = ()
    window: Window | None = None


@dataclass(frozen=True, slots=True)
class Way:
    """One way to the table that was weighed: by cold water, from frozen, a smaller bird, a later dinner."""

    id: str
    title: Message
    why: Message
    possible: bool
    serve_at: datetime
    first_at: datetime
    oven_in_at: datetime
    chosen: bool = False


@dataclass(frozen=True, slots=True)
class Timetable:
    """The answer of planning. `as_wished` is False where the clock or a rule forced another way or time.

    Where nothing is possible `tasks` is empty, `ways` tells what would be, and `headline` says so.
    """

    dinner: Dinner
    as_wished: bool
    headline: Message
    serve_at: datetime
    tasks: tuple[Task, ...]
    ways: tuple[Way, ...] = ()
    oven_in_at: datetime | None = None
    check_from: datetime | None = None
    ready: Window | None = None
    pull_c: float | None = None
    forecast: RoastForecast | None = None
    thaw: ThawForecast | None = None
    brine: BrinePlan | None = None
    assumptions: tuple[Message, ...] = ()
    cautions: tuple[Caution, ...] = ()
    sources: tuple[str, ...] = ()
