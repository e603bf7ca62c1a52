"""What is asked of the brine room and what it answers."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from turnspit.message import Caution, Message
from turnspit.spread import Spread

SoldAs = Literal["plain", "injected", "kosher"]
SaltKind = Literal["table", "flake_kosher", "coarse_kosher", "kosher", "finishing_flake"]
Method = Literal["wet", "equilibrium", "dry"]

MEMBERS = 256
SEED = 1


@dataclass(frozen=True, slots=True)
class BrineCase:
    """A bird (or joint), a vessel and a wish. What is None is worked out or assumed and said.

    `strength_percent` is grams of salt in 100 g of brine (salt and water together), `sugar_percent` likewise.
    `method`: "wet", a brine stronger than the meat should get, taken out in time; "equilibrium", one with only as
    much salt as meat and water together are to hold; "dry", salt by percent of the raw weight. `target_percent` is
    that percent for the last two. `brine_c` is how cold the brine is kept, `tap_c` the cold tap.
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
    method: Method = "wet"
    target_percent: float | None = None
    brine_c: float = 3.0
    tap_c: float = 15.0
    serving_g: float = 85.0
    members: int = MEMBERS
    seed: int = SEED

    @property
    def brinable(self) -> bool:
        """Whether it may be salted at all: not what is sold as injected or kosher."""
        return self.sold_as not in ("injected", "kosher")


@dataclass(frozen=True, slots=True)
class SaltProfile:
    """Salt in the raw meat of one part after `hours`: percent by depth below the surface, surface first."""

    part: str
    hours: float
    depth_mm: NDArray[np.float64] = field(repr=False)
    salt_percent: NDArray[np.float64] = field(repr=False)


@dataclass(frozen=True, slots=True)
class BrinePlan:
    """A brine that can be made: amounts, fit, cold, hours and what the meat takes up.

    `allowed` is False for a bird sold as injected or kosher: then the amounts are zero and the caution says why; and
    for longer than raw meat keeps: then `case` has what was asked, and amounts and `hours` are of the longest time.
    `salt_cups` are the fewest and most US cups that hold `salt_g` of that salt, `salt_g_range` what the usual number
    of cups may really weigh; weights are exact. The water is in three parts that are cold when mixed:
    `concentrate_water_l` heated with the salt to `concentrate_c`, `cold_water_l` from the tap and `ice_kg`.
    `hours` is the case's, or the time taken between `hours_low` and `hours_high`; `finished_salt_percent` and
    `sodium_mg_per_serving` (of `case.serving_g`) are of the carved meat after that time, `salt_by_part` per part.
    `fits` is None without a vessel; `short_l` is what it lacks; it `overflows` where only the water that was said is
    too much; `vessels` is how many it takes for all pieces,
    `full_weight_kg` what one of them holds, `shelf_height_mm` the height of a common vessel of that size. Dry salting
    has no water and no vessel.
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
    headline: Message = field(default_factory=lambda: Message("brine-not-brined"))
    notes: tuple[Message, ...] = ()
    hours: float = 0.0
    of_water_percent: float = 0.0
    sugar_cups: float = 0.0
    salt_g_range: tuple[float, float] = (0.0, 0.0)
    concentrate_c: float = 100.0
    cold_water_l: float = 0.0
    short_l: float = 0.0
    overflows: bool = False
    would_fit: str | None = None
    vessels: int = 1
    shelf_height_mm: float = 0.0
    largest_kg: float | None = None
    salt_by_part: Mapping[str, Spread] = field(default_factory=dict)
    uptake_g: Spread | None = None
    hours_to_seasoned: Spread | None = None
    hours_to_too_salty: Spread | None = None
    profiles: tuple[SaltProfile, ...] = ()
