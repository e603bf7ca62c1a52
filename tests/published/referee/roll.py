"""The referee of thawing and freezing in real shapes: a finite cylinder in two dimensions, explicit in time.

    python tests/published/referee/roll.py > tests/published/referee/rolls.toml

Finite volumes in r and z (a quarter of the section), enthalpy stepped explicitly far below its stability limit, so
nothing is linearised; the material's curves of H and k against T are those of the service.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from turnspit.heat.properties import composition, material

FOOD = "lamb leg, whole, lean"


@dataclass(frozen=True)
class Case:
    """A roll, what it is put in, and the core temperature that ends it."""

    name: str
    diameter_m: float
    height_m: float
    film: float
    medium_c: float
    start_c: float
    end_c: float


CASES = (
    Case("thawed in a refrigerator", 0.12, 0.26, 6.5, 3.3, -18.0, -1.0),
    Case("thawed in water", 0.12, 0.26, 180.0, 10.0, -18.0, -1.0),
    Case("short, thawed in water", 0.14, 0.10, 180.0, 10.0, -18.0, -1.0),
    Case("frozen in a blast", 0.10, 0.20, 30.0, -30.0, 4.0, -10.0),
    Case("cooled and frozen at the skin", 0.10, 0.20, 30.0, -15.0, 60.0, 5.0),
)


def hours(case: Case, cells: int = 20) -> float:
    """Hours until the centre passes the end temperature."""
    food = material(composition(FOOD))
    radius_m, half_m = case.diameter_m / 2, case.height_m / 2
    step_r = radius_m / cells
    along = max(8, round(half_m / step_r))
    step_z = half_m / along
    faces_r = np.arange(cells + 1) * step_r
    ring = 0.5 * (faces_r[1:] ** 2 - faces_r[:-1] ** 2)[:, None]  # m2 per radian
    heat = food.enthalpy(np.full((cells, along), case.start_c))
    # conductivity is largest and capacity least in hard frozen meat
    step_s = 0.15 * min(step_r, step_z) ** 2 * 1.9e6 / 1.7
    warming = case.medium_c > case.start_c
    elapsed_s, before_c = 0.0, case.start_c
    while True:
        t = food.temperature_c(heat)
        core_c = float((9 * t[0, 0] - t[1, 0]) / 8)
        if (core_c >= case.end_c) if warming else (core_c <= case.end_c):
            share = (case.end_c - before_c) / (core_c - before_c)
            return (elapsed_s - (1 - share) * step_s) / 3600
        before_c = core_c
        k = food.conductivity_at(t)
        gain = np.zeros_like(t)
        across = 0.5 * (k[1:] + k[:-1]) * (t[1:] - t[:-1]) / step_r * faces_r[1:-1, None]
        gain[:-1] += across * step_z
        gain[1:] -= across * step_z
        up = 0.5 * (k[:, 1:] + k[:, :-1]) * (t[:, 1:] - t[:, :-1]) / step_z * ring
        gain[:, :-1] += up
        gain[:, 1:] -= up
        side = (case.medium_c - t[-1]) / (1 / case.film + step_r / (2 * k[-1]))
        gain[-1] += side * radius_m * step_z
        end = (case.medium_c - t[:, -1]) / (1 / case.film + step_z / (2 * k[:, -1]))
        gain[:, -1] += end * ring[:, 0]
        heat = heat + step_s * gain / (ring * step_z)
        elapsed_s += step_s


def main() -> None:
    """Print the table."""
    print('title = "Rolls of meat thawing and freezing, in two dimensions"')
    print('source = "tests/published/referee/roll.py"')
    print('obtained = "computed"')
    for case in CASES:
        print(f'\n[[row]]\nname = "{case.name}"\nhours = {hours(case):.4f}')


if __name__ == "__main__":
    main()
