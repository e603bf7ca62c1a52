"""A body as the solver sees it: one column of cells from its coldest spot to its surface."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Column:
    """Radius, exponent n of the cross-section x^n, and the factor on what passes each m2 of its surface."""

    radius_m: float
    exponent: float
    area_factor: float = 1.0


def slab(thickness_m: float) -> Column:
    """An infinite slab cooled from both faces."""
    return Column(thickness_m / 2, 0.0)
