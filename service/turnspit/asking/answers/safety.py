"""Is this safe, how long may it stand, to what temperature: the published rule, what was seen, what to do now."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING, Any, get_args

from turnspit.asking.answers import cooling, holding
from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.danger import IN_THE_MEAT, OWN_TOPICS, danger_of, words_of
from turnspit.asking.answers.degrees import degrees_of, oven_of
from turnspit.asking.answers.hours import hours_of
from turnspit.asking.answers.taken import USUAL_KIND, Taken
from turnspit.asking.answers.topics import named, topic_of
from turnspit.asking.answers.verdict import LED_BY_ITS_OWN, TABLE_STARTS_C, told, verdict
from turnspit.asking.clean import clean
from turnspit.message import Caution, Message
from turnspit.reference import rule
from turnspit.safety import Finding, SafetyQuestion, Topic, check_question

if TYPE_CHECKING:
    from collections.abc import Sequence

WISHES = ("target", "at_risk", "partial_cooking", "reheat")
"""Topics in which a wished end temperature is the one to judge; nowhere else is a wish taken for a measurement."""
PLACE_BY_CASE = {"out": "counter", "warm_out": "counter", "stuffing_short": "stuffing"}
"""Where it is, as the case of a plain danger tells."""
METHOD_BY_CASE = {"hot_water": "hot_water"}
"""How it thaws, as the case tells."""
SERVED_PINK = ("beef", "lamb", "veal")
PINK_C = 57.2
"""What is wished red inside, at the warmest (common practice, no source)."""
SAYS_NO = tuple(
    f"asking-safety-{name}"
    for name in (
        "thaw_place-warm",
        "thaw_place-unmeasured",
        "hot-water",
        "slow-cooker",
        "stuffed_ahead",
        "partial_cooking",
        "thawed_on_counter",
        "slow-oven",
        "washed",
    )
)
"""Answers that begin with No; whoever asks if it is dangerous gets them with a Yes."""
BESIDE_A_READING = ("standing_limit", "keeping")
RAW_KEEPS_H, COOKED_KEEPS_H = 48.0, 96.0
"""Two days raw, four days cooked, in the refrigerator."""

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
    "frying": ("thaw", "how-long"),
    "cross_contact": ("leftovers", "standing"),
    "at_risk": ("probe", "keeps"),
    "thermometer": ("probe", "doneness"),
}


def answer(enquiry: Enquiry) -> Answer:
    """What the gravest finding saw and what to do now; the other findings as lines."""
    enquiry = replace(enquiry, text=words_of(enquiry))
    topic = danger_of(enquiry)
    if topic == "early":
        return holding.early(Taken(enquiry))
    if topic == "target" and _asks_where_to_stop(enquiry):
        from turnspit.asking.answers import doneness

        return doneness.where_to_stop(enquiry)
    if topic == "cool_down" or (topic == "cooling" and _cools_in_the_cold(enquiry)):
        return cooling.answer(enquiry)
    question = _question(enquiry, _checked_as(enquiry, topic))
    findings = check_question(question, enquiry.kitchen)
    spoken = [found for found in findings if found.rule != "local-codes"] or list(findings)
    gravest, *others = spoken
    own = verdict(topic, question, gravest, enquiry)
    headline, lines = own or told(gravest, question, enquiry), [told(found, question, enquiry) for found in others]
    if headline.key in SAYS_NO and topic_of(enquiry.line, "asks_risk"):
        headline = Message(f"{headline.key}-risky", **headline.values)
    measured = _measured_besides(enquiry, question)
    lines += [told(found, _question(enquiry, "reading"), enquiry) for found in measured]
    lines += _unsure_of_state(question)
    if gravest.severity == "ok" and question.topic in ("reading", "pink") and named(enquiry.text, "safety") == "pink":
        lines.append(Message("asking-safety-pink"))
    return Answer(
        headline=headline,
        lines=(
            *lines,
            *_more(spoken, topic, own is None),
            *(found.seen for found in findings if found.rule == "local-codes"),
        ),
        reasons=_reasons(findings),
        cautions=(*_cautions(findings, topic, question), *(found.caution for found in measured)),
        next=_next(topic, question, spoken),
        data={"safety": {"topic": question.topic, "findings": [_document(found) for found in findings]}},
    )


def _asks_where_to_stop(enquiry: Enquiry) -> bool:
    """ "What temperature for medium rare lamb": at which reading it comes out, and not whether that is safe."""
    kind, wished_c = str(enquiry.said("roast.kind")), enquiry.said("roast.target_c")
    if not kind.startswith(SERVED_PINK) or wished_c is None or wished_c < TABLE_STARTS_C:
        return False
    fears = topic_of(enquiry.text, "safety_at_risk") or topic_of(enquiry.line, "safety_asked")
    return bool(topic_of(enquiry.line, "wished_word")) and not fears


def _cools_in_the_cold(enquiry: Enquiry) -> bool:
    """ "Cooling 10 quarts of stock overnight in the walk-in": so much of it, nothing measured, not left out."""
    waits = bool(topic_of(enquiry.text, "safety_cold")) or hours_of(enquiry) is None
    told = any(map(str.isdigit, enquiry.line)) and waits
    return told and degrees_of(enquiry, "cooling") is None


def _measured_besides(enquiry: Enquiry, question: SafetyQuestion) -> list[Finding]:
    """What is said of a reading in the meat or the stuffing beside another question, where it is too low."""
    place = enquiry.said("reading.place")
    if question.topic not in BESIDE_A_READING or place not in ("stuffing", *IN_THE_MEAT):
        return []
    found = check_question(_question(enquiry, "reading"), enquiry.kitchen)
    return [one for one in found if one.severity == "stop"][:1]


def _checked_as(enquiry: Enquiry, topic: str) -> str:
    """The safety room's topic for it; a place to thaw in that nobody measured is no better than the counter."""
    if topic == "thaw_place" and enquiry.said("reading.temperature_c") is None:
        return "thawed_on_counter"
    return OWN_TOPICS.get(topic, topic)


