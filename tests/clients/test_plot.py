"""The drawing of the temperatures to expect."""

import re
from datetime import datetime, timedelta
from typing import Any

import pytest

from turnspit.words import Reader
from turnspit.words.reader import Units
from turnspit_web.plot import BOTTOM, LEFT, RIGHT, TOP, plot

START = datetime.fromisoformat("2026-11-26T12:45:00-05:00")


def plan(hours: float = 5.0, stations: tuple[str, ...] = ("breast", "thigh")) -> dict[str, Any]:
    minutes = [10 * step for step in range(int(hours * 6) + 1)]
    curve = [
        {
            "at": (START + timedelta(minutes=minute)).isoformat(),
            "minute": minute,
            **{
                f"{station}_c": {"p10": low, "p50": low + 5, "p90": low + 10}
                for number, station in enumerate(stations)
                for low in [4 + 70 * minute / minutes[-1] - 2 * number]
            },
        }
        for minute in minutes
    ]
    ready = {key: (START + timedelta(hours=at)).isoformat() for key, at in (("p10", 3), ("p50", 3.5), ("p90", 4))}
    return {"curve": curve, "pull_c": 74.0, "ready": ready}


def drawn(units: Units = "us", **options: Any) -> str:
    return str(plot(plan(**options), Reader(START, units=units)))


def test_a_curve_a_station_and_a_band_around_the_coldest() -> None:
    drawing = drawn()
    assert drawing.count("<polyline") == 2
    assert re.findall(r'class="band (band-\d)"', drawing) == ["band-1"]


def test_everything_lies_inside() -> None:
    for points in re.findall(r'points="([^"]+)"', drawn(units="metric")):
        for pair in points.split():
            x, y = map(float, pair.split(","))
            assert LEFT <= x <= RIGHT
            assert TOP <= y <= BOTTOM


@pytest.mark.parametrize(("units", "pull"), [("us", "165°"), ("metric", "74°")])
def test_degrees_are_the_readers_own(units: Units, pull: str) -> None:
    assert f">{pull}</text>" in drawn(units=units)


@pytest.mark.parametrize(("hours", "ticks"), [(1.5, 3), (5.0, 5), (12.0, 6)])
def test_the_hours_are_told_as_often_as_there_is_room(hours: float, ticks: int) -> None:
    assert len(re.findall(r'text-anchor="middle">[^<]*[ap]m<', drawn(hours=hours))) == ticks


def test_it_can_be_read_out() -> None:
    assert 'aria-label="Temperatures to expect. Ready between 3:45 pm and 4:45 pm."' in drawn()


@pytest.mark.parametrize("curve", [[], [{"at": START.isoformat(), "minute": 0}]])
def test_nothing_is_drawn_of_nothing(curve: list[dict[str, Any]]) -> None:
    assert plot({"curve": curve, "pull_c": None, "ready": None}, Reader(START)) == ""
