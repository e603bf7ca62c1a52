"""The meat as salt sees it: plates and cylinders with their thickness, water and native sodium."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Literal

from turnspit.errors import Unknown
from turnspit.reference import table

Form = Literal["slab", "cylinder"]


@dataclass(frozen=True, slots=True)
class Part:
    """One kind of meat on a roast: `half_thickness_m` at 1 kg, growing with the cube root of the mass."""

    name: str
    form: Form
    half_thickness_m: float
    share_of_meat: float
    meat_of_raw: float
    water_fraction: float
    sodium_mg_per_100g: float
    envelope_kg_m3: float

    def reach_m(self, mass_kg: float) -> float:
        """Depth from the surface to the middle in a roast of `mass_kg`."""
        return float(self.half_thickness_m * mass_kg ** (1 / 3))


@cache
def geometry(kind: str) -> tuple[Part, ...]:
    """The parts of a roast. Raises Unknown for a kind without one."""
    rows = [row for row in table("salt_geometry") if row["kind"] == kind]
    if not rows:
        raise Unknown("kind", kind, list(dict.fromkeys(str(row["kind"]) for row in table("salt_geometry"))))
    return tuple(
        Part(
            name=str(row["part"]),
            form=row["shape"],
            half_thickness_m=float(row["half_thickness_m"]),
            share_of_meat=float(row["share_of_meat"]),
            meat_of_raw=float(row["meat_of_raw"]),
            water_fraction=float(row["water_fraction"]),
            sodium_mg_per_100g=float(row["sodium_mg_per_100g"]),
            envelope_kg_m3=float(row["envelope_kg_m3"]),
        )
        for row in rows
    )
