"""The dinner as it is wanted: what the cook said, with what was not said left as None for planning to assume."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime, time
from typing import Literal

from turnspit.brine import SaltKind, SoldAs
from turnspit.heat import SEED
from turnspit.heat.cases import State

Kitchen = Literal["home", "licensed"]


@dataclass(frozen=True, slots=True)
class RoastWish:
    """The roast; `mass_kg` is one piece. `in_house`: it is there already and need not be bought."""

    kind: str | None = None
    mass_kg: float | None = None
    count: int | None = None
    state: State | None = None
    stuffed: bool | None = None
    bone_in: bool | None = None
    sold_as: SoldAs | None = None
    target_c: float | None = None
    in_house: bool = False


@dataclass(frozen=True, slots=True)
class OvenWish:
    """The oven or ovens; all are alike."""

    temperature_c: float | None = None
    convection: bool | None = None
    count: int | None = None


@dataclass(frozen=True, slots=True)
class BrineWish:
    """Whether to brine, and with what; `done` says that it has been brined already."""

    wanted: bool | None = None
    done: bool = False
    hours: float | None = None
    water_l: float | None = None
    vessel_l: float | None = None
    salt_kind: SaltKind | None = None
    strength_percent: float | None = None


@dataclass(frozen=True, slots=True)
class Dinner:
    """One dinner. Exactly one of `serve_at` and `start_at` leads; both are aware datetimes.

    `children` and `non_eaters` (of the roast) are among the `covers`.
    `work_from` and `work_until` bound the hours in which the cook is asked to do something, local time.
    """

    roast: RoastWish = field(default_factory=RoastWish)
    serve_at: datetime | None = None
    start_at: datetime | None = None
    covers: int | None = None
    children: int = 0
    non_eaters: int = 0
    leftovers_wanted: bool | None = None
    oven: OvenWish = field(default_factory=OvenWish)
    brine: BrineWish = field(default_factory=BrineWish)
    kitchen: Kitchen | None = None
    at_risk: bool = False
    altitude_m: float = 0.0
    temper_min: float = 0.0
    work_from: time = time(6, 0)
    work_until: time = time(23, 0)
    seed: int = SEED
