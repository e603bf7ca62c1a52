"""The short answer of a question about safety: a yes, a no or a number first, then what to do."""

from __future__ import annotations

from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.answers.danger import is_bird
from turnspit.asking.answers.topics import topic_of
from turnspit.message import Message
from turnspit.reference import rule
from turnspit.safety import Finding, SafetyQuestion, hold_min

TABLE_STARTS_C = 54.5
"""130 F, the coolest row of the code's time table for whole meat roasts."""
COOL_DAY_H = 2.0
LED_BY_ITS_OWN = ("pink", "stuffing", "stuffing_mixed", "warm_holding", "spoiled")
"""Topics whose short answer says what the check found, as long as nothing was measured."""
SAID_PLAINLY = ("cook_ahead", "drive", "hold_which", "eaten_raw")
"""Topics with one answer, whatever the check found."""
IF_HOURS_UNSAID = ("stuffed_ahead", "partial_cooking", "thawed_on_counter", "thawed_keeps")


def verdict(topic: str, question: SafetyQuestion, found: Finding, enquiry: Enquiry) -> Message | None:
    """Our own short answer; None where what was seen and what to do now already are one."""
    if found.severity == "stop" and topic_of(enquiry.text, "eaten"):
        return Message("danger-eaten", seen=found.seen)
    if topic in SAID_PLAINLY:
        return Message(f"danger-{topic}")
    if topic == "thaw_place":
        return _thaw_place(question)
    if topic == "warm_holding" and topic_of(enquiry.text, "rests_how_long"):
        return Message("asking-safety-rests-how-long")
    held = topic == "warm_holding" and question.temperature_c is None and question.elapsed_h is None
    if held and topic_of(enquiry.line, "holds_how_long"):
        return Message("asking-safety-holds-how-long")
    if topic == "stuffing" and question.temperature_c is None and topic_of(enquiry.text, "asks_degrees"):
        return Message("asking-safety-stuffing-degrees")
    if topic == "water_unchanged" and found.severity != "stop":
        return Message("asking-safety-water_unchanged")
    if topic in LED_BY_ITS_OWN and question.temperature_c is None:
        return Message(f"asking-safety-{topic}")
    needed_c = found.seen.values.get("temperature_c")
    if topic == "target" and question.temperature_c is None and isinstance(needed_c, float):
        bird = found.rule == "poultry-165"
        form = "-any" if question.subject == "meat" else "-bird" if bird else ""
        if found.rule == "meat-145" and not form and _is_pink(enquiry):
            form = "-pink"
        return Message(f"asking-safety-target{form}", c=needed_c)
    if (
        topic == "cold_holding"
        and found.rule == "cold-hold"
        and found.severity in ("ok", "info")
        and needed_c is not None
    ):
        return Message("asking-safety-cold-enough", c=needed_c)
    if topic == "refreeze" and question.method is None and found.severity != "stop":
        cooked = question.state == "cooked"
        return Message("danger-refreeze-cooked" if cooked else "asking-safety-refreeze") if found.unknown else None
    if topic in ("left_out", "brine_temperature") and "elapsed_h" in found.unknown and _may(enquiry):
        return Message("danger-brine-out" if topic == "brine_temperature" else "danger-not-out")
    if topic == "brine_reuse":
        return Message("asking-safety-brine_reuse")
    if topic == "thaw_method" and found.do == "discard" and question.method == "hot_water":
        return Message("asking-safety-hot-water")
    if topic == "time_control":
        return Message("asking-safety-time_control")
    if topic == "standing_limit" and topic_of(enquiry.text, "clock_starts"):
        return Message("asking-safety-clock-starts")
    if found.rule == "at-risk" and found.severity == "stop" and found.seen.key == "safety-wished":
        return Message("asking-safety-at-risk", **found.seen.values)
    if topic == "standing_limit" and found.kitchen == "home":
        return Message("asking-safety-standing")
    if topic == "reheat" and question.method == "slow_cooker":
        return Message("asking-safety-slow-cooker")
    if topic in IF_HOURS_UNSAID and found.severity == "stop" and (question.elapsed_h is None or _may(enquiry)):
        return Message(f"asking-safety-{topic}")
    if topic == "washed":
        return Message("asking-safety-washed")
    too_cool = found.rule in ("slow-oven", "oven-325") and found.severity in ("stop", "warn")
    if too_cool and question.oven_c is not None:
        return Message("asking-safety-slow-oven", c=question.oven_c)
    if topic == "left_out" and found.rule == "two-hours" and found.severity == "stop" and _within_two(question):
        return Message("asking-safety-hot-day", minutes=(question.elapsed_h or 0.0) * 60)
    return None


def told(found: Finding, question: SafetyQuestion, enquiry: Enquiry) -> Message:
    """What was seen and what to do; in our own words where the two would name different temperatures."""
    c = question.temperature_c
    if found.severity == "stop" and c is not None and topic_of(enquiry.line, "oven_off_by_slip"):
        oven_c = question.oven_c or rule("oven-325", "home").limits["oven_min_c"]
        return Message("asking-safety-oven-on-again", c=c, oven_c=oven_c)
    if found.rule == "beef-lamb-time-table" and c is not None and hold_min(c) is None:
        return Message("asking-safety-too-rare", c=c, table_min=hold_min(TABLE_STARTS_C) or 0.0)
    if found.rule == "poultry-165" and found.severity == "stop" and c is not None and _is_out(enquiry):
        return Message("asking-safety-back", c=c)
    if found.rule == "hot-hold" and found.severity == "ok" and c is not None and c < (cooked_c := _cooked_c(enquiry)):
        return Message("asking-safety-holds", c=c, cooked_c=cooked_c, action=found.action)
    if found.severity == "ok" and found.seen.key == "safety-reads" and c is not None:
        return Message("asking-safety-enough", c=c, action=found.action)
    return Message("asking-safety-finding", seen=found.seen, action=found.action)


def _cooked_c(enquiry: Enquiry) -> float:
    """What the food must have read before it is held hot, in C; nothing for what is no meat."""
    if str(enquiry.said("subject") or "") in ("gravy", "sauce", "soup", "stock", "potatoes"):
        return 0.0
    return rule("poultry-165" if is_bird(enquiry) else "meat-145", "home").limits["core_min_c"]


def _may(enquiry: Enquiry) -> bool:
    """Whether it is asked before it is done: "can I", "should I"."""
    return bool(topic_of(enquiry.text, "asks_may"))


def _within_two(question: SafetyQuestion) -> bool:
    """Over the hour of a hot day, but within the two of a cooler one."""
    return question.elapsed_h is not None and question.elapsed_h <= COOL_DAY_H


def _thaw_place(question: SafetyQuestion) -> Message:
    """Thawing anywhere but in the refrigerator: only where it is as cold."""
    c = question.temperature_c
    if c is None:
        return Message("asking-safety-thaw_place-unmeasured")
    cold_c = rule("cold-hold", "home").limits["food_max_c"]
    return Message("asking-safety-thaw_place-cold" if c <= cold_c else "asking-safety-thaw_place-warm", c=c)


def _is_pink(enquiry: Enquiry) -> bool:
    """Whether it is pink and may be eaten so, and no temperature is asked for."""
    return bool(topic_of(enquiry.text, "wished_pink")) and not topic_of(enquiry.text, "asks_degrees")


def _is_out(enquiry: Enquiry) -> bool:
    """Whether the roast is out of the oven already."""
    return enquiry.said("reading.oven_left_on") is False or bool(topic_of(enquiry.text, "safety_pulled"))
