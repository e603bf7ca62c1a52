"""How a roast goes in: its columns, what they are made of, how cold they are, and what will surround them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from turnspit.heat.cases import Cover, Pan, RestPlace, RoastCase
from turnspit.heat.crowding import shown
from turnspit.heat.ensemble import Members
from turnspit.heat.material import Floats, Material
from turnspit.heat.oven import FAN_W_M2K, ROOM_C, Oven, Stretch
from turnspit.heat.properties import composition, material
from turnspit.heat.roasts import RoastRow, Station
from turnspit.heat.solver import Body, State
from turnspit.heat.surface import STANDARD_PA, STILL_OVEN_W_M2K, HotAir, boiling_c, pressure_at_altitude

CELLS, CELLS_FINE = 12, 14
"""Cells from core to surface; the finer where ice or stuffing draws a front."""
RADIATION = 0.85
"""Effective exchange factor between the walls and the roast."""
ROOM_VAPOUR_PA = 1000.0
REST_W_M2K = 6.0
"""Free convection about a body of 15 cm that is 55 K above the room: 1.32 (dT/D)^(1/4) = 5.8."""
CUPBOARD_C = 60.0
CUT_WETNESS, CUT_CRUST_KG_M2 = 0.5, 0.3
"""Cut meat is wetter than the outside of a cooked joint (0.2, fitted; chill_surface.WETNESS), drier than free water,
and dries as it stands. Assumed: no cooling of carved meat at table has been published that we could find."""
FROZEN_C, HARD_FROZEN_C, PART_FROZEN_CORE_C, PART_FROZEN_SKIN_C = -18.0, -2.5, -3.0, 2.0
ICE_LENGTH = {"thawed": 1.0, "part_frozen": 1.03, "frozen": 1.08}
"""Ice in the cavity and the joints of a bird keeps heat out from inside; the factor on the radius is set by the
federal rule that a frozen bird takes at least half as long again (docs/heat.md)."""


@dataclass(frozen=True, slots=True)
class Covering:
    """What a cover leaves of convection, radiation and evaporation: factors."""

    convection: float
    radiation: float
    evaporation: float


COVERS: Mapping[Cover, Covering] = MappingProxyType(
    {
        "none": Covering(1.0, 1.0, 1.0),
        "foil": Covering(0.7, 0.5, 0.3),
        "lid": Covering(0.8, 0.7, 0.1),
        "bag": Covering(1.0, 0.8, 0.05),
    }
)
"""Foil and lid keep radiation out and steam in, a bag mostly the steam. Foil slows, lid and bag speed a turkey (FSIS,
Turkey from Farm to Table); by how much is not published."""
WRAPPED = Covering(0.4, 0.25, 0.03)
"""Left to rest in the foil or bag that it was roasted in: a cushion of air and bright foil keep the heat in, and next
to no steam gets away (no source)."""
PANS: Mapping[Pan, float] = MappingProxyType({"any": 1.0, "dark": 1.09, "glass": 1.09, "light": 0.91})
"""Radiation over that of a pan not told. The underside, a third of the surface, sees the pan, and the pan the oven: a
dark or glass one (emissivity 0.9) passes on 0.58 of what the walls would give, a bright one (0.15) 0.13. That dark
pans are the quicker is published (FSIS, Turkey from Farm to Table), by how much is not."""


@dataclass(frozen=True, slots=True)
class Surroundings:
    """What decides the surface law of each column besides the oven's setting."""

    still_w_m2k: Floats
    fan_w_m2k: Floats
    radiation: Floats
    crust_kg_m2: Floats
    error_c: Floats
    room_c: Floats
    rest_w_m2k: Floats
    vapour_pa: float
    pressure_pa: float

    @property
    def boiling_c(self) -> float:
        """Where water boils."""
        return boiling_c(self.pressure_pa)

    def oven(self, stretch: Stretch) -> HotAir | Oven:
        """The oven during one stretch."""
        cover = COVERS[stretch.cover]
        set_c = stretch.set_c + self.error_c
        air = HotAir(
            air_c=set_c,
            wall_c=set_c,
            convection=cover.convection * (self.fan_w_m2k if stretch.convection else self.still_w_m2k),
            radiation=cover.radiation * self.radiation,
            crust_kg_m2=self.crust_kg_m2,
            vapour_pa=self.vapour_pa,
            pressure_pa=self.pressure_pa,
            wetness=cover.evaporation,
        )
        return air if stretch.steady else Oven(stretch, air, self.error_c)

    def room(self, place: RestPlace) -> HotAir:
        """Where the roast rests."""
        cover = COVERS["foil"] if place == "foil" else WRAPPED if place == "wrapped" else COVERS["none"]
        around_c = self.room_c + (CUPBOARD_C - ROOM_C if place == "cupboard" else 0.0)
        return HotAir(
            air_c=around_c,
            wall_c=around_c,
            convection=cover.convection * self.rest_w_m2k,
            radiation=cover.radiation * self.radiation,
            crust_kg_m2=self.crust_kg_m2,
            vapour_pa=ROOM_VAPOUR_PA,
            pressure_pa=self.pressure_pa,
            wetness=cover.evaporation,
        )

    def platter(self, members: Members, cover: Cover, area: float) -> HotAir:
        """The room around carved meat, one column a member, each m2 of it with `area` m2 of cut surface."""
        over, first = COVERS[cover], slice(members.count)
        return HotAir(
            air_c=self.room_c[first],
            wall_c=self.room_c[first],
            convection=area * over.convection * self.rest_w_m2k[first],
            radiation=area * over.radiation * RADIATION,
            crust_kg_m2=area * CUT_CRUST_KG_M2 * members["crust"],
            vapour_pa=ROOM_VAPOUR_PA,
            pressure_pa=self.pressure_pa,
            wetness=over.evaporation * CUT_WETNESS,
        )

    def columns(self, chosen: NDArray[np.intp]) -> Surroundings:
        """The same for some of the columns."""
        names = ("still_w_m2k", "fan_w_m2k", "radiation", "crust_kg_m2", "error_c", "room_c", "rest_w_m2k")
        return replace(self, **{name: getattr(self, name)[chosen] for name in names})


