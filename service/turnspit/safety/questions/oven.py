"""Is the oven hot enough, and cooking in two stages."""

from __future__ import annotations

from turnspit.message import Message
from turnspit.reference import Kitchen, is_licensed
from turnspit.safety.finding import Finding, finding, limit, reaches, within
from turnspit.safety.foods import red_meat
from turnspit.safety.question import SafetyQuestion

OVERNIGHT_H = 6.0  # the longest come-up the federal guideline allows from 10 to 54 C
FAN_IS_WORTH_K = 13.9  # a fan oven set 25 F lower heats as a still one: the usual fan conversion
HEAVY_KG = 4.5  # the weight at which the Food Code lets a roast into a cooler oven


def lowest_oven_c(subject: str, mass_kg: float | None, convection: bool, kitchen: Kitchen) -> tuple[str, float]:
    """The rule and the lowest oven in C. An unknown weight is taken as a light one, which needs the hotter oven."""
    if not is_licensed(kitchen) or not red_meat(subject):
        return "oven-325", limit("oven-325", "oven_min_c", kitchen)
    if mass_kg is not None and mass_kg >= HEAVY_KG:
        return "roast-oven", limit("roast-oven", "from_4_5_kg_min_c", kitchen)
    name = "convection_under_4_5_kg_min_c" if convection else "still_under_4_5_kg_min_c"
    return "roast-oven", limit("roast-oven", name, kitchen)


def oven(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Whether an oven at `oven_c` is hot enough for the roast."""
    rule, lowest_c = lowest_oven_c(question.subject, question.mass_kg, question.convection, kitchen)
    action = Message("safety-do-oven-to", temperature_c=lowest_c)
    if question.oven_c is None:
        seen = Message("safety-oven-least", temperature_c=lowest_c)
        return finding(kitchen, rule, "info", "go_on", seen, action=action)
    seen = Message("safety-oven", temperature_c=question.oven_c)
    if reaches(question.oven_c, lowest_c):
        return finding(kitchen, rule, "ok", "go_on", seen)
    slowest_c = limit("roast-oven", "from_4_5_kg_min_c", kitchen)
    overnight = question.elapsed_h is not None and question.elapsed_h >= OVERNIGHT_H
    if overnight or not reaches(question.oven_c, slowest_c):
        return finding(kitchen, "slow-oven", "stop", "heat_up", seen, action=action)
    if rule == "oven-325" and question.convection and reaches(question.oven_c + FAN_IS_WORTH_K, lowest_c):
        fan = Message("safety-oven-fan", temperature_c=question.oven_c)
        return finding(kitchen, rule, "info", "heat_up", fan, action=action)
    unknown = ("mass_kg",) if rule == "roast-oven" and question.mass_kg is None else ()
    return finding(kitchen, rule, "warn", "heat_up", seen, action=action, unknown=unknown)


def partial_cooking(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Cooked in part today, to be finished another day. `elapsed_h` is the time of the first heating."""
    if is_licensed(kitchen) and question.procedure and question.elapsed_h is not None:
        first = Message("safety-part-cooked-for", minutes=question.elapsed_h * 60)
        longest_h = limit("partial-cooking", "first_heating_max_min", kitchen) / 60
        if within(question.elapsed_h, longest_h):
            action = Message("safety-do-cool-two-stage")
            return finding(kitchen, "partial-cooking", "info", "chill", first, action=action)
        return finding(kitchen, "partial-cooking", "stop", "discard", first)
    missing = ("elapsed_h",) if question.procedure else ("procedure",)
    unknown = missing if is_licensed(kitchen) else ()
    return finding(
        kitchen,
        "partial-cooking",
        "stop",
        "discard",
        Message("safety-part-cooked"),
        action=Message("safety-do-one-go"),
        unknown=unknown,
    )
