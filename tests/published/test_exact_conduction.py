"""The solver and its columns against exact series: slab, cylinder, sphere (Carslaw and Jaeger 1959), and products of
them for bricks and finite cylinders (Newman 1936). The series are computed here with scipy, 40 terms."""

import math

import numpy as np
import pytest
from scipy.optimize import brentq
from scipy.special import j0, j1, jn_zeros

from turnspit.heat import shapes
from turnspit.heat.material import Material
from turnspit.heat.solver import Body, graded_times, march
from turnspit.heat.surface import Film

CONDUCTIVITY, DIFFUSIVITY = 0.48, 1.33e-7
MEAT = Material(CONDUCTIVITY / DIFFUSIVITY, CONDUCTIVITY)
TERMS = 40


def slab(biot, fourier):
    ends = np.arange(TERMS) * math.pi
    roots = np.array(
        [brentq(lambda z: z * math.sin(z) - biot * math.cos(z), low + 1e-12, low + math.pi / 2) for low in ends]
    )
    weights = 4 * np.sin(roots) / (2 * roots + np.sin(2 * roots))
    return float(weights @ np.exp(-(roots**2) * fourier))


def cylinder(biot, fourier):
    low, high = np.array([0.0, *jn_zeros(1, TERMS - 1)]), jn_zeros(0, TERMS)
    roots = np.array(
        [brentq(lambda z: z * j1(z) - biot * j0(z), a + 1e-12, b) for a, b in zip(low, high, strict=True)]
    )
    weights = 2 * j1(roots) / (roots * (j0(roots) ** 2 + j1(roots) ** 2))
    return float(weights @ np.exp(-(roots**2) * fourier))


def sphere(biot, fourier):
    ends = np.arange(TERMS) * math.pi
    roots = np.array(
        [
            brentq(lambda z: z * math.cos(z) + (biot - 1) * math.sin(z), low + 1e-9, low + math.pi - 1e-12)
            for low in ends
        ]
    )
    weights = 4 * (np.sin(roots) - roots * np.cos(roots)) / (2 * roots - np.sin(2 * roots))
    return float(weights @ np.exp(-(roots**2) * fourier))


EXACT = {0.0: slab, 1.0: cylinder, 2.0: sphere}


def test_the_series_give_the_stored_values():
    # table exact_conduction of the reference data: Bi 5, Fo 0.2, 0.5, 1.0
    stored = {
        0.0: (0.864881, 0.523109, 0.220721),
        1.0: (0.671418, 0.207554, 0.028668),
        2.0: (0.472248, 0.065675, 0.002414),
    }
    for exponent, values in stored.items():
        assert [EXACT[exponent](5.0, fo) for fo in (0.2, 0.5, 1.0)] == pytest.approx(values, abs=2e-6)


@pytest.mark.parametrize("biot", [0.1, 0.5, 1.0, 5.0, 20.0, 50.0])
@pytest.mark.parametrize("exponent", [0.0, 1.0, 2.0])
def test_centre_of_slab_cylinder_sphere_within_a_tenth_of_a_degree(exponent, biot):
    start_c, medium_c, radius_m = 4.0, 104.0, 0.05
    body = Body(np.array([radius_m]), np.array([exponent]), MEAT, cells=24)
    film = Film(medium_c, biot * CONDUCTIVITY / radius_m)
    second = radius_m**2 / DIFFUSIVITY  # Fourier number 1
    history = march(body, body.state(start_c), film, graded_times(second * 1.5, second / 4000, second / 300, 1.1))
    for fourier in (0.1, 0.2, 0.35, 0.5, 0.8, 1.0, 1.4):
        exact_c = medium_c + (start_c - medium_c) * EXACT[exponent](biot, fourier)
        assert np.interp(fourier * second, history.times_s, history.core_c[:, 0]) == pytest.approx(exact_c, abs=0.1)


def brick_centre(edges_m, film, time_s):
    return math.prod(slab(film * edge / 2 / CONDUCTIVITY, DIFFUSIVITY * time_s * 4 / edge**2) for edge in edges_m)


def can_centre(size_m, film, time_s):
    diameter_m, height_m = size_m
    around = cylinder(film * diameter_m / 2 / CONDUCTIVITY, DIFFUSIVITY * time_s * 4 / diameter_m**2)
    return around * slab(film * height_m / 2 / CONDUCTIVITY, DIFFUSIVITY * time_s * 4 / height_m**2)


def column_s(column, film, levels):
    body = Body(np.array([column.radius_m]), np.array([column.exponent]), MEAT, cells=24)
    history = march(
        body, body.state(1.0), Film(0.0, film * column.area_factor), graded_times(4e5, 2, 200, 1.2),
        stop=lambda _, core_c: bool(core_c[0] < levels[-1]),
    )  # fmt: skip
    return [float(np.interp(-level, -history.core_c[:, 0], history.times_s)) for level in levels]


SHAPES = {
    "cube": (shapes.brick, (0.1, 0.1, 0.1)),
    "ham": (shapes.brick, (0.102, 0.165, 0.279)),
    "tile": (shapes.brick, (0.05, 0.133, 0.133)),
    "roll": (shapes.cylinder, (0.11, 0.268)),
    "can": (shapes.cylinder, (0.1, 0.1)),
    "pan": (shapes.cylinder, (0.3, 0.06)),
}


@pytest.mark.parametrize("film", [5.0, 20.0, 100.0, 1000.0])
@pytest.mark.parametrize("name", sorted(SHAPES))
def test_bricks_and_cans_as_one_column(name, film):
    make, size_m = SHAPES[name]
    is_brick = make is shapes.brick
    column = make(size_m, film / CONDUCTIVITY) if is_brick else make(*size_m, film / CONDUCTIVITY)
    centre = brick_centre if is_brick else can_centre
    levels = (0.3, 0.15, 0.07)
    exact_s = [float(brentq(lambda t, y=y: centre(size_m, film, t) - y, 200.0, 1e6, rtol=1e-5)) for y in levels]
    assert column_s(column, film, levels) == pytest.approx(exact_s, rel=0.012)


def test_a_sphere_by_lins_factors_is_the_sphere():
    film, radius_m = 20.0, 0.05
    column = shapes.ellipsoid((0.1, 0.1, 0.1), film / CONDUCTIVITY)
    exact_s = float(
        brentq(lambda t: sphere(film * radius_m / CONDUCTIVITY, DIFFUSIVITY * t / radius_m**2) - 0.1, 200.0, 1e6)
    )
    assert column_s(column, film, (0.1,))[0] == pytest.approx(exact_s, rel=0.03)
