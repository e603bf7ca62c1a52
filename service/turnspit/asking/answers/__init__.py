"""One module an intent: what is understood goes in, an `Answer` of messages comes out.

A module gives `answer(enquiry) -> Answer` and may raise TurnspitError for what cannot be; `answer_to` turns that into
a kind answer. Modules are loaded when they are asked for: a question about cups does not wait for the heat model.
"""

from __future__ import annotations

from importlib import import_module

from turnspit.asking.answers.answer import Answer, Enquiry, gravest_first, together
from turnspit.asking.answers.refused import refusal
from turnspit.asking.contract import Intent
from turnspit.errors import TurnspitError

__all__ = ["Answer", "Enquiry", "answer_to", "gravest_first", "together"]


def answer_to(intent: Intent, enquiry: Enquiry) -> Answer:
    """The answer of that intent's module; what a room refuses becomes an answer that says why and asks again."""
    module = import_module(f"turnspit.asking.answers.{intent}")
    try:
        answer: Answer = module.answer(enquiry)
    except TurnspitError as error:
        return refusal(error, enquiry)
    return answer
