"""Which danger a question is about: what the line says, what was understood, and of two readings the less safe."""

from __future__ import annotations

import re

from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.answers.degrees import OVERNIGHT_H, degrees_of, roasts_slowly
from turnspit.asking.answers.hours import hours_of, thawed_h
from turnspit.asking.answers.plain_words import NO_ROAST_C, barely_warm_oven, is_out, plain_topic
from turnspit.asking.answers.topics import named, topic_of
from turnspit.safety import TOPICS

OWN_TOPICS = {
    "cook_ahead": "reheat",
    "drive": "standing_limit",
    "eaten_raw": "target",
    "hold_which": "warm_holding",
    "stuffing": "target",
    "stuffing_mixed": "target",
    "water_unchanged": "thaw_method",
    "cool_down": "cooling",
    "spoiled": "keeping",
    "thaw_place": "thaw_method",
    "time_control": "standing_limit",
}
"""Topics of this room, with the one of the safety room that checks them."""
RED_MEATS = ("meat", "beef", "veal", "lamb", "pork", "ham")
KEPT_FROM_H = 24.0
"""Food that is said to be a day old or more was kept, not left standing, unless the line says so."""
TELLS_THE_CASE = ("keeping", "reheat", "warm_holding", "thaw_place", "target", "at_risk")
"""Topics of plain words whose hours and readings still decide what is asked."""
MAY_HAVE_STOOD = ("", "stuffing", "keeping", "reheat", "cold_holding", "warm_holding", "standing_limit")
"""Topics whose words leave open that the food stood out."""
LONGEST_REST_H = 1.0
_TELLS_HOURS = re.compile(r"\d|night|hour|day|noche|hora|d[ií]a|week|semana|since|desde")
IN_THE_MEAT = ("breast", "thigh", "wing")


def words_of(enquiry: Enquiry) -> str:
    """The words to judge by: the line's own where it speaks of a danger itself, else with those that it amends."""
    speaks = any(topic_of(enquiry.line, table) for table in ("dangers", "safety_out", "safety_stood"))
    topic = named(enquiry.line, "safety")
    return enquiry.line if speaks or topic not in ("", "stuffing") else enquiry.text


_TAKES_OUT = re.compile(r"\b(?:take|pull|bring|get)\b[^.,;?]{0,30}? out\b")
"""Out of its oven, and not out of the cold."""


def danger_of(enquiry: Enquiry) -> str:
    """The topic to be checked: one of the safety room's, of `OWN_TOPICS`, or "early"."""
    if _was_in_the_cold(enquiry):
        return "cold_holding"
    plain = plain_topic(enquiry.text)
    if plain == "standing_limit" and any(map(str.isdigit, enquiry.line)):
        plain = ""
    if not plain and (roasts_slowly(enquiry) or barely_warm_oven(enquiry)):
        return "oven"
    if not plain and thawed_h(enquiry) is not None:
        return "thawed_keeps"
    if plain and plain not in TELLS_THE_CASE:
        return plain
    found = plain or named(enquiry.text, "safety") or _spoken_of(enquiry.topic)
    hours, reading_c = hours_of(enquiry), degrees_of(enquiry, found or "reading")
    found = _as_meant(enquiry, found, reading_c)
    if enquiry.said("roast.stuffed") and enquiry.said("roast.state") in {"frozen", "part_frozen"} and not found:
        return "from_frozen"
    if hours is not None and found in MAY_HAVE_STOOD and _stood(enquiry, found, hours):
        return "left_out"
    if found == "standing_limit" and hours is not None:
        return "keeping"
    if found in {"", "keeping"} and enquiry.said("oven.temperature_c") and topic_of(enquiry.line, "holds_hot"):
        return "warm_holding"
    if found:
        return found
    if reading_c is not None:
        return "reading"
    if enquiry.said("oven.temperature_c") is not None and not topic_of(enquiry.line, "asks_end"):
        return "oven"
    if hours is not None and not in_oven(enquiry):
        return "keeping"
    if topic_of(enquiry.text, "safety_left") and not topic_of(enquiry.text, "asks_when"):
        return "left_out"
    takes_out = topic_of(enquiry.text, "taken_out") or _TAKES_OUT.search(enquiry.line.lower())
    if topic_of(enquiry.text, "safety_out") and not takes_out:
        return "standing_limit"
    return "at_risk" if topic_of(enquiry.text, "safety_at_risk") else "target"


