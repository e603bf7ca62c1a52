"""What a cook tells of something that is to cool, as a case of the heat room: how much, in which vessel, where."""

from __future__ import annotations

from typing import Literal, get_args

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.heat import ChillCase
from turnspit.heat.chill_food import chill_food
from turnspit.quantities import pan

Place = Literal["refrigerator", "blast_chiller", "ice_bath"]
PLACES: tuple[Place, ...] = get_args(Place)
PLACE_C = {"refrigerator": 3.0, "blast_chiller": -2.0, "ice_bath": 0.0}
BLAST_M_S = 2.5
"""Air in a blast chiller; how cold each place is (common practice, no source)."""
HOT_C = 70.0
POT = "pot"


def cooling_case(
    food: str,
    place: Place = "refrigerator",
    *,
    depth_m: float | None = None,
    kg: float | None = None,
    litres: float | None = None,
    container: str = "",
    from_c: float = HOT_C,
    place_c: float | None = None,
) -> ChillCase:
    """`food` standing in a layer of `depth_m`, or so much of it in a `container`: "pot", or a pan by name or measure.

    Without a container, so much of it is taken to stand in a pot. Raises Unknown for a place or pan that is none,
    Impossible where neither depth nor amount is told, OutOfRange where the pan does not hold it.
    """
    if place not in PLACES:
        raise Unknown("place", place, PLACES)
    shape: Literal["slab", "pot"] = "slab"
    dims_mm: tuple[float, ...] = ()
    mass_kg = None
    if depth_m is not None:
        dims_mm = (depth_m * 1000,)
    elif kg is None and litres is None:
        raise Impossible(
            "depth", "(none)", "and amount are missing", "say how deep it stands, or how much in which pan"
        )
    elif container and container != POT:
        dims_mm = (_filled_m(food, container, kg, litres) * 1000,)
    else:
        shape, mass_kg = "pot", _kilograms(food, kg, litres)
    return ChillCase(
        food=food,
        shape=shape,
        dims_mm=dims_mm,
        mass_kg=mass_kg,
        medium="ice_bath" if place == "ice_bath" else "air",
        medium_c=PLACE_C[place] if place_c is None else place_c,
        air_m_s=BLAST_M_S if place == "blast_chiller" else 0.0,
        from_c=from_c,
    )


def _filled_m(food: str, container: str, kg: float | None, litres: float | None) -> float:
    held = pan(container)
    volume_l = litres if litres is not None else _kilograms(food, kg, None) / _kg_per_l(food)
    if volume_l > held.litres:
        pans = int(-(-volume_l // held.litres))
        raise OutOfRange(
            "amount",
            f"{volume_l:.3g} L",
            f"is above the {held.litres:.3g} L of one {held.name}",
            f"use {pans} of them",
        )
    by_area_m, by_capacity_m = volume_l / 1000 / held.area_m2, held.depth_m * volume_l / held.litres
    return max(by_area_m, by_capacity_m)  # walls slope and corners are round: the deeper is the slower


def _kilograms(food: str, kg: float | None, litres: float | None) -> float:
    return kg if kg is not None else (litres or 0.0) * _kg_per_l(food)


def _kg_per_l(food: str) -> float:
    return chill_food(food, liquid=True).density_kg_m3 / 1000
