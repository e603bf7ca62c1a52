"""Prints how the scenarios are answered against what the rules ask, by severity. Run it: python tests/safety/confusion.py

The scenarios are questions, plans and logs as values, and lines as cooks type them. An answer below the diagonal is less
safe than the rule; the count of those must be 0.
"""

import tomllib
from collections import Counter
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from turnspit.asking import Line, ask
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


def reply_to(scenario):
    """The answer to a line as it is typed on a Tuesday at noon."""
    now = datetime(2026, 11, 24, 13, tzinfo=ZoneInfo("America/New_York"))
    return ask(Line(scenario["line"], now, kitchen=scenario.get("kitchen")), None, "c")[0]


def judged(reply):
    """The gravest finding of a reply, {} where another room than that of safety answers."""
    return reply.data.get("safety", {}).get("findings", [{}])[0]


def answered_line(scenario):
    """By the finding, or by a caution of one of the rules that says more than "info"."""
    reply, rules = reply_to(scenario), scenario["rule"].split("|")
    found = [judged(reply)["severity"]] if judged(reply) else []
    cautions = [caution.severity for caution in reply.cautions if caution.rule in rules]
    return max([*found, *(each for each in cautions if each != "info" or not found)], key=GRADES.index, default="ok")


TABLES = {
    "question_scenarios.toml": answered_question,
    "plan_scenarios.toml": answered_plan,
    "log_scenarios.toml": answered_log,
    "worded_scenarios.toml": answered_line,
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
