"""Kept logs: only ever added to, judged by the server's own clock; no path silences a stop."""

import csv
import io
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from turnspit.api import Settings, create_app
from turnspit.safety import CORRECTIVES

EVENING = datetime(2026, 11, 27, 1, 0, tzinfo=UTC)  # eight in the evening in New York


class Kitchen:
    """A service whose clock the test moves, and one log on it."""

    def __init__(self, api: Any) -> None:
        self.api = api
        self.hour = 0.0
        self.id = ""

    @property
    def now(self) -> datetime:
        return EVENING + timedelta(hours=self.hour)

    def begin(self, kind: str = "cooling", item: str = "turkey stock", **more: Any) -> dict[str, Any]:
        response = self.api.post("/v1/logs", {"kind": kind, "item": item, "kitchen": "licensed", **more})
        assert response.status_code == 201, response.text
        given: dict[str, Any] = response.json()
        self.id = given["id"]
        return given

    def add(self, hour: float | None = None, **entry: Any) -> dict[str, Any]:
        self.hour = self.hour if hour is None else hour
        response = self.api.post(f"/v1/logs/{self.id}/entries", {"who": "AB", **entry})
        assert response.status_code == 201, response.text
        given: dict[str, Any] = response.json()
        return given

    def refused(self, **entry: Any) -> dict[str, Any]:
        response = self.api.post(f"/v1/logs/{self.id}/entries", {"who": "AB", **entry})
        assert response.status_code == 422, response.text
        given: dict[str, Any] = response.json()
        return given

    def read(self, hour: float | None = None) -> dict[str, Any]:
        self.hour = self.hour if hour is None else hour
        given: dict[str, Any] = self.api.get(f"/v1/logs/{self.id}").json()
        return given


@pytest.fixture
def kitchen(portal: Any, api: Any) -> Iterator[Kitchen]:
    made = Kitchen(None)

    @contextmanager
    def opened() -> Iterator[Any]:
        app = create_app(Settings(database_url="sqlite://", timezone="America/New_York"), clock=lambda: made.now)
        yield type(api)(app, portal)
        app.state.service.store.close()

    with opened() as made.api:
        yield made


def cooled(kitchen: Kitchen) -> dict[str, Any]:
    kitchen.begin()
    given: dict[str, Any] = {}
    for hour, read_c in ((0, 58), (1, 38), (2, 20), (3, 14), (4, 9), (5, 6), (5.8, 4.5)):
        given = kitchen.add(hour, temperature_c=read_c)
    return given


def missed(kitchen: Kitchen) -> dict[str, Any]:
    kitchen.begin()
    given: dict[str, Any] = {}
    for hour, read_c in ((0, 58), (1, 50), (2, 40), (2.5, 36)):
        given = kitchen.add(hour, temperature_c=read_c)
    return given


def test_a_cooling_that_is_on_time_is_in_order(kitchen: Kitchen) -> None:
    given = cooled(kitchen)
    assert (given["grade"], given["open_stops"], given["gaps"]) == ("ok", [], []) or given["grade"] == "info"
    assert [entry["number"] for entry in given["entries"]] == list(range(1, 8))
    assert given["entries"][0]["at"].startswith("2026-11-27T01:00")


def test_a_missed_limit_stays_a_stop_whatever_follows_but_throwing_away(kitchen: Kitchen) -> None:
    assert missed(kitchen)["grade"] == "stop"
    for entry in (
        {"temperature_c": 4.0},
        {"temperature_c": 20.0, "corrects": 3},
        {"temperature_c": 20.0, "corrects": 4},
        {"action": "chilled"},
        {"action": "reheated"},
        {"action": "cooked_on"},
        {"note": "looked fine"},
        {"finished": True},
    ):
        given = kitchen.add(kitchen.hour + 0.1, **entry)
        assert given["grade"] == "stop", entry
        assert given["open_stops"][0]["do"] == "discard"
    assert kitchen.read(48)["grade"] == "stop"
    last = kitchen.add(action="discarded")
    assert (last["open_stops"], last["closed"]) == ([], True)


def test_an_early_reading_does_not_undo_a_stop(kitchen: Kitchen) -> None:
    missed(kitchen)
    early = (EVENING + timedelta(hours=1.9)).isoformat()
    assert kitchen.add(2.6, temperature_c=20.0, at=early)["grade"] == "stop"