def prepare(
    case: RoastCase, row: RoastRow, places: tuple[Station, ...], members: Members
) -> tuple[Body, State, Surroundings]:
    """The columns of every place (one after the other, each with all members), their start and their surroundings."""
    radii, exponents = _shapes(case, row, places, members)
    cells = CELLS if case.state == "thawed" and not case.stuffed else CELLS_FINE
    body = Body(radii * _length_factor(case, row), exponents, meat(row, members, len(places)), cells)
    start_c = _start_c(case, body, np.tile(members["start"], len(places)))
    if any(place.core for place in places):
        body, start_c = inlaid(body, start_c, np.repeat([place.core for place in places], members.count), STUFFING)
    return body, body.state(start_c), _surroundings(case, row, members, len(places))


def resting(case: RoastCase, row: RoastRow) -> RestPlace:
    """Where it rests: where that is not told, in the cover that its last setting had. Foil over a bird is a tent."""
    if case.rest_place is not None:
        return case.rest_place
    last = max(case.oven, key=lambda step: step.from_min)
    if last.cover == "none":
        return "board"
    return "foil" if last.cover == "foil" and row.poultry else "wrapped"


SAME_TIME = 0.59
"""Columns of radius R and exponent n take the same time when R grows as (1 + n)^0.59 (computed, 15 to 80 mm)."""


TIED = 1.04
"""Length of a joint tied round over one not told: at the same cross-section a round one takes a tenth longer than one
1.3 times as wide as high, one that lies 1.6 times as wide 7 percent less; computed, not measured. Of a bird only the
places that trussing lays against its body."""


def _tied(case: RoastCase, row: RoastRow, place: Station) -> float:
    if case.tied is None or (row.poultry and place.name in ("breast", "stuffing")):
        return 1.0
    return TIED if case.tied else 1.0 / TIED


