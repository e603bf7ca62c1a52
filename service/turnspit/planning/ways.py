"""The ways to the table that the clock and the rules leave open, each with its own times."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from dataclasses import replace
from datetime import datetime

from turnspit.errors import Impossible, TurnspitError
from turnspit.heat import (
    KINDS,
    RoastForecast,
    forecast_roast,
    roast,
)
from turnspit.message import Message
from turnspit.planning.hours import ceil_step, earlier, later, minutes
from turnspit.planning.route import Route, title
from turnspit.planning.settle import Settled
from turnspit.planning.thaw_ways import thawed_first
from turnspit.planning.timetable import Way
from turnspit.planning.timing import (
    CERTAINTY,
    PREP_MIN,
    SHORT_PREP_MIN,
    Timing,
    after_start,
    before_serving,
    forecast_for,
    kept_until,
)

SEARCH_MEMBERS = 64


def routes(settled: Settled, now: datetime) -> tuple[Route, ...]:
    """The ways to meet the wish itself, best first: as it is, or thawed first, or from frozen."""
    if settled.state != "frozen":
        return (_as_it_is(settled, now),)
    frozen, thawed = replace(settled, stuffed=False, brined=False), replace(settled, state="thawed")
    timing = _timing(thawed, forecast_for(thawed))
    found = list(thawed_first(thawed, timing, now))
    with suppress(TurnspitError):  # where the model does not reach that mass from frozen the way is not offered
        found.append(_from_frozen(frozen, now))
    return tuple(found)


def other_ways(settled: Settled, now: datetime) -> tuple[Route, ...]:
    """Where the wish cannot be met: the same roast later, and smaller or other pieces in time."""
    fresh = replace(settled, state="thawed")
    asks: list[Callable[[], Route | None]] = [lambda: _later_dinner(settled, now)]
    if settled.dinner.serve_at is not None:
        asks += [lambda: _opened(settled, now), lambda: _smaller(fresh, now), lambda: _breast(fresh, now)]
    found = []
    for ask in asks:
        try:
            route = ask()
        except TurnspitError:  # outside what the model was checked for: not offered
            continue
        if route is not None:
            found.append(route)
    return tuple(found)


def _timing(settled: Settled, forecast: RoastForecast) -> Timing:
    """The timing the dinner asks for: from its start where one was said, else backward from the serving time."""
    dinner = settled.dinner
    if dinner.start_at is not None:
        timing = after_start(settled, forecast, dinner.start_at)
        if dinner.serve_at is not None and timing.serve_at < dinner.serve_at:
            timing = kept_until(settled, timing, dinner.serve_at)
        return timing
    if dinner.serve_at is None:
        raise Impossible("serve_at", "unsaid", "is needed", "say when dinner is, or when the roast goes in")
    return before_serving(settled, forecast, dinner.serve_at)


def _as_it_is(settled: Settled, now: datetime) -> Route:
    timing = _timing(settled, forecast_for(settled))
    said = settled.dinner.start_at is not None  # then it is the cook's own word that it is ready by then
    started = said and timing.oven_in <= now
    possible = said or timing.oven_in >= later(now, minutes(SHORT_PREP_MIN))
    wished = settled.dinner.serve_at
    soonest = max(timing.likely_serve_at, later(now, timing.serve_at - timing.out_by))
    if started and wished is not None and soonest <= wished < timing.serve_at:
        # What is in the oven already is more likely to make it than not, and nothing else would sooner.
        timing = kept_until(settled, timing, wished)
    possible = possible and (wished is None or timing.serve_at <= wished)
    first = timing.oven_in if started else max(now, earlier(timing.oven_in, minutes(PREP_MIN)))
    late = "planning-way-in-late-why" if started else "planning-way-too-late-why"
    why = Message("planning-way-as-wished-why" if possible else late, at=timing.oven_in, ready_at=timing.ready.p90)
    way = Way("as_wished", title("as-wished", settled), why, possible, timing.serve_at, first, timing.oven_in)
    return Route(way, settled, timing)


def _from_frozen(settled: Settled, now: datetime) -> Route:
    timing = _timing(settled, forecast_for(settled))
    first = earlier(timing.oven_in, minutes(SHORT_PREP_MIN))
    possible = first >= now and (settled.dinner.serve_at is None or timing.serve_at <= settled.dinner.serve_at)
    span = timing.forecast.ready_min
    why = Message("planning-way-frozen-why", low_min=span.p10, high_min=span.p90, at=timing.oven_in)
    way = Way("frozen", title("frozen", settled), why, possible, timing.serve_at, first, timing.oven_in)
    return Route(way, settled, timing)


def _later_dinner(settled: Settled, now: datetime) -> Route:
    """The same roast at the first time it can be served: as it is, or, frozen, straight into the oven; one that is in
    already from when it went in."""
    start_at = settled.dinner.start_at
    if start_at is not None and start_at <= now:
        timing = after_start(settled, forecast_for(settled), start_at)
        soonest = ceil_step(later(now, timing.serve_at - timing.out_by))
        timing = kept_until(settled, timing, max(timing.serve_at, soonest))
        why = Message("planning-way-later-why", at=timing.serve_at, oven_in=timing.oven_in)
        way = Way("later", title("later", settled), why, True, timing.serve_at, now, timing.oven_in)
        return Route(way, settled, timing)
    plain = replace(settled, brined=False, stuffed=settled.stuffed and settled.state != "frozen")
    oven_in = later(now, minutes(PREP_MIN if plain.state != "frozen" else SHORT_PREP_MIN))
    timing = after_start(plain, forecast_for(plain), oven_in)
    why = Message("planning-way-later-why", at=timing.serve_at, oven_in=timing.oven_in)
    way = Way("later", title("later", plain), why, True, timing.serve_at, now, timing.oven_in)
    return Route(way, plain, timing)


def _smaller(settled: Settled, now: datetime) -> Route | None:
    """The largest piece of the same roast, thawed, that still makes the wish."""
    serve_at = settled.dinner.serve_at
    if serve_at is None or settled.dinner.start_at is not None:
        return None
    room_min = (serve_at - now).total_seconds() / 60 - PREP_MIN - settled.carve_min
    low, high = settled.row.checked_kg[0], settled.mass_kg

    def fits(mass_kg: float) -> bool:
        piece = replace(settled, mass_kg=mass_kg, brined=False)
        forecast = forecast_roast(replace(piece.case(), members=SEARCH_MEMBERS))
        return forecast.ready_quantile_min(CERTAINTY) + piece.rest_min <= room_min

    if low >= 0.9 * high or not fits(low):
        return None
    while high - low > 0.02 * settled.mass_kg + 0.1:
        middle = (low + high) / 2
        low, high = (middle, high) if fits(middle) else (low, middle)
    piece = replace(settled, mass_kg=low, brined=False)
    return _instead("smaller", piece, now)


def _opened(settled: Settled, now: datetime) -> Route | None:
    """The same bird cut open along the back and roasted flat in a hot oven."""
    flat = f"{settled.row.kind}_spatchcock"
    if flat not in KINDS or settled.state == "frozen":
        return None
    row = roast(flat)
    piece = replace(settled, row=row, oven_c=row.usual_oven_c, stuffed=False, brined=False)
    return _instead("opened", piece, now)


def _breast(settled: Settled, now: datetime) -> Route | None:
    """A turkey breast instead of the whole bird."""
    if settled.row.kind != "turkey":
        return None
    row = roast("turkey_breast")
    piece = replace(
        settled, row=row, mass_kg=row.usual_mass_kg, stuffed=False, brined=False, target_c=row.default_target_c
    )
    return _instead("breast", piece, now)


def _instead(kind: str, piece: Settled, now: datetime) -> Route | None:
    timing = _timing(piece, forecast_for(piece))
    first = max(now, earlier(timing.oven_in, minutes(PREP_MIN)))
    if timing.oven_in < later(now, minutes(SHORT_PREP_MIN)):
        return None
    why = Message(f"planning-way-{kind}-why", mass_kg=piece.mass_kg, oven_c=piece.oven_c, at=timing.oven_in)
    way = Way(kind, title(kind, piece), why, True, timing.serve_at, first, timing.oven_in)
    return Route(way, piece, timing)
