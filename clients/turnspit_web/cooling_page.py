"""The page that tells whether hot food will be cold in time, and how shallow it would have to be."""

from __future__ import annotations

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response
from pydantic import ValidationError

from turnspit.api.readers import reader_for
from turnspit.api.schemas.safety import CheckBody, CheckGiven, checked
from turnspit.errors import Impossible, TurnspitError, Unknown
from turnspit.quantities import convert, read_amount
from turnspit.reference import table
from turnspit.words import Reader
from turnspit_web.rendering import Filled, Served, field, page, refusal_line

router = APIRouter(include_in_schema=False, default_response_class=HTMLResponse)

PLACES = {"refrigerator": ("air", 3.0), "blast_chiller": ("air", -2.0), "ice_bath": ("ice_bath", 0.0)}
"""What it stands in, and how cold that is in C."""
BLAST_M_S = 2.5
"""Air in a blast chiller (common practice, no source)."""


@router.get("/cooling")
async def cooling_page(request: Request, service: Served) -> Response:
    """Will it make the two stages, and what depth would? A forecast: the page says when to measure."""
    form: Filled = {name: request.query_params.getlist(name) for name in request.query_params}
    reader = reader_for(request, service.now())
    given: CheckGiven | None = None
    refused, status = None, 200
    if field(form, "depth"):
        try:
            given = await service.work(_checked, form, reader)
        except (ValidationError, TurnspitError) as error:
            refused, status = refusal_line(error), 422
    return page(
        "cooling.html",
        status,
        reader=reader,
        form=form,
        foods=_foods(),
        places=tuple(PLACES),
        given=given,
        refused=refused,
    )


def _checked(form: Filled, reader: Reader) -> CheckGiven:
    place, food = field(form, "place") or "refrigerator", field(form, "food")
    if place not in PLACES:
        raise Unknown("place", place, tuple(PLACES))
    if food not in _foods():
        raise Unknown("food", food, _foods())
    medium, medium_c = PLACES[place]
    cooling = {
        "food": food,
        "shape": "slab",
        "dims_mm": [_depth_mm(field(form, "depth"))],
        "medium": medium,
        "medium_c": medium_c,
        "air_m_s": BLAST_M_S if place == "blast_chiller" else 0.0,
        "from_c": 70.0,
    }
    return checked(CheckBody.model_validate({"cooling": cooling}), None, reader)


def _foods() -> tuple[str, ...]:
    return tuple(dict.fromkeys(str(row["food"]) for row in table("chill_foods")))


def _depth_mm(text: str) -> float:
    """A depth as a cook writes it. Raises Impossible without a unit: two may be inches or centimetres."""
    amount = read_amount(text)
    if not amount.unit:
        raise Impossible("depth", text, "has no unit", "write it as 2 in or 5 cm")
    return convert(float(amount.usual), amount.unit, "cm").value * 10
