"""The forecast asked backward: how long to allow, which oven for a clock, how large at most, what is uncertain."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Literal

from turnspit.errors import Impossible, OutOfRange, TurnspitError
from turnspit.heat.cases import OvenStep, RoastCase
from turnspit.heat.cook import cook
from turnspit.heat.ensemble import one_at_a_time, priors
from turnspit.heat.given import check_number
from turnspit.heat.limits import check_roast
from turnspit.heat.oven import OFF_BELOW_C
from turnspit.heat.roasting import ends_c, forecast_roast
from turnspit.heat.roasts import RoastRow, roast
from turnspit.reference import rule

Change = Literal["hotter", "cooler", "later"]
HOTTER_K, LATER_K = 20.0, 3.0
BIRD_OVEN_C = rule("oven-325").limits["oven_min_c"]
SEARCH_MEMBERS = 64
"""Enough for a quantile to 2 min; the same draws at every trial, so the search sees a smooth function."""


def minutes_to_allow(case: RoastCase, certainty: float = 0.9) -> float:
    """Minutes from the oven to the table's rest within which a share `certainty` of the members is ready and rested.

    Counted back from the hour it must be ready, the latest time to put it in. Raises as `forecast_roast` does.
    """
    return _ready_min(case, certainty) + case.rest_min


def oven_for(case: RoastCase, ready_min: float, certainty: float = 0.5) -> float:
    """The oven setting in C, kept all along, that has `certainty` of the members ready in `ready_min`.

    Within the row's range of ovens, for a bird never below the federal floor of 325 F. Raises Impossible where even
    the hottest is too slow or the coolest too fast.
    """
    _check_minutes(ready_min)
    row = roast(case.kind)
    fan = case.oven[0].convection if case.oven else False
    low_c, high_c = row.oven_c_range

    def spare_min(oven_c: float) -> float:
        return ready_min - _ready_min(replace(case, oven=(OvenStep(0.0, oven_c, fan),)), certainty)

    low_c = _coolest_that_cooks(case, row, low_c)
    if spare_min(high_c) < 0.0:
        raise Impossible("ready_min", ready_min, "is too short in any oven", "start earlier, or cut the roast up")
    if spare_min(low_c) > 0.0:
        raise Impossible("ready_min", ready_min, f"is too long even at {low_c:g} C", "start later, or hold it hot")
    return _root(spare_min, low_c, high_c, 0.5)


def largest_mass_kg(case: RoastCase, ready_min: float, certainty: float = 0.9) -> float:
    """The heaviest piece in kg of which a share `certainty` is ready in `ready_min`; `case.mass_kg` is not read.

    The upper end of the row's range where even that is ready. Raises Impossible where the lightest is not.
    """
    _check_minutes(ready_min)
    low_kg, high_kg = roast(case.kind).mass_kg_range

    def spare_min(mass_kg: float) -> float:
        return ready_min - _ready_min(replace(case, mass_kg=mass_kg), certainty)

    if spare_min(high_kg) >= 0.0:
        return high_kg
    if spare_min(low_kg) < 0.0:
        raise Impossible(
            "ready_min", ready_min, f"is too short even for {low_kg:g} kg", "raise the oven or eat later"
        )
    return _root(spare_min, low_kg, high_kg, 0.02)


@dataclass(frozen=True, slots=True)
class Sensitivity:
    """What one uncertain number does alone: minutes to ready at its 10th and 90th percentile, less the median's."""

    name: str
    at_p10_min: float
    at_p90_min: float

    @property
    def swing_min(self) -> float:
        """How far apart its two ends are."""
        return abs(self.at_p90_min - self.at_p10_min)


def sensitivities(case: RoastCase) -> tuple[Sensitivity, ...]:
    """Every uncertain number alone, the one that moves the ready time most first. Raises as `forecast_roast` does."""
    row = roast(case.kind)
    target_c, pull_c = ends_c(case, row)
    check_roast(case, row, target_c, pull_c)
    cooked = cook(case, row, one_at_a_time(row), max(target_c, pull_c))
    ready_min = cooked.reached_s(pull_c).max(axis=0) / 60.0
    moved = ready_min[1:].reshape(-1, 2) - ready_min[0]
    found = [Sensitivity(prior.name, *map(float, ends)) for prior, ends in zip(priors(row), moved, strict=True)]
    return tuple(sorted(found, key=lambda one: -one.swing_min))


@dataclass(frozen=True, slots=True)
class Trade:
    """What a change does to the median roast: minutes and loss (a share of the mass, and kg a piece) over the case's.

    `change` is "hotter" or "cooler" (every setting by HOTTER_K) or "later" (pulled LATER_K further on).
    """

    change: Change
    by_k: float
    ready_min: float
    loss_fraction: float
    loss_kg: float


def trades(case: RoastCase) -> tuple[Trade, ...]:
    """What a hotter oven, a cooler one and a later pull cost in juice and save in time, where the row allows them.

    No oven under the federal 325 F is offered for a bird. The same members stand behind both sides of a difference.
    Raises as `forecast_roast` does.
    """
    row = roast(case.kind)
    _, pull_c = ends_c(case, row)
    few = replace(case, members=min(case.members, SEARCH_MEMBERS), platter=None)
    now = forecast_roast(few)
    changed: dict[Change, tuple[float, RoastCase]] = {
        "hotter": (HOTTER_K, _warmer_oven(few, HOTTER_K)),
        "later": (LATER_K, replace(few, pull_c=pull_c + LATER_K)),
    }
    cooler = _warmer_oven(few, -HOTTER_K)
    if not row.poultry or min(step.temperature_c for step in cooler.oven) >= BIRD_OVEN_C:
        changed["cooler"] = (-HOTTER_K, cooler)
    found = []
    for change, (by_k, other) in changed.items():
        try:
            then = forecast_roast(other)
        except TurnspitError:
            continue  # past what the row or boiling water allows
        more = then.loss_fraction.p50 - now.loss_fraction.p50
        found.append(Trade(change, by_k, then.ready_min.p50 - now.ready_min.p50, more, more * case.mass_kg))
    return tuple(found)


def _warmer_oven(case: RoastCase, by_k: float) -> RoastCase:
    """The case with every setting that is not off changed by `by_k`."""
    return replace(
        case,
        oven=tuple(
            replace(step, temperature_c=step.temperature_c + by_k) if step.temperature_c >= OFF_BELOW_C else step
            for step in case.oven
        ),
    )


def _check_minutes(ready_min: float) -> None:
    check_number("ready_min", ready_min, 0.0, 1e5, "give the minutes it may take")


def _ready_min(case: RoastCase, certainty: float) -> float:
    OutOfRange.check("certainty", certainty, 0.01, 0.99, "give a share of the members, 0.5 or 0.9")
    forecast = forecast_roast(replace(case, members=min(case.members, SEARCH_MEMBERS), platter=None))
    return forecast.ready_quantile_min(certainty)


def _coolest_that_cooks(case: RoastCase, row: RoastRow, low_c: float) -> float:
    """The low end of the search: well above the end temperature, and for a bird what its rule asks."""
    floor_c = BIRD_OVEN_C if row.poultry else low_c
    return max(low_c, floor_c, ends_c(case, row)[0] + OFF_BELOW_C)


def _root(spare: Callable[[float], float], low: float, high: float, tolerance: float) -> float:
    from scipy.optimize import brentq  # here, because it takes a quarter of a second and few questions need it

    return float(brentq(spare, low, high, xtol=tolerance))
