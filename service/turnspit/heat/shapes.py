"""Real shapes as columns of the solver: a radius, an exponent and how much more surface the real body has.

A brick, a finite cylinder or an ellipsoid cools in several directions at once, the solver in one. Of a real shape
at the film coefficient at hand three things are known: surface per volume, the decay rate of its centre and the lag
before that decay sets in. Radius, exponent and area factor of the column are chosen so that it has the same three.
The centre's times to 0.3 of the first difference and below then follow the exact series within 1 percent
(tests/published/test_exact_shapes.py).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import brentq
from scipy.special import gamma, jn_zeros, jv

from turnspit.heat.column import Column

Floats = NDArray[np.float64]
Edges = tuple[float, float, float]

ELLIPSOID_FULLNESS = math.pi / 6
"""Volume of an ellipsoid as a share of the box around it."""
LIN_RATIO_MOST = 10.0
"""Longer axes count as this long: their ends no longer matter, and the equations were fitted no further."""


@dataclass(frozen=True, slots=True)
class Cooling:
    """How a body cools at a film coefficient: surface per volume (1/m), decay rate over diffusivity (1/m2), and lag.

    (Tc - Ta)/(T0 - Ta) of the centre is lag x exp(-decay x diffusivity x time), once it has begun to fall.
    """

    area_per_volume: float
    decay: float
    lag: float

    def between(self, other: Cooling, share: float) -> Cooling:
        """The body `share` of the way to another."""
        return Cooling(
            self.area_per_volume + share * (other.area_per_volume - self.area_per_volume),
            self.decay + share * (other.decay - self.decay),
            self.lag + share * (other.lag - self.lag),
        )


def brick(edges_m: Edges, film_per_m: float) -> Column:
    """A rectangular block cooled from all six faces; `film_per_m` is film coefficient over conductivity, h/k."""
    return _column(_brick(edges_m, film_per_m), film_per_m)


def cylinder(diameter_m: float, height_m: float, film_per_m: float, ends: float = 1.0) -> Column:
    """A round cylinder cooled from its side and both ends; `film_per_m` is h/k, at the ends `ends` times that."""
    directions = (_series(1, diameter_m / 2, film_per_m), _series(0, height_m / 2, ends * film_per_m))
    return _column(_crossed(directions, 4 / diameter_m + ends * 2 / height_m), film_per_m)


def ellipsoid(axes_m: Edges, film_per_m: float) -> Column:
    """An ellipsoid of three axes (full lengths); `film_per_m` is h/k. Shape factors: Lin et al. (1996)."""
    return _column(_ellipsoid(axes_m, film_per_m), film_per_m)


def rounded(edges_m: Edges, fullness: float, film_per_m: float) -> Column:
    """A body between ellipsoid and brick: `fullness` is its share of the box `edges_m`, from pi/6 to 1."""
    share = min(max((fullness - ELLIPSOID_FULLNESS) / (1 - ELLIPSOID_FULLNESS), 0.0), 1.0)
    return _column(_ellipsoid(edges_m, film_per_m).between(_brick(edges_m, film_per_m), share), film_per_m)


def _brick(edges_m: Edges, film_per_m: float) -> Cooling:
    directions = tuple(_series(0, edge / 2, film_per_m) for edge in edges_m)
    return _crossed(directions, sum(2 / edge for edge in edges_m))


def _ellipsoid(axes_m: Edges, film_per_m: float) -> Cooling:
    """Lin, Cleland, Cleland and Serrallach (1996), as given in ASHRAE Handbook - Refrigeration (2006), ch. 10."""
    short, middle, long = sorted(axes_m)
    half, b1, b2 = short / 2, min(middle / short, LIN_RATIO_MOST), min(long / short, LIN_RATIO_MOST)
    slow = 1.5 * (b1 + b2 + b1**2 * (1 + b2) + b2**2 * (1 + b1)) / (b1 * b2 * (1 + b1 + b2))
    slow -= ((b1 - b2) ** 2) ** 0.4 / 15

    def f(ratio: float) -> float:
        return 1 / ratio**2 + 0.01 * math.exp(ratio - ratio**2 / 6)

    fast = 0.75 + 1.01 * f(b1) + 1.24 * f(b2)
    biot = film_per_m * half
    dimensions = (biot ** (4 / 3) + 1.85) / (biot ** (4 / 3) / fast + 1.85 / slow)
    held_lag = 1.271 + 0.305 * math.exp(0.172 * b1 - 0.115 * b1**2) + 0.425 * math.exp(0.09 * b2 - 0.128 * b2**2)
    lag = (biot**1.35 + 1) / (biot**1.35 / held_lag + 1)
    return Cooling(slow / half, _sphere_decay(half, film_per_m) * dimensions / 3, lag)


# ------------------------------------------------------------------------------------------- exact series


_TERMS, _HALVINGS = 8, 26
_LEVELS = (0.35, 0.08)
"""The shares of the temperature difference between which decay and lag of a crossed body are taken."""

Series = tuple[Floats, Floats]
"""Rates over diffusivity (1/m2) and coefficients of the terms at the centre."""


@cache
def _brackets(exponent: int) -> tuple[Floats, Floats]:
    """Between which values each eigenvalue lies: zeros of J of order (n + 1)/2 and of order (n - 1)/2."""
    if exponent == 0:
        zeros = np.arange(_TERMS, dtype=np.float64) * math.pi
        return zeros, zeros + math.pi / 2
    return np.array([0.0, *jn_zeros(1, _TERMS - 1)]), np.array(jn_zeros(0, _TERMS), dtype=np.float64)


def _series(exponent: int, radius_m: float, film_per_m: float) -> Series:
    """Slab (0) or cylinder (1): the eigenvalues z solve z J(z, order + 1) = Bi J(z, order)."""
    order, biot = (exponent - 1) / 2, film_per_m * radius_m
    low, high = _brackets(exponent)
    low = np.maximum(low, 1e-6)
    sign = np.sign(low * jv(order + 1, low) - biot * jv(order, low))
    for _ in range(_HALVINGS):
        middle = 0.5 * (low + high)
        left = np.sign(middle * jv(order + 1, middle) - biot * jv(order, middle)) == sign
        low, high = np.where(left, middle, low), np.where(left, high, middle)
    return (low / radius_m) ** 2, _coefficients(exponent, low)


def _coefficients(exponent: float, roots: Floats) -> Floats:
    """Coefficient of each term at the centre, for the eigenvalues of a convecting surface."""
    order = (exponent - 1) / 2
    here, next_one = jv(order, roots), jv(order + 1, roots)
    slope = order / roots * here - next_one
    norm = 0.5 * gamma(order + 1) * (2 / roots) ** order * (slope**2 + (1 - (order / roots) ** 2) * here**2)
    return np.asarray(next_one / (roots * norm))


def _crossed(directions: tuple[Series, ...], area_per_volume: float) -> Cooling:
    """The body where slabs and cylinders cross at right angles: the product of their series (Newman 1936)."""

    def centre(spread_m2: float) -> float:
        return math.prod(float(weights @ np.exp(-rates * spread_m2)) for rates, weights in directions)

    slowest = sum(float(rates[0]) for rates, _ in directions)
    first, last = (float(brentq(lambda at, y=y: centre(at) - y, 0.05 / slowest, 8 / slowest)) for y in _LEVELS)
    decay = math.log(_LEVELS[0] / _LEVELS[1]) / (last - first)
    return Cooling(area_per_volume, decay, _LEVELS[0] * math.exp(decay * first))


def _sphere_decay(radius_m: float, film_per_m: float) -> float:
    biot = film_per_m * radius_m
    root = brentq(lambda z: z * math.cos(z) + (biot - 1) * math.sin(z), 1e-6, math.pi)
    return float((root / radius_m) ** 2)


# ------------------------------------------------------------------------------------ the column of a body


@cache
def _first_zero(exponent: float) -> float:
    """The first eigenvalue of a column whose surface is held: pi/2 for a slab, 2.405 a cylinder, pi a sphere."""
    order = (exponent - 1) / 2
    grid = np.linspace(1.0, 6.0, 101)
    values = jv(order, grid)
    low = grid[np.flatnonzero(values[:-1] * values[1:] < 0)[0]]
    return float(brentq(lambda z: jv(order, z), low, low + 0.05))


def _column(body: Cooling, film_per_m: float) -> Column:
    """The column that has the body's surface per volume, decay and lag."""
    slowness = film_per_m * body.area_per_volume / body.decay  # 1 where the inside has no resistance

    def root(exponent: float) -> float:
        order = (exponent - 1) / 2
        return float(
            brentq(
                lambda z: (exponent + 1) / z * jv(order + 1, z) - slowness * jv(order, z), 1e-4, _first_zero(exponent)
            )
        )

    def excess_lag(exponent: float) -> float:
        return float(_coefficients(exponent, np.array(root(exponent)))) - body.lag

    low, high = 0.0, 4.0
    if excess_lag(low) >= 0:
        exponent = low
    elif excess_lag(high) <= 0:
        exponent = high
    else:
        exponent = float(brentq(excess_lag, low, high, xtol=0.005))
    radius_m = root(exponent) / math.sqrt(body.decay)
    return Column(radius_m, exponent, body.area_per_volume * radius_m / (exponent + 1))
