"""Percentiles of members' values: what numpy's own give, without their cost for a handful of values."""

from __future__ import annotations

import numpy as np

from turnspit.heat.material import Floats
from turnspit.spread import Spread

TOLD = np.array([0.1, 0.5, 0.9])


def percentiles(values: Floats, shares: Floats = TOLD) -> Floats:
    """The `shares` (0 to 1) of the values along the last axis, first in the result; linear between two values."""
    ordered = np.sort(values, axis=-1)
    places = shares * (values.shape[-1] - 1)
    low = places.astype(int)
    high = np.minimum(low + 1, values.shape[-1] - 1)
    below = ordered[..., low]
    return np.asarray(np.moveaxis(below + (places - low) * (ordered[..., high] - below), -1, 0))


def median(values: Floats) -> Floats:
    """The median along the last axis."""
    return np.asarray(percentiles(values, TOLD[1:2])[0])


def spread(values: Floats) -> Spread:
    """The three percentiles that are told of one value a member."""
    return Spread(*percentiles(values).tolist())
