"""Two of twelve pounds against one of twenty-four: what each way of making up the weight asks of oven and clock."""

from __future__ import annotations

import math
from dataclasses import dataclass

from turnspit.errors import TurnspitError
from turnspit.recipes.portions import POUND_KG, Flock, Sizing
from turnspit.reference import table
from turnspit.spread import Spread

MEMBERS = 64
SEED = 1


@dataclass(frozen=True, slots=True)
class FlockCooking:
    """One way with its time in the oven (minutes, None where the heat model does not know a piece of that size).

    `ovens` is how many household ovens roast them at once. `legs` counts the legs of a bird, 0 for a joint.
    """

    flock: Flock
    ready_min: Spread | None
    ovens: int
    legs: int


def compare_flocks(
    sizing: Sizing, *, oven_c: float | None = None, convection: bool = False, members: int = MEMBERS, seed: int = SEED
) -> tuple[FlockCooking, ...]:
    """The ways of `sizing`, the advised one first, each with hours by the heat model, ovens and legs."""
    ways = (sizing.flock, *sizing.others)
    ready = [
        _ready_min(sizing.case.kind, flock, oven_c, convection=convection, members=members, seed=seed)
        for flock in ways
    ]
    has_legs = sizing.carved.white_kg is not None and sizing.case.kind != "turkey_breast"
    return tuple(
        FlockCooking(flock, minutes, ovens_for(flock.count, flock.each_kg), 2 * flock.count if has_legs else 0)
        for flock, minutes in zip(ways, ready, strict=True)
    )


def ovens_for(count: int, each_kg: float) -> int:
    """Household ovens that roast `count` pieces of `each_kg` at once (common practice); the heaviest one apiece."""
    rows = sorted(table("oven_room"), key=lambda row: float(row["most_lb"]))
    row = next((row for row in rows if each_kg <= row["most_lb"] * POUND_KG + 1e-9), rows[-1])
    return math.ceil(count / int(row["pieces"]))


def _ready_min(
    kind: str, flock: Flock, oven_c: float | None, *, convection: bool, members: int, seed: int
) -> Spread | None:
    from turnspit.heat import OvenStep, RoastCase, forecast_roast, roast  # the sizes alone do not need it

    try:
        oven = OvenStep(0.0, roast(kind).usual_oven_c if oven_c is None else oven_c, convection)
        together = math.ceil(flock.count / ovens_for(flock.count, flock.each_kg))
        case = RoastCase(kind, flock.each_kg, together, oven=(oven,), members=members, seed=seed)
        return forecast_roast(case).ready_min
    except TurnspitError:
        return None
