"""The Food Hygiene (Wales) Regulations 2006, Schedule 4: at, just under and just over each of its temperatures and times.

What it does not set in numbers is the Food Code's.
"""

import pytest

from turnspit.reference import is_licensed, rule
from turnspit.safety import SafetyQuestion, check_question

WALES = "licensed_wales"


def found(topic, **told):
    return check_question(SafetyQuestion(topic, **told), WALES)


@pytest.mark.parametrize(
    ("told", "severity"),
    [
        ({"topic": "warm_holding", "subject": "gravy", "temperature_c": 63.0, "elapsed_h": 5}, "ok"),  # paragraph 6
        ({"topic": "warm_holding", "subject": "gravy", "temperature_c": 62.9, "elapsed_h": 1}, "warn"),  # 6 and 7(2)
        (
            {"topic": "warm_holding", "subject": "beef_rib", "temperature_c": 55.0, "elapsed_h": 1},
            "warn",
        ),  # no roasts apart
        ({"topic": "warm_holding", "subject": "gravy", "temperature_c": 62.9, "elapsed_h": 2.1}, "stop"),  # 7(2)
        ({"topic": "cold_holding", "temperature_c": 8.0}, "ok"),  # paragraph 2
        ({"topic": "cold_holding", "temperature_c": 8.1, "elapsed_h": 1}, "warn"),  # paragraph 2
        ({"topic": "cold_holding", "temperature_c": 8.1, "elapsed_h": 2.1}, "stop"),
    ],
)
def test_each_limit_of_the_schedule(told, severity) -> None:
    first, *_ = found(**told)
    assert first.severity == severity
    assert first.citation.startswith("The Food Hygiene (Wales) Regulations 2006, Schedule 4")


def test_the_food_code_holds_where_the_schedule_sets_no_number() -> None:
    first, local = found("reading", subject="turkey", temperature_c=70.0)
    assert (first.rule, first.severity) == ("poultry-165", "stop")
    assert first.citation == rule("poultry-165", "licensed").citation
    assert local.seen.key == "safety-kitchen-local"
    assert is_licensed(WALES)


def test_a_kitchen_elsewhere_is_not_judged_by_it() -> None:
    question = SafetyQuestion("cold_holding", temperature_c=7.0)
    assert {found.kitchen for found in check_question(question)} <= {"home", "licensed"}
    assert check_question(question)[0].severity == "stop"
