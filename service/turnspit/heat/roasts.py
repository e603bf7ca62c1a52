"""The roasts the room knows: one row of `reference/data/roasts.toml` each. A new roast is a new row."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cache
from math import log
from types import MappingProxyType
from typing import Any, Literal

from turnspit.errors import Unknown
from turnspit.heat.cases import Calibration
from turnspit.reference import table

Standing = Literal["fitted", "assumed"]
Bounds = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Station:
    """A place where a probe goes, as a column of the solver.

    Its radius is `radius_m` at 1 kg and grows as mass^`mass_power`; `exponent` is n of x^n; the inner share `core` of
    the radius (0 without) is stuffing. `standing` tells whether times were fitted or its lag is assumed.
    """

    name: str
    exponent: float
    radius_m: float
    mass_power: float
    standing: Standing
    core: float = 0.0

    def radius_at(self, mass_kg: float) -> float:
        """Effective distance in m from cold spot to surface in a piece of `mass_kg`."""
        return float(self.radius_m * mass_kg**self.mass_power)


@dataclass(frozen=True, slots=True)
class RoastRow:
    """One kind of roast: C, kg of one piece, minutes. `doneness` maps the cook's words to end temperatures.

    `checked_kg` and `checked_oven_c` span the published rows; past them, inside the ranges, a forecast extrapolates.
    `extended_kg` and `extended_oven_c` are what it takes at all: past the ranges, where few roast, the law of the
    shape is stretched, so the window is that of a shape alone. `bought_as` is the kind under which portions, yields
    and brines know it: its own, but a bird that is cut flat is a bird.
    """

    kind: str
    poultry: bool
    composition: str
    calibration: Calibration
    shape: str
    mass_kg_range: Bounds
    checked_kg: Bounds
    oven_c_range: Bounds
    checked_oven_c: Bounds
    extended_kg: Bounds
    extended_oven_c: Bounds
    usual_oven_c: float
    usual_mass_kg: float
    safe_c: float
    default_target_c: float
    doneness: Mapping[str, float]
    rest_min_range: Bounds
    size_spread: float
    size_why: str
    crust_kg_m2: float
    drip: float
    bone_in: bool
    boneless_factor: float
    stations: tuple[Station, ...]
    stuffing: Station | None
    bought_as: str = ""

    def places(self, stuffed: bool) -> tuple[Station, ...]:
        """The stations that decide, the stuffing's among them when there is some."""
        return (*self.stations, self.stuffing) if stuffed and self.stuffing else self.stations


STRETCHED_SPREAD, STRETCHED_BY = 0.11, 1.5
"""The size spread of what is known by its shape only, and how far outside the usual range a piece is no more than
that, as a ratio of masses."""
SHRINKING = 1 / 3
"""How the length of a piece lighter than its kind usually is goes with its mass: it is cut smaller all round."""


def stretched(row: RoastRow, mass_kg: float) -> RoastRow:
    """The row for a piece outside the usual range: less sure of its size, and the lighter the smaller all round."""
    low_kg, high_kg = row.mass_kg_range
    beyond = max(low_kg / mass_kg, mass_kg / high_kg)
    if beyond <= 1.0:
        return row
    share = min(1.0, log(beyond) / log(STRETCHED_BY))
    row = replace(row, size_spread=row.size_spread + share * max(0.0, STRETCHED_SPREAD - row.size_spread))
    if mass_kg > high_kg:
        return row
    stuffing = row.stuffing and _shrinking(row.stuffing, low_kg)
    return replace(row, stations=tuple(_shrinking(place, low_kg) for place in row.stations), stuffing=stuffing)


def _shrinking(place: Station, from_kg: float) -> Station:
    power = max(place.mass_power, SHRINKING)
    return replace(place, radius_m=place.radius_at(from_kg) / from_kg**power, mass_power=power)


def roast(kind: str) -> RoastRow:
    """The row of `kind`. Raises Unknown with the kinds there are."""
    try:
        return _rows()[kind]
    except (KeyError, TypeError):
        raise Unknown("kind", kind, tuple(_rows())) from None


@cache
def _rows() -> Mapping[str, RoastRow]:
    return MappingProxyType({kind: _row(row) for kind, row in table("roasts").by("kind").items()})


def _row(row: Mapping[str, Any]) -> RoastRow:
    def bounds(name: str) -> Bounds:
        low, high = row[name]
        return float(low), float(high)

    return RoastRow(
        kind=row["kind"],
        poultry=row["poultry"],
        composition=row["composition"],
        calibration=row["calibration"],
        shape=row["shape"],
        mass_kg_range=bounds("mass_kg_range"),
        checked_kg=bounds("checked_kg"),
        oven_c_range=bounds("oven_c_range"),
        checked_oven_c=bounds("checked_oven_c"),
        extended_kg=bounds("extended_kg" if "extended_kg" in row else "mass_kg_range"),
        extended_oven_c=bounds("extended_oven_c"),
        usual_oven_c=float(row["usual_oven_c"]),
        usual_mass_kg=float(row["usual_mass_kg"]),
        safe_c=float(row["safe_c"]),
        default_target_c=float(row["default_target_c"]),
        doneness=MappingProxyType(dict(row["doneness"])),
        rest_min_range=bounds("rest_min_range"),
        size_spread=float(row["size_spread"]),
        size_why=row["size_why"],
        crust_kg_m2=float(row["crust_kg_m2"]),
        drip=float(row["drip"]),
        bone_in=row["bone_in"],
        boneless_factor=float(row["boneless_factor"]),
        stations=tuple(Station(**station) for station in row["stations"]),
        stuffing=Station(**row["stuffing"]) if "stuffing" in row else None,
        bought_as=row.get("bought_as", row["kind"]),
    )


KINDS: tuple[str, ...] = tuple(_rows())
"""Every kind of roast there is a row for."""
