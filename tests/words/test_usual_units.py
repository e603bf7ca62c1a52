"""The units of a place, by the zone in which its clock is told."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta, timezone, tzinfo
from zoneinfo import ZoneInfo

import pytest

from turnspit.words import usual_units


@pytest.mark.parametrize(
    ("zone", "units"),
    [
        ("America/New_York", "us"),
        ("US/Pacific", "us"),
        ("America/Toronto", "us"),
        ("America/Mexico_City", "metric"),
        ("Europe/London", "metric"),
        ("Australia/Sydney", "metric"),
        ("Asia/Kolkata", "metric"),
        ("Pacific/Auckland", "metric"),
        ("Pacific/Honolulu", "us"),
    ],
)
def test_a_place_has_its_units(zone: str, units: str) -> None:
    assert usual_units(datetime(2026, 11, 25, 9, tzinfo=ZoneInfo(zone))) == units


@pytest.mark.parametrize("zone", [UTC, timezone(timedelta(hours=1)), ZoneInfo("UTC"), ZoneInfo("Etc/UTC")])
def test_a_zone_that_is_no_place_has_the_us_ones(zone: tzinfo) -> None:
    assert usual_units(datetime(2026, 11, 25, 9, tzinfo=zone)) == "us"
