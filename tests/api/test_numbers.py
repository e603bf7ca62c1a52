"""The numeric rooms over HTTP: the right thing is passed down, and what comes back has the form of the contract."""

from dataclasses import fields
from typing import Any

import pytest

from turnspit.api.schemas.brines import BRINE_EXAMPLE
from turnspit.api.schemas.chills import CHILL_EXAMPLE
from turnspit.api.schemas.logs import LOG_EXAMPLE
from turnspit.api.schemas.recipes import SCALE_EXAMPLE
from turnspit.api.schemas.safety import CHECK_EXAMPLE, PlanFactsBody, QuestionBody
from turnspit.brine import BrineCase, plan_brine
from turnspit.heat import ChillCase, OvenStep, RoastCase, forecast_chill, forecast_roast
from turnspit.safety import PlanFacts, SafetyQuestion, plan_cooling

ROAST = {"kind": "turkey", "mass_kg": 6.0}
Q = {"p10", "p50", "p90"}


def post(api: Any, path: str, body: dict[str, Any]) -> dict[str, Any]:
    response = api.post(path, body)
    assert response.status_code == 200, response.text
    given: dict[str, Any] = response.json()
    return given


def test_a_forecast_is_that_of_the_heat_room(api: Any) -> None:
    given = post(
        api,
        "/v1/roasts/forecast",
        {
            "roast": {**ROAST, "stuffed": True},
            "start_c": 6,
            "oven": [
                {"from_min": 0, "temperature_c": 230},
                {"from_min": 30, "temperature_c": 165, "convection": True},
            ],
            "target_c": 74,
            "rest_min": 20,
            "altitude_m": 1600,
            "members": 64,
            "seed": 7,
        },
    )
    case = RoastCase(
        "turkey",
        6.0,
        stuffed=True,
        start_c=6.0,
        oven=(OvenStep(0.0, 230.0), OvenStep(30.0, 165.0, True)),
        target_c=74.0,
        rest_min=20.0,
        altitude_m=1600.0,
        members=64,
        seed=7,
    )
    forecast = forecast_roast(case)
    assert given["ready_min"] == forecast.ready_min.document(1)
    assert given["deciding_station"] == forecast.deciding_station
    assert given["peak_c"] == {station: peak.document(1) for station, peak in forecast.peak_c.items()}
    assert given["loss_fraction"] == forecast.loss_fraction.document(4)
    assert given["calibration"] == forecast.calibration
    first = given["curve"][0]
    assert set(first) == {"minute", *(f"{station}_c" for station in forecast.curve_c)}
    assert set(first["breast_c"]) == Q
    assert [point["minute"] for point in given["curve"]] == sorted(point["minute"] for point in given["curve"])


def test_only_kind_and_mass_are_required_and_a_seed_repeats(api: Any) -> None:
    once, again, other = (
        post(api, "/v1/roasts/forecast", {"roast": ROAST, "members": 32, **seed}) for seed in ({}, {}, {"seed": 2})
    )
    assert once == again
    assert once != other


def test_a_chill_is_that_of_the_heat_room(api: Any) -> None:
    given = post(api, "/v1/chills", CHILL_EXAMPLE)
    forecast = forecast_chill(
        ChillCase(
            "cooked beef",
            "slab",
            (50.0,),
            mass_kg=0.94,
            medium="air",
            medium_c=0.0,
            air_m_s=1.2,
            from_c=70.0,
            to_c=10.0,
        )
    )
    assert given["hours"] == forecast.hours.document()
    assert given["curve"][0]["slowest_c"]["p50"] == pytest.approx(70, abs=0.1)


def test_a_brine_is_that_of_the_brine_room(api: Any) -> None:
    given = post(api, "/v1/brines", BRINE_EXAMPLE)
    plan = plan_brine(BrineCase(mass_kg=8.165, vessel_l=18.93))
    assert given["salt_g"] == pytest.approx(plan.salt_g, abs=0.001)
    assert given["fits"] == plan.fits
    assert given["finished_salt_percent"] == plan.finished_salt_percent.document()
    assert given["steps"]


def test_an_injected_bird_gets_no_brine(api: Any) -> None:
    given = post(api, "/v1/brines", {**BRINE_EXAMPLE, "sold_as": "injected"})
    assert given["allowed"] is False
    assert given["salt_g"] == 0
    assert "injected-no-brine" in {caution["rule"] for caution in given["cautions"]}


