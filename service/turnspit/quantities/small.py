"""What is less than a spoon holds: eighths of a teaspoon with pinches, or drops of what is poured.

Half a pinch is as near as these come, about 0.15 mL: no spoon of a kitchen tells more.
"""

from __future__ import annotations

from fractions import Fraction

from turnspit.quantities.measuring import Parts
from turnspit.quantities.units import Region, unit

POURED = frozenset(("sauce", "extract", "essence", "oil", "vinegar", "juice", "syrup", "bitters", "liqueur", "salsa"))
_BASES = (12, 8, 4, 2, 0)
"""Sixteenths of a teaspoon that a spoon holds: 3/4, 1/2, 1/4, 1/8."""


def is_poured(item: str) -> bool:
    """Whether the last word of the item is of something that comes in drops, for foods that have no measure."""
    return item.casefold().partition(",")[0].rpartition(" ")[2] in POURED


def with_pinches(litres: float, region: Region | None) -> tuple[Parts, float]:
    """Teaspoons and pinches (a sixteenth each) that come nearest, and what they come to; never less than half one."""
    sixteenth = unit("tsp", region).si / 16
    if litres < 0.75 * sixteenth:
        return _with_size(((Fraction(1), "smidgen"),), region)
    whole, over = divmod(max(round(litres / sixteenth), 1), 16)
    base = next(base for base in _BASES if base <= over)
    spoons, rest = whole + Fraction(base, 16), over - base
    added = () if not rest else ((Fraction(1, 8), "tsp"),) if rest == 2 else ((Fraction(rest), "pinch"),)
    return _with_size((((spoons, "tsp"),) if spoons else ()) + added, region)


def with_drops(litres: float, region: Region | None) -> tuple[Parts, float]:
    """The spoons that are not too much, in eighths of a teaspoon, and drops; and what they come to."""
    eighth = unit("tsp", region).si / 8
    spoons, held = with_pinches(int(litres / eighth) * eighth, region) if litres >= eighth else ((), 0.0)
    drops = max(round((litres - held) / unit("drop").si), 0 if spoons else 1)
    return _with_size(spoons + (((Fraction(drops), "drop"),) if drops else ()), region)


def _with_size(parts: Parts, region: Region | None) -> tuple[Parts, float]:
    return parts, sum(float(number) * unit(name, region).si for number, name in parts)
