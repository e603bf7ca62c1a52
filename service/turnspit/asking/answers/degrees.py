"""What was measured, for a danger that is plain: also where the reading of the line passed the number over.

A line of a danger may be read as something else, and then its number is nobody's. It is taken here as a cook means
it; of two ways to take it the less safe.
"""

from __future__ import annotations

import re

from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.answers.topics import named, topic_of
from turnspit.asking.clean import clean

COLD_TOPICS = ("cold_holding", "brine_temperature", "thaw_place", "receiving", "power_cut")
HOT_TOPICS = ("reading", "target", "at_risk", "warm_holding", "interrupted", "pink", "reheat", "cooling")
CELSIUS_TO_C = {"cold": 25.0, "hot": 82.0, "oven": 149.0}
"""Without a letter, a number up to this is Celsius: for cold things, for food that is hot, for an oven."""
PLAUSIBLE_C = {"cold": (-10.0, 30.0), "hot": (25.0, 105.0), "oven": (50.0, 300.0)}
_NO_DEGREES = (
    r"lbs?|pounds?|kg|kilos?|g|grams?|oz|l|litros?|litres?|liters?|quarts?|qt|gal\w*|cups?|tazas?|libras?|cm|mm|in|inch\w*"
    r"|hours?|hrs?|hr|h|horas?|min\w*|days?|dias?|weeks?|months?|am|pm|people|guests?|personas?|turkeys?|birds?|chickens?|ducks?|geese|hams?|pavos?|pollos?|cases?|boxes|months|year\w*|anos?"
)
_NUMBER = re.compile(
    r"(?<![\d.,:/$#])\b(\d{1,3}(?:[.,]\d)?)(?![\d:/%])\s*(?:deg(?:rees?)?\b|grados?\b)?\s*(degc|degf|c|f|celsius|fahrenheit)?\b"
    rf"(?!\s*-?\s*(?:{_NO_DEGREES})\b)"
)
_HOUR_BEFORE = re.compile(r"\b(?:since|at|by|until|til|till|for|desde las|a las|son las|hasta las) $")
_HOUR = r"\d{1,2}(?::\d\d)? ?(?:am|pm)?"
_FROM_HOUR_TO_HOUR = re.compile(
    rf"\b(?:from|between|since|desde las|de las?|entre las?|de) {_HOUR}"
    rf" ?(?:to|and|until|till|til|-|a las|a|y las|y|hasta las) ?{_HOUR}\b"
)
_OF_STUFFING = re.compile(r"\b(?:stuffing|dressing|relleno)\D{0,25}?(\d{2,3})(?!\d)")
_ROASTED_AT = re.compile(
    r"\b(?:roast|bak|cook|asar|asando|aso|horne)\w*\b[^.?!]{0,40}?\b(?:at|a) (\d{2,3})\b"
    r" ?(?:deg(?:rees?)? ?|grados ?)?(degc|degf|c|f)?\b"
)
_FELL_TO = re.compile(r"\b(?:from|de) \d{2,3}\D{0,12}?\b(?:to|a) (\d{1,2})(?!\d)")
CLOCK_TO, OVERNIGHT_H = 12.0, 6.0
SLOW_C, PINK_FROM_C = 121.1, 45.0
UNTIL_THEN_K = 0.02
"""What took so long to get to a temperature was above it until then."""


