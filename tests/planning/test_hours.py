from datetime import datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest

from turnspit.planning.hours import ceil_step, earlier, floor_step, in_work_hours, later, not_after, not_before

ZONE = ZoneInfo("America/New_York")
HOURS = time(6, 0), time(23, 0)


def at(hour: int, minute: int = 0, day: int = 25) -> datetime:
    return datetime(2026, 11, day, hour, minute, tzinfo=ZONE)


def test_times_are_told_in_whole_steps():
    assert floor_step(at(12, 43)) == at(12, 40)
    assert ceil_step(at(12, 41)) == at(12, 45)
    assert ceil_step(at(12, 40)) == at(12, 40)


@pytest.mark.parametrize(("hour", "inside"), [(5, False), (6, True), (23, True)])
def test_work_hours_include_their_ends(hour, inside):
    assert in_work_hours(at(hour), *HOURS) is inside


def test_a_start_in_the_night_moves_to_the_evening_before():
    assert not_after(at(3, 20), *HOURS) == at(23, day=24)
    assert not_after(at(23, 30), *HOURS) == at(23)
    assert not_after(at(9), *HOURS) == at(9)


def test_an_earliest_time_in_the_night_moves_to_the_morning():
    assert not_before(at(3, 20), *HOURS) == at(6)
    assert not_before(at(23, 30), *HOURS) == at(6, day=26)


def test_elapsed_time_is_right_across_the_end_of_summer_time():
    evening = datetime(2026, 10, 31, 20, tzinfo=ZONE)  # clocks go back an hour that night
    assert later(evening, timedelta(hours=12)) == datetime(2026, 11, 1, 7, tzinfo=ZONE)
    assert earlier(datetime(2026, 11, 1, 7, tzinfo=ZONE), timedelta(hours=12)) == evening
