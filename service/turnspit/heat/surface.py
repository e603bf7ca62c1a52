"""Laws of exchange at the surface of a food: convection, radiation, and evaporation through a drying crust."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

import numpy as np

from turnspit.heat.material import LATENT_J_KG, Floats, Number
from turnspit.heat.solver import Exchange

STEFAN_BOLTZMANN = 5.670374e-8
DRY_KG_M2 = 4.5
"""The water loss past which a surface dries out: 10 to 15 h at 121 C for a pork shoulder to pull, as kitchens have it
(common practice); without it such a roast stalls for ever."""
LEWIS = 1.11
"""Mass over heat transfer, (Sc/Pr)^(-2/3), for water vapour in air."""
AIR_CP = 1010.0
STANDARD_PA = 101325.0
STILL_OVEN_W_M2K = 7.7
"""Convection in an oven without a fan, fitted; with radiation it gives the measured 19.25 (Chang et al. 1998)."""


@dataclass(frozen=True, slots=True)
class Film:
    """A constant coefficient in W/(m2 K) to a medium: water, moving or still air with radiation folded in."""

    medium_c: Number
    coefficient: Number

    def exchange(self, surface_c: Floats, _water_lost: Floats, _time_s: float, /) -> Exchange:
        """Newton's law: no water leaves."""
        coefficient = np.broadcast_to(np.asarray(self.coefficient, dtype=float), surface_c.shape)
        nothing = np.zeros_like(surface_c)
        return Exchange(coefficient * (self.medium_c - surface_c), -coefficient, nothing, nothing)


@dataclass(frozen=True, slots=True)
class HotAir:
    """Air and walls around a wet surface that dries to a crust: an oven at one setting, or a room.

    heat  q = hc (Ta - Ts) + f sigma (Tw^4 - Ts^4) - L m''
    water m'' = beta hc / cp * 0.622 / P * 1.11 * (psat(Ts) - pa), never negative, psat not above P
    crust beta = wetness / (1 + hc M / (h0 mc) (1 + (M/md)^2)), M the water lost so far in kg/m2: vapour passes the
          crust, as thick as what has dried, and then the air; mc is the loss that halves the evaporation in an oven
          of h0 = 7.7. Past md = 4.5 kg/m2 water no longer comes up from within as fast as it leaves

    `air_c` Ta and `wall_c` Tw in C, `convection` hc in W/(m2 K), `radiation` f from 0 to 1, `crust_kg_m2` mc,
    `vapour_pa` pa, `pressure_pa` P, `wetness` from 0 (sealed: no evaporation) to 1.
    """

    air_c: Number
    wall_c: Number
    convection: Number
    radiation: Number
    crust_kg_m2: Number
    vapour_pa: Number = 5000.0
    pressure_pa: float = STANDARD_PA
    wetness: Number = 1.0
    _walls: Number = field(init=False, repr=False, compare=False)
    _radiating: Number = field(init=False, repr=False, compare=False)
    _radiating_slope: Number = field(init=False, repr=False, compare=False)
    _drying: Number = field(init=False, repr=False, compare=False)
    _closing: Number = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        """What is the same at every step, reckoned once."""
        radiating = self.radiation * STEFAN_BOLTZMANN
        once = {
            "_walls": radiance(self.wall_c),
            "_radiating": radiating,
            "_radiating_slope": -4.0 * radiating,
            "_drying": self.convection * self.wetness * (LEWIS * 0.622 / (AIR_CP * self.pressure_pa)),
            "_closing": self.convection / (STILL_OVEN_W_M2K * self.crust_kg_m2),
        }
        for name, value in once.items():
            object.__setattr__(self, name, value)

    def exchange(self, surface_c: Floats, water_lost_kg_m2: Floats, _time_s: float, /) -> Exchange:
        """The exchange at `surface_c` after `water_lost_kg_m2`."""
        return self.exchange_with(self.air_c, self._walls, surface_c, water_lost_kg_m2)

    def exchange_with(self, air_c: Number, walls: Number, surface_c: Floats, water_lost_kg_m2: Floats) -> Exchange:
        """The same with air at another temperature than its own, and walls of another `radiance`."""
        pressure, slope = saturation(surface_c, self.pressure_pa)
        dried = water_lost_kg_m2 * water_lost_kg_m2
        dried *= 1.0 / DRY_KG_M2**2
        dried += 1.0
        dried *= water_lost_kg_m2
        dried *= self._closing
        dried += 1.0
        pressure -= self.vapour_pa
        transfer = (pressure > 0.0) * self._drying
        transfer /= dried
        water, water_slope = pressure * transfer, slope * transfer

        kelvin = surface_c + 273.15
        cubed = kelvin * kelvin
        cubed *= kelvin
        kelvin *= cubed
        radiated = walls - kelvin
        radiated *= self._radiating
        heat = air_c - surface_c
        heat *= self.convection
        heat += radiated
        heat -= LATENT_J_KG * water
        heat_slope = np.multiply(cubed, self._radiating_slope, out=cubed)
        heat_slope -= self.convection
        heat_slope -= LATENT_J_KG * water_slope
        return Exchange(heat, heat_slope, water, water_slope)


def radiance(temperature_c: Number) -> Number:
    """The fourth power of the absolute temperature, K4: what walls at it radiate, over their constant."""
    square = (temperature_c + 273.15) ** 2
    return square * square


def saturation(temperature_c: Floats, pressure_pa: float = STANDARD_PA) -> tuple[Floats, Floats]:
    """Saturation pressure of water in Pa and its slope in Pa/K, held at `pressure_pa` from the boiling point on.

    Magnus form p = a exp(b T / (T + c)), its constants fitted to IAPWS-IF97 from 1 to 100 C (within 0.2 percent).
    """
    above = np.maximum(temperature_c, -40.0)
    above += _MAGNUS_SHIFT
    inverse: Floats = -_MAGNUS_RATE * _MAGNUS_SHIFT / above
    pressure: Floats = np.exp(inverse + _MAGNUS_HEIGHT)
    inverse *= pressure
    inverse /= above
    slope = np.negative(inverse, inverse)
    slope *= pressure <= pressure_pa * (1.0 + 1e-9)  # at boiling itself the slope is that from below
    return np.minimum(pressure, pressure_pa, out=pressure), slope


_MAGNUS_PA, _MAGNUS_RATE, _MAGNUS_SHIFT = 609.81, 17.0856, 234.0
_MAGNUS_HEIGHT = math.log(_MAGNUS_PA) + _MAGNUS_RATE


def boiling_c(pressure_pa: float) -> float:
    """Boiling point of water in C at `pressure_pa` (50 to 105 kPa): the inverse of `saturation`."""
    height = math.log(pressure_pa / _MAGNUS_PA)
    return _MAGNUS_SHIFT * height / (_MAGNUS_RATE - height)


def pressure_at_altitude(altitude_m: float) -> float:
    """Air pressure in Pa at `altitude_m` (-500 to 5000 m): the ICAO standard atmosphere."""
    return float(STANDARD_PA * (1.0 - 2.25577e-5 * altitude_m) ** 5.2559)
