"""Is this safe, how long may it stand, to what temperature: the published rule, what was seen, what to do now."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, get_args

from turnspit.asking.answers import holding
from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.taken import USUAL_KIND, Taken
from turnspit.asking.answers.topics import topic_of
from turnspit.message import Caution, Message
from turnspit.reference import rule
from turnspit.safety import TOPICS, Finding, SafetyQuestion, Topic, check_question

if TYPE_CHECKING:
    from collections.abc import Sequence

OWN_TOPICS = {"stuffing": "target", "spoiled": "keeping"}
"""Topics of this room, with the one of the safety room that checks them."""
RED_MEATS = ("beef", "veal", "lamb", "pork", "ham")
KEPT_FROM_H = 24.0
"""Food that is said to be a day old or more was kept, not left standing, unless the line says so."""
MAY_HAVE_STOOD = ("", "stuffing", "keeping", "reheat", "cold_holding", "warm_holding")
"""Topics whose words leave open that the food stood out."""
LED_BY_ITS_OWN = ("pink", "stuffing", "warm_holding", "spoiled")
"""Topics whose short answer stands before what the check found."""


def answer(enquiry: Enquiry) -> Answer:
    """What the gravest finding saw and what to do now; the other findings as lines."""
    topic = _topic(enquiry)
    if topic == "early":
        return holding.early(Taken(enquiry))
    stuffing = topic == "stuffing"
    question = _question(enquiry, OWN_TOPICS.get(topic, topic))
    findings = check_question(question, enquiry.kitchen)
    told = [found for found in findings if found.rule != "local-codes"] or list(findings)
    headline, *lines = _told(told)
    if topic in LED_BY_ITS_OWN and question.temperature_c is None:
        lines.insert(0, headline)
        headline = Message(f"asking-safety-{topic}")
    return Answer(
        headline=headline,
        lines=(*lines, *_more(told, topic), *(found.seen for found in findings if found.rule == "local-codes")),
        reasons=_reasons(findings),
        cautions=_cautions(findings, stuffing),
        next=_next(question),
        data={"safety": {"topic": question.topic, "findings": [_document(found) for found in findings]}},
    )


def speaks_of(enquiry: Enquiry, *topics: str) -> bool:
    """Whether a line of another intent is about one of these dangers, and so is answered here."""
    return topic_of(enquiry.text, "safety") in topics


def _topic(enquiry: Enquiry) -> str:
    found = topic_of(enquiry.text, "safety") or _spoken_of(enquiry.topic)
    hours, reading = enquiry.said("elapsed_h"), enquiry.said("reading.temperature_c")
    if found == "overnight_oven":
        return "oven"
    if found == "pink" and not _bird(enquiry):
        found = "target" if reading is None else "reading"
    if found == "stuffing" and enquiry.said("roast.state") in {"frozen", "part_frozen"}:
        found = "from_frozen"
    if hours is not None and found in MAY_HAVE_STOOD and _stood(enquiry, found, hours):
        return "left_out"
    if found:
        return found
    if reading is not None:
        return "reading"
    if enquiry.said("oven.temperature_c") is not None:
        return "oven"
    if hours is not None and not topic_of(enquiry.text, "safety_in_oven"):
        return "keeping"
    if topic_of(enquiry.text, "safety_out"):
        return "standing_limit"
    if topic_of(enquiry.text, "safety_at_risk"):
        return "at_risk"
    return "target"


def _bird(enquiry: Enquiry) -> bool:
    """Whether it is a bird, as far as was said."""
    kind, subject = enquiry.said("roast.kind"), str(enquiry.said("subject") or "")
    if kind is None:
        return subject not in RED_MEATS
    from turnspit.heat import roast

    return roast(kind).poultry


def _spoken_of(danger: str) -> str:
    """The danger that the reading names, if this room or the safety room knows it."""
    return danger if danger in OWN_TOPICS or danger in TOPICS else ""


def _stood(enquiry: Enquiry, found: str, hours: float) -> bool:
    """Whether those hours were hours out of the cold: said so, or taken so, as the less safe of the two readings."""
    if topic_of(enquiry.text, "safety_stood"):
        return True
    if topic_of(enquiry.text, "safety_in_oven") or enquiry.said("oven.temperature_c") is not None:
        return False
    return hours < KEPT_FROM_H and found != "warm_holding" and not topic_of(enquiry.text, "safety_cold")


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


def _told(findings: Sequence[Finding]) -> list[Message]:
    return [Message("asking-safety-finding", seen=found.seen, action=found.action) for found in findings]


def _more(findings: Sequence[Finding], topic: str) -> list[Message]:
    """Why it is dangerous, what was taken at its worst, how to do it safely."""
    more = [rule(findings[0].rule).reason] if findings[0].severity == "stop" else []
    if any(found.unknown for found in findings) and topic not in LED_BY_ITS_OWN:
        more.append(Message("asking-safety-unknown"))
    if topic == "stuffing":
        more.append(Message("asking-safety-stuffing-how"))
    return more


def _cautions(findings: Sequence[Finding], stuffing: bool) -> tuple[Caution, ...]:
    found = [finding.caution for finding in findings if finding.rule != "local-codes"]
    if stuffing:
        found.append(Caution("stuffing-165", "warn", rule("stuffing-165").text))
        found.append(Caution("stuffing-just-before", "info", rule("stuffing-just-before").text))
    return tuple(found)


def _reasons(findings: Sequence[Finding]) -> tuple[Message, ...]:
    why = [
        Message("asking-safety-why", reason=rule(found.rule).reason, citation=found.citation) for found in findings
    ]
    return tuple(why)


def _next(question: SafetyQuestion) -> tuple[Message, ...]:
    if question.topic in {"left_out", "standing_limit"}:
        return (Message("asking-next-leftovers"), Message("asking-next-reheat"), Message("asking-next-why"))
    if question.topic in {"thawed_on_counter", "thaw_method"}:
        return (Message("asking-next-thaw"), Message("asking-next-refreeze"), Message("asking-next-why"))
    return (Message("asking-next-probe"), Message("asking-next-left-out"), Message("asking-next-why"))


def _document(found: Finding) -> dict[str, Any]:
    return {
        "rule": found.rule,
        "severity": found.severity,
        "do": found.do,
        "kitchen": found.kitchen,
        "citation": found.citation,
        "unknown": list(found.unknown),
    }
