"""Done before its time: the rest under foil, then the heat that keeps it safe, or the two-hour clock."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import datetime, timedelta

from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.danger import is_bird
from turnspit.asking.answers.taken import TOLERANCE_K, Taken
from turnspit.asking.answers.topics import topic_of
from turnspit.asking.clean import clean
from turnspit.message import Message
from turnspit.reference import caution, rule

_OUT_AT = re.compile(
    r"\b(?:out|done|ready|finished|off|comes out|came out|pulled|resting|sale|salio|listo|lista|hecho)"
    r"(?: of the oven| del horno)?(?: at| by| since| from| a las?)? (\d{1,2})(?:[:.]?([0-5]\d))?(?: ?[ap]m)?\b"
    r"(?! ?(?:deg|f\b|c\b|lb|kg|min|h\b|hour|%|/))"
)
_OUT_NOW = re.compile(
    r"\b(?:it|turkey|bird|roast|chicken|goose|joint|ham|rib|beef|lamb|pork)(?:'?s| is) (?:out|done|ready) now\b"
)
LEAST_WAIT, LONGEST_WAIT = timedelta(minutes=45), timedelta(hours=8)
STANDS = timedelta(hours=2)


def is_early(enquiry: Enquiry) -> bool:
    """Whether it is told that the roast is done and dinner is not yet: not asked when it will be."""
    return bool(topic_of(enquiry.text, "done_early")) and not topic_of(enquiry.text, "asks_when")


def waits_from(enquiry: Enquiry) -> datetime | None:
    """When it leaves the oven, of a roast that is told to be done hours before dinner: `out at 3, dinner back to 5`;
    None for one that is to be planned, that stood already, or that reads too little."""
    serve_at, line = enquiry.moment("serve_at"), clean(enquiry.line)
    holds = bool(topic_of(enquiry.line, "asks_hold"))
    if serve_at is None or enquiry.said("elapsed_h") is not None or topic_of(enquiry.line, "asks_when"):
        return None
    planned = enquiry.said("roast.mass_kg") is not None or enquiry.said("start_at") is not None
    if (planned and not holds) or not _measured_enough(enquiry):
        return None
    found = _OUT_AT.search(line)
    if found is not None:
        out_min, serve_min = int(found[1]) * 60 + int(found[2] or 0), serve_at.hour * 60 + serve_at.minute
        wait = timedelta(minutes=(serve_min - out_min) % (24 * 60 if int(found[1]) > 12 else 12 * 60))
    elif _OUT_NOW.search(line):
        wait = serve_at - enquiry.now
    else:
        return None
    return serve_at - wait if LEAST_WAIT <= wait <= LONGEST_WAIT else None


def _measured_enough(enquiry: Enquiry) -> bool:
    """Whether nothing was read that is below what is safe."""
    needed = rule("poultry-165" if is_bird(enquiry) else "meat-145", "home").limits["core_min_c"]
    read = [one["temperature_c"] for one in enquiry.said("readings") or ()] or [enquiry.said("reading.temperature_c")]
    return all(c is None or float(c) >= needed - TOLERANCE_K for c in read)


def until_dinner(enquiry: Enquiry, out_at: datetime) -> Answer:
    """How it is kept from the oven to the dinner: hot, or for no longer than two hours."""
    said = {"serve_at": enquiry.moment("serve_at") or out_at, "by": out_at + STANDS}
    asked = "-asked" if topic_of(enquiry.line, "asks_hold") else ""
    return replace(
        early(Taken(enquiry)),
        headline=Message(f"asking-hold-until{asked}", **said),
        lines=(Message("asking-early-carved"),),
    )


def early(taken: Taken) -> Answer:
    """The roast is done before its time: tent it, then hold it hot, or start the two-hour clock."""
    return Answer(
        headline=Message("asking-early-headline"),
        lines=(Message("asking-early-hold"), Message("asking-early-carved"), Message("asking-early-clock")),
        reasons=(Message("asking-why-early"),),
        assumptions=taken.assumptions,
        assumed=taken.assumed,
        cautions=(
            caution("hot-hold", "warn"),
            caution("two-hours", "warn"),
            caution("thermometer-decides", "info"),
        ),
        next=(Message("asking-next-hold"), Message("asking-next-carve"), Message("asking-next-why")),
    )
