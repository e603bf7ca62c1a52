"""How strong and how long: the published rows, and what lies between them."""

from __future__ import annotations

import math
from dataclasses import dataclass

from turnspit.brine.cases import BrineCase
from turnspit.brine.solution import check_strength
from turnspit.errors import Impossible, OutOfRange
from turnspit.heat import roast
from turnspit.reference import Row, table

LONGEST_H = 48.0
"""USDA FSIS: overnight up to two days, refrigerated."""
LONGEST_JOINT_H = 96.0
"""Raw joints of red meat keep three to five days at 4 C (USDA FSIS)."""
SHORTEST_H = 0.5
STRONG_PERCENT = 10.0
"""From here on a brine is called very salty: half way to the strong overnight one (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Guidance:
    """A strength with the hours that belong to it; `published` is False where no table names that roast."""

    strength_percent: float
    hours_low: float
    hours_high: float
    published: bool
    source: str

    @property
    def strong(self) -> bool:
        """Whether it is to be flagged as very salty."""
        return self.strength_percent >= STRONG_PERCENT

    @property
    def usual_hours(self) -> float:
        """A time well inside the window: its geometric mean, to the hour (half hour under six)."""
        mean = math.sqrt(self.hours_low * self.hours_high)
        return float(round(mean)) if mean >= 6 else round(mean * 2) / 2


def guidance(case: BrineCase) -> Guidance:
    """Strength and hours for a wet brine: the case's own strength, else the federal one (5.48 percent).

    A wish for fewer hours than the federal brine takes gives a stronger one, up to the strong overnight 13 percent.
    Hours for another strength than the row's follow the power law through the federal 5.48 percent in 48 h and the
    trade's 13 percent in 16 h; nothing is brined longer than 48 h. Raises Impossible and OutOfRange.
    """
    check_hours(case.hours)
    row = _row(case.kind)
    strength = case.strength_percent if case.strength_percent is not None else _strength_for(row, case.hours)
    check_strength(strength)
    stretch = (row["strength_percent"] / strength) ** _exponent()
    high = min(row["hours_high"] * stretch, LONGEST_H)
    return Guidance(
        strength_percent=strength,
        hours_low=min(row["hours_low"] * stretch, high),
        hours_high=high,
        published=row["kind"] == case.kind,
        source=str(row["source"]),
    )


def check_hours(hours: float | None) -> None:
    """Refuse a time that is none (Impossible) or that no brine is kept for (OutOfRange)."""
    if hours is None:
        return
    if not hours > 0:
        raise Impossible("hours", hours, "is not above 0", "give the hours in the brine, 8 to 48 for a turkey")
    OutOfRange.check(
        "hours",
        hours,
        SHORTEST_H,
        LONGEST_JOINT_H,
        "a turkey is brined 8 to 48 hours; raw poultry does not keep longer",
    )


def longest_h(case: BrineCase) -> float:
    """How long the raw meat may be salted or brined: two days, and a joint salted dry as long as it keeps."""
    keeps = case.method == "dry" and not roast(case.kind).poultry
    return LONGEST_JOINT_H if keeps else LONGEST_H


def dry_row() -> Row:
    """The published row for dry salting, percent of the raw weight."""
    return _by_method("dry")


def _strength_for(row: Row, hours: float | None) -> float:
    federal = float(_by_method("wet")["strength_percent"])
    if hours is None:
        return federal
    low = row["hours_low"] * (row["strength_percent"] / federal) ** _exponent()
    strongest = float(_by_method("strong overnight")["strength_percent"])
    return float(min(federal * max(low / hours, 1.0) ** (1.0 / _exponent()), strongest))


def _exponent() -> float:
    """Of hours against strength, through the federal and the strong row."""
    federal, strong = _by_method("wet"), _by_method("strong overnight")
    hours = math.log(federal["hours_high"] / strong["hours_high"])
    return hours / math.log(strong["strength_percent"] / federal["strength_percent"])


def _row(kind: str) -> Row:
    rows = [row for row in table("brine_guidance") if row["method"] == "wet"]
    return next((row for row in rows if row["kind"] == kind), rows[0])


def _by_method(method: str) -> Row:
    return next(row for row in table("brine_guidance") if row["method"] == method)
