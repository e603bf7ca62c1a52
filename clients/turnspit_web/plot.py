"""The predicted temperatures as one drawing: each station's middle, the coldest one's band, the pull, the window."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from markupsafe import Markup, escape

from turnspit.words import Reader
from turnspit.words.measures import clock
from turnspit_web.view import label

WIDTH, HEIGHT = 390, 280
LEFT, RIGHT, TOP, BOTTOM = 40, 374, 18, 236
Scale = Callable[[float], float]


@dataclass(frozen=True, slots=True)
class Axes:
    """Where an hour and a temperature lie on the drawing."""

    start: datetime
    end: datetime
    low: float
    high: float
    fahrenheit: bool

    def x(self, at: datetime) -> float:
        """From the left edge, in drawing units."""
        share = (at - self.start) / (self.end - self.start)
        return LEFT + (RIGHT - LEFT) * min(1.0, max(0.0, share))

    def y(self, celsius: float) -> float:
        """From the top."""
        return BOTTOM - (BOTTOM - TOP) * (self.own(celsius) - self.low) / (self.high - self.low)

    def own(self, celsius: float) -> float:
        """In the reader's own degrees."""
        return celsius * 9 / 5 + 32 if self.fahrenheit else celsius


def plot(plan: Mapping[str, Any], reader: Reader) -> Markup:
    """The drawing as SVG, "" for a plan without a forecast. Only the classes in `page.css` give it colour."""
    points = [point for point in plan["curve"] if _stations(point)]
    if len(points) < 2:
        return Markup("")
    axes = _axes(points, plan, reader)
    parts = [
        *_grid(axes, reader),
        *_ready(plan, axes, reader),
        *_pull(plan, axes),
        *_bands(points, axes),
        *_names(points, reader),
    ]
    title = label("plot-title", reader)
    said = _said(plan, reader)
    return Markup(
        f'<svg class="plot" viewBox="0 0 {WIDTH} {HEIGHT}" role="img" aria-label="{escape(title)}. {escape(said)}">'
        f"{''.join(parts)}</svg>"
    )


def _stations(point: Mapping[str, Any]) -> list[str]:
    return [key for key in point if key.endswith("_c")]


def _axes(points: Sequence[Mapping[str, Any]], plan: Mapping[str, Any], reader: Reader) -> Axes:
    fahrenheit = reader.units == "us"
    step = 40 if fahrenheit else 20
    highest = max(point[station]["p90"] for point in points for station in _stations(point))
    highest = max(highest, plan["pull_c"] or 0.0)
    top = highest * 9 / 5 + 32 if fahrenheit else highest
    low = 0.0 if not fahrenheit else 20.0
    return Axes(
        datetime.fromisoformat(points[0]["at"]),
        datetime.fromisoformat(points[-1]["at"]),
        low,
        step * (int(top / step) + 1) if top % step else top,
        fahrenheit,
    )


def _grid(axes: Axes, reader: Reader) -> list[str]:
    parts = []
    step = 40 if axes.fahrenheit else 20
    value = 40.0 if axes.fahrenheit else 0.0
    while value <= axes.high:
        y = BOTTOM - (BOTTOM - TOP) * (value - axes.low) / (axes.high - axes.low)
        parts.append(f'<line class="grid" x1="{LEFT}" x2="{RIGHT}" y1="{y:.1f}" y2="{y:.1f}"/>')
        parts.append(f'<text class="axis" x="{LEFT - 6}" y="{y + 4:.1f}" text-anchor="end">{value:g}°</text>')
        value += step
    length = axes.end - axes.start
    every = timedelta(minutes=30 if length < timedelta(hours=2.5) else 60 if length <= timedelta(hours=6) else 120)
    at = axes.start.replace(minute=0, second=0)
    while at <= axes.end:
        if at >= axes.start:
            x = axes.x(at)
            told = clock(at, reader)
            parts.append(f'<text class="axis" x="{x:.1f}" y="{BOTTOM + 18}" text-anchor="middle">{told}</text>')
        at += every
    return parts


def _ready(plan: Mapping[str, Any], axes: Axes, reader: Reader) -> list[str]:
    if not plan["ready"]:
        return []
    left, right = (axes.x(datetime.fromisoformat(plan["ready"][key])) for key in ("p10", "p90"))
    width = max(2.0, right - left)
    middle = min(max((left + right) / 2, LEFT + 40), RIGHT - 40)
    return [
        f'<rect class="ready" x="{left:.1f}" y="{TOP}" width="{width:.1f}" height="{BOTTOM - TOP}"/>',
        f'<text class="mark" x="{middle:.1f}" y="{TOP - 5}" text-anchor="middle">'
        f"{escape(label('plot-ready', reader))}</text>",
    ]


def _pull(plan: Mapping[str, Any], axes: Axes) -> list[str]:
    if plan["pull_c"] is None:
        return []
    y = axes.y(plan["pull_c"])
    return [
        f'<line class="pull" x1="{LEFT}" x2="{RIGHT}" y1="{y:.1f}" y2="{y:.1f}"/>',
        f'<text class="mark" x="{LEFT + 4}" y="{y - 5:.1f}">{axes.own(plan["pull_c"]):.0f}°</text>',
    ]


def _bands(points: Sequence[Mapping[str, Any]], axes: Axes) -> list[str]:
    """A curve a station; the band from P10 to P90 only around the coldest, which decides (three would be mud)."""
    x = [axes.x(datetime.fromisoformat(point["at"])) for point in points]
    stations = _stations(points[0])
    coldest = min(stations, key=lambda station: sum(point[station]["p50"] for point in points))
    p10, p90 = ([axes.y(point[coldest][key]) for point in points] for key in ("p10", "p90"))
    outline = [*zip(x, p90, strict=True), *reversed(list(zip(x, p10, strict=True)))]
    parts = [f'<polygon class="band band-{stations.index(coldest)}" points="{_path(outline)}"/>']
    for number, station in enumerate(stations):
        middle = [(at, axes.y(point[station]["p50"])) for at, point in zip(x, points, strict=True)]
        parts.append(f'<polyline class="curve curve-{number}" points="{_path(middle)}"/>')
    return parts


def _names(points: Sequence[Mapping[str, Any]], reader: Reader) -> list[str]:
    """The stations by name under the drawing, each in the colour and dash of its curve."""
    parts = []
    x = float(LEFT)
    for number, station in enumerate(_stations(points[0])):
        name = label(f"station-{station.removesuffix('_c')}", reader)
        parts.append(
            f'<line class="curve curve-{number}" x1="{x}" x2="{x + 22}" y1="{HEIGHT - 10}" y2="{HEIGHT - 10}"/>'
        )
        parts.append(f'<text class="mark" x="{x + 27}" y="{HEIGHT - 6}">{escape(name)}</text>')
        x += 42 + 7.5 * len(name)
    return parts


def _path(points: Sequence[tuple[float, float]]) -> str:
    return " ".join(f"{x:.1f},{y:.1f}" for x, y in points)


def _said(plan: Mapping[str, Any], reader: Reader) -> str:
    if not plan["ready"]:
        return ""
    low, high = (datetime.fromisoformat(plan["ready"][key]) for key in ("p10", "p90"))
    return label("plot-said", reader, low=low, high=high)
