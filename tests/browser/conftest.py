"""The whole service on a socket, with a clock that hardly moves, and a real Chromium in front of it."""

import socket
import threading
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from itertools import count
from typing import Any

import httpx
import pytest
import uvicorn
from playwright.sync_api import Browser, ConsoleMessage, Page, sync_playwright

import turnspit_web
from turnspit.api import Settings, create_app

NOW = datetime(2026, 11, 25, 14, 0, tzinfo=UTC)  # nine in the morning in New York
CHROMIUM = "/usr/bin/chromium"
ARGUMENTS = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]


@pytest.fixture(scope="session")
def address() -> Iterator[str]:
    ticks = count()
    settings = Settings(database_url="sqlite://", timezone="America/New_York")
    app = create_app(settings, clock=lambda: NOW + timedelta(milliseconds=next(ticks)))
    turnspit_web.mount(app)
    listener = socket.create_server(("127.0.0.1", 0))
    running = uvicorn.Server(uvicorn.Config(app, log_level="warning", lifespan="off"))
    thread = threading.Thread(target=running.run, kwargs={"sockets": [listener]}, daemon=True)
    thread.start()
    url = f"http://127.0.0.1:{listener.getsockname()[1]}"
    httpx.get(f"{url}/healthz", timeout=10).raise_for_status()
    yield url
    running.should_exit = True
    thread.join(10)
    listener.close()
    app.state.service.store.close()


@pytest.fixture(scope="module")
def chromium() -> Iterator[Browser]:
    """A browser for one file: while it runs, its driver keeps the thread's event loop to itself."""
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=ARGUMENTS)
        yield browser
        browser.close()


def trouble(line: ConsoleMessage) -> bool:
    """Whether a line on the console is one: a form that is refused is told on its page."""
    return line.type == "error" and "status of 422" not in line.text


@pytest.fixture
def open_page(chromium: Browser, address: str) -> Iterator[Any]:
    """Opens a path in a fresh context; a script error or a request to anywhere else fails the test."""
    contexts, troubles = [], []

    def opened(path: str, width: int = 390, height: int = 844, at: str | None = None, **options: Any) -> Page:
        context = chromium.new_context(
            viewport={"width": width, "height": height},
            **{"timezone_id": "America/New_York", "locale": "en-US", **options},
        )
        contexts.append(context)
        page = context.new_page()
        page.on("pageerror", lambda error: troubles.append(f"script: {error}"))
        page.on("console", lambda line: troubles.append(line.text) if trouble(line) else None)
        page.on(
            "request", lambda sent: None if sent.url.startswith(address) else troubles.append(f"left: {sent.url}")
        )
        if at is not None:
            page.clock.install(time=at)
        page.goto(f"{address}{path}")
        return page

    yield opened
    for context in contexts:
        context.close()
    assert troubles == []
