"""A service in this process for the Python client, and one on a socket for the command line."""

import socket
import threading
from collections.abc import Iterator
from datetime import UTC, datetime

import httpx
import pytest
import uvicorn
from fastapi import FastAPI

from turnspit.api import Settings, create_app

NOW = datetime(2026, 11, 25, 14, 0, tzinfo=UTC)


@pytest.fixture(scope="session")
def app() -> Iterator[FastAPI]:
    made = create_app(Settings(database_url="sqlite://", timezone="America/New_York"), clock=lambda: NOW)
    yield made
    made.state.service.store.close()


@pytest.fixture(scope="session")
def server(app: FastAPI) -> Iterator[str]:
    listener = socket.create_server(("127.0.0.1", 0))
    running = uvicorn.Server(uvicorn.Config(app, log_level="warning", lifespan="off"))
    thread = threading.Thread(target=running.run, kwargs={"sockets": [listener]}, daemon=True)
    thread.start()
    address = f"http://127.0.0.1:{listener.getsockname()[1]}"
    httpx.get(f"{address}/healthz", timeout=10).raise_for_status()
    yield address
    running.should_exit = True
    thread.join(10)
    listener.close()
