import pytest

from turnspit.recipes import SizeCase, compare_flocks, size_roast
from turnspit.recipes.flocks import ovens_for

POUND_KG = 0.45359237


def test_two_of_twelve_are_ready_before_one_of_twenty_four():
    one, two, *_ = compare_flocks(size_roast(SizeCase(covers=24)), members=16)
    assert (one.flock.count, two.flock.count) == (1, 2)
    assert two.ready_min.p50 < one.ready_min.p50 - 45
    assert (one.ovens, two.ovens) == (1, 1)
    assert (one.legs, two.legs) == (2, 4)


def test_a_hotter_oven_is_quicker():
    sizing = size_roast(SizeCase(covers=12))
    usual, hot = (compare_flocks(sizing, oven_c=oven_c, members=16)[0].ready_min.p50 for oven_c in (None, 190.0))
    assert hot < usual


def test_a_size_the_model_does_not_know_has_no_time():
    sizing = size_roast(SizeCase(covers=14))
    assert compare_flocks(sizing, oven_c=20.0, members=16)[0].ready_min is None


def test_a_joint_has_no_legs():
    assert compare_flocks(size_roast(SizeCase(covers=12, kind="beef_rib")), members=16)[0].legs == 0


@pytest.mark.parametrize(
    ("count", "pounds", "ovens"), [(1, 24, 1), (2, 14, 1), (2, 15, 2), (11, 15, 11), (8, 1.25, 1)]
)
def test_ovens_for_birds(count, pounds, ovens):
    # common practice, no source
    assert ovens_for(count, pounds * POUND_KG) == ovens
