"""A line that could not be read: one helpful question, and lines that would work."""

from __future__ import annotations

from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.message import Message

EXAMPLES = (Message("asking-next-plan"), Message("asking-next-size"), Message("asking-next-safety"))


def answer(enquiry: Enquiry) -> Answer:
    """Asks for the roast and the hour; an empty line is greeted, not blamed."""
    empty = not any(character.isalnum() for character in enquiry.text)
    return Answer(
        headline=Message("asking-unknown-empty" if empty else "asking-unknown-headline"),
        question=Message("asking-ask-roast-and-time"),
        choices=EXAMPLES,
        next=EXAMPLES,
    )
