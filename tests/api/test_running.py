"""Health, meters, tables, the OpenAPI document, settings."""

import threading
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from anyio.from_thread import BlockingPortal

from turnspit import reference
from turnspit.api import Settings, create_app
from turnspit.errors import Impossible


def test_health(api: Any) -> None:
    response = api.get("/healthz")
    assert response.status_code == 200
    assert response.json()["status"] == "ok"


def test_meters_count_by_route_and_not_by_path(api: Any) -> None:
    api.get("/v1/plans/one")
    api.get("/v1/plans/two")
    api.get("/wp-login.php")
    text = api.get("/metrics").text
    assert 'turnspit_requests_total{method="GET",route="/v1/plans/{plan_id}",status="404"} 2.0' in text
    assert 'route="other",status="404"} 1.0' in text
    assert "wp-login" not in text


def test_two_services_in_a_process_count_apart(api: Any) -> None:
    other = create_app(Settings(database_url="sqlite://"))
    api.get("/healthz")
    assert b'route="/healthz"' not in other.state.service.meters.exposition()
    other.state.service.store.close()


def test_every_published_table_is_given_with_its_sources(api: Any) -> None:
    names = api.get("/v1/reference").json()["tables"]
    assert names == list(reference.names())
    for name in names:
        table = api.get(f"/v1/reference/{name}").json()
        assert table["name"] == name
        assert all(row["source"] and row["obtained"] for row in table["rows"])


def test_the_openapi_document(api: Any) -> None:
    document = api.get("/openapi.json").json()
    assert document["openapi"].startswith("3.1")
    schemas = document["components"]["schemas"]
    assert "Problem" in schemas
    assert "HTTPValidationError" not in schemas
    for path, methods in document["paths"].items():
        for method, operation in methods.items():
            assert operation["description"], path
            problem = operation["responses"]["422"]["content"]
            assert list(problem) == ["application/problem+json"], (path, method)
            if "requestBody" in operation:
                name = operation["requestBody"]["content"]["application/json"]["schema"]["$ref"].rpartition("/")[2]
                assert schemas[name]["examples"], (path, method)


def test_what_has_expired_is_swept(api: Any) -> None:
    service = api.app.state.service
    now: datetime = service.clock()
    service.store.keep_conversation("old", {}, now - timedelta(days=31))
    service.store.keep_conversation("new", {}, now)
    service.store.keep_plan("old", {}, now - timedelta(days=91), now - timedelta(days=92))
    assert service.sweep() == 2
    assert api.get("/v1/conversations/new").status_code == 200
    assert api.get("/v1/conversations/old").status_code == 404


def test_the_lifespan_sweeps_and_closes(api: Any) -> None:
    service = api.app.state.service
    service.store.keep_conversation("old", {}, datetime(2020, 1, 1, tzinfo=UTC))

    async def run() -> None:
        import anyio

        async with api.app.router.lifespan_context(api.app):
            with anyio.fail_after(5):
                while service.store.delete_conversation("old"):
                    await anyio.sleep(0.01)

    import anyio

    anyio.run(run)


def test_numbers_are_computed_off_the_event_loop(
    api: Any, portal: BlockingPortal, monkeypatch: pytest.MonkeyPatch
) -> None:
    seen: list[threading.Thread] = []

    def noted(*_: object) -> None:
        seen.append(threading.current_thread())
        raise Impossible("value", 1, "is only a test", "none")

    monkeypatch.setattr("turnspit.quantities.convert", noted)
    assert api.post("/v1/convert", {"value": 1, "unit": "lb", "target_unit": "kg"}).status_code == 422
    assert seen
    assert seen[0] is not portal.call(threading.current_thread)


def test_settings_come_from_the_environment(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("TURNSPIT_DATABASE_URL", "sqlite://")
    monkeypatch.setenv("TURNSPIT_TIMEZONE", "Europe/Madrid")
    monkeypatch.setenv("TURNSPIT_KITCHEN", "licensed")
    monkeypatch.setenv("TURNSPIT_WORKERS", "3")
    settings = Settings()
    assert settings.database_url == "sqlite://"
    assert (settings.timezone, settings.kitchen, settings.workers) == ("Europe/Madrid", "licensed", 3)
