"""Whether hot food will be cold in time, and how shallow it would have to be."""

from __future__ import annotations

from dataclasses import asdict, replace
from typing import Any

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response
from markupsafe import Markup

from turnspit.api.schemas.safety import CheckBody, checked
from turnspit.api.service import Service
from turnspit.errors import OutOfRange
from turnspit.heat import ChillCase, forecast_chill
from turnspit.message import Message
from turnspit.quantities import typed_kilograms_or_litres, typed_metres
from turnspit.reference import Kitchen, table
from turnspit.safety import PLACES, cooling_case, cooling_stages
from turnspit.words import Reader, say
from turnspit_web.course import Course, draw, elapsed
from turnspit_web.forms import Field, Form, Values, form_page
from turnspit_web.rendering import Served
from turnspit_web.worked.degrees import CHOICE, celsius, degrees

router = APIRouter(include_in_schema=False, default_response_class=HTMLResponse)


def _pans() -> list[str]:
    return [str(row["name"]) for row in table("pans")]


LONGEST_SHOWN = 1.6
"""Times the hours allowed: what goes on cooling after that is past mending."""
FOODS = tuple(dict.fromkeys(str(row["food"]) for row in table("chill_foods")))
FORM = Form(
    "cooling",
    (
        Field("food", kind="choice", options=FOODS, start="stock", told="form-food-"),
        Field("place", kind="choice", options=PLACES, start="refrigerator"),
        Field("depth", typed_metres, like="2 in, 5 cm", called=("depth_mm", "dims_mm")),
        Field("amount", typed_kilograms_or_litres, short=True, like="8 L, 10 lb", called=("mass_kg", "edges_m")),
        Field("container", short=True, like="GN 1/1 65 mm, 13 x 9 x 2 in", called=("pan",), known=_pans),
        Field("start", degrees, folded=True, short=True, like="160 F, 70 C", called=("from_c",)),
        Field("cold", degrees, folded=True, short=True, like="38 F, 3 C", called=("medium_c", "to_c")),
        replace(CHOICE, folded=True),
        Field(
            "kitchen",
            kind="choice",
            options=("", "home", "licensed"),
            folded=True,
            told="page-kitchen-",
            unsaid="page-kitchen-any",
        ),
    ),
)


@router.get("/cooling")
async def cooling_page(request: Request, service: Served) -> Response:
    """Will it make the two stages, and what depth would? A forecast: the page says when to measure."""
    return await form_page(FORM, request, service, _cooled)


def _cooled(service: Service, values: Values, reader: Reader) -> dict[str, Any]:
    kg, litres = values["amount"] or (None, None)
    kitchen = values["kitchen"] or service.settings.kitchen
    start_c, cold_c = celsius(values, "start", reader), celsius(values, "cold", reader)
    if cold_c is not None:
        coldest_c, limit_c = -30.0, cooling_stages(kitchen or "licensed")[2]
        OutOfRange.check("medium_c", cold_c, coldest_c, limit_c, "nothing gets colder than the place it stands in")
    case = cooling_case(
        values["food"],
        values["place"],
        depth_m=values["depth"],
        kg=kg,
        litres=litres,
        container=values["container"] or "",
        place_c=cold_c,
        **({} if start_c is None else {"from_c": start_c}),
    )
    body = CheckBody.model_validate({"cooling": {**asdict(case), "dims_mm": list(case.dims_mm)}})
    return {
        "given": checked(body, kitchen, reader),
        "depth_mm": case.dims_mm[0] if case.dims_mm else None,
        "in_ice": case.medium == "ice_bath",
        "from_c": case.from_c,
        "course": _course(case, kitchen, reader),
    }


def _course(case: ChillCase, kitchen: Kitchen | None, reader: Reader) -> Markup:
    """The forecast with its band, and where it would have to be by the end of each stage."""
    hot_c, middle_c, cold_c, first_h, total_h = cooling_stages(kitchen or "licensed")
    forecast = forecast_chill(replace(case, to_c=cold_c))
    edges = [
        [(hour * 60, c) for hour, c in zip(forecast.curve_h.tolist(), row.tolist(), strict=True)]
        for row in forecast.slowest_c
    ]
    start_min = max((minute for minute, c in edges[1] if c >= min(hot_c, case.from_c)), default=0.0)
    crosses = ((start_min + first_h * 60, middle_c), (start_min + total_h * 60, cold_c))
    end_min = max(LONGEST_SHOWN * (start_min + total_h * 60), 60.0)
    lower, middle, upper = ([point for point in edge if point[0] <= end_min] for edge in edges)
    shown = Course({"": middle}, (lower, upper), (hot_c, middle_c, cold_c), crosses, measured=False)
    return draw(shown, reader, elapsed, say(Message("form-cooling-drawn"), reader))
