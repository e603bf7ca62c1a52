"""The two clients: one sends and waits, the other is awaited. Every call is built and read in `calls`.

Each method is a call of that name: same arguments, same result. Every method raises Refused where the service refuses
the request and NoService where nothing answers as this service would.
"""

from __future__ import annotations

from collections.abc import Awaitable, Callable
from typing import Generic, ParamSpec, Self, TypeVar

import httpx

from turnspit_client import calls
from turnspit_client.calls import Call
from turnspit_client.trouble import NoService

P = ParamSpec("P")
T = TypeVar("T")

LOCAL = "http://127.0.0.1:8000"
TIMEOUT_S = 30.0


class _Sent(Generic[P, T]):
    """A call as a method of `Client`."""

    def __init__(self, build: Callable[P, Call[T]]) -> None:
        self.build = build
        self.__doc__ = build.__doc__

    def __get__(self, client: Client, owner: type[Client]) -> Callable[P, T]:
        def send(*args: P.args, **kwargs: P.kwargs) -> T:
            return client.send(self.build(*args, **kwargs))

        return send


class _Awaited(Generic[P, T]):
    """A call as a method of `AsyncClient`."""

    def __init__(self, build: Callable[P, Call[T]]) -> None:
        self.build = build
        self.__doc__ = build.__doc__

    def __get__(self, client: AsyncClient, owner: type[AsyncClient]) -> Callable[P, Awaitable[T]]:
        async def send(*args: P.args, **kwargs: P.kwargs) -> T:
            return await client.send(self.build(*args, **kwargs))

        return send


class Client:
    """Asks a running service. `transport` may be any httpx transport, such as one to an app in the process."""

    def __init__(
        self, server: str = LOCAL, *, transport: httpx.BaseTransport | None = None, timeout_s: float = TIMEOUT_S
    ) -> None:
        self._http = httpx.Client(base_url=_address(server), transport=transport, timeout=timeout_s)

    ask = _Sent(calls.ask)
    make_plan = _Sent(calls.make_plan)
    show_plan = _Sent(calls.show_plan)
    plan_calendar = _Sent(calls.plan_calendar)
    delete_plan = _Sent(calls.delete_plan)
    plan_on_display = _Sent(calls.plan_on_display)
    put_on_display = _Sent(calls.put_on_display)
    forecast_roast = _Sent(calls.forecast_roast)
    forecast_chill = _Sent(calls.forecast_chill)
    make_brine = _Sent(calls.make_brine)
    convert = _Sent(calls.convert)
    size_roast = _Sent(calls.size_roast)
    keep_recipe = _Sent(calls.keep_recipe)
    show_recipes = _Sent(calls.show_recipes)
    show_recipe = _Sent(calls.show_recipe)
    recipe_text = _Sent(calls.recipe_text)
    recipe_json_ld = _Sent(calls.recipe_json_ld)
    delete_recipe = _Sent(calls.delete_recipe)
    make_lists = _Sent(calls.make_lists)
    scale_recipe = _Sent(calls.scale_recipe)
    check_safety = _Sent(calls.check_safety)
    begin_log = _Sent(calls.begin_log)
    show_logs = _Sent(calls.show_logs)
    show_log = _Sent(calls.show_log)
    log_csv = _Sent(calls.log_csv)
    add_to_log = _Sent(calls.add_to_log)
    make_labels = _Sent(calls.make_labels)
    show_card = _Sent(calls.show_card)
    show_conversation = _Sent(calls.show_conversation)
    delete_conversation = _Sent(calls.delete_conversation)
    reference_tables = _Sent(calls.reference_tables)
    reference_table = _Sent(calls.reference_table)
    health = _Sent(calls.health)
    metrics = _Sent(calls.metrics)

    def send(self, call: Call[T]) -> T:
        """Send one call and read its response."""
        try:
            response = self._http.request(call.method, call.path, json=call.body, headers=call.headers)
        except httpx.HTTPError as error:
            raise _unanswered(self._http.base_url, error) from error
        return call.read(response)

    def close(self) -> None:
        """Let go of the connection."""
        self._http.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()


class AsyncClient:
    """The same, awaited."""

    def __init__(
        self, server: str = LOCAL, *, transport: httpx.AsyncBaseTransport | None = None, timeout_s: float = TIMEOUT_S
    ) -> None:
        self._http = httpx.AsyncClient(base_url=_address(server), transport=transport, timeout=timeout_s)

    ask = _Awaited(calls.ask)
    make_plan = _Awaited(calls.make_plan)
    show_plan = _Awaited(calls.show_plan)
    plan_calendar = _Awaited(calls.plan_calendar)
    delete_plan = _Awaited(calls.delete_plan)
    plan_on_display = _Awaited(calls.plan_on_display)
    put_on_display = _Awaited(calls.put_on_display)
    forecast_roast = _Awaited(calls.forecast_roast)
    forecast_chill = _Awaited(calls.forecast_chill)
    make_brine = _Awaited(calls.make_brine)
    convert = _Awaited(calls.convert)
    size_roast = _Awaited(calls.size_roast)
    keep_recipe = _Awaited(calls.keep_recipe)
    show_recipes = _Awaited(calls.show_recipes)
    show_recipe = _Awaited(calls.show_recipe)
    recipe_text = _Awaited(calls.recipe_text)
    recipe_json_ld = _Awaited(calls.recipe_json_ld)
    delete_recipe = _Awaited(calls.delete_recipe)
    make_lists = _Awaited(calls.make_lists)
    scale_recipe = _Awaited(calls.scale_recipe)
    check_safety = _Awaited(calls.check_safety)
    begin_log = _Awaited(calls.begin_log)
    show_logs = _Awaited(calls.show_logs)
    show_log = _Awaited(calls.show_log)
    log_csv = _Awaited(calls.log_csv)
    add_to_log = _Awaited(calls.add_to_log)
    make_labels = _Awaited(calls.make_labels)
    show_card = _Awaited(calls.show_card)
    show_conversation = _Awaited(calls.show_conversation)
    delete_conversation = _Awaited(calls.delete_conversation)
    reference_tables = _Awaited(calls.reference_tables)
    reference_table = _Awaited(calls.reference_table)
    health = _Awaited(calls.health)
    metrics = _Awaited(calls.metrics)

    async def send(self, call: Call[T]) -> T:
        """Send one call and read its response."""
        try:
            response = await self._http.request(call.method, call.path, json=call.body, headers=call.headers)
        except httpx.HTTPError as error:
            raise _unanswered(self._http.base_url, error) from error
        return call.read(response)

    async def close(self) -> None:
        """Let go of the connection."""
        await self._http.aclose()

    async def __aenter__(self) -> Self:
        return self

    async def __aexit__(self, *_: object) -> None:
        await self.close()


def _address(server: str) -> httpx.URL:
    try:
        return httpx.URL(server)
    except httpx.InvalidURL as error:
        raise NoService(f"{server} is no address: write it like {LOCAL}") from error


def _unanswered(server: httpx.URL, error: httpx.HTTPError) -> NoService:
    return NoService(
        f"no answer from {server}: {str(error) or type(error).__name__}; is `turnspit serve` running there?"
    )
