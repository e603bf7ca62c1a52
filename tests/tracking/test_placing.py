import numpy as np
import pytest

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.heat import RoastCase, RoastForecast
from turnspit.spread import Spread
from turnspit.tracking import place_reading

MINUTES = np.arange(0.0, 400.0, 5.0)
READY_MIN = np.linspace(160.0, 240.0, 41)


def forecast() -> RoastForecast:
    """Members that heat in a straight line from 4 C to 74 C, each in its own time; the breast runs ten degrees ahead."""
    thigh = 4.0 + 70.0 * MINUTES[:, None] / READY_MIN
    return RoastForecast(
        case=RoastCase("turkey", 7.0),
        target_c=74.0,
        pull_c=74.0,
        ready_min=Spread.of(READY_MIN),
        ready_members_min=READY_MIN,
        deciding_station="thigh",
        history_min=MINUTES,
        history_c={"thigh": thigh, "breast": thigh + 10.0},
    )


def test_without_a_start_each_member_is_taken_from_where_it_passes_the_reading():
    placed = place_reading(forecast(), "thigh", 39.0)
    assert placed.minutes_left.p50 == pytest.approx(100.0, abs=0.5)  # half of the median member's 200 minutes
    assert placed.minutes_left.p10 < placed.minutes_left.p50 < placed.minutes_left.p90


def test_a_reading_in_another_station_still_counts_to_the_deciding_one():
    assert (
        place_reading(forecast(), "breast", 49.0).minutes_left
        == place_reading(forecast(), "thigh", 39.0).minutes_left
    )


def test_a_known_start_narrows_the_window():
    vague, sharp = (
        place_reading(forecast(), "thigh", 39.0),
        place_reading(forecast(), "thigh", 39.0, elapsed_min=90.0),
    )
    assert sharp.minutes_left.p50 == pytest.approx(90.0, abs=2.0)  # a member at half-way after 90 min is ready at 180
    assert sharp.minutes_left.p90 - sharp.minutes_left.p10 < vague.minutes_left.p90 - vague.minutes_left.p10


def test_a_colder_reading_leaves_more_time():
    left = [
        place_reading(forecast(), "thigh", c, elapsed_min=100.0).minutes_left.p50 for c in (35.0, 38.0, 41.0, 45.0)
    ]
    assert left == sorted(left, reverse=True)


def test_the_target_in_the_deciding_station_is_done_and_elsewhere_is_not():
    assert place_reading(forecast(), "thigh", 74.0).done
    assert place_reading(forecast(), "thigh", 74.0).minutes_left == Spread(0.0, 0.0, 0.0)
    elsewhere = place_reading(forecast(), "breast", 74.0)
    assert not elsewhere.done
    assert elsewhere.minutes_left.p50 > 10


def test_a_reading_nobody_expected_is_flagged_and_not_made_precise():
    placed = place_reading(forecast(), "thigh", 12.0, elapsed_min=150.0)
    assert not placed.expected
    assert placed.effective_members >= 10


def test_an_overdue_roast_that_is_still_cold_is_not_ready_in_no_time():
    late = place_reading(forecast(), "thigh", 50.0, elapsed_min=300.0)
    assert not late.expected
    assert late.minutes_left == place_reading(forecast(), "thigh", 50.0).minutes_left
    assert late.minutes_left.p10 > 50


@pytest.mark.parametrize(
    ("station", "temperature_c", "elapsed_min", "error", "text"),
    [
        ("wing", 60.0, None, Unknown, "thigh, breast"),
        ("thigh", 130.0, None, OutOfRange, "is that Fahrenheit"),
        ("thigh", float("nan"), None, OutOfRange, "temperature_c nan"),
        ("thigh", 60.0, -5.0, Impossible, "is not 0 or more"),
        ("thigh", 60.0, float("nan"), Impossible, "elapsed_min nan"),
    ],
)
def test_what_cannot_be_placed_is_refused(station, temperature_c, elapsed_min, error, text):
    with pytest.raises(error, match=text):
        place_reading(forecast(), station, temperature_c, elapsed_min)
