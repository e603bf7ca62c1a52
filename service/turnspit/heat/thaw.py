"""How long a frozen piece takes to thaw in a refrigerator, in cold water, or in one after the other.

The solver of the roast with ice in it, an ensemble over what is not known, and the federal rules beside it: the
plan takes the later of the two. Conduction makes the hours grow with mass^0.45, the rules with mass: they part at
both ends.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from turnspit.errors import Impossible
from turnspit.heat.cases import ThawCase, ThawForecast, ThawMethod
from turnspit.heat.column import Column
from turnspit.heat.draws import stratified_normals
from turnspit.heat.given import check_draws, check_mass, check_number, check_word
from turnspit.heat.material import Floats, Material
from turnspit.heat.properties import LEAN_MEAT_FREEZING_C, Composition, composition, density, material
from turnspit.heat.roasts import KINDS, roast
from turnspit.heat.solver import Body, History, march
from turnspit.heat.surface import Film
from turnspit.message import Caution, Message
from turnspit.reference import caution, rule, table
from turnspit.spread import Spread

THAWED_C = -1.0
"""The core is thawed, if still icy cold, when it passes this."""
WARM_C = 5.0
"""The surface's limit of the Food Code, 3-501.13 (41 F)."""
MASS_RANGE_KG = (0.2, 20.0)
REFRIGERATOR_MOST_H = 200.0
PART_FROZEN_C = -5.0
"""Above this a good part of the water is not frozen, and a degree more or less decides."""
MEDIUM_RANGE_C: dict[ThawMethod, tuple[float, float]] = {"refrigerator": (1.0, 10.0), "cold_water": (1.0, 21.2)}
"""The Food Code lets water be 21.1 C (70 F) at most, 3-501.13(B)."""
USUAL_C: dict[ThawMethod, float] = {"refrigerator": 3.3, "cold_water": 10.0}

FILM: dict[ThawMethod, tuple[float, float]] = {"refrigerator": (6.5, 0.15), "cold_water": (180.0, 0.30)}
"""Surface coefficient in W/(m2 K) and its spread (log): still refrigerator air with radiation (5 to 10), and still
water around a bag (100 to 250); handbook ranges from memory."""
MEDIUM_SPREAD_K: dict[ThawMethod, float] = {"refrigerator": 0.7, "cold_water": 1.0}
SIZE_SPREAD, ICE_SPREAD, CONDUCTIVITY_SPREAD = 0.06, 0.03, 0.08
"""Log spreads: effective length at a mass, freezable water, conductivity (Levy against measurements)."""

CELLS, _STEPS_TO_EXPECTED = 12, 32
"""Coarse on purpose: within 1.2 percent of 32 cells and 300 steps."""


def forecast_thaw(case: ThawCase) -> ThawForecast:
    """Hours until the core of `case` passes -1 C, beside the federal rule.

    Valid from 0.2 to 20 kg, refrigerators of 1 to 10 C, water of 1 to 21 C, starts of -30 to -1.7 C, 0 to 200 h in
    the refrigerator before the water. Raises OutOfRange beyond, Unknown for a kind that is not in `KINDS` or another
    method, Impossible for what is no number, a mass that is not above 0, or a piece that is not frozen.
    """
    _check(case)
    row = roast(case.kind)
    members = _Members.drawn(case)
    rule_h = _rule_h(case) if row.poultry else None
    history = _thawed(case, members, least_h=rule_h[1] if rule_h else 0.0)
    hours = history.times_s / 3600
    ready_h = _crossing_h(hours, history.core_c, THAWED_C)
    model_h = Spread.of(ready_h)
    plan_h = max(model_h.p90, rule_h[1]) if rule_h else model_h.p90
    above_h = Spread.of(_hours_above(hours, history.surface_c, WARM_C, plan_h))
    return ThawForecast(
        case=case,
        model_h=model_h,
        rule_h=rule_h,
        plan_h=plan_h,
        surface_above_5c_h=above_h,
        curve_h=hours,
        core_c=np.median(history.core_c, axis=1),
        surface_c=np.median(history.surface_c, axis=1),
        assumptions=_assumptions(case, row.poultry),
        cautions=_cautions(case, above_h),
    )


# ------------------------------------------------------------------------------------------------ the case


