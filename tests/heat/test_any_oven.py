"""Over a grid of kinds, ovens, fans, masses and ensemble sizes: surfaces and cells stay where wet meat can be."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from turnspit.errors import Impossible
from turnspit.heat import KINDS, OvenStep, RoastCase, cook, roast
from turnspit.heat.cook import Cook
from turnspit.heat.ensemble import draw

MEMBERS = (8, 48, 59, 60, 96, 256)
"""On both sides of where the way of solving changes."""
JOINTS = ("beef_rib", "fresh_ham", "pork_shoulder", "lamb_leg", "goose", "turkey", "chicken")


def cooked(case: RoastCase) -> Cook:
    row = roast(case.kind)
    return cook.cook(case, row, draw(row, case.members, case.seed), case.target_c or row.default_target_c)


def check_bounds(case: RoastCase) -> None:
    run = cooked(case)
    surface_c = np.array([state.surface_c for state in run.states])
    cells_c = np.array([run.body.temperature_c(state) for state in run.states])
    coldest_c = min(float(cells_c[0].min()), -1.0) - 0.2
    assert surface_c.min() >= coldest_c
    assert cells_c.min() >= coldest_c
    # the surface is held at boiling; between two solves it may pass by the tolerance they are ended at
    assert surface_c.max() <= run.around.boiling_c + 1.0
    assert cells_c.max() <= run.around.boiling_c + 0.5
    water = np.array([state.water_kg_m2 for state in run.states])
    assert np.diff(water, axis=0).min() >= 0.0
    if len(case.oven) == 1:  # in a steady oven no surface cools
        assert np.diff(surface_c, axis=0).min() > -0.5


@pytest.mark.parametrize("kind", JOINTS)
@pytest.mark.parametrize("fan", [False, True])
@pytest.mark.parametrize(("oven_c", "members"), list(zip((135, 150, 163, 177, 205, 230), MEMBERS, strict=True)))
def test_a_grid_of_ovens(kind: str, fan: bool, oven_c: float, members: int) -> None:
    low_kg, high_kg = roast(kind).extended_kg
    for mass_kg in (1.05 * low_kg, 0.5 * (low_kg + high_kg), high_kg):
        check_bounds(RoastCase(kind, mass_kg, oven=(OvenStep(0.0, oven_c, fan),), members=members))


@settings(max_examples=25, deadline=None)
@given(
    st.sampled_from(KINDS),
    st.floats(0.0, 1.0),
    st.lists(st.tuples(st.floats(0.0, 1.0), st.booleans()), min_size=1, max_size=3),
    st.floats(5.0, 60.0),
    st.integers(8, 256),
    st.sampled_from([0.0, 2500.0]),
)
def test_any_oven(
    kind: str, size: float, ovens: list[tuple[float, bool]], apart_min: float, members: int, altitude_m: float
) -> None:
    row = roast(kind)
    (low_kg, high_kg), (low_c, high_c) = row.extended_kg, row.extended_oven_c
    steps = tuple(
        OvenStep(i * apart_min, low_c + share * (high_c - low_c), fan) for i, (share, fan) in enumerate(ovens)
    )
    case = RoastCase(
        kind,
        low_kg + size * (high_kg - low_kg),
        oven=steps,
        members=members,
        altitude_m=altitude_m,
        target_c=min(row.default_target_c, 70.0),
    )
    try:
        cooked(case)
    except Impossible as refused:  # the coolest do not bring every roast to its end
        reason = refused.name
    else:
        reason = "oven"
        check_bounds(case)
    assert reason == "oven"


@pytest.mark.parametrize(
    "case",
    [
        RoastCase("beef_rib", 4.0, target_c=57.0, oven=(OvenStep(0.0, 177.0, True),), members=48),
        RoastCase("beef_rib", 9.0, oven=(OvenStep(0.0, 163.0, True),), members=64),
        RoastCase("fresh_ham", 6.0, oven=(OvenStep(0.0, 163.0, True),), members=64),
        RoastCase("pork_shoulder", 4.0, oven=(OvenStep(0.0, 163.0, True),), members=64),
        RoastCase("beef_rib", 4.0, target_c=57.0, oven=(OvenStep(0.0, 250.0, True),), members=48),
        RoastCase("beef_rib", 4.0, target_c=57.0, oven=(OvenStep(0.0, 275.0, True),), members=48),
        RoastCase("goose", 4.5, oven=(OvenStep(0.0, 220.0),), members=48),
        RoastCase("turkey", 6.4, oven=(OvenStep(0.0, 230.0), OvenStep(30.0, 163.0)), members=48),
    ],
    ids=lambda case: f"{case.kind} {case.mass_kg:g} kg {case.oven[0].temperature_c:g} C",
)
def test_the_steps_are_fine_enough(case: RoastCase, monkeypatch: pytest.MonkeyPatch) -> None:
    """Each percentile within 1 percent of that with steps an eighth as long."""
    target_c = case.target_c or roast(case.kind).default_target_c
    whole = cooked(case).reached_s(target_c).max(axis=0)
    monkeypatch.setattr(cook, "OVEN_STEP", cook.OVEN_STEP / 8)
    monkeypatch.setattr(cook, "STEPS_S", (2.0, 500.0))
    fine = cooked(replace(case)).reached_s(target_c).max(axis=0)
    for share in (0.1, 0.5, 0.9):
        assert np.quantile(whole, share) == pytest.approx(np.quantile(fine, share), rel=0.01)
