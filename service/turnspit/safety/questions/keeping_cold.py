"""What should be cold and is not: refrigerators, cool boxes, brine, deliveries, a power cut."""

from __future__ import annotations

from dataclasses import replace

from turnspit.message import Message
from turnspit.reference import Kitchen
from turnspit.safety.finding import Finding, finding, limit, within
from turnspit.safety.foods import red_meat
from turnspit.safety.question import SafetyQuestion
from turnspit.safety.questions.standing import clock_h, left_out

WARM_PLACES = ("counter", "table", "car")


def too_warm(question: SafetyQuestion, kitchen: Kitchen, rule: str, measured_c: float) -> Finding:
    """A finding for cold food measured above its limit: chill within the hours allowed, else throw away."""
    seen = Message("safety-measured", temperature_c=measured_c)
    hours = clock_h(question, kitchen)
    if question.elapsed_h is None:
        action = Message("safety-do-chill-or-discard", hours=hours)
        return finding(kitchen, rule, "stop", "discard", seen, action=action, unknown=("elapsed_h",))
    if not within(question.elapsed_h, hours):
        return finding(kitchen, rule, "stop", "discard", seen)
    return finding(kitchen, rule, "warn", "chill", seen)


def cold_holding(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Refrigerator, cool box or cold buffet."""
    measured_c = question.temperature_c if question.temperature_c is not None else question.ambient_c
    if measured_c is None:
        return finding(kitchen, "cold-hold", "info", "measure", Message("safety-not-measured"))
    if within(measured_c, limit("cold-hold", "food_max_c", kitchen)):
        seen = Message("safety-measured", temperature_c=measured_c)
        return finding(kitchen, "cold-hold", "ok", "go_on", seen)
    return too_warm(question, kitchen, "cold-hold", measured_c)


def brine_temperature(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Brine and bird: cold all the time, two days at most. A cold place is not yet a cold brine.

    Past the days that it keeps raw, brine or no brine, a bird is thrown away; a cut of red meat is cooked before.
    What stands on a counter or in a car is no colder than the room, whatever it is in.
    """
    cold_c = limit("brine-cold", "brine_max_c", kitchen)
    measured_c = question.temperature_c
    if measured_c is None and question.ambient_c is not None and not within(question.ambient_c, cold_c):
        measured_c = question.ambient_c
    if measured_c is None and question.place in WARM_PLACES:
        return left_out(replace(question, state="raw"), kitchen)
    if measured_c is not None and not within(measured_c, cold_c):
        return too_warm(question, kitchen, "brine-cold", measured_c)
    if question.elapsed_h is not None and not within(
        question.elapsed_h, limit("brine-cold", "elapsed_max_h", "home")
    ):
        long = Message("safety-brined-long", hours=question.elapsed_h)
        if within(question.elapsed_h, keeps_days(question, kitchen) * 24):
            return finding(kitchen, "brine-cold", "warn", "cook_at_once", long)
        return finding(kitchen, "brine-cold", "stop", "discard", long)
    if measured_c is None:
        return finding(
            kitchen, "brine-cold", "warn", "measure", Message("safety-not-measured"), unknown=("temperature_c",)
        )
    return finding(kitchen, "brine-cold", "ok", "go_on", Message("safety-measured", temperature_c=measured_c))


def keeps_days(question: SafetyQuestion, kitchen: Kitchen) -> float:
    """Days a raw cut of red meat, or anything else, keeps in the refrigerator."""
    joint = red_meat(question.subject) and not question.injected
    return limit("thawed-keeps", "red_meat_max_days" if joint else "poultry_max_days", kitchen)


def receiving(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """A delivery of cold food."""
    measured_c = question.temperature_c
    if measured_c is None:
        return finding(
            kitchen, "receiving-41", "warn", "measure", Message("safety-not-measured"), unknown=("temperature_c",)
        )
    seen = Message("safety-measured", temperature_c=measured_c)
    if within(measured_c, limit("receiving-41", "food_max_c", kitchen)):
        return finding(kitchen, "receiving-41", "ok", "chill", seen)
    return finding(kitchen, "receiving-41", "stop", "refuse", seen, action=Message("safety-do-refuse-delivery"))


def power_cut(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """A refrigerator without power, its door shut."""
    if question.temperature_c is not None:
        if within(question.temperature_c, limit("power-cut", "food_max_c", kitchen)):
            seen = Message("safety-measured", temperature_c=question.temperature_c)
            return finding(kitchen, "power-cut", "ok", "go_on", seen)
        return too_warm(question, kitchen, "power-cut", question.temperature_c)
    if question.elapsed_h is None:
        return finding(
            kitchen, "power-cut", "stop", "discard", Message("safety-no-power-unknown"), unknown=("elapsed_h",)
        )
    seen = Message("safety-no-power", minutes=question.elapsed_h * 60)
    if not within(question.elapsed_h, limit("power-cut", "elapsed_max_h", kitchen)):
        return finding(kitchen, "power-cut", "stop", "discard", seen)
    return finding(kitchen, "power-cut", "warn", "measure", seen)
