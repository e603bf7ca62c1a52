"""What is left: into the cold in time, how long it keeps, how it comes back."""

from __future__ import annotations

from turnspit.asking.answers import safety
from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.topics import topic_of
from turnspit.message import Message
from turnspit.reference import caution


def answer(enquiry: Enquiry) -> Answer:
    """The whole of it in one line; what was asked about stands first."""
    elapsed_h = enquiry.said("elapsed_h")
    if elapsed_h is not None or topic_of(enquiry.text, "safety_whole"):
        return safety.answer(enquiry)
    topic = topic_of(enquiry.text, "leftovers", "chill")
    licensed = enquiry.kitchen == "licensed"
    told = {
        "chill": Message("asking-leftovers-headline"),
        "keep": Message("asking-leftovers-keep-licensed" if licensed else "asking-leftovers-keep"),
        "reheat": Message("asking-leftovers-reheat"),
        "freeze": Message("asking-leftovers-freeze"),
        "bones": Message("asking-leftovers-bones"),
    }
    headline = told.pop(topic)
    cooling = () if enquiry.kitchen == "home" else (Message("asking-leftovers-two-stage"),)
    rules = ["two-hours", "leftovers-days", "reheat-165"]
    if enquiry.kitchen != "home":
        rules += ["cooling-two-stage", "date-marking"]
    return Answer(
        headline=headline,
        lines=(*told.values(), *cooling),
        reasons=(Message("asking-why-leftovers"), Message("asking-why-shallow")),
        cautions=tuple(caution(rule, "info") for rule in rules),
        next=(
            Message("asking-next-left-out"),
            Message("asking-next-reheat"),
            Message("asking-next-why"),
        ),
    )
