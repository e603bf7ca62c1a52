"""Properties the exact solution has, asked of the solver on drawn bodies: maximum principle, monotonicity, energy."""

from dataclasses import dataclass, replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from turnspit.heat.properties import composition, material
from turnspit.heat.solver import Body, graded_times, march
from turnspit.heat.surface import Film

pytestmark = pytest.mark.slow

TURKEY = material(composition("turkey"))


@dataclass(frozen=True)
class Case:
    radius_m: float
    exponent: float
    start_c: float
    film: float
    medium_c: float
    shares: float
    """Duration in time constants."""


def run(case, keep=False):
    """The march with steps of a sixtieth of the body's time constant, films and insides in a row."""
    body = Body(np.atleast_1d(case.radius_m), np.atleast_1d(case.exponent), TURKEY)
    inside_s, film_s = 3.7e6 * case.radius_m**2 / 2.5, 3.7e6 * case.radius_m / case.film
    constant_s = (inside_s + film_s) / (case.exponent + 1)
    times_s = graded_times(case.shares * constant_s, constant_s / 1000, constant_s / 60, 1.6)
    return body, march(body, body.state(case.start_c), Film(case.medium_c, case.film), times_s, keep_states=keep)


def core_c(case):
    return run(case)[1].core_c[-1, 0]


CASES = st.builds(
    Case,
    radius_m=st.floats(0.01, 0.12),
    exponent=st.floats(0.0, 3.0),
    start_c=st.floats(-30.0, 60.0),
    film=st.floats(2.0, 1000.0),
    medium_c=st.floats(-30.0, 90.0),
    shares=st.floats(0.1, 4.0),
)


@settings(max_examples=80, deadline=None)
@given(CASES)
def test_no_place_leaves_the_bracket_of_start_and_medium(case):
    body, history = run(case, keep=True)
    temperatures_c = np.array([body.temperature_c(state) for state in history.states])
    # BDF2 obeys no maximum principle by theorem: half a percent of the jump, a tenth of a degree where ice comes or goes
    slack_k = 0.005 * abs(case.medium_c - case.start_c) + 0.1
    assert temperatures_c.min() >= min(case.start_c, case.medium_c) - slack_k
    assert temperatures_c.max() <= max(case.start_c, case.medium_c) + slack_k


@settings(max_examples=80, deadline=None)
@given(CASES)
def test_heat_taken_up_is_heat_held(case):
    body, history = run(case)
    before = body.state(case.start_c).enthalpy
    held = ((history.end.enthalpy - before) * body.volumes_m()).sum(axis=0)
    rounding = 1e-14 * (np.abs(before) * body.volumes_m()).sum(axis=0) * len(history.times_s)
    assert np.all(np.abs(history.end.heat_j_m2 - held) <= 1e-9 * np.abs(held) + rounding)


@settings(max_examples=40, deadline=None)
@given(CASES, st.floats(1.05, 2.0))
def test_monotone_in_size_film_medium_and_start(case, more):
    case = replace(case, start_c=abs(case.start_c) / 3, medium_c=100.0 + case.medium_c)
    hours_kept = [case, replace(case, start_c=case.start_c - 3), replace(case, medium_c=case.medium_c * more)]
    here, colder, hotter = (core_c(one) for one in hours_kept)
    assert colder <= here + 0.02
    assert hotter >= here - 0.02


@settings(max_examples=40, deadline=None)
@given(CASES, st.floats(1.05, 2.0))
def test_a_thicker_body_or_a_poorer_film_is_later(case, more):
    case = replace(case, start_c=4.0, medium_c=160.0, shares=4.0)

    def ready_s(one):
        history = run(one)[1]
        return np.interp(60.0, history.core_c[:, 0], history.times_s)

    assert ready_s(replace(case, radius_m=case.radius_m * more)) > ready_s(case)
    assert ready_s(replace(case, film=case.film / more)) > ready_s(case)


@settings(max_examples=15, deadline=None)
@given(CASES)
def test_the_core_of_a_thawing_body_never_cools(case):
    _, history = run(replace(case, start_c=-18.0, medium_c=1.0 + abs(case.medium_c) / 5, shares=12.0))
    assert np.all(np.diff(history.core_c[:, 0]) > -0.15)
