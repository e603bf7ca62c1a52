"""How large the thing that cools is, by dimensions, mass or both, and which column of the solver that is."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from turnspit.errors import Impossible, OutOfRange
from turnspit.heat.cases import ChillCase, Shape
from turnspit.heat.column import Column, slab
from turnspit.message import Message

MASS_RANGE_KG = (0.02, 100.0)
EXTENT_RANGE_MM = (5.0, 1000.0)
BIRD_RADIUS_M, BIRD_EXPONENT = 0.026, 0.5
"""Effective depth of a whole unstuffed bird at 1 kg, growing as mass^(1/3): the one its roasting time gives."""
USUAL_BOX = (1.0, 1.3, 2.2)
USUAL_FULLNESS = 0.7
USUAL_HEIGHT: dict[Shape, float] = {"cylinder": 2.4, "pot": 0.7}
"""Height over diameter where only the mass is told."""
LONG = 10.0
"""Height over diameter of a cylinder whose height is not told: a roll so long that its ends do not count."""
EMPTIEST, FULLEST = 0.3, 1.3
"""Mass over what the told box holds, beyond which they contradict each other. Above 1 the box is taken as full."""
THINNEST_M = 0.003
USUAL_DIMENSIONS: dict[Shape, int] = {"slab": 1, "brick": 3, "cylinder": 2, "pot": 2, "bird": 0}


@dataclass(frozen=True, slots=True)
class Extent:
    """Full extents in m, shortest first for bricks, diameter and height for what is round; `fullness` of the box."""

    edges_m: tuple[float, ...]
    fullness: float
    width_m: float
    assumptions: tuple[Message, ...] = ()


def extent(case: ChillCase, density_kg_m3: float) -> Extent:
    """The extent of a case. Raises Impossible where mass and dimensions contradict each other or both are missing."""
    _check(case)
    volume_m3 = None if case.mass_kg is None else case.mass_kg / density_kg_m3
    edges_m = tuple(mm / 1000 for mm in case.dims_mm)
    if volume_m3 is not None and not edges_m:
        told = _told_by_mass(case.shape, volume_m3, case.mass_kg or 0.0)
    elif case.shape in ("cylinder", "pot"):
        told = _round(case.shape, edges_m, volume_m3)
    elif case.shape == "slab" and len(edges_m) == 1:
        told = _layer(edges_m[0], volume_m3)
    else:
        told = _block(edges_m, volume_m3)
    if min(told.edges_m) < THINNEST_M:
        limit = f"is below {THINNEST_M * 1000:g} in the thinnest direction"
        raise Impossible("dims_mm", round(min(told.edges_m) * 1000, 2), limit, "check mass_kg and dims_mm")
    return told


def column(case: ChillCase, size: Extent, film_per_m: float) -> Column:
    """The solver's column; `film_per_m` is film coefficient over conductivity."""
    if case.shape == "bird":
        return Column(size.edges_m[0], BIRD_EXPONENT)
    from turnspit.heat.shapes import brick, cylinder, rounded  # here: it takes long to load

    if case.shape in ("cylinder", "pot"):
        diameter_m, height_m = size.edges_m
        return cylinder(diameter_m, height_m, film_per_m)
    if len(size.edges_m) == 1:
        return slab(size.edges_m[0])
    short, middle, long = size.edges_m
    if size.fullness >= 1:
        return brick((short, middle, long), film_per_m)
    return rounded((short, middle, long), size.fullness, film_per_m)


