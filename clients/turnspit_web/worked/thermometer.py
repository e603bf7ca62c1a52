"""Whether the probe tells the truth: ice water and boiling water at the kitchen's altitude."""

from __future__ import annotations

from typing import Any

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response

from turnspit.api.schemas.safety import CheckBody, FindingGiven, checked
from turnspit.api.service import Service
from turnspit.quantities import typed_metres
from turnspit.safety import boiling_point_c, probe_error_k
from turnspit.words import Reader
from turnspit_web.forms import Field, Form, Values, form_page
from turnspit_web.rendering import Served
from turnspit_web.worked.degrees import CHOICE, celsius, degrees

router = APIRouter(include_in_schema=False, default_response_class=HTMLResponse)

BATHS = ("ice", "boiling")
FORM = Form(
    "thermometer",
    (
        Field("ice", degrees, "number", short=True, like="32, 0"),
        Field("boiling", degrees, "number", short=True, like="212, 100"),
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
    found: list[tuple[str, float, FindingGiven]] = []
    for bath in BATHS:
        reading_c = read[bath]
        if reading_c is not None:
            question = {"topic": "thermometer", "temperature_c": reading_c, "method": bath, "altitude_m": altitude_m}
            given = checked(CheckBody.model_validate({"question": question}), service.settings.kitchen, reader)
            error_k = probe_error_k(reading_c, "ice" if bath == "ice" else "boiling", altitude_m)
            found.append((bath, error_k, given.findings[0]))
    return {"boiling_c": boiling_point_c(altitude_m), "altitude_m": altitude_m, "found": found}
