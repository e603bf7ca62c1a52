"""Thawing, what keeps once thawed, freezing again, and stuffing ahead."""

from __future__ import annotations

from turnspit.message import Message
from turnspit.reference import Kitchen, is_licensed
from turnspit.safety.finding import Finding, finding, limit, within
from turnspit.safety.question import SafetyQuestion
from turnspit.safety.questions.keeping_cold import keeps_days, too_warm
from turnspit.safety.questions.standing import clock_h, clock_rule

STUFFED_JUST_NOW_H = 0.5
LONGEST_IN_WATER_H = 12.0  # the last row of the federal table, 20 to 24 lb in cold water


def on_counter(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Thawing on the counter: never allowed; what has happened already is judged by the hours."""
    rule = "thaw-four-hours" if is_licensed(kitchen) else "thaw-counter"
    hours = clock_h(question, kitchen)
    if question.elapsed_h is None:
        return finding(
            kitchen,
            rule,
            "stop",
            "discard",
            Message("safety-counter-unknown"),
            action=Message("safety-do-thaw-cold-or-discard", hours=hours),
            unknown=("elapsed_h",),
        )
    seen = Message("safety-counter", minutes=question.elapsed_h * 60)
    if not within(question.elapsed_h, hours):
        return finding(kitchen, rule, "stop", "discard", seen)
    return finding(kitchen, rule, "warn", "chill", seen, action=Message("safety-do-thaw-cold"))


def method(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Whether a way of thawing is safe."""
    if question.method == "counter":
        return on_counter(question, kitchen)
    if question.method in ("hot_water", "cold_water"):
        return _in_water(question, kitchen)
    if question.method == "microwave":
        seen = Message("safety-thaw-microwave")
        return finding(kitchen, "thaw-microwave", "warn", "cook_at_once", seen)
    measured_c = question.temperature_c
    if measured_c is not None and not within(measured_c, limit("cold-hold", "food_max_c", kitchen)):
        if question.elapsed_h is not None:
            return too_warm(question, kitchen, "cold-hold", measured_c)
        seen = Message("safety-measured", temperature_c=measured_c)
        return finding(kitchen, "cold-hold", "stop", "chill", seen, unknown=("elapsed_h",))
    return finding(kitchen, "thaw-refrigerator", "info", "go_on", Message("safety-thaw-refrigerator"))


def _in_water(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    warmest_c = limit("thaw-cold-water", "water_max_c", kitchen)
    hours = clock_h(question, kitchen)
    hot = question.method == "hot_water"
    if hot or (question.temperature_c is not None and not within(question.temperature_c, warmest_c)):
        seen = Message("safety-thaw-warm-water")
        if question.elapsed_h is None and not hot:
            return finding(kitchen, "thaw-cold-water", "stop", "chill", seen, action=Message("safety-do-thaw-cold"))
        if question.elapsed_h is not None and within(question.elapsed_h, hours):
            return finding(kitchen, "thaw-cold-water", "stop", "cook_at_once", seen)
        unknown = ("elapsed_h",) if question.elapsed_h is None else ()
        action = Message("safety-do-thaw-cold-or-discard", hours=hours)
        return finding(kitchen, "thaw-cold-water", "stop", "discard", seen, action=action, unknown=unknown)
    if is_licensed(kitchen) and _thawed_part_over_four_hours(question, kitchen):
        seen = Message("safety-in-water", minutes=(question.elapsed_h or 0.0) * 60)
        return finding(kitchen, "thaw-four-hours", "stop", "discard", seen)
    if question.elapsed_h is not None and not within(question.elapsed_h, LONGEST_IN_WATER_H):
        seen = Message("safety-in-water", minutes=question.elapsed_h * 60)
        return finding(kitchen, "thaw-cold-water", "warn", "cook_at_once", seen)
    return finding(kitchen, "thaw-cold-water", "info", "cook_at_once", Message("safety-thaw-water"))


def _thawed_part_over_four_hours(question: SafetyQuestion, kitchen: Kitchen) -> bool:
    """Whether a part may have been above 5 C for over 4 h: water of unknown warmth counts as warm."""
    cold = question.temperature_c is not None and within(
        question.temperature_c, limit("thaw-four-hours", "part_max_c", kitchen)
    )
    hours = limit("thaw-four-hours", "elapsed_max_h", kitchen)
    return not cold and question.elapsed_h is not None and not within(question.elapsed_h, hours)


def keeps(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """How long a raw bird or joint keeps in the refrigerator, fresh or thawed."""
    days = keeps_days(question, kitchen)
    measured_c = question.temperature_c
    if measured_c is not None and not within(measured_c, limit("cold-hold", "food_max_c", kitchen)):
        return too_warm(question, kitchen, "cold-hold", measured_c)
    if question.elapsed_h is None:
        return finding(kitchen, "thawed-keeps", "info", "cook_at_once", Message("safety-keeps-raw", days=days))
    seen = Message("safety-kept", days=question.elapsed_h / 24)
    if not within(question.elapsed_h, days * 24):
        return finding(kitchen, "thawed-keeps", "stop", "discard", seen)
    left = Message("safety-do-cook-by", days=days)
    return finding(kitchen, "thawed-keeps", "ok", "cook_at_once", seen, action=left)


def refreeze(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Freezing again what has thawed."""
    if question.elapsed_h is not None and not within(question.elapsed_h, clock_h(question, kitchen)):
        seen = Message("safety-stood", minutes=question.elapsed_h * 60)
        return finding(kitchen, clock_rule(kitchen), "stop", "discard", seen)
    if question.method == "counter":
        return finding(
            kitchen,
            "refreeze",
            "stop",
            "discard",
            Message("safety-counter-unknown"),
            unknown=() if question.elapsed_h is not None else ("elapsed_h",),
        )
    if question.method == "refrigerator" or question.state in ("frozen", "part_frozen"):
        return finding(kitchen, "refreeze", "ok", "go_on", Message("safety-thawed-cold"))
    unknown = () if question.method else ("method",)
    action = Message("safety-do-cook-then-freeze")
    return finding(
        kitchen,
        "refreeze",
        "warn",
        "cook_at_once",
        Message("safety-thawed-otherwise"),
        action=action,
        unknown=unknown,
    )


def stuffed_ahead(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """A bird stuffed before the minute it is roasted."""
    rule = "stuffing-just-before"
    if question.bought_stuffed and question.state == "frozen":
        seen = Message("safety-stuffed-frozen")
        return finding(kitchen, rule, "info", "cook_on", seen, action=Message("safety-do-from-frozen-stuffed"))
    action = Message("safety-do-unstuff")
    if question.elapsed_h is None:
        seen = Message("safety-stuffed-ahead")
        return finding(kitchen, rule, "stop", "discard", seen, action=action, unknown=("elapsed_h",))
    seen = Message("safety-stuffed-since", minutes=question.elapsed_h * 60)
    if within(question.elapsed_h, STUFFED_JUST_NOW_H):
        return finding(kitchen, rule, "ok", "cook_on", seen, action=Message("safety-do-roast-now"))
    if within(question.elapsed_h, clock_h(question, "home")):
        return finding(kitchen, rule, "warn", "cook_at_once", seen, action=Message("safety-do-roast-now"))
    return finding(kitchen, rule, "stop", "discard", seen, action=action)


def from_frozen(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Roasting without thawing first."""
    if question.stuffed:
        seen = Message("safety-frozen-and-stuffed")
        return finding(kitchen, "from-frozen", "stop", "refuse", seen, action=Message("safety-do-bake-apart"))
    if question.method == "slow_cooker":
        seen = Message("safety-frozen-slow-cooker")
        return finding(
            kitchen, "slow-cooker", "stop", "refuse", seen, action=Message("safety-do-thaw-for-slow-cooker")
        )
    return finding(kitchen, "from-frozen", "info", "cook_on", Message("safety-from-frozen"))
