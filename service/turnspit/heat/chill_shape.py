"""How large the thing that cools is, by dimensions, mass or both, and which column of the solver that is."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, replace
from typing import get_args

from turnspit.errors import Impossible, OutOfRange
from turnspit.heat.cases import ChillCase, Packaging, Shape
from turnspit.heat.column import Column, slab
from turnspit.heat.given import check_mass, check_number, check_word
from turnspit.message import Message

MASS_RANGE_KG, BIRD_RANGE_KG = (0.02, 100.0), (0.1, 20.0)
EXTENT_RANGE_MM = (5.0, 1000.0)
BIRD_RADIUS_M, BIRD_EXPONENT = 0.026, 0.5
"""Effective depth of a whole unstuffed bird at 1 kg, growing as mass^(1/3): the one its roasting time gives."""
FLOODED, FLOODED_SPREAD = 0.8, 0.14
"""Effective depth over that of a bird in air, where water fills its cavity and cools the breast from within: half at
best, the whole where that water stands still; broilers in an ice bath took half as long (0.7, an abstract)."""
TOLD_SPREAD, USUAL_SPREAD, BIRD_SPREAD = 0.08, 0.11, 0.12
"""Log spreads of the effective length: dimensions told to the centimetre of shapes that are no geometry; proportions
taken as usual; birds."""
USUAL_BOX = (1.0, 1.2, 2.8)
USUAL_FULLNESS = 0.65
"""Of a joint told by its mass alone: longer than a block and rounded, as loins and rolled joints are."""
ROLL_WORDS = frozenset({"rolled", "boned", "boneless", "tied", "roll", "log"})
"""What is called one of these and told by its mass alone is a roll, whatever else it is called."""
USUAL_HEIGHT: dict[Shape, float] = {"cylinder": 3.0, "pot": 1.0}
"""Height over diameter where only the mass is told; a pot as deep as wide is the slowest."""
POT_ENDS = 0.5
"""Heat that leaves the top and the bottom of a pot, over that of its side: air under the lid, a shelf below; in a
bath the bottom counts and the lid does not."""
PAN_ENDS = 0.7
"""The same for a rectangular pan in air: flat, its metal bottom on a wire shelf. Rice 5 cm deep took 10 h, 10 cm 13 h
(Muftugil 2016, an abstract); 0.5 has half as long again."""
LONG = 10.0
"""Height over diameter of a cylinder whose height is not told: a roll so long that its ends do not count."""
EMPTIEST, FULLEST = 0.3, 1.3
"""Mass over what the told box holds, beyond which they contradict each other. Above 1 the box is taken as full."""
THINNEST_M, THICKEST_M = 0.003, 0.52
"""The thickest is what 100 kg fill in a pot as deep as wide."""
DIMENSIONS: dict[Shape, tuple[int, int]] = {
    "slab": (1, 3),
    "brick": (3, 3),
    "cylinder": (1, 2),
    "pot": (1, 3),
    "bird": (0, 3),
}
"""How many are needed where no mass is told, and how many there may be; those of a bird are not used."""


@dataclass(frozen=True, slots=True)
class Extent:
    """Full extents in m, shortest first for bricks, diameter and height for what is round; `fullness` of the box.

    `area_m2` is roughly its surface, 0 for a layer that goes on for ever; `ends` what leaves the top and the bottom
    of what is round, over its side.
    """

    edges_m: tuple[float, ...]
    fullness: float
    width_m: float
    assumptions: tuple[Message, ...] = ()
    spread: float = TOLD_SPREAD
    area_m2: float = 0.0
    ends: float = 1.0

    @property
    def volume_m3(self) -> float:
        """What it holds, 0 for a layer or a roll that goes on for ever, and for birds."""
        if len(self.edges_m) == 1:
            return 0.0
        if len(self.edges_m) == 2:
            diameter_m, height_m = self.edges_m
            return 0.0 if height_m == LONG * diameter_m else math.pi / 4 * diameter_m**2 * height_m
        return math.prod(self.edges_m) * self.fullness


def extent(case: ChillCase, density_kg_m3: float) -> Extent:
    """The extent of a case. Raises Impossible where mass and dimensions contradict each other or both are missing."""
    _check(case)
    volume_m3 = None if case.mass_kg is None else case.mass_kg / density_kg_m3
    edges_m = tuple(mm / 1000 for mm in case.dims_mm)
    if volume_m3 is not None and (case.shape == "bird" or not edges_m):
        told = _told_by_mass(case, volume_m3)
    elif case.shape == "pot":
        told = _pot(edges_m, volume_m3, PAN_ENDS if case.medium == "air" else POT_ENDS)
    elif case.shape == "cylinder":
        told = _round(case.shape, edges_m, volume_m3)
    elif case.shape == "slab" and len(edges_m) == 1:
        told = _layer(edges_m[0], volume_m3)
    elif volume_m3 is not None and case.shape == "brick" and len(edges_m) < 3:
        told = _completed(edges_m, volume_m3)
    else:
        told = _block(edges_m, volume_m3)
    if min(told.edges_m) < THINNEST_M:
        limit = f"is below {THINNEST_M * 1000:g} in the thinnest direction"
        raise Impossible("dims_mm", round(min(told.edges_m) * 1000, 2), limit, "check mass_kg and dims_mm")
    if min(told.edges_m) > THICKEST_M:
        limit = f"is above {THICKEST_M * 1000:g} in the thinnest direction"
        raise OutOfRange(
            "dims_mm", round(min(told.edges_m) * 1000, 1), limit, "give full thicknesses in mm; divide it"
        )
    held_kg = told.volume_m3 * density_kg_m3
    if held_kg > MASS_RANGE_KG[1] * (1 + 1e-9):
        limit = f"come to {held_kg:.0f} kg, which is above {MASS_RANGE_KG[1]:g}"
        raise OutOfRange("dims_mm", case.dims_mm, limit, "give one piece or pot, full thicknesses in mm")
    return told


def column(case: ChillCase, size: Extent, film_per_m: float) -> Column:
    """The solver's column; `film_per_m` is film coefficient over conductivity."""
    if case.shape == "bird":
        return Column(size.edges_m[0], BIRD_EXPONENT)
    from turnspit.heat.shapes import brick, cylinder, rounded  # here: it takes long to load

    if case.shape in ("cylinder", "pot"):
        diameter_m, height_m = size.edges_m
        return cylinder(diameter_m, height_m, film_per_m, size.ends)
    if len(size.edges_m) == 1:
        return slab(size.edges_m[0])
    short, middle, long = size.edges_m
    if size.fullness >= 1:
        return brick((short, middle, long), film_per_m)
    return rounded((short, middle, long), size.fullness, film_per_m)


