"""The routes of the pages. Every page works without a script; scripts only make it quicker and keep the clock."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path
from typing import Annotated, Any

from fastapi import APIRouter, FastAPI, Query, Request
from fastapi.responses import HTMLResponse, Response
from pydantic import BaseModel, ValidationError
from starlette.staticfiles import StaticFiles

from turnspit.api.kept import kept_plan
from turnspit.api.problems import NotKept
from turnspit.api.readers import reader_for
from turnspit.api.routes.ask import answer
from turnspit.api.schemas.ask import AskBody
from turnspit.errors import TurnspitError
from turnspit_web import log_pages, recipe_pages
from turnspit_web.plot import plot
from turnspit_web.problems import told_problem
from turnspit_web.rendering import Served, from_elsewhere, missing, page, see_other, templates
from turnspit_web.view import (
    allergen_told,
    beside_tasks,
    clock_told,
    day_told,
    days,
    place_told,
    reader_of,
    sheet_times,
    sheet_title,
    spoken_examples,
    told,
    unknown_told,
)
from turnspit_web.worked import brine, check, convert, cooling, index, lethality, size, thermometer

WORKED = (index, size, brine, convert, check, cooling, lethality, thermometer)
FOLDER = Path(str(files("turnspit_web")))


class Asked(BaseModel):
    """What the form sends; an empty field is one that was not filled in."""

    text: str | None = None
    conversation: str = ""
    timezone: str = ""
    units: str = ""
    kitchen: str = ""

    def options(self) -> dict[str, str]:
        """What stays the same from line to line."""
        given = {"timezone": self.timezone, "units": self.units, "kitchen": self.kitchen}
        return {name: value for name, value in given.items() if value}

    def body(self) -> AskBody:
        """The ask request that this is. Raises ValidationError."""
        return AskBody.model_validate(
            {"text": self.text, "conversation": self.conversation or None, **self.options()}
        )


router = APIRouter(include_in_schema=False, default_response_class=HTMLResponse)
templates.globals.update(
    allergen_told=allergen_told,
    beside_tasks=beside_tasks,
    clock_told=clock_told,
    day_told=day_told,
    days=days,
    place_told=place_told,
    plot=plot,
    sheet_times=sheet_times,
    sheet_title=sheet_title,
    told=told,
    unknown_told=unknown_told,
)


def mount(app: FastAPI) -> None:
    """Put the pages on the service's application."""
    for routes in (router, recipe_pages.router, log_pages.router, *(each.router for each in WORKED)):
        app.include_router(routes)
    app.mount("/static", StaticFiles(directory=FOLDER / "static"), name="static")


@router.get("/")
async def ask_page(
    request: Request,
    service: Served,
    asked: Annotated[Asked, Query()],
) -> Response:
    """One box to type in and, once something is asked, the answer."""
    reader = reader_for(request, service.now())
    shown: dict[str, Any] = {"reader": reader, "asked": asked, "examples": spoken_examples(reader)}
    if asked.text is None:
        return page("ask.html", **shown, answer=None, refused=None)
    try:
        given = await service.work(answer, service, asked.body())
    except (ValidationError, TurnspitError) as error:
        return page("ask.html", 422, **shown, answer=None, refused=told_problem(error, reader))
    shown["reader"] = reader_of(given["data"], service.now(None, asked.timezone or None))
    return page("ask.html", **shown, answer=given, refused=None)


@router.get("/plans/{plan_id}")
async def plan_page(plan_id: str, request: Request, service: Served) -> Response:
    """A stored plan, reopened; printed, it is one wall sheet."""
    try:
        kept = await service.work(kept_plan, service, plan_id)
    except NotKept as error:
        return missing(request, service, error)
    return page("plan.html", plan=kept.document, reader=reader_of(kept.document, kept.kept_at))


@router.get("/display")
async def display_page(request: Request, service: Served) -> Response:
    """The kitchen display: the plan last put on it, else the one last kept."""
    shown = await service.work(service.store.shown_plan)
    reader = reader_of(shown.document, shown.kept_at) if shown else reader_for(request, service.now())
    return page("display.html", source="/v1/display", reader=reader)


@router.get("/display/{plan_id}")
async def display_of(plan_id: str, request: Request, service: Served) -> Response:
    """The kitchen display of one plan."""
    try:
        kept = await service.work(kept_plan, service, plan_id)
    except NotKept as error:
        return missing(request, service, error)
    return page("display.html", source=f"/v1/plans/{kept.id}", reader=reader_of(kept.document, kept.kept_at))


@router.post("/display/{plan_id}")
async def put_on_display(plan_id: str, request: Request, service: Served) -> Response:
    """Puts a plan on the kitchen display and goes there; only from our own page."""
    if from_elsewhere(request):
        return Response(status_code=403)
    await service.work(kept_plan, service, plan_id)
    await service.work(service.store.show_plan, plan_id, service.clock())
    return see_other("/display")
