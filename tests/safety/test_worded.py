"""What cooks type about a danger is answered by the rule: as gravely, by the rule that holds, with what to do now."""

import runpy
import tomllib
from pathlib import Path

import pytest

HERE = Path(__file__).parent
SCENARIOS = tomllib.loads((HERE / "worded_scenarios.toml").read_text(encoding="utf-8"))["scenario"]
CONFUSION = runpy.run_path(str(HERE / "confusion.py"))
answered_line, judged, reply_to = (CONFUSION[name] for name in ("answered_line", "judged", "reply_to"))


@pytest.mark.parametrize("scenario", SCENARIOS, ids=lambda s: s["line"])
def test_a_danger_in_words_is_answered_by_its_rule(scenario):
    reply, rules = reply_to(scenario), set(scenario["rule"].split("|"))
    assert answered_line(scenario) == scenario["severity"], reply.headline
    assert rules & {caution.rule for caution in reply.cautions}
    found = judged(reply)
    assert not found or scenario["do"] == "*" or found["do"] in scenario["do"].split("|")
    assert reply.cautions[-1].rule == "local-codes"


@pytest.mark.parametrize("scenario", [s for s in SCENARIOS if s["severity"] == "stop"], ids=lambda s: s["line"])
def test_a_stop_leads_the_answer_however_it_is_written(scenario):
    line = scenario["line"]
    for written in (line, line.upper(), f"hi, a quick question: {line}"):
        assert reply_to({**scenario, "line": written}).cautions[0].severity == "stop", written


def test_there_are_lines_enough_in_both_languages():
    assert len(SCENARIOS) >= 150
    spanish = [s for s in SCENARIOS if reply_to(s).data["reader"]["language"] == "es"]
    assert len(spanish) >= 20


def test_no_scenario_of_any_table_is_answered_less_safely_than_the_rule():
    assert CONFUSION["main"]() == 0
