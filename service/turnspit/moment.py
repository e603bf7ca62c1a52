"""The one place where "now" comes in: an instant, told in the zone of the person who asks.

Everything below takes `now` as an aware datetime; only the doors (API, command line) call this with a clock.
"""

from __future__ import annotations

from datetime import UTC, datetime
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from tzlocal import get_localzone

from turnspit.errors import Impossible

EARLIEST_YEAR, LATEST_YEAR = 1970, 2200


def zone(name: str | None) -> ZoneInfo:
    """The zone of that IANA name, or this machine's own. Raises Impossible for a name that is none."""
    if name is None:
        return get_localzone()
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError) as error:
        raise Impossible("timezone", name, "is no time zone", "use an IANA name such as America/New_York") from error


def moment(at: datetime | str | None, zone_name: str | None, clock: datetime, home: str | None = None) -> datetime:
    """`at`, or else `clock`, in the zone named, or else in the zone called `home` (by default this machine's own).

    A time without an offset is taken to be told in that zone. Where no zone is named and `at` brings an offset that
    is not kept at home at that instant, the offset stays: it is the better witness of where the asker is.
    Raises Impossible for a text that is no ISO 8601 time, an unknown zone, or a year outside 1970 to 2200.
    """
    told = _read(at) if isinstance(at, str) else (at or clock)
    if not EARLIEST_YEAR <= told.year <= LATEST_YEAR:
        raise Impossible(
            "now", told.isoformat(), f"is not between {EARLIEST_YEAR} and {LATEST_YEAR}", "check the year"
        )
    here = zone(zone_name or home)
    if told.tzinfo is None:
        return told.replace(tzinfo=here)
    local = told.astimezone(here)
    foreign = zone_name is None and at is not None and local.utcoffset() != told.utcoffset()
    return told if foreign else local


def utc_now() -> datetime:
    """The machine's clock."""
    return datetime.now(UTC)


def _read(text: str) -> datetime:
    try:
        return datetime.fromisoformat(text.strip())
    except ValueError as error:
        raise Impossible("now", text, "is no time", "write it like 2026-11-25T09:00:00-05:00") from error
