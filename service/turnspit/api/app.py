"""The application: routes, limits, meters and the one error shape, put together."""

from __future__ import annotations

from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from datetime import datetime
from typing import Any

import anyio
from fastapi import FastAPI

from turnspit.api import problems
from turnspit.api.limits import BodyLimit
from turnspit.api.meters import Metering
from turnspit.api.problems import PROBLEM_RESPONSES, Problem
from turnspit.api.routes import ask, logs, numbers, plans, recipes, running
from turnspit.api.service import VERSION, Service
from turnspit.api.settings import Settings
from turnspit.asking import warm
from turnspit.moment import utc_now
from turnspit.storage import open_store

SWEEP_S = 3600


def create_app(settings: Settings | None = None, clock: Callable[[], datetime] = utc_now) -> FastAPI:
    """The service as an ASGI application. `clock` gives an aware now; only tests and demonstrations set it.

    Raises what SQLAlchemy raises where the database cannot be opened.
    """
    chosen = settings or Settings()
    service = Service(chosen, open_store(chosen.database_url), clock)
    app = FastAPI(
        title="turnspit",
        version=VERSION,
        summary="Plans a roast dinner backward from the minute it is served.",
        license_info={"name": "Apache-2.0", "identifier": "Apache-2.0"},
        lifespan=_sweeping,
        docs_url=None,  # both pages load their scripts from elsewhere; the service must work without a network
        redoc_url=None,
        responses=PROBLEM_RESPONSES,
    )
    app.state.service = service
    for routes in (ask, plans, recipes, numbers, logs, running):
        app.include_router(routes.router)
    problems.install(app)
    app.add_middleware(BodyLimit, limit_bytes=chosen.body_limit_bytes)
    app.add_middleware(Metering, meters=service.meters)
    _document_problems(app)
    return app


@asynccontextmanager
async def _sweeping(app: FastAPI) -> AsyncIterator[None]:
    service: Service = app.state.service

    async def sweep() -> None:
        while True:
            await service.work(service.sweep)
            await anyio.sleep(SWEEP_S)

    async with anyio.create_task_group() as tasks:
        tasks.start_soon(service.work, warm)
        tasks.start_soon(sweep)
        yield
        tasks.cancel_scope.cancel()
    service.store.close()


def _document_problems(app: FastAPI) -> None:
    """Name the problem shape in the OpenAPI document, in place of the framework's own for invalid bodies."""
    given = app.openapi

    def openapi() -> dict[str, Any]:
        document = given()
        schemas = document["components"]["schemas"]
        if "Problem" not in schemas:
            shape = Problem.model_json_schema(ref_template="#/components/schemas/{model}")
            schemas.update(shape.pop("$defs"))
            schemas["Problem"] = shape
            for unused in ("HTTPValidationError", "ValidationError"):
                schemas.pop(unused, None)
        return document

    app.openapi = openapi  # type: ignore[method-assign]
