"""What cooks type about a danger is answered by the rule: as gravely, by the rule that holds, with what to do now."""

import tomllib
from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask
from turnspit.safety import GRADES

NOW = datetime(2026, 11, 24, 13, tzinfo=ZoneInfo("America/New_York"))
SCENARIOS = tomllib.loads((Path(__file__).parent / "worded_scenarios.toml").read_text(encoding="utf-8"))["scenario"]


def answered(scenario):
    return ask(Line(scenario["line"], NOW, kitchen=scenario.get("kitchen")), None, "c")[0]


def judged(reply):
    """The gravest finding, {} where another room than that of safety answers."""
    return reply.data.get("safety", {}).get("findings", [{}])[0]


def severity(reply, rules):
    """How gravely it is answered: by the finding, or by a caution of one of the rules that says more than "info"."""
    found = [judged(reply)["severity"]] if judged(reply) else []
    cautions = [caution.severity for caution in reply.cautions if caution.rule in rules]
    return max([*found, *(each for each in cautions if each != "info" or not found)], key=GRADES.index)


@pytest.mark.parametrize("scenario", SCENARIOS, ids=lambda s: s["line"])
def test_a_danger_in_words_is_answered_by_its_rule(scenario):
    reply = answered(scenario)
    rules = set(scenario["rule"].split("|"))
    assert severity(reply, rules) == scenario["severity"], reply.headline
    assert rules & {caution.rule for caution in reply.cautions}
    found = judged(reply)
    assert not found or scenario["do"] == "*" or found["do"] in scenario["do"].split("|")
    assert reply.cautions[-1].rule == "local-codes"


@pytest.mark.parametrize("scenario", [s for s in SCENARIOS if s["severity"] == "stop"], ids=lambda s: s["line"])
def test_a_stop_leads_the_answer_however_it_is_written(scenario):
    line = scenario["line"]
    for written in (line, line.upper(), f"hi, a quick question: {line}"):
        assert answered({**scenario, "line": written}).cautions[0].severity == "stop", written


def test_there_are_lines_enough_in_both_languages():
    assert len(SCENARIOS) >= 150
    spanish = [s for s in SCENARIOS if answered(s).data["reader"]["language"] == "es"]
    assert len(spanish) >= 20
