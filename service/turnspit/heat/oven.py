"""The oven over time: what was set and when, and how the air follows."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from turnspit.heat.cases import OvenStep
from turnspit.heat.material import Floats, Number
from turnspit.heat.solver import Exchange
from turnspit.heat.surface import HotAir

OFF_BELOW_C = 40.0
RISE_S, FALL_S, OFF_S = 360.0, 1200.0, 3000.0
"""Time constants of the air after the set point is raised, lowered, or the oven turned off with its door shut
(common practice, no source)."""
STILL_W_M2K, FAN_W_M2K = 7.7, 25.0
"""Convection: without a fan, fitted (with radiation it gives the measured 19.25 W/m2K of Chang et al. 1998); with a
fan, so that the total is about the 33 to 36 W/m2K reported for fan ovens (Feyissa et al. 2009; Sakin et al. 2009)."""


@dataclass(frozen=True, slots=True)
class Stretch:
    """The oven between two changes: the air starts at `from_c` and nears `set_c` with a time constant `lag_s`."""

    start_s: float
    from_c: float
    set_c: float
    lag_s: float
    convection: bool

    def air_c(self, time_s: float) -> float:
        """Air temperature at `time_s`, without the thermostat's error."""
        return float(self.set_c + (self.from_c - self.set_c) * np.exp((self.start_s - time_s) / self.lag_s))


def stretches(steps: Sequence[OvenStep], room_c: float = 21.0) -> tuple[Stretch, ...]:
    """The oven's stretches in order; it is hot at its first setting when the roast goes in."""
    found: list[Stretch] = []
    for step in sorted(steps, key=lambda step: step.from_min):
        start_s = step.from_min * 60.0
        off = step.temperature_c < OFF_BELOW_C
        set_c = room_c if off else step.temperature_c
        now_c = found[-1].air_c(start_s) if found else set_c
        lag_s = OFF_S if off else RISE_S if set_c > now_c else FALL_S
        found.append(Stretch(start_s, now_c, set_c, lag_s, step.convection))
    return (replace(found[0], start_s=min(found[0].start_s, 0.0)), *found[1:])


@dataclass(frozen=True, slots=True)
class Oven:
    """The surface law in one stretch: hot air whose temperature, thermostat error included, follows the stretch."""

    stretch: Stretch
    air: HotAir
    error_c: Number

    def exchange(self, surface_c: Floats, water_lost_kg_m2: Floats, time_s: float, /) -> Exchange:
        """The exchange of each column at `time_s`."""
        air_c = self.stretch.air_c(time_s) + self.error_c
        return self.air.exchange_with(air_c, air_c, surface_c, water_lost_kg_m2)
