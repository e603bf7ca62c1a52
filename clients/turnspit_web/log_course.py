"""The readings of a log as a drawing by its clock: broken at gaps, across it the limits of its kind."""

from __future__ import annotations

from datetime import datetime

from markupsafe import Markup

from turnspit.api.logs import OpenLog
from turnspit.heat import roast
from turnspit.reference import rule
from turnspit.safety import INTERVAL_MIN, cooling_stages
from turnspit.words import Reader
from turnspit_web.course import Course, draw
from turnspit_web.log_proof import kind_named
from turnspit_web.view import clock_told, label, place_told


def log_course(opened: OpenLog, reader: Reader) -> Markup:
    """All readings that stand, a line a place; "" for fewer than two moments."""
    lines: dict[str, list[tuple[float, float]]] = {}
    for one in opened.log.readings():
        if one.temperature_c is not None:
            lines.setdefault(place_told(one.station, reader), []).append((one.at.timestamp() / 60, one.temperature_c))
    gap_min = opened.head["interval_min"] or INTERVAL_MIN[opened.log.kind]
    shown = Course(lines, limits_c=_limits_c(opened, reader), gap_min=gap_min)

    def told(minute: float) -> str:
        return clock_told(datetime.fromtimestamp(minute * 60, reader.now.tzinfo), reader)

    return draw(shown, reader, told, label("log-drawn", reader))


def _limits_c(opened: OpenLog, reader: Reader) -> tuple[float, ...]:
    """Unstated, those of the stricter kitchen."""
    kind, kitchen = opened.log.kind, opened.head["kitchen"]
    if kind == "cooling":
        return cooling_stages(kitchen or "licensed")[:3]
    if kind == "hot_holding":
        return (rule("hot-hold", kitchen or "home").limits["food_min_c"],)
    if kind == "cold_holding":
        return (rule("cold-hold", kitchen or "home").limits["food_max_c"],)
    named = kind_named(opened.log.item, reader) if kind == "roast" else ""
    return (roast(named).safe_c,) if named else ()
