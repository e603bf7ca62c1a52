"""Recipes over HTTP: kept as given, read back in three forms, scaled by id, deleted; the starters stay."""

import json
from typing import Any

import pytest

from turnspit.recipes import read_recipe, scale_recipe, starter_keys, write_json_ld

TEXT = "Pan gravy\nServes 8\n\n4 cups stock\n1/2 cup flour\n1 tsp salt\n\nMethod\nWhisk, then simmer 10 minutes."
PAGE = '<html><script type="application/ld+json">{}</script></html>'


def kept(api: Any, recipe: object = TEXT, **more: Any) -> dict[str, Any]:
    response = api.post("/v1/recipes", {"recipe": recipe, **more})
    assert response.status_code == 201, response.text
    given: dict[str, Any] = response.json()
    assert response.headers["location"] == f"/v1/recipes/{given['id']}"
    return given


def test_a_recipe_is_kept_and_read_back(api: Any) -> None:
    given = kept(api)
    assert api.get(f"/v1/recipes/{given['id']}").json() == given
    assert [one["id"] for one in api.get("/v1/recipes").json()["kept"]] == [given["id"]]
    assert api.send("DELETE", f"/v1/recipes/{given['id']}").status_code == 204
    gone = api.get(f"/v1/recipes/{given['id']}")
    assert (gone.status_code, gone.json()["type"]) == (404, "urn:turnspit:problem:not-kept")
    assert api.send("DELETE", f"/v1/recipes/{given['id']}").status_code == 404


def test_text_json_ld_and_a_page_that_holds_it_are_the_same_recipe(api: Any) -> None:
    ld = write_json_ld(read_recipe(TEXT))
    forms = [kept(api, form)["ingredients"] for form in (TEXT, ld, json.dumps(ld), PAGE.format(json.dumps(ld)))]
    assert [[one["item"] for one in form] for form in forms] == [["stock", "flour", "salt"]] * 4


def test_a_file_may_be_the_body_itself(api: Any) -> None:
    ld = json.dumps(write_json_ld(read_recipe(TEXT)))
    page = (
        "<html><h1>Pan gravy</h1><h2>Ingredients</h2><ul><li>4 cups stock<li>1/2 cup flour<li>1 tsp salt</ul></html>"
    )
    files = {
        "text/plain": TEXT,
        "text/html": page,
        "application/ld+json": ld,
        "text/html; charset=utf-8": PAGE.format(ld),
    }
    for media, content in files.items():
        response = api.send("POST", "/v1/recipes?region=AU", content=content, headers={"content-type": media})
        assert response.status_code == 201, response.text
        assert [one["item"] for one in response.json()["ingredients"]] == ["stock", "flour", "salt"]
        assert response.json()["region"] == "AU"


def test_a_body_that_is_no_recipe_says_what_would_be(api: Any) -> None:
    for media, content in {
        "image/png": b"x",
        "application/json": b"{",
        "text/html": b"<html><p>Hello</p></html>",
    }.items():
        response = api.send("POST", "/v1/recipes", content=content, headers={"content-type": media})
        assert response.status_code == 422
        assert response.json()["way_out"]
    missing = api.post("/v1/recipes", {"recipes": "x"}).json()
    assert {"recipe", "recipes"} <= {fault["name"] for fault in missing["errors"]}


def test_what_was_read_of_a_line_is_told(api: Any) -> None:
    line = kept(
        api, "Pie\nIngredients\n1 (14 oz) can tomatoes or 2 cups fresh tomatoes, chopped (ripe)\nMethod\nBake."
    )
    (one,) = line["ingredients"]
    assert one["amount"] == {
        "value": 1.0,
        "high": None,
        "unit": "can",
        "size": "",
        "about": False,
        "each": "14 oz",
        "equals": "",
    }
    assert (one["item"], one["preparation"], one["notes"]) == ("tomatoes", "chopped", ["ripe"])
    assert one["alternatives"] == ["2 cups fresh tomatoes"]


