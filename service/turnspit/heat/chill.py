"""How long something hot takes to cool: joints, birds, slices in a pan, pots, in air, water or an ice bath.

One column of the solver a member; forced and free convection, radiation, evaporation from bare surfaces, the
resistance of what it is packed in, and in liquids the mixing inside. The body starts at one temperature throughout.
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import get_args

import numpy as np

from turnspit.errors import Impossible, OutOfRange
from turnspit.heat.cases import ChillCase, ChillForecast, Medium
from turnspit.heat.chill_food import ChillFood, chill_food
from turnspit.heat.chill_shape import Extent, column, extent
from turnspit.heat.chill_surface import LARGE_LOAD, ChillSurface, chill_surface, warmed_air
from turnspit.heat.column import Column
from turnspit.heat.draws import stratified_normals
from turnspit.heat.given import check_draws, check_number, check_word, check_yes
from turnspit.heat.material import Floats, Material
from turnspit.heat.solver import Body, History, march
from turnspit.message import Caution, Message
from turnspit.reference import caution, rule
from turnspit.spread import Spread

CONDUCTIVITY_SPREAD = 0.08
"""Log spread: meat's fibres and its lost juice."""
PAN_ON_ICE = 0.8
"""Where the warmest place of a pan standing in ice lies, as a share of its depth: ice cools it from below, the air
above a little; half would be both faces alike, the whole the bottom alone. US school kitchens found two inches in ice
to be about what makes both stages: of rice it did, of ground meat not (Olds and others 2013, abstract)."""
PAN_ON_SHELF, PAN_SPREAD = 0.56, 0.2
"""The same on a shelf in air, whose lower face is the slower, and its log spread: on wire or solid, bare or covered,
by itself or among others (set by rice that took 10 h 5 cm deep and 13 h 10 cm deep; Muftugil 2016, an abstract)."""
CELLS, _STEPS_TO_EXPECTED = 12, 32
"""Coarse on purpose: within 1 percent of 32 cells and 300 steps."""
_MARGIN_K = 0.4
"""A wished temperature nearer than this to the medium is never reached in a time worth planning."""
COLDEST_C, UNFROZEN_K = -1.0, 0.3
"""The coldest that may be asked for, and how far above its freezing point a food must stay."""

MEDIUM_RANGE_C: dict[Medium, tuple[float, float]] = {
    "air": (-30.0, 30.0),
    "water": (-10.0, 30.0),
    "ice_bath": (0.0, 4.0),
}
_MEDIUM_WAY_OUT: dict[Medium, str] = {
    "air": "give the temperature of the air in C",
    "water": "give the temperature of the water in C",
    "ice_bath": "ice holds its bath near 0.5 C: leave it out, or give medium water",
}


def forecast_chill(case: ChillCase) -> ChillForecast:
    """Hours from `from_c` to `to_c` at the slowest point, and its curve.

    Valid for 0.02 to 100 kg (birds to 20), extents of 5 to 1000 mm, the shortest to 520, starts to 100 C, ends from
    -1 C (of what does not freeze there), air of -30 to 30 C and to 10 m/s, water (below 0 brine or glycol) of -10 to
    30 C. Raises OutOfRange beyond, Unknown for a shape, medium or packaging that is none, Impossible for what is no
    number, or where `to_c` lies above `from_c` or is not above the medium.
    """
    _check(case)
    food = chill_food(case.food, liquid=case.shape == "pot")
    if case.to_c < food.freezing_c + UNFROZEN_K:
        limit = f"is where it begins to freeze, near {food.freezing_c:g}"
        raise OutOfRange("to_c", case.to_c, limit, "give a temperature above that")
    size = extent(case, food.density_kg_m3)
    history = _cooled(case, food, size)
    hours = history.times_s / 3600
    slowest_c = np.percentile(history.core_c, (10, 50, 90), axis=1)
    return ChillForecast(
        case=case,
        hours=Spread.of(_falling_h(hours, history.core_c, case.to_c)),
        curve_h=hours,
        slowest_c=slowest_c,
        assumptions=(*food.assumptions, *size.assumptions, *_assumptions(case, food, size)),
        cautions=_cautions(hours, slowest_c, case),
    )


