"""What is counted: requests and seconds by route, questions by intent, and faults that should not be."""

from __future__ import annotations

from time import perf_counter

from prometheus_client import CollectorRegistry, Counter, Histogram, ProcessCollector, generate_latest
from starlette.types import ASGIApp, Message, Receive, Scope, Send

SECONDS = (0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1.0, 2.5, 5.0)


class Meters:
    """The counters of one service, in a registry of its own so that two services in a process do not mix."""

    def __init__(self) -> None:
        self._registry = CollectorRegistry()
        ProcessCollector(registry=self._registry)
        self.requests = Counter(
            "turnspit_requests", "Requests answered.", ("method", "route", "status"), registry=self._registry
        )
        self.seconds = Histogram(
            "turnspit_request_seconds", "Seconds to answer.", ("route",), buckets=SECONDS, registry=self._registry
        )
        self.questions = Counter(
            "turnspit_questions", "Lines asked, by their first intent.", ("intent",), registry=self._registry
        )
        self.faults = Counter(
            "turnspit_faults", "Faults in the service itself; each is in the log.", registry=self._registry
        )

    def exposition(self) -> bytes:
        """All of it in the Prometheus text format."""
        return generate_latest(self._registry)


class Metering:
    """Counts and times each request by the route that took it, never by its raw path."""

    def __init__(self, app: ASGIApp, meters: Meters) -> None:
        self._app = app
        self._meters = meters

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Pass the request on and note how it went."""
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return
        status = 500
        started = perf_counter()

        async def note(message: Message) -> None:
            nonlocal status
            if message["type"] == "http.response.start":
                status = message["status"]
            await send(message)

        try:
            await self._app(scope, receive, note)
        finally:
            route = getattr(scope.get("route"), "path", "other") or "other"
            self._meters.requests.labels(_method(scope), route, str(status)).inc()
            self._meters.seconds.labels(route).observe(perf_counter() - started)


def _method(scope: Scope) -> str:
    method = str(scope["method"])
    return method if method in ("GET", "HEAD", "POST", "PUT", "DELETE", "PATCH", "OPTIONS") else "other"
