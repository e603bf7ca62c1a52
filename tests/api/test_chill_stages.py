"""`POST /v1/chills`: the two stages of the food code, read off the curve."""

from typing import Any

from turnspit.heat import ChillCase, forecast_chill

CASE = {"food": "cooked turkey", "shape": "slab", "dims_mm": [40], "from_c": 70, "to_c": 5}


def chilled(api: Any, **changed: Any) -> dict[str, Any]:
    given = api.post("/v1/chills", {**CASE, **changed})
    assert given.status_code == 200, given.json()
    return dict(given.json())


def test_both_stages_are_those_of_the_curve(api: Any) -> None:
    stages = chilled(api)["stages"]
    forecast = forecast_chill(ChillCase("cooked turkey", "slab", (40.0,), from_c=70.0, to_c=5.0))
    assert stages["first_h"] == forecast.hours_between(57.22, 21.11).document()
    assert stages["total_h"] == forecast.hours_between(57.22, 5.0).document()


def test_a_stage_that_the_curve_does_not_reach_is_null(api: Any) -> None:
    stages = chilled(api, to_c=15)["stages"]
    assert stages["first_h"]["p50"] > 0
    assert stages["total_h"] is None


def test_what_starts_cooler_begins_its_first_stage_there(api: Any) -> None:
    assert chilled(api, from_c=40)["stages"]["first_h"]["p50"] < chilled(api)["stages"]["first_h"]["p50"]
    assert chilled(api, from_c=15)["stages"]["first_h"]["p90"] == 0.0
