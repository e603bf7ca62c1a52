import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from turnspit.brine.diffusion import CELLS, Bath, Body, diffusivity_m2_s
from turnspit.errors import Impossible, OutOfRange

positive = st.floats(0.01, 100.0)


@settings(deadline=None)
@given(positive, positive, st.floats(0.004, 0.1), st.floats(0.004, 0.1), st.floats(1e-9, 1e-2))
def test_salt_is_conserved_and_bounded(bath_kg, meat_kg, reach_m, other_m, travelled):
    bath = Bath.of([Body("slab", reach_m, meat_kg), Body("cylinder", other_m, 2 * meat_kg)], bath_kg)
    cells = bath.salt_per_water([travelled])[:, 0]
    means = bath.means([travelled])[:, 0]
    total = bath_kg * cells[CELLS] + meat_kg * means[0] + 2 * meat_kg * means[1]
    assert total == pytest.approx(bath_kg, rel=1e-4)  # rounding of the decomposition
    assert cells.min() > -1e-4
    assert cells.max() < 1 + 1e-4


def test_all_come_to_rest_at_the_same_strength():
    bath = Bath.of([Body("slab", 0.02, 1.0), Body("sphere", 0.03, 2.0)], 5.0)
    assert bath.salt_per_water([1.0])[:, 0] == pytest.approx(np.full(1 + 2 * CELLS, 5 / 8))
    assert bath.settled == pytest.approx(5 / 8)


def test_at_the_start_all_salt_is_in_the_bath():
    cells = Bath.of([Body("slab", 0.02, 1.0)], 5.0).salt_per_water([0.0])[:, 0]
    assert cells[CELLS] == pytest.approx(1)
    assert cells[:CELLS] == pytest.approx(0, abs=1e-9)


def test_thinner_meat_takes_up_more_and_a_cylinder_more_than_a_slab():
    day = [diffusivity_m2_s(4.0) * 86400]
    thin, thick, leg = (
        float(Bath.of([Body(form, reach, 1.0)], np.inf).means(day)[0, 0])
        for form, reach in (("slab", 0.01), ("slab", 0.02), ("cylinder", 0.02))
    )
    assert thin > thick
    assert leg > thick


def test_the_profile_falls_from_the_surface():
    depth_m, salt = Bath.of([Body("cylinder", 0.03, 1.0)], 10.0).profile(0, 1e-5)
    assert np.all(np.diff(depth_m) > 0)
    assert np.all(np.diff(salt) < 0)


@pytest.mark.parametrize(
    "bodies", [[], [Body("slab", 0.0, 1.0)], [Body("slab", 0.01, -1.0)], 3 * [Body("slab", 0.01, 1.0)]]
)
def test_meat_without_size_is_refused(bodies):
    with pytest.raises(Impossible, match="bodies"):
        Bath.of(bodies, 1.0)


def test_no_bath_and_a_warm_bath_are_refused():
    with pytest.raises(Impossible, match="bath_water_kg"):
        Bath.of([Body("slab", 0.01, 1.0)], 0.0)
    with pytest.raises(OutOfRange, match="at or below 4 C"):
        diffusivity_m2_s(40.0)


def test_the_order_of_the_bodies_does_not_matter():
    breast, leg = Body("slab", 0.02, 1.0), Body("cylinder", 0.03, 2.0)
    one, other = Bath.of([breast, leg], 5.0), Bath.of([leg, breast], 5.0)
    assert one.means([1e-5]) == pytest.approx(other.means([1e-5])[::-1])
    for first, second in zip(one.profile(1, 1e-5), other.profile(0, 1e-5), strict=True):
        assert first == pytest.approx(second, abs=1e-9)
