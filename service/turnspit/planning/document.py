"""The timetable as JSON in one reader's words: what the API, the pages and scripts get."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime
from typing import Any
from uuid import NAMESPACE_URL, uuid5

import numpy as np

from turnspit.heat import RoastForecast
from turnspit.message import Caution, Message
from turnspit.planning.hours import later, minutes
from turnspit.planning.timetable import Task, Timetable, Way, Window
from turnspit.words import Reader, say

CURVE_STEP_MIN = 10.0


def timetable_document(timetable: Timetable, reader: Reader) -> dict[str, Any]:
    """The plan as plain JSON values: times ISO 8601 with offset, temperatures C, masses kg, texts for `reader`.

    `id` is derived from what is in it, so the same dinner asked at the same moment has the same id.
    """
    document: dict[str, Any] = {
        "serve_at": _iso(timetable.serve_at),
        "as_wished": timetable.as_wished,
        "headline": say(timetable.headline, reader),
        "roast": _roast(timetable),
        "oven_in_at": _iso(timetable.oven_in_at),
        "check_from": _iso(timetable.check_from),
        "ready": _window(timetable.ready),
        "pull_c": timetable.pull_c,
        "tasks": [_task(task, reader) for task in timetable.tasks],
        "ways": [_way(way, reader) for way in timetable.ways],
        "curve": _curve(timetable),
        "calibration": timetable.forecast.calibration if timetable.forecast else None,
        "thaw": _thaw(timetable),
        "brine": _brine(timetable),
        "assumptions": _said(timetable.assumptions, reader),
        "cautions": _cautions(timetable.cautions, reader),
        "sources": list(timetable.sources),
    }
    return {"id": str(uuid5(NAMESPACE_URL, json.dumps(document, sort_keys=True))), **document}


def _iso(at: datetime | None) -> str | None:
    return at.isoformat(timespec="seconds") if at else None


def _said(messages: Iterable[Message], reader: Reader) -> list[str]:
    return [say(message, reader) for message in messages]


def _cautions(cautions: Iterable[Caution], reader: Reader) -> list[dict[str, str]]:
    return [{"text": say(c.message, reader), "rule": c.rule, "severity": c.severity} for c in cautions]


def _window(window: Window | None) -> dict[str, str | None] | None:
    return {"p10": _iso(window.p10), "p50": _iso(window.p50), "p90": _iso(window.p90)} if window else None


def _roast(timetable: Timetable) -> dict[str, Any] | None:
    if timetable.forecast is None:
        return None
    case = timetable.forecast.case
    return {
        "kind": case.kind,
        "mass_kg": round(case.mass_kg, 3),
        "count": timetable.dinner.roast.count or 1,
        "state": case.state,
        "stuffed": case.stuffed,
        "oven_c": case.oven[0].temperature_c,
        "convection": case.oven[0].convection,
        "target_c": timetable.forecast.target_c,
    }


def _task(task: Task, asker: Reader) -> dict[str, Any]:
    # A task is read on its own day, on a wall or a screen, where the asker's "tomorrow" would be wrong.
    reader = replace(asker, now=task.start.astimezone(asker.now.tzinfo))
    return {
        "id": task.id,
        "title": say(task.title, reader),
        "why": say(task.why, reader),
        "start": _iso(task.start),
        "end": _iso(task.end),
        "place": task.place,
        "hands": task.hands,
        "slack_min": round(task.slack_min),
        "details": _said(task.details, reader),
        "cautions": _cautions(task.cautions, reader),
        "window": _window(task.window),
    }


def _way(way: Way, reader: Reader) -> dict[str, Any]:
    return {
        "id": way.id,
        "title": say(way.title, reader),
        "why": say(way.why, reader),
        "possible": way.possible,
        "serve_at": _iso(way.serve_at),
        "first_at": _iso(way.first_at),
        "oven_in_at": _iso(way.oven_in_at),
        "chosen": way.chosen,
    }


def _curve(timetable: Timetable) -> list[dict[str, Any]]:
    """The forecast thinned to a point each ten minutes, told on the clock."""
    forecast, oven_in = timetable.forecast, timetable.oven_in_at
    if forecast is None or oven_in is None:
        return []
    at_min = np.arange(0.0, float(forecast.curve_min[-1]) + 1.0, CURVE_STEP_MIN)
    stations = {station: _thinned(forecast, station, at_min) for station in forecast.curve_c}
    return [
        {
            "at": _iso(later(oven_in, minutes(minute))),
            "minute": minute,
            **{f"{station}_c": points[number] for station, points in stations.items()},
        }
        for number, minute in enumerate(at_min.tolist())
    ]


def _thinned(forecast: RoastForecast, station: str, at_min: np.ndarray[Any, Any]) -> list[dict[str, float]]:
    rows = [np.interp(at_min, forecast.curve_min, row).round(1).tolist() for row in forecast.curve_c[station]]
    return [dict(zip(("p10", "p50", "p90"), point, strict=True)) for point in zip(*rows, strict=True)]


def _thaw(timetable: Timetable) -> dict[str, Any] | None:
    thaw = timetable.thaw
    if thaw is None:
        return None
    return {
        "method": thaw.case.method,
        "model_h": thaw.model_h.document(1),
        "rule_h": list(thaw.rule_h) if thaw.rule_h else None,
        "plan_h": round(thaw.plan_h, 1),
        "surface_above_5c_h": thaw.surface_above_5c_h.document(1),
    }


def _brine(timetable: Timetable) -> dict[str, Any] | None:
    brine = timetable.brine
    if brine is None:
        return None
    amounts = (
        "strength_percent",
        "hours_low",
        "hours_high",
        "water_l",
        "salt_g",
        "sugar_g",
        "ice_kg",
        "full_weight_kg",
    )
    return {
        **{name: round(float(getattr(brine, name)), 2) for name in amounts},
        "salt_cups": [round(cups, 2) for cups in brine.salt_cups],
        "fits": brine.fits,
    }
