"""Plans over HTTP: made, kept, shown as JSON and as a calendar, put on the display, deleted."""

from datetime import datetime
from typing import Any, get_args

import pytest
from icalendar import Calendar

from turnspit.planning import Place
from turnspit.words import LANGUAGES, keys

DINNER: dict[str, Any] = {
    "roast": {"kind": "turkey", "mass_kg": 7.257, "state": "thawed"},
    "serve_at": "2026-11-26T18:00:00-05:00",
    "now": "2026-11-25T09:00:00-05:00",
    "timezone": "America/New_York",
    "units": "us",
}


@pytest.fixture
def plan(api: Any) -> dict[str, Any]:
    response = api.post("/v1/plans", DINNER)
    assert response.status_code == 201
    given: dict[str, Any] = response.json()
    assert response.headers["location"] == f"/v1/plans/{given['id']}"
    return given


def test_a_plan_is_kept_as_it_was_given(api: Any, plan: dict[str, Any]) -> None:
    assert api.get(f"/v1/plans/{plan['id']}").json() == plan
    assert plan["as_wished"] is True
    assert datetime.fromisoformat(plan["oven_in_at"]) < datetime.fromisoformat(plan["serve_at"])


@pytest.mark.parametrize(("path", "headers"), [("", {"accept": "text/calendar"}), (".ics", {})])
def test_as_a_calendar_in_utc_with_stable_ids(
    api: Any, plan: dict[str, Any], path: str, headers: dict[str, str]
) -> None:
    response = api.get(f"/v1/plans/{plan['id']}{path}", headers=headers)
    assert response.headers["content-type"].startswith("text/calendar")
    again = api.get(f"/v1/plans/{plan['id']}{path}", headers=headers)
    assert again.content == response.content
    events = Calendar.from_ical(response.content).walk("VEVENT")
    assert [str(event["summary"]) for event in events] == [task["title"] for task in plan["tasks"]]
    assert len({str(event["uid"]) for event in events}) == len(events)
    for event, task in zip(events, plan["tasks"], strict=True):
        assert event["dtstart"].dt == datetime.fromisoformat(task["start"])
        assert event["dtstart"].to_ical().endswith(b"Z")
        assert event["dtend"].dt == datetime.fromisoformat(task["end"])
        assert (len(event.walk("VALARM")) == 1) == task["hands"]
    assert b"DTSTART:2026" in response.content
    assert b"TZID" not in response.content


def test_a_calendar_speaks_the_language_of_its_plan(api: Any) -> None:
    spanish = api.post("/v1/plans", {**DINNER, "language": "es"}).json()
    calendar = Calendar.from_ical(api.get(f"/v1/plans/{spanish['id']}.ics").content)
    assert str(calendar["x-wr-calname"]) == "Comida del jueves, 26 de noviembre"
    assert "horno" in {str(event["location"]) for event in calendar.walk("VEVENT")}


def test_every_place_of_a_task_has_a_name() -> None:
    for language in LANGUAGES:
        assert {f"api-place-{place}" for place in get_args(Place)} <= keys(language)


def test_texts_are_worded_for_the_reader(api: Any) -> None:
    spanish = api.post("/v1/plans", {**DINNER, "units": "metric"}, headers={"accept-language": "es-ES"}).json()
    assert spanish["reader"] == {"language": "es", "units": "metric", "clock": "24h"}
    assert "pavo" in spanish["headline"]


def test_a_task_is_worded_for_its_own_day(plan: dict[str, Any]) -> None:
    """It is read on a wall or a screen when that day has come."""
    leftovers = next(task for task in plan["tasks"] if task["id"] == "leftovers")
    assert leftovers["start"].startswith("2026-11-26")
    assert "pm" in leftovers["title"]
    for task in plan["tasks"]:
        assert "tomorrow" not in " ".join([task["title"], task["why"], *task["details"]])


def test_nobody_is_given_a_plan_that_was_not_wished(api: Any) -> None:
    late = api.post("/v1/plans", {**DINNER, "serve_at": "2026-11-25T10:00:00-05:00"}).json()
    assert late["as_wished"] is False
    assert late["ways"]


@pytest.mark.parametrize(
    ("change", "name"),
    [
        ({"serve_at": "2026-11-24T18:00:00-05:00"}, "serve_at"),
        ({"serve_at": "2026-11-26T18:00:00"}, "serve_at"),
        ({"roast": {"kind": "turkey", "mass_kg": 410}}, "mass_kg"),
        ({"roast": {"kind": "ox", "mass_kg": 5}}, "kind"),
        ({"roast": {"kind": "turkey", "mass_kg": -7}}, "mass_kg"),
        ({"oven": {"temperature_c": 900}}, "oven_c"),
        ({"timezone": "Mars/Olympus"}, "timezone"),
        ({"covers": 2.5}, "covers"),
    ],
)
def test_what_cannot_be_is_refused_with_the_field(api: Any, change: dict[str, Any], name: str) -> None:
    response = api.post("/v1/plans", {**DINNER, **change})
    assert response.status_code == 422
    assert name in response.json()["name"]


def test_deleted_for_good(api: Any, plan: dict[str, Any]) -> None:
    assert api.send("DELETE", f"/v1/plans/{plan['id']}").status_code == 204
    assert api.get(f"/v1/plans/{plan['id']}").status_code == 404


def test_put_on_the_display(api: Any, plan: dict[str, Any]) -> None:
    other = api.post("/v1/plans", {**DINNER, "serve_at": "2026-11-27T18:00:00-05:00"}).json()
    assert api.send("PUT", f"/v1/display/{plan['id']}").status_code == 204
    assert api.get("/v1/display").json()["id"] == plan["id"]
    assert api.send("PUT", f"/v1/display/{other['id']}").status_code == 204
