"""Salt in meat against exact solutions of the diffusion equation (Crank, The Mathematics of Diffusion, 2nd ed.)."""

from itertools import pairwise

import numpy as np
import pytest
from scipy.optimize import brentq
from scipy.special import erfc, j0, j1, jn_zeros

from turnspit.brine import BrineCase
from turnspit.brine.diffusion import Bath, Body, diffusivity_m2_s
from turnspit.brine.uptake import Uptake
from turnspit.reference import table

D = 1.9e-10  # m2/s, pork loin at 5 C (Springer 2015, ch. 47, abstract)
HOURS = np.array([1.0, 6.0, 12.0, 24.0, 48.0, 72.0])


def slab_in_plenty(fourier):
    odd = 2 * np.arange(400) + 1  # eq. 4.18
    return 1 - np.sum(8 / (np.pi * odd) ** 2 * np.exp(-((np.pi * odd / 2) ** 2) * fourier))


def cylinder_in_plenty(fourier):
    roots = jn_zeros(0, 400)  # eq. 5.23
    return 1 - np.sum(4 / roots**2 * np.exp(-(roots**2) * fourier))


def slab_in_little(fourier, ratio):
    """Eq. 4.37: what is taken up over what is taken up in the end; `ratio` is bath over meat."""
    roots = [
        brentq(lambda q: np.sin(q) + ratio * q * np.cos(q), (n - 0.5) * np.pi + 1e-9, n * np.pi)
        for n in range(1, 200)
    ]
    q = np.array(roots)
    return 1 - np.sum(2 * ratio * (1 + ratio) / (1 + ratio + (ratio * q) ** 2) * np.exp(-(q**2) * fourier))


def cylinder_in_little(fourier, ratio):
    """Eq. 5.33: ratio q J0(q) + 2 J1(q) = 0."""
    zeros = np.concatenate([[0.0], jn_zeros(1, 200)])
    q = np.array(
        [brentq(lambda x: ratio * x * j0(x) + 2 * j1(x), low + 1e-6, high - 1e-9) for low, high in pairwise(zeros)]
    )
    return 1 - np.sum(4 * ratio * (1 + ratio) / (4 + 4 * ratio + (ratio * q) ** 2) * np.exp(-(q**2) * fourier))


@pytest.mark.parametrize("reach_m", [0.01, 0.02, 0.05])
@pytest.mark.parametrize(("form", "exact"), [("slab", slab_in_plenty), ("cylinder", cylinder_in_plenty)])
def test_uptake_from_plenty_of_brine(form, exact, reach_m):
    bath = Bath.of([Body(form, reach_m, 1.0)], np.inf)
    travelled = D * HOURS * 3600
    expected = [exact(path / reach_m**2) for path in travelled]
    assert bath.means(travelled)[0] == pytest.approx(expected, rel=0.01)


@pytest.mark.parametrize("ratio", [0.2, 1.0, 4.0])
@pytest.mark.parametrize(("form", "exact"), [("slab", slab_in_little), ("cylinder", cylinder_in_little)])
def test_uptake_from_a_brine_that_weakens(form, exact, ratio):
    reach_m, water_kg = 0.02, 2.0
    bath = Bath.of([Body(form, reach_m, water_kg)], ratio * water_kg)
    assert bath.settled == pytest.approx(ratio / (1 + ratio))
    for hours in (3.0, 12.0, 48.0, 200.0):
        path = D * hours * 3600
        expected = bath.settled * exact(path / reach_m**2, ratio)
        assert bath.means([path])[0, 0] == pytest.approx(expected, rel=0.01)


def test_depth_of_salt_from_an_open_face():
    # erfc(x / 2 sqrt(Dt)): 5 mm and 10 mm deep after 12, 24, 48 h
    bath = Bath.of([Body("slab", 0.06, 1.0)], np.inf)
    for hours in (12.0, 24.0, 48.0):
        path = D * hours * 3600
        depth_m, salt = bath.profile(0, path)
        expected = erfc(depth_m / 2 / np.sqrt(path))
        assert np.max(np.abs(salt - expected)) < 0.006


def test_diffusivity_is_the_anchor_at_five_degrees_and_rises_with_warmth():
    assert diffusivity_m2_s(5.0) == pytest.approx(1.9e-10)
    older_at_20 = (2.5e-10, 4.5e-10)  # curing literature, from memory
    assert older_at_20[0] < diffusivity_m2_s(20.0) < older_at_20[1]


def test_measured_turkeys_gain_sodium_in_the_shape_of_the_model():
    """12 lb turkeys in half a cup of coarse salt: a magazine's laboratory test whose water is not given.

    A gallon and a half is the volume that fits, so the level is not checked: only the course over time and the
    split between white and dark meat, each within 15 percent. Nothing in the model was fitted to it.
    """
    row = table("salt_diffusivity").by("key")["turkey_12lb_hours"]
    uptake = Uptake.of(BrineCase(mass_kg=5.44, members=512), 1.5 * 3.785, 0.046 / 0.3934)
    for hours, *measured in zip(
        row["hours"][1:], row["white_sodium_mg_per_4oz"][1:], row["dark_sodium_mg_per_4oz"][1:], strict=True
    ):
        sodium_mg = np.median(uptake.raw_percent(hours), axis=1) * 1134 * 0.3934  # in 4 oz, 113.4 g
        assert sodium_mg == pytest.approx(measured, rel=0.15)
