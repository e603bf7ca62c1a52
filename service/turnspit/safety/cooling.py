"""Cooling, computed: will these leftovers make the two stages, and what would.

The times are the heat room's forecast. A forecast satisfies no rule: the plan says when to measure.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache

from turnspit.errors import OutOfRange
from turnspit.heat import ChillCase, ChillForecast, depth_for, forecast_chill
from turnspit.message import Message
from turnspit.reference import Kitchen
from turnspit.safety.finding import Finding, Grade, finding, limit
from turnspit.safety.questions.serving import TWO_STAGE
from turnspit.spread import Spread

THINNEST_MM = 10.0


@dataclass(frozen=True, slots=True)
class CoolingPlan:
    """Whether something cooling as `case` makes the two stages.

    `first_h` and `total_h` are hours from 57 C (or from where it starts, if cooler) to 21 C and to 5 C, infinite
    where it never arrives. `depth_mm` is the deepest layer of the same food in the same place that nine in ten times
    makes both stages, `iced_depth_mm` the same in an ice bath; None where not even 10 mm does.
    """

    case: ChillCase
    forecast: ChillForecast
    first_h: Spread
    total_h: Spread
    finding: Finding
    depth_mm: float | None
    iced_depth_mm: float | None


def plan_cooling(case: ChillCase, kitchen: Kitchen = "licensed") -> CoolingPlan:
    """The plan for a food cooling as `case` tells (its `to_c` is set to 5 C, its start is not below 21 C).

    `ok` where nine in ten members make both stages, `warn` where half do, else `stop`. Raises what the forecast does:
    OutOfRange, and Impossible for a place that is not colder than 5 C.
    """
    hot_c, middle_c, cold_c, *_ = cooling_stages(kitchen)
    OutOfRange.check("from_c", case.from_c, middle_c, 100.0, "give the temperature of the hot food in C")
    forecast = forecast_chill(replace(case, to_c=cold_c))
    start_c = min(case.from_c, hot_c)
    first_h = forecast.hours_between(start_c, middle_c)
    total_h = forecast.hours_between(start_c, cold_c)
    severity = stages_grade(first_h, total_h, kitchen)
    seen = (
        Message("safety-cooling-forecast", first_min=first_h.p50 * 60, total_min=total_h.p50 * 60)
        if math.isfinite(total_h.p50)
        else Message("safety-cooling-never")
    )
    depth_mm = depth_that_cools(case, kitchen)
    iced_mm = depth_that_cools(replace(case, medium="ice_bath", medium_c=0.0, air_m_s=0.0), kitchen)
    action = advice(severity, depth_mm, iced_mm)
    found = finding(kitchen, TWO_STAGE, severity, "measure" if severity == "ok" else "chill", seen, action=action)
    return CoolingPlan(case, forecast, first_h, total_h, found, depth_mm, iced_mm)


def cooling_stages(kitchen: Kitchen = "licensed") -> tuple[float, float, float, float, float]:
    """The two-stage limit: C from, C between and C to, hours for the first stage and for both."""
    names = ("from_c", "middle_c", "cold_c", "first_max_h", "total_max_h")
    hot_c, middle_c, cold_c, first_h, total_h = (limit(TWO_STAGE, name, kitchen) for name in names)
    return hot_c, middle_c, cold_c, first_h, total_h


def depth_that_cools(case: ChillCase, kitchen: Kitchen = "licensed") -> float | None:
    """The deepest layer in mm that makes both stages nine times in ten; None where not even 10 mm does."""
    hot_c, middle_c, cold_c, first_h, total_h = cooling_stages(kitchen)
    try:
        layer = replace(case, shape="slab", dims_mm=(THINNEST_MM,), mass_kg=None, from_c=hot_c)
        return min(_depth(replace(layer, to_c=middle_c), first_h), _depth(replace(layer, to_c=cold_c), total_h))
    except OutOfRange:
        return None


@lru_cache(maxsize=256)
def _depth(layer: ChillCase, hours: float) -> float:
    """The depth is sought step by step, and the same few foods and places are asked about again and again."""
    return depth_for(layer, hours)


def stages_grade(first_h: Spread, total_h: Spread, kitchen: Kitchen = "licensed") -> Grade:
    """`ok` where both stages are made nine times in ten, `warn` where half the time, else `stop`."""
    *_, first_max_h, total_max_h = cooling_stages(kitchen)
    if first_h.p90 <= first_max_h and total_h.p90 <= total_max_h:
        return "ok"
    return "warn" if first_h.p50 <= first_max_h and total_h.p50 <= total_max_h else "stop"


def advice(severity: Grade, depth_mm: float | None, iced_mm: float | None) -> Message:
    """What would make it: a shallower layer where it stands, else in an ice bath, else smaller pieces."""
    if severity == "ok":
        return Message("safety-do-measure-stages")
    if depth_mm is not None:
        return Message("safety-do-shallower", depth_mm=depth_mm)
    if iced_mm is not None:
        return Message("safety-do-ice-bath", depth_mm=iced_mm)
    return Message("safety-do-cool-two-stage")
