"""How the service itself is doing, and the published tables it rests on."""

from __future__ import annotations

from typing import Annotated, Any

from fastapi import APIRouter, Depends, Response

from turnspit import reference
from turnspit.api.problems import no_such
from turnspit.api.service import VERSION, Service, service_of

router = APIRouter()
Served = Annotated[Service, Depends(service_of)]


@router.get("/v1/reference", tags=["reference"])
async def list_tables() -> dict[str, list[str]]:
    """The published tables there are."""
    return {"tables": list(reference.names())}


@router.get("/v1/reference/{table}", tags=["reference"])
async def show_table(table: str, service: Served) -> dict[str, Any]:
    """One published table, each row with its source and how the figure was obtained."""
    if table not in reference.names():
        raise no_such("table", table, "GET /v1/reference names them all")
    found = await service.work(reference.table, table)
    return {
        "name": found.name,
        "title": found.title,
        "note": found.note,
        "rows": [dict(row) for row in found.rows],
    }


@router.get("/healthz", tags=["running"])
async def health(service: Served) -> dict[str, str]:
    """Whether the service and its database answer."""
    await service.work(service.store.answers)
    return {"status": "ok", "version": VERSION}


@router.get("/metrics", tags=["running"], response_class=Response, responses={200: {"content": {"text/plain": {}}}})
async def metrics(service: Served) -> Response:
    """What was counted since the start, in the Prometheus text format."""
    return Response(service.meters.exposition(), media_type="text/plain; version=0.0.4; charset=utf-8")