_OLD = re.compile(
    r"\b(?:dad|mom|mum|mother|father|gran\w*|nan\w*|aunt|uncle|he|she|who|guest|abuel\w|madre|padre|suegr\w)\b[^.,]{0,20}?"
    r"\b(?:is|turns|turned|tiene|de) (?:6[5-9]|[7-9]\d|10\d)\b"
)
"""A guest of 65 or more."""


def stops(enquiry: Enquiry, topic: Topic) -> bool:
    """Whether the rules stop what is told, judged as that topic."""
    return check_question(_question(enquiry, topic), enquiry.kitchen)[0].severity == "stop"


def speaks_of(enquiry: Enquiry, *topics: str) -> bool:
    """Whether a line of another intent is about one of these dangers, and so is answered here."""
    return named(enquiry.text, "safety") in topics


def _question(enquiry: Enquiry, topic: str) -> SafetyQuestion:
    text, said = enquiry.text, enquiry.said
    place = said("reading.place") or topic_of(text, "safety_places")
    if topic == "reading" and named(text, "safety") == "keeping":
        place = "leftovers"
    if topic == "reading" and place in ("", "centre") and named(text, "safety") == "stuffing":
        place = "stuffing"
    case = topic_of(text, "dangers").rpartition("-")[2]
    place = PLACE_BY_CASE.get(case, place)
    return SafetyQuestion(
        topic=_known_topic(topic),
        subject=topic_of(text, "safety_subjects") or _subject(enquiry),
        elapsed_h=hours_of(enquiry),
        temperature_c=_measured_c(enquiry, topic),
        oven_c=oven_of(enquiry, hours_of(enquiry)) if topic == "oven" else said("oven.temperature_c"),
        place=place,
        state=_state(enquiry, topic),
        method=METHOD_BY_CASE.get(case) or topic_of(text, "safety_methods") or None,  # type: ignore[arg-type]
        mass_kg=said("roast.mass_kg"),
        altitude_m=said("altitude_m"),
        stuffed=bool(said("roast.stuffed") or named(text, "safety") in {"stuffing", "stuffed_ahead"}),
        whole=bool(topic_of(text, "safety_whole")),
        convection=bool(said("oven.convection")),
        injected=bool(said("roast.injected")),
        at_risk=bool(topic_of(text, "safety_at_risk") or _OLD.search(clean(text))),
    )