def chill_medium_c(case: ChillCase) -> float:
    """The medium's temperature: that of the case, but an ice bath is never above 1 C while there is ice in it."""
    return min(case.medium_c, 0.5) if case.medium == "ice_bath" else case.medium_c


def depth_for(case: ChillCase, hours: float, *, certainty: float = 0.9) -> float:
    """The depth in mm of a layer (a slab of 10 to 150 mm) that cools in `hours`.

    `certainty` is 0.1, 0.5 or 0.9. The other fields of `case` are kept. Raises OutOfRange where even 10 mm is too
    slow, Impossible where `hours` is no number; 150 is the most it gives.
    """
    check_number("hours", hours, 0.0, 1000.0, "give the hours it may take")
    if certainty not in (0.1, 0.5, 0.9):
        raise Impossible("certainty", certainty, "is not 0.1, 0.5 or 0.9", "0.9 is the careful one")

    def taken_h(depth_mm: float) -> float:
        spread = forecast_chill(replace(case, shape="slab", dims_mm=(depth_mm,), mass_kg=None)).hours
        return {0.1: spread.p10, 0.5: spread.p50, 0.9: spread.p90}[certainty]

    low_mm, high_mm = 10.0, 150.0
    if taken_h(low_mm) > hours:
        raise OutOfRange("hours", hours, f"is below {taken_h(low_mm):.1f}", "use smaller pieces or an ice bath")
    if taken_h(high_mm) <= hours:
        return high_mm
    while high_mm - low_mm > 1.0:
        middle_mm = 0.5 * (low_mm + high_mm)
        low_mm, high_mm = (middle_mm, high_mm) if taken_h(middle_mm) <= hours else (low_mm, middle_mm)
    return low_mm


def in_pan(case: ChillCase, food: ChillFood) -> bool:
    """Whether it is a layer of what cannot lie there as it is, so that its pan stands on a shelf or in the water."""
    return case.shape == "slab" and case.packaging is None and food.loose


# ------------------------------------------------------------------------------------------------ the case


def _check(case: ChillCase) -> None:
    if not isinstance(case.food, str) or not case.food.strip():
        raise Impossible("food", case.food, "is no name", "say what it is, such as cooked beef or stock")
    check_word("medium", case.medium, get_args(Medium))
    check_yes("stirred", case.stirred)
    check_draws(case.members, case.seed)
    check_number("from_c", case.from_c, -1.0, 100.0, "give the temperature of the food in C")
    check_number(
        "to_c", case.to_c, COLDEST_C, 99.0, "give the temperature it shall reach in C; freezing is not asked"
    )
    check_number("medium_c", case.medium_c, *MEDIUM_RANGE_C[case.medium], _MEDIUM_WAY_OUT[case.medium])
    check_number("air_m_s", case.air_m_s, 0.0, 10.0, "give the speed of the air in m/s")
    if not case.to_c < case.from_c:
        raise Impossible("to_c", case.to_c, f"is not below from_c {case.from_c:g}", "cooling goes downward")
    if case.to_c - chill_medium_c(case) < _MARGIN_K:
        limit = f"is not above the {case.medium.replace('_', ' ')} at {chill_medium_c(case):g}"
        raise Impossible("to_c", case.to_c, limit, "use a colder place or a higher temperature")


def _assumptions(case: ChillCase, food: ChillFood, size: Extent) -> tuple[Message, ...]:
    told = [Message("heat-chill-even", from_c=case.from_c)]
    if case.shape == "bird":
        told.append(Message("heat-chill-bird"))
        if case.medium != "air" and case.packaging is None:
            told.append(Message("heat-chill-flooded"))
    if case.shape == "pot" and not case.stirred:
        told.append(Message("heat-chill-thin" if food.thin else "heat-chill-thick"))
    if case.shape == "pot" and case.packaging is None:
        told.append(Message("heat-chill-covered"))
    if case.medium == "water" and case.medium_c < 0.0:
        told.append(Message("heat-chill-glycol"))
    if case.medium == "ice_bath":
        told.append(Message("heat-chill-ice-bath"))
    if case.stirred and case.shape != "pot" and case.medium == "air":
        told.append(Message("heat-chill-not-stirred"))
    if in_pan(case, food):
        told.append(Message("heat-chill-pan-on-shelf" if case.medium == "air" else "heat-chill-pan-on-ice"))
    elif case.medium != "air" and case.packaging is None and case.shape != "pot":
        told.append(Message("heat-chill-bare"))
    if warmed_air(case, size) > LARGE_LOAD:
        told.append(Message("heat-chill-large-load"))
    return tuple(told)


