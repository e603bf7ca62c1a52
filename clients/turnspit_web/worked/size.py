"""How big a roast, or how many of which size, for the diners; with a day, what to order when."""

from __future__ import annotations

from datetime import date
from typing import Any

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response

from turnspit.api.dinners import lists_of
from turnspit.api.schemas.lists import ListsBody
from turnspit.api.schemas.sizes import SideGiven, SizeBody, sized
from turnspit.api.service import Service
from turnspit.errors import Impossible
from turnspit.heat import KINDS, roast
from turnspit.quantities import typed_kilograms, typed_whole
from turnspit.recipes import starters
from turnspit.reference import table
from turnspit.words import Reader
from turnspit.words.measures import mass, volume
from turnspit_web.forms import Field, Form, Values, form_page
from turnspit_web.rendering import Served
from turnspit_web.view import ordered

router = APIRouter(include_in_schema=False, default_response_class=HTMLResponse)


def _day(text: str) -> date:
    try:
        return date.fromisoformat(text)
    except ValueError as error:
        raise Impossible("serve_on", text, "is no day", "write it like 2026-11-26") from error


SIZED = tuple(dict.fromkeys(str(row["kind"]) for row in table("portions_roast")))
FORM = Form(
    "size",
    (
        Field("covers", typed_whole, "number", needed=True, short=True, like="14"),
        Field("children", typed_whole, "number", short=True, like="4"),
        Field("non_eaters", typed_whole, "number", short=True, like="2"),
        Field("kind", kind="choice", options=SIZED, start="turkey", told="roast-"),
        Field("leftovers", kind="tick"),
        Field("hungry", kind="tick"),
        Field("serve_on", _day, "date", like="2026-11-26"),
        Field("frozen", kind="tick"),
        Field("largest", typed_kilograms, folded=True, like="16 lb, 7 kg", called=("largest_piece_kg",)),
    ),
)


@router.get("/size")
async def size_page(request: Request, service: Served) -> Response:
    """So many of such a size, what they give, and what goes with them."""
    return await form_page(FORM, request, service, _sized)


def _sized(service: Service, values: Values, reader: Reader) -> dict[str, Any]:
    diners = {
        "covers": values["covers"],
        "children": values["children"] or 0,
        "non_eaters": values["non_eaters"] or 0,
        "kind": values["kind"] or "turkey",
        "leftovers": values["leftovers"],
        "appetite": "hungry" if values["hungry"] else "plain",
        "largest_piece_kg": values["largest"],
    }
    given = sized(SizeBody.model_validate(diners), reader)
    kind, day = diners["kind"], values["serve_on"]
    listed = kind in {each.roast for each in starters()}
    orders = None
    if day and listed:
        body = {
            "dinner": diners,
            "serve_on": day,
            "frozen_roast_kg": given.each_kg if values["frozen"] else None,
        }
        orders = ordered(lists_of(service, ListsBody.model_validate(body), reader).order or [])
    ask = {"covers": diners["covers"], "children": diners["children"], "kind": kind, "serve_on": day or ""}
    return {
        "given": given,
        "orders": orders,
        "bird": kind in KINDS and roast(kind).poultry,
        "lists": {**ask, **({"leftovers": "on"} if values["leftovers"] else {})} if listed else None,
        "amount": lambda side: _amount(side, reader),
    }


def _amount(side: SideGiven, reader: Reader) -> str:
    """A side for all, as a range where it is one."""
    told = {"l": volume, "kg": mass}.get(side.measure)
    low, high = (told(value, reader) if told else f"{value:.0f}" for value in (side.low, side.high))
    return low if low == high else f"{low} – {high}"
