"""A value that a room refuses becomes a kind answer: what cannot be, within which limits, what to say instead."""

from __future__ import annotations

import math
from datetime import datetime, timedelta
from typing import Any

from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.taken import USUAL_KIND, name_of
from turnspit.errors import TurnspitError, Unknown
from turnspit.message import Message

FAR_DAYS = 60
EXAMPLES = (Message("asking-next-plan"), Message("asking-next-size"), Message("asking-next-help"))


def refusal(error: TurnspitError, enquiry: Enquiry) -> Answer:
    """The answer to a request that cannot be met; it never invents a plan for it."""
    name, headline, asks, question = _told(error, enquiry)
    return Answer(
        headline=headline,
        question=question,
        asks=asks,
        choices=_choices(asks, enquiry),
        next=EXAMPLES,
        data={
            "refused": {"name": name, "value": _plain(error.value), "limit": error.limit, "way_out": error.way_out}
        },
    )


def _told(error: TurnspitError, enquiry: Enquiry) -> tuple[str, Message, str, Message]:
    name, value = error.name.rpartition(".")[2], error.value
    if name == "item":
        return _item(error)
    negative = isinstance(value, int | float) and value < 0
    if isinstance(error, Unknown):
        return name, Message("asking-refused-unknown", value=str(value)[:60]), "", Message("asking-ask-other")
    if name == "mass_kg" and isinstance(value, int | float):
        return name, _mass(float(value), enquiry), "roast.mass_kg", Message("asking-ask-mass")
    if name in {"serve_at", "start_at"} and (at := _moment(value)) is not None:
        return name, _time(at, enquiry), "serve_at", Message("asking-ask-serve_at")
    if name.endswith("_c") and isinstance(value, int | float):
        return name, Message("asking-refused-temperature", c=float(value)), "", Message("asking-ask-temperature")
    if name.endswith("_l") and not negative and isinstance(value, int | float):
        return name, Message("asking-refused-volume", litres=float(value)), "", Message("asking-ask-volume")
    if name == "covers":
        return name, Message("asking-refused-covers", count=_shown(value)), "covers", Message("asking-ask-covers")
    if negative:
        return name, Message("asking-refused-negative", value=_shown(value)), "", Message("asking-ask-other")
    return name, Message("asking-refused-value", value=_shown(value)), "", Message("asking-ask-other")


def _item(error: TurnspitError) -> tuple[str, Message, str, Message]:
    question = Message("asking-ask-item")
    if not isinstance(error, Unknown):
        return "item", Message("asking-refused-which-item"), "amount.item", question
    known = ", ".join(error.known[:4])
    return "item", Message("asking-refused-item", value=_shown(error.value), known=known), "amount.item", question


def _choices(asks: str, enquiry: Enquiry) -> tuple[Message, ...]:
    """For a time that has passed: the same hour as soon as it comes again, and the day after."""
    said = enquiry.moment("serve_at") if asks == "serve_at" else None
    if said is None:
        return ()
    local = said.astimezone(enquiry.now.tzinfo)
    today = enquiry.now.replace(hour=local.hour, minute=local.minute, second=0, microsecond=0)
    days = [today + timedelta(days=ahead) for ahead in range(3)]
    return tuple(Message("asking-choice-when", at=at) for at in days if at > enquiry.now)[:2]


def _mass(kg: float, enquiry: Enquiry) -> Message:
    from turnspit.heat import KINDS, roast

    kind = enquiry.said("roast.kind")
    kind = kind if kind in KINDS else USUAL_KIND
    if not kg > 0:
        return Message("asking-refused-no-mass")
    low_kg, high_kg = roast(kind).mass_kg_range
    key = "asking-refused-heavy" if kg > high_kg else "asking-refused-light"
    return Message(key, kg=kg, roast=name_of(kind), low_kg=low_kg, high_kg=high_kg)


def _time(at: datetime, enquiry: Enquiry) -> Message:
    if at <= enquiry.now:
        return Message("asking-refused-past", at=at)
    far = at > enquiry.now + timedelta(days=FAR_DAYS)
    return Message("asking-refused-far" if far else "asking-refused-time", at=at)


def _moment(value: object) -> datetime | None:
    if isinstance(value, datetime):
        return value
    try:
        return datetime.fromisoformat(str(value))
    except ValueError:
        return None


def _is_number(value: object) -> bool:
    return isinstance(value, int | float) and math.isfinite(value)


def _shown(value: object) -> str:
    return f"{value:g}" if isinstance(value, float) else str(value)[:60]


def _plain(value: object) -> Any:
    if isinstance(value, float) and not math.isfinite(value):
        return str(value)
    return value if isinstance(value, int | float | str) else str(value)
