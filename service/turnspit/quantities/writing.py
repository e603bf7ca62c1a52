"""Writes an amount as a cook would measure it: spoons and cups in the parts a kitchen owns, weights in round steps.

The rounding error stays within `tolerance` (one percent for salt, curing and leavening, three for the rest); where no
spoon comes that near, the amount is written by weight or in millilitres. Less than an eighth of a teaspoon of
anything else is pinches, and whole things are counted: these two keep no tolerance.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction
from functools import cache, lru_cache
from typing import Literal

from turnspit.errors import Impossible
from turnspit.quantities.amount import Amount
from turnspit.quantities.foods import density_or_none, is_liquid
from turnspit.quantities.measuring import Parts, decimal, household, kept, whole_or_part
from turnspit.quantities.units import Region, unit, written_unit
from turnspit.reference import table

System = Literal["us", "metric"]

TOLERANCE = 0.03
EXACT_TOLERANCE = 0.01
METRIC_UNITS = frozenset(("mg", "g", "kg", "mL", "cL", "dL", "L"))
DECIMAL_UNITS = METRIC_UNITS | {"mm", "cm", "m"}
SPOONS_BELOW_L = 0.05
SPOONS_BELOW_KG = 0.0567
"""Two ounces: less is measured by the spoon where no ounce mark fits (TM 10-412, General Information No. 1)."""
WEIGHED_ABOVE_L = 1.9
"""A cook with US cups weighs what is not poured from two quarts on,"""
WEIGHED_WITHIN = 1.3
"""if the most that a volume of it weighs is not more than so many times the least."""


@dataclass(frozen=True, slots=True)
class Measured:
    """An amount as measured: parts such as ((1/2, cup), (2, tbsp)); `si` is what they come to in kg, L or pieces."""

    parts: Parts
    si: float

    def text(self, language: str = "en") -> str:
        """The parts in words: "1/2 cup + 2 tbsp", "3 lb 4 oz", "340 g"."""
        joint = " " if self.parts[0][1] == "lb" else " + "
        return joint.join(_part_text(number, name, language) for number, name in self.parts)


@dataclass(frozen=True, slots=True)
class _Style:
    """How to write: the food, the system wanted, the system the amount is in, whose cups, how near."""

    item: str
    system: System
    own: System
    kitchen: Region | None
    tolerance: float


def write_amount(
    value: float | Fraction | Amount,
    unit_name: str = "",
    *,
    item: str = "",
    system: System | None = None,
    region: Region | None = None,
    tolerance: float | None = None,
    language: str = "en",
) -> str:
    """The amount as a cook would measure it, in its own system or the one asked for ("3/4 cup", "340 g").

    `item` decides the tolerance and lets a volume become a weight; ranges are written "2–3 cups". Raises Impossible
    for a negative amount, Unknown for a unit or region.
    """
    if isinstance(value, float) and not math.isfinite(value):
        raise Impossible("amount", value, "is not a number", "give an amount")
    amount = value if isinstance(value, Amount) else Amount(Fraction(value), unit_name, region=region)
    low, high = (
        None if end is None else measured(end, amount.unit, item, system, region=amount.region, tolerance=tolerance)
        for end in (amount.value, amount.high)
    )
    assert low is not None
    if high is None or high.parts == low.parts:
        return low.text(language)
    if len(low.parts) == len(high.parts) == 1 and low.parts[0][1] == high.parts[0][1]:
        return f"{written_number(*low.parts[0], language)}–{high.text(language)}"
    return f"{low.text(language)} – {high.text(language)}"


@lru_cache(maxsize=4096)
def tolerance_for(item: str) -> float:
    """How far from the amount its writing may be, as a part of it: 0.01 for salt, curing and leavening, else 0.03."""
    head = item.casefold().partition(",")[0].split()
    exact = any(head[-len(name) :] == list(name) for name in _exact_names() if len(name) <= len(head))
    return EXACT_TOLERANCE if exact else TOLERANCE


def measured(
    value: Fraction,
    unit_name: str,
    item: str = "",
    system: System | None = None,
    *,
    region: Region | None = None,
    tolerance: float | None = None,
) -> Measured:
    """As `write_amount`, but as parts with the size they come to."""
    if value.numerator < 0:
        raise Impossible("amount", float(value), "is negative", "give an amount of zero or more")
    found = unit(unit_name, region) if unit_name else None
    if found is None or not found.si or found.dimension == "length":
        number = whole_or_part(value)
        return Measured(((number, unit_name),), float(number) * (found.si if found and found.si else 1.0))
    if not value:
        return Measured(((value, unit_name),), 0.0)
    size = float(value) * found.si
    if not found.exact and size < unit("tsp").si:
        return Measured(((whole_or_part(value), unit_name),), float(whole_or_part(value)) * found.si)
    own: System = "metric" if unit_name in METRIC_UNITS else "us"
    kitchen = _kitchen(system or ("metric" if own == "metric" else None), region)
    if system in (None, own) and (kitchen == region or found.region is None) and kept(value, unit_name):
        return Measured(((value, unit_name),), size)
    style = _Style(item, system or own, own, kitchen, tolerance_for(item) if tolerance is None else tolerance)
    return _mass(size, style) if found.dimension == "mass" else _volume(size, style)


def _kitchen(system: System | None, region: Region | None) -> Region | None:
    """Whose spoons and cups are written: the recipe's own, or US ones and metric ones for who asks for a system."""
    if system == "us":
        return region if region in (None, "US") else "US"
    return "UK" if system == "metric" and region in (None, "US", "imperial") else region


