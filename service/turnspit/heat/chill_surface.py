"""What carries the heat off a cooling surface: film, cover, radiation and, where it is bare in air, evaporation."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from turnspit.heat.cases import ChillCase
from turnspit.heat.chill_shape import Extent
from turnspit.heat.films import air_film, radiation_film, water_film
from turnspit.heat.material import LATENT_J_KG, Floats
from turnspit.heat.solver import Exchange
from turnspit.heat.surface import AIR_CP, LEWIS, STANDARD_PA, saturation
from turnspit.reference import table

FILM_SPREAD = 0.28
"""Log spread of convection: turbulence, neighbours, racks; correlations themselves hold within 15 to 20 percent."""
STIRRED_FILM = 600.0
"""Stirred water or brine, 400 to 1000 W/(m2 K) (handbook range, from memory)."""
STILL_AIR_M_S = 0.1
"""What moves in a closed refrigerator or a kitchen without a fan."""
STILL_WATER_LEAST = 80.0
WETNESS, WETNESS_SPREAD = 0.20, 0.8
"""Share of a free water surface's evaporation that a cooked surface has: median fitted to the measured air
chilling of bare beef (Burfoot 1990), see tests/published."""
POT_WETNESS = 0.02
"""The same for a covered pot; an open one loses more while it is hot."""
TUB_MOST_M = 0.12
"""Pots no wider than this are taken to be plastic tubs; wider ones are more and more of metal."""
REFRIGERATOR_W_K, REFRIGERATOR_SPREAD = 20.0, 0.6
"""What a refrigerator carries off for each K that hot food warms its air, and the log spread (common practice: some
160 W at 8 K). Loads warm them most in still air: white sauce, J. Milk Food Technol. 23(5) 142 (1960), abstract."""
FAN_M_S = 0.2
"""Rooms whose fans move the air this fast are taken to keep their temperature."""
LARGE_LOAD = 0.02
"""Where the refrigerator's share passes this, in m2K/W (a fifth of a still film's), it is said."""
CRUST_KG_M2 = 0.8
HUMIDITY = 0.8
MEDIUM_SPREAD_K, STILL_AIR_SPREAD_K = 0.4, 0.7
"""How far the medium may lie from what is told; shelves of a refrigerator without a fan differ by 2 to 3 K, and it
cycles (common practice)."""


@dataclass(frozen=True, slots=True)
class ChillSurface:
    """Heat leaves over `resistance` and a film whose coefficient is tabled against surface less medium (K).

    Each m2 of the column carries `area_factor` m2 of the real body; water is counted per real m2.
    """

    medium_c: Floats
    grid_k: Floats
    convection: Floats
    radiation: Floats
    film_factor: Floats
    resistance: Floats
    wetness: Floats
    area_factor: float

    @property
    def nominal_film(self) -> float:
        """The overall coefficient of the first member at 40 percent of the widest difference, W/(m2 K)."""
        at = 0.4 * self.grid_k[-1]
        film = np.interp(at, self.grid_k, self.convection * self.film_factor[0] + self.radiation)
        return float(1 / (1 / film + self.resistance[0]))

    def exchange(self, surface_c: Floats, water_lost_kg_m2: Floats, _time_s: float, /) -> Exchange:
        """The exchange of each member, linearised at `surface_c`."""
        drive_k = surface_c - self.medium_c
        film = self._film(drive_k)
        outer_k = drive_k / (1 + self.resistance * film)
        film = self._film(outer_k)
        overall = film / (1 + self.resistance * film)
        pressure, slope = saturation(surface_c)
        air_pa = HUMIDITY * saturation(self.medium_c)[0]
        transfer = self.film_factor * np.interp(drive_k, self.grid_k, self.convection)
        transfer = transfer * self.wetness * (LEWIS * 0.622 / (AIR_CP * STANDARD_PA))
        transfer = transfer / (1 + water_lost_kg_m2 / CRUST_KG_M2) * (pressure > air_pa)
        water, water_slope = transfer * (pressure - air_pa), transfer * slope
        heat = -overall * drive_k - LATENT_J_KG * water
        heat_slope = -overall - LATENT_J_KG * water_slope
        return Exchange(self.area_factor * heat, self.area_factor * heat_slope, water, water_slope)

    def _film(self, drive_k: Floats) -> Floats:
        convection = np.interp(drive_k, self.grid_k, self.convection) * self.film_factor
        return np.asarray(convection + np.interp(drive_k, self.grid_k, self.radiation))


def chill_surface(
    case: ChillCase, size: Extent, medium_c: float, normals: Floats, area_factor: float = 1.0
) -> ChillSurface:
    """The surface of a case; `normals` (5 rows, members) spread film, cover, wetness, medium and refrigerator."""
    grid_k = np.linspace(0.0, case.from_c - medium_c + 2.0, 60)
    surface_c = medium_c + grid_k
    radiation = np.zeros_like(grid_k)
    if case.medium == "air":
        convection = air_film(surface_c, medium_c, max(case.air_m_s, STILL_AIR_M_S), size.width_m)
        radiation = radiation_film(surface_c, medium_c)
    elif case.stirred and case.shape != "pot":
        convection = np.full_like(grid_k, STIRRED_FILM)
    else:
        convection = np.maximum(water_film(surface_c, medium_c, size.width_m), STILL_WATER_LEAST)
    resistance, spread = _cover(case, size)
    film, cover, wetness, medium, room = normals[:5]
    medium_k = _medium_spread_k(case)
    reach_k = min(2 * medium_k, 0.6 * (case.to_c - medium_c))
    return ChillSurface(
        medium_c=medium_c + np.clip(medium_k * medium, -reach_k, reach_k),
        grid_k=grid_k,
        convection=convection,
        radiation=radiation,
        film_factor=np.exp(FILM_SPREAD * film),
        resistance=resistance * np.exp(spread * cover) + warmed_air(case, size) * np.exp(REFRIGERATOR_SPREAD * room),
        wetness=_wetness(case) * np.exp(WETNESS_SPREAD * wetness),
        area_factor=area_factor,
    )


def _cover(case: ChillCase, size: Extent) -> tuple[float, float]:
    """Resistance and log spread of what it is packed in, and of a pot: plastic where small, less so the wider."""
    covers = table("chill_covers").by("cover")
    names = (*(("pot",) if case.shape == "pot" else ()), *((case.packaging,) if case.packaging else ()))
    if not names:
        return 0.0, 0.0
    resistance = sum(float(covers[name]["resistance"]) for name in names)
    if case.shape == "pot":
        # inversely to the width, so that more is never quicker
        tub = float(covers["tub"]["resistance"]) * min(1.0, TUB_MOST_M / size.width_m)
        resistance += max(0.0, tub - float(covers["pot"]["resistance"]))
    return resistance, float(covers[names[-1]]["spread"])


def warmed_air(case: ChillCase, size: Extent) -> float:
    """The resistance of a refrigerator whose air the food warms, per m2 of the food's surface, m2K/W."""
    if case.medium != "air":
        return 0.0
    return _stillness(case) * size.area_m2 / REFRIGERATOR_W_K


def _stillness(case: ChillCase) -> float:
    """1 in air without a fan, 0 where a fan moves it."""
    return max(0.0, 1 - case.air_m_s / FAN_M_S)


def _medium_spread_k(case: ChillCase) -> float:
    if case.medium != "air":
        return MEDIUM_SPREAD_K
    return MEDIUM_SPREAD_K + _stillness(case) * (STILL_AIR_SPREAD_K - MEDIUM_SPREAD_K)


def _wetness(case: ChillCase) -> float:
    if case.medium != "air" or case.packaging is not None:
        return 0.0
    return POT_WETNESS if case.shape == "pot" else WETNESS
