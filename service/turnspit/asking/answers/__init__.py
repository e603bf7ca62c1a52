"""One module an intent: what is understood goes in, an `Answer` of messages comes out."""

from turnspit.asking.answers.answer import Answer, Enquiry

__all__ = ["Answer", "Enquiry"]
