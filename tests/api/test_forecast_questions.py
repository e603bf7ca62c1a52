"""`POST /v1/roasts/forecast`: every state and history, and the questions asked backward."""

from datetime import datetime
from typing import Any

import pytest

from turnspit.heat import RoastCase, largest_mass_kg, minutes_to_allow, oven_for, sensitivities, trades

ROAST = {"kind": "turkey", "mass_kg": 6.35}
CASE = RoastCase("turkey", 6.35, members=64)


def forecast(api: Any, **body: Any) -> dict[str, Any]:
    given = api.post("/v1/roasts/forecast", {"roast": ROAST, "members": 64, **body})
    assert given.status_code == 200, given.json()
    return dict(given.json())


def test_nothing_asked_nothing_answered(api: Any) -> None:
    plain = forecast(api)
    assert plain["answers"] is None
    assert plain["platter"] is None


def test_the_latest_time_in_for_a_certainty(api: Any) -> None:
    allow = forecast(api, questions={"ready_by": "2026-11-26T18:00:00-05:00"})["answers"]["allow"]
    assert [one["certainty"] for one in allow] == [0.8, 0.9]
    for one in allow:
        assert one["allow_min"] == pytest.approx(minutes_to_allow(CASE, one["certainty"]), abs=0.06)
        latest = datetime.fromisoformat(one["latest_in"])
        by = datetime.fromisoformat("2026-11-26T18:00:00-05:00")
        assert (by - latest).total_seconds() / 60 == pytest.approx(one["allow_min"], abs=0.6)


def test_the_oven_and_the_largest_bird_for_a_clock(api: Any) -> None:
    answers = forecast(api, questions={"within_min": 200, "certainty": 0.8})["answers"]
    assert answers["oven_c"]["value"] == pytest.approx(oven_for(CASE, 200, 0.8), abs=0.6)
    assert answers["largest_mass_kg"]["value"] == pytest.approx(largest_mass_kg(CASE, 200, 0.8), abs=0.01)


def test_what_cannot_be_is_told_in_its_place(api: Any) -> None:
    answers = forecast(api, questions={"within_min": 20})["answers"]
    for sought in ("oven_c", "largest_mass_kg"):
        assert answers[sought]["value"] is None
        assert "too short" in answers[sought]["why"]


def test_no_oven_is_named_for_a_bird_below_its_rule(api: Any) -> None:
    answers = forecast(api, questions={"within_min": 900})["answers"]
    assert answers["oven_c"]["value"] is None
    assert "162.78" in answers["oven_c"]["why"]


def test_what_makes_it_uncertain_and_what_juice_costs(api: Any) -> None:
    answers = forecast(api, questions={"sensitivities": True, "juice": True}, units="metric")["answers"]
    assert [one["name"] for one in answers["sensitivities"]] == [
        one.name for one in sensitivities(CASE) if one.swing_min >= 0.1
    ]
    assert answers["sensitivities"][0]["text"]
    assert [one["change"] for one in answers["juice"]] == ["hotter", "later"]
    assert [one["loss_kg"] for one in answers["juice"]] == [round(one.loss_kg, 3) for one in trades(CASE)]


def test_the_carved_meat_on_its_platter(api: Any) -> None:
    bare = forecast(api, platter={})["platter"]
    foil = forecast(api, platter={"cover": "foil", "warmed": True})["platter"]
    assert bare["clock_left_min"] == 90.0
    assert bare["warm_min"]["p50"] < foil["warm_min"]["p50"]
    assert set(bare["curve"][0]) == {"minute", "meat_c"}


@pytest.mark.parametrize(
    "later",
    [
        {"bastings_min": [60, 120]},
        {"openings_min": [60, 90, 120]},
        {"pan": "light"},
        {"oven_vapour_pa": 0},
        {"preheated": False},
        {"start_c": 1.0},
        {"oven": [{"from_min": 0, "temperature_c": 163, "cover": "foil"}, {"from_min": 60, "temperature_c": 163}]},
        {"oven": [{"from_min": 0, "temperature_c": 163}, {"from_min": 120, "temperature_c": 149}]},
        {"roast": {**ROAST, "count": 2}},
        {"roast": {**ROAST, "state": "part_frozen"}},
        {"roast": {**ROAST, "state": "frozen"}},
        {"roast": {**ROAST, "stuffed": True}},
    ],
)
def test_whatever_slows_a_roast_can_be_said(api: Any, later: dict[str, Any]) -> None:
    assert forecast(api, **later)["ready_min"]["p50"] > forecast(api)["ready_min"]["p50"]


@pytest.mark.parametrize("place", ["foil", "wrapped", "cupboard"])
def test_where_it_rests_can_be_said(api: Any, place: str) -> None:
    assert forecast(api, rest_place=place)["peak_c"]["breast"]["p50"] > forecast(api)["peak_c"]["breast"]["p50"]


@pytest.mark.parametrize(
    "body",
    [
        {"questions": {"certainties": [1.5]}},
        {"questions": {"ready_by": "2026-11-26T18:00:00"}},
        {"questions": {"within_min": 0}},
        {"platter": {"depth_mm": 1}},
        {"pan": "copper"},
    ],
)
def test_a_question_that_is_none_is_refused(api: Any, body: dict[str, Any]) -> None:
    assert api.post("/v1/roasts/forecast", {"roast": ROAST, **body}).status_code == 422
