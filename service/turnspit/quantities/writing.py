"""Writes an amount as a cook would measure it: spoons and cups in the parts a kitchen owns, weights in round steps.

The rounding error stays within `tolerance` (one percent for salt, curing and leavening, three for the rest); where no
spoon comes that near, the amount is written by weight or in millilitres. Less than a tablespoon that no spoon
holds is teaspoons and pinches, or drops, within half a pinch, with its weight beside; of salt or leavening it is a
weight, with the nearest spoons beside. Whole things keep no tolerance.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache, lru_cache
from typing import Literal

from turnspit.errors import Impossible
from turnspit.quantities.amount import Amount
from turnspit.quantities.foods import Density, density_or_none, is_liquid
from turnspit.quantities.given import check_number
from turnspit.quantities.measuring import Parts, decimal, household, kept, whole_or_part
from turnspit.quantities.small import is_poured, with_drops, with_pinches
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
SPOONS_DIFFER = 0.015
"""A US spoon of a salt whose kind is not said is a metric spoon: 5 mL, not 4.93."""
WEIGHED_FROM_KG = 0.0002
"""Less than a fifth of a gram is no weight for a kitchen,"""
SPOONS_BESIDE_BELOW_KG = 0.003
"""and less than three grams is told in spoons as well, for who has no fine scale."""
WEIGHED_ABOVE_L = 1.9
"""A cook with US cups weighs what is not poured from two quarts on,"""
WEIGHED_WITHIN = 1.3
"""if the most that a volume of it weighs is not more than so many times the least."""


@dataclass(frozen=True, slots=True)
class Measured:
    """An amount as measured: parts such as ((1/2, cup), (2, tbsp)); `si` is what they come to in kg, L or pieces.

    `beside` is the same for who has no scale or no such spoon: the weight of pinches, the spoons near a weight.
    """

    parts: Parts
    si: float
    beside: Parts = ()

    def text(self, language: str = "en") -> str:
        """The parts in words: "1/2 cup + 2 tbsp", "3 lb 4 oz", "340 g", "1/4 tsp + 1 pinch (0.22 g)"."""
        beside = f" ({_parts_text(self.beside, language)})" if self.beside else ""
        return f"{_parts_text(self.parts, language)}{beside}"


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
    if not isinstance(value, Amount):
        check_number("amount", value)
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
        number = whole_or_part(value, unit_name, item)
        return Measured(((number, unit_name),), float(number) * (found.si if found and found.si else 1.0))
    if not value:
        return Measured(((value, unit_name),), 0.0)
    size = float(value) * found.si
    if not found.exact and size < unit("tsp").si:
        return _small(value, unit_name, found.si)
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
    weighed = _decimal(kg, "g", "kg", style.tolerance)
    fine = kg < SPOONS_BESIDE_BELOW_KG and weighed.parts[0][0].denominator != 1
    dense = density_or_none(style.item) if style.item and fine else None
    spoons = with_pinches(kg / dense.kg_per_l, style.kitchen)[0] if dense is not None and not dense.kinds else ()
    return replace(weighed, beside=spoons)


def _volume(litres: float, style: _Style) -> Measured:
    """Spoons when small, then cups; a large or metric amount by weight, or in mL and L where it is poured."""
    dense = density_or_none(style.item) if style.item else None
    unsure = dense is not None and bool(dense.kinds)
    if dense is not None and (dense.kinds or is_liquid(style.item)):
        dense = None  # a salt whose kind is not said, or what is poured: it stays a volume
    certain = dense is not None and dense.high < WEIGHED_WITHIN * dense.low
    if style.system == "us" and dense is not None and certain and litres > WEIGHED_ABOVE_L:
        return _mass(dense.kg_per_l * litres, style)
    if style.system == "us" or litres < SPOONS_BELOW_L:
        near = max(style.tolerance, SPOONS_DIFFER) if unsure else style.tolerance
        found = household(litres, "volume", style.kitchen, near)
        if found is not None:
            return Measured(*found)
        if unsure:
            spoons, si = with_pinches(litres, style.kitchen)
            if abs(si - litres) <= style.tolerance * litres:
                return Measured(spoons, si)
        if litres < unit("tbsp", "US").si and "us" in (style.own, style.system):
            return _between_spoons(litres, dense, style)
    if dense is not None and style.own == "us":
        return _decimal(dense.kg_per_l * litres, "g", "kg", style.tolerance)
    return _decimal(litres, "mL", "L", style.tolerance)


def _small(value: Fraction, unit_name: str, si: float) -> Measured:
    """Pinches, dashes and drops as they stand, in whole ones; less than one is half a pinch, or drops."""
    if value >= Fraction(3, 4):
        number = Fraction(round(value))
    elif unit_name == "dash":
        number, unit_name, si = Fraction(max(round(float(value) * si / unit("drop").si), 1)), "drop", unit("drop").si
    else:
        number, unit_name = Fraction(1), "smidgen" if unit_name == "pinch" else unit_name
        si = unit(unit_name).si
    return Measured(((number, unit_name),), float(number) * si)


def _between_spoons(litres: float, dense: Density | None, style: _Style) -> Measured:
    """Less than a tablespoon, which no spoon holds: what has to be exact by weight, the rest by pinch or drop."""
    poured = is_liquid(style.item) or is_poured(style.item)
    spoons, si = (with_drops if poured else with_pinches)(litres, style.kitchen)
    if style.tolerance > EXACT_TOLERANCE:
        weighed = dense is not None and dense.kg_per_l * litres >= WEIGHED_FROM_KG
        beside = _decimal(dense.kg_per_l * litres, "g", "kg", 2 * TOLERANCE).parts if dense and weighed else ()
        return Measured(spoons, si, beside)
    weight = dense.kg_per_l * litres if dense is not None else litres
    decimal_measure = _decimal(weight, *(("g", "kg") if dense is not None else ("mL", "L")), style.tolerance)
    return replace(decimal_measure, beside=spoons)


def _decimal(size: float, small: str, large: str, tolerance: float) -> Measured:
    rounded = decimal(size * 1000, tolerance)
    in_large = rounded >= 1000 and rounded % 10 == 0  # never three decimals: 1.375 reads as a thousand in Spanish
    return Measured(((rounded / 1000, large) if in_large else (rounded, small),), float(rounded) / 1000)


def _parts_text(parts: Parts, language: str) -> str:
    joint = " " if parts[0][1] == "lb" else " + "
    return joint.join(_part_text(number, name, language) for number, name in parts)


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
