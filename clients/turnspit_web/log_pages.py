"""The pages of the food-safety file: logs, labels for what is chilled, the card for the staff."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, time, timedelta
from typing import Any

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response
from pydantic import ValidationError

from turnspit.api import logs
from turnspit.api.logs import OpenLog
from turnspit.api.problems import NotKept
from turnspit.api.readers import reader_for
from turnspit.api.schemas.labels import LabelsBody, labelled
from turnspit.api.schemas.logs import LogEntryBody, NewLogBody
from turnspit.api.schemas.safety import Kitchen
from turnspit.api.service import Service
from turnspit.errors import Impossible, TurnspitError
from turnspit.safety import (
    CORRECTIVES,
    GRADES,
    INTERVAL_MIN,
    LOG_KINDS,
    Finding,
    LogVerdict,
    SheetRow,
    sheet_rows,
    staff_card,
)
from turnspit.words import Reader, say
from turnspit_web.forms import asked
from turnspit_web.log_course import log_course
from turnspit_web.log_proof import earned
from turnspit_web.problems import refused_by
from turnspit_web.rendering import (
    Filled,
    Refusal,
    Served,
    field,
    filled,
    from_elsewhere,
    missing,
    page,
    see_other,
)
from turnspit_web.view import STATIONS

router = APIRouter(include_in_schema=False, default_response_class=HTMLResponse)

KITCHENS: dict[str, Kitchen] = {"home": "home", "licensed": "licensed"}
ENTERED = ("temperature", "who", "at", "corrects", "action")
EMPTY_ROWS = 8
"""Lines left on the printed sheet to be written by hand."""


@router.get("/logs")
async def logs_page(request: Request, service: Served) -> Response:
    """The logs there are, each with how it stands, and a form to begin one."""
    return await _logs(request, service)


@router.post("/logs")
async def begin(request: Request, service: Served) -> Response:
    """Begins a log and goes to its page."""
    if from_elsewhere(request):
        return Response(status_code=403)
    form = await filled(request)
    said = {name: field(form, name) or None for name in ("kind", "item", "kitchen", "timezone")}
    try:
        body = NewLogBody.model_validate(said)
        given = await service.work(logs.begin, service, body, reader_for(request, service.now()))
    except (ValidationError, TurnspitError) as error:
        return await _logs(request, service, form, error)
    return see_other(f"/logs/{given.id}")


@router.get("/logs/{log_id}")
async def log_page(log_id: str, request: Request, service: Served) -> Response:
    """One log: how it stands, a form for the next entry, and the sheet that is printed for the file."""
    return await _log(log_id, request, service)


@router.post("/logs/{log_id}")
async def add(log_id: str, request: Request, service: Served) -> Response:
    """Adds an entry and shows the log again."""
    if from_elsewhere(request):
        return Response(status_code=403)
    form = await filled(request)
    try:
        await service.work(_add, service, log_id, form, reader_for(request, service.now()))
    except NotKept as error:
        return missing(request, service, error)
    except (ValidationError, TurnspitError) as error:
        return await _log(log_id, request, service, form, error)
    return see_other(f"/logs/{log_id}")


@router.get("/labels")
async def labels_page(request: Request, service: Served) -> Response:
    """Labels for what goes into the cold, to be printed and cut."""
    form: Filled = {name: request.query_params.getlist(name) for name in request.query_params}
    now, made, refused = service.now(), [], None
    try:
        now = service.now(None, field(form, "timezone") or None)
        if "items" in form:
            made = labelled(_labels_body(form), KITCHENS.get(field(form, "kitchen")), now).labels
    except (ValidationError, TurnspitError) as error:
        refused = refused_by(error, reader_for(request, now), ("items", "initials"))
    reader = reader_for(request, now)
    return page("labels.html", 422 if refused else 200, reader=reader, form=form, labels=made, refused=refused)


@router.get("/card")
async def card_page(request: Request, service: Served) -> Response:
    """The one-page card for teaching staff."""
    reader = reader_for(request, service.now())
    chosen = request.query_params.get("kitchen", "")
    sections = staff_card(KITCHENS.get(chosen, service.settings.kitchen))
    told = [(say(part.title, reader), [say(line, reader) for line in part.lines]) for part in sections]
    return page("card.html", reader=reader, sections=told, kitchen=chosen)


@dataclass(frozen=True, slots=True)
class Sheet:
    """A log as its page shows it."""

    id: str
    opened: OpenLog
    verdict: LogVerdict
    rows: tuple[SheetRow, ...]

    @property
    def interval_min(self) -> float:
        """Minutes allowed between two readings."""
        return float(self.opened.head["interval_min"] or INTERVAL_MIN[self.opened.log.kind])

    def late(self, row: SheetRow) -> bool:
        """Whether an entry was written down so long after it was measured that the sheet says when."""
        entry = row.entry
        return entry is not None and entry.recorded_at - entry.at > timedelta(minutes=15)


async def _log(
    log_id: str, request: Request, service: Service, form: Filled | None = None, problem: Refusal | None = None
) -> Response:
    try:
        opened = await service.work(logs.open_log, service, log_id)
    except NotKept as error:
        return missing(request, service, error)
    reader = logs.reader_at(service, opened, reader_for(request, service.now()))
    verdict = await service.work(opened.verdict, service.clock())
    proof = await service.work(earned, service, opened, verdict, asked(request), reader)
    refused = (
        refused_by(problem, reader, ENTERED, {"temperature_c": "temperature", "number": "corrects"})
        if problem
        else None
    )
    sheet = Sheet(opened.id, opened, verdict, sheet_rows(opened.log, verdict))
    return page(
        "log.html",
        422 if refused or (proof and proof.typed.problems) else 200,
        reader=reader,
        sheet=sheet,
        proof=proof,
        course=log_course(opened, reader),
        findings=[(found, say(found.seen, reader), say(found.action, reader)) for found in _to_show(verdict)],
        correctives=CORRECTIVES,
        stations=STATIONS if opened.log.kind == "roast" else (),
        empty_rows=range(EMPTY_ROWS),
        form=form or {},
        refused=refused,
    )


def _to_show(verdict: LogVerdict) -> tuple[Finding, ...]:
    """Beside a stop, nothing that would read as if one could go on."""
    kept = ("stop", "warn") if verdict.open_stops else GRADES
    return tuple(found for found in verdict.findings if found.severity in kept or found.rule == "local-codes")


async def _logs(
    request: Request, service: Service, form: Filled | None = None, error: Refusal | None = None
) -> Response:
    there_are = await service.work(logs.logs_there_are, service)
    reader = reader_for(request, service.now())
    refused = refused_by(error, reader, ("kind", "item", "kitchen")) if error else None
    return page(
        "logs.html",
        422 if refused else 200,
        reader=reader,
        logs=there_are,
        kinds=LOG_KINDS,
        form=form or {},
        refused=refused,
    )


def _add(service: Service, log_id: str, form: Filled, reader: Reader) -> None:
    now = logs.reader_at(service, logs.open_log(service, log_id), reader).now
    said: dict[str, Any] = {"who": field(form, "who"), "note": field(form, "note")}
    said |= {name: field(form, name) for name in ("station", "action") if field(form, name)}
    if field(form, "corrects"):
        said["corrects"] = int(field(form, "corrects")) if field(form, "corrects").isdecimal() else 0
    if field(form, "temperature"):
        said["temperature_c"] = _celsius(field(form, "temperature"), field(form, "degrees"))
    if field(form, "finished"):
        said["finished"] = True
    if field(form, "at"):
        said["at"] = _last(field(form, "at"), now)
    logs.add(service, log_id, LogEntryBody.model_validate(said), reader)


def _celsius(text: str, degrees: str) -> float:
    try:
        value = float(text.replace(",", "."))
    except ValueError as error:
        raise Impossible("temperature", text, "is no number", "write what the thermometer shows") from error
    return (value - 32) / 1.8 if degrees == "F" else value


def _last(text: str, now: datetime) -> datetime:
    """The last time that clock showed, today or yesterday."""
    try:
        at = datetime.combine(now.date(), time.fromisoformat(text), now.tzinfo)
    except ValueError as error:
        raise Impossible("at", text, "is no time", "write it like 18:30") from error
    return at if at <= now else at - timedelta(days=1)


def _labels_body(form: Filled) -> LabelsBody:
    items = [line.strip() for line in field(form, "items").splitlines() if line.strip()]
    if not items:
        raise Impossible("items", "", "are empty", "write one box on each line")
    storage = "freezer" if field(form, "storage") == "freezer" else "refrigerator"
    return LabelsBody.model_validate(
        {"items": [{"item": item, "storage": storage} for item in items], "initials": field(form, "initials")}
    )
