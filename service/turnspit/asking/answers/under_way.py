"""A roast of which nothing was read yet: when it is due by the clock, from when it went in or goes in."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

from turnspit.asking.answers import roast_time
from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.roasting import clock_window
from turnspit.message import Message
from turnspit.spread import Spread


def start_of(enquiry: Enquiry) -> datetime | None:
    """When it went in or goes in: as said, or so many hours ago."""
    elapsed_h = enquiry.said("elapsed_h")
    if enquiry.said("start_at") is None and elapsed_h is not None:
        return enquiry.now - timedelta(hours=float(elapsed_h))
    return enquiry.moment("start_at")


def answer(enquiry: Enquiry) -> Answer:
    """When the roast that went in is due."""
    start_at = start_of(enquiry)
    return roast_time.answer(enquiry) if start_at is None else due(enquiry, start_at)


def due(enquiry: Enquiry, start_at: datetime) -> Answer:
    """The window on the clock; once that has come, to read the thermometer now."""
    understood = {**enquiry.understood, "start_at": start_at.isoformat()}
    told = roast_time.answer(replace(enquiry, understood=understood))
    forecast = told.data["forecast"]
    span = Spread(**{name: forecast["ready_min"][name] for name in ("p10", "p50", "p90")})
    low_at, high_at = clock_window(start_at, span)
    if low_at > enquiry.now:
        return told
    return replace(
        told,
        headline=Message(
            "asking-under-way-overdue" if high_at < enquiry.now else "asking-under-way-due",
            start_at=start_at,
            low_at=low_at,
            high_at=high_at,
            c=forecast["pull_c"],
        ),
    )


def takes(enquiry: Enquiry) -> tuple[Message, ...]:
    """How long one of the said weight takes, where it was not said when it goes in."""
    if enquiry.said("roast.mass_kg") is None:
        return ()
    return (roast_time.answer(enquiry).headline,)
