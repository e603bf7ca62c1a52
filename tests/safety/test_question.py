import tomllib
from datetime import UTC, datetime
from pathlib import Path

import pytest

from turnspit.errors import OutOfRange
from turnspit.reference import rule
from turnspit.safety import GRADES, TOPICS, SafetyQuestion, check_question
from turnspit.words import Reader, say

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
SCENARIOS = tomllib.loads((Path(__file__).parent / "question_scenarios.toml").read_text(encoding="utf-8"))["scenario"]
EXPECTED = ("line", "kitchen", "severity", "rule", "do")


def asked(scenario):
    values = {}
    for name, value in scenario.items():
        if name.endswith("_f"):
            values[f"{name.removesuffix('_f')}_c"] = (value - 32) / 1.8
        elif name not in EXPECTED:
            values[name] = value
    return SafetyQuestion(**values)


@pytest.mark.parametrize("scenario", SCENARIOS, ids=lambda s: s["line"])
def test_a_scenario_finds_its_rule(scenario):
    found, *others = check_question(asked(scenario), scenario.get("kitchen"))
    assert (found.severity, found.rule, found.do) == (scenario["severity"], scenario["rule"], scenario["do"])
    assert others[-1].rule == "local-codes"


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("scenario", SCENARIOS, ids=lambda s: s["line"])
def test_every_finding_can_be_said(scenario, language):
    for found in check_question(asked(scenario), scenario.get("kitchen")):
        for message in (found.seen, found.action, found.caution.message):
            assert say(message, Reader(NOW, language=language))


def test_every_topic_has_scenarios():
    assert {scenario["topic"] for scenario in SCENARIOS} == set(TOPICS)
    assert len(SCENARIOS) >= 150


@pytest.mark.parametrize("scenario", SCENARIOS, ids=lambda s: s["line"])
def test_an_unstated_kitchen_is_never_answered_less_safely_than_either(scenario):
    question = asked(scenario)
    unstated = GRADES.index(check_question(question)[0].severity)
    assert unstated == max(
        GRADES.index(check_question(question, kitchen)[0].severity) for kitchen in ("home", "licensed")
    )


def test_the_applied_kitchen_is_named():
    found, local = check_question(SafetyQuestion("warm_holding", subject="turkey", temperature_c=58.0, elapsed_h=1.0))
    assert (found.kitchen, found.severity) == ("home", "warn")
    assert found.citation == rule("hot-hold", "home").citation
    assert local.seen.key == "safety-kitchen-home"


def test_what_is_not_said_is_named():
    assert check_question(SafetyQuestion("left_out"))[0].unknown == ("elapsed_h",)
    assert check_question(SafetyQuestion("reading", temperature_c=70.0))[0].unknown == ("subject",)


@pytest.mark.parametrize(
    ("name", "value", "way_out"),
    [("temperature_c", 165.0, "Fahrenheit"), ("elapsed_h", -1.0, "hours"), ("altitude_m", 9000.0, "feet")],
)
def test_an_implausible_value_is_refused_with_the_way_out(name, value, way_out):
    with pytest.raises(OutOfRange, match=way_out):
        SafetyQuestion("reading", **{name: value})
