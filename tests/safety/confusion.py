"""Prints how the scenarios are answered against what the rules ask, by severity. Run it: python tests/safety/confusion.py

An answer below the diagonal is less safe than the rule; the count of those must be 0.
"""

import tomllib
from collections import Counter
from datetime import UTC, datetime, timedelta
from pathlib import Path

from turnspit.safety import GRADES, Log, PlanFacts, SafetyQuestion, check_log, check_plan, check_question

HERE = Path(__file__).parent
NOT_ASKED = ("line", "kitchen", "severity", "rule", "do")


def in_celsius(values):
    return {
        f"{name[:-2]}_c" if name.endswith("_f") else name: (value - 32) / 1.8 if name.endswith("_f") else value
        for name, value in values.items()
    }


def answered_question(scenario):
    asked = {name: value for name, value in scenario.items() if name not in NOT_ASKED}
    return check_question(SafetyQuestion(**in_celsius(asked)), scenario.get("kitchen"))[0].severity


def answered_plan(scenario):
    return check_plan(PlanFacts(**scenario["facts"]), scenario.get("kitchen")).findings[0].severity


def answered_log(scenario):
    start = datetime(2026, 11, 26, 18, tzinfo=UTC)
    log = Log(scenario["kind"], scenario["item"])
    for minute, core_f, *station in scenario["readings"]:
        at = start + timedelta(minutes=minute)
        log = log.reading(at, (core_f - 32) / 1.8, "AB", station=station[0] if station else "")
    for minute, action in scenario.get("acts", []):
        log = log.act(action, start + timedelta(minutes=minute), "AB")
    now = start + timedelta(minutes=scenario["now"])
    finished = scenario.get("finished", False)
    return check_log(log, now, scenario.get("kitchen"), scenario.get("interval"), finished).severity


TABLES = {
    "question_scenarios.toml": answered_question,
    "plan_scenarios.toml": answered_plan,
    "log_scenarios.toml": answered_log,
}


def counted():
    pairs = Counter()
    for name, answered in TABLES.items():
        for scenario in tomllib.loads((HERE / name).read_text(encoding="utf-8"))["scenario"]:
            pairs[scenario["severity"], answered(scenario)] += 1
    return pairs


def main():
    pairs = counted()
    print(f"{'expected':>10} | " + " ".join(f"{grade:>6}" for grade in GRADES) + "   <- answered")
    for expected in GRADES:
        print(f"{expected:>10} | " + " ".join(f"{pairs[expected, answered]:>6}" for answered in GRADES))
    less = sum(count for (asked, got), count in pairs.items() if GRADES.index(got) < GRADES.index(asked))
    more = sum(count for (asked, got), count in pairs.items() if GRADES.index(got) > GRADES.index(asked))
    print(f"{pairs.total()} scenarios, {less} answered less safely than the rule, {more} more strictly")
    return less


if __name__ == "__main__":
    raise SystemExit(main())