def degrees_of(enquiry: Enquiry, topic: str) -> float | None:
    """The temperature in C that the line tells for a danger of that topic, None where it tells none."""
    said: float | None = enquiry.said("reading.temperature_c")
    line, row = clean(enquiry.line), topic_of(enquiry.text, "dangers")
    if row.endswith("-stuffing_short"):
        found = _OF_STUFFING.search(line)
        return said if found is None else _celsius(float(found.group(1)), "", "hot")
    if row == "hold_which":
        return None
    fell_to = _FELL_TO.search(line) if row == "cooling-measured" else None
    if fell_to is not None:
        return _celsius(float(fell_to.group(1)), "", "cold") + UNTIL_THEN_K
    pink = named(enquiry.text, "safety") == "pink"
    if said is not None or not (row or pink or _served_at(enquiry)):
        return said
    if topic == "thermometer":
        ice = bool(topic_of(enquiry.text, "in_ice_water"))
        return _only(line, "cold" if ice else "hot")
    if topic == "power_cut":
        line = _FROM_HOUR_TO_HOUR.sub(" ", line)
    kind = "cold" if topic in COLD_TOPICS else "hot" if topic in HOT_TOPICS else "oven" if topic == "oven" else ""
    c = _only(line, kind) if kind else None
    return None if c is not None and pink and not row and c < PINK_FROM_C else c


def oven_of(enquiry: Enquiry, hours: float | None) -> float | None:
    """The oven's temperature in C; over a night a number without its letter is Fahrenheit, the slower oven."""
    said: float | None = enquiry.said("oven.temperature_c")
    if said is None:
        roasted_c = _roasted_at(clean(enquiry.line))
        return degrees_of(enquiry, "oven") if roasted_c is None else roasted_c
    bare = any(
        not found.group(2) and float(found.group(1).replace(",", ".")) == said
        for found in _NUMBER.finditer(clean(enquiry.line))
    )
    slower_c = (said - 32.0) / 1.8
    night = (hours is not None and hours >= OVERNIGHT_H) or topic_of(enquiry.line, "overnight")
    return slower_c if bare and night and slower_c >= PLAUSIBLE_C["oven"][0] else said


def roasts_slowly(enquiry: Enquiry) -> bool:
    """Whether it is roasted for hours in an oven that the rules call too slow, and the reading missed the oven."""
    oven_c = _roasted_at(clean(enquiry.line)) if enquiry.said("oven.temperature_c") is None else None
    hours = topic_of(enquiry.line, "for_hours")
    return oven_c is not None and oven_c < SLOW_C and bool(hours)


def _roasted_at(line: str) -> float | None:
    """The oven's C in "roasting the bird at 90 C for ten hours"; None where nothing is roasted at so many degrees."""
    found = _ROASTED_AT.search(line)
    if found is None:
        return None
    return _celsius(float(found.group(1)), found.group(2) or "", "oven")


def _served_at(enquiry: Enquiry) -> bool:
    """Whether a number that was taken for the oven's is that of the meat: "fresh ham at 140, slice it?"; never where
    a fan or the hour at which it went in is told: "in at 11:30, 160 fan, we ok?"."""
    if enquiry.said("oven.convection") is not None or enquiry.said("start_at") is not None:
        return False
    served = topic_of(enquiry.line, "safety_served") and not topic_of(enquiry.line, "oven")
    return bool(served) and enquiry.said("oven.temperature_c") is not None


def _only(line: str, kind: str) -> float | None:
    """The number of the line that can be such a temperature; of several the less safe, None for none."""
    low_c, high_c = PLAUSIBLE_C[kind]
    taken = [
        c
        for found in _NUMBER.finditer(line)
        if not _is_clock(line, found)
        for c in [_celsius(float(found.group(1).replace(",", ".")), found.group(2) or "", kind)]
        if low_c <= c <= high_c
    ]
    return (max(taken) if kind == "cold" else min(taken)) if taken else None


def _is_clock(line: str, found: re.Match[str]) -> bool:
    """Whether it is the hour of a clock: "since 9"."""
    whole = found.group(1).isdigit() and not found.group(2)
    return whole and float(found.group(1)) <= CLOCK_TO and bool(_HOUR_BEFORE.search(line[: found.start()]))


def _celsius(number: float, letter: str, kind: str) -> float:
    celsius = letter.startswith(("degc", "c")) or (not letter and number <= CELSIUS_TO_C[kind])
    return number if celsius else (number - 32.0) / 1.8
