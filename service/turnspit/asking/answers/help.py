"""How to roast, and what can be asked here, shown by example."""

from __future__ import annotations

from turnspit.asking.answers import technique
from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.message import Message

TOPICS = ("plan", "size", "thaw", "brine", "doneness", "safety", "convert")


def answer(enquiry: Enquiry) -> Answer:
    """The technique that is asked about, else seven example lines, one a subject, the main job first."""
    if enquiry.technique:
        return technique.answer(enquiry)
    return Answer(
        headline=Message("asking-help-headline"),
        lines=tuple(Message(f"asking-help-{topic}", example=Message(f"asking-next-{topic}")) for topic in TOPICS),
        next=(Message("asking-next-plan"), Message("asking-next-size"), Message("asking-next-convert")),
    )
