"""Is this safe, how long may it stand, to what temperature: the published rule, what was seen, what to do now."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, get_args

from turnspit.asking.answers import holding
from turnspit.asking.answers.answer import Answer, Enquiry, once
from turnspit.asking.answers.danger import OWN_TOPICS, danger_of
from turnspit.asking.answers.taken import USUAL_KIND, Taken
from turnspit.asking.answers.topics import topic_of
from turnspit.message import Caution, Message
from turnspit.reference import rule
from turnspit.safety import Finding, SafetyQuestion, Topic, check_question, hold_min

if TYPE_CHECKING:
    from collections.abc import Sequence

TABLE_STARTS_C = 54.5
"""130 F, the coolest row of the code's time table for whole meat roasts."""
RAW_KEEPS_H, COOKED_KEEPS_H = 48.0, 96.0
"""Two days raw, four days cooked, in the refrigerator."""
LED_BY_ITS_OWN = ("pink", "stuffing", "warm_holding", "spoiled")
"""Topics whose short answer stands before what the check found."""

EATEN = ("reheat", "leftovers", "refreeze", "freeze")
"""Lines that make no sense about food that has to be thrown away."""
NEXT_BY_TOPIC = {
    "left_out": ("leftovers", "reheat", "standing"),
    "standing_limit": ("leftovers", "keeps"),
    "keeping": ("reheat", "freeze"),
    "reheat": ("keeps", "standing"),
    "cooling": ("keeps", "reheat"),
    "thawed_on_counter": ("thaw", "refreeze"),
    "thaw_method": ("thaw", "counter"),
    "refreeze": ("thaw", "counter"),
    "brine_temperature": ("brine", "too-long"),
    "brine_injected": ("how-long", "probe"),
    "brine_reuse": ("brine", "scale-gravy"),
    "stuffed_ahead": ("unstuffed", "probe"),
    "from_frozen": ("frozen-how-long", "thaw"),
    "reading": ("probe", "rest"),
    "target": ("probe", "rest"),
    "pink": ("probe", "rest"),
    "warm_holding": ("carve", "standing"),
    "power_cut": ("keeps", "refreeze"),
}


def answer(enquiry: Enquiry) -> Answer:
    """What the gravest finding saw and what to do now; the other findings as lines."""
    topic = danger_of(enquiry)
    if topic == "early":
        return holding.early(Taken(enquiry))
    question = _question(enquiry, OWN_TOPICS.get(topic, topic))
    findings = check_question(question, enquiry.kitchen)
    told = [found for found in findings if found.rule != "local-codes"] or list(findings)
    headline, *lines = [_told(found, question, enquiry) for found in told]
    own = _own_headline(topic, question, told[0])
    if own is not None:
        headline = own
    elif topic in LED_BY_ITS_OWN and question.temperature_c is None:
        lines.insert(0, headline)
        headline = Message(f"asking-safety-{topic}")
    lines += _unsure_of_state(question)
    return Answer(
        headline=headline,
        lines=(
            *lines,
            *_more(told, topic, own is None),
            *(found.seen for found in findings if found.rule == "local-codes"),
        ),
        reasons=_reasons(findings),
        cautions=_cautions(findings, topic),
        next=_next(question, told),
        data={"safety": {"topic": question.topic, "findings": [_document(found) for found in findings]}},
    )


def speaks_of(enquiry: Enquiry, *topics: str) -> bool:
    """Whether a line of another intent is about one of these dangers, and so is answered here."""
    return topic_of(enquiry.text, "safety") in topics


def _question(enquiry: Enquiry, topic: str) -> SafetyQuestion:
    text, said = enquiry.text, enquiry.said
    reading_c = said("reading.temperature_c")
    place = said("reading.place") or topic_of(text, "safety_places")
    return SafetyQuestion(
        topic=_known_topic(topic),
        subject=str(said("subject") or said("roast.kind") or USUAL_KIND),
        elapsed_h=said("elapsed_h"),
        temperature_c=said("roast.target_c") if reading_c is None else reading_c,
        oven_c=said("oven.temperature_c") or (reading_c if topic == "oven" else None),
        place=place,
        state=_state(enquiry),
        method=topic_of(text, "safety_methods") or None,  # type: ignore[arg-type]
        mass_kg=said("roast.mass_kg"),
        altitude_m=said("altitude_m"),
        stuffed=bool(said("roast.stuffed") or topic_of(text, "safety") in {"stuffing", "stuffed_ahead"}),
        whole=bool(topic_of(text, "safety_whole")),
        convection=bool(said("oven.convection")),
        injected=bool(said("roast.injected")),
        at_risk=bool(topic_of(text, "safety_at_risk")),
    )


def _known_topic(name: str) -> Topic:
    return next(topic for topic in get_args(Topic) if topic == name)


