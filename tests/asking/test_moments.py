"""Times in their zone: the half of the day, the next such time, days, and the hours that daylight saving skips or repeats."""

from __future__ import annotations

from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking.contract import Line
from turnspit.asking.reading import flat, read_line


def read(text: str, now: str, zone: str = "America/New_York") -> dict[str, Any]:
    at = datetime.fromisoformat(now).replace(tzinfo=ZoneInfo(zone))
    return flat(read_line(Line(text, at), None).understood)


@pytest.mark.parametrize(
    ("text", "now", "serve_at"),
    [
        ("dinner at 6", "2026-11-25T09:00", "2026-11-25T18:00:00-05:00"),
        ("dinner at 6", "2026-11-25T18:30", "2026-11-26T18:00:00-05:00"),
        ("dinner at 6", "2026-11-25T17:59", "2026-11-25T18:00:00-05:00"),
        ("dinner at 2", "2026-11-25T09:00", "2026-11-25T14:00:00-05:00"),
        ("dinner at 2", "2026-11-25T15:00", "2026-11-26T14:00:00-05:00"),
        ("dinner at 12", "2026-11-25T09:00", "2026-11-25T12:00:00-05:00"),
        ("lunch at 11", "2026-11-25T09:00", "2026-11-25T11:00:00-05:00"),
        ("lunch at 1", "2026-11-25T09:00", "2026-11-25T13:00:00-05:00"),
        ("brunch at 10", "2026-11-25T09:00", "2026-11-25T10:00:00-05:00"),
        ("breakfast at 8", "2026-11-25T09:00", "2026-11-26T08:00:00-05:00"),
        ("supper at 9", "2026-11-25T09:00", "2026-11-25T21:00:00-05:00"),
        ("ready at 10, 16 lb", "2026-11-25T09:00", "2026-11-25T10:00:00-05:00"),
        ("ready at 8, 16 lb", "2026-11-25T09:00", "2026-11-25T20:00:00-05:00"),
        ("serve at 18:00", "2026-11-25T19:00", "2026-11-26T18:00:00-05:00"),
        ("dinner tonight at 8", "2026-11-25T09:00", "2026-11-25T20:00:00-05:00"),
        ("dinner yesterday at 6", "2026-11-25T09:00", "2026-11-24T18:00:00-05:00"),
        ("dinner today at 6am", "2026-11-25T09:00", "2026-11-25T06:00:00-05:00"),
        ("dinner in 5 hours", "2026-11-25T09:00", "2026-11-25T14:00:00-05:00"),
        ("christmas dinner at 3", "2026-11-25T09:00", "2026-12-25T15:00:00-05:00"),
    ],
)
def test_serving_time(text: str, now: str, serve_at: str) -> None:
    assert read(text, now)["serve_at"] == serve_at


@pytest.mark.parametrize(
    ("text", "now", "start_at"),
    [
        ("if I put it in at 1", "2026-11-25T09:00", "2026-11-25T13:00:00-05:00"),
        ("put it in at 8 tomorrow", "2026-11-25T09:00", "2026-11-26T08:00:00-05:00"),
        ("went in at 11", "2026-11-25T14:00", "2026-11-25T11:00:00-05:00"),
        ("went in at 11", "2026-11-25T09:00", "2026-11-24T23:00:00-05:00"),
        ("went in at 7", "2026-11-25T09:00", "2026-11-25T07:00:00-05:00"),
        ("in the oven since noon", "2026-11-25T14:00", "2026-11-25T12:00:00-05:00"),
    ],
)
def test_start(text: str, now: str, start_at: str) -> None:
    assert read(text, now)["start_at"] == start_at


@pytest.mark.parametrize(
    ("text", "now", "taken_at"),
    [
        ("130 in the breast at 4:30, dinner at 6", "2026-11-25T09:00", "2026-11-25T16:30:00-05:00"),
        ("130 in the breast at 4:30", "2026-11-25T16:40", "2026-11-25T16:30:00-05:00"),
        ("130 in the breast at 11", "2026-11-25T12:40", "2026-11-25T11:00:00-05:00"),
        ("130 in the breast at 11:45 pm", "2026-11-25T00:30", "2026-11-24T23:45:00-05:00"),
    ],
)
def test_reading_time(text: str, now: str, taken_at: str) -> None:
    assert read(text, now)["reading.at"] == taken_at


@pytest.mark.parametrize(
    ("text", "now", "zone", "serve_at"),
    [
        ("dinner at 6", "2026-03-07T20:00", "America/New_York", "2026-03-08T18:00:00-04:00"),
        ("dinner at 6", "2026-10-31T20:00", "America/New_York", "2026-11-01T18:00:00-05:00"),
        ("dinner tomorrow at 2:30 am", "2026-03-07T20:00", "America/New_York", "2026-03-08T03:30:00-04:00"),
        ("dinner at 6", "2026-11-25T09:00", "Europe/Madrid", "2026-11-25T18:00:00+01:00"),
        ("dinner at 6", "2026-11-25T09:00", "Asia/Kolkata", "2026-11-25T18:00:00+05:30"),
        ("cena a las 9", "2026-11-25T09:00", "Europe/Madrid", "2026-11-25T21:00:00+01:00"),
        ("dinner tomorrow at 6", "2026-10-24T09:00", "Europe/Madrid", "2026-10-25T18:00:00+01:00"),
    ],
)
def test_zone_and_daylight_saving(text: str, now: str, zone: str, serve_at: str) -> None:
    assert read(text, now, zone)["serve_at"] == serve_at


def test_hours_until_dinner_pass_the_change_of_the_clock_by_real_hours() -> None:
    assert read("dinner in 20 hours", "2026-03-07T20:00")["serve_at"] == "2026-03-08T17:00:00-04:00"


def test_guests_are_not_dinner_where_both_are_said() -> None:
    assert read("guests arrive at 4, we eat at 6, 16 lb", "2026-11-25T09:00")["serve_at"].startswith("2026-11-25T18")


def test_clock_habit_is_seen() -> None:
    now = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))
    assert read_line(Line("dinner at 18:30", now), None).clock == "24h"
    assert read_line(Line("dinner at 6:30 pm", now), None).clock == "12h"
    assert read_line(Line("dinner at 6", now), None).clock is None


@pytest.mark.parametrize(
    ("text", "start_at"),
    [
        ("put it in at 11:30, 15 lb, 325", "2026-11-26T11:30:00-05:00"),
        ("in at 12:30, 13 lb at 325, when's it done", "2026-11-26T12:30:00-05:00"),
        ("popped the bird in at 12, 14 lb", "2026-11-26T12:00:00-05:00"),
        ("turkey in oven 11:45, 325, 16 lb", "2026-11-26T11:45:00-05:00"),
        ("in the oven at 12, want to eat at 5, 14 lb", "2026-11-26T12:00:00-05:00"),
        ("metí el pavo a las 12, 6 kilos", "2026-11-26T12:00:00-05:00"),
        ("if I put it in at 1, 14 lb turkey, when do we eat", "2026-11-27T13:00:00-05:00"),
        ("I'll put it in at 11:30, 14 lb", "2026-11-26T23:30:00-05:00"),
        ("put it in at 5, dinner at 9, 15 lb", "2026-11-26T17:00:00-05:00"),
        ("my grandmother always put hers in at six, dinner at 8, 12 lb turkey", None),
    ],
)
def test_what_is_told_in_the_afternoon_of_the_morning_has_gone_in(text: str, start_at: str | None) -> None:
    assert read(text, "2026-11-26T14:20").get("start_at") == start_at
