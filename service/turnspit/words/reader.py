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

NOWHERE = "ZZ"
"""What the tables call a zone of no country, such as UTC."""
OLD_WORLD = frozenset(("Africa", "Asia", "Australia", "Europe"))


def usual_units(now: datetime) -> Units:
    """The units of the place whose zone `now` is told in; the US ones where the zone tells of no place."""
    zone = getattr(now.tzinfo, "key", "")
    named = get_global("zone_aliases").get(zone, zone)
    territory = get_global("zone_territories").get(named, NOWHERE)
    if territory == NOWHERE:
        return "metric" if zone.partition("/")[0] in OLD_WORLD else "us"
    return "us" if territory in BY_THE_POUND else "metric"


@dataclass(frozen=True, slots=True)
class Reader:
    """One reader. `now` is aware: clock times are told in its zone, and its date tells what "tomorrow" is."""

    now: datetime
    language: Language = "en"
    units: Units = "us"
    clock: Clock = "12h"
