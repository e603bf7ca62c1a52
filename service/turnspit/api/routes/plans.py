"""A dinner in, a timetable out, kept under an id; also as a calendar."""

from __future__ import annotations

from typing import Annotated, Any

from fastapi import APIRouter, Depends, Request, Response

from turnspit import planning
from turnspit.api.calendar import MEDIA_TYPE, calendar
from turnspit.api.kept import keep_plan, kept_plan
from turnspit.api.problems import no_such
from turnspit.api.readers import reader_for
from turnspit.api.schemas.plans import PlanBody, PlanGiven
from turnspit.api.service import Service, service_of
from turnspit.words import Reader

router = APIRouter(tags=["plans"])
Served = Annotated[Service, Depends(service_of)]


@router.post("/v1/plans", response_model=PlanGiven, status_code=201)
async def make(body: PlanBody, request: Request, response: Response, service: Served) -> dict[str, Any]:
    """Plans a dinner backward from the minute it is served."""
    now = service.now(body.now, body.timezone)
    reader = reader_for(request, now, body.language, body.units, body.clock)
    document = await service.work(_planned, service, body, reader)
    response.headers["location"] = f"/v1/plans/{document['id']}"
    return document


@router.get("/v1/plans/{plan_id}.ics", response_class=Response, responses={200: {"content": {MEDIA_TYPE: {}}}})
async def as_calendar(plan_id: str, service: Served) -> Response:
    """The plan as a calendar, one event a task, in UTC; the same task has the same UID in every version."""
    kept = await service.work(kept_plan, service, plan_id)
    return Response(
        calendar(kept),
        media_type=MEDIA_TYPE,
        headers={"content-disposition": f'attachment; filename="dinner-{plan_id}.ics"', "vary": "accept"},
    )


@router.get(
    "/v1/plans/{plan_id}",
    response_model=PlanGiven,
    responses={200: {"content": {MEDIA_TYPE: {"schema": {"type": "string"}}}}},
)
async def show(plan_id: str, request: Request, response: Response, service: Served) -> Any:
    """A plan kept before; with `Accept: text/calendar` as a calendar."""
    if MEDIA_TYPE in request.headers.get("accept", ""):
        return await as_calendar(plan_id, service)
    response.headers["vary"] = "accept"
    return (await service.work(kept_plan, service, plan_id)).document


@router.delete("/v1/plans/{plan_id}", status_code=204)
async def forget(plan_id: str, service: Served) -> Response:
    """Deletes a plan for good."""
    await service.work(kept_plan, service, plan_id)
    await service.work(service.store.delete_plan, plan_id)
    return Response(status_code=204)


@router.get("/v1/display", response_model=PlanGiven)
async def on_display(service: Served) -> Any:
    """The plan on the kitchen display: the one last put on it, else the one last kept."""
    shown = await service.work(service.store.shown_plan)
    if shown is None:
        raise no_such("display", "", "plan a dinner first")
    return shown.document


@router.put("/v1/display/{plan_id}", status_code=204)
async def put_on_display(plan_id: str, service: Served) -> Response:
    """Puts a plan on the kitchen display."""
    await service.work(kept_plan, service, plan_id)
    await service.work(service.store.show_plan, plan_id, service.clock())
    return Response(status_code=204)


def _planned(service: Service, body: PlanBody, reader: Reader) -> dict[str, Any]:
    dinner = body.dinner(reader.now, service.settings.kitchen)
    document = planning.timetable_document(planning.plan_dinner(dinner, reader.now), reader)
    worded_for = {"language": reader.language, "units": reader.units, "clock": reader.clock}
    return keep_plan(service, document, worded_for)
