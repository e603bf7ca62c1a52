"""One thermometer reading laid on a forecast: what it leaves of the time, and how sure that is.

The members of the ensemble differ in what a cook cannot know (oven, surface, shape). Where the time in the oven is
known, a member counts the more the nearer it was to the reading at that time (one importance step); where it is not,
or where no member was near (an oven that went cold), each member is simply taken from the moment it passed the
reading. What is left is each member's way from there to ready, so that the bend of the heating curve is the model's
own and nothing is drawn through two points.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.heat import RoastForecast
from turnspit.spread import Spread

Floats = NDArray[np.float64]

READING_ERROR_C = 0.5
MODEL_ERROR_C = 1.2
"""Spread of a probe, and of the model beside it (a smooth error over half an hour; docs/heat.md)."""

LEAST_EFFECTIVE = 10.0
"""With fewer effective members than this the reading is one the ensemble did not expect; the spread is widened."""

LOWEST_C, HIGHEST_C = -5.0, 110.0


@dataclass(frozen=True, slots=True)
class Placed:
    """What a reading says.

    `minutes_left` counts to the pull temperature in the deciding station; `done` is True where that station itself
    reads it (other places may still be colder). `expected` is False where no member of the ensemble came near the
    reading: a misplaced probe, or an oven that is not as set.
    """

    station: str
    temperature_c: float
    minutes_left: Spread
    done: bool
    expected: bool
    effective_members: float


def place_reading(
    forecast: RoastForecast, station: str, temperature_c: float, elapsed_min: float | None = None
) -> Placed:
    """Minutes left from a reading of `temperature_c` (C, -5 to 110) in `station`, `elapsed_min` after it went in.

    Raises Unknown for a station the roast has not, OutOfRange for a temperature no roast reads, Impossible for a
    negative time.
    """
    if station not in forecast.history_c:
        raise Unknown("station", station, tuple(forecast.history_c))
    OutOfRange.check("temperature_c", temperature_c, LOWEST_C, HIGHEST_C, "read it again: is that Fahrenheit?")
    if elapsed_min is not None and not elapsed_min >= 0:
        raise Impossible("elapsed_min", elapsed_min, "is not 0 or more", "say when the roast went in")
    history = forecast.history_c[station]
    since, weights, expected = _passing_min(forecast.history_min, history, temperature_c), None, True
    if elapsed_min is not None:
        by_clock, expected = _weights(forecast.history_min, history, temperature_c, elapsed_min)
        if expected:
            since, weights = np.full(history.shape[1], elapsed_min), by_clock
    left = np.maximum(forecast.ready_members_min - since, 0.0)
    done = station == forecast.deciding_station and temperature_c >= forecast.pull_c
    effective = float(left.size if weights is None else 1.0 / np.sum(weights**2))
    spread = Spread(0.0, 0.0, 0.0) if done else _weighted(left, weights)
    return Placed(station, temperature_c, spread, done, expected, effective)


def _passing_min(times_min: Floats, history: Floats, temperature_c: float) -> Floats:
    """When each member passes the temperature; the end of its history where it never does."""
    above = history >= temperature_c
    index = np.where(above.any(axis=0), above.argmax(axis=0), len(times_min) - 1)
    before = np.maximum(index - 1, 0)
    members = np.arange(history.shape[1])
    low, high = history[before, members], history[index, members]
    share = np.divide(temperature_c - low, high - low, out=np.zeros_like(low), where=high > low)
    return np.asarray(times_min[before] + np.clip(share, 0.0, 1.0) * (times_min[index] - times_min[before]))


def _weights(times_min: Floats, history: Floats, temperature_c: float, elapsed_min: float) -> tuple[Floats, bool]:
    """Each member's weight by its distance from the reading; widened until enough members count."""
    row = np.array([np.interp(elapsed_min, times_min, member) for member in history.T])
    error_c = float(np.hypot(READING_ERROR_C, MODEL_ERROR_C))
    expected = bool(np.min(np.abs(row - temperature_c)) <= 3 * error_c)
    while True:
        distance = (row - temperature_c) / error_c
        raw = np.exp(-0.5 * (distance**2 - np.min(distance**2)))
        weights = raw / raw.sum()
        if 1.0 / np.sum(weights**2) >= min(LEAST_EFFECTIVE, row.size / 2) or error_c > 40:
            return np.asarray(weights), expected
        error_c *= 1.5


def _weighted(values: Floats, weights: Floats | None) -> Spread:
    if weights is None:
        return Spread.of(values)
    order = np.argsort(values)
    share = np.cumsum(weights[order]) - 0.5 * weights[order]
    return Spread(*(float(np.interp(p, share, values[order])) for p in (0.1, 0.5, 0.9)))