def test_a_sheet_of_paper_may_be_written_down_afterwards(kitchen: Kitchen) -> None:
    kitchen.begin()
    kitchen.hour = 7
    given: dict[str, Any] = {}
    for hour, read_c in ((0, 58), (1, 38), (2, 20), (3, 14), (4, 9), (5, 6), (5.8, 4.5), (6.6, 4)):
        given = kitchen.add(temperature_c=read_c, at=(EVENING + timedelta(hours=hour)).isoformat())
    assert (given["open_stops"], given["gaps"]) == ([], [])
    assert given["entries"][0]["recorded_at"] == given["entries"][-1]["recorded_at"]


def test_the_day_a_log_is_read_counts_not_what_the_reader_says(kitchen: Kitchen) -> None:
    kitchen.begin()
    kitchen.add(0, temperature_c=58)
    assert kitchen.read(1)["grade"] != "stop"
    assert kitchen.read(3)["grade"] == "stop"
    assert "now" in kitchen.refused(temperature_c=20, now=EVENING.isoformat())["name"]


def test_a_gap_is_shown_and_never_in_order(kitchen: Kitchen) -> None:
    kitchen.begin("hot_holding", "gravy")
    kitchen.add(0, temperature_c=70)
    given = kitchen.add(5, temperature_c=70)
    assert [(gap["since"][11:16], gap["until"][11:16]) for gap in given["gaps"]] == [("01:00", "06:00")]
    assert given["grade"] == "warn"


def test_the_hours_before_the_end_are_a_gap_too(kitchen: Kitchen) -> None:
    kitchen.begin("hot_holding", "gravy")
    kitchen.add(0, temperature_c=70)
    given = kitchen.add(6, finished=True)
    assert given["finished"] is True
    assert len(given["gaps"]) == 1
    assert given["grade"] != "ok"


def test_after_the_end_no_reading_is_due_until_there_is_one_again(kitchen: Kitchen) -> None:
    kitchen.begin("hot_holding", "gravy")
    kitchen.add(0, temperature_c=70)
    kitchen.add(1, finished=True)
    assert kitchen.read(40)["gaps"] == []
    again = kitchen.add(41, temperature_c=70)
    assert again["finished"] is False
    assert len(again["gaps"]) == 1


def test_a_bird_that_is_served_without_a_measured_165_is_a_stop(kitchen: Kitchen) -> None:
    kitchen.begin("roast", "turkey")
    for station in ("breast", "thigh"):
        kitchen.add(0, temperature_c=76, station=station)
    assert kitchen.add(0.5, finished=True)["grade"] == "stop"


def test_a_correction_is_a_new_entry_beside_the_old_one(kitchen: Kitchen) -> None:
    kitchen.begin()
    kitchen.add(0, temperature_c=85)
    given = kitchen.add(0.2, temperature_c=58, corrects=1, who="CD", note="misread")
    first, second = given["entries"]
    assert (first["temperature_c"], first["stands"], second["temperature_c"], second["stands"]) == (
        85,
        False,
        58,
        True,
    )
    assert (second["at"], second["who"]) == (first["at"], "CD")
    assert second["recorded_at"] > first["recorded_at"]


def test_who_measured_and_when_it_was_written_down_are_kept(kitchen: Kitchen) -> None:
    kitchen.begin()
    at = (EVENING - timedelta(minutes=20)).isoformat()
    (entry,) = kitchen.add(0, temperature_c=58, at=at)["entries"]
    assert (entry["who"], entry["at"], entry["recorded_at"]) == ("AB", "2026-11-27T00:40:00Z", "2026-11-27T01:00:00Z")


