"""For how long something has stood, cooled, been in the brine or been kept: as it was said, or reckoned from days."""

from __future__ import annotations

import re

from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.answers.topics import named, topic_of
from turnspit.asking.clean import clean

SHORTEST_H, NIGHT_H = 0.01, 10.0
_DAYS = (
    ("monday", "lunes"),
    ("tuesday", "martes"),
    ("wednesday", "miercoles"),
    ("thursday", "jueves"),
    ("friday", "viernes"),
    ("saturday", "sabado"),
    ("sunday", "domingo"),
)
_NUMBER = {name: number for number, names in enumerate(_DAYS) for name in names}
_DAY = "|".join(_NUMBER)
_FROM = re.compile(rf"\b(?:from|since|made|cooked|roasted|del|desde)(?: on| last| el| the)? ({_DAY})|\b({_DAY})'?s\b")
_ANY = re.compile(rf"\b({_DAY})")
_COUNTED = re.compile(r"\b(\d{1,2}(?:[.,]\d)?) ?(?:hours?|hrs?|horas?)\b")
ON_THE_CLOCK = ("left_out", "cooling", "interrupted", "warm_holding", "power_cut")
"""Dangers whose hours are read here where the reading of the line passed them over."""
_NTH = re.compile(r"\b(?:day|dia) (\d{1,2})\b")


_THAWED = re.compile(
    r"\b(?:thawed|defrosted|thaw done|done thawing|finished thawing|(?:was|is|were) soft"
    r"|descongel(?:e|o|ad[oa]|amos))\b"
    rf"[^.;?!]{{0,25}}?\b({_DAY})"
)
_ROASTED = re.compile(rf"\b({_DAY}|today|tonight|tomorrow|hoy|esta noche|manana)\b")
_THAWED_AGO = re.compile(
    r"\b(?:(?:thawed|defrosted|thawing)\b[^.;?!]{0,15}?(\d+) days ago|descongel\w+ hace (\d+) dias)\b"
)


def thawed_h(enquiry: Enquiry) -> float | None:
    """The hours from the day on which it was thawed to the day of the roast ("thawed tuesday, roasting saturday")."""
    line = clean(enquiry.line)
    ago = _THAWED_AGO.search(line)
    if ago is not None:
        return 24.0 * int(ago.group(1) or ago.group(2))
    thawed = _THAWED.search(line)
    roasted = _ROASTED.search(line, thawed.end()) if thawed is not None else None
    if thawed is None or roasted is None:
        return None
    said = roasted.group(1)
    on = _NUMBER[said] if said in _NUMBER else enquiry.now.weekday() + (said in ("tomorrow", "manana"))
    return 24.0 * ((on - _NUMBER[thawed.group(1)]) % 7)


SHORT_NIGHT_H = 4.0
"""An oven that was off through a night was off for longer."""


def hours_of(enquiry: Enquiry) -> float | None:
    """The hours that were said, else those in the brine, else the days since the weekday food is from ("thursday's
    turkey on tuesday") or of the count of days ("day 5"). A blink is none: "can I heat it a second time"."""
    hours: float | None = enquiry.said("elapsed_h")
    if hours is not None and hours < SHORT_NIGHT_H and topic_of(enquiry.text, "dangers") == "left_out-oven_off":
        # "Turned it off at 10, still in there this morning": at ten in the evening.
        return hours + 12
    if hours is not None and hours >= SHORTEST_H:
        return hours
    brined: float | None = enquiry.said("brine.hours")
    if brined is not None:
        return brined
    thawed = thawed_h(enquiry)
    if thawed is not None:
        return thawed
    line = clean(enquiry.line)
    if named(enquiry.text, "dangers") in ON_THE_CLOCK:
        counted = _COUNTED.search(line)
        if counted is not None:
            return float(counted.group(1).replace(",", "."))
        if topic_of(line, "overnight"):
            return NIGHT_H
    return _kept_h(line, enquiry.now.weekday())


def _kept_h(line: str, today: int) -> float | None:
    nth = _NTH.search(line)
    if nth is not None:
        return 24.0 * int(nth.group(1))
    told = _FROM.search(line)
    if told is None:
        return None
    name = told.group(1) or told.group(2)
    others = [found for found in _ANY.findall(line) if found != name]
    until = _NUMBER[others[0]] if others else today
    return 24.0 * ((until - _NUMBER[name]) % 7 or 7)
