"""The errors of the whole service, one family.

TurnspitError
├── Impossible      a value that physics, a rule or plain sense excludes (mass_kg -3, a dinner in the past)
├── OutOfRange      a value that may exist but lies outside the range a model or table was checked in
└── Unknown         a name that is not in a table (a roast, a unit, a rule), with the nearest known ones

Each carries fields; the text is made from them, and so is the problem response of the API.
"""

from __future__ import annotations

from collections.abc import Sequence


class TurnspitError(ValueError):
    """A request that cannot be met, with what to do about it.

    `name` is the field at fault, `value` what was given, `limit` the bound it breaks, `way_out` what to do.
    """

    slug = "invalid"
    title = "The request cannot be met"

    def __init__(self, name: str, value: object, limit: str, way_out: str) -> None:
        super().__init__(name, value, limit, way_out)
        self.name = name
        self.value = value
        self.limit = limit
        self.way_out = way_out

    def __str__(self) -> str:
        return f"{self.name} {_shown(self.value)} {self.limit}: {self.way_out}"


class Impossible(TurnspitError):
    """A value that cannot be: negative, zero where there must be some, or in the past."""

    slug = "impossible"
    title = "An impossible value"


class OutOfRange(TurnspitError):
    """A value outside the range in which the model or table was checked; it is refused, not extrapolated."""

    slug = "out-of-range"
    title = "A value outside the checked range"

    @classmethod
    def check(cls, name: str, value: float, low: float, high: float, way_out: str) -> None:
        """Raise unless `low <= value <= high`; a value that is not a number is refused too."""
        if not value >= low:
            raise cls(name, value, f"is below {low:g}", way_out)
        if not value <= high:
            raise cls(name, value, f"is above {high:g}", way_out)


class Unknown(TurnspitError):
    """A name that no table holds."""

    slug = "unknown"
    title = "An unknown name"

    def __init__(self, name: str, value: object, known: Sequence[str], without: str = "leave it out") -> None:
        """`without` is the way out where nothing known comes near."""
        way_out = f"use one of {', '.join(known)}" if known else without
        super().__init__(name, value, "is not known", way_out)
        self.known = tuple(known)


def _shown(value: object) -> str:
    text = f"{value:g}" if isinstance(value, float) else str(value)
    return text if len(text) <= 60 else f"{text[:57]}..."
