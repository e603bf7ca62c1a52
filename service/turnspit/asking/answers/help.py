"""What can be asked here, shown by example."""

from __future__ import annotations

from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.message import Message

TOPICS = ("plan", "size", "thaw", "brine", "doneness", "safety", "convert")


def answer(enquiry: Enquiry) -> Answer:  # noqa: ARG001 every answer takes the enquiry
    """Seven example lines, one a subject, the main job first."""
    return Answer(
        headline=Message("asking-help-headline"),
        lines=tuple(Message(f"asking-help-{topic}", example=Message(f"asking-next-{topic}")) for topic in TOPICS),
        next=(Message("asking-next-plan"), Message("asking-next-size"), Message("asking-next-convert")),
    )
