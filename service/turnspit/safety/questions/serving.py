"""After the oven: keeping hot, cooling, keeping, reheating."""

from __future__ import annotations

import math
from dataclasses import replace

from turnspit.message import Message
from turnspit.reference import Kitchen, is_licensed
from turnspit.safety.finding import Finding, finding, limit, reaches, within
from turnspit.safety.foods import family, red_meat
from turnspit.safety.question import SafetyQuestion
from turnspit.safety.questions import doneness
from turnspit.safety.questions.keeping_cold import too_warm
from turnspit.safety.questions.standing import clock_h, left_out

TWO_STAGE = "cooling-two-stage"


def hot_limit_c(subject: str, kitchen: Kitchen) -> float:
    """The lowest temperature food is kept hot at; a licensed kitchen may hold a whole meat roast at 54.4 C."""
    roast = is_licensed(kitchen) and red_meat(subject)
    return limit("hot-hold", "roast_min_c" if roast else "food_min_c", kitchen)


def warm_holding(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Food kept hot, or not quite."""
    hot_c = hot_limit_c(question.subject, kitchen)
    if question.temperature_c is None:
        seen = Message("safety-needs", temperature_c=hot_c)
        return finding(kitchen, "hot-hold", "info", "measure", seen)
    seen = Message("safety-reads", temperature_c=question.temperature_c, needed_c=hot_c)
    if reaches(question.temperature_c, hot_c):
        return finding(kitchen, "hot-hold", "ok", "go_on", seen, action=Message("safety-do-keep-hot"))
    hours = clock_h(question, kitchen)
    if question.elapsed_h is None:
        action = Message("safety-do-reheat-or-discard", hours=hours)
        return finding(kitchen, "hot-hold", "stop", "discard", seen, action=action, unknown=("elapsed_h",))
    if not within(question.elapsed_h, hours):
        return finding(kitchen, "hot-hold", "stop", "discard", seen)
    return finding(kitchen, "hot-hold", "warn", "reheat", seen)


def cooling(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Cooked food on its way down, `elapsed_h` after it left the heat."""
    core_c, elapsed_h = question.temperature_c, question.elapsed_h
    unmeasured = core_c is None and elapsed_h is not None and question.place != "refrigerator"
    if unmeasured and not within(elapsed_h or 0.0, clock_h(question, kitchen)):  # it may be warm still: it stood out
        return left_out(replace(question, state="cooked"), kitchen)
    if core_c is None or elapsed_h is None:
        unknown = tuple(name for name in ("temperature_c", "elapsed_h") if getattr(question, name) is None)
        seen = Message("safety-cooling-unknown")
        return finding(
            kitchen, TWO_STAGE, "warn", "chill", seen, action=Message("safety-do-cool-two-stage"), unknown=unknown
        )
    seen = Message("safety-cooled-to", temperature_c=core_c, minutes=elapsed_h * 60)
    if not is_licensed(kitchen):
        return _home_cooling(question, core_c, elapsed_h, seen)
    return _two_stage(kitchen, core_c, elapsed_h, seen)


def _home_cooling(question: SafetyQuestion, core_c: float, elapsed_h: float, seen: Message) -> Finding:
    """At home the rule is two hours to the refrigerator; inside it, for want of another, the two stages."""
    if within(core_c, limit("cold-hold", "food_max_c", "home")):
        return finding("home", "cold-hold", "ok", "go_on", seen)
    if question.place == "refrigerator":
        return _two_stage("home", core_c, elapsed_h, seen)
    if within(elapsed_h, clock_h(question, "home")) or reaches(core_c, limit("hot-hold", "food_min_c", "home")):
        return finding("home", "two-hours", "warn", "chill", seen, action=Message("safety-do-cool-two-stage"))
    unknown = () if question.place else ("place",)
    return finding("home", "two-hours", "stop", "discard", seen, unknown=unknown)


def _two_stage(kitchen: Kitchen, core_c: float, elapsed_h: float, seen: Message) -> Finding:
    first_h, total_h = (limit(TWO_STAGE, name, kitchen) for name in ("first_max_h", "total_max_h"))
    if within(core_c, limit(TWO_STAGE, "cold_c", kitchen)):
        late = not within(elapsed_h, total_h)
        return finding(kitchen, TWO_STAGE, "info" if late else "ok", "go_on", seen)
    if not within(elapsed_h, total_h):
        return finding(kitchen, TWO_STAGE, "stop", "discard", seen)
    on_to_cold = Message("safety-do-cool-to-cold", minutes=max(0.0, total_h - elapsed_h) * 60)
    if within(core_c, limit(TWO_STAGE, "middle_c", kitchen)):
        if within(elapsed_h, first_h):
            return finding(kitchen, TWO_STAGE, "info", "chill", seen, action=on_to_cold)
        return finding(kitchen, TWO_STAGE, "warn", "chill", seen, action=on_to_cold, unknown=("elapsed_h",))
    if elapsed_h < first_h:
        faster = Message("safety-do-cool-to-middle", minutes=(first_h - elapsed_h) * 60)
        return finding(kitchen, TWO_STAGE, "warn", "chill", seen, action=faster)
    if within(elapsed_h, first_h):
        return finding(kitchen, TWO_STAGE, "stop", "reheat", seen, action=Message("safety-do-reheat-and-restart"))
    return finding(kitchen, TWO_STAGE, "stop", "discard", seen)


def keeping(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Leftovers in the refrigerator: days at home, marked calendar days in a licensed kitchen."""
    if question.state == "frozen":
        seen = Message("safety-frozen")
        return finding(kitchen, "leftovers-days", "ok", "go_on", seen, action=Message("safety-do-freezer-quality"))
    cold_c = limit("cold-hold", "food_max_c", kitchen)
    if question.temperature_c is not None and not within(question.temperature_c, cold_c):
        return too_warm(question, kitchen, "cold-hold", question.temperature_c)
    rule = "date-marking" if is_licensed(kitchen) else "leftovers-days"
    most = limit(rule, "elapsed_max_days", kitchen)
    if question.elapsed_h is None:
        return finding(
            kitchen,
            rule,
            "info",
            "chill",
            Message("safety-keeps-cooked", days=most),
            action=Message("safety-do-chill-shallow"),
        )
    seen = Message("safety-kept", days=question.elapsed_h / 24)
    # The day of preparation is day 1, and part of a day may reach into one more.
    days = 1 + math.ceil(question.elapsed_h / 24) if is_licensed(kitchen) else question.elapsed_h / 24
    if days > most:
        return finding(kitchen, rule, "stop", "discard", seen)
    return finding(kitchen, rule, "ok", "reheat", seen)


def reheat(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Warming leftovers up."""
    if family(question.subject) == "ham" and question.temperature_c is not None:
        return doneness.reading(question, kitchen)
    rule = "reheat-165"
    hot_c = limit(rule, "core_min_c", kitchen)
    to_hot = Message("safety-do-reheat-to", temperature_c=hot_c)
    if question.method == "slow_cooker":
        return finding(kitchen, rule, "stop", "reheat", Message("safety-reheat-slow"), action=to_hot)
    if question.elapsed_h is not None and not within(question.elapsed_h, limit(rule, "within_max_h", kitchen)):
        seen = Message("safety-reheated-for", minutes=question.elapsed_h * 60)
        return finding(kitchen, rule, "stop", "discard", seen)
    if question.temperature_c is not None:
        seen = Message("safety-reads", temperature_c=question.temperature_c, needed_c=hot_c)
        if reaches(question.temperature_c, hot_c):
            return finding(kitchen, rule, "ok", "go_on", seen)
        return finding(kitchen, rule, "stop", "reheat", seen, action=to_hot)
    if question.whole:
        return finding(kitchen, rule, "warn", "carve", Message("safety-reheat-whole"))
    stirred = question.method == "microwave"
    seen = Message("safety-reheat-microwave") if stirred else Message("safety-needs", temperature_c=hot_c)
    return finding(kitchen, rule, "info", "reheat", seen, action=to_hot)