def test_convert(api: Any) -> None:
    given = post(api, "/v1/convert", {"value": 325, "unit": "degF", "target_unit": "degC"})
    assert given["value"] == pytest.approx(162.8, abs=0.05)


def test_scaling_a_recipe_from_text_and_from_json_ld(api: Any) -> None:
    given = post(api, "/v1/recipes/scale", SCALE_EXAMPLE)
    assert given["factor"] == 1.75
    assert given["makes"] == "Serves 14"
    assert given["lines"][0]["text"] == "7 cups turkey stock"
    assert {flag["allergen"] for flag in given["allergens"]} == {"wheat"}
    back = post(api, "/v1/recipes/scale", {"recipe": given["json_ld"], "servings": 8})
    assert back["lines"][0]["text"] == "4 cups turkey stock"
    metric = post(api, "/v1/recipes/scale", {**SCALE_EXAMPLE, "units": "metric"})
    assert "L" in metric["lines"][0]["text"]


def test_scaling_by_pan_and_by_what_is_short(api: Any) -> None:
    wish = {key: value for key, value in SCALE_EXAMPLE.items() if key != "servings"}
    by_pan = post(api, "/v1/recipes/scale", {**wish, "pan_from": "GN 1/2 65 mm", "pan_to": "GN 1/1 65 mm"})
    assert by_pan["factor"] > 1.8
    short = post(api, "/v1/recipes/scale", {**wish, "short": {"item": "turkey stock", "value": 2, "unit": "cup"}})
    assert short["factor"] == 0.5


@pytest.mark.parametrize("target", [{}, {"servings": 0}, {"servings": 4, "factor": 2}, {"pan_to": "GN 1/1 65 mm"}])
def test_a_target_that_is_none_is_refused(api: Any, target: dict[str, Any]) -> None:
    response = api.post("/v1/recipes/scale", {"recipe": SCALE_EXAMPLE["recipe"], **target})
    assert response.status_code == 422
    assert response.json()["way_out"]


def test_a_question_is_checked(api: Any) -> None:
    given = post(api, "/v1/safety/checks", CHECK_EXAMPLE)
    assert given["grade"] == "stop"
    first, last = given["findings"][0], given["findings"][-1]
    assert (first["rule"], first["do"], first["kitchen"]) == ("two-hours", "discard", "home")
    assert last["rule"] == "local-codes"


def test_a_question_can_say_all_that_the_safety_room_hears() -> None:
    heard = {each.name for each in fields(SafetyQuestion)}
    assert set(QuestionBody.model_fields) - {"probe_error_k"} == heard
    assert set(PlanFactsBody.model_fields) == {each.name for each in fields(PlanFacts)}


def test_food_that_was_measured_hot_all_the_time_has_not_begun_its_hours(api: Any) -> None:
    asked = {"topic": "left_out", "subject": "gravy", "elapsed_h": 3, "temperature_c": 65}
    assert post(api, "/v1/safety/checks", {"question": asked})["grade"] == "stop"
    assert post(api, "/v1/safety/checks", {"question": {**asked, "held": True}})["grade"] == "info"


@pytest.mark.parametrize("error_k", [2, -2])
def test_a_probe_that_is_false_never_makes_an_answer_milder(api: Any, error_k: float) -> None:
    hot = {"topic": "reading", "subject": "turkey", "temperature_c": 75}
    cold = {"topic": "cold_holding", "temperature_c": 4}
    for asked, turned in ((hot, error_k > 0), (cold, error_k < 0)):
        plain, told = (
            post(api, "/v1/safety/checks", {"question": {**asked, "probe_error_k": error}})["grade"]
            for error in (0, error_k)
        )
        assert (plain, told) == ("info", "stop" if turned else "info")
    entries = [{"at": "2026-11-26T20:00:00-05:00", "who": "AB", "temperature_c": 61}]
    log = {"kind": "hot_holding", "item": "gravy", "entries": entries, "probe_error_k": error_k}
    given = post(api, "/v1/safety/checks", {"log": log, "now": "2026-11-26T20:10:00-05:00", "kitchen": "home"})
    assert given["grade"] == ("warn" if error_k > 0 else "ok")


