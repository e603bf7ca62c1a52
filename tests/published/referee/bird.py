"""The referee of the one-column model: a bird in two dimensions by finite elements, made with scikit-fem.

    python tests/published/referee/bird.py > tests/published/referee/birds.toml

Axisymmetric hollow prolate spheroid: polar over equatorial axis 1.4, cavity 25 percent of the envelope with an
insulated wall, constant properties. Lost water is counted at each surface node. Bilinear
quadrilaterals, 32 through the wall and 48 along it, weight r; BDF2 in time; pulled when the coldest node reads the
target, then rested. About five seconds a bird. The surface law is the referee's own, so that what is compared
is the reduction to one dimension alone.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import numpy as np
from scipy.sparse import csc_matrix, diags
from scipy.sparse.linalg import splu
from skfem import Basis, BilinearForm, ElementQuad1, FacetBasis, LinearForm, MeshQuad
from skfem.helpers import dot, grad

from turnspit.heat.solver import Exchange

DENSITY, CAPACITY, CONDUCTIVITY = 1041.0, 1041.0 * 3548.0, 0.472 + 0.00104 * 40
ASPECT, CAVITY = 1.4, 0.25
STEP_S, TARGET_C, REST_MIN = 20.0, 73.9, 60.0
BOILS_C, HELD_W_M2K = 99.97, 1e6
"""No wet skin gets hotter than boiling water: where it would, it is held there and boils away what it does not pass on."""


@dataclass(frozen=True)
class Skin:
    """Convection, radiation at an exchange factor of 0.85, and evaporation that a crust of `crust_kg_m2` halves."""

    air_c: float
    convection: float
    crust_kg_m2: float
    vapour_pa: float = 5000.0

    def exchange(self, surface_c: np.ndarray, lost_kg_m2: np.ndarray, _time_s: float = 0.0) -> Exchange:
        """Heat in and water out per m2, with their slopes."""
        kelvin = surface_c + 273.15
        pressure = np.minimum(610.94 * np.exp(17.625 * surface_c / (surface_c + 243.04)), 101325.0)
        slope = np.where(pressure < 101325.0, pressure * 17.625 * 243.04 / (surface_c + 243.04) ** 2, 0.0)
        transfer = self.convection / 1010 * 0.622 / 101325 * 1.11 / (1 + lost_kg_m2 / self.crust_kg_m2)
        transfer = transfer * (pressure > self.vapour_pa)
        water, water_slope = transfer * (pressure - self.vapour_pa), transfer * slope
        radiant = 0.85 * 5.670374e-8
        heat = self.convection * (self.air_c - surface_c) + radiant * ((self.air_c + 273.15) ** 4 - kelvin**4)
        heat_slope = -self.convection - 4 * radiant * kelvin**3
        return Exchange(heat - 2.33e6 * water, heat_slope - 2.33e6 * water_slope, water, water_slope)


@dataclass(frozen=True)
class Case:
    """One bird and its oven."""

    name: str
    mass_kg: float = 6.35
    oven_c: float = 162.8
    convection: float = 7.7
    crust_kg_m2: float = 0.72
    start_c: float = 4.4


BIRD = Case("14 lb")
CASES = (
    BIRD,
    replace(BIRD, name="8 lb", mass_kg=3.63),
    replace(BIRD, name="24 lb", mass_kg=10.89),
    replace(BIRD, name="oven 121", oven_c=121.0),
    replace(BIRD, name="oven 177", oven_c=177.0),
    replace(BIRD, name="8 lb oven 177", mass_kg=3.63, oven_c=177.0),
    replace(BIRD, name="24 lb oven 177", mass_kg=10.89, oven_c=177.0),
    replace(BIRD, name="8 lb oven 121", mass_kg=3.63, oven_c=121.0),
    replace(BIRD, name="oven 204", oven_c=204.0),
    replace(BIRD, name="8 lb oven 204", mass_kg=3.63, oven_c=204.0),
    replace(BIRD, name="24 lb oven 121", mass_kg=10.89, oven_c=121.0),
    replace(BIRD, name="twice the air", convection=15.4),
    replace(BIRD, name="slow crust", crust_kg_m2=2.16),
    replace(BIRD, name="quick crust", crust_kg_m2=0.24),
    replace(BIRD, name="tempered", start_c=15.0),
)


def axes_m(mass_kg: float) -> tuple[float, float]:
    """Equatorial and polar half axis of the envelope."""
    envelope_m3 = mass_kg / DENSITY / (1 - CAVITY)
    equator_m = (3 * envelope_m3 / (4 * math.pi * ASPECT)) ** (1 / 3)
    return equator_m, ASPECT * equator_m


def area_m2(mass_kg: float) -> float:
    """Outer surface of the spheroid."""
    equator_m, pole_m = axes_m(mass_kg)
    e = math.sqrt(1 - (equator_m / pole_m) ** 2)
    return 2 * math.pi * equator_m**2 * (1 + pole_m / (equator_m * e) * math.asin(e))


def mesh(mass_kg: float, through: int = 32, along: int = 48) -> MeshQuad:
    """Half a meridian plane, points (r, z), from cavity wall to skin and from equator to pole."""
    flat = MeshQuad.init_tensor(
        np.linspace(CAVITY ** (1 / 3), 1, through + 1), np.linspace(0, math.pi / 2, along + 1)
    )
    share, angle = flat.p
    equator_m, pole_m = axes_m(mass_kg)
    points = np.array([equator_m * share * np.cos(angle), pole_m * share * np.sin(angle)])
    return MeshQuad(points, flat.t).with_boundaries({"skin": lambda x: _on_skin(x, equator_m, pole_m)})


def _on_skin(x: np.ndarray, equator_m: float, pole_m: float) -> np.ndarray:
    # midpoints of straight facets lie a little inside the ellipse
    return (x[0] / equator_m) ** 2 + (x[1] / pole_m) ** 2 > 0.99


def surfaces(case: Case) -> tuple[Skin, Skin]:
    """Oven, and the room it rests in."""
    return Skin(case.oven_c, case.convection, case.crust_kg_m2), Skin(21.0, 5.0, case.crust_kg_m2, 1000.0)


def roast(case: Case) -> dict[str, float]:
    """Minutes until the coldest node reads the target, its rise in the rest, and the water lost by then."""
    grid = mesh(case.mass_kg)
    basis = Basis(grid, ElementQuad1())
    skin = FacetBasis(grid, ElementQuad1(), facets="skin")
    heat = BilinearForm(lambda u, v, w: CAPACITY * w.x[0] * u * v).assemble(basis)
    flow = BilinearForm(lambda u, v, w: CONDUCTIVITY * w.x[0] * dot(grad(u), grad(v))).assemble(basis)
    length = LinearForm(lambda v, w: w.x[0] * v).assemble(skin)
    nodes = np.flatnonzero(length > 0)
    oven, room = surfaces(case)

    temperature = before = np.full(grid.p.shape[1], case.start_c)
    water = water_before = np.zeros(len(nodes))
    cold, ready_min, lost_kg, surface = [case.start_c], 0.0, 0.0, oven
    step = 0
    while True:
        newest, oldest = (1.5, 0.5) if step else (1.0, 0.0)
        ahead = np.minimum(temperature[nodes] + 2 * oldest * (temperature - before)[nodes], BOILS_C)
        outside = surface.exchange(ahead, water + 2 * oldest * (water - water_before), step * STEP_S)
        right = heat @ ((newest * temperature + oldest * (temperature - before)) / STEP_S)
        inside = heat * (newest / STEP_S) + flow
        offered = outside.heat_w_m2 - outside.heat_slope * ahead
        new = warmed(inside, right, nodes, length[nodes] * -outside.heat_slope, length[nodes] * offered)
        rate = outside.water_kg_m2_s + outside.water_slope * (new[nodes] - ahead)
        boils = new[nodes] > BOILS_C
        if boils.any():
            slope = length[nodes] * np.where(boils, HELD_W_M2K, -outside.heat_slope)
            held = length[nodes] * np.where(boils, HELD_W_M2K * BOILS_C, offered)
            new = warmed(inside, right, nodes, slope, held)
            left_over = offered + outside.heat_slope * new[nodes] - HELD_W_M2K * (BOILS_C - new[nodes])
            rate = outside.water_kg_m2_s + outside.water_slope * (new[nodes] - ahead) + boils * left_over / 2.33e6
        water, water_before = water + (STEP_S * rate + oldest * (water - water_before)) / newest, water
        temperature, before = new, temperature
        step += 1
        cold.append(float(temperature.min()))
        if not ready_min and cold[-1] >= TARGET_C:
            share = (TARGET_C - cold[-2]) / (cold[-1] - cold[-2])
            ready_min = (step - 1 + share) * STEP_S / 60
            lost_kg = float(4 * math.pi * (length[nodes] @ water))  # both halves
            surface, pulled, spot = room, step, int(temperature.argmin())
            spot_c = peak_c = cold[-1]
        if ready_min:  # in the rest the skin grows colder than the spot that was slowest
            peak_c = max(peak_c, float(temperature[spot]))
        if ready_min and (step - pulled) * STEP_S >= REST_MIN * 60:
            return {"ready_min": ready_min, "rise_k": peak_c - spot_c, "lost_fraction": lost_kg / case.mass_kg}


def warmed(
    inside: csc_matrix, right: np.ndarray, nodes: np.ndarray, slope: np.ndarray, offered: np.ndarray
) -> np.ndarray:
    """Temperatures after a step in which each skin node is offered so many W, less `slope` for each K it has."""
    out, given = np.zeros_like(right), right.copy()
    out[nodes] = slope
    given[nodes] += offered
    return splu(csc_matrix(inside + diags(out))).solve(given)


def main() -> None:
    """Print the table."""
    print('title = "Hollow spheroid birds by finite elements"')
    print('source = "tests/published/referee/bird.py"')
    print('obtained = "computed"')
    for case in CASES:
        result = roast(case)
        print(f'\n[[row]]\nname = "{case.name}"')
        for name in ("mass_kg", "oven_c", "convection", "crust_kg_m2", "start_c"):
            print(f"{name} = {getattr(case, name)}")
        for name, value in result.items():
            print(f"{name} = {value:.4f}")


if __name__ == "__main__":
    main()
