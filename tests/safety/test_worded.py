"""What cooks type about a danger is answered by the rule: as gravely, by the rule that holds, with what to do now."""

import runpy
import tomllib
from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask

NOW = datetime(2026, 11, 24, 13, tzinfo=ZoneInfo("America/New_York"))
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


def talk(*lines):
    conversation = None
    for line in lines:
        reply, conversation = ask(Line(line, NOW), conversation, "c")
    return reply


def test_a_reading_of_before_is_not_judged_where_it_is_asked_how_to_carve_or_keep():
    before = "14 lb turkey reading 156 in the breast"
    assert "safety" not in talk(before, "how do i carve it").data
    assert talk(before, "leftovers keep how long").headline.startswith("Cold leftovers keep")
    assert judged(talk(before, "can i serve it"))["severity"] == "stop"


def test_what_stood_out_is_not_frozen_two_lines_later():
    reply = talk("curry of leftover turkey, kept in fridge 3 days, ok?", "outside 4 hours", "then freezer?")
    assert (judged(reply)["rule"], judged(reply)["severity"]) == ("two-hours", "stop")


def test_a_plan_goes_on_when_a_guest_at_greater_risk_is_told_of():
    reply = talk("16 lb bird, dinner tomorrow at 6", "my sister is pregnant", "make it 20 lb")
    assert "plan" in reply.data
    assert "at-risk" in {caution.rule for caution in reply.cautions}
