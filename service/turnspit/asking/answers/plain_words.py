"""The words of plain dangers, and what takes the danger out of them."""

from __future__ import annotations

import re

from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.answers.topics import rows_of, topic_of
from turnspit.asking.clean import clean

NO_ROAST_C = 30.0
"""What reads less than this is not being served: it is the air, the water or raw meat."""
UNLESS = {
    "time_control-rules": "safety_told_out",
    "cool_down": "cools_no_food",
    "standing_limit": "rests",
    "partial_cooking-two_days": "not_partial",
    "left_out-place": "not_left_out",
    "left_out-delivered": "kept_cold",
    "spoiled": "smells_fine",
    "eaten_raw": "animals",
    "brine_reuse-old": "not_used",
    "thaw_method-hot_water": "not_hot_water",
    "cross_contact-knife": "not_cross",
    "cold_holding-reads": "not_fridge",
}
"""Words that make no danger of a row, or of all rows of a topic."""
LEAST_OVEN_C, COOLEST_ROASTING_C = 50.0, 104.0


# What is not stuffed was not stuffed last night either.
_UNSTUFFED = re.compile(r"\bsin rellen\w*", re.IGNORECASE)


def plain_topic(text: str) -> str:
    """The topic of the first row of plain dangers whose words stand in the text, and no words that make it none."""
    text = _UNSTUFFED.sub("", text)
    return next((row.partition("-")[0] for row in rows_of(text, "dangers") if not _is_none(text, row)), "")


def _is_none(text: str, row: str) -> bool:
    """Whether other words of the text take the danger of the row away."""
    tables = [UNLESS[name] for name in (row, row.partition("-")[0]) if name in UNLESS]
    return any(topic_of(text, table) for table in tables)


_OUT = re.compile(
    r"\b(?:pulled (?:it|them|the|her|him|at)"
    r"|(?:took|taken|got) (?:it|them|her|him|the \w+) out (?:at|already|now)"
    r"|(?:is|its|already|and) resting|tented|ya (?:est[aá] )?fuera del horno|reposando"
    r"|(?:saqu[eé]|sacamos|he sacado)\b(?!.{0,30}\b(?:congelador|freezer|nevera|heladera|refri|fr[ií])))"
)


def is_out(enquiry: Enquiry) -> bool:
    """Whether the roast has come out of its oven, as the line tells or the reading."""
    return enquiry.said("reading.oven_left_on") is False or bool(_OUT.search(clean(enquiry.line)))


def barely_warm_oven(enquiry: Enquiry) -> bool:
    """Whether something is roasted in an oven that no timetable reaches down to."""
    oven_c, roast = enquiry.said("oven.temperature_c"), enquiry.said("roast.kind") or enquiry.said("roast.mass_kg")
    if topic_of(enquiry.line, "holds_hot") or is_out(enquiry):
        return False
    return oven_c is not None and roast is not None and LEAST_OVEN_C <= oven_c < COOLEST_ROASTING_C