def _as_meant(enquiry: Enquiry, found: str, reading_c: float | None) -> str:
    """The danger that the words name, as what was understood makes it."""
    if found == "at_risk":
        found = named(enquiry.text, "safety") or ("" if topic_of(enquiry.text, "safety_stood") else found)
    hours = hours_of(enquiry)
    if found in {"target", "stuffing", "at_risk"} and reading_c is not None and hours is None:
        return "reading"
    if found == "stuffing" and hours is not None and hours >= KEPT_FROM_H:
        return "keeping"
    if found == "spoiled" and topic_of(enquiry.text, "smells_fine"):
        return "thawed_keeps" if topic_of(enquiry.text, "raw") else "keeping"
    if found == "cold_holding" and reading_c is not None and reading_c > NO_ROAST_C:
        return "reading" if hours is None else "warm_holding"
    if found == "cold_holding" and reading_c is None and topic_of(enquiry.text, "safety_stood"):
        return "left_out" if topic_of(enquiry.text, "stood_long") else "reheat" if _wished(enquiry) else found
    if found == "warm_holding" and enquiry.said("reading.place") in IN_THE_MEAT and hours is None:
        return "reading"
    if found == "warm_holding" and _roasts_overnight(enquiry, hours):
        return "oven"
    if found == "thaw_place" and topic_of(enquiry.text, "safety_in_water"):
        return "thaw_method"
    if found == "overnight_oven":
        return "" if topic_of(enquiry.text, "safety_stood") else "oven"
    if found == "pink" and not is_bird(enquiry):
        return "target" if reading_c is None else "reading"
    in_cold = topic_of(enquiry.text, "safety_cold")
    if found == "cooling" and reading_c is None and topic_of(enquiry.text, "safety_stood") and not in_cold:
        return ""
    if found == "brine_temperature" and reading_c is None and topic_of(enquiry.text, "out_of_fridge"):
        return "left_out"
    if found == "keeping" and reading_c is not None and reading_c > NO_ROAST_C:
        return "reading"
    if found == "keeping" and topic_of(enquiry.text, "raw") and not topic_of(enquiry.text, "cooked_words"):
        return "thawed_keeps"
    if found == "keeping" and hours is None and topic_of(enquiry.text, "asks_cooling"):
        return "cooling"
    if found == "stuffing" and enquiry.said("roast.state") in {"frozen", "part_frozen"}:
        return "from_frozen"
    if found in {"", "warm_holding"} and reading_c is not None and topic_of(enquiry.text, "safety_held"):
        return "reading"
    if found in {"", "warm_holding"} and reading_c is None and _cooks_and_holds(enquiry, found):
        return "target"
    if found == "" and reading_c is not None and reading_c < NO_ROAST_C and not enquiry.said("reading.place"):
        found = "cold_holding"
    if found in {"", "thaw_method", "cold_holding"} and _thaws_in_air(enquiry):
        return "thaw_place"
    return found


def _was_in_the_cold(enquiry: Enquiry) -> bool:
    """ "No wait, it was in the garage, 38 degrees in there", after a counter: the later line tells where it was."""
    amends = enquiry.line != enquiry.text and not topic_of(enquiry.line, "safety_stood")
    reading_c = degrees_of(enquiry, "reading") if any(map(str.isdigit, enquiry.line)) else None
    return amends and reading_c is not None and reading_c < NO_ROAST_C and _in_a_cold_place(enquiry.line)


def _in_a_cold_place(text: str) -> bool:
    return topic_of(text, "safety_places") in ("garage", "outdoors", "refrigerator")


def _wished(enquiry: Enquiry) -> bool:
    """Whether a temperature is wished: "warm it to 120 for the buffet"."""
    return enquiry.said("roast.target_c") is not None


def _roasts_overnight(enquiry: Enquiry, hours: float | None) -> bool:
    """Whether it is roasted for a night before it is held: then the oven is what is to be judged."""
    told = enquiry.said("oven.temperature_c") is not None and enquiry.said("reading.temperature_c") is None
    return told and hours is not None and hours >= OVERNIGHT_H


def _cooks_and_holds(enquiry: Enquiry, found: str) -> bool:
    """Whether an end is wished and the hours are those it is held or rests at: no holding of what is cooked already.

    Words of standing out, and hours that no rest takes, are left to be judged as such.
    """
    if enquiry.said("roast.target_c") is None:
        return False
    if any(topic_of(enquiry.text, table) for table in ("safety_stood", "safety_left", "safety_out")):
        return False
    hours = hours_of(enquiry)
    return found == "warm_holding" or hours is None or hours <= LONGEST_REST_H


def _thaws_in_air(enquiry: Enquiry) -> bool:
    """Whether it thaws in a garage, on a porch, or somewhere that reads so many degrees, and not in water."""
    reading_c = enquiry.said("reading.temperature_c")
    measured = reading_c is not None and reading_c < NO_ROAST_C and topic_of(enquiry.text, "safety_thawing")
    somewhere = measured or plain_topic(enquiry.text) == "thaw_place"
    return bool(somewhere) and not topic_of(enquiry.text, "safety_in_water")


def in_oven(enquiry: Enquiry) -> bool:
    """Whether the hours that were said are hours of roasting."""
    return bool(topic_of(enquiry.text, "safety_in_oven")) and not topic_of(enquiry.text, "safety_cold")


def is_bird(enquiry: Enquiry) -> bool:
    """Whether it is a bird, as far as was said."""
    kind, subject = enquiry.said("roast.kind"), str(enquiry.said("subject") or "")
    if kind is None:
        return subject not in RED_MEATS
    from turnspit.heat import roast

    return roast(kind).poultry


def _spoken_of(danger: str) -> str:
    """The danger that the reading names, if this room or the safety room knows it."""
    return danger if danger in OWN_TOPICS or danger in TOPICS else ""


def _rests(enquiry: Enquiry, hours: float) -> bool:
    """Whether it rests out of the oven: "came out at 158, sat ten minutes, reads 162 now"."""
    reading_c = enquiry.said("reading.temperature_c")
    out = is_out(enquiry) or topic_of(enquiry.line, "safety_came_out")
    return bool(out) and reading_c is not None and reading_c > NO_ROAST_C and hours <= LONGEST_REST_H


def _stood(enquiry: Enquiry, found: str, hours: float) -> bool:
    """Whether those hours were hours out of the cold: said so, or taken so, as the less safe of the two readings."""
    if found == "warm_holding" and enquiry.said("reading.temperature_c") is not None:
        return False
    if _rests(enquiry, hours):
        return False
    if topic_of(enquiry.text, "safety_stood"):
        return True
    if in_oven(enquiry) or enquiry.said("oven.temperature_c") is not None:
        return False
    # "then freezer?": the place of a line without its hours is none of the hours that were told before.
    told = next((line for line in enquiry.text.split("\n") if _TELLS_HOURS.search(line.lower())), "")
    return hours < KEPT_FROM_H and found != "warm_holding" and not topic_of(told, "safety_cold")