def _check(case: ChillCase) -> None:
    check_word("shape", case.shape, get_args(Shape))
    if case.packaging is not None:
        check_word("packaging", case.packaging, get_args(Packaging))
    if case.mass_kg is not None:
        check_mass(case.mass_kg, *(BIRD_RANGE_KG if case.shape == "bird" else MASS_RANGE_KG))
    if not isinstance(case.dims_mm, (tuple, list)):
        raise Impossible("dims_mm", case.dims_mm, "are no dimensions", "give full thicknesses in mm, such as [50]")
    for mm in case.dims_mm:
        check_number("dims_mm", mm, *EXTENT_RANGE_MM, "give full thicknesses in mm")
    least, most = DIMENSIONS[case.shape]
    if len(case.dims_mm) > most:
        raise Impossible("dims_mm", case.dims_mm, "are too many", f"a {case.shape} has {most} at most")
    if case.mass_kg is None and case.shape == "bird":
        raise Impossible("mass_kg", None, "is missing", "a bird is sized by its mass")
    if case.mass_kg is None and len(case.dims_mm) < least:
        fault = "are too few" if case.dims_mm else "are missing"
        raise Impossible("dims_mm", case.dims_mm, fault, f"a {case.shape} has {least} at least, or give mass_kg")


def _told_by_mass(case: ChillCase, volume_m3: float) -> Extent:
    """The usual proportions at this mass."""
    shape, mass_kg = case.shape, case.mass_kg or 0.0
    if shape == "bird":
        flooded = case.medium != "air" and case.packaging is None
        return Extent(
            (BIRD_RADIUS_M * mass_kg ** (1 / 3) * (FLOODED if flooded else 1.0),),
            1.0,
            1.25 * volume_m3 ** (1 / 3),
            (Message("heat-chill-bird-by-mass"),) if case.dims_mm else (),
            FLOODED_SPREAD if flooded else BIRD_SPREAD,
            5.5 * volume_m3 ** (2 / 3),
        )
    if shape in ("cylinder", "pot"):
        diameter_m = (4 * volume_m3 / (math.pi * USUAL_HEIGHT[shape])) ** (1 / 3)
        size = _round(shape, (diameter_m,), volume_m3)
    elif ROLL_WORDS & set(re.findall(r"\w+", case.food.casefold())):
        across_m = (4 * volume_m3 / (math.pi * USUAL_HEIGHT["cylinder"])) ** (1 / 3)
        size = _block((across_m, across_m, USUAL_HEIGHT["cylinder"] * across_m), volume_m3)
    else:
        unit_m = (volume_m3 / (math.prod(USUAL_BOX) * USUAL_FULLNESS)) ** (1 / 3)
        size = _block(tuple(share * unit_m for share in USUAL_BOX), volume_m3)
    told = Message("heat-chill-usual-shape", mm=min(size.edges_m) * 1000)
    return replace(size, assumptions=(told,), spread=USUAL_SPREAD)


