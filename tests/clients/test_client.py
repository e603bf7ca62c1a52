"""The Python client: both tempers send the same calls and read the same responses."""

import inspect
import re
from collections.abc import Callable
from typing import Any

import httpx
import pytest
from anyio.from_thread import start_blocking_portal
from fastapi import FastAPI

from turnspit_client import AsyncClient, Client, NoService, Refused, calls

Send = Callable[[str, tuple[Any, ...], dict[str, Any]], Any]


@pytest.fixture(params=["sync", "async"])
def send(request: pytest.FixtureRequest, server: str, app: FastAPI) -> Send:
    """Calls a method by name: the sync client over a socket, the async one over the app in the process."""

    def sync(name: str, args: tuple[Any, ...], kwargs: dict[str, Any]) -> Any:
        with Client(server) as client:
            return getattr(client, name)(*args, **kwargs)

    def awaited(name: str, args: tuple[Any, ...], kwargs: dict[str, Any]) -> Any:
        async def call() -> Any:
            async with AsyncClient("http://turnspit", transport=httpx.ASGITransport(app=app)) as client:
                return await getattr(client, name)(*args, **kwargs)

        with start_blocking_portal() as portal:  # a loop of its own, whatever runs in this thread
            return portal.call(call)

    return sync if request.param == "sync" else awaited


def test_both_clients_have_every_call_and_nothing_else() -> None:
    built = {name for name, member in vars(calls).items() if inspect.isfunction(member) and not name.startswith("_")}
    shared = {"send", "close"}
    for client in (Client, AsyncClient):
        offered = {name for name in vars(client) if not name.startswith("_")} - shared
        assert offered == built - {"dataclass", "field", "quote"}


def test_there_is_a_call_for_every_route(server: str) -> None:
    paths = httpx.get(f"{server}/openapi.json").json()["paths"]
    routes = {(method.upper(), re.sub(r"{\w+}", "X", path)) for path, methods in paths.items() for method in methods}
    called = set()
    for name, build in vars(calls).items():
        if inspect.isfunction(build) and build.__module__ == calls.__name__ and not name.startswith("_"):
            needed = [
                "X" for one in inspect.signature(build).parameters.values() if one.default is inspect.Parameter.empty
            ]
            call = build(*needed)
            called.add((call.method, call.path))
            if "accept" in call.headers:  # the same by its address alone, for a link
                called |= {(call.method, f"{call.path}.{ending}") for ending in ("ics", "csv")}
    assert routes - called == set()
    assert {(method, path) for method, path in called if path.rpartition(".")[2] not in ("ics", "csv")} <= routes


def test_a_plan_goes_to_the_display_and_is_deleted(send: Send, app: FastAPI) -> None:
    service = app.state.service
    service.store.keep_plan("shown", {"id": "shown", "tasks": []}, service.clock(), service.clock())
    assert send("put_on_display", ("shown",), {}) is None
    assert service.store.shown_plan().id == "shown"
    assert send("delete_plan", ("shown",), {}) is None
    with pytest.raises(Refused):
        send("show_plan", ("shown",), {})


def test_how_the_service_is_doing_and_what_it_rests_on(send: Send) -> None:
    assert send("health", (), {})["status"] == "ok"
    assert "turnspit" in send("metrics", (), {})
    tables = send("reference_tables", (), {})["tables"]
    assert send("reference_table", (tables[0],), {})["name"] == tables[0]


def test_measured_readings_are_checked(send: Send) -> None:
    readings = [{"minute": at, "temperature_c": c} for at, c in ((0, 4), (60, 60), (70, 75), (80, 75))]
    proof = send("check_safety", ({"lethality": {"readings": readings}},), {})["lethality"]
    assert proof["log10"] > 0
    assert proof["credited_log10"] == 0


def test_convert(send: Send) -> None:
    amount = send("convert", (1, "lb", "g"), {})
    assert amount["value"] == pytest.approx(453.59237)
    assert amount["exact"] is True
    assert send("convert", (1, "cup", "mL", None, "AU"), {})["value"] == pytest.approx(250)


