"""The danger that a line plainly speaks of: it is answered first, whatever else the line was read as."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.answers.danger import IN_THE_MEAT
from turnspit.asking.answers.degrees import degrees_of, roasts_slowly
from turnspit.asking.answers.hours import thawed_h
from turnspit.asking.answers.plain_words import NO_ROAST_C, barely_warm_oven, plain_topic
from turnspit.asking.answers.topics import topic_of
from turnspit.asking.contract import Intent

KEPT = ("keeping-cooked", "keeping-how_long")
"""Rows of what leftovers are asked about anyhow."""
NEARLY_DONE_C = 65.0
MEAT_DONE_C = 73.5
SAFE_WHOLE_MEAT_C = 62.7
"""145 F, told in whole degrees of either scale."""
SOON_MIN = 30
HOTTEST_ROAST_C = 110.0
"""No roast reads more: it is an oven's heat."""


def plain_danger(enquiry: Enquiry, intents: Sequence[Intent]) -> str:
    """The topic of the danger, "" where the line speaks of none so plainly."""
    plain = plain_topic(enquiry.text)
    if plain == "standing_limit" and topic_of(enquiry.text, "safety_in_oven"):
        return ""
    if plain == "thermometer" and enquiry.said("reading.place") in IN_THE_MEAT:
        # How far the probe is off was told beside what it reads in the meat.
        return ""
    if topic_of(enquiry.text, "dangers") in KEPT and "leftovers" in intents:
        return ""
    if plain == "reading" and degrees_of(enquiry, plain) is None:
        # "solo": only one oven, and nothing was measured.
        plain = ""
    return (
        plain
        or _frozen_and_stuffed(enquiry)
        or _thawed_too_long(enquiry)
        or _stood_out(enquiry, intents)
        or _served_too_cool(enquiry)
        or _rare_for_one_at_risk(enquiry)
        or ("oven" if roasts_slowly(enquiry) or barely_warm_oven(enquiry) else "")
    )


def _frozen_and_stuffed(enquiry: Enquiry) -> str:
    """A frozen bird with stuffing in it is neither thawed nor timed: it is a danger."""
    frozen = enquiry.said("roast.state") in {"frozen", "part_frozen"}
    return "from_frozen" if frozen and enquiry.said("roast.stuffed") else ""


def _thawed_too_long(enquiry: Enquiry) -> str:
    """More days between the thawing and the roast than raw meat keeps."""
    if thawed_h(enquiry) is None:
        return ""
    from turnspit.asking.answers import safety

    return "thawed_keeps" if safety.stops(enquiry, "thawed_keeps") else ""


def _stood_out(enquiry: Enquiry, intents: Sequence[Intent]) -> str:
    """Hours on a counter or in a car are a danger, also where the line asks how to go on with it."""
    if enquiry.said("elapsed_h") is None or "thaw" in intents or topic_of(enquiry.line, "oven"):
        return ""
    return "left_out" if topic_of(enquiry.line, "safety_stood") else ""


def _served_too_cool(enquiry: Enquiry) -> str:
    """What reads too little and is to be carved or eaten now, or stuffing that does when the meat is done."""
    reading_c = degrees_of(enquiry, "reading")
    earlier = not any(map(str.isdigit, enquiry.line)) and topic_of(enquiry.line, "asks_way")
    if reading_c is None or not NO_ROAST_C <= reading_c <= HOTTEST_ROAST_C or earlier:
        return ""
    came_out = topic_of(enquiry.line, "safety_came_out") and enquiry.said("reading.oven_left_on") is None
    served = topic_of(enquiry.line, "safety_served") and not _eaten_later(enquiry)
    if not (came_out or served) and not _stuffing_is_late(enquiry):
        return ""
    from turnspit.asking.answers import safety  # loads the rooms that a question about cups does not need

    return "reading" if safety.stops(enquiry, "reading") else ""


def _eaten_later(enquiry: Enquiry) -> bool:
    """`it reads 60, we eat at 3`: the roast goes on roasting until then."""
    serve_at = enquiry.moment("serve_at")
    return serve_at is not None and serve_at > enquiry.now + timedelta(minutes=SOON_MIN)


def _rare_for_one_at_risk(enquiry: Enquiry) -> str:
    """`can my gran eat medium rare lamb`: who is at greater risk comes before any plan."""
    wished_c = enquiry.said("roast.target_c")
    rare = wished_c is not None and wished_c < SAFE_WHOLE_MEAT_C
    return "at_risk" if rare and topic_of(enquiry.text, "safety_at_risk") else ""


def _stuffing_is_late(enquiry: Enquiry) -> bool:
    """Whether the stuffing was measured and the roast is about to leave the oven without it being done."""
    if enquiry.said("reading.place") != "stuffing":
        return False
    told = enquiry.said("readings") or [enquiry.said("reading")]
    all_c = [float(reading["temperature_c"]) for reading in told]
    return max(all_c) >= (NEARLY_DONE_C if len(all_c) == 1 else MEAT_DONE_C)
