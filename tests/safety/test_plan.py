import tomllib
from dataclasses import fields, replace
from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from turnspit.errors import OutOfRange
from turnspit.safety import GRADES, PlanFacts, check_plan, grade
from turnspit.words import Reader, say

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
SCENARIOS = tomllib.loads((Path(__file__).parent / "plan_scenarios.toml").read_text(encoding="utf-8"))["scenario"]

hours = st.none() | st.floats(0, 100)
plans = st.builds(
    PlanFacts,
    kind=st.sampled_from(["turkey", "chicken", "beef_rib", "pork_loin", "fresh_ham", "lamb_leg", "zebra"]),
    mass_kg=st.none() | st.floats(0.5, 20),
    stuffed=st.booleans(),
    injected=st.booleans(),
    frozen=st.booleans(),
    at_risk=st.booleans(),
    oven_c=st.none() | st.floats(60, 260),
    convection=st.booleans(),
    roast_h=hours,
    target_c=st.none() | st.floats(45, 95),
    pull_c=st.none() | st.floats(45, 95),
    measured_before_carving=st.booleans(),
    thaw=st.sampled_from([None, "refrigerator", "cold_water", "counter", "hot_water"]),
    warm_surface_h=hours,
    raw_kept_h=hours,
    stuffed_ahead_h=hours,
    out_of_cold_h=hours,
    brine_c=st.none() | st.floats(-2, 20),
    brine_h=hours,
    hold_c=st.none() | st.floats(30, 90),
    hold_h=hours,
    standing_h=hours,
    finished_another_day=st.booleans(),
)
kitchens = st.sampled_from([None, "home", "licensed"])


@pytest.mark.parametrize("scenario", SCENARIOS, ids=lambda s: s["line"])
def test_a_plan_is_judged_by_its_gravest_matter(scenario):
    verdict = check_plan(PlanFacts(**scenario["facts"]), scenario.get("kitchen"))
    assert (verdict.findings[0].severity, verdict.findings[0].rule) == (scenario["severity"], scenario["rule"])
    assert verdict.allowed is (scenario["severity"] != "stop")
    assert set(verdict.changed) == set(scenario.get("changed", []))
    assert verdict.findings[-1].rule == "local-codes"
    for found in verdict.findings:
        for language in ("en", "es"):
            assert say(found.seen, Reader(NOW, language=language))
            assert say(found.action, Reader(NOW, language=language))


@given(plans, kitchens)
def test_the_nearest_plan_is_allowed(facts, kitchen):
    verdict = check_plan(facts, kitchen)
    assert check_plan(verdict.nearest, kitchen).allowed


@given(plans, kitchens)
def test_a_refused_plan_says_by_which_rule_and_what_to_change(facts, kitchen):
    verdict = check_plan(facts, kitchen)
    assert verdict.allowed is (grade(verdict.findings) != "stop")
    assert bool(verdict.changed) is not verdict.allowed
    assert all(getattr(verdict.nearest, name) == value for name, value in verdict.changed.items())


@given(plans)
def test_unstated_a_plan_is_judged_no_milder_than_in_either_kitchen(facts):
    unstated = GRADES.index(grade(check_plan(facts).findings))
    assert unstated == max(
        GRADES.index(grade(check_plan(facts, kitchen).findings)) for kitchen in ("home", "licensed")
    )


@given(
    plans,
    kitchens,
    st.sampled_from(["warm_surface_h", "raw_kept_h", "stuffed_ahead_h", "out_of_cold_h", "hold_h", "standing_h"]),
    st.floats(0, 50),
)
def test_longer_in_the_danger_zone_never_improves_a_plan(facts, kitchen, name, more_h):
    if getattr(facts, name) is None:
        return
    values = {each.name: getattr(facts, each.name) for each in fields(PlanFacts)}
    longer = PlanFacts(**{**values, name: values[name] + more_h})
    before, after = (GRADES.index(grade(check_plan(plan, kitchen).findings)) for plan in (facts, longer))
    assert after >= before


def test_a_fahrenheit_value_is_refused_with_the_way_out():
    with pytest.raises(OutOfRange, match="Fahrenheit"):
        PlanFacts(target_c=165.0)


def test_a_rare_wish_is_warned_about_at_home_and_refused_for_people_at_risk_and_by_the_stricter_kitchen():
    rare = PlanFacts(kind="beef_rib", target_c=52.0)
    assert check_plan(rare, "home").allowed
    assert any(found.severity == "warn" for found in check_plan(rare, "home").findings)
    assert not check_plan(replace(rare, at_risk=True), "home").allowed
    assert not check_plan(rare, "licensed").allowed
    assert not check_plan(rare).allowed