def _check(case: ChillCase) -> None:
    if case.mass_kg is not None:
        if not case.mass_kg > 0:
            raise Impossible("mass_kg", case.mass_kg, "is not above 0", "give the mass of one piece in kg")
        OutOfRange.check(
            "mass_kg", case.mass_kg, *MASS_RANGE_KG, "give the mass of one piece or pot; is that pounds?"
        )
    for mm in case.dims_mm:
        OutOfRange.check("dims_mm", mm, *EXTENT_RANGE_MM, "give full thicknesses in mm")
    most = 3 if case.shape == "slab" else USUAL_DIMENSIONS[case.shape]
    if len(case.dims_mm) > most or (case.shape == "brick" and 0 < len(case.dims_mm) < most):
        raise Impossible("dims_mm", case.dims_mm, "are too many or too few", f"a {case.shape} has {most}")
    least = 1 if case.shape == "cylinder" else USUAL_DIMENSIONS[case.shape]
    if case.mass_kg is None and len(case.dims_mm) < least:
        raise Impossible("dims_mm", case.dims_mm, "are missing", "give the dimensions or mass_kg")
    if case.mass_kg is None and case.shape == "bird":
        raise Impossible("mass_kg", None, "is missing", "a bird is sized by its mass")


def _told_by_mass(shape: Shape, volume_m3: float, mass_kg: float) -> Extent:
    """The usual proportions at this mass."""
    if shape == "bird":
        return Extent((BIRD_RADIUS_M * mass_kg ** (1 / 3),), 1.0, 1.25 * volume_m3 ** (1 / 3))
    if shape in ("cylinder", "pot"):
        diameter_m = (4 * volume_m3 / (math.pi * USUAL_HEIGHT[shape])) ** (1 / 3)
        size = _round(shape, (diameter_m,), volume_m3)
    else:
        unit_m = (volume_m3 / (math.prod(USUAL_BOX) * USUAL_FULLNESS)) ** (1 / 3)
        size = _block(tuple(share * unit_m for share in USUAL_BOX), volume_m3)
    return replace(size, assumptions=(Message("heat-chill-usual-shape", mm=min(size.edges_m) * 1000),))


def _round(shape: Shape, edges_m: tuple[float, ...], volume_m3: float | None) -> Extent:
    """Diameter and height; a mass tells how far a pot is filled, and the height of a roll where that is not told."""
    diameter_m, *heights_m = edges_m
    base_m2 = math.pi / 4 * diameter_m**2
    told_m = heights_m[0] if heights_m else None
    if volume_m3 is None:
        return Extent((diameter_m, told_m or LONG * diameter_m), 1.0, diameter_m)
    filled_m = volume_m3 / base_m2
    if told_m is not None and filled_m > FULLEST * told_m:
        raise _contradicting(volume_m3, base_m2 * told_m)
    height_m = filled_m if told_m is None else min(filled_m, told_m) if shape == "pot" else told_m
    return Extent((diameter_m, height_m), 1.0, diameter_m)


def _layer(depth_m: float, volume_m3: float | None) -> Extent:
    """A slab: of a given mass it is a square one with edges, else it goes on for ever."""
    if volume_m3 is None:
        return Extent((depth_m,), 1.0, max(depth_m, 0.25))
    side_m = math.sqrt(volume_m3 / depth_m)
    return Extent(tuple(sorted((depth_m, side_m, side_m))), 1.0, math.sqrt(depth_m * side_m))


def _block(edges_m: tuple[float, ...], volume_m3: float | None) -> Extent:
    """A box, and by the mass how much of it is filled; a slab of two edges is a square one."""
    edges_m = tuple(sorted((*edges_m, edges_m[1])[:3]))
    box_m3 = math.prod(edges_m)
    fullness = 1.0 if volume_m3 is None else volume_m3 / box_m3
    if volume_m3 is not None and not EMPTIEST < fullness < FULLEST:
        raise _contradicting(volume_m3, box_m3)
    fullness = min(fullness, 1.0)
    return Extent(edges_m, fullness, math.sqrt(edges_m[0] * edges_m[1]) * fullness**0.5)


def _contradicting(volume_m3: float, room_m3: float) -> Impossible:
    litres, room_l = volume_m3 * 1000, room_m3 * 1000
    fault = f"litres do not {'fit into' if litres > room_l else 'fill'} {room_l:.2f}"
    return Impossible("mass_kg", round(litres, 2), fault, "check mass_kg and dims_mm")
