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
MOST_IN_AN_OVEN = 12
"""What the heat model takes in one oven; ovens are all alike."""
POUND_KG = 0.45359237
USUAL = {
    "oven.temperature_c": {"us": (162.78, 176.67, 218.33), "metric": (160.0, 180.0, 220.0)},
    "reading.temperature_c": {"us": (54.44, 65.56, 73.89), "metric": (55.0, 65.0, 74.0)},
}
"""Choices offered where a value cannot be, by what is asked."""
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
    if isinstance(value, bool):
        return name, Message("asking-refused-together"), "", Message("asking-ask-other")
    negative = isinstance(value, int | float) and value < 0
    if isinstance(error, Unknown):
        return name, Message("asking-refused-unknown", value=str(value)[:60]), "", Message("asking-ask-other")
    if name == "mass_kg" and isinstance(value, int | float):
        return name, _mass(float(value), enquiry), "roast.mass_kg", Message("asking-ask-mass")
    if name in {"serve_at", "start_at"} and (at := _moment(value)) is not None:
        return name, _time(at, enquiry), "serve_at", Message("asking-ask-serve_at")
    if name.endswith("_c") and isinstance(value, int | float):
        return _degrees(name, float(value), enquiry)
    if name.endswith("_l") and not negative and isinstance(value, int | float):
        return name, Message("asking-refused-volume", litres=float(value)), "", Message("asking-ask-volume")
    if name == "count" and isinstance(value, int) and value > MOST_IN_AN_OVEN:
        too_many = Message("asking-refused-count", count=value, most=MOST_IN_AN_OVEN)
        return name, too_many, "", Message("asking-ask-ovens")
    if name == "covers":
        return name, Message("asking-refused-covers", count=_shown(value)), "covers", Message("asking-ask-covers")
    if negative and name.endswith(("_min", "_h", "_s")):
        return name, Message("asking-refused-hours"), "", Message("asking-ask-when-in")
    if negative:
        return name, Message("asking-refused-negative", value=_shown(value)), "", Message("asking-ask-other")
    return name, Message("asking-refused-value", value=_shown(value)), "", Message("asking-ask-other")


def _item(error: TurnspitError) -> tuple[str, Message, str, Message]:
    question = Message("asking-ask-item")
    if not isinstance(error, Unknown):
        return "item", Message("asking-refused-which-item"), "amount.item", question
    known, value = ", ".join(error.known[:4]), _shown(error.value)
    told = (
        Message("asking-refused-item", value=value, known=known)
        if known
        else Message("asking-refused-food", value=value)
    )
    return "item", told, "amount.item", question


def _degrees(name: str, c: float, enquiry: Enquiry) -> tuple[str, Message, str, Message]:
    """Degrees that cannot be: the oven's or the thermometer's are asked for again."""
    headline = Message("asking-refused-temperature", c=c)
    if enquiry.said("oven.temperature_c") is not None and abs(enquiry.said("oven.temperature_c") - c) < 1:
        return name, headline, "oven.temperature_c", Message("asking-ask-oven")
    if enquiry.said("reading.temperature_c") is not None:
        return name, headline, "reading.temperature_c", Message("asking-ask-reading")
    return name, headline, "", Message("asking-ask-temperature")


def _choices(asks: str, enquiry: Enquiry) -> tuple[Message, ...]:
    """Lines to tap: usual weights, oven settings and readings; for a time that has passed the same hour as soon as it
    comes again, and the day after."""
    if asks == "roast.mass_kg":
        return tuple(Message("asking-choice-mass", kg=kg) for kg in _usual_masses(enquiry))
    usual = USUAL.get(asks, {}).get(enquiry.reader.units, ())
    if usual:
        return tuple(Message(f"asking-choice-{asks.partition('.')[0]}", c=c) for c in usual)
    said = enquiry.moment("serve_at") if asks == "serve_at" else None
    if said is None:
        return ()
    local = said.astimezone(enquiry.now.tzinfo)
    today = enquiry.now.replace(hour=local.hour, minute=local.minute, second=0, microsecond=0)
    days = [today + timedelta(days=ahead) for ahead in range(3)]
    return tuple(Message("asking-choice-when", at=at) for at in days if at > enquiry.now)[:2]


def _usual_masses(enquiry: Enquiry) -> list[float]:
    """A small, a usual and a large one of that roast, in whole pounds or kilograms."""
    from turnspit.heat import roast

    low_kg, high_kg = roast(_kind(enquiry)).mass_kg_range
    unit_kg = POUND_KG if enquiry.reader.units == "us" else 1.0
    usual_kg = roast(_kind(enquiry)).usual_mass_kg
    whole = [max(1, round(share * usual_kg / unit_kg)) * unit_kg for share in (0.75, 1.0, 1.4)]
    return sorted({kg for kg in whole if low_kg <= kg <= high_kg})


def _kind(enquiry: Enquiry) -> str:
    from turnspit.heat import KINDS

    kind = enquiry.said("roast.kind")
    return kind if kind in KINDS else USUAL_KIND


def _mass(kg: float, enquiry: Enquiry) -> Message:
    from turnspit.heat import roast

    kind = _kind(enquiry)
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


def _shown(value: object) -> str:
    return f"{value:g}" if isinstance(value, float) else str(value)[:60]


def _plain(value: object) -> Any:
    if isinstance(value, float) and not math.isfinite(value):
        return str(value)
    return value if isinstance(value, int | float | str) else str(value)
