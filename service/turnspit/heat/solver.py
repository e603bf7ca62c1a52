"""Heat conduction into many bodies at once: enthalpy in cells from core to surface, marched implicitly in time.

A body is a column of cells along x from its cold spot (0) to its surface (radius), with a cross-section that grows as
x^n: n = 0 a slab, 1 a cylinder, 2 a sphere, any real number between for what lies between. Per m2 of surface,

    x^n dH/dt = d/dx ( x^n k(T) dT/dx ),   zero flux at the core,   k dT/dx = q(Ts) at the surface.

Scheme: finite volumes with exact cell volumes; BDF2 (its first step implicit Euler) with the cells extrapolated, the
surface flux linearised where it meets what such an outer cell would take, and the surface temperature eliminated into
the last row; one linear solve a step. Where the surface would pass the boiling point of its water it is held there,
and the heat it does not pass on boils water away. Ice: one secant capacity a cell, after which the enthalpy is
corrected, so energy closes to rounding. Order 2 in time and space.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple, Protocol

import numpy as np
from numpy.typing import NDArray

from turnspit.errors import Impossible
from turnspit.heat import tridiagonal
from turnspit.heat.material import LATENT_J_KG, Floats, Material, Number


class Exchange(NamedTuple):
    """What passes the surface per m2, and how it changes with the surface temperature; one value a column.

    `heat_w_m2` into the body with its slope in W/(m2 K) (never positive), `water_kg_m2_s` out of it with its slope.
    """

    heat_w_m2: Floats
    heat_slope: Floats
    water_kg_m2_s: Floats
    water_slope: Floats


class Surface(Protocol):
    """A law of exchange between a surface and what surrounds it (see surface.py for those of the kitchen)."""

    def exchange(self, surface_c: Floats, water_lost_kg_m2: Floats, time_s: float, /) -> Exchange:
        """The exchange of each column at `time_s`, linearised at `surface_c`, after a loss of `water_lost_kg_m2`."""
        ...


@dataclass(frozen=True, slots=True)
class Body:
    """The columns: radius in m (> 0) and shape exponent n (0 to 2) of each, material of each or of each cell."""

    radius_m: Floats
    exponent: Floats
    material: Material
    cells: int = 16

    @property
    def columns(self) -> int:
        """How many bodies are computed side by side."""
        return len(self.radius_m)

    def faces(self) -> Floats:
        """Cell faces as shares of the radius, 0 to 1."""
        return np.linspace(0.0, 1.0, self.cells + 1)

    def volumes_m(self) -> Floats:
        """Volume of each cell per m2 of surface, (cells, columns)."""
        power = self.exponent + 1.0
        return np.asarray(np.diff(self.faces()[:, None] ** power, axis=0) * self.radius_m / power)

    def part(self, chosen: NDArray[np.intp] | slice) -> Body:
        """Some of the columns."""
        return Body(self.radius_m[chosen], self.exponent[chosen], self.material.columns(chosen), self.cells)

    def state(self, temperature_c: Number) -> State:
        """At rest at `temperature_c`: a number, or an array that broadcasts to (cells, columns)."""
        full = np.broadcast_to(np.asarray(temperature_c, dtype=float), (self.cells, self.columns)).copy()
        dry = np.zeros(self.columns)
        return State(self.material.enthalpy(full), np.array([full[-1], dry, dry]))

    def temperature_c(self, state: State) -> Floats:
        """Cell temperatures, (cells, columns)."""
        return self.material.temperature_c(state.enthalpy)

    def mean(self, cell_values: Floats) -> Floats:
        """Volume mean over the cells of each column."""
        volumes = self.volumes_m()
        return np.asarray((cell_values * volumes).sum(axis=0) / volumes.sum(axis=0))


class State(NamedTuple):
    """A moment: enthalpy in J/m3, (cells, columns), and `skin`, (3, columns): what its three properties name."""

    enthalpy: Floats
    skin: Floats

    @property
    def surface_c(self) -> Floats:
        """Surface temperature of each column."""
        return np.asarray(self.skin[0])

    @property
    def water_kg_m2(self) -> Floats:
        """Water lost since the start, per m2 of surface."""
        return np.asarray(self.skin[1])

    @property
    def heat_j_m2(self) -> Floats:
        """Heat taken up since the start, per m2 of surface."""
        return np.asarray(self.skin[2])

    def columns(self, chosen: NDArray[np.intp] | slice) -> State:
        """The same moment for some of the columns."""
        return State(self.enthalpy[:, chosen], self.skin[:, chosen])


@dataclass(frozen=True, slots=True)
class History:
    """A march through time: per step (rows) and column, from the start state on; `end` is the last state.

    `states` holds every state where they were asked for, else nothing.
    """

    times_s: Floats
    core_c: Floats
    surface_c: Floats
    water_kg_m2: Floats
    heat_j_m2: Floats
    end: State
    states: tuple[State, ...] = ()


def graded_times(duration_s: float, first_s: float, longest_s: float, growth: float = 1.3) -> Floats:
    """Times from 0 to `duration_s`: a first step, then steps that grow by `growth` (at most 2) up to the longest."""
    growing = math.ceil(math.log(max(longest_s / first_s, 1.0)) / math.log(growth)) if growth > 1.0 else 0
    powers = np.minimum(np.arange(growing + math.ceil(duration_s / longest_s) + 1), growing)
    times_s = np.cumsum(np.minimum(first_s * growth**powers, longest_s))
    within = times_s[: int(np.searchsorted(times_s, duration_s * (1 - 1e-12))) + 1]
    return np.concatenate(([0.0], within * (duration_s / within[-1])))


def core_c(temperature_c: Floats) -> Floats:
    """Temperature at x = 0 from a parabola of zero slope there, through the two innermost cells."""
    return np.asarray((9.0 * temperature_c[0] - temperature_c[1]) / 8.0)


def march(
    body: Body,
    start: State,
    surface: Surface,
    times_s: Floats,
    *,
    boils_c: float = math.inf,
    keep_states: bool = False,
    stop: Callable[[float, Floats], bool] | None = None,
) -> History:
    """March `body` from `start` through `times_s` (ascending, the first is the time of `start`).

    Where the surroundings jump, end one march and begin the next from its `end`, with a short first step. No surface
    gets hotter than `boils_c`, its water's boiling point. Raises Impossible where no food could be as hot or cold.
    `stop(time_s, core_c)` ends the march early, after a step for which it is true.
    """
    progress = _Progress(body, start, surface, boils_c)
    cores, states = [core_c(progress.temperature)], [start]
    for earlier, time_s in pairwise(times_s.tolist()):
        progress.advance(time_s - earlier, time_s)
        cores.append(core_c(progress.temperature))
        states.append(progress.now if keep_states else progress.now._replace(enthalpy=_NOTHING))
        if stop is not None and stop(time_s, cores[-1]):
            break
    least_c, most_c = float(progress.now.surface_c.min()), float(progress.now.surface_c.max())
    if not (ABSURD_C[0] < least_c and most_c < ABSURD_C[1]):
        raise Impossible("heat", f"{least_c:g} to {most_c:g}", "C is no surface of food", tridiagonal.NO_SOLUTION)
    skins = np.array([state.skin for state in states])
    return History(
        times_s=times_s[: len(cores)],
        core_c=np.array(cores),
        surface_c=skins[:, 0],
        water_kg_m2=skins[:, 1],
        heat_j_m2=skins[:, 2],
        end=progress.now,
        states=tuple(states) if keep_states else (),
    )


ICE_SOLVES_MOST, ICE_TOLERANCE_K = 6, 0.1
"""A step with ice is solved again until H and T agree to this, at most so many times."""

ABSURD_C = -100.0, 400.0
"""No surface of food lies outside: a march that ends there has gone wrong, and says so."""

SURFACE_SOLVES_MOST, SURFACE_TOLERANCE_K = 6, 2.0
"""The surface is linearised again until it lies this near to where it was linearised, at most so many times. Its flux
falls ever faster up to boiling, so Newton's method closes in from above after one step, wherever it begins."""

