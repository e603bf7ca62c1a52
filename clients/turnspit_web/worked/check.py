"""A question of safety, in a line as a cook would say it or as facts in a form: the rules, and what to do now."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, get_args

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response
from pydantic import ValidationError

from turnspit.api.readers import reader_for
from turnspit.api.routes.ask import answer
from turnspit.api.schemas.ask import AskBody
from turnspit.api.schemas.safety import CheckBody, checked
from turnspit.api.service import Service
from turnspit.errors import TurnspitError
from turnspit.quantities import typed_hours, typed_metres
from turnspit.safety import TOPICS
from turnspit.safety.question import Method, State
from turnspit.words import Reader
from turnspit_web.forms import Field, Form, Values, asked, form_page
from turnspit_web.rendering import Served, page
from turnspit_web.worked.degrees import CHOICE, celsius, degrees

router = APIRouter(include_in_schema=False, default_response_class=HTMLResponse)

SUBJECTS = (
    "turkey",
    "chicken",
    "beef",
    "veal",
    "pork",
    "lamb",
    "ham",
    "ground",
    "stuffing",
    "gravy",
    "stock",
    "leftovers",
)
STOOD = ("counter", "outdoors", "car", "garage", "refrigerator", "breast", "thigh", "wing", "stuffing", "centre")
KITCHEN = Field(
    "kitchen", kind="choice", options=("", "home", "licensed"), told="page-kitchen-", unsaid="page-kitchen-any"
)
LINE = Form("line", (Field("text", needed=True, longest=2000), KITCHEN))
"""Both stand on one page; the form begins at the topic that a line was about."""
FORM = Form(
    "check",
    (
        Field("topic", kind="choice", options=TOPICS, start="left_out"),
        Field("subject", kind="choice", options=("", *SUBJECTS), told="form-check-subject-"),
        Field("hours", typed_hours, short=True, like="3 h, 90 min", called=("elapsed_h",)),
        Field("temperature", degrees, "number", short=True, like="120 F, 50 C", called=("temperature_c",)),
        CHOICE,
        Field("state", kind="choice", options=("", *get_args(State))),
        Field("place", kind="choice", options=("", *STOOD)),
        Field("at_risk", kind="tick"),
        KITCHEN,
        Field("method", kind="choice", options=("", *get_args(Method)), folded=True),
        Field("ambient", degrees, "number", folded=True, short=True, like="95 F, 35 C", called=("ambient_c",)),
        Field("oven", degrees, "number", folded=True, short=True, like="325 F, 160 C", called=("oven_c",)),
        Field("altitude", typed_metres, folded=True, like="5000 ft, 1500 m", called=("altitude_m",)),
        Field("stuffed", kind="tick", folded=True),
        Field("whole", kind="tick", folded=True),
        Field("injected", kind="tick", folded=True),
    ),
)


@router.get("/check")
async def check_page(request: Request, service: Served) -> Response:
    """The findings with their rules, the gravest first."""
    if "text" in request.query_params:
        return await _said(request, service)
    return await form_page(FORM, request, service, _checked, line=LINE.typed({}, reader_for(request, service.now())))


async def _said(request: Request, service: Service) -> Response:
    """The answer to a line, above a form that begins at its topic."""
    reader = reader_for(request, service.now())
    line = LINE.typed(asked(request), reader)
    given: dict[str, Any] | None = None
    if not line.problems:
        try:
            given = await service.work(answer, service, AskBody.model_validate(line.values))
        except (ValidationError, TurnspitError) as error:
            line = line.refused(error)
    topic = (given or {}).get("data", {}).get("safety", {}).get("topic")
    typed = FORM.typed({}, reader)
    shown: dict[str, Any] = {
        "form": FORM,
        "typed": replace(typed, texts={**typed.texts, "topic": topic or typed.texts["topic"]}),
    }
    status = 422 if line.problems else 200
    reply = {"reply": given, "given": None} if given else None
    return page("worked/check.html", status, reader=reader, line=line, answer=reply, **shown)


def _checked(service: Service, values: Values, reader: Reader) -> dict[str, Any]:
    question = {name: values[name] for name in ("topic", "subject", "state", "place", "method")}
    question |= {name: values[name] for name in ("at_risk", "stuffed", "whole", "injected")}
    question |= {f"{name}_c": celsius(values, name, reader) for name in ("temperature", "ambient", "oven")}
    question |= {"elapsed_h": values["hours"], "altitude_m": values["altitude"]}
    body = CheckBody.model_validate({"question": question})
    return {"given": checked(body, values["kitchen"] or service.settings.kitchen, reader), "reply": None}
