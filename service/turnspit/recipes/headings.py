"""The lines of a recipe that are neither ingredient nor step: parts, sections, yield and times."""

from __future__ import annotations

import re
from typing import Literal

from turnspit.quantities import plain, take_range
from turnspit.recipes.recipe import Yield
from turnspit.recipes.steps import step_minutes

Part = Literal["head", "ingredients", "steps", "remarks"]
TimeKind = Literal["prep", "cook", "total"]

_PART = re.compile(
    r"^\W*(?:(?P<ingredients>(?:ingredient(?:e)?s?|you(?:'ll| will) need|what you need)"
    r"(?P<served>\s*[(:,-]?\s*(?:for|serves|makes|para)\b.{1,30})?)|"
    r"(?P<steps>method|directions?|instructions?|steps?|procedure|preparation|how to make(?: it)?|preparaci[oó]n|"
    r"elaboraci[oó]n|instrucciones|pasos|m[eé]todo)|"
    r"(?P<remarks>(?:cook'?s |chef'?s |recipe )?notes?|tips?|notas?|nutrition(?:al)?"
    r"(?: facts| info(?:rmation)?)?|equipment|tools|storage|variations))\W*$",
    re.IGNORECASE,
)
_YIELD = re.compile(
    r"^\W*(?:(?P<serves>serves|feeds|servings?|portions?|covers|for|para|raciones|porciones|comensales)|"
    r"(?P<makes>makes|yields?|rinde))\b(?:\s+(?:about|approx\.?|approximately|up to))?\s*[:\-]?\s*(?P<rest>\S.*)$",
    re.IGNORECASE,
)
_FOR = re.compile(r"^\W*(?:for|para)\b", re.IGNORECASE)
_ABOUT = re.compile(r"^(?:about|approx\.?|approximately|up to|around|enough for)\s+", re.IGNORECASE)
_SERVING = ("serving", "servings", "people", "person", "persons", "portion", "portions", "cover", "covers", "guests")
_SERVING_ES = ("raciones", "personas", "porciones", "comensales")
_TIME = re.compile(
    r"^\W*(?:(?P<prep>prep(?:aration)?(?: time)?|preparaci[oó]n)|"
    r"(?P<total>total(?: time)?|ready in|time|tiempo(?: total)?)|"
    r"(?P<cook>(?:cook(?:ing)?|roasting|baking)(?: time)?|(?:roast|bake)(?= ?:| time)(?: time)?|cocci[oó]n))"
    r"\s*[:\-]?\s+(?P<rest>(?:about\s+)?\d[^.]*)$",
    re.IGNORECASE,
)
_SECTION = re.compile(
    r"^\W*(?:(?P<colon>[^:\d]{2,50}):|(?P<use>(?:for|to)\s+(?:the\s+)?[^:.,\d]{2,40}))\W*$", re.IGNORECASE
)
_CAPITALS = re.compile(r"^[A-ZÀ-Ý][A-ZÀ-Ý '&-]{2,40}$")


def read_part(line: str) -> Part | None:
    """The part that a heading opens ("Ingredients", "Method"), or None for a line that is no heading."""
    match = _PART.match(plain(line))
    parts: tuple[Part, ...] = ("ingredients", "steps", "remarks")
    return next((part for part in parts if match and match[part]), None)


def read_heading_yield(line: str) -> Yield | None:
    """The yield that stands in a heading ("Ingredients for 4 people", "Ingredients (serves 6)"), or None."""
    match = _PART.match(plain(line))
    return read_yield(match["served"].lstrip(" (:,-")) if match and match["served"] else None


def read_section(line: str) -> str | None:
    """The name of a section within a part ("For the brine:", "GRAVY"), or None."""
    match = _SECTION.match(plain(line))
    if match:
        return (match["colon"] or match["use"]).strip()
    return line.strip() if _CAPITALS.match(line.strip()) else None


def read_yield(text: str) -> Yield | None:
    """What a recipe makes, of "Serves 6 to 8", "Makes 2 loaves", "12 rolls", "4"; None where no number stands.

    Raises Impossible for a yield of nothing.
    """
    match = _YIELD.match(plain(text))
    rest = _ABOUT.sub("", match["rest"] if match else plain(text))
    number = take_range(rest)
    if number is None:
        return None
    low, high, end = number
    counted = re.split(r"[(,;.]", rest[end:], maxsplit=1)[0].strip().casefold()
    serving = bool(match and match["serves"]) or not counted or counted.split()[0] in _SERVING + _SERVING_ES
    return Yield(low, "serving" if serving else counted, high, text.strip(" ():"))


def read_yield_line(line: str) -> Yield | None:
    """As `read_yield`, but only for a short line that says that it is a yield; "For 10 minutes" is none."""
    said = plain(line)
    counts_diners = said.rstrip(" .)").casefold().rpartition(" ")[2] in _SERVING + _SERVING_ES
    match = _YIELD.match(said)
    says_so = match is not None and (
        match["makes"] or not _FOR.match(said) or not re.search(r"[^\W\d_]{3}", match["rest"])
    )
    short = len(said) <= 60 and (says_so or (counts_diners and len(said.split()) <= 6))
    return read_yield(line) if short else None


def read_time_line(line: str) -> tuple[TimeKind, float] | None:
    """The minutes of "Prep time: 20 min", "Cook: 1 h 30 min" (of a range the longer), or None."""
    match = _TIME.match(plain(line))
    minutes = step_minutes(match["rest"]) if match else None
    if match is None or minutes is None or len(line) > 60:
        return None
    kind: TimeKind = "prep" if match["prep"] else "cook" if match["cook"] else "total"
    return kind, minutes[1]