_NOTHING: Floats = np.empty((0, 0))


class _Progress:
    """A march under way: the constant geometry, the last two states and what they let us expect of the next.

    Without ice enthalpy is capacity times temperature and the step works on temperatures alone.
    """

    def __init__(self, body: Body, start: State, surface: Surface, boils_c: float) -> None:
        spacing_m = body.radius_m / body.cells
        self.material = body.material
        self.surface, self.boils_c = surface, boils_c
        self.volumes = body.volumes_m()
        self.unfrozen_storage: Floats = self.volumes * self.material.capacity
        self.half_areas_per_m = 0.5 * body.faces()[1:-1, None] ** body.exponent / spacing_m
        self.skin_per_m = 2.0 / spacing_m
        self.now = start
        self.enthalpy_before = start.enthalpy
        self.skin_change: Floats = np.zeros_like(start.skin)
        self.temperature = self.temperature_before = body.temperature_c(start)
        self.last_step_s = float("inf")
        self.icy = self.icy_before = self.material.has_ice(start.enthalpy)

    def advance(self, step_s: float, time_s: float) -> None:
        """One implicit step to `time_s`: BDF2, or Euler when it is the first."""
        now, temperature = self.now, self.temperature
        ratio = step_s / self.last_step_s
        newest, oldest = (1.0 + 2.0 * ratio) / (1.0 + ratio), ratio * ratio / (1.0 + ratio)
        change_k = temperature - self.temperature_before
        ahead = ratio * change_k
        ahead += temperature
        outer_c = ahead[-1].copy()
        conductivity = self._conductivity(ahead)
        if self.icy or self.icy_before:
            carried = self.volumes * (now.enthalpy - self.enthalpy_before)
        else:
            carried = np.multiply(self.unfrozen_storage, change_k, out=change_k)
        carried *= oldest / step_s

        surface_c, water, _ = now.skin + ratio * self.skin_change
        skin = conductivity[-1] * self.skin_per_m
        surface_c, outside, boils = self._meet(surface_c, outer_c, skin, water, time_s)
        share = skin / (skin - outside.heat_slope)
        offered = outside.heat_w_m2 - outside.heat_slope * surface_c
        offered *= share
        outward = np.multiply(share, outside.heat_slope, out=share)
        np.negative(outward, out=outward)
        if boils is not None:
            outward, offered = np.where(boils, skin, outward), np.where(boils, skin * self.boils_c, offered)
        carried[-1] += offered

        coupling = conductivity[1:] + conductivity[:-1]
        coupling *= self.half_areas_per_m
        if self.icy:
            solved, enthalpy = self._with_ice(coupling, outward, carried, newest / step_s)
        else:
            storage = self.unfrozen_storage * (newest / step_s)
            carried += storage * temperature
            solved = tridiagonal.solve(_joined(storage, coupling, outward), coupling, carried)
            enthalpy = solved * self.material.capacity

        heat = offered - outward * solved[-1]
        new_surface_c = solved[-1] + heat / skin
        surface_change_k = new_surface_c - surface_c
        evaporation = outside.water_kg_m2_s + outside.water_slope * surface_change_k
        if boils is not None:
            taken = outside.heat_w_m2 + outside.heat_slope * surface_change_k
            evaporation += boils * (taken - heat) / LATENT_J_KG
        np.maximum(evaporation, 0.0, out=evaporation)  # a flux linearised at the vapour of the air may fall below

        gained = np.array([new_surface_c, evaporation, heat])
        gained[1:] *= step_s / newest
        gained[1:] += now.skin[1:] + (oldest / newest) * self.skin_change[1:]
        self._arrive(State(enthalpy, gained), solved, step_s)

    def _arrive(self, state: State, solved: Floats, step_s: float) -> None:
        """Take `state`, whose cells were solved as `solved`, for now, and what was now for before."""
        self.temperature_before, self.enthalpy_before, self.last_step_s = self.temperature, self.now.enthalpy, step_s
        self.skin_change = state.skin - self.now.skin
        self.now, self.icy_before = state, self.icy
        # between steps without ice, ice can only come in through the surface
        if self.icy or np.count_nonzero(state.surface_c < self.material.freezing_c):
            self.icy = self.material.has_ice(state.enthalpy)
        self.temperature = self.material.temperature_c(state.enthalpy) if self.icy or self.icy_before else solved

    def _meet(
        self, guess_c: Floats, outer_c: Floats, skin: Floats, water: Floats, time_s: float
    ) -> tuple[Floats, Exchange, NDArray[np.bool_] | None]:
        """Where to linearise the surface, its exchange there, and which columns boil (None: none does).

        An extrapolated surface may lie far on the wrong side of a kink of its law, the cell under it never does: so
        the surface is solved for against that cell.
        """
        for _ in range(SURFACE_SOLVES_MOST):
            guess_c = np.minimum(guess_c, self.boils_c)
            outside = self.surface.exchange(guess_c, water, time_s)
            change_k = outer_c - guess_c
            change_k *= skin
            change_k += outside.heat_w_m2
            change_k /= skin - outside.heat_slope
            found_c = guess_c + change_k
            over = found_c > self.boils_c
            some_over = np.count_nonzero(over)
            if some_over:
                change_k = np.minimum(found_c, self.boils_c) - guess_c
            if not np.count_nonzero(np.abs(change_k) >= SURFACE_TOLERANCE_K):
                break
            guess_c = found_c
        return guess_c, outside, over if some_over else None

    def _with_ice(
        self, coupling: Floats, outward: Floats, carried: Floats, newest_per_s: float
    ) -> tuple[Floats, Floats]:
        """Temperatures and enthalpy after a step, by Newton's method on the curve of H against T.

        A cell that freezes or thaws within the step needs more than one solve, or it takes the heat of its neighbours
        for latent heat that it no longer has. What is left after the last solve stays in H, so energy is exact.
        """
        weights = self.volumes * newest_per_s
        carried += weights * self.now.enthalpy
        guess, held = self.temperature, self.now.enthalpy
        for _ in range(ICE_SOLVES_MOST):
            capacity = self.material.secant_capacity(guess, held)
            storage = weights * capacity
            right = storage * guess
            right += carried
            right -= weights * held
            solved = tridiagonal.solve(_joined(storage, coupling, outward), coupling, right)
            held = held + capacity * (solved - guess)
            guess = self.material.temperature_c(held)
            if np.abs(guess - solved).max() < ICE_TOLERANCE_K:
                break
        return solved, held

    def _conductivity(self, temperature_c: Floats) -> Floats:
        if self.icy:
            return self.material.conductivity_at(temperature_c)
        temperature_c *= self.material.conductivity_slope
        temperature_c += self.material.conductivity
        return temperature_c


def _joined(storage: Floats, coupling: Floats, outward: Floats) -> Floats:
    """The diagonal: what each cell stores (overwritten) and passes to its neighbours and out of the surface."""
    storage[:-1] += coupling
    storage[1:] += coupling
    storage[-1] += outward
    return storage
