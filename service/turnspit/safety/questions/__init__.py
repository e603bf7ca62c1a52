"""One question about safety: each topic has its check, and `check_question` finds it."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from turnspit.errors import Unknown
from turnspit.reference import Kitchen
from turnspit.safety.finding import Finding, in_kitchen
from turnspit.safety.question import TOPICS, SafetyQuestion, Topic
from turnspit.safety.questions import doneness, hazards, keeping_cold, oven, serving, standing, thawing

__all__ = ["check_question"]

Check = Callable[[SafetyQuestion, Kitchen], Finding]

CHECKS: Mapping[Topic, Check] = {
    "left_out": lambda asked, kitchen: (
        thawing.on_counter(asked, kitchen)
        if asked.state in ("frozen", "part_frozen")
        else standing.left_out(asked, kitchen)
    ),
    "standing_limit": standing.standing_limit,
    "tempering": standing.tempering,
    "interrupted": standing.interrupted,
    "thawed_on_counter": thawing.on_counter,
    "thaw_method": thawing.method,
    "thawed_keeps": thawing.keeps,
    "stuffed_ahead": thawing.stuffed_ahead,
    "from_frozen": thawing.from_frozen,
    "refreeze": thawing.refreeze,
    "washed": hazards.washed,
    "pink": doneness.pink,
    "reading": doneness.reading,
    "target": doneness.target,
    "at_risk": doneness.at_risk,
    "oven": oven.oven,
    "partial_cooking": oven.partial_cooking,
    "brine_temperature": keeping_cold.brine_temperature,
    "cold_holding": keeping_cold.cold_holding,
    "receiving": keeping_cold.receiving,
    "power_cut": keeping_cold.power_cut,
    "warm_holding": serving.warm_holding,
    "cooling": serving.cooling,
    "keeping": serving.keeping,
    "reheat": serving.reheat,
    "brine_injected": hazards.brine_injected,
    "brine_reuse": hazards.brine_reuse,
    "cross_contact": hazards.cross_contact,
    "giblets": hazards.giblets,
    "allergens": hazards.allergens,
    "frying": hazards.frying,
    "charcoal": hazards.charcoal,
    "glass": hazards.glass,
    "thermometer": hazards.thermometer,
}


def check_question(question: SafetyQuestion, kitchen: Kitchen | None = None) -> tuple[Finding, ...]:
    """What the rules say to one question, the gravest finding first, local codes last.

    `kitchen` chooses the rules; unstated, both are applied and the stricter answer is given, its kitchen named in the
    findings. What the question leaves out is taken at its less safe value and named in `unknown`. Raises Unknown for
    a topic that has no check.
    """
    if question.topic not in CHECKS:
        raise Unknown("topic", question.topic, TOPICS)
    check = CHECKS[question.topic]
    return in_kitchen(lambda each: (check(question, each),), kitchen)
