"""Heat transfer from a surface to moving or still air and water: film coefficients by named correlations.

Properties of air and water are those at the film, the mean of surface and medium. W/(m2 K), C, m, m/s.
"""

from __future__ import annotations

import numpy as np

from turnspit.heat.material import Floats
from turnspit.heat.surface import STEFAN_BOLTZMANN

GRAVITY = 9.81
EMISSIVITY = 0.9
"""Of wet and greasy foods, plastic and painted metal; 0.85 to 0.95 in handbooks."""
AIR_PRANDTL = 0.71
TURBULENCE = 1.45
"""Forced convection in rooms and chillers over that in a smooth stream: fans make 10 to 30 percent turbulence."""


def nusselt_churchill_bernstein(reynolds: Floats, prandtl: float) -> Floats:
    """Forced flow across a cylinder, Re Pr above 0.2 (Churchill and Bernstein 1977)."""
    shape = 0.62 * np.sqrt(reynolds) * prandtl ** (1 / 3) / (1 + (0.4 / prandtl) ** (2 / 3)) ** 0.25
    return np.asarray(0.3 + shape * (1 + (reynolds / 282000) ** 0.625) ** 0.8)


def nusselt_churchill_chu(rayleigh: Floats, prandtl: Floats | float) -> Floats:
    """Free convection about a long horizontal cylinder, Ra to 1e12 (Churchill and Chu 1975)."""
    spread = (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)
    return np.asarray((0.60 + 0.387 * rayleigh ** (1 / 6) / spread) ** 2)


def air_film(surface_c: Floats, air_c: float, speed_m_s: float, width_m: float) -> Floats:
    """Convection to air: free and forced together as the cube root of the sum of cubes.

    Surfaces from -20 to 120 C, 0 to 10 m/s, `width_m` the body's extent across the flow.
    """
    film_c = 0.5 * (surface_c + air_c)
    viscosity = 1.33e-5 + 9.0e-8 * film_c  # kinematic, dry air at 1 atm
    conductivity = 0.0241 + 7.2e-5 * film_c
    drive_k = np.abs(surface_c - air_c)
    rayleigh = GRAVITY * drive_k * width_m**3 * AIR_PRANDTL / ((film_c + 273.15) * viscosity**2)
    forced = TURBULENCE * nusselt_churchill_bernstein(speed_m_s * width_m / viscosity, AIR_PRANDTL)
    nusselt = np.cbrt(nusselt_churchill_chu(rayleigh, AIR_PRANDTL) ** 3 + (forced**3 if speed_m_s > 0 else 0.0))
    return np.asarray(nusselt * conductivity / width_m)


def radiation_film(surface_c: Floats, wall_c: float) -> Floats:
    """Radiation to walls at `wall_c`, as a coefficient."""
    surface, wall = surface_c + 273.15, wall_c + 273.15
    return np.asarray(EMISSIVITY * STEFAN_BOLTZMANN * (surface**2 + wall**2) * (surface + wall))


def water_film(surface_c: Floats, water_c: float, width_m: float) -> Floats:
    """Free convection to still water; the density maximum at 4 C is in it. Surfaces from 0 to 100 C.

    Brine or glycol below 0 C counts as water of 0 C.
    """
    surface_c, water_c = np.maximum(surface_c, 0.0), max(water_c, 0.0)
    film_c = 0.5 * (surface_c + water_c)
    viscosity = 2.414e-5 * 10 ** (247.8 / (film_c + 133.15)) / 1000
    conductivity = 0.5711 + 1.7625e-3 * film_c - 6.7036e-6 * film_c**2
    lift = np.abs(water_density(surface_c) - water_density(water_c)) / 1000
    prandtl = viscosity * 4.18e6 / conductivity
    nusselt = nusselt_churchill_chu(GRAVITY * lift * width_m**3 * prandtl / viscosity**2, prandtl)
    return np.asarray(nusselt * conductivity / width_m)


def water_density(temperature_c: Floats | float) -> Floats:
    """Density of water from 0 to 100 C, kg/m3, its maximum at 3.986 C (McCutcheon, Martin and Barnwell 1993)."""
    t = np.asarray(temperature_c, dtype=float)
    return np.asarray(1000 * (1 - (t + 288.9414) * (t - 3.9863) ** 2 / (508929.2 * (t + 68.12963))))
