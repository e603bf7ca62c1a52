"""Whatever is asked within the types, the answer is finite and in order, or an error that names what is wrong."""

import math

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from turnspit.errors import TurnspitError
from turnspit.heat import KINDS, OvenStep, RoastCase, forecast_roast

STEPS = st.lists(
    st.builds(
        OvenStep,
        from_min=st.one_of(st.just(0.0), st.floats(0.0, 300.0)),
        temperature_c=st.one_of(st.floats(15.0, 275.0), st.just(163.0)),
        convection=st.booleans(),
        cover=st.sampled_from(["none", "foil", "lid", "bag"]),
    ),
    min_size=1,
    max_size=4,
).map(tuple)
CASES = st.builds(
    RoastCase,
    kind=st.sampled_from(KINDS),
    mass_kg=st.floats(0.3, 16.0),
    count=st.integers(1, 4),
    state=st.sampled_from(["thawed", "part_frozen", "frozen"]),
    stuffed=st.booleans(),
    bone_in=st.sampled_from([None, True, False]),
    start_c=st.floats(-20.0, 30.0),
    oven=STEPS,
    target_c=st.one_of(st.none(), st.floats(45.0, 97.0)),
    pull_c=st.one_of(st.none(), st.floats(40.0, 97.0)),
    rest_min=st.sampled_from([0.0, 1.0, 30.0, 240.0]),
    altitude_m=st.sampled_from([0.0, 1600.0, 3500.0]),
    members=st.sampled_from([1, 8]),
    preheated=st.booleans(),
    openings_min=st.lists(st.floats(0.0, 240.0), max_size=3).map(tuple),
    rest_place=st.sampled_from(["board", "foil", "cupboard"]),
    oven_vapour_pa=st.sampled_from([0.0, 5000.0, 60000.0]),
)


@settings(max_examples=80, deadline=None)
@given(CASES)
def test_a_forecast_is_whole_or_refused_by_name(case: RoastCase) -> None:
    try:
        forecast = forecast_roast(case)
    except TurnspitError:  # names the field, the limit and the way out: see test_roasting
        return
    spreads = [forecast.ready_min, forecast.loss_fraction, *forecast.peak_c.values()]
    for spread in spreads:
        assert math.isfinite(spread.p10)
        assert spread.p10 <= spread.p50 <= spread.p90
    assert forecast.ready_min.p10 > 0.0
    assert 0.0 < forecast.loss_fraction.p50 < 0.7
    assert max(peak.p90 for peak in forecast.peak_c.values()) <= 100.1
    assert forecast.advised_pull_c <= forecast.target_c
    assert all(np.isfinite(curve).all() for curve in forecast.curve_c.values())
    assert np.all(np.diff(forecast.history_min) > 0.0)