@pytest.mark.parametrize(("interval_min", "status"), [(0.5, 422), (1, 200), (1440, 200), (1441, 422)])
def test_an_interval_lies_between_a_minute_and_a_day(api: Any, interval_min: float, status: int) -> None:
    log = {"kind": "thaw", "item": "turkey", "entries": [], "interval_min": interval_min}
    assert api.post("/v1/safety/checks", {"log": log}).status_code == status
    kept = api.post("/v1/logs", {"kind": "thaw", "item": "turkey", "interval_min": interval_min})
    assert kept.status_code == (201 if status == 200 else status)


def test_a_plan_that_breaks_a_rule_names_the_nearest_that_does_not(api: Any) -> None:
    given = post(api, "/v1/safety/checks", {"plan": {"kind": "turkey", "oven_c": 93, "roast_h": 10}})
    assert given["allowed"] is False
    assert given["changed"]["oven_c"] == pytest.approx(162.8, abs=0.1)


def test_a_cooling_log_is_checked(api: Any) -> None:
    entries = [
        {"at": f"2026-11-26T{hour}:00:00-05:00", "who": "AB", "temperature_c": read_c}
        for hour, read_c in ((20, 57), (21, 45), (22, 35), (23, 30))
    ]
    log = {"kind": "cooling", "item": "stock", "entries": entries}
    given = post(api, "/v1/safety/checks", {"log": log, "now": "2026-11-26T23:10:00-05:00", "kitchen": "licensed"})
    assert given["grade"] == "stop"
    assert given["open_stops"]
    thrown = {"at": "2026-11-26T23:05:00-05:00", "who": "AB", "action": "discarded"}
    closed = post(
        api,
        "/v1/safety/checks",
        {"log": {**log, "entries": [*entries, thrown]}, "now": "2026-11-26T23:10:00-05:00", "kitchen": "licensed"},
    )
    assert closed["closed"] is True


@pytest.mark.parametrize("depth_mm", [50, 300])
def test_a_cooling_is_planned_as_the_safety_room_does(api: Any, depth_mm: int) -> None:
    cooling = {"food": "cooked beef", "shape": "slab", "dims_mm": [depth_mm], "medium_c": 4, "from_c": 70}
    given = post(api, "/v1/safety/checks", {"cooling": cooling})
    plan = plan_cooling(ChillCase("cooked beef", "slab", (float(depth_mm),), medium_c=4.0, from_c=70.0))
    assert given["grade"] == plan.finding.severity
    assert given["findings"][0]["rule"] == "cooling-two-stage"
    assert given["cooling"]["total_h"] == plan.total_h.document()
    assert plan.iced_depth_mm is not None
    assert given["cooling"]["iced_depth_mm"] == int(plan.iced_depth_mm)


@pytest.mark.parametrize(
    "body",
    [
        {},
        {"question": CHECK_EXAMPLE["question"], "plan": {}},
        {"log": {"kind": "cooling", "item": "stock", "entries": [{"at": "2026-11-26T20:00:00-05:00", "who": "AB"}]}},
        {"log": {"kind": "cooling", "item": "stock", "entries": [{"at": "2026-11-26T20:00:00", "who": "AB"}]}},
        {"question": {"topic": "left_out", "elapsed_h": -1}},
    ],
)
def test_a_check_of_nothing_is_refused(api: Any, body: dict[str, Any]) -> None:
    assert api.post("/v1/safety/checks", body).status_code == 422


def test_every_example_of_the_openapi_document_is_answered(api: Any) -> None:
    document = api.get("/openapi.json").json()
    log_id = api.post("/v1/logs", LOG_EXAMPLE).json()["id"]
    tried = 0
    for path, methods in document["paths"].items():
        body = methods.get("post", {}).get("requestBody")
        if body is None:
            continue
        name = body["content"]["application/json"]["schema"]["$ref"].rpartition("/")[2]
        for example in document["components"]["schemas"][name]["examples"]:
            assert api.post(path.replace("{log_id}", log_id), example).is_success, path
            tried += 1
    assert tried >= 14


