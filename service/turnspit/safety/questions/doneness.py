"""Is it done: a reading, a wished end temperature, pink meat, people at greater risk."""

from __future__ import annotations

from dataclasses import dataclass, replace

from turnspit.message import Message
from turnspit.reference import Action, Kitchen, is_licensed
from turnspit.safety.finding import Finding, Grade, finding, limit, reaches
from turnspit.safety.foods import family
from turnspit.safety.question import SafetyQuestion
from turnspit.safety.whole_roasts import hold_min, table_starts_c

STUFFING_PLACES = ("stuffing", "dressing")


@dataclass(frozen=True, slots=True)
class Need:
    """What a food must read, by which rule, and how grave it is when it does not."""

    rule: str
    core_c: float
    below: Grade = "stop"
    until: Action = "cook_on"
    then: Action = "go_on"


def need(question: SafetyQuestion, kitchen: Kitchen) -> Need:
    """The rule a food is done by. What is not known is held to the rule for poultry, the strictest."""
    kind = family(question.subject)
    if question.place in STUFFING_PLACES or kind == "stuffing":
        return _need("stuffing-165", kitchen)
    if question.place == "leftovers" or kind in ("leftovers", "sauce"):
        return _need("reheat-165", kitchen, until="reheat")
    if kind == "ham":
        return Need("ham-reheat", limit("ham-reheat", "core_other_min_c", kitchen), "warn", "reheat")
    if kind == "ground":
        return _need("ground-155" if is_licensed(kitchen) else "ground-160", kitchen)
    if kind not in ("beef_lamb", "pork"):
        return _need("poultry-165", kitchen)
    if question.stuffed:
        return _need("stuffing-165", kitchen)
    if question.injected and is_licensed(kitchen):
        return _need("ground-155", kitchen)
    if kind == "pork" and not is_licensed(kitchen):
        return _need("meat-145", kitchen, then="rest")
    return _need("meat-145", kitchen, "stop" if question.injected else "warn", then="rest")


def _need(
    rule: str, kitchen: Kitchen, below: Grade = "stop", until: Action = "cook_on", then: Action = "go_on"
) -> Need:
    return Need(rule, limit(rule, "core_min_c", kitchen), below, until, then)


def reading(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Whether food that reads this may be served."""
    if question.temperature_c is None:
        seen = Message("safety-not-measured")
        return finding(kitchen, "thermometer-decides", "warn", "measure", seen, unknown=("temperature_c",))
    return _judged(question, kitchen, question.temperature_c)


def target(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Whether a wished end temperature is safe, or which is."""
    if question.temperature_c is None:
        wanted = need(question, kitchen)
        seen = Message("safety-needs", temperature_c=wanted.core_c)
        action = Message("safety-do-cook-to", temperature_c=wanted.core_c)
        return finding(kitchen, wanted.rule, "info", wanted.until, seen, action=action)
    return _judged(question, kitchen, question.temperature_c)


def at_risk(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Infants, pregnant, elderly or ill guests: the stricter answer."""
    if question.temperature_c is None:
        return finding(kitchen, "at-risk", "info", "cook_on", Message("safety-at-risk"))
    return _judged(replace(question, at_risk=True), kitchen, question.temperature_c)


def pink(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Pink meat, bones or juices: only the reading tells."""
    if question.temperature_c is None:
        seen = Message("safety-colour")
        return finding(kitchen, "colour-no-proof", "warn", "measure", seen, unknown=("temperature_c",))
    return _judged(question, kitchen, question.temperature_c)


def _judged(question: SafetyQuestion, kitchen: Kitchen, core_c: float) -> Finding:
    wanted = need(question, kitchen)
    key = _seen_key(question, core_c, wanted.core_c)
    seen = Message(key, temperature_c=core_c, needed_c=wanted.core_c)
    unknown = () if family(question.subject) or question.place else ("subject",)
    if reaches(core_c, wanted.core_c):
        action = Message("safety-do-check-other-places") if wanted.rule == "poultry-165" else None
        return finding(kitchen, wanted.rule, "ok", wanted.then, seen, action=action, unknown=unknown)
    if wanted.below == "stop" or wanted.rule != "meat-145":
        action = Message(f"safety-do-{wanted.until.replace('_', '-')}-to", temperature_c=wanted.core_c)
        return finding(kitchen, wanted.rule, wanted.below, wanted.until, seen, action=action, unknown=unknown)
    return _rare(question, kitchen, core_c, seen)


def _seen_key(question: SafetyQuestion, core_c: float, needed_c: float) -> str:
    """How what was read, or is wished, stands to what is needed."""
    if question.topic not in ("target", "at_risk"):
        return "safety-reads"
    if not reaches(core_c, needed_c):
        return "safety-wished"
    return "safety-wished-enough" if core_c > needed_c + 1.0 else "safety-wished-just"


def _rare(question: SafetyQuestion, kitchen: Kitchen, core_c: float, seen: Message) -> Finding:
    """Intact meat below 63 C: never for people at risk, otherwise a warning, or the code's time table."""
    safe_c = limit("meat-145", "core_min_c", kitchen)
    cook_on = Message("safety-do-cook-on-to", temperature_c=safe_c)
    if question.at_risk:
        return finding(kitchen, "at-risk", "stop", "cook_on", seen, action=cook_on)
    held = hold_min(core_c)
    table = "beef-lamb-time-table"
    if held is None:
        if is_licensed(kitchen):
            lowest_c = table_starts_c()
            values = {"temperature_c": safe_c, "lowest_c": lowest_c, "minutes": hold_min(lowest_c) or 0.0}
            action = Message("safety-do-cook-on-or-hold", **values)
            return finding(kitchen, table, "stop", "cook_on", seen, action=action)
        return finding(kitchen, "meat-145", "warn", "cook_on", seen, action=cook_on)
    hold = Message("safety-do-hold-or-cook-on", minutes=held, temperature_c=safe_c)
    if is_licensed(kitchen):
        return finding(kitchen, table, "warn", "cook_on", seen, action=hold)
    return finding(kitchen, "meat-145", "warn", "cook_on", seen, action=hold)
