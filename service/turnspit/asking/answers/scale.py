"""More or fewer servings: the factor, what it makes of an amount, and what does not grow in step."""

from __future__ import annotations

from typing import Any

from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.convert import amount
from turnspit.errors import Impossible, OutOfRange
from turnspit.message import Message

LARGEST_FACTOR = 1000.0


def answer(enquiry: Enquiry) -> Answer:
    """The factor from what was said ("6 to 14", "double"), applied to the amount if one was given."""
    factor = _factor(enquiry)
    if factor is None:
        return Answer(
            headline=Message("asking-scale-incomplete"),
            question=Message("asking-ask-scale"),
            asks="scale.to",
            choices=(Message("asking-next-double"), Message("asking-next-scale")),
            next=(Message("asking-next-scale"), Message("asking-next-double"), Message("asking-next-help")),
        )
    value, unit = enquiry.said("amount.value"), enquiry.said("amount.unit")
    scaled = None if value is None or unit is None else value * factor
    lines = [Message("asking-scale-not-linear"), Message("asking-scale-time")]
    if enquiry.said("brine") or enquiry.said("subject") == "brine":
        lines.append(Message("asking-scale-brine"))
    headline = _headline(enquiry, factor)
    if scaled is not None:
        lines.insert(0, headline)
        given, found = _amount(enquiry, value), _amount(enquiry, scaled)
        headline = Message("asking-scale-amount", given=given, factor=factor, found=found)
    return Answer(
        headline=headline,
        lines=tuple(lines),
        reasons=(Message("asking-why-scale"),),
        next=(Message("asking-next-double"), Message("asking-next-convert"), Message("asking-next-why")),
        data={"scale": _document(enquiry, factor, scaled)},
    )


def _factor(enquiry: Enquiry) -> float | None:
    factor, servings, wanted = (enquiry.said(f"scale.{name}") for name in ("factor", "from", "to"))
    if wanted is None:
        wanted = enquiry.said("covers")
    for name, value in (("scale.factor", factor), ("scale.from", servings), ("scale.to", wanted)):
        if value is not None and not value > 0:
            raise Impossible(name, value, "is not above zero", "say a number of servings from 1 up")
    if factor is None and servings is not None and wanted is not None:
        factor = wanted / servings
    if factor is not None:
        OutOfRange.check("scale.factor", factor, 1 / LARGEST_FACTOR, LARGEST_FACTOR, "scale it in several steps")
    return None if factor is None else float(factor)


def _headline(enquiry: Enquiry, factor: float) -> Message:
    servings, wanted = enquiry.said("scale.from"), enquiry.said("scale.to") or enquiry.said("covers")
    if servings is not None and wanted is not None:
        return Message("asking-scale-servings", **{"from": servings, "to": wanted}, factor=factor)
    return Message("asking-scale-headline", factor=factor)


def _amount(enquiry: Enquiry, value: float) -> Message:
    given = amount(value, enquiry.said("amount.unit"))
    item = enquiry.said("amount.item")
    return Message("asking-amount-of", amount=given, item=item) if item else given


def _document(enquiry: Enquiry, factor: float, scaled: float | None) -> dict[str, Any]:
    found: dict[str, Any] = {"factor": factor}
    if scaled is not None:
        found |= {"value": scaled, "unit": enquiry.said("amount.unit"), "item": enquiry.said("amount.item")}
    return found