def _cautions(hours: Floats, slowest_c: Floats, case: ChillCase) -> tuple[Caution, ...]:
    """The two-stage rule: a reminder, and a warning where the P90 curve breaks it as far as it goes."""
    limits = rule("cooling-two-stage").limits
    if case.from_c < limits["from_c"]:
        return (caution("cooling-two-stage", "info"),)
    start, middle, cold = (
        np.interp(-limits[name], -np.minimum.accumulate(slowest_c[2]), hours)
        for name in ("from_c", "middle_c", "cold_c")
    )
    late = middle - start > limits["first_max_h"] or cold - start > limits["total_max_h"]
    return (caution("cooling-two-stage", "warn" if late else "info"),)


# -------------------------------------------------------------------------------------------- the ensemble


def _cooled(case: ChillCase, food: ChillFood, size: Extent) -> History:
    panned = in_pan(case, food)
    if panned and case.medium != "air":
        case = replace(case, packaging="mould")
    length_spread = PAN_SPREAD if panned and case.medium == "air" else size.spread
    normals = stratified_normals(8, case.members, case.seed)
    mixing = food.stirred if case.stirred else food.mixing
    stuff = food.material
    base_k = float(np.asarray(stuff.conductivity_at(np.array([0.5 * (case.from_c + case.to_c)])))[0])
    nominal = chill_surface(case, size, chill_medium_c(case), normals[:, :1] * 0.0)
    shape = column(case, size, nominal.nominal_film / (base_k * mixing))
    if panned:
        shape = Column((PAN_ON_SHELF if case.medium == "air" else PAN_ON_ICE) * min(size.edges_m), 0.0)
    leading = np.exp(CONDUCTIVITY_SPREAD * normals[0]) * mixing * np.exp(food.mixing_spread * normals[1])
    body = Body(
        shape.radius_m * np.exp(length_spread * normals[2]),
        np.full(case.members, shape.exponent),
        _led(stuff, leading),
        CELLS,
    )
    surface = chill_surface(case, size, chill_medium_c(case), normals[3:], shape.area_factor)
    step_s = _expected_s(case, stuff, base_k * mixing, shape, nominal) / _STEPS_TO_EXPECTED
    return march(
        body, body.state(case.from_c), surface, _times(step_s), stop=lambda _, core_c: bool(core_c.max() < case.to_c)
    )


def _times(step_s: float) -> Floats:
    """A short first step that grows to `step_s`, and on by a fortieth of the time gone for who takes longest."""
    times, step = [0.0], 0.01 * step_s
    while times[-1] < 40 * _STEPS_TO_EXPECTED * step_s:
        times.append(times[-1] + step)
        step = max(min(1.6 * step, step_s), times[-1] / 40)
    return np.array(times)


def _led(stuff: Material, leading: Floats) -> Material:
    return replace(
        stuff,
        conductivity=stuff.conductivity * leading,
        conductivity_slope=stuff.conductivity_slope * leading,
        ice_conductivity=stuff.ice_conductivity * leading,
    )


def _expected_s(case: ChillCase, stuff: Material, conductivity: float, shape: Column, nominal: ChillSurface) -> float:
    """Time constants of inside and film in a row, over the fall asked for: the scale of the steps, not an answer."""
    capacity = float(np.asarray(stuff.capacity))
    inside = capacity * shape.radius_m**2 / (conductivity * (2.5 + 3.6 * shape.exponent))
    film = capacity * shape.radius_m / ((shape.exponent + 1) * nominal.nominal_film * shape.area_factor)
    medium_c = chill_medium_c(case)
    return (inside + film) * math.log(1.5 * (case.from_c - medium_c) / (case.to_c - medium_c))


def _falling_h(hours: Floats, core_c: Floats, level_c: float) -> Floats:
    """When each member falls through `level_c`, interpolated within the step."""
    falling = np.minimum.accumulate(core_c, axis=0)
    return np.array([np.interp(-level_c, -member, hours, right=math.inf) for member in falling.T])
