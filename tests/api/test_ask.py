"""The ask contract over HTTP: same bodies, kept conversations, no line that breaks it."""

from datetime import datetime, timedelta
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

NOW = "2026-11-25T09:00:00-05:00"
ZONE = "America/New_York"
POUND_KG = 0.45359237


def ask(api: Any, text: str, **options: Any) -> dict[str, Any]:
    response = api.post("/v1/ask", {"text": text, "now": NOW, "timezone": ZONE, **options})
    assert response.status_code == 200, response.text
    reply: dict[str, Any] = response.json()
    return reply


def test_a_reply_has_the_fields_of_the_contract(api: Any) -> None:
    reply = ask(api, "16 lb bird, dinner at 6")
    assert list(reply) == [
        "conversation",
        "intent",
        "intents",
        "understood",
        "answer",
        "assumptions",
        "cautions",
        "question",
        "next",
        "data",
    ]
    assert reply["intent"] == "plan"
    assert reply["understood"]["roast"] == {"mass_kg": pytest.approx(16 * POUND_KG, abs=0.01)}
    assert reply["understood"]["serve_at"] == "2026-11-25T18:00:00-05:00"
    assert all(set(caution) == {"text", "rule", "severity"} for caution in reply["cautions"])


def test_now_and_zone_default_to_the_servers(api: Any) -> None:
    response = api.post("/v1/ask", {"text": "16 lb bird, dinner at 6"})
    assert response.json()["understood"]["serve_at"] == "2026-11-25T18:00:00-05:00"


def test_a_now_with_an_offset_alone_tells_where_the_cook_is(api: Any) -> None:
    response = api.post("/v1/ask", {"text": "7 kg turkey, dinner at 20:00", "now": "2026-11-25T09:00:00+01:00"})
    assert response.json()["understood"]["serve_at"] == "2026-11-25T20:00:00+01:00"


def test_fields_of_newer_screens_are_passed_over(api: Any) -> None:
    assert ask(api, "help", colour="blue")["intent"] == "help"


def test_a_conversation_goes_on_is_shown_and_is_deleted(api: Any) -> None:
    first = ask(api, "16 lb bird, dinner at 6")
    second = ask(api, "make it 20 lb", conversation=first["conversation"])
    assert second["conversation"] == first["conversation"]
    assert second["understood"]["roast"]["mass_kg"] == pytest.approx(20 * POUND_KG, abs=0.01)
    assert second["understood"]["serve_at"] == first["understood"]["serve_at"]
    path = f"/v1/conversations/{first['conversation']}"
    shown = api.get(path).json()
    assert shown["lines"] == ["16 lb bird, dinner at 6", "make it 20 lb"]
    assert shown["set_by"]["roast.mass_kg"] == "said"
    assert api.send("DELETE", path).status_code == 204
    assert api.get(path).status_code == 404
    anew = ask(api, "make it 20 lb", conversation=first["conversation"])
    assert anew["conversation"] != first["conversation"]
    assert "serve_at" not in anew["understood"]


def test_a_conversation_expires(api: Any) -> None:
    reply = ask(api, "16 lb bird, dinner at 6")
    service = api.app.state.service
    later = service.clock() + timedelta(days=31)
    service.clock = lambda: later
    assert api.get(f"/v1/conversations/{reply['conversation']}").status_code == 404
    assert ask(api, "make it 20 lb", conversation=reply["conversation"])["conversation"] != reply["conversation"]


def test_a_conversation_kept_by_another_version_starts_anew(api: Any) -> None:
    service = api.app.state.service
    service.store.keep_conversation("odd", {"lines": 3}, service.clock())
    assert ask(api, "16 lb bird, dinner at 6", conversation="odd")["intent"] == "plan"


def test_its_plan_is_kept(api: Any) -> None:
    plan = ask(api, "16 lb bird, dinner at 6")["data"]["plan"]
    kept = api.get(f"/v1/plans/{plan['id']}").json()
    assert kept["tasks"] == plan["tasks"]
    assert kept["reader"] == {"language": "en", "units": "us", "clock": "12h"}