def _shapes(case: RoastCase, row: RoastRow, places: tuple[Station, ...], members: Members) -> tuple[Floats, Floats]:
    """Radius and exponent of every column; a member's shape changes both so that its time stays."""
    radii, exponents = [], []
    for place, own in zip(places, members["station"], strict=False):
        exponent = np.maximum(place.exponent + members["shape"], 0.0)
        rounder = ((1.0 + exponent) / (1.0 + place.exponent)) ** SAME_TIME
        length_m = place.radius_at(case.mass_kg) * _tied(case, row, place)
        radii.append(length_m * members["size"] * own * rounder)
        exponents.append(exponent)
    return np.concatenate(radii), np.concatenate(exponents)


def _length_factor(case: RoastCase, row: RoastRow) -> float:
    bone_in = row.bone_in if case.bone_in is None else case.bone_in
    boned = row.boneless_factor if row.bone_in and not bone_in else 1.0
    return boned * (ICE_LENGTH[case.state] if row.poultry else 1.0)


def _start_c(case: RoastCase, body: Body, spread_k: Floats) -> Floats:
    """Temperatures before the oven, (cells, columns)."""
    middles = ((body.faces()[1:] + body.faces()[:-1]) / 2.0)[:, None]
    if case.state == "frozen":
        frozen_c = case.start_c if case.start_c <= 0.0 else FROZEN_C  # above: none was given
        return np.broadcast_to(np.minimum(frozen_c + spread_k, HARD_FROZEN_C), (body.cells, body.columns))
    if case.state == "part_frozen":
        return np.where(middles < 0.5, PART_FROZEN_CORE_C, PART_FROZEN_SKIN_C) + 0.5 * spread_k
    return np.broadcast_to(np.maximum(case.start_c + spread_k, -1.0), (body.cells, body.columns))


def meat(row: RoastRow, members: Members, places: int = 1) -> Material:
    """What the roast is made of, each member's conductivity its own, for columns place by place."""
    stuff = material(composition(row.composition))
    return replace(stuff, conductivity=np.tile(stuff.conductivity * members["conductivity"], places))


class Filling(NamedTuple):
    """What lies in the inner part of a column: capacity in J/(m3 K), conductivity in W/(m K), temperature in C."""

    capacity: float
    conductivity: float
    start_c: float


STUFFING = Filling(2.2e6, 0.40, 10.0)


def inlaid(body: Body, start_c: Floats, core: Floats, filling: Filling) -> tuple[Body, Floats]:
    """The columns with `filling` in the inner share `core` of their radius, and their temperatures."""
    inside = inner_share(body, core)
    outer = body.material
    mixed = replace(
        outer,
        capacity=outer.capacity + inside * (filling.capacity - outer.capacity),
        conductivity=outer.conductivity + inside * (filling.conductivity - outer.conductivity),
        conductivity_slope=outer.conductivity_slope * (1.0 - inside),
        latent=outer.latent * (1.0 - inside),
    )
    return replace(body, material=mixed), start_c + inside * (filling.start_c - start_c)


def inner_share(body: Body, core: Floats) -> Floats:
    """How much of each cell lies within the inner share `core` of its column's radius, (cells, columns)."""
    faces = body.faces()[:, None]
    return np.asarray(np.clip((core - faces[:-1]) / (faces[1:] - faces[:-1]), 0.0, 1.0))


def _surroundings(case: RoastCase, row: RoastRow, members: Members, stations: int) -> Surroundings:
    pressure_pa = pressure_at_altitude(case.altitude_m)
    exchange = members["exchange"]
    thin_air = (pressure_pa / STANDARD_PA) ** 0.5
    radiation = RADIATION * shown(case.count) * PANS[case.pan]

    def wide(values: Floats) -> Floats:
        return np.tile(values, stations)

    return Surroundings(
        still_w_m2k=wide(STILL_OVEN_W_M2K * thin_air * exchange),
        fan_w_m2k=wide(FAN_W_M2K * thin_air * exchange),
        radiation=wide(radiation * exchange),
        crust_kg_m2=wide(row.crust_kg_m2 * members["crust"]),
        error_c=wide(members["oven"]),
        room_c=wide(ROOM_C + members["room"]),
        rest_w_m2k=wide(REST_W_M2K * members["rest_exchange"]),
        vapour_pa=case.oven_vapour_pa,
        pressure_pa=pressure_pa,
    )
