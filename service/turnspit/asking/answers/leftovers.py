"""What is left: into the cold in time, how long it keeps, how it comes back."""

from __future__ import annotations

from dataclasses import replace

from turnspit.asking.answers import safety
from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.hours import hours_of
from turnspit.asking.answers.topics import topic_of
from turnspit.message import Message
from turnspit.reference import caution

RELATED = {"keep": ("reheat", "freeze"), "reheat": ("keep",), "freeze": ("keep", "reheat"), "bones": ("keep",)}
"""What is told beside the one thing that was asked; beside the chilling, all of it."""
RULES = {
    "keep": ("leftovers-days",),
    "reheat": ("reheat-165", "leftovers-days"),
    "freeze": ("leftovers-days",),
    "bones": ("two-hours",),
}
MAY_STAND_H = 2.0
NEXT = {"keep": ("freeze", "reheat"), "reheat": ("keeps", "standing"), "freeze": ("reheat", "keeps")}


def _judged(enquiry: Enquiry) -> bool:
    """Whether something is told by which the rules judge it: hours, days, degrees, that it is whole or raw."""
    measured = any(enquiry.said(path) is not None for path in ("reading.temperature_c", "roast.target_c"))
    told = measured and any(map(str.isdigit, enquiry.line))  # what was measured in the oven, turns ago, is past
    words = ("safety_whole", "raw")
    return told or hours_of(enquiry) is not None or any(topic_of(enquiry.text, table) for table in words)


def _stood_before(enquiry: Enquiry) -> float | None:
    """The hours that some of it stood out, as an earlier line told, where they were too many."""
    if not enquiry.before or not topic_of(enquiry.before, "safety_stood"):
        return None
    stood_h = hours_of(replace(enquiry, text=enquiry.before))
    return stood_h if stood_h is not None and stood_h > MAY_STAND_H else None


def answer(enquiry: Enquiry) -> Answer:
    """The whole of it in one line; what was asked about stands first."""
    topic = topic_of(enquiry.text, "leftovers", "chill")
    stood_h = _stood_before(enquiry)
    if stood_h is None and _judged(enquiry):
        return safety.answer(enquiry)
    licensed = enquiry.kitchen == "licensed"
    told = {
        "chill": Message("asking-leftovers-headline"),
        "keep": Message("asking-leftovers-keep-licensed" if licensed else "asking-leftovers-keep"),
        "reheat": Message("asking-leftovers-reheat"),
        "freeze": Message("asking-leftovers-freeze"),
        "bones": Message("asking-leftovers-bones"),
    }
    long, topic = topic == "freeze_long", topic.partition("_")[0]
    headline = told.pop(topic)
    if long:
        headline = Message("asking-leftovers-freeze-long")
    elif topic == "freeze":
        headline = Message("asking-leftovers-freeze-yes")
    if stood_h is not None:
        headline, told["first"] = Message("asking-leftovers-but-stood", minutes=stood_h * 60), headline
    lines = [told[name] for name in ("first", *RELATED.get(topic, tuple(told))) if name in told]
    chilled = topic == "chill" and enquiry.kitchen != "home"
    cooling = (Message("asking-leftovers-two-stage"),) if chilled else ()
    rules = list(RULES.get(topic, ("two-hours", "leftovers-days", "reheat-165")))
    if enquiry.kitchen != "home":
        rules += ["cooling-two-stage"] if topic == "chill" else []
        rules += ["date-marking"] if topic in ("chill", "keep") else []
    return Answer(
        headline=headline,
        lines=(*lines, *cooling),
        reasons=(Message("asking-why-leftovers"), Message("asking-why-shallow")),
        cautions=(
            *((caution("two-hours", "stop"),) if stood_h is not None else ()),
            *(caution(rule, "info") for rule in rules),
        ),
        next=(
            *(Message(f"asking-next-{name}") for name in NEXT.get(topic, ("reheat", "keeps"))),
            Message("asking-next-why"),
        ),
    )