@pytest.mark.parametrize(
    ("entry", "name"),
    [
        ({"temperature_c": 58, "who": " "}, "who"),
        ({"temperature_c": 158}, "temperature_c"),
        ({"temperature_c": 58, "at": "2026-11-27T05:00:00Z"}, "at"),
        ({"temperature_c": 58, "at": "2026-11-26T20:00:00"}, "at"),
        ({"temperature_c": 58, "corrects": 1}, "number"),
        ({"action": "forgotten"}, "action"),
        ({"temperature_c": 58, "action": "chilled"}, "body"),
        ({"corrects": 1, "note": "wrong"}, "body"),
        ({"note": "  "}, "body"),
        ({}, "body"),
    ],
)
def test_an_entry_that_is_none_is_refused_and_not_kept(kitchen: Kitchen, entry: dict[str, Any], name: str) -> None:
    kitchen.begin()
    assert kitchen.refused(**entry)["name"] == name
    assert kitchen.read()["entries"] == []


@pytest.mark.parametrize(
    "body",
    [{}, {"kind": "baking", "item": "x"}, {"kind": "cooling", "item": " "}, {"kind": "cooling", "item": "x" * 201},
     {"kind": "cooling", "item": "x", "interval_min": 0}, {"kind": "cooling", "item": "x", "timezone": "Mars/Olympus"}],
)  # fmt: skip
def test_a_log_of_nothing_is_refused(api: Any, body: dict[str, Any]) -> None:
    response = api.post("/v1/logs", body)
    assert response.status_code == 422
    assert response.json()["way_out"]


def test_no_method_changes_or_deletes_anything_of_a_log(kitchen: Kitchen) -> None:
    kitchen.begin()
    kitchen.add(0, temperature_c=58)
    for method in ("DELETE", "PUT", "PATCH"):
        for path in (f"/v1/logs/{kitchen.id}", f"/v1/logs/{kitchen.id}/entries", f"/v1/logs/{kitchen.id}/entries/1"):
            assert kitchen.api.send(method, path).status_code in (404, 405)
    assert len(kitchen.read()["entries"]) == 1


def test_csv_holds_every_entry(kitchen: Kitchen) -> None:
    missed(kitchen)
    kitchen.add(temperature_c=37, corrects=4, note="=SUM(1)")
    for path, headers in ((f"/v1/logs/{kitchen.id}.csv", {}), (f"/v1/logs/{kitchen.id}", {"accept": "text/csv"})):
        response = kitchen.api.get(path, headers=headers)
        assert response.headers["content-type"].startswith("text/csv")
        rows = list(csv.DictReader(io.StringIO(response.text)))
        assert [row["stands"] for row in rows] == ["yes", "yes", "yes", "no", "yes"]
        assert rows[4]["note"].startswith("'=")


def test_logs_are_listed_with_how_they_stand(kitchen: Kitchen) -> None:
    missed(kitchen)
    (log,) = kitchen.api.get("/v1/logs").json()["logs"]
    assert (log["id"], log["grade"], log["open_stops"] > 0) == (kitchen.id, "stop", True)
    for path in ("/v1/logs/none", "/v1/logs/none.csv"):
        assert kitchen.api.get(path).status_code == 404
    assert kitchen.api.post("/v1/logs/none/entries", {"who": "AB", "note": "x"}).status_code == 404


def test_every_corrective_action_can_be_recorded(kitchen: Kitchen) -> None:
    kitchen.begin()
    for action in CORRECTIVES:
        given = kitchen.add(action=action)
    assert [entry["action"] for entry in given["entries"]] == list(CORRECTIVES)


def test_labels_by_the_rules_of_the_kitchen(api: Any) -> None:
    body = {"items": [{"item": "stock"}], "initials": "AB", "now": "2026-11-26T21:00:00-05:00"}
    days = {
        kitchen: api.post("/v1/labels", {**body, "kitchen": kitchen}).json()["labels"][0]["use_by"][:10]
        for kitchen in ("home", "licensed", None)
    }
    assert days == {"home": "2026-11-30", "licensed": "2026-12-02", None: "2026-11-30"}
    assert api.post("/v1/labels", {**body, "initials": ""}).status_code == 422
    assert api.post("/v1/labels", {**body, "items": []}).status_code == 422


def test_the_card_is_that_of_the_kitchen(api: Any) -> None:
    home, licensed = (api.get(f"/v1/card?kitchen={kitchen}").json()["sections"] for kitchen in ("home", "licensed"))
    assert [part["title"] for part in home] == ["Probe", "Carve", "Keep hot", "Cool and keep", "Ask the guests"]
    assert home != licensed
    assert api.get("/v1/card?kitchen=ship").status_code == 422
