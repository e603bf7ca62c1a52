"""What is asked of the brine room and what it answers."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from turnspit.message import Caution, Message
from turnspit.spread import Spread

SoldAs = Literal["plain", "injected", "kosher"]
SaltKind = Literal["table", "flake_kosher", "coarse_kosher"]


@dataclass(frozen=True, slots=True)
class BrineCase:
    """A bird (or joint), a vessel and a wish. What is None is worked out or assumed and said.

    `strength_percent` is grams of salt in 100 g of brine (salt and water together), `sugar_percent` likewise.
    """

    kind: str = "turkey"
    mass_kg: float = 6.35
    count: int = 1
    sold_as: SoldAs | None = None
    vessel_l: float | None = None
    water_l: float | None = None
    strength_percent: float | None = None
    hours: float | None = None
    salt_kind: SaltKind = "table"
    sugar_percent: float = 0.0


@dataclass(frozen=True, slots=True)
class BrinePlan:
    """A brine that can be made: amounts, fit, cold, hours and what the meat takes up.

    `allowed` is False for a bird sold as injected or kosher: then the amounts are zero and the caution says why.
    `salt_g_range` is the uncertainty of measuring that salt by volume; weights are exact.
    """

    case: BrineCase
    allowed: bool
    strength_percent: float
    hours_low: float
    hours_high: float
    water_l: float
    salt_g: float
    sugar_g: float
    salt_cups: tuple[float, float]
    salometer_deg: float
    freezing_c: float
    density_kg_l: float
    cover_l: float
    displaced_l: float
    vessel_needed_l: float
    fits: bool | None
    concentrate_water_l: float
    ice_kg: float
    full_weight_kg: float
    finished_salt_percent: Spread
    sodium_mg_per_serving: Spread
    steps: tuple[Message, ...] = ()
    assumptions: tuple[Message, ...] = ()
    cautions: tuple[Caution, ...] = ()
    sources: tuple[str, ...] = ()
