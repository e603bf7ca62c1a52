"""Salt moving into meat from a bath that grows weaker: Fick's second law in a slab, a cylinder or a sphere.

    w du/dt = x^-n d/dx (w D x^n du/dx)        u: salt per water, w: water per volume, n: 0, 1, 2

The bath is well mixed and loses what the meat gains. In space: finite volumes, finer toward the surface. In time:
exact, by the eigenvalues of the symmetrised exchange matrix (tridiagonal: a chain of cells with the bath in it), so
that one decomposition serves every time, and every diffusivity and thickness with the same proportions. Crank, The
Mathematics of Diffusion, 2nd ed., 4.3.5 and 5.3.4, gives the exact series that the tests compare with.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import ArrayLike, NDArray

from turnspit.brine.geometry import Form
from turnspit.errors import Impossible, OutOfRange
from turnspit.reference import table

Floats = NDArray[np.float64]

EXPONENT: dict[str, int] = {"slab": 0, "cylinder": 1, "sphere": 2}
GAS_J_MOL_K = 8.314462618
CELLS = 36
GRADING = 2.4
"""Cell edges lie at 1 - (1 - i/N)^GRADING from the middle: finer at the surface, where the salt comes in."""


def diffusivity_m2_s(temperature_c: float) -> float:
    """Salt in cold meat, -2 to 25 C: 1.9e-10 m2/s at 5 C (pork loin), activation energy 22 kJ/mol (memory)."""
    OutOfRange.check("temperature_c", temperature_c, -2.0, 25.0, "meat is brined at or below 4 C")
    rows = table("salt_diffusivity").by("key")
    anchor, energy = rows["pork_loin_5c"], rows["activation_energy"]["activation_energy_j_mol"]
    inverse = 1.0 / (temperature_c + 273.15) - 1.0 / (anchor["temperature_c"] + 273.15)
    return float(anchor["diffusivity_m2_s"] * np.exp(-energy / GAS_J_MOL_K * inverse))


@dataclass(frozen=True, slots=True)
class Body:
    """A piece of meat: its form, the depth from surface to middle, and the water it holds (its capacity for salt)."""

    form: Form | str
    reach_m: float
    water_kg: float


@dataclass(frozen=True, slots=True)
class Bath:
    """Salt passing between a bath and the one or two bodies in it, ready for any time.

    `settled` is what all come to: salt per water, where the bath began at 1 and the meat at 0. The cells form a chain
    with the bath between the surfaces: the first body from its middle out, the bath, the second from its surface in.
    """

    bodies: tuple[Body, ...]
    bath_water_kg: float
    capacity_kg: Floats = field(repr=False)
    rates: Floats = field(repr=False)
    modes: Floats = field(repr=False)
    settled: float

    @classmethod
    def of(cls, bodies: Sequence[Body], bath_water_kg: float) -> Bath:
        """Put `bodies` in `bath_water_kg` of water (infinite where the bath never weakens). Raises Impossible."""
        from scipy.linalg import eigh_tridiagonal  # here, because it takes a quarter of a second to load

        if not 1 <= len(bodies) <= 2 or any(not (body.reach_m > 0 and body.water_kg > 0) for body in bodies):
            raise Impossible(
                "bodies", len(bodies), "are not one or two with a thickness and water", "give their size"
            )
        if not bath_water_kg > 0:
            raise Impossible("bath_water_kg", bath_water_kg, "is not above 0", "give the water of the brine")
        meat_kg = sum(body.water_kg for body in bodies)
        bath_kg = min(bath_water_kg, 1e9 * meat_kg)
        capacity, exchange = _chain(bodies, bath_kg)
        root = np.sqrt(capacity)
        leaving = np.append(exchange, 0.0) + np.append(0.0, exchange)
        values, vectors = eigh_tridiagonal(leaving / capacity, -exchange / root[:-1] / root[1:])
        values[0] = 0.0  # the state of rest, exactly: no salt is lost
        modes = vectors * (vectors[CELLS] * root[CELLS]) / root[:, None]
        return cls(tuple(bodies), bath_kg, capacity, values, modes, float(bath_kg / (bath_kg + meat_kg)))

    def salt_per_water(self, travelled_m2: ArrayLike) -> Floats:
        """Of every cell of the chain: shaped (cells, times). `travelled_m2` is diffusivity times elapsed time."""
        return np.asarray(self.modes @ self._decay(travelled_m2))

    def means(self, travelled_m2: ArrayLike) -> Floats:
        """The mean of each body, shaped (bodies, times)."""
        shares = np.zeros((len(self.bodies), len(self.modes)))
        for number, body in enumerate(self.bodies):
            here = _cells(number)
            shares[number, here] = self.capacity_kg[here] / body.water_kg
        return np.asarray(shares @ self.modes @ self._decay(travelled_m2))

    def profile(self, body: int, travelled_m2: float) -> tuple[Floats, Floats]:
        """Depths below the surface in m, surface first, and the salt per water at each."""
        salt = self.salt_per_water(travelled_m2)[_cells(body), 0]
        depth_m = self.bodies[body].reach_m * (1.0 - _middles())
        return depth_m[::-1], salt[::-1] if body == 0 else salt

    def _decay(self, travelled_m2: ArrayLike) -> Floats:
        """What is left of each mode, shaped (modes, times)."""
        return np.asarray(np.exp(-np.outer(self.rates, np.asarray(travelled_m2, dtype=float))))


def _chain(bodies: Sequence[Body], bath_kg: float) -> tuple[Floats, Floats]:
    """Capacities (kg of water) along the chain, and the conductances between neighbours over the diffusivity."""
    first, *others = (_body_cells(body) for body in bodies)
    capacity, exchange = [first[0], np.array([bath_kg])], [first[1]]
    for water_kg, conductance in others:
        capacity.append(water_kg[::-1])
        exchange.append(conductance[::-1])
    return np.concatenate(capacity), np.concatenate(exchange)


def _body_cells(body: Body) -> tuple[Floats, Floats]:
    """Water of each cell from the middle out, and the conductance from each to the next, the last to the surface."""
    edges, middles, power = _edges(), _middles(), EXPONENT[body.form]
    water_kg = body.water_kg * np.diff(edges ** (power + 1))
    gaps = np.append(np.diff(middles), 1.0 - middles[-1])
    return water_kg, (power + 1) * edges[1:] ** power / gaps * body.water_kg / body.reach_m**2


def _cells(body: int) -> slice:
    """Where a body's cells stand in the chain."""
    return slice(0, CELLS) if body == 0 else slice(CELLS + 1, 2 * CELLS + 1)


def _edges() -> Floats:
    """Of the cells, from the middle at 0 to the surface at 1."""
    return np.asarray(1.0 - (1.0 - np.arange(CELLS + 1) / CELLS) ** GRADING)


def _middles() -> Floats:
    edges = _edges()
    return np.asarray((edges[:-1] + edges[1:]) / 2)