def test_the_other_forms_read_back_to_the_same(api: Any) -> None:
    given = kept(api)
    ld = api.get(f"/v1/recipes/{given['id']}", headers={"accept": "application/ld+json"})
    assert ld.headers["content-type"] == "application/ld+json"
    assert kept(api, ld.json())["json_ld"] == given["json_ld"]
    text = api.get(f"/v1/recipes/{given['id']}", headers={"accept": "text/plain"})
    assert text.headers["content-type"].startswith("text/plain")
    assert kept(api, text.text)["json_ld"] == given["json_ld"]


def test_a_line_that_cannot_be_read_is_kept_whole(api: Any) -> None:
    strange = "4 cups stock\n§§ 3 ½ ⅞ of the usual\n1/2 cup flour"
    given = kept(api, f"Gravy\nServes 8\n\nIngredients\n{strange}\n\nMethod\nWhisk.")
    assert [one["text"] for one in given["ingredients"]] == strange.split("\n")


def test_starters_are_listed_readable_and_stay(api: Any) -> None:
    assert {one["id"] for one in api.get("/v1/recipes").json()["starters"]} == set(starter_keys())
    given = api.get("/v1/recipes/gravy").json()
    assert given["starter"] is True
    assert {step["station"] for step in given["steps"]} == {"stove"}
    refused = api.send("DELETE", "/v1/recipes/gravy")
    assert refused.status_code == 422
    assert "stays" in refused.json()["detail"]


def test_a_kept_recipe_is_scaled_by_its_id_as_the_room_does(api: Any) -> None:
    recipe_id = kept(api)["id"]
    for body in ({"servings": 20}, {"factor": 0.5}, {"short": {"item": "flour", "value": 100, "unit": "g"}}):
        given = api.post("/v1/recipes/scale", {"recipe_id": recipe_id, **body}).json()
        wish = {**body, **({"short": ("flour", 100, "g")} if "short" in body else {})}
        scaled = scale_recipe(read_recipe(TEXT), **wish)
        assert [line["text"] for line in given["lines"]] == [line.text() for line in scaled.lines]
        assert [rule["rule"] for rule in given["rules"]] == [rule.rule for rule in scaled.rules]


def test_both_systems_and_a_rule_turned_off(api: Any) -> None:
    recipe = "Herb butter\nServes 4\n\nIngredients\n1 cup butter\n1 tbsp dried thyme\n\nMethod\nMix."
    body = {"recipe": recipe, "servings": 16, "units": "both"}
    on = api.post("/v1/recipes/scale", body).json()
    off = api.post("/v1/recipes/scale", {**body, "rules_off": ["herbs-half-steps"]}).json()
    assert [on["lines"][1][key] for key in ("text", "rule", "linear")] == [
        "3 tbsp dried thyme",
        "herbs-half-steps",
        "4 tbsp",
    ]
    assert [off["lines"][1][key] for key in ("text", "rule")] == ["4 tbsp dried thyme", ""]
    assert [line["other"] for line in off["lines"]] == ["900 g", "10.8 g"]
    assert [rule["on"] for rule in off["rules"] if rule["rule"] == "herbs-half-steps"] == [False]


@pytest.mark.parametrize(
    ("body", "told"),
    [
        ({"recipe": ""}, "recipe"),
        ({"recipe": "[]"}, "recipe"),
        ({"recipe": {"@type": "Recipe", "recipeYield": "0 servings", "recipeIngredient": ["1 egg"]}}, "yield"),
        ({"recipe": TEXT, "region": "Mars"}, "region"),
        ({"recipe": 7}, "recipe"),
        ({}, "recipe"),
    ],
)
def test_what_is_no_recipe_is_refused_with_a_way_out(api: Any, body: dict[str, Any], told: str) -> None:
    response = api.post("/v1/recipes", body)
    assert response.status_code == 422
    assert response.json()["name"].startswith(told)
    assert response.json()["way_out"]


def test_scaling_takes_the_recipe_or_its_id_and_not_both(api: Any) -> None:
    for body in ({"factor": 2}, {"factor": 2, "recipe": TEXT, "recipe_id": "gravy"}):
        assert api.post("/v1/recipes/scale", body).status_code == 422
    assert api.post("/v1/recipes/scale", {"factor": 2, "recipe_id": "none"}).status_code == 404
