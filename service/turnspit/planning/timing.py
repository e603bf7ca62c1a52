"""How long the roast takes from oven door to table, and where on the clock that puts each step."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime

from turnspit.heat import RoastForecast, forecast_roast
from turnspit.planning.hours import ceil_step, earlier, floor_step, later, minutes
from turnspit.planning.settle import Settled
from turnspit.planning.timetable import Window

CERTAINTY = 0.85
"""A late dinner costs more than an early bird, which can be held hot: plan on the later-finishing side."""

PREP_MIN = 45.0
"""From the cold to the oven: giblets out, patted dry, trussed and seasoned (common practice, no source)."""

SHORT_PREP_MIN = 20.0
"""The same in a hurry; it is what decides whether a wish can still be met."""


@dataclass(frozen=True, slots=True)
class Timing:
    """The times that hang on one forecast: in, ready (a window), out by, carve, serve."""

    forecast: RoastForecast
    oven_in: datetime
    ready: Window
    check_from: datetime
    out_by: datetime
    carve_at: datetime
    serve_at: datetime

    @property
    def likely_serve_at(self) -> datetime:
        """When it is on the table if it is ready in the middle of its window."""
        return later(self.ready.p50, self.serve_at - self.out_by)


def forecast_for(settled: Settled) -> RoastForecast:
    """The forecast for a roast pulled where it should be: birds at the target, meat so that its peak is it."""
    case = settled.case()
    forecast = forecast_roast(case)
    if settled.row.poultry or forecast.advised_pull_c >= forecast.target_c:
        return forecast
    return forecast_roast(replace(case, pull_c=round(forecast.advised_pull_c, 1)))


def before_serving(settled: Settled, forecast: RoastForecast, serve_at: datetime) -> Timing:
    """The timing that puts the roast on the table at `serve_at` with the planned certainty."""
    span = forecast.ready_quantile_min(CERTAINTY) + settled.rest_min + settled.carve_min
    return _from_oven(settled, forecast, floor_step(earlier(serve_at, minutes(span))), serve_at)


def after_start(settled: Settled, forecast: RoastForecast, oven_in: datetime) -> Timing:
    """The timing of a roast that goes in at `oven_in`; it is served when it is certain enough to be carved."""
    span = forecast.ready_quantile_min(CERTAINTY) + settled.rest_min + settled.carve_min
    return _from_oven(settled, forecast, oven_in, ceil_step(later(oven_in, minutes(span))))


def kept_until(settled: Settled, timing: Timing, serve_at: datetime) -> Timing:
    """A roast that was put in early, kept in the oven or hot until its rest before `serve_at`."""
    carve_at = earlier(serve_at, minutes(settled.carve_min))
    return replace(timing, serve_at=serve_at, carve_at=carve_at, out_by=earlier(carve_at, minutes(settled.rest_min)))


def _from_oven(settled: Settled, forecast: RoastForecast, oven_in: datetime, serve_at: datetime) -> Timing:
    spread = forecast.ready_min
    ready = Window(*(later(oven_in, minutes(span)) for span in (spread.p10, spread.p50, spread.p90)))
    carve_at = earlier(serve_at, minutes(settled.carve_min))
    return Timing(
        forecast,
        oven_in,
        ready,
        check_from=floor_step(ready.p10),
        out_by=earlier(carve_at, minutes(settled.rest_min)),
        carve_at=carve_at,
        serve_at=serve_at,
    )
