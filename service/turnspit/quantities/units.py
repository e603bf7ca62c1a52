"""Units by name: what they measure, how large they are in SI, and which kitchen's spoon or cup is meant.

Sizes come from the table `units`, spellings from `unit_names`. A cup, spoon, fluid ounce, pint, quart or gallon
depends on the region; without one the US customary measure is taken, and whoever asks says so.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from types import MappingProxyType
from typing import Literal, get_args

from turnspit.errors import Impossible, Unknown
from turnspit.quantities.given import check_text
from turnspit.reference import Row, table

Dimension = Literal["mass", "volume", "length", "temperature", "count"]
Region = Literal["US", "UK", "AU", "NZ", "CA", "imperial"]
REGIONS: tuple[Region, ...] = get_args(Region)

TEMPERATURES = ("degC", "degF", "gas_mark")


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit: `si` is its size in kg, L or m (0 for a temperature or piece); `si_low`, `si_high` where it varies."""

    name: str
    dimension: Dimension
    si: float
    si_low: float
    si_high: float
    region: Region | None
    source: str

    @property
    def exact(self) -> bool:
        """Whether the unit has one size by definition."""
        return self.si_low == self.si_high


def unit(name: str, region: Region | str | None = None) -> Unit:
    """The unit of that name or spelling ("cup", "Tbsp.", "pounds") in that region (None: US measures).

    Raises Unknown for a name that is no unit, and for a region that is none of REGIONS.
    """
    if region is not None and region not in REGIONS:
        raise Unknown("region", region, REGIONS)
    check_text("unit", name, "name a unit, as g or cup")
    canonical = name if name in _spellings_by_unit() else unit_named(name)
    if canonical is None:
        raise Unknown("unit", name, tuple(_sizes()["US"]) + TEMPERATURES)
    return _sizes()[region or "US"].get(canonical) or Unit(
        canonical, "temperature" if canonical in TEMPERATURES else "count", 0.0, 0.0, 0.0, None, "kitchen practice"
    )


@cache
def unit_named(spelling: str) -> str | None:
    """The unit that is spelled so on recipe lines ("T" -> "tbsp", "lbs." -> "lb"), or None."""
    exact, folded = _spellings()
    bare = " ".join(spelling.replace(".", " ").split())
    return exact.get(bare) or folded.get(bare.casefold())


@cache
def names_a_food(name: str) -> frozenset[str]:
    """Words before which the unit's name is part of a food's ("rib roast", "cake flour")."""
    return frozenset(_spellings_by_unit()[name].get("not_before", ()))


def holds_more(name: str) -> bool:
    """Whether one of the unit comes in a stated size: a 400 g tin, a 2 in piece, a 6 oz fillet."""
    return bool(_spellings_by_unit()[name].get("sized"))


def is_package(name: str) -> bool:
    """Whether a weight behind several of the unit is that of each: of tins and bottles, not of sticks or heads."""
    return bool(_spellings_by_unit()[name].get("package"))


def varies_by_region(name: str) -> bool:
    """Whether the measure differs between kitchens (a cup does, a gram does not)."""
    return name in _regional()


def kilograms(value: float, name: str) -> float:
    """A mass in kg. Raises Impossible for a unit that is no mass."""
    return _in_si(value, unit(name), "mass")


def litres(value: float, name: str, region: Region | str | None = None) -> float:
    """A volume in L, by the measures of the region. Raises Impossible for a unit that is no volume."""
    return _in_si(value, unit(name, region), "volume")


def metres(value: float, name: str) -> float:
    """A length in m. Raises Impossible for a unit that is no length."""
    return _in_si(value, unit(name), "length")


def in_unit(si_value: float, name: str, region: Region | str | None = None) -> float:
    """A mass in kg, a volume in L or a length in m as a number of that unit."""
    wanted = unit(name, region)
    if not wanted.si:
        raise Impossible("unit", name, "has no fixed size", "give a unit of mass, volume or length")
    return float(si_value) / wanted.si


def written_unit(name: str, plural: bool, language: str = "en") -> str:
    """How the unit is written after an amount in that language."""
    return str(_spellings_by_unit()[name][language][1 if plural else 0])


def unit_ratio(name: str, other: str, region: Region | str | None = None) -> Fraction:
    """How many of `other` make one of `name`; exact for units whose sizes are in a simple ratio."""
    return Fraction(unit(name, region).si / unit(other, region).si).limit_denominator(1_000_000)


def _in_si(value: float, found: Unit, dimension: Dimension) -> float:
    if found.dimension != dimension:
        raise Impossible("unit", found.name, f"measures {found.dimension}", f"give a unit of {dimension}")
    return float(value) * found.si


@cache
def _sizes() -> Mapping[str, Mapping[str, Unit]]:
    """For each region all its units: those that are the same everywhere, its own, and imperial ones for the rest."""
    read: dict[str | None, dict[str, Unit]] = {None: {}, **{region: {} for region in REGIONS}}
    for row in table("units"):
        size = float(row["si"])
        read[row.get("region")][row["unit"]] = Unit(
            row["unit"],
            row["dimension"],
            size,
            float(row.get("si_low", size)),
            float(row.get("si_high", size)),
            row.get("region"),
            row["source"],
        )
    everywhere, imperial = read[None], read["imperial"]
    metric_spoon = {"dsp": read["UK"]["dsp"]}
    sizes: dict[str, Mapping[str, Unit]] = {
        region: MappingProxyType(everywhere | metric_spoon | ({} if region == "US" else imperial) | read[region])
        for region in REGIONS
    }
    return MappingProxyType(sizes)


@cache
def _regional() -> frozenset[str]:
    return frozenset(row["unit"] for row in table("units") if row.get("region"))


@cache
def _spellings_by_unit() -> Mapping[str, Row]:
    return table("unit_names").by("unit")


@cache
def _spellings() -> tuple[Mapping[str, str], Mapping[str, str]]:
    """Spellings that hold in one case only, and those that hold in any."""
    exact: dict[str, str] = {}
    folded: dict[str, str] = {}
    for row in table("unit_names"):
        exact |= dict.fromkeys(row.get("exact", ()), row["unit"])
        for name in row["names"]:
            folded.setdefault(name.casefold(), row["unit"])
    return MappingProxyType(exact), MappingProxyType(folded)
