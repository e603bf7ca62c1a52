from dataclasses import fields, replace

from hypothesis import example, given
from hypothesis import strategies as st

from turnspit.safety import GRADES, TOPICS, SafetyQuestion, check_question

KITCHENS = st.sampled_from([None, "home", "licensed"])
SUBJECTS = st.sampled_from(
    ["", "turkey", "beef_rib", "lamb_leg", "pork_loin", "ham", "ground", "stuffing", "gravy", "leftovers", "dragon"]
)
STATES = st.sampled_from([None, "raw", "cooked", "frozen", "part_frozen"])
METHODS = st.sampled_from(
    [
        None,
        "refrigerator",
        "cold_water",
        "hot_water",
        "microwave",
        "counter",
        "oven",
        "slow_cooker",
        "plastic",
        "paper",
        "ice",
        "boiling",
    ]
)
PLACES = st.sampled_from(
    ["", "counter", "outdoors", "car", "garage", "refrigerator", "breast", "thigh", "stuffing", "leftovers"]
)
QUESTIONS = st.builds(
    SafetyQuestion,
    topic=st.sampled_from(TOPICS),
    subject=SUBJECTS,
    elapsed_h=st.none() | st.floats(0, 8) | st.floats(0, 400),
    temperature_c=st.none() | st.floats(-20, 120),
    ambient_c=st.none() | st.floats(-20, 45),
    oven_c=st.none() | st.floats(60, 280),
    place=PLACES,
    state=STATES,
    method=METHODS,
    mass_kg=st.none() | st.floats(0.5, 20),
    altitude_m=st.none() | st.floats(0, 4000),
    stuffed=st.booleans(),
    whole=st.booleans(),
    convection=st.booleans(),
    injected=st.booleans(),
    cooked_after=st.none() | st.booleans(),
    procedure=st.booleans(),
    at_risk=st.booleans(),
)
ON_THE_CLOCK = ["left_out", "tempering", "thawed_on_counter", "thawed_keeps", "refreeze", "stuffed_ahead", "interrupted",
                "brine_temperature", "warm_holding", "cold_holding", "power_cut", "cooling", "keeping", "reheat"]  # fmt: skip
READ = ["reading", "target", "pink", "at_risk", "reheat"]


def grave(question, kitchen):
    return GRADES.index(check_question(question, kitchen)[0].severity)


@given(QUESTIONS, KITCHENS)
def test_every_question_has_an_answer_that_cites_a_rule(question, kitchen):
    found, local = check_question(question, kitchen)
    assert found.citation
    assert local.rule == "local-codes"
    assert kitchen in (None, found.kitchen)


@given(QUESTIONS, KITCHENS)
def test_what_is_not_said_is_never_answered_more_mildly_than_the_worst_it_could_be(question, kitchen):
    question = replace(question, topic="left_out")
    assert grave(replace(question, elapsed_h=None), kitchen) >= grave(question, kitchen)


@given(QUESTIONS, KITCHENS, st.sampled_from(ON_THE_CLOCK), st.floats(0, 40) | st.floats(0, 200))
@example(SafetyQuestion("left_out", elapsed_h=5.0), "home", "left_out", 30.0)
def test_longer_never_improves_a_finding(question, kitchen, topic, more_h):
    if question.elapsed_h is None:
        return
    question = replace(question, topic=topic)
    assert grave(replace(question, elapsed_h=question.elapsed_h + more_h), kitchen) >= grave(question, kitchen)


@given(QUESTIONS, KITCHENS, st.sampled_from(READ), st.floats(0, 60))
def test_a_lower_reading_never_improves_a_finding(question, kitchen, topic, lower_k):
    if question.temperature_c is None or question.temperature_c - lower_k < -60:
        return
    question = replace(question, topic=topic)
    assert grave(replace(question, temperature_c=question.temperature_c - lower_k), kitchen) >= grave(
        question, kitchen
    )


@given(QUESTIONS, KITCHENS, st.floats(0, 100))
@example(SafetyQuestion("oven", oven_c=100.0), None, 20.0)
def test_a_cooler_oven_never_improves_a_finding(question, kitchen, lower_k):
    if question.oven_c is None or question.oven_c < lower_k:
        return
    question = replace(question, topic="oven")
    assert grave(replace(question, oven_c=question.oven_c - lower_k), kitchen) >= grave(question, kitchen)


@given(QUESTIONS, KITCHENS)
def test_people_at_risk_are_never_answered_more_mildly(question, kitchen):
    assert grave(replace(question, at_risk=True), kitchen) >= grave(replace(question, at_risk=False), kitchen)


BOUNDARIES_F = (32, 40, 41, 70, 130, 135, 140, 145, 155, 160, 165)


@given(QUESTIONS, KITCHENS, st.integers(-4, 2480) | st.sampled_from([10 * limit_f for limit_f in BOUNDARIES_F]))
@example(SafetyQuestion("thermometer"), None, 302)
@example(SafetyQuestion("reading", subject="turkey"), "home", 1650)
def test_the_unit_of_a_reading_does_not_matter(question, kitchen, tenths_f):
    """A reading in tenths of a degree F is judged alike when it is kept in C to two decimals."""
    core_c = (tenths_f / 10 - 32) / 1.8
    exact, kept = (replace(question, temperature_c=value) for value in (core_c, round(core_c, 2)))
    assert grave(exact, kitchen) == grave(kept, kitchen)


@given(QUESTIONS)
@example(SafetyQuestion("left_out", elapsed_h=3.0))
@example(SafetyQuestion("cold_holding", temperature_c=4.7))
def test_an_unstated_kitchen_is_answered_no_more_mildly_than_either(question):
    assert grave(question, None) == max(grave(question, "home"), grave(question, "licensed"))


def test_raw_food_is_never_told_to_be_served():
    for elapsed_h in (0.5, 1.0, 1.9):
        found = check_question(SafetyQuestion("left_out", state="raw", elapsed_h=elapsed_h, ambient_c=20.0))[0]
        assert found.action.key == "safety-do-chill"


def test_a_question_has_no_field_that_turns_a_stop_off():
    assert not {each.name for each in fields(SafetyQuestion)} & {"force", "override", "ignore", "silent", "severity"}
