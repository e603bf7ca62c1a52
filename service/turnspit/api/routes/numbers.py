"""The numeric rooms without the words: forecast, chill, brine, convert, check, size."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Depends, Request

from turnspit import brine, heat, quantities
from turnspit.api.readers import reader_for
from turnspit.api.schemas.brines import BrineBody, BrineGiven
from turnspit.api.schemas.chills import ChillBody, ChillGiven
from turnspit.api.schemas.common import ReaderFields
from turnspit.api.schemas.conversions import ConvertBody, ConvertGiven
from turnspit.api.schemas.roasts import ForecastBody, ForecastGiven
from turnspit.api.schemas.safety import CheckBody, CheckGiven, checked
from turnspit.api.schemas.sizes import SizeBody, SizeGiven, sized
from turnspit.api.service import Service, service_of
from turnspit.words import Reader

router = APIRouter(tags=["numbers"])
Served = Annotated[Service, Depends(service_of)]


@router.post("/v1/roasts/forecast", response_model=ForecastGiven)
async def forecast(body: ForecastBody, request: Request, service: Served) -> ForecastGiven:
    """When a roast is ready, how far it goes on heating, and what it loses."""
    reader = _reader(request, service, body)
    return await service.work(lambda: ForecastGiven.of(heat.forecast_roast(body.case()), reader, body))


@router.post("/v1/chills", response_model=ChillGiven)
async def chill(body: ChillBody, request: Request, service: Served) -> ChillGiven:
    """How long something hot takes to be cold."""
    reader = _reader(request, service, body)
    return await service.work(lambda: ChillGiven.of(heat.forecast_chill(body.case()), reader))


@router.post("/v1/brines", response_model=BrineGiven)
async def make_brine(body: BrineBody, request: Request, service: Served) -> BrineGiven:
    """A brine of the right strength that fits the vessel, cold when the bird goes in."""
    reader = _reader(request, service, body)
    return await service.work(lambda: BrineGiven.of(brine.plan_brine(body.case()), reader, body.finished_percent))


@router.post("/v1/sizes", response_model=SizeGiven)
async def size(body: SizeBody, request: Request, service: Served) -> SizeGiven:
    """How big a roast, or how many of which size, for the diners; and the sides that go with it."""
    reader = _reader(request, service, body)
    return await service.work(sized, body, reader)


@router.post("/v1/convert", response_model=ConvertGiven)
async def convert(body: ConvertBody, request: Request, service: Served) -> ConvertGiven:
    """An amount in another unit; between mass and volume the food decides."""
    reader = _reader(request, service, body)
    given = body.value, body.unit, body.target_unit, body.item, body.region
    return await service.work(lambda: ConvertGiven.of(quantities.convert(*given), reader))


@router.post("/v1/safety/checks", response_model=CheckGiven, response_model_exclude_none=True)
async def check(body: CheckBody, request: Request, service: Served) -> CheckGiven:
    """What the published rules say to a question, a plan, a log or a cooling, and what to do now."""
    reader = reader_for(request, service.now(body.now, body.timezone), body.language, body.units, body.clock)
    return await service.work(checked, body, service.kitchen(body.kitchen), reader)


def _reader(request: Request, service: Service, body: ReaderFields) -> Reader:
    return reader_for(request, service.now(), body.language, body.units, body.clock)
