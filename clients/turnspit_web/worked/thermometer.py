"""Whether the probe tells the truth: ice water and boiling water at the kitchen's altitude."""

from __future__ import annotations

from typing import Any, get_args

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response

from turnspit.api.schemas.safety import CheckBody, FindingGiven, Kitchen, checked
from turnspit.api.service import Service
from turnspit.errors import OutOfRange
from turnspit.quantities import typed_metres
from turnspit.safety import boiling_point_c, probe_error_k
from turnspit.safety.thermometer import Bath
from turnspit.words import Reader
from turnspit_web.forms import Field, Form, Values, form_page
from turnspit_web.rendering import Served
from turnspit_web.worked.degrees import CHOICE, celsius, degrees

router = APIRouter(include_in_schema=False, default_response_class=HTMLResponse)

BATHS: tuple[Bath, ...] = get_args(Bath)
READ_C = (-30.0, 130.0)
FORM = Form(
    "thermometer",
    (
        Field("ice", degrees, "number", short=True, like="32, 0", called=("ice_c",)),
        Field("boiling", degrees, "number", short=True, like="212, 100", called=("boiling_c",)),
        CHOICE,
        Field("altitude", typed_metres, like="5000 ft, 1500 m", called=("altitude_m",)),
    ),
)


@router.get("/thermometer")
async def thermometer_page(request: Request, service: Served) -> Response:
    """What boiling water should read here, and how far the probe is off."""
    return await form_page(FORM, request, service, _probed)


def _probed(service: Service, values: Values, reader: Reader) -> dict[str, Any]:
    altitude_m = values["altitude"] or 0.0
    read = {bath: celsius(values, bath, reader) for bath in BATHS}
    kitchen = service.settings.kitchen
    found = [(bath, *_judged(bath, c, altitude_m, kitchen, reader)) for bath, c in read.items() if c is not None]
    return {"boiling_c": boiling_point_c(altitude_m), "altitude_m": altitude_m, "found": found}


def _judged(
    bath: Bath, reading_c: float, altitude_m: float, kitchen: Kitchen | None, reader: Reader
) -> tuple[float, FindingGiven]:
    """How far the probe is off, and what the rule says to it."""
    OutOfRange.check(f"{bath}_c", reading_c, *READ_C, "is that Fahrenheit?")
    question = {"topic": "thermometer", "temperature_c": reading_c, "method": bath, "altitude_m": altitude_m}
    given = checked(CheckBody.model_validate({"question": question}), kitchen, reader)
    return probe_error_k(reading_c, bath, altitude_m), given.findings[0]