def _subject(enquiry: Enquiry) -> str:
    """What it is about; a fresh ham is raw pork and no ham."""
    kind = enquiry.said("roast.kind")
    subject = None if kind == "fresh_ham" else enquiry.said("subject")
    return str(subject or kind or USUAL_KIND)


def _measured_c(enquiry: Enquiry, topic: str) -> float | None:
    """What was measured; where a wish may be judged, what is wished; of hot fat what was read as an oven."""
    instead = "roast.target_c" if topic in WISHES else "oven.temperature_c" if topic == "frying" else ""
    said: float | None = enquiry.said(instead)
    tables = ("safety_at_risk", "wished_pink")
    if said is None and topic in ("at_risk", "target") and all(topic_of(enquiry.text, table) for table in tables):
        said = PINK_C
    if topic == "oven":
        # Its number is the oven's: nothing was probed.
        read: float | None = enquiry.said("reading.temperature_c")
        return read
    measured = degrees_of(enquiry, topic)
    return said if measured is None else measured


def _known_topic(name: str) -> Topic:
    return next(topic for topic in get_args(Topic) if topic == name)


def _state(enquiry: Enquiry, topic: str) -> Any:
    said = enquiry.said("roast.state")
    if topic_of(enquiry.text, "dangers") == "keeping-frozen":
        return "frozen"
    if topic == "refreeze" and said == "frozen":  # it was frozen once: that is why it is asked
        return "cooked" if topic_of(enquiry.text, "says_cooked") else None
    if said in {"frozen", "part_frozen"}:
        return said
    return topic_of(enquiry.text, "safety_states") or None


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


def _cautions(findings: Sequence[Finding], topic: str, question: SafetyQuestion) -> tuple[Caution, ...]:
    found = [finding.caution for finding in findings if finding.rule != "local-codes"]
    if topic == "spoiled":
        found = [replace(said, severity="stop") for said in found]
    if topic == "thaw_place" and all(finding.severity != "stop" for finding in findings):
        found.append(Caution("thaw-counter", "warn", rule("thaw-counter").text))
    if question.at_risk and all(said.rule != "at-risk" for said in found):
        found.append(Caution("at-risk", "warn", rule("at-risk").text))
    if topic == "water_unchanged":
        found.append(Caution("thaw-cold-water", "warn", rule("thaw-cold-water").text))
    if topic == "stuffing_mixed":
        found.append(Caution("stuffing-just-before", "warn", rule("stuffing-just-before").text))
    if topic == "stuffing":
        found.append(Caution("stuffing-165", "warn", rule("stuffing-165").text))
        found.append(Caution("stuffing-just-before", "info", rule("stuffing-just-before").text))
    return tuple(found)


def _reasons(findings: Sequence[Finding]) -> tuple[Message, ...]:
    why = [
        Message("asking-safety-why", reason=rule(found.rule).reason, citation=found.citation) for found in findings
    ]
    return tuple(why)


def _next(topic: str, question: SafetyQuestion, findings: Sequence[Finding]) -> tuple[Message, ...]:
    """What may be asked after this; nothing to do with food that is to be thrown away."""
    names = NEXT_BY_TOPIC.get(question.topic, ("probe", "how-long"))
    if findings[0].do == "discard" or topic == "spoiled":
        names = ("thaw", "standing") if "thaw" in names else ("standing", "keeps")
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