def _check(case: ThawCase) -> None:
    check_word("kind", case.kind, KINDS)
    check_word("method", case.method, tuple(MEDIUM_RANGE_C))
    check_draws(case.members, case.seed)
    check_mass(case.mass_kg, *MASS_RANGE_KG)
    check_number("start_c", case.start_c, -30.0, 0.0, "a freezer is about -18 C, that is 0 F")
    if case.start_c > LEAN_MEAT_FREEZING_C:
        way_out = f"meat holds ice below {LEAN_MEAT_FREEZING_C:g} C only: say that it is thawed"
        raise Impossible("start_c", case.start_c, "is not frozen", way_out)
    way_out = "thaw in the cold, not on the counter; cool warm tap water with ice"
    check_number("medium_c", _medium_c(case, case.method), *MEDIUM_RANGE_C[case.method], way_out)
    check_number("refrigerator_h", case.refrigerator_h, 0.0, REFRIGERATOR_MOST_H, "give the hours before the water")
    if case.refrigerator_h > 0 and case.method == "refrigerator":
        limit = "is for what goes into cold water afterwards"
        raise Impossible("refrigerator_h", case.refrigerator_h, limit, "give method cold_water, or leave it out")


def _medium_c(case: ThawCase, method: ThawMethod) -> float:
    own = case.medium_c if method == case.method else None
    return USUAL_C[method] if own is None else own


def _rule_h(case: ThawCase) -> tuple[float, float]:
    """The federal window for birds: a day for every 4 to 5 lb, or 30 min a pound in cold water for what is left."""
    slow = rule("thaw-refrigerator", "home").limits
    days = (slow["low_h_per_kg"] * case.mass_kg, slow["high_h_per_kg"] * case.mass_kg)
    if case.method == "refrigerator":
        return days
    water_h = rule("thaw-cold-water", "home").limits["rate_h_per_kg"] * case.mass_kg
    before_h = case.refrigerator_h
    low_h, high_h = (before_h + water_h * max(0.0, 1 - before_h / whole) for whole in days)
    return low_h, high_h


# -------------------------------------------------------------------------------------------- the ensemble


@dataclass(frozen=True, slots=True)
class _Members:
    """One column a member, and what each is thawed by."""

    body: Body
    area_factor: float
    film: dict[ThawMethod, Floats]
    medium_c: dict[ThawMethod, Floats]
    expected_s: dict[ThawMethod, float]

    @classmethod
    def drawn(cls, case: ThawCase) -> _Members:
        normal = stratified_normals(5, case.members, case.seed)
        food = composition(roast(case.kind).composition)
        # the handbook's -2.8 C for chicken and -2.2 for pork would have them thawed sooner; the later is planned
        food = replace(food, freezing_c=max(food.freezing_c, LEAN_MEAT_FREEZING_C))
        stuff = material(food)
        coefficient = FILM[case.method][0]
        column = _column(case, food, coefficient)
        radius_m = column.radius_m * np.exp(SIZE_SPREAD * normal[0])
        drier = np.exp(ICE_SPREAD * normal[1])
        leading = np.exp(CONDUCTIVITY_SPREAD * normal[2])
        members = Material(
            capacity=stuff.capacity,
            conductivity=stuff.conductivity * leading,
            conductivity_slope=stuff.conductivity_slope * leading,
            freezing_c=stuff.freezing_c,
            frozen_capacity=stuff.frozen_capacity,
            latent=stuff.latent * drier,
            ice_conductivity=stuff.ice_conductivity * leading,
        )
        return cls(
            body=Body(radius_m, np.full(case.members, column.exponent), members, CELLS),
            area_factor=column.area_factor,
            film={way: mean * np.exp(spread * normal[3]) for way, (mean, spread) in FILM.items()},
            medium_c={
                way: np.maximum(_medium_c(case, way) + MEDIUM_SPREAD_K[way] * np.clip(normal[4], -2, 2), 0.5)
                for way in FILM
            },
            expected_s={way: _plank_s(stuff, column, mean, _medium_c(case, way)) for way, (mean, _) in FILM.items()},
        )

    def surface(self, way: ThawMethod) -> Film:
        return Film(self.medium_c[way], self.film[way] * self.area_factor)


def _column(case: ThawCase, food: Composition, film: float) -> Column:
    from turnspit.heat.shapes import rounded  # here: whole birds do not need it, and it takes long to load

    pieces = table("pieces").by("piece")
    piece = pieces.get(case.kind) or pieces["bird" if roast(case.kind).poultry else "joint"]
    if "radius_m_per_kg_third" in piece:
        return Column(piece["radius_m_per_kg_third"] * case.mass_kg ** (1 / 3), 1.5)
    first, second, third = piece["box"]
    share = first * second * third * piece["fullness"]
    edge_m = float(case.mass_kg / (density(food, -18.0) * share)) ** (1 / 3)
    edges_m = (first * edge_m, second * edge_m, third * edge_m)
    return rounded(edges_m, piece["fullness"], film / float(np.asarray(material(food).conductivity)))


