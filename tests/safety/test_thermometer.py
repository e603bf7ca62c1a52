import pytest

from turnspit.errors import OutOfRange
from turnspit.safety import boiling_point_c, corrected_c, probe_error_k, probe_is_true


@pytest.mark.parametrize(
    ("altitude_m", "boiling_c"), [(0, 99.97), (305, 98.96), (914, 96.94), (1600, 94.65), (2438, 91.86), (3000, 89.98)]
)
def test_boiling_point_at_an_altitude(altitude_m, boiling_c):
    assert boiling_point_c(altitude_m) == pytest.approx(boiling_c, abs=0.03)


def test_it_boils_cooler_higher_up_and_feet_are_refused():
    assert boiling_point_c(2000) < boiling_point_c(1000) < boiling_point_c(0)
    with pytest.raises(OutOfRange, match="feet"):
        boiling_point_c(7000)


def test_the_error_is_taken_against_the_right_bath():
    assert probe_error_k(1.5, "ice") == 1.5
    assert probe_error_k(95.0, "boiling", 1600) == pytest.approx(0.35, abs=0.02)
    assert corrected_c(75.0, 1.5) == 73.5


@pytest.mark.parametrize(("error_k", "true"), [(0.0, True), (1.0, True), (-1.0, True), (1.1, False), (-1.1, False)])
def test_a_probe_may_be_off_by_one_kelvin(error_k, true):
    assert probe_is_true(error_k) is true
