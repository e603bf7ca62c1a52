"""Temperatures over time as a drawing."""

import re
from datetime import UTC, datetime

from turnspit.words import Reader
from turnspit_web.course import BOTTOM, LEFT, RIGHT, TOP, Course, draw, elapsed

US, METRIC = (Reader(datetime(2026, 11, 25, tzinfo=UTC), units=units) for units in ("us", "metric"))
ROAST = {"breast": [(0.0, 4.0), (60.0, 40.0), (120.0, 75.0)], "thigh": [(0.0, 3.0), (120.0, 74.0)]}


def drawn(course: Course, reader: Reader = US) -> str:
    return str(draw(course, reader, elapsed, "What was measured"))


def test_a_line_a_place_and_a_dot_a_reading() -> None:
    drawing = drawn(Course(ROAST))
    assert drawing.count("<polyline") == 2
    assert drawing.count("<circle") == 5
    assert ">breast</text>" in drawing
    assert 'role="img" aria-label="What was measured"' in drawing


def test_a_line_is_broken_where_nothing_was_measured() -> None:
    whole, broken = drawn(Course(ROAST, gap_min=120)), drawn(Course(ROAST, gap_min=60))
    assert whole.count("<polyline") == 2
    assert broken.count("<polyline") == 1
    assert broken.count("<circle") == 5


def test_everything_lies_inside_in_either_unit() -> None:
    course = Course(ROAST, limits_c=(73.89,), crosses=((120.0, 21.0), (360.0, 5.0)))
    for reader in (US, METRIC):
        drawing = drawn(course, reader)
        places = re.findall(r'points="([^"]+)"', drawing) + [
            f"{x},{y}" for x, y in re.findall(r'<circle class="read read-\d" cx="([\d.]+)" cy="([\d.]+)"', drawing)
        ]
        for place in " ".join(places).split():
            x, y = map(float, place.split(","))
            assert LEFT <= x <= RIGHT
            assert TOP <= y <= BOTTOM
    assert ">165 °F</text>" in drawn(course)
    assert ">74 °C</text>" in drawn(course, METRIC)


def test_times_are_told_as_often_as_there_is_room() -> None:
    for last_min in (7.0, 50.0, 300.0, 4000.0, 100_000.0):
        drawing = drawn(Course({"": [(0.0, 4.0), (last_min, 60.0)]}))
        assert 2 <= len(re.findall(r'text-anchor="middle">\d+:\d\d<', drawing)) <= 7, last_min


def test_a_forecast_has_a_band_and_no_dots() -> None:
    line = [(0.0, 70.0), (60.0, 30.0)]
    drawing = drawn(Course({"": line}, (line, line), measured=False))
    assert drawing.count("<polygon") == 1
    assert "<circle" not in drawing


def test_nothing_is_drawn_of_one_moment_and_what_people_write_is_text() -> None:
    assert drawn(Course({})) == ""
    assert drawn(Course({"": [(5.0, 60.0)]})) == ""
    named = drawn(Course({"<b>": [(0.0, 4.0), (9.0, 60.0)], "thigh": [(0.0, 4.0)]}))
    assert "<b>" not in named
