"""The service in this process: a store in memory, a clock that stands."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from typing import Any

import httpx
import pytest
from anyio.from_thread import BlockingPortal, start_blocking_portal
from fastapi import FastAPI

from turnspit.api import Settings, create_app

NOW = datetime(2026, 11, 25, 14, 0, tzinfo=UTC)


class Api:
    """Sends requests to the app in the process, one after another."""

    def __init__(self, app: FastAPI, portal: BlockingPortal) -> None:
        self.app = app
        self._portal = portal

    def send(self, method: str, path: str, **options: Any) -> httpx.Response:
        return self._portal.call(self._send, method, path, options)

    async def _send(self, method: str, path: str, options: dict[str, Any]) -> httpx.Response:
        transport = httpx.ASGITransport(app=self.app, raise_app_exceptions=False)
        async with httpx.AsyncClient(transport=transport, base_url="http://turnspit") as client:
            return await client.request(method, path, **options)

    def get(self, path: str, **options: Any) -> httpx.Response:
        return self.send("GET", path, **options)

    def post(self, path: str, body: object, **options: Any) -> httpx.Response:
        return self.send("POST", path, json=body, **options)


@pytest.fixture(scope="session")
def portal() -> Iterator[BlockingPortal]:
    with start_blocking_portal() as opened:
        yield opened


@contextmanager
def opened(portal: BlockingPortal, **set_by: Any) -> Iterator[Api]:
    settings = Settings(database_url="sqlite://", timezone="America/New_York", **set_by)
    app = create_app(settings, clock=lambda: NOW)
    yield Api(app, portal)
    app.state.service.store.close()


@pytest.fixture
def api(portal: BlockingPortal) -> Iterator[Api]:
    with opened(portal) as made:
        yield made


@pytest.fixture(scope="session")
def session_api(portal: BlockingPortal) -> Iterator[Api]:
    """One service for many examples of one test."""
    with opened(portal) as made:
        yield made


@pytest.fixture
def wales_api(portal: BlockingPortal) -> Iterator[Api]:
    """The service of a kitchen in Wales."""
    with opened(portal, local_code="wales") as made:
        yield made
