"""Which moment an hour is: the next such time after now, the last before it, or that of a named day."""

from __future__ import annotations

from datetime import date, datetime, time, timedelta

from turnspit.asking.readers.hours.clock import Clock

_MIDNIGHT_SUPPER = 30
# From which hour on a meal is in the morning: "dinner at 2" is 14:00, "dinner at 11" 23:00, "lunch at 11" 11:00.
_FIRST_MORNING_HOUR = {"breakfast": 1, "brunch": 8, "lunch": 10, "dinner": 12}


def at_clock(now: datetime, day: date, minutes: int) -> datetime:
    """The moment of that day in the zone of `now`; a time that a daylight-saving change skips moves on by the gap."""
    local = datetime.combine(day, time(minutes // 60, minutes % 60), tzinfo=now.tzinfo)
    return datetime.fromtimestamp(local.timestamp(), tz=now.tzinfo)


def halves(clock: Clock, half: str) -> tuple[int, ...]:
    """The minutes of the day that an hour may be: one, or in the morning and in the evening."""
    if not clock.is_open:
        return (clock.minutes(),)
    if half in ("am", "pm"):
        return (clock.minutes("am" if half == "am" else "pm"),)
    return (clock.minutes("am"), clock.minutes("pm"))


def _usual_half(clock: Clock, what: str) -> str:
    """The half of the day in which such an hour is meant, "" where either may be."""
    if what in _FIRST_MORNING_HOUR:
        if clock.hour == 12:
            return "pm"
        return "am" if clock.hour >= _FIRST_MORNING_HOUR[what] else "pm"
    if clock.hour == 12 or 1 <= clock.hour <= 4 or (what == "serve" and clock.hour <= 6):
        return "pm"
    return ""


def next_after(now: datetime, clock: Clock, day: date | None, half: str, what: str) -> datetime:
    """The next such time after now; on a named day that day's, even where it is past."""
    if clock.hourless:
        return _this_hour(now, clock) + timedelta(hours=0 if now.minute < clock.minute else 1)
    half = half or _usual_half(clock, what)
    if day is not None and clock.style == "24h" and clock.minutes() < _MIDNIGHT_SUPPER and what != "start":
        # "tonight at midnight" ends the day.
        day += timedelta(days=1)
    if day is not None:
        if not half and clock.is_open:
            half = "pm" if what == "serve" and clock.hour <= 9 else "am"
        return at_clock(now, day, halves(clock, half)[-1])
    for days in (0, 1):
        for minutes in halves(clock, half):
            found = at_clock(now, now.date() + timedelta(days=days), minutes)
            if found > now:
                return found
    return at_clock(now, now.date() + timedelta(days=1), halves(clock, half)[-1])


def last_before(now: datetime, clock: Clock, day: date | None, half: str) -> datetime:
    """The last such time up to now; on a named day that day's."""
    if clock.hourless:
        return _this_hour(now, clock) - timedelta(hours=0 if now.minute >= clock.minute else 1)
    if day is not None:
        options = [at_clock(now, day, minutes) for minutes in halves(clock, half)]
        past = [found for found in options if found <= now]
        return past[-1] if past else options[0]
    options = [
        at_clock(now, now.date() - timedelta(days=days), minutes)
        for days in (0, 1)
        for minutes in halves(clock, half)
    ]
    return max((found for found in options if found <= now), default=min(options))


def _this_hour(now: datetime, clock: Clock) -> datetime:
    return now.replace(minute=clock.minute, second=0, microsecond=0)
