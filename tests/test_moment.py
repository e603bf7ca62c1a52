"""Now, told in the zone of the person who asks."""

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

import turnspit.moment
from turnspit.errors import Impossible
from turnspit.moment import moment, zone

CLOCK = datetime(2026, 11, 25, 14, 0, tzinfo=UTC)


@pytest.fixture(autouse=True)
def _machine_in_new_york(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(turnspit.moment, "get_localzone", lambda: ZoneInfo("America/New_York"))


def test_the_clock_is_told_in_the_zone_named() -> None:
    assert moment(None, "Europe/Madrid", CLOCK).isoformat() == "2026-11-25T15:00:00+01:00"


def test_the_clock_is_told_in_the_zone_of_the_machine() -> None:
    assert moment(None, None, CLOCK).isoformat() == "2026-11-25T09:00:00-05:00"


def test_a_time_without_an_offset_is_told_in_that_zone() -> None:
    assert moment("2026-11-25T09:00", "Europe/Madrid", CLOCK).isoformat() == "2026-11-25T09:00:00+01:00"


def test_a_time_with_the_offset_of_the_machine_takes_its_zone_and_so_its_summer_time() -> None:
    told = moment("2026-11-25T09:00:00-05:00", None, CLOCK)
    assert told.tzinfo == ZoneInfo("America/New_York")


def test_a_time_with_another_offset_keeps_it() -> None:
    told = moment("2026-11-25T09:00:00+09:00", None, CLOCK)
    assert told.utcoffset() == timedelta(hours=9)
    assert told.hour == 9


def test_home_may_be_elsewhere_than_the_machine() -> None:
    assert moment(None, None, CLOCK, home="Europe/Madrid").isoformat() == "2026-11-25T15:00:00+01:00"
    assert moment("2026-11-25T09:00:00-05:00", None, CLOCK, home="Europe/Madrid").hour == 9


def test_a_zone_named_beats_the_offset() -> None:
    assert moment("2026-11-25T09:00:00-05:00", "Asia/Tokyo", CLOCK).isoformat() == "2026-11-25T23:00:00+09:00"


@pytest.mark.parametrize("name", ["Mars/Olympus", "", "../etc/passwd", "a\0b", "America"])
def test_no_zone(name: str) -> None:
    with pytest.raises(Impossible, match="is no time zone: use an IANA name such as America/New_York"):
        zone(name)


@pytest.mark.parametrize("text", ["9 o'clock", "2026-13-01T00:00", ""])
def test_no_time(text: str) -> None:
    with pytest.raises(Impossible, match="write it like"):
        moment(text, None, CLOCK)


@pytest.mark.parametrize("text", ["0001-01-01T00:00:00Z", "9999-12-31T23:59:59-12:00"])
def test_no_year_a_zone_could_overflow_in(text: str) -> None:
    with pytest.raises(Impossible, match="check the year"):
        moment(text, "Asia/Tokyo", CLOCK)
