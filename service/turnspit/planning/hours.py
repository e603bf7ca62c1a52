"""The clock of a working kitchen: whole minutes a cook can act on, and hours in which somebody is there."""

from __future__ import annotations

from datetime import UTC, datetime, time, timedelta

STEP_MIN = 5


def minutes(count: float) -> timedelta:
    """A span of `count` minutes."""
    return timedelta(minutes=count)


def floor_step(at: datetime, step_min: int = STEP_MIN) -> datetime:
    """The last whole step of the clock at or before `at`."""
    past = timedelta(minutes=at.minute % step_min, seconds=at.second, microseconds=at.microsecond)
    return at - past


def ceil_step(at: datetime, step_min: int = STEP_MIN) -> datetime:
    """The first whole step of the clock at or after `at`."""
    floored = floor_step(at, step_min)
    return floored if floored == at else later(floored, minutes(step_min))


def later(at: datetime, span: timedelta) -> datetime:
    """`at` plus real elapsed time, told in the same zone: right across a change of daylight-saving time."""
    return (at.astimezone(UTC) + span).astimezone(at.tzinfo)


def earlier(at: datetime, span: timedelta) -> datetime:
    """`at` less real elapsed time, told in the same zone."""
    return later(at, -span)


def in_work_hours(at: datetime, work_from: time, work_until: time) -> bool:
    """Whether somebody is at work at that local time."""
    return work_from <= at.timetz().replace(tzinfo=None) <= work_until


def not_after(latest: datetime, work_from: time, work_until: time) -> datetime:
    """The last moment at or before `latest` at which somebody is at work."""
    if in_work_hours(latest, work_from, work_until):
        return latest
    day = latest if latest.timetz().replace(tzinfo=None) > work_until else latest - timedelta(days=1)
    return day.replace(hour=work_until.hour, minute=work_until.minute, second=0, microsecond=0)


def not_before(earliest: datetime, work_from: time, work_until: time) -> datetime:
    """The first moment at or after `earliest` at which somebody is at work."""
    if in_work_hours(earliest, work_from, work_until):
        return earliest
    day = earliest if earliest.timetz().replace(tzinfo=None) < work_from else earliest + timedelta(days=1)
    return day.replace(hour=work_from.hour, minute=work_from.minute, second=0, microsecond=0)
