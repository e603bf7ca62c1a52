"""A line that could not be read: one helpful question, and lines that would work."""

from __future__ import annotations

from dataclasses import replace

from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.message import Message

EXAMPLES = (Message("asking-next-plan"), Message("asking-next-size"), Message("asking-next-safety"))
OF_A_TALK = (Message("asking-next-why"), Message("asking-next-shown"), Message("asking-next-start-over"))
_A_DINNER = ("roast.mass_kg", "serve_at", "start_at", "covers")


def answer(enquiry: Enquiry) -> Answer:
    """Asks for the roast and the hour, and in a talk what was meant; an empty line is greeted, not blamed."""
    empty = not any(character.isalnum() for character in enquiry.text)
    told = Answer(
        headline=Message("asking-unknown-empty" if empty else "asking-unknown-headline"),
        question=Message("asking-ask-roast-and-time"),
        choices=EXAMPLES,
        next=EXAMPLES,
    )
    if empty or not any(enquiry.said(path) is not None for path in _A_DINNER):
        return told
    return replace(
        told,
        headline=Message("asking-unknown-in-talk"),
        question=Message("asking-ask-again"),
        choices=(),
        next=OF_A_TALK,
    )