def _state(enquiry: Enquiry) -> Any:
    said = enquiry.said("roast.state")
    if said in {"frozen", "part_frozen"}:
        return said
    return topic_of(enquiry.text, "safety_states") or None


def _told(found: Finding, question: SafetyQuestion, enquiry: Enquiry) -> Message:
    """What was seen and what to do; in our own words where the two would name different temperatures."""
    c = question.temperature_c
    if found.rule == "beef-lamb-time-table" and c is not None and hold_min(c) is None:
        return Message("asking-safety-too-rare", c=c, table_min=hold_min(TABLE_STARTS_C) or 0.0)
    if found.rule == "poultry-165" and found.severity == "stop" and c is not None and _is_out(enquiry):
        return Message("asking-safety-back", c=c)
    return Message("asking-safety-finding", seen=found.seen, action=found.action)


def _own_headline(topic: str, question: SafetyQuestion, found: Finding) -> Message | None:
    """The short answer to a question that wants a yes or a no, or a number, first."""
    if topic == "thaw_place":
        return _thaw_place(question)
    if topic == "refreeze" and found.unknown:
        return Message("asking-safety-refreeze")
    if topic == "standing_limit" and found.kitchen == "home":
        return Message("asking-safety-standing")
    if topic == "reheat" and question.method == "slow_cooker":
        return Message("asking-safety-slow-cooker")
    if topic in ("stuffed_ahead", "partial_cooking") and question.elapsed_h is None and found.severity == "stop":
        return Message(f"asking-safety-{topic}")
    return None


def _thaw_place(question: SafetyQuestion) -> Message:
    """Thawing anywhere but in the refrigerator: only where it is as cold."""
    c = question.temperature_c
    if c is None:
        return Message("asking-safety-thaw_place-unmeasured")
    cold_c = rule("cold-hold", "home").limits["food_max_c"]
    return Message("asking-safety-thaw_place-cold" if c <= cold_c else "asking-safety-thaw_place-warm", c=c)


def _is_out(enquiry: Enquiry) -> bool:
    """Whether the roast is out of the oven already."""
    return enquiry.said("reading.oven_left_on") is False or bool(topic_of(enquiry.text, "safety_pulled"))


def _unsure_of_state(question: SafetyQuestion) -> list[Message]:
    """Raw poultry keeps not half as long as cooked: said where nobody told which it is."""
    hours = question.elapsed_h
    kept = question.topic == "keeping" and hours is not None and RAW_KEEPS_H < hours <= COOKED_KEEPS_H
    roast = question.subject not in ("leftovers", "gravy", "stuffing", "stock")
    return [Message("asking-safety-if-raw")] if kept and question.state is None and roast else []


def _more(findings: Sequence[Finding], topic: str, supposing: bool) -> list[Message]:
    """Why it is dangerous, what was taken at its worst, how to do it safely."""
    more = [rule(findings[0].rule).reason] if findings[0].severity == "stop" else []
    if supposing and any(found.unknown for found in findings) and topic not in LED_BY_ITS_OWN:
        more.append(Message("asking-safety-unknown"))
    if topic == "stuffing":
        more.append(Message("asking-safety-stuffing-how"))
    return more


def _cautions(findings: Sequence[Finding], topic: str) -> tuple[Caution, ...]:
    found = [finding.caution for finding in findings if finding.rule != "local-codes"]
    if topic == "thaw_place" and all(finding.severity != "stop" for finding in findings):
        found.append(Caution("thaw-counter", "warn", rule("thaw-counter").text))
    if topic == "stuffing":
        found.append(Caution("stuffing-165", "warn", rule("stuffing-165").text))
        found.append(Caution("stuffing-just-before", "info", rule("stuffing-just-before").text))
    return tuple(found)


def _reasons(findings: Sequence[Finding]) -> tuple[Message, ...]:
    why = [
        Message("asking-safety-why", reason=rule(found.rule).reason, citation=found.citation) for found in findings
    ]
    return tuple(why)


def _next(question: SafetyQuestion, findings: Sequence[Finding]) -> tuple[Message, ...]:
    """What may be asked after this; nothing to do with food that is to be thrown away."""
    names = NEXT_BY_TOPIC.get(question.topic, ("probe", "standing", "keeps"))
    if findings[0].do == "discard":
        names = once([*(name for name in names if name not in EATEN), "standing", "keeps"])
    return (*(Message(f"asking-next-{name}") for name in names[:2]), Message("asking-next-why"))


def _document(found: Finding) -> dict[str, Any]:
    return {
        "rule": found.rule,
        "severity": found.severity,
        "do": found.do,
        "kitchen": found.kitchen,
        "citation": found.citation,
        "unknown": list(found.unknown),
    }
