"""The oven over time: what was set and when, and how the air follows."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from turnspit.heat.cases import Cover, RoastCase
from turnspit.heat.material import Floats, Number
from turnspit.heat.solver import Exchange
from turnspit.heat.surface import HotAir, radiance

OFF_BELOW_C = 40.0
ROOM_C = 21.0
RISE_S, FALL_S, OFF_S = 360.0, 480.0, 1200.0
"""Time constants of the air after the set point is raised, lowered, or the oven turned off with its door shut
(common practice, no source; the fall is set, between 6 and 10 min, by rounds seared at 230 C, then 140 C, the last by
ribs of 4 to 8 lb that 5 min/lb at 260 C and two hours in the oven turned off bring to 54 to 57 C: an empty oven keeps
its heat twice as long, but the roast and its water take theirs from it)."""
OPENING_K, OPENING_S = 30.0, 300.0
"""An opened door cools air and walls together by so much, and so they recover: each costs about 2 min (common
practice, no source)."""
BASTING_K = 40.0
"""A basting leaves some 0.1 kg/m2 on the skin; what boils it off is the heat that air so much cooler would not give
while it recovers (0.1 kg/m2 2.33 MJ/kg over 19.25 W/m2K and 300 s)."""
FAN_W_M2K = 18.0
"""Convection with a fan: between the total of 33 W/m2K reported for a fan oven (Feyissa et al. 2009, from memory)
and the kitchen rule that a fan is worth some 20 C."""


@dataclass(frozen=True, slots=True)
class Stretch:
    """The oven between two changes: the air starts at `from_c` and nears `set_c` with a time constant `lag_s`."""

    start_s: float
    from_c: float
    set_c: float
    lag_s: float
    convection: bool
    cover: Cover

    @property
    def steady(self) -> bool:
        """Whether the air keeps its temperature."""
        return self.from_c == self.set_c

    def air_c(self, time_s: float) -> float:
        """Air temperature at `time_s`, without the thermostat's error."""
        return self.set_c + (self.from_c - self.set_c) * math.exp((self.start_s - time_s) / self.lag_s)

    def opened(self, time_s: float, *, basted: bool) -> Stretch:
        """What remains of the stretch after the door was opened at `time_s`, to baste or only to look."""
        from_c = self.air_c(time_s) - OPENING_K - (BASTING_K if basted else 0.0)
        return replace(self, start_s=time_s, from_c=from_c, lag_s=min(self.lag_s, OPENING_S))


def stretches(case: RoastCase) -> tuple[Stretch, ...]:
    """The oven's stretches in order, a new one at every setting and every opening of the door."""
    steps = sorted(case.oven, key=lambda step: step.from_min)
    first = replace(steps[0], from_min=0.0)
    settings = {_second(step.from_min): step for step in (first, *steps[1:])}
    bastings = {_second(minute) for minute in case.bastings_min} - settings.keys()
    openings = bastings | {_second(minute) for minute in case.openings_min} - settings.keys()
    found: list[Stretch] = []
    for time_s in sorted(settings.keys() | openings):
        if time_s in openings:
            found.append(found[-1].opened(time_s, basted=time_s in bastings))
            continue
        step = settings[time_s]
        off = step.temperature_c < OFF_BELOW_C
        set_c = ROOM_C if off else step.temperature_c
        now_c = found[-1].air_c(time_s) if found else set_c if case.preheated else ROOM_C
        lag_s = OFF_S if off else RISE_S if set_c > now_c else FALL_S
        found.append(Stretch(time_s, now_c, set_c, lag_s, step.convection, step.cover))
    return tuple(found)


def _second(minute: float) -> float:
    """To the whole second, so that no stretch is shorter."""
    return float(round(minute * 60.0))


@dataclass(frozen=True, slots=True)
class Oven:
    """The surface law in a stretch that is not steady: air and walls, thermostat error included, follow it."""

    stretch: Stretch
    air: HotAir
    error_c: Number

    def exchange(self, surface_c: Floats, water_lost_kg_m2: Floats, time_s: float, /) -> Exchange:
        """The exchange of each column at `time_s`."""
        air_c = self.stretch.air_c(time_s) + self.error_c
        return self.air.exchange_with(air_c, radiance(air_c), surface_c, water_lost_kg_m2)