def _mass(kg: float, style: _Style) -> Measured:
    """Pounds and ounces where they come near; below two ounces spoons; else grams and kilograms."""
    if style.system == "us":
        found = household(kg, "mass", style.kitchen, style.tolerance)
        dense = density_or_none(style.item) if found is None and style.item and kg < SPOONS_BELOW_KG else None
        if dense is not None and not dense.kinds:
            found = household(kg / dense.kg_per_l, "volume", style.kitchen, style.tolerance)
        if found is not None:
            return Measured(*found)
    return _decimal(kg, "g", "kg", style.tolerance)


def _volume(litres: float, style: _Style) -> Measured:
    """Spoons when small, then cups; a large or metric amount by weight, or in mL and L where it is poured."""
    dense = density_or_none(style.item) if style.item else None
    if dense is not None and (dense.kinds or is_liquid(style.item)):
        dense = None  # a salt whose kind is not said, or what is poured: it stays a volume
    certain = dense is not None and dense.high < WEIGHED_WITHIN * dense.low
    if style.system == "us" and dense is not None and certain and litres > WEIGHED_ABOVE_L:
        return _mass(dense.kg_per_l * litres, style)
    if style.system == "us" or litres < SPOONS_BELOW_L:
        found = household(litres, "volume", style.kitchen, style.tolerance)
        if found is not None:
            return Measured(*found)
        if style.tolerance > EXACT_TOLERANCE and litres < unit("tsp", style.kitchen).si / 8:
            pinches = whole_or_part(Fraction(litres / unit("pinch").si))
            return Measured(((pinches, "pinch"),), float(pinches) * unit("pinch").si)
    if dense is not None and style.own == "us":
        return _decimal(dense.kg_per_l * litres, "g", "kg", style.tolerance)
    return _decimal(litres, "mL", "L", style.tolerance)


def _decimal(size: float, small: str, large: str, tolerance: float) -> Measured:
    rounded = decimal(size * 1000, tolerance)
    in_large = rounded >= 1000 and rounded % 10 == 0  # never three decimals: 1.375 reads as a thousand in Spanish
    return Measured(((rounded / 1000, large) if in_large else (rounded, small),), float(rounded) / 1000)


def _part_text(number: Fraction, name: str, language: str) -> str:
    figures = written_number(number, name, language)
    return f"{figures} {written_unit(name, number > 1, language)}" if name else figures


def written_number(number: Fraction, name: str, language: str = "en") -> str:
    """The number as it stands before that unit: decimals for metric ones, else whole and fraction."""
    if name in DECIMAL_UNITS:
        text = f"{float(number):.3f}".rstrip("0").rstrip(".")
        return text.replace(".", ",") if language == "es" else text
    whole, over = divmod(number.numerator, number.denominator)
    part = f"{over}/{number.denominator}" if over else ""
    return f"{whole} {part}".rstrip() if whole else part or "0"


@cache
def _exact_names() -> frozenset[tuple[str, ...]]:
    return frozenset(tuple(row["name"].split()) for row in table("exact_measures"))