def _plank_s(stuff: Material, column: Column, film: float, medium_c: float) -> float:
    """Plank's thawing time in s (sharp freezing point): the scale of the time steps, not an answer."""
    heat = float(np.asarray(stuff.latent)) + 18 * float(np.asarray(stuff.frozen_capacity))
    drive_k = max(medium_c - float(np.asarray(stuff.freezing_c)), 0.5)
    inside = column.radius_m**2 / (2 * float(np.asarray(stuff.conductivity)))
    outside = column.radius_m / (film * column.area_factor)
    return heat / (drive_k * (column.exponent + 1)) * (outside + inside)


def _thawed(case: ThawCase, members: _Members, least_h: float) -> History:
    """The history until every member is thawed, and no shorter than `least_h`."""
    step_s = {way: expected_s / _STEPS_TO_EXPECTED for way, expected_s in members.expected_s.items()}
    state = members.body.state(case.start_c)
    before_s = case.refrigerator_h * 3600 if case.method == "cold_water" else 0.0
    parts: list[History] = []
    if before_s:
        slow = _times(before_s, min(step_s["refrigerator"], before_s / 20))
        parts.append(march(members.body, state, members.surface("refrigerator"), slow))
        state = parts[0].end

    def done(time_s: float, core_c: Floats) -> bool:
        return before_s + time_s >= least_h * 3600 and bool(core_c.min() > THAWED_C)

    times_s = _times(max(6 * members.expected_s[case.method], least_h * 3600 - before_s), step_s[case.method])
    parts.append(march(members.body, state, members.surface(case.method), times_s, stop=done))
    return _joined(parts)


def _times(duration_s: float, longest_s: float) -> Floats:
    """From 0 to `duration_s`: a short first step, then steps that grow to the longest."""
    growing = longest_s * np.array([0.02, 0.06, 0.14, 0.3, 0.6])
    steps = np.arange(growing[-1] + longest_s, max(duration_s, 2 * longest_s) + longest_s, longest_s)
    times_s = np.concatenate([[0.0], growing, steps])
    return np.asarray(times_s * (duration_s / times_s[-1]))


def _joined(parts: list[History]) -> History:
    if len(parts) == 1:
        return parts[0]
    first, second = parts
    return History(
        times_s=np.concatenate([first.times_s, first.times_s[-1] + second.times_s[1:]]),
        core_c=np.concatenate([first.core_c, second.core_c[1:]]),
        surface_c=np.concatenate([first.surface_c, second.surface_c[1:]]),
        water_kg_m2=np.concatenate([first.water_kg_m2, second.water_kg_m2[1:]]),
        heat_j_m2=np.concatenate([first.heat_j_m2, second.heat_j_m2[1:]]),
        end=second.end,
    )


# ------------------------------------------------------------------------------------- reading the history


def _crossing_h(hours: Floats, core_c: Floats, level_c: float) -> Floats:
    """When each member last rises through `level_c`, interpolated within the step; 0 where it begins above."""
    below = core_c <= level_c
    last = np.where(below.any(axis=0), below.shape[0] - 1 - below[::-1].argmax(axis=0), 0)
    member = np.arange(core_c.shape[1])
    after = np.minimum(last + 1, len(hours) - 1)
    low_c, high_c = core_c[last, member], core_c[after, member]
    share = np.where(high_c > low_c, (level_c - low_c) / np.where(high_c > low_c, high_c - low_c, 1.0), 0.0)
    return np.asarray(hours[last] + np.clip(share, 0.0, 1.0) * (hours[after] - hours[last]))


def _hours_above(hours: Floats, surface_c: Floats, level_c: float, until_h: float) -> Floats:
    """Hours each member's surface is above `level_c` until `until_h`, each step counted by its middle."""
    middle_c = 0.5 * (surface_c[1:] + surface_c[:-1])
    steps_h = np.diff(np.minimum(hours, until_h))
    return np.asarray(steps_h @ (middle_c > level_c))


def _assumptions(case: ThawCase, poultry: bool) -> tuple[Message, ...]:
    way, medium_c = case.method.replace("_", "-"), _medium_c(case, case.method)
    told = [Message(f"heat-thaw-{way}", medium_c=medium_c, start_c=case.start_c)]
    if case.method == "cold_water" and case.refrigerator_h > 0:
        told.append(Message("heat-thaw-both", hours_min=case.refrigerator_h * 60, medium_c=USUAL_C["refrigerator"]))
    if case.start_c > PART_FROZEN_C:
        told.append(Message("heat-thaw-part-frozen", start_c=case.start_c))
    if not poultry:
        told.append(Message("heat-thaw-no-rule"))
    return tuple(told)


def _cautions(case: ThawCase, above_h: Spread) -> tuple[Caution, ...]:
    told = [caution("thaw-refrigerator" if case.method == "refrigerator" else "thaw-cold-water")]
    if above_h.p90 > rule("thaw-four-hours").limits["elapsed_max_h"]:
        told.append(caution("thaw-four-hours"))
    return tuple(told)
