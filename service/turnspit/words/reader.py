"""Who reads: language, units and clock decide how a message is put into words."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from babel.core import get_global

Language = Literal["en", "es"]
Units = Literal["us", "metric"]
Clock = Literal["12h", "24h"]


BY_THE_POUND = frozenset(("US", "CA", "PR", "GU", "VI", "AS", "MP", "LR"))
"""Territories whose home kitchens weigh in pounds and set ovens in Fahrenheit (common practice, no source)."""

IMPERIAL = frozenset(("GB", "IE", "GG", "JE", "IM"))
"""Territories whose pint and gallon are the imperial ones (UK Weights and Measures Act 1985)."""

NOWHERE = "ZZ"
"""What the tables call a zone of no country, such as UTC."""
OLD_WORLD = frozenset(("Africa", "Asia", "Australia", "Europe"))


def usual_units(now: datetime) -> Units:
    """The units of the place whose zone `now` is told in; the US ones where the zone tells of no place."""
    here = territory(now)
    if here == NOWHERE:
        return "metric" if _zone(now).partition("/")[0] in OLD_WORLD else "us"
    return "us" if here in BY_THE_POUND else "metric"


def by_imperial_pints(now: datetime) -> bool:
    """Whether a pint is the imperial one of 568 mL in the place whose zone `now` is told in."""
    return territory(now) in IMPERIAL


def _zone(now: datetime) -> str:
    return str(getattr(now.tzinfo, "key", ""))


def territory(now: datetime) -> str:
    """The code of the territory whose zone `now` is told in ("CA"), `NOWHERE` for none."""
    zone = _zone(now)
    named = get_global("zone_aliases").get(zone, zone)
    return str(get_global("zone_territories").get(named, NOWHERE))


@dataclass(frozen=True, slots=True)
class Reader:
    """One reader. `now` is aware: clock times are told in its zone, and its date tells what "tomorrow" is."""

    now: datetime
    language: Language = "en"
    units: Units = "us"
    clock: Clock = "12h"
