"""Does the bird fit, and how much brine covers it.

A bird displaces its solid volume; its cavity fills with brine. Its outline (cavity closed) is taken as an ellipsoid,
which fills 2/3 of the snug cylinder round it; a wider vessel of the same build needs more brine to the same height.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from turnspit.brine.geometry import geometry
from turnspit.errors import Impossible
from turnspit.reference import Row, table

SOLID_KG_L = 1.055
"""Meat and bone without the cavity, 1.04 to 1.07 kg/L (memory)."""
SNUG = 1.5
"""A cylinder over the ellipsoid inside it."""
HEADSPACE = 1.1
"""Room above the brine for a hand and a lid (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Fit:
    """Litres. `needed_l` is the smallest vessel that takes the bird covered, with all the water that was said;
    `covers_l` the brine that it wants. It `overflows` where the bird would fit, but not with so much water.

    `short_l` is what the vessel lacks, 0 where it fits; `would_fit` names the smallest common vessel that does, and
    `largest_kg` the heaviest piece of which this vessel takes `count`. `vessels` is how many are needed: of the given
    one where a piece fits at all, else of a common size. `height_mm` is the height of a common vessel of that size.
    """

    displaced_l: float
    needed_l: float
    covers_l: float
    fits: bool | None
    short_l: float
    would_fit: str | None
    would_fit_l: float | None
    largest_kg: float | None
    vessels: int
    height_mm: float
    overflows: bool = False


def fit(kind: str, mass_kg: float, count: int, vessel_l: float | None, water_l: float | None = None) -> Fit:
    """How `count` pieces of `mass_kg` sit in `vessel_l` litres, or in the smallest vessel where that is None, with
    `water_l` litres of water where so much was said.

    Raises Impossible for a vessel smaller than the meat itself.
    """
    displaced = count * mass_kg / SOLID_KG_L
    snug = SNUG * count * mass_kg / envelope_kg_l(kind)
    room = snug * HEADSPACE
    needed = max(room, displaced + (water_l or 0.0))
    if vessel_l is not None and vessel_l <= displaced:
        raise Impossible(
            "vessel_l",
            vessel_l,
            f"is smaller than the meat alone, {displaced:.1f} L",
            f"take a vessel of {needed:.1f} L or more, joint the bird, or salt it dry",
        )
    chosen = needed if vessel_l is None or vessel_l < room else vessel_l
    filled = chosen ** (2 / 3) * snug ** (1 / 3)  # same build: the filled share falls with the vessel's height
    best = _smallest_common(needed)
    return Fit(
        displaced_l=displaced,
        needed_l=needed,
        overflows=vessel_l is not None and room <= vessel_l < needed,
        covers_l=filled - displaced,
        fits=None if vessel_l is None else vessel_l >= needed,
        short_l=0.0 if vessel_l is None else max(needed - vessel_l, 0.0),
        would_fit=None if best is None else str(best["key"]),
        would_fit_l=None if best is None else float(best["litres"]),
        largest_kg=None if vessel_l is None else vessel_l / HEADSPACE / SNUG * envelope_kg_l(kind) / count,
        vessels=_vessels(count, needed / count, vessel_l),
        height_mm=float(_nearest_common(chosen)["height_mm"]),
    )


@dataclass(frozen=True, slots=True)
class CommonVessel:
    """A vessel of a common size that takes all pieces covered: the brine it then wants, and what it weighs full."""

    key: str
    litres: float
    height_mm: float
    covers_l: float
    contents_kg: float


def common_vessels(kind: str, mass_kg: float, count: int = 1) -> tuple[CommonVessel, ...]:
    """All common vessels that take `count` pieces, the smallest first: the smaller, the less brine and salt."""
    needed = fit(kind, mass_kg, count, None).needed_l
    rows = sorted(table("brine_vessels"), key=lambda row: float(row["litres"]))
    found = []
    for row in rows:
        if row["litres"] >= needed:
            covers = fit(kind, mass_kg, count, float(row["litres"])).covers_l
            weight = covers + count * mass_kg
            found.append(CommonVessel(str(row["key"]), float(row["litres"]), float(row["height_mm"]), covers, weight))
    return tuple(found)


def _vessels(count: int, needed_each_l: float, vessel_l: float | None) -> int:
    """How many vessels `count` pieces go into; all in one that is had made where not even one fits."""
    largest_l = max(float(row["litres"]) for row in table("brine_vessels")) if vessel_l is None else vessel_l
    in_each = int(largest_l / needed_each_l + 1e-9)
    return math.ceil(count / in_each) if in_each else 1


def _smallest_common(needed_l: float) -> Row | None:
    common = [row for row in table("brine_vessels") if row["litres"] >= needed_l]
    return min(common, key=lambda row: float(row["litres"]), default=None)


def _nearest_common(litres: float) -> Row:
    return min(table("brine_vessels"), key=lambda row: abs(float(row["litres"]) - litres))


def envelope_kg_l(kind: str) -> float:
    """Mass over the volume of the outline, cavity closed, kg/L."""
    return geometry(kind)[0].envelope_kg_m3 / 1000.0
