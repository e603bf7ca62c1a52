"""What a food-safety file is made of: logs, labels, the card for the staff. Nothing here can be deleted."""

from __future__ import annotations

from typing import Annotated, Any

from fastapi import APIRouter, Depends, Request, Response

from turnspit.api import logs
from turnspit.api.readers import reader_for
from turnspit.api.schemas.labels import CardGiven, LabelsBody, LabelsGiven, labelled
from turnspit.api.schemas.logs import LogEntryBody, LogGiven, LogsGiven, NewLogBody
from turnspit.api.schemas.safety import Kitchen
from turnspit.api.service import Service, service_of
from turnspit.safety import log_csv, staff_card

router = APIRouter(tags=["logs"])
Served = Annotated[Service, Depends(service_of)]

CSV = "text/csv"
AS_CSV: dict[int | str, dict[str, Any]] = {200: {"content": {CSV: {"schema": {"type": "string"}}}}}


@router.post("/v1/logs", response_model=LogGiven, status_code=201)
async def begin(body: NewLogBody, request: Request, response: Response, service: Served) -> LogGiven:
    """Begins a log of one roast or food."""
    given = await service.work(logs.begin, service, body, reader_for(request, service.now()))
    response.headers["location"] = f"/v1/logs/{given.id}"
    return given


@router.get("/v1/logs", response_model=LogsGiven)
async def show_all(service: Served) -> LogsGiven:
    """The logs last begun, each with how it stands."""
    return LogsGiven(logs=await service.work(logs.logs_there_are, service))


@router.post("/v1/logs/{log_id}/entries", response_model=LogGiven, status_code=201)
async def add(log_id: str, body: LogEntryBody, request: Request, service: Served) -> LogGiven:
    """Adds one entry; the log with its new verdict. A correction is a new entry: the old one stays to be seen."""
    reader = reader_for(request, service.now(), body.language, body.units, body.clock)
    return await service.work(logs.add, service, log_id, body, reader)


@router.get("/v1/logs/{log_id}.csv", response_class=Response, responses=AS_CSV)
async def as_csv(log_id: str, service: Served) -> Response:
    """The log as CSV (RFC 4180), in the order of recording."""
    opened = await service.work(logs.open_log, service, log_id)
    return Response(
        log_csv(opened.log),
        media_type=f"{CSV}; charset=utf-8",
        headers={"content-disposition": f'attachment; filename="log-{opened.id}.csv"', "vary": "accept"},
    )


@router.get("/v1/logs/{log_id}", response_model=LogGiven, responses=AS_CSV)
async def show(log_id: str, request: Request, response: Response, service: Served) -> Any:
    """A log with its verdict as it stands now; with `Accept: text/csv` its entries as CSV."""
    if CSV in request.headers.get("accept", ""):
        return await as_csv(log_id, service)
    response.headers["vary"] = "accept"
    return await service.work(logs.shown, service, log_id, reader_for(request, service.now()))


@router.post("/v1/labels", response_model=LabelsGiven)
async def make_labels(body: LabelsBody, service: Served) -> LabelsGiven:
    """Labels for what is chilled: item, when it was made, the last day to use it, initials."""
    return labelled(body, service.kitchen(body.kitchen), service.now(body.now, body.timezone))


@router.get("/v1/card", response_model=CardGiven)
async def card(request: Request, service: Served, kitchen: Kitchen | None = None) -> CardGiven:
    """The one-page card for teaching staff."""
    reader = reader_for(request, service.now())
    return CardGiven.of(staff_card(service.kitchen(kitchen)), reader)