def test_the_kitchen_of_the_service_holds_where_none_is_said(api: Any) -> None:
    said = ask(api, "left it out 3 hours", kitchen="licensed")
    service = api.app.state.service
    service.settings = service.settings.model_copy(update={"kitchen": "licensed"})
    assert ask(api, "left it out 3 hours")["answer"] == said["answer"]


def test_explaining_shows_the_trace(api: Any) -> None:
    trace = ask(api, "16 lb bird, dinner at 6", explain=True)["data"]["trace"]
    assert {"roast.mass_kg", "serve_at"} <= {entry["path"] for entry in trace}
    assert "trace" not in ask(api, "16 lb bird, dinner at 6")["data"]


def test_questions_are_counted_by_intent(api: Any) -> None:
    ask(api, "left it out 3 hours")
    assert 'turnspit_questions_total{intent="safety"} 1.0' in api.get("/metrics").text


HOSTILE = (
    "",
    " ",
    "\x00",
    "\x00\x1b[31m16 lb bird\x07",
    "<script>alert(1)</script>",
    "'; DROP TABLE plans; --",
    "🦃" * 500,
    "16 lb bird, dinner at 6 " * 400,
    "9" * 10_000,
    "-16 lb bird, dinner at 6",
    "0 lb bird dinner at 6",
    "1e308 lb bird dinner at 6",
    "900 lb bird",
    "dinner yesterday at 6",
    "16 lb bird, dinner at 25:99",
    "16 lb bird dinner on february 30",
    "10000 cups salt in grams",
    "2 cups salt in parsecs",
    "brine for an 18 lb bird in a thimble",
    "140% brine for a 12 lb bird",
    "turkey for 0 people",
    "turkey for 100000000 people",
    "-300 in the breast, dinner at 6",
    "5000 in the thigh",
    "oven at 3000",
    "16 lb bird, dinner at 6 in the year 9999",
    "16 lb bird at 30000 feet, dinner at 6",
    "why?",
    "start over",
    "make it",
    "\u202e\u200b16 lb\u00a0bird",
    "½¼⅛ lb ⅞ bird at ½",
)


@pytest.mark.parametrize("line", HOSTILE)
def test_no_line_breaks_it(api: Any, line: str) -> None:
    reply = ask(api, line)
    assert reply["answer"]["headline"]
    again = ask(api, line, conversation=reply["conversation"])
    assert again["answer"]["headline"]


WORDS = """
    16 lb bird turkey frozen stuffed brined goose dinner at 6 tomorrow 325 F 160C fan oven for 12 with leftovers in the
    breast thigh 130 49C out 3 hours cups kosher salt grams bucket 5 gallon half past noon -3 900 0 why ? , - how long
    big much is it safe pink done early hold rest carve two birds 1/2 thanksgiving pavo kg cena
"""


@settings(max_examples=120, deadline=None)
@given(st.one_of(st.lists(st.sampled_from(WORDS.split()), max_size=12).map(" ".join), st.text(max_size=80)))
def test_no_line_that_can_be_typed_breaks_it(session_api: Any, line: str) -> None:
    ask(session_api, line)


def test_a_fault_of_ours_is_answered_kindly_counted_and_logged(
    api: Any, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    def broken(*_: object) -> None:
        raise ZeroDivisionError

    monkeypatch.setattr("turnspit.asking.ask", broken)
    reply = ask(api, "16 lb bird, dinner at 6")
    assert reply["intent"] == "unknown"
    assert "our side" in reply["answer"]["headline"]
    assert "turnspit_faults_total 1.0" in api.get("/metrics").text
    assert "16 lb bird, dinner at 6" in caplog.text


def test_a_dinner_is_planned_the_same_from_words_and_from_json(api: Any) -> None:
    said = ask(api, "16 lb turkey, thawed, dinner at 6")["data"]["plan"]
    made = api.post(
        "/v1/plans",
        {
            "roast": {"kind": "turkey", "mass_kg": said["roast"]["mass_kg"], "state": "thawed"},
            "serve_at": "2026-11-25T18:00:00-05:00",
            "now": NOW,
            "timezone": ZONE,
            "units": "us",
        },
    ).json()
    assert datetime.fromisoformat(made["oven_in_at"]) == datetime.fromisoformat(said["oven_in_at"])
    assert [task["id"] for task in made["tasks"]] == [task["id"] for task in said["tasks"]]
