"""Temperatures over time as one drawing.

Either what was measured, point by point and broken where nothing was, or a forecast with its band. Lines across are
limits, crosses the moments by which a limit must be met.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from markupsafe import Markup, escape

from turnspit.words import Reader
from turnspit.words.measures import temperature

WIDTH, HEIGHT = 390, 260
LEFT, RIGHT, TOP, BOTTOM = 40, 364, 14, 216
STEPS_MIN = (5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440, 2880)
MOST_TICKS = 6
NAMED = 4
Point = tuple[float, float]
"""Minutes and C."""


@dataclass(frozen=True, slots=True)
class Course:
    """What is drawn: `lines` by name, `band` (lower and upper) around the first, limits in C, crosses to be met."""

    lines: Mapping[str, Sequence[Point]]
    band: tuple[Sequence[Point], Sequence[Point]] | None = None
    limits_c: tuple[float, ...] = ()
    crosses: tuple[Point, ...] = ()
    gap_min: float = float("inf")
    measured: bool = True

    def points(self) -> list[Point]:
        """All there is to be seen."""
        return [point for line in (*self.lines.values(), *(self.band or ()), self.crosses) for point in line]


@dataclass(frozen=True, slots=True)
class Axes:
    """Where a minute and a temperature lie on the drawing."""

    start_min: float
    end_min: float
    low: float
    high: float
    fahrenheit: bool

    def at(self, point: Point) -> tuple[float, float]:
        """From the left and from the top, in drawing units."""
        share = (point[0] - self.start_min) / (self.end_min - self.start_min)
        own = point[1] * 1.8 + 32 if self.fahrenheit else point[1]
        return LEFT + (RIGHT - LEFT) * share, BOTTOM - (BOTTOM - TOP) * (own - self.low) / (self.high - self.low)


def draw(course: Course, reader: Reader, told: Callable[[float], str], title: str) -> Markup:
    """The drawing as SVG, `told` naming a minute below it; "" for fewer than two moments."""
    points = course.points()
    if len({minute for minute, _ in points}) < 2:
        return Markup("")
    axes = _axes(points, course, reader)
    parts = [*_grid(axes), *_times(axes, told), *_limits(course, axes, reader), *_band(course, axes)]
    for number, line in enumerate(course.lines.values()):
        parts += _line(line, min(number, NAMED - 1), course, axes)
    parts += [_cross(axes.at(point)) for point in course.crosses]
    if len(course.lines) > 1:
        parts += _names(list(course.lines))
    drawn = "".join(parts)
    return Markup(
        f'<svg class="plot" viewBox="0 0 {WIDTH} {HEIGHT}" role="img" aria-label="{escape(title)}">{drawn}</svg>'
    )


def elapsed(minute: float) -> str:
    """Hours and minutes since the start: "1:30"."""
    hours, minutes = divmod(round(minute), 60)
    return f"{hours}:{minutes:02d}"


def _axes(points: Sequence[Point], course: Course, reader: Reader) -> Axes:
    fahrenheit = reader.units == "us"
    step = 40 if fahrenheit else 20
    all_c = [c for _, c in points] + list(course.limits_c)
    own = [c * 1.8 + 32 if fahrenheit else c for c in (min(all_c), max(all_c))]
    low, high = step * (own[0] // step), step * -(-own[1] // step)
    minutes = [minute for minute, _ in points]
    return Axes(min(minutes), max(minutes), low, high if high > low else low + step, fahrenheit)


def _grid(axes: Axes) -> list[str]:
    parts, step = [], 40 if axes.fahrenheit else 20
    for value in range(int(axes.low), int(axes.high) + 1, step):
        y = BOTTOM - (BOTTOM - TOP) * (value - axes.low) / (axes.high - axes.low)
        parts.append(f'<line class="grid" x1="{LEFT}" x2="{RIGHT}" y1="{y:.1f}" y2="{y:.1f}"/>')
        parts.append(f'<text class="axis" x="{LEFT - 6}" y="{y + 4:.1f}" text-anchor="end">{value}°</text>')
    return parts


def _times(axes: Axes, told: Callable[[float], str]) -> list[str]:
    length = axes.end_min - axes.start_min
    step = next(
        (each for each in STEPS_MIN if length / each < MOST_TICKS), STEPS_MIN[-1] * (1 + int(length // 14400))
    )
    first = step * -(-axes.start_min // step)
    ticks = [first + step * number for number in range(int((axes.end_min - first) // step) + 1)]
    return [
        f'<text class="axis" x="{axes.at((tick, 0.0))[0]:.1f}" y="{BOTTOM + 18}" text-anchor="middle">'
        f"{escape(told(tick))}</text>"
        for tick in ticks
    ]


def _limits(course: Course, axes: Axes, reader: Reader) -> list[str]:
    parts = []
    for limit_c in course.limits_c:
        y = axes.at((axes.start_min, limit_c))[1]
        parts.append(f'<line class="pull" x1="{LEFT}" x2="{RIGHT}" y1="{y:.1f}" y2="{y:.1f}"/>')
        parts.append(
            f'<text class="mark" x="{RIGHT}" y="{y - 4:.1f}" text-anchor="end">'
            f"{escape(temperature(limit_c, reader, 'own'))}</text>"
        )
    return parts


def _band(course: Course, axes: Axes) -> list[str]:
    if course.band is None:
        return []
    lower, upper = ([axes.at(point) for point in edge] for edge in course.band)
    return [f'<polygon class="band band-0" points="{_path([*upper, *reversed(lower)])}"/>']


def _line(line: Sequence[Point], number: int, course: Course, axes: Axes) -> list[str]:
    """One line, broken where readings lie too far apart; each reading a dot."""
    runs: list[list[Point]] = [[line[0]]] if line else []
    for before, after in pairwise(line):
        if after[0] - before[0] > course.gap_min:
            runs.append([])
        runs[-1].append(after)
    parts = [
        f'<polyline class="curve curve-{number}" points="{_path([axes.at(point) for point in run])}"/>'
        for run in runs
        if len(run) > 1
    ]
    if course.measured:
        places = [axes.at(point) for point in line]
        parts += [f'<circle class="read read-{number}" cx="{x:.1f}" cy="{y:.1f}" r="3.2"/>' for x, y in places]
    return parts


def _cross(place: tuple[float, float]) -> str:
    x, y = place
    return f'<path class="cross" d="M{x - 5:.1f} {y - 5:.1f}l10 10m0 -10l-10 10"/>'


def _names(names: Sequence[str]) -> list[str]:
    parts, x = [], float(LEFT)
    for number, name in enumerate(names[:NAMED]):
        y = HEIGHT - 8
        parts.append(f'<line class="curve curve-{number}" x1="{x}" x2="{x + 22}" y1="{y}" y2="{y}"/>')
        parts.append(f'<text class="mark" x="{x + 27}" y="{y + 4}">{escape(name)}</text>')
        x += 42 + 7.5 * len(name)
    return parts


def _path(points: Sequence[tuple[float, float]]) -> str:
    return " ".join(f"{x:.1f},{y:.1f}" for x, y in points)
