"""Salt moving into meat from a bath that grows weaker: Fick's second law in a slab, a cylinder or a sphere.

    w du/dt = x^-n d/dx (w D x^n du/dx)        u: salt per water, w: water per volume, n: 0, 1, 2

The bath is well mixed and loses what the meat gains. In space: finite volumes, finer toward the surface. In time:
exact, by the eigenvalues of the symmetrised exchange matrix, so that one decomposition serves every time, and every
diffusivity and thickness with the same proportions. Crank, The Mathematics of Diffusion, 2nd ed., 4.3.5 and 5.3.4,
gives the exact series that the tests compare with.
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
CELLS = 28
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
    """Salt passing between a bath and the bodies in it, ready for any time.

    `settled` is what all come to: salt per water, where the bath began at 1 and the meat at 0.
    """

    bodies: tuple[Body, ...]
    bath_water_kg: float
    edges: Floats = field(repr=False)
    rates: Floats = field(repr=False)
    modes: Floats = field(repr=False)
    settled: float

    @classmethod
    def of(cls, bodies: Sequence[Body], bath_water_kg: float) -> Bath:
        """Put `bodies` in `bath_water_kg` of water (infinite where the bath never weakens). Raises Impossible."""
        if not bodies or any(not (body.reach_m > 0 and body.water_kg > 0) for body in bodies):
            raise Impossible("bodies", len(bodies), "need a thickness and water above 0", "give the meat's own size")
        if not bath_water_kg > 0:
            raise Impossible("bath_water_kg", bath_water_kg, "is not above 0", "give the water of the brine")
        meat_kg = sum(body.water_kg for body in bodies)
        bath_kg = min(bath_water_kg, 1e9 * meat_kg)
        edges = 1.0 - (1.0 - np.arange(CELLS + 1) / CELLS) ** GRADING
        capacity, exchange = _exchange(bodies, bath_kg, edges)
        root = np.sqrt(capacity)
        values, vectors = np.linalg.eigh(exchange / root[:, None] / root[None, :])
        values[0] = 0.0  # the state of rest, exactly: no salt is lost
        start = vectors.T @ (root * np.eye(1, len(capacity))[0])
        modes = vectors * start / root[:, None]
        return cls(
            tuple(bodies), bath_kg, edges, np.maximum(values, 0.0), modes, float(bath_kg / (bath_kg + meat_kg))
        )

    def salt_per_water(self, travelled_m2: ArrayLike) -> Floats:
        """Of every cell, bath first: shaped (cells, times). `travelled_m2` is diffusivity times elapsed time."""
        return np.asarray(self.modes @ self._decay(travelled_m2))

    def means(self, travelled_m2: ArrayLike) -> Floats:
        """The mean of each body, shaped (bodies, times)."""
        return np.asarray(self._averages() @ self.modes @ self._decay(travelled_m2))

    def profile(self, body: int, travelled_m2: float) -> tuple[Floats, Floats]:
        """Depths below the surface in m, surface first, and the salt per water at each."""
        here = slice(1 + body * CELLS, 1 + (body + 1) * CELLS)
        middles = (self.edges[:-1] + self.edges[1:]) / 2
        depth_m = self.bodies[body].reach_m * (1.0 - middles)
        return depth_m[::-1], self.salt_per_water(travelled_m2)[here, 0][::-1]

    def _decay(self, travelled_m2: ArrayLike) -> Floats:
        """What is left of each mode, shaped (modes, times)."""
        return np.asarray(np.exp(-np.outer(self.rates, np.asarray(travelled_m2, dtype=float))))

    def _averages(self) -> Floats:
        matrix = np.zeros((len(self.bodies), len(self.modes)))
        for number, body in enumerate(self.bodies):
            matrix[number, 1 + number * CELLS : 1 + (number + 1) * CELLS] = _shares(body, self.edges)
        return matrix


def _shares(body: Body, edges: Floats) -> Floats:
    """The share of the body's volume in each cell."""
    return np.diff(edges ** (EXPONENT[body.form] + 1))


def _exchange(bodies: Sequence[Body], bath_kg: float, edges: Floats) -> tuple[Floats, Floats]:
    """Capacities (kg of water) of the bath and all cells, and the conductances between them over the diffusivity."""
    size = 1 + CELLS * len(bodies)
    capacity, exchange = np.empty(size), np.zeros((size, size))
    capacity[0] = bath_kg
    middles = (edges[:-1] + edges[1:]) / 2
    for number, body in enumerate(bodies):
        first = 1 + number * CELLS
        cells = np.arange(first, first + CELLS)
        capacity[cells] = body.water_kg * _shares(body, edges)
        power = EXPONENT[body.form]
        gaps = np.append(np.diff(middles), 1.0 - middles[-1])
        faces = (power + 1) * edges[1:] ** power / gaps * body.water_kg / body.reach_m**2
        neighbours = np.append(cells[1:], 0)
        for cell, neighbour, conductance in zip(cells, neighbours, faces, strict=True):
            exchange[cell, cell] += conductance
            exchange[neighbour, neighbour] += conductance
            exchange[cell, neighbour] -= conductance
            exchange[neighbour, cell] -= conductance
    return capacity, exchange
