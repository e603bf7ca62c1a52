"""Taken out of the oven: each member when its slowest place reads the pull temperature; then the rest."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from turnspit.heat.cook import Cook
from turnspit.heat.material import Floats
from turnspit.heat.percentiles import median, percentiles, spread
from turnspit.heat.solver import State

NO_RISE_K = 0.05
TRIED_MEMBERS, TRIED_STEP = 20, 0.06
"""Members and longest step on which other pull temperatures are tried; the rest of all members corrects the level."""
RISE_MOST_K, PULL_LEAST_C = 10.0, 40.0
"""No published rise of a roast of a kitchen is above 8 K (the trade's 14 is for very large ones), so no advice counts
on more than 10; and nothing is pulled below the lowest reading the model takes."""
CURVE_POINTS = 61
NO_REST_MIN = 1 / 60
"""What stands for no rest at all: nothing moves in a second."""


@dataclass(frozen=True, slots=True)
class Pulled:
    """The pull at `pull_c` and the rest: (stations, members) per array; `rest_c` is (times, stations, members).

    `state` is that of all columns when pulled, `rested` at the end of the rest."""

    pull_c: float
    reached_s: Floats
    ready_s: Floats
    state: State
    rest_s: Floats
    rest_c: Floats
    rested: State

    @property
    def peak_c(self) -> Floats:
        """The highest each place reads from the pull to the end of the rest."""
        return np.asarray(self.rest_c.max(axis=0))


def pull(cooked: Cook, pull_c: float, rest_min: float) -> Pulled:
    """Every member pulled when the last of its places reads `pull_c`, then rested. Raises Impossible."""
    reached_s = cooked.reached_s(pull_c)
    ready_s = reached_s.max(axis=0)
    stations = len(cooked.places)
    every = np.arange(stations * cooked.members)
    state = cooked.at(np.tile(ready_s, stations), every)
    rest_s, core_c, rested = cooked.rest(state, every, max(rest_min, NO_REST_MIN))
    return Pulled(pull_c, reached_s, ready_s, state, rest_s, core_c.reshape(-1, stations, cooked.members), rested)


def advised_pull_c(cooked: Cook, pulled: Pulled, target_c: float) -> float:
    """The pull temperature whose median peak in the rest, at the place that peaks least, is `target_c`.

    Never above it, never more than RISE_MOST_K below it and never under PULL_LEAST_C, whatever the model expects.
    """
    rise_k = float(median(pulled.peak_c.min(axis=0))) - pulled.pull_c
    if rise_k < NO_RISE_K:
        return target_c
    tried = min(cooked.members, TRIED_MEMBERS)
    guesses = np.maximum(target_c - rise_k * np.array([0.5, 1.0, 1.6]), cooked.started_c)
    peaks = _median_peaks(cooked, np.append(guesses, pulled.pull_c), tried, pulled.rest_s[-1] / 60.0)
    shift = pulled.pull_c + rise_k - peaks[-1]
    advised = float(np.interp(target_c, peaks[:-1][::-1] + shift, guesses[::-1]))
    return min(max(advised, target_c - RISE_MOST_K, PULL_LEAST_C), target_c)


def _median_peaks(cooked: Cook, pulls_c: Floats, tried: int, rest_min: float) -> Floats:
    """The median over `tried` members of what the place that peaks least reaches, for each pull."""
    stations, pulls = len(cooked.places), len(pulls_c)
    ready_s = np.concatenate([cooked.reached_s(pull)[:, :tried].max(axis=0) for pull in pulls_c.tolist()])
    columns = (np.arange(stations)[:, None] * cooked.members + np.tile(np.arange(tried), pulls)).ravel()
    _, core_c, _ = cooked.rest(cooked.at(np.tile(ready_s, stations), columns), columns, rest_min, TRIED_STEP)
    least_c = core_c.max(axis=0).reshape(stations, pulls, tried).min(axis=0)
    return median(least_c)


def curves(cooked: Cook, pulled: Pulled) -> tuple[Floats, Floats]:
    """Minutes, and by (percentile, minute, station) the 10th, 50th and 90th of oven and rest together."""
    end_s = spread(pulled.ready_s).p90 + float(pulled.rest_s[-1])
    grid_s = np.linspace(0.0, end_s, CURVE_POINTS)
    baked = _between(cooked.times_s, cooked.core_c, grid_s)
    since_s = np.clip(grid_s[:, None] - pulled.ready_s, 0.0, pulled.rest_s[-1])
    step = np.clip(np.searchsorted(pulled.rest_s, since_s), 1, len(pulled.rest_s) - 1)
    member = np.arange(cooked.members)
    before, after = pulled.rest_c[step - 1, :, member], pulled.rest_c[step, :, member]
    share = (since_s - pulled.rest_s[step - 1]) / (pulled.rest_s[step] - pulled.rest_s[step - 1])
    rested = before + share[..., None] * (after - before)
    out = (grid_s[:, None] > pulled.ready_s)[:, None, :]
    everything = np.where(out, rested.transpose(0, 2, 1), baked)
    return grid_s / 60.0, percentiles(everything)


def _between(times_s: Floats, values: Floats, grid_s: Floats) -> Floats:
    """`values` (times, ...) interpolated at the grid, held after the last time."""
    step = np.clip(np.searchsorted(times_s, grid_s), 1, len(times_s) - 1)
    share = np.clip((grid_s - times_s[step - 1]) / (times_s[step] - times_s[step - 1]), 0.0, 1.0)
    early, late = values[step - 1], values[step]
    return np.asarray(early + share.reshape(-1, 1, 1) * (late - early))