def _pot(edges_m: tuple[float, ...], volume_m3: float | None, pan_ends: float) -> Extent:
    """Diameter and depth, or a rectangular pan, its least edge the depth: for it stands a round pot of that bottom.

    The ends of a pot pass less than its side, so a tall vessel so taken errs to the slow side.
    """
    if len(edges_m) == 3:
        depth_m, wide_m, long_m = sorted(edges_m)
        told = Message("heat-chill-rectangular", wide_mm=wide_m * 1000, long_mm=long_m * 1000, deep_mm=depth_m * 1000)
        size = _round("pot", (math.sqrt(4 * wide_m * long_m / math.pi), depth_m), volume_m3)
        return replace(size, assumptions=(told,), ends=pan_ends)
    if len(edges_m) == 1 and volume_m3 is None:
        size = _round("pot", (edges_m[0], edges_m[0] * USUAL_HEIGHT["pot"]), None)
        return replace(size, assumptions=(Message("heat-chill-full-pot"),), spread=USUAL_SPREAD)
    return _round("pot", edges_m, volume_m3)


def _completed(edges_m: tuple[float, ...], volume_m3: float) -> Extent:
    """A rounded block of which one or two edges are told: the rest, alike, follows from its mass."""
    rest = 3 - len(edges_m)
    missing_m = (volume_m3 / (math.prod(edges_m) * USUAL_FULLNESS)) ** (1 / rest)
    size = _block((*edges_m, *(missing_m,) * rest), volume_m3)
    told = Message("heat-chill-edges-by-mass", mm=missing_m * 1000)
    return replace(size, assumptions=(told,), spread=USUAL_SPREAD)


def _round(shape: Shape, edges_m: tuple[float, ...], volume_m3: float | None) -> Extent:
    """Diameter and height; a mass tells how far a pot is filled, and the height of a roll where that is not told."""
    diameter_m, *heights_m = edges_m
    base_m2 = math.pi / 4 * diameter_m**2
    told_m = heights_m[0] if heights_m else None
    if volume_m3 is None:
        return _roll(shape, diameter_m, told_m or LONG * diameter_m)
    filled_m = volume_m3 / base_m2
    if told_m is not None and filled_m > FULLEST * told_m:
        raise _contradicting(volume_m3, base_m2 * told_m)
    height_m = filled_m if told_m is None else min(filled_m, told_m) if shape == "pot" else told_m
    return _roll(shape, diameter_m, height_m)


def _roll(shape: Shape, diameter_m: float, height_m: float) -> Extent:
    area_m2 = math.pi * diameter_m * (diameter_m / 2 + height_m)
    ends = POT_ENDS if shape == "pot" else 1.0
    return Extent((diameter_m, height_m), 1.0, diameter_m, area_m2=area_m2, ends=ends)


def _layer(depth_m: float, volume_m3: float | None) -> Extent:
    """A slab: of a given mass it is a square one with edges, else it goes on for ever."""
    if volume_m3 is None:
        return Extent((depth_m,), 1.0, max(depth_m, 0.25))
    side_m = math.sqrt(volume_m3 / depth_m)
    return _box(tuple(sorted((depth_m, side_m, side_m))), 1.0)


def _block(edges_m: tuple[float, ...], volume_m3: float | None) -> Extent:
    """A box, and by the mass how much of it is filled; a slab of two edges, told in any order, is a square one."""
    edges_m = tuple(sorted((*edges_m, max(edges_m))[:3]))
    box_m3 = math.prod(edges_m)
    fullness = 1.0 if volume_m3 is None else volume_m3 / box_m3
    if volume_m3 is not None and not EMPTIEST < fullness < FULLEST:
        raise _contradicting(volume_m3, box_m3)
    fullness = min(fullness, 1.0)
    return _box(edges_m, fullness)


def _box(edges_m: tuple[float, ...], fullness: float) -> Extent:
    short, middle, long = edges_m
    area_m2 = 2 * (short * middle + short * long + middle * long) * fullness ** (2 / 3)
    return Extent(edges_m, fullness, math.sqrt(short * middle * fullness), area_m2=area_m2)


def _contradicting(volume_m3: float, room_m3: float) -> Impossible:
    litres, room_l = volume_m3 * 1000, room_m3 * 1000
    fault = f"do not {'fit into' if litres > room_l else 'fill'} {room_l:.2f} of dims_mm"
    return Impossible("mass_kg", f"of {litres:.2f} litres", fault, "check both")
