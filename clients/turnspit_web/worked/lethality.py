"""What measured temperatures earn by the published time-temperature tables; a prediction never counts."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any, get_args

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response
from markupsafe import Markup

from turnspit.api.schemas.safety import CheckBody, checked
from turnspit.api.service import Service
from turnspit.heat import KINDS, roast
from turnspit.message import Message
from turnspit.quantities import typed_hours, typed_kilograms, typed_number
from turnspit.safety import Measured, Moisture, read_measured
from turnspit.safety.proof import LONGEST_GAP_MIN
from turnspit.words import Reader, say
from turnspit_web.course import Course, draw, elapsed
from turnspit_web.forms import Field, Form, Values, form_page
from turnspit_web.rendering import Served
from turnspit_web.view import place_told
from turnspit_web.worked.degrees import CHOICE, celsius, degrees

router = APIRouter(include_in_schema=False, default_response_class=HTMLResponse)

FORM = Form(
    "lethality",
    (
        Field("readings", kind="lines", needed=True, longest=200_000, called=("core_c",)),
        CHOICE,
        Field("kind", kind="choice", options=KINDS, start="turkey", told="roast-", short=True),
        Field("mass", typed_kilograms, short=True, like="16 lb, 7 kg", called=("mass_kg",)),
        Field("oven", degrees, short=True, like="325 F, 160 C", called=("lowest_oven_c",)),
        Field("moisture", kind="choice", options=("", *get_args(Moisture))),
        Field("come_up", typed_hours, folded=True, like="3 h", called=("come_up_h",)),
        Field("fat", typed_number, "number", folded=True, short=True, like="5", called=("fat_percent",)),
        Field("error", typed_number, "number", folded=True, short=True, like="1", called=("probe_error_k",)),
    ),
    method="post",
)
CONDITIONS = Form("lethality", tuple(each for each in FORM.fields if each.name != "readings"))
"""What of it does not come from the thermometer; the page of a log asks for no more."""


@router.get("/lethality")
@router.post("/lethality")
async def lethality_page(request: Request, service: Served) -> Response:
    """Log reduction at each place and what of it is credited; sent by POST, for an address does not hold a roast."""
    return await form_page(FORM, request, service, _proved)


def _proved(service: Service, values: Values, reader: Reader) -> dict[str, Any]:
    usual = "F" if reader.units == "us" else "C"
    readings = read_measured(values["readings"], values["degrees"] or usual)
    first = min(one.minute for one in readings)
    moved = [replace(one, minute=one.minute - first) for one in readings]
    return {**proof_of(readings, values, service, reader), "course": course_of(moved, values["kind"], reader)}


def course_of(readings: Sequence[Measured], kind: str, reader: Reader) -> Markup:
    """The readings of a roast as a drawing, a line a place, broken where nothing is counted between two of them."""
    lines: dict[str, list[tuple[float, float]]] = {}
    for one in sorted(readings, key=lambda each: each.minute):
        lines.setdefault(place_told(one.station, reader), []).append((one.minute, one.core_c))
    shown = Course(lines, limits_c=(roast(kind).safe_c,), gap_min=LONGEST_GAP_MIN)
    return draw(shown, reader, elapsed, say(Message("form-lethality-drawn"), reader))


def proof_of(readings: tuple[Measured, ...], values: Values, service: Service, reader: Reader) -> dict[str, Any]:
    """The check of measured readings under the conditions of the form, as the route makes it."""
    told = {
        "kind": values["kind"],
        "readings": [{"minute": one.minute, "temperature_c": one.core_c, "station": one.station} for one in readings],
        "fat_percent": values["fat"],
        "moisture": values["moisture"],
        "mass_kg": values["mass"],
        "lowest_oven_c": celsius(values, "oven", reader),
        "come_up_h": values["come_up"],
        "probe_error_k": values["error"],
    }
    given = checked(CheckBody.model_validate({"lethality": told}), service.settings.kitchen, reader)
    return {
        "given": given,
        "proof": given.lethality,
        "read": len(readings),
        "hottest_c": max(one.core_c for one in readings),
    }
