"""A brine, or dry salting, for a bird and a vessel: does it fit, how much of what, how it is cold, how long."""

from __future__ import annotations

from typing import Any

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response

from turnspit.api.schemas.brines import BrineBody, BrineGiven
from turnspit.api.service import Service
from turnspit.brine import plan_brine
from turnspit.heat import KINDS
from turnspit.quantities import typed_hours, typed_kilograms, typed_litres, typed_number, typed_whole
from turnspit.words import Reader
from turnspit_web.forms import Field, Form, Values, form_page
from turnspit_web.rendering import Served

router = APIRouter(include_in_schema=False, default_response_class=HTMLResponse)

SALTS = ("table", "flake_kosher", "coarse_kosher", "kosher", "finishing_flake")
FORM = Form(
    "brine",
    (
        Field("kind", kind="choice", options=KINDS, start="turkey", told="roast-"),
        Field("mass", typed_kilograms, needed=True, short=True, like="18 lb, 8 kg", called=("mass_kg",)),
        Field("vessel", typed_litres, short=True, like="5 gal, 20 L", called=("vessel_l",)),
        Field("method", kind="choice", options=("wet", "equilibrium", "dry"), start="wet"),
        Field("salt", kind="choice", options=SALTS, start="table", called=("salt_kind",)),
        Field("sold_as", kind="choice", options=("", "plain", "injected", "kosher")),
        Field("hours", typed_hours, folded=True, short=True, like="12 h"),
        Field("strength", typed_number, "number", folded=True, short=True, like="5.5", called=("strength_percent",)),
        Field("target", typed_number, "number", folded=True, short=True, like="1.2", called=("target_percent",)),
        Field("sugar", typed_number, "number", folded=True, short=True, like="2", called=("sugar_percent",)),
        Field("count", typed_whole, "number", folded=True, short=True, like="1"),
        Field("water", typed_litres, folded=True, short=True, like="2.5 gal, 10 L", called=("water_l",)),
    ),
)


@router.get("/brine")
async def brine_page(request: Request, service: Served) -> Response:
    """Amounts, fit, cold and hours of a brine."""
    return await form_page(FORM, request, service, _brined)


def _brined(_: Service, values: Values, reader: Reader) -> dict[str, Any]:
    body = BrineBody.model_validate(
        {
            "kind": values["kind"],
            "mass_kg": values["mass"],
            "vessel_l": values["vessel"],
            "method": values["method"],
            "salt_kind": values["salt"],
            "sold_as": values["sold_as"],
            "hours": values["hours"],
            "strength_percent": values["strength"],
            "target_percent": values["target"],
            "sugar_percent": values["sugar"],
            "count": values["count"],
            "water_l": values["water"],
        }
    )
    return {
        "given": BrineGiven.of(plan_brine(body.case()), reader),
        "dry": body.method == "dry",
        "vessel_l": body.vessel_l,
        "pieces": body.count,
    }