def test_measured_readings_earn_what_the_table_prints(api):
    """FSIS Appendix A (2021), Table 4: turkey, 12 percent fat, asks 3.8 min at 151 F (66.1 C); here 35 min near it."""
    course = [(0, 4.0), (60, 30.0), (120, 55.0), *((120 + 5 * step, 66.0) for step in range(1, 9))]
    readings = [{"minute": minute, "temperature_c": core_c, "station": "thigh"} for minute, core_c in course]
    body = {"lethality": {"kind": "turkey", "readings": readings, "moisture": "sealed_bag"}, "kitchen": "home"}
    given = post(api, "/v1/safety/checks", body)["lethality"]
    assert given["coldest"] == "thigh"
    assert given["met"]
    assert given["credited_log10"] >= given["required_log10"] == 7.0
    bare = {"lethality": {**body["lethality"], "moisture": None}}
    assert post(api, "/v1/safety/checks", bare)["lethality"]["credited_log10"] == 0.0


def test_null_is_not_said_and_an_oven_may_have_a_history(api):
    roast = {"kind": "turkey", "mass_kg": 6.0, "bone_in": None, "count": None}
    plain = post(api, "/v1/roasts/forecast", {"roast": roast, "target_c": None, "oven": None})
    opened = post(api, "/v1/roasts/forecast", {"roast": roast, "openings_min": [60, 90, 120], "rest_place": "foil"})
    assert opened["ready_min"]["p50"] > plain["ready_min"]["p50"]
    one = post(api, "/v1/roasts/forecast", {"roast": roast, "members": 1})["ready_min"]
    assert one["p10"] == one["p90"]
    chill = {"food": "cooked beef", "shape": "bird", "mass_kg": 3.0, "dims_mm": None, "air_m_s": None}
    assert post(api, "/v1/chills", chill)["hours"]["p50"] > 0
    assert api.post("/v1/roasts/forecast", {"roast": {"kind": None, "mass_kg": 6}}).status_code == 422


def test_a_brine_names_its_vessels_its_cooling_without_ice_and_the_hours_to_a_wish(api):
    given = api.post("/v1/brines", {"mass_kg": 8.165, "vessel_l": 18.93, "finished_percent": 1.0}).json()
    litres = [vessel["litres"] for vessel in given["vessels_that_fit"]]
    assert litres == sorted(litres)
    assert litres[0] >= given["vessel_needed_l"]
    assert "high" in given["vessels_that_fit"][0]["text"]
    assert given["without_ice"]["from_c"] > 20
    assert given["without_ice"]["hours"]["p50"] > 12
    assert given["hours_low"] < given["hours_to_finished"]["p50"] < given["hours_high"]
    long = api.post("/v1/brines", {"mass_kg": 8.165, "hours": 72}).json()
    assert (long["allowed"], long["hours"]) == (False, 48)
    assert long["headline"].startswith("Not 72 h")
    dry = api.post("/v1/brines", {"mass_kg": 8.165, "method": "dry"}).json()
    assert (dry["vessels_that_fit"], dry["without_ice"], dry["hours_to_finished"]) == ([], None, None)


@pytest.mark.parametrize(
    ("said", "kind", "told"),
    [
        ("Turkey", "turkey", False),
        ("pork-loin", "pork_loin", False),
        ("leg of lamb", "lamb_leg", True),
        ("prime rib", "beef_rib", True),
        ("Spatchcocked chicken", "chicken_spatchcock", True),
        ("pierna de cordero", "lamb_leg", True),
        ("ham", "fresh_ham", True),
    ],
)
def test_a_roast_may_go_by_any_name_of_the_trade(api: Any, said: str, kind: str, told: bool) -> None:
    body = {"oven": [{"temperature_c": 177}], "target_c": 75.0, "members": 8}
    own, named = (
        post(api, "/v1/roasts/forecast", {**body, "roast": {"kind": name, "mass_kg": 2.0}}) for name in (kind, said)
    )
    assert named["ready_min"] == own["ready_min"]
    assert [said in text for text in named["assumptions"][:1]] == [told]
    assert named["assumptions"][int(told) :] == own["assumptions"]


def test_a_meat_without_its_cut_is_not_guessed(api: Any) -> None:
    response = api.post("/v1/roasts/forecast", {"roast": {"kind": "beef", "mass_kg": 2.0}})
    assert response.status_code == 422
    assert "beef_rib, beef_tenderloin, beef_round" in response.text
