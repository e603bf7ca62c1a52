"""One error shape on every road: RFC 9457, with the field, the value, the limit and the way out."""

from typing import Any

import httpx
import pytest

GRAM = {"value": 2, "unit": "cup", "target_unit": "g"}

ROADS: dict[str, tuple[int, str, str, dict[str, Any]]] = {
    "a page that is not there": (404, "GET", "/v1/nothing", {}),
    "a plan that is not kept": (404, "GET", "/v1/plans/none", {}),
    "a calendar that is not kept": (404, "GET", "/v1/plans/none.ics", {}),
    "deleting what is not kept": (404, "DELETE", "/v1/plans/none", {}),
    "a conversation that is not kept": (404, "GET", "/v1/conversations/none", {}),
    "forgetting what is not kept": (404, "DELETE", "/v1/conversations/none", {}),
    "an empty display": (404, "GET", "/v1/display", {}),
    "putting what is not kept on the display": (404, "PUT", "/v1/display/none", {}),
    "a table that is not there": (404, "GET", "/v1/reference/none", {}),
    "a method that is not taken": (405, "PUT", "/v1/convert", {"json": GRAM}),
    "a body that is too large": (413, "POST", "/v1/ask", {"content": b"x" * 2_000_000}),
    "no body": (422, "POST", "/v1/ask", {}),
    "malformed JSON": (
        422,
        "POST",
        "/v1/ask",
        {"content": b'{"text":', "headers": {"content-type": "application/json"}},
    ),
    "JSON that is not said to be JSON": (422, "POST", "/v1/ask", {"content": b'{"text": "16 lb bird"}'}),
    "a list for an object": (422, "POST", "/v1/ask", {"json": ["16 lb bird"]}),
    "a wrong type": (422, "POST", "/v1/ask", {"json": {"text": 16}}),
    "a text that is too long": (422, "POST", "/v1/ask", {"json": {"text": "x" * 20_001}}),
    "a lone surrogate": (
        422,
        "POST",
        "/v1/ask",
        {"content": b'{"text": "\\ud800"}', "headers": {"content-type": "application/json"}},
    ),
    "a zone that is none": (422, "POST", "/v1/ask", {"json": {"text": "hello", "timezone": "Mars/Olympus"}}),
    "a year that no zone holds": (
        422,
        "POST",
        "/v1/ask",
        {"json": {"text": "hello", "now": "0001-01-01T00:00:00Z", "timezone": "America/New_York"}},
    ),
    "a field that is not known": (422, "POST", "/v1/convert", {"json": {**GRAM, "items": "salt"}}),
    "true for a number": (422, "POST", "/v1/convert", {"json": {**GRAM, "value": True}}),
    "not a number": (
        422,
        "POST",
        "/v1/convert",
        {
            "content": b'{"value": NaN, "unit": "cup", "target_unit": "g"}',
            "headers": {"content-type": "application/json"},
        },
    ),
    "a unit that is not known": (422, "POST", "/v1/convert", {"json": {**GRAM, "unit": "handful"}}),
    "a roast that is not known": (
        422,
        "POST",
        "/v1/roasts/forecast",
        {"json": {"roast": {"kind": "ox", "mass_kg": 5}}},
    ),
    "a roast beyond the model": (
        422,
        "POST",
        "/v1/roasts/forecast",
        {"json": {"roast": {"kind": "turkey", "mass_kg": 410}}},
    ),
    "a brine for nothing": (422, "POST", "/v1/brines", {"json": {"mass_kg": -3}}),
}


def is_a_problem(response: httpx.Response, status: int) -> dict[str, Any]:
    """The one shape, stated once."""
    assert response.status_code == status
    assert response.headers["content-type"] == "application/problem+json"
    problem: dict[str, Any] = response.json()
    assert problem["status"] == status
    assert problem["type"]
    assert problem["title"]
    assert problem["detail"]
    if status == 422 or "name" in problem:
        assert problem["name"]
        assert problem["limit"]
        assert problem["way_out"]
        assert problem["way_out"] in problem["detail"]
    return problem


@pytest.mark.parametrize("road", ROADS)
def test_every_error_has_one_shape(api: Any, road: str) -> None:
    status, method, path, options = ROADS[road]
    is_a_problem(api.send(method, path, **options), status)


def test_a_refusal_names_field_value_limit_and_way_out(api: Any) -> None:
    response = api.post("/v1/roasts/forecast", {"roast": {"kind": "turkey", "mass_kg": 410}})
    problem = is_a_problem(response, 422)
    assert problem["type"] == "urn:turnspit:problem:out-of-range"
    assert problem["name"] == "mass_kg"
    assert problem["value"] == 410
    assert problem["detail"].startswith("mass_kg 410 is above ")


def test_every_field_at_fault_is_told(api: Any) -> None:
    problem = is_a_problem(api.post("/v1/convert", {"value": "2", "units": "cup"}), 422)
    assert {fault["name"] for fault in problem["errors"]} == {"value", "unit", "target_unit", "units"}


def test_a_nested_field_is_told_by_its_path(api: Any) -> None:
    problem = is_a_problem(api.post("/v1/roasts/forecast", {"roast": {"kind": "turkey", "mass_kg": "16"}}), 422)
    assert problem["name"] == "roast.mass_kg"


def test_a_method_that_is_not_taken_says_which_are(api: Any) -> None:
    response = api.send("PUT", "/v1/convert", json=GRAM)
    assert response.headers["allow"] == "POST"


def test_a_fault_of_ours_tells_nothing_of_the_inside(api: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object) -> None:
        raise RuntimeError("secret path /etc")

    monkeypatch.setattr("turnspit.quantities.convert", broken)
    response = api.post("/v1/convert", GRAM)
    problem = is_a_problem(response, 500)
    assert "secret" not in response.text
    assert problem["type"] == "urn:turnspit:problem:fault"
    assert "turnspit_faults_total 1.0" in api.get("/metrics").text


def test_long_values_are_shortened(api: Any) -> None:
    problem = is_a_problem(api.post("/v1/convert", {**GRAM, "value": "9" * 5000}), 422)
    assert len(problem["value"]) == 60
