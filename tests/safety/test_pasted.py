"""Readings typed or pasted, in the forms in which they come."""

from datetime import UTC, datetime

import pytest

from turnspit.errors import Impossible
from turnspit.safety import Log, log_csv, read_measured


def told(text: str, degrees: str = "") -> list[tuple[float, float, str]]:
    return [(one.minute, round(one.core_c, 2), one.station) for one in read_measured(text, degrees)]


@pytest.mark.parametrize(
    ("line", "given"),
    [
        ("95 150.8 F breast", (95, 66.0, "breast")),
        ("95 min, 66 C", (95, 66.0, "")),
        ("12:40 66 C inner thigh", (760, 66.0, "inner thigh")),
        ("2:10 pm; 66,5 °C", (850, 66.5, "")),
        ("12:05 am 40F", (5, 4.44, "")),
        ("0:00:30\t4C", (0.5, 4.0, "")),
    ],
)
def test_a_line_is_a_time_a_temperature_and_perhaps_a_place(line: str, given: tuple[float, float, str]) -> None:
    assert told(line) == [given]


def test_bare_numbers_take_the_degrees_of_the_thermometer() -> None:
    assert told("0 40\n\n30 151", "F") == [(0, 4.44, ""), (30, 66.11, "")]


def test_a_clock_goes_on_past_midnight_for_each_place() -> None:
    lines = "23:50 60 C thigh\n0:10 62 C thigh\n23:40 61 C breast\n0:20 63 C breast\n0:15 64 C thigh"
    assert [minute for minute, _, _ in told(lines)] == [1430, 1450, 1420, 1460, 1455]


def test_readings_out_of_order_stay_on_their_day() -> None:
    assert [minute for minute, _, _ in told("12:40 60 C\n12:30 58 C")] == [760, 750]


def test_one_column_for_each_place() -> None:
    assert told("time;breast;thigh\n10;60;58\n20;65;", "C") == [
        (10, 60.0, "breast"),
        (10, 58.0, "thigh"),
        (20, 65.0, "breast"),
    ]
    assert told("minute,C\n10,60\n", "C") == [(10, 60.0, "")]


def test_our_own_log_as_csv_is_taken_as_it_is_without_what_was_replaced() -> None:
    at = datetime(2026, 11, 25, 14, tzinfo=UTC)
    log = Log("roast", "turkey").reading(at, 60.0, "AB", station="breast")
    log = log.correct(1, 61.0, "AB", at).act("cooked_on", at, "AB")
    assert [(core_c, station) for _, core_c, station in told(log_csv(log))] == [(61.0, "breast")]


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("", "hold no reading"),
        ("hot", "hold no reading"),
        ("10 hot", "is no reading"),
        (f"10{' ' * 300}66 C", "is no reading"),
        ("10 66", "has no degrees"),
        ("25:00 66 C", "has no time"),
        ("2026-13-01T10:00 66 C", "has no time"),
        ("1 66 C\nlater 67 C", "later 67 C is no reading"),
        ("time;breast\n10;hot", "has no degrees"),
        ("time;breast\nsoon;66", "soon;66 has no time"),
    ],
)
def test_what_is_no_reading_is_refused_with_its_line(text: str, why: str) -> None:
    with pytest.raises(Impossible, match=why):
        read_measured(text)
