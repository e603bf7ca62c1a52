"""Food out of the cold or out of the heat: the two-hour rule at home, time as a control in a licensed kitchen."""

from __future__ import annotations

from turnspit.message import Message
from turnspit.reference import Action, Kitchen, is_licensed
from turnspit.safety.finding import Finding, finding, limit, reaches, within
from turnspit.safety.question import SafetyQuestion

HOT_PLACES = ("car", "outdoors", "garden", "tent", "sun")


def clock_rule(kitchen: Kitchen) -> str:
    """The rule that counts the hours of food out of its temperature."""
    return "time-control" if is_licensed(kitchen) else "two-hours"


def clock_h(question: SafetyQuestion, kitchen: Kitchen) -> float:
    """How many hours perishable food may be between cold and hot, by kitchen and the heat of the day."""
    if is_licensed(kitchen):
        return limit("time-control", "elapsed_max_h", kitchen)
    hot = question.place in HOT_PLACES if question.ambient_c is None else hot_day(question.ambient_c)
    return limit("two-hours", "elapsed_hot_day_max_h" if hot else "elapsed_max_h", kitchen)


def hot_day(ambient_c: float) -> bool:
    """Whether it is above 32 C (90 F), where the consumer guidance halves the time."""
    return not within(ambient_c, limit("two-hours", "hot_day_min_c", "home"))


# Cooked by what they are; of a roast that nobody called cooked nothing is said of serving it.
_SERVED = frozenset(("gravy", "soup", "sauce"))


def left_out(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """It stood out of the cold: how long, and may it still be eaten."""
    measured = _never_left_control(question, kitchen)
    if measured is not None:
        return measured
    rule = clock_rule(kitchen)
    if question.elapsed_h is None:
        return _hours_unknown(question, kitchen, Message("safety-stood-unknown"))
    seen = Message("safety-stood", minutes=question.elapsed_h * 60)
    if not within(question.elapsed_h, clock_h(question, kitchen)):
        return finding(kitchen, rule, "stop", "discard", seen)
    now = Message("safety-do-chill") if question.state == "raw" else Message("safety-do-chill-now")
    if is_licensed(kitchen):
        if question.procedure:
            return finding(kitchen, rule, "info", "serve_or_discard", seen)
        if within(question.elapsed_h, limit("two-hours", "elapsed_max_h", kitchen)):
            return finding(kitchen, rule, "ok", "chill", seen, action=now)
        return finding(
            kitchen, rule, "warn", "discard", seen, action=Message("safety-do-unmarked"), unknown=("procedure",)
        )
    if _may_have_been_hot(question, kitchen):
        served = question.state == "cooked" or question.subject in _SERVED
        unless = "safety-do-serve-unless-hot-day" if served else "safety-do-chill-unless-hot-day"
        return finding(
            kitchen,
            rule,
            "warn",
            "chill",
            seen,
            action=Message(unless),
            unknown=("ambient_c",),
        )
    return finding(kitchen, rule, "ok", "chill", seen, action=now)


def _hours_unknown(question: SafetyQuestion, kitchen: Kitchen, seen: Message) -> Finding:
    """What is on the clock for nobody knows how long is thrown away."""
    action = Message("safety-do-discard-unless", hours=clock_h(question, kitchen))
    return finding(kitchen, clock_rule(kitchen), "stop", "discard", seen, action=action, unknown=("elapsed_h",))


def _never_left_control(question: SafetyQuestion, kitchen: Kitchen) -> Finding | None:
    """Food that is still cold, or still hot, has not begun its hours.

    A reading taken only now proves that no longer than the hours allowed: it may have been chilled or reheated since.
    """
    core_c = question.temperature_c
    if core_c is None or not _still_as_it_was(question, kitchen):
        return None
    seen = Message("safety-measured", temperature_c=core_c)
    if question.state in ("raw", "cooked") and within(core_c, limit("cold-hold", "food_max_c", kitchen)):
        return finding(kitchen, "cold-hold", "info", "chill", seen)
    if question.state in (None, "cooked") and reaches(core_c, limit("hot-hold", "food_min_c", kitchen)):
        return finding(kitchen, "hot-hold", "info", "go_on", seen, action=Message("safety-do-keep-hot"))
    return None


def _still_as_it_was(question: SafetyQuestion, kitchen: Kitchen) -> bool:
    hours = question.elapsed_h
    return question.held or (hours is not None and within(hours, clock_h(question, kitchen)))


def _may_have_been_hot(question: SafetyQuestion, kitchen: Kitchen) -> bool:
    """Whether the unknown heat of the day would change the answer."""
    hours = question.elapsed_h or 0.0
    return question.ambient_c is None and not within(hours, limit("two-hours", "elapsed_hot_day_max_h", kitchen))


def standing_limit(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """How long it may stand."""
    do: Action = "serve_or_discard" if is_licensed(kitchen) else "chill"
    seen = Message("safety-may-stand", hours=clock_h(question, kitchen))
    return finding(kitchen, clock_rule(kitchen), "info", do, seen)


def tempering(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Raw meat on the counter before it is roasted: that time counts."""
    rule = clock_rule(kitchen)
    if question.elapsed_h is None:
        seen = Message("safety-tempering-counts", hours=clock_h(question, kitchen))
        return finding(kitchen, rule, "warn", "go_on", seen, action=Message("safety-do-roast-cold"))
    seen = Message("safety-stood", minutes=question.elapsed_h * 60)
    if not within(question.elapsed_h, clock_h(question, kitchen)):
        return finding(kitchen, rule, "stop", "discard", seen)
    return finding(kitchen, rule, "info", "go_on", seen, action=Message("safety-do-roast-now"))


def interrupted(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """The oven went off half way: half-warm meat is on the clock until it is hot again."""
    core_c = question.temperature_c
    hot_c = limit("hot-hold", "food_min_c", kitchen)
    if core_c is not None and reaches(core_c, hot_c) and _still_as_it_was(question, kitchen):
        seen = Message("safety-measured", temperature_c=core_c)
        return finding(kitchen, "hot-hold", "info", "cook_on", seen, action=Message("safety-do-cook-through"))
    rule = clock_rule(kitchen)
    if question.elapsed_h is None:
        return _hours_unknown(question, kitchen, Message("safety-oven-off-unknown"))
    seen = Message("safety-oven-off", minutes=question.elapsed_h * 60)
    if not within(question.elapsed_h, clock_h(question, kitchen)):
        return finding(kitchen, rule, "stop", "discard", seen)
    return finding(kitchen, rule, "warn", "cook_on", seen, action=Message("safety-do-cook-through"))
