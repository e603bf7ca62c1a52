"""An amount in other units; between weight and volume the food decides, and its range is told."""

from __future__ import annotations

from contextlib import suppress
from typing import Any

from babel.numbers import format_decimal
from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response

from turnspit.api.schemas.conversions import ConvertBody, ConvertGiven
from turnspit.api.service import Service
from turnspit.errors import TurnspitError
from turnspit.quantities import REGIONS, Conversion, convert, food_names, typed_amount, unit, written_unit
from turnspit.words import Reader
from turnspit.words.measures import LOCALES
from turnspit_web.forms import Field, Form, Values, form_page
from turnspit_web.rendering import Served
from turnspit_web.worked.brine import SALTS

router = APIRouter(include_in_schema=False, default_response_class=HTMLResponse)

UNITS = (
    "g",
    "kg",
    "oz",
    "lb",
    "tsp",
    "tbsp",
    "cup",
    "mL",
    "L",
    "pint",
    "quart",
    "gal",
    "degF",
    "degC",
    "gas_mark",
    "cm",
    "in",
    "piece",
)
HANDY = (0.1, 5000.0)
"""Beside the unit asked for, only amounts that somebody would write so."""
FORM = Form(
    "convert",
    (
        Field(
            "amount",
            typed_amount,
            needed=True,
            short=True,
            like={"en": "2 cups, 325 F", "es": "2 tazas, 160 °C"},
            called=("value", "unit"),
        ),
        Field(
            "to",
            kind="choice",
            options=("", *UNITS),
            short=True,
            unsaid="form-convert-to-usual",
            called=("target_unit",),
        ),
        Field(
            "of",
            like={"en": "flour, table salt, butter", "es": "harina, sal de mesa, mantequilla"},
            called=("item",),
            known=food_names,
        ),
        Field("region", kind="choice", options=("", *REGIONS), folded=True),
    ),
)


@router.get("/convert")
async def convert_page(request: Request, service: Served) -> Response:
    """The amount in the unit asked for, and in the others a kitchen has."""
    return await form_page(FORM, request, service, _converted)


def _converted(_: Service, values: Values, reader: Reader) -> dict[str, Any]:
    value, name = values["amount"]
    name = name or "piece"
    asked = {"value": value, "unit": name, "item": values["of"], "region": values["region"]}
    wanted = values["to"] or _usual(name, values["of"])
    body = ConvertBody.model_validate({**asked, "target_unit": wanted})
    found = convert(body.value, body.unit, body.target_unit, body.item, body.region)
    return {
        "given": ConvertGiven.of(found, reader),
        "told": lambda number, of_unit="": _told(number, of_unit, reader),
        "asked": _told(value, unit(name).name, reader),
        "others": _others(body),
        "salts": SALTS,
    }


def _usual(name: str, item: str | None) -> str:
    """Into what an amount is usually turned, where nobody says."""
    given = unit(name)
    usual = {"mass": "cup" if item else "g", "volume": "g" if item else "mL", "temperature": "degC", "length": "cm"}
    same = {"g": "oz", "kg": "lb", "mL": "cup", "L": "quart", "degC": "degF", "cm": "in"}
    wanted = usual.get(given.dimension, "g")
    return same.get(given.name, wanted) if not item or given.dimension in ("temperature", "length") else wanted


def _others(body: ConvertBody) -> list[Conversion]:
    others = []
    for name in UNITS:
        if name in (body.target_unit, unit(body.unit).name):
            continue
        with suppress(TurnspitError):
            found = convert(body.value, body.unit, name, body.item, body.region)
            if name in ("degF", "degC", "gas_mark") or HANDY[0] <= found.value <= HANDY[1]:
                others.append(found)
    return others


def _told(number: float, name: str, reader: Reader) -> str:
    """A number to three or four figures, with its unit behind it."""
    size = abs(number)
    digits = 0 if size >= 100 else 1 if size >= 10 else 2
    shown = str(format_decimal(round(number, digits) + 0.0, format="#,##0.##", locale=LOCALES[reader.language]))
    return f"{shown} {written_unit(name, shown != '1', reader.language)}" if name else shown