def test_forecast(send: Send) -> None:
    forecast = send("forecast_roast", ({"roast": {"kind": "turkey", "mass_kg": 7.257}, "members": 32},), {})
    assert forecast["ready_min"]["p10"] < forecast["ready_min"]["p50"] < forecast["ready_min"]["p90"]


def test_a_refusal_carries_the_problem(send: Send) -> None:
    with pytest.raises(Refused, match="furlongs is not known") as caught:
        send("convert", (1, "furlongs", "g"), {})
    assert caught.value.status == 422
    assert caught.value.problem["name"] == "unit"


def test_an_id_with_odd_letters_is_one_part_of_the_path(send: Send) -> None:
    with pytest.raises(Refused) as caught:
        send("show_plan", ("../conversations/x?y",), {})
    assert caught.value.status == 404


def test_a_recipe_is_kept_read_back_scaled_and_deleted(send: Send) -> None:
    text = "Herb butter\nServes 4\n\nIngredients\n1 cup butter\n\nMethod\n1. Mix."
    kept = send("keep_recipe", (text,), {})
    recipe_id = kept["id"]
    assert send("show_recipe", (recipe_id,), {}) == kept
    assert recipe_id in {one["id"] for one in send("show_recipes", (), {})["kept"]}
    assert send("recipe_text", (recipe_id,), {}) == kept["text"]
    assert send("recipe_json_ld", (recipe_id,), {}) == kept["json_ld"]
    scaled = send("scale_recipe", ({"recipe_id": recipe_id, "servings": 8},), {})
    assert scaled["lines"][0]["text"] == "2 cups butter"
    lists = send("make_lists", ({"dishes": [{"recipe_id": recipe_id}]},), {})
    assert lists["dishes"][0]["allergens"] == ["milk"]
    assert send("delete_recipe", (recipe_id,), {}) is None


def test_a_log_is_begun_and_added_to(send: Send) -> None:
    log_id = send("begin_log", ({"kind": "cooling", "item": "stock", "kitchen": "licensed"},), {})["id"]
    given = send("add_to_log", (log_id, {"who": "AB", "temperature_c": 58.0}), {})
    assert send("show_log", (log_id,), {})["entries"] == given["entries"]
    assert log_id in {one["id"] for one in send("show_logs", (), {})["logs"]}
    assert send("log_csv", (log_id,), {}).splitlines()[1].startswith("cooling,stock,1,")


def test_sizes_labels_and_the_card(send: Send) -> None:
    assert send("size_roast", ({"covers": 14},), {})["count"] == 1
    labels = send("make_labels", ({"items": [{"item": "stock"}], "initials": "AB"},), {})["labels"]
    assert labels[0]["use_by"] > labels[0]["made_at"]
    assert len(send("show_card", (), {})["sections"]) == 5
    assert send("show_card", ("home",), {}) != send("show_card", ("licensed",), {})


def test_deleting_a_conversation_gives_nothing(send: Send, app: FastAPI) -> None:
    service = app.state.service
    service.store.keep_conversation("kept", {"lines": ["16 lb bird"]}, service.clock())
    assert send("show_conversation", ("kept",), {})["lines"] == ["16 lb bird"]
    assert send("delete_conversation", ("kept",), {}) is None
    with pytest.raises(Refused):
        send("show_conversation", ("kept",), {})


@pytest.mark.parametrize("server", ["http://127.0.0.1:1", "nonsense", "ftp://kitchen", "http://[", "http://a b"])
def test_nobody_answers(server: str) -> None:
    with pytest.raises(NoService), Client(server, timeout_s=2) as client:
        client.convert(1, "lb", "g")


@pytest.mark.parametrize("status", [200, 404, 502])
def test_a_stranger_answers(status: int) -> None:
    stranger = httpx.MockTransport(lambda _: httpx.Response(status, text="<html>a router</html>"))
    with Client(transport=stranger) as client, pytest.raises(NoService, match="not as this service would"):
        client.convert(1, "lb", "g")
