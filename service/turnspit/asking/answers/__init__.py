"""One module an intent: what is understood goes in, an `Answer` of messages comes out.

A module gives `answer(enquiry) -> Answer` and may raise TurnspitError for what cannot be; `answer_to` turns that into
a kind answer. Modules are loaded when they are asked for: a question about cups does not wait for the heat model.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from importlib import import_module

from turnspit.asking.answers import holding, technique, unsure_probe
from turnspit.asking.answers.answer import Answer, Enquiry, gravest_first, together
from turnspit.asking.answers.plain_danger import plain_danger
from turnspit.asking.answers.refused import refusal
from turnspit.asking.answers.topics import topic_of
from turnspit.asking.contract import Intent
from turnspit.errors import TurnspitError

__all__ = ["Answer", "Enquiry", "answer_to", "answers_to", "gravest_first", "takes_over", "together"]

GIVES_WAY: tuple[Intent, ...] = ("plan", "roast_time", "thaw", "doneness", "carve", "leftovers", "unknown")
"""What a plain danger is answered instead of; behind it stay a plan with its hour, and when a cool roast is done."""


_WAITING: frozenset[Intent] = frozenset(("plan", "doneness", "safety"))
_WAITS = ("", "warm_holding", "reading")
"""Dangers beside which it is answered how a roast is kept that is done hours before dinner."""


def answers_to(intents: Sequence[Intent], enquiry: Enquiry) -> list[Answer]:
    """One answer an intent, and the technique that is asked about beside them; a danger that stands plainly in the
    line is answered first, whatever it was read as."""
    enquiry, taken = unsure_probe.at_worst(enquiry)
    try:
        answers = unsure_probe.told(_answers(intents, enquiry), taken)
    except TurnspitError as error:
        # What is told is no roast's: "turkey at 900 F".
        return [refusal(error, enquiry)]
    if enquiry.technique and "help" not in intents:
        return [*answers, technique.answer(enquiry)]
    return answers


def takes_over(intents: Sequence[Intent], enquiry: Enquiry) -> bool:
    """Whether a danger is answered instead of what the line was read as asking; a reading is judged as asked."""
    try:
        danger = "" if "safety" in intents else plain_danger(enquiry, intents)
    except TurnspitError:
        return False
    return danger not in ("", "reading") and not set(intents).issubset(_beside(intents, enquiry, danger))


def _answers(intents: Sequence[Intent], enquiry: Enquiry) -> list[Answer]:
    if "safety" in intents and enquiry.said("reading") is None:
        # To what temperature is one question, however it was read.
        intents = [intent for intent in intents if intent != "doneness"]
    danger = plain_danger(enquiry, intents)
    if danger == "cool_down":
        return [answer_to("safety", enquiry)]
    if danger == "at_risk" and enquiry.said("serve_at") is not None:
        # "Is medium rare still ok?" is answered first, then planned.
        order: tuple[Intent, ...] = ("safety", "plan") if "safety" in intents else ("plan", "safety")
        return [answer_to(intent, enquiry) for intent in order]
    out_at = holding.waits_from(enquiry) if danger in _WAITS and not _WAITING.isdisjoint(intents) else None
    if out_at is not None:
        return [holding.until_dinner(enquiry, out_at)]
    if "safety" in intents or not danger:
        return _stopped([answer_to(intent, _thawed(intents, intent, enquiry)) for intent in intents], intents)
    return [answer_to(intent, enquiry) for intent in ("safety", *_beside(intents, enquiry, danger))]


def _thawed(intents: Sequence[Intent], intent: Intent, enquiry: Enquiry) -> Enquiry:
    """What is thawed first, as the line asks too, is not roasted from frozen."""
    if intent != "roast_time" or "thaw" not in intents:
        return enquiry
    roast = {**enquiry.understood.get("roast", {}), "state": "thawed"}
    return replace(enquiry, understood={**enquiry.understood, "roast": roast})


def _beside(intents: Sequence[Intent], enquiry: Enquiry, danger: str) -> list[Intent]:
    """What is answered behind a danger."""
    planned = enquiry.said("serve_at") is not None
    stays = {"plan": planned, "doneness": danger == "reading" and not topic_of(enquiry.text, "dangers")}
    return [intent for intent in intents if intent not in GIVES_WAY or stays.get(intent)]


def _stopped(answers: list[Answer], intents: Sequence[Intent]) -> list[Answer]:
    """Nothing on carving or keeping what may not be eaten as it is."""
    stops = any(
        caution.severity == "stop"
        for intent, answer in zip(intents, answers, strict=True)
        if intent == "safety"
        for caution in answer.cautions
    )
    pairs = zip(intents, answers, strict=True)
    return [answer for intent, answer in pairs if not (stops and intent in ("carve", "leftovers"))]


def answer_to(intent: Intent, enquiry: Enquiry) -> Answer:
    """The answer of that intent's module; what a room refuses becomes an answer that says why and asks again."""
    # Of what is in the oven the answer is by the clock, whether it is asked how long or how it is going.
    begun = intent == "roast_time" and (enquiry.moment("start_at") or enquiry.now) < enquiry.now
    module = import_module(f"turnspit.asking.answers.{'under_way' if begun else intent}")
    try:
        answer: Answer = module.answer(enquiry)
    except TurnspitError as error:
        return refusal(error, enquiry)
    return answer
