"""Sizes, lists and brines over HTTP: what the rooms below give, nothing lost on the way."""

from typing import Any

import pytest

from turnspit.brine import BrineCase, plan_brine
from turnspit.recipes import SizeCase, menu, prep_list, shopping_list, size_roast


def post(api: Any, path: str, body: dict[str, Any]) -> dict[str, Any]:
    response = api.post(path, body)
    assert response.status_code == 200, response.text
    given: dict[str, Any] = response.json()
    return given


def test_a_size_is_that_of_the_recipes_room(api: Any) -> None:
    given = post(api, "/v1/sizes", {"covers": 200, "children": 20, "non_eaters": 6, "appetite": "hungry"})
    sizing = size_roast(SizeCase(200, children=20, non_eaters=6, appetite="hungry"))
    assert (given["count"], given["each_kg"]) == (sizing.count, round(sizing.each_kg, 2))
    assert given["count"] * given["each_kg"] >= given["needed_kg"] - 0.5
    assert len(given["ways"]) == 1 + len(sizing.others)
    assert given["ways"][0]["legs"] == 2 * sizing.count
    assert {side["item"] for side in given["sides"]} == {side.item for side in sizing.sides}


def test_two_smaller_ones_are_ready_before_one_large_one(api: Any) -> None:
    ways = post(api, "/v1/sizes", {"covers": 24})["ways"]
    one = next(way for way in ways if way["count"] == 1)
    two = next(way for way in ways if way["count"] == 2)
    assert two["ready_min"]["p50"] < one["ready_min"]["p50"]


@pytest.mark.parametrize(
    ("body", "name"),
    [
        ({"covers": 0}, "covers"),
        ({"covers": 6, "children": 7}, "children"),
        ({"covers": 6, "kind": "mammoth"}, "kind"),
        ({"covers": 6, "largest_piece_kg": 0}, "largest_piece_kg"),
        ({"covers": 6.5}, "covers"),
        ({}, "covers"),
    ],
)
def test_a_size_for_nobody_is_refused(api: Any, body: dict[str, Any], name: str) -> None:
    response = api.post("/v1/sizes", body)
    assert response.status_code == 422
    assert response.json()["name"] == name
    assert response.json()["way_out"]


def test_the_lists_of_a_dinner_are_those_of_the_recipes_room(api: Any) -> None:
    given = post(api, "/v1/lists", {"dinner": {"covers": 14, "brine": True}, "serve_on": "2026-11-26"})
    dinner = menu(SizeCase(14), brine=True)
    shopping = shopping_list(dinner.recipes)
    assert [dish["name"] for dish in given["dishes"]] == [recipe.name for recipe in dinner.recipes]
    assert [aisle["aisle"] for aisle in given["shopping"]["aisles"]] == list(shopping.aisles)
    shown = [line["item"] for aisle in given["shopping"]["aisles"] for line in aisle["lines"]]
    assert shown == [line.item for line in shopping.lines]
    steps = [task for day in given["prep"] for one in day["stations"] for task in one["tasks"]]
    assert len(steps) == sum(len(recipe.steps) for recipe in dinner.recipes)
    assert [day["days_before"] for day in given["prep"]] == [day.days_before for day in prep_list(dinner.recipes)]
    assert all(line["order_by"] < line["deliver_on"] < "2026-11-26" for line in given["order"])
    assert {line["receive_at_most_c"] for line in given["order"]} == {None, 5.0}
    assert "receiving-41" in {caution["rule"] for caution in given["cautions"]}


def test_dishes_by_their_ids_scaled_and_told_apart(api: Any) -> None:
    dishes = [{"recipe_id": "gravy", "servings": 28}, {"recipe_id": "gravy", "factor": 0.5}, {"recipe_id": "gravy"}]
    given = post(api, "/v1/lists", {"dishes": dishes})
    assert [dish["makes"] for dish in given["dishes"]] == ["Serves 28", "Serves 7", "Serves 14"]
    assert len({dish["name"] for dish in given["dishes"]}) == 3
    once = post(api, "/v1/lists", {"dishes": [{"recipe_id": "gravy"}]})
    flour = [
        next(line for aisle in one["shopping"]["aisles"] for line in aisle["lines"] if "flour" in line["item"])
        for one in (given, once)
    ]
    assert flour[0]["needed"] == pytest.approx(3.5 * flour[1]["needed"], rel=0.001)


def test_prices_add_up_and_what_has_none_is_counted(api: Any) -> None:
    shopping = post(api, "/v1/lists", {"dinner": {"covers": 14}, "prices": {"onion": 1.5}})["shopping"]
    lines = [line for aisle in shopping["aisles"] for line in aisle["lines"]]
    assert shopping["cost"] == pytest.approx(sum(line["cost"] or 0 for line in lines), abs=0.05)
    assert shopping["cost"] > 0
    assert shopping["unpriced"] == sum(line["cost"] is None for line in lines)


def test_a_guest_who_must_avoid_something(api: Any) -> None:
    dishes = post(api, "/v1/lists", {"dinner": {"covers": 14}, "avoid": ["wheat"]})["dishes"]
    for dish in dishes:
        assert dish["grade"] == ("stop" if "wheat" in dish["allergens"] else "warn")
    assert {dish["grade"] for dish in dishes} == {"stop", "warn"}


@pytest.mark.parametrize(
    ("body", "status"),
    [
        ({}, 422),
        ({"dishes": []}, 422),
        ({"dishes": [{"recipe_id": "none"}]}, 404),
        ({"dishes": [{"recipe_id": "gravy", "servings": 2, "factor": 2}]}, 422),
        ({"dinner": {"covers": 6, "sides": ["none"]}}, 422),
        ({"dinner": {"covers": 6, "kind": "mammoth"}}, 422),
        ({"dinner": {"covers": 6}, "prices": {"onion": -1}}, 422),
        ({"dinner": {"covers": 6}, "serve_on": "Thursday"}, 422),
    ],
)
def test_a_dinner_that_is_none_is_refused(api: Any, body: dict[str, Any], status: int) -> None:
    response = api.post("/v1/lists", body)
    assert response.status_code == status, response.text
    assert response.json()["way_out"]


@pytest.mark.parametrize("method", ["wet", "equilibrium", "dry"])
def test_every_method_of_salting_is_that_of_the_brine_room(api: Any, method: Any) -> None:
    given = post(api, "/v1/brines", {"mass_kg": 6.35, "method": method, "vessel_l": 10, "tap_c": 20})
    plan = plan_brine(BrineCase(mass_kg=6.35, method=method, vessel_l=10, tap_c=20))
    assert given["headline"]
    assert given["salt_g"] == pytest.approx(plan.salt_g, abs=0.001)
    assert given["cold_water_l"] == pytest.approx(plan.cold_water_l, abs=0.001)
    assert (given["fits"], given["would_fit"], given["vessels"]) == (plan.fits, plan.would_fit, plan.vessels)
    assert given["short_l"] == pytest.approx(plan.short_l, abs=0.001)
    assert [profile["part"] for profile in given["profiles"]] == [profile.part for profile in plan.profiles]
    assert len(given["notes"]) == len(plan.notes)
    if method == "dry":
        assert given["water_l"] == 0


def test_a_target_out_of_range_is_refused(api: Any) -> None:
    response = api.post("/v1/brines", {"mass_kg": 6.35, "method": "equilibrium", "target_percent": 40})
    assert response.status_code == 422
    assert response.json()["name"] == "target_percent"
