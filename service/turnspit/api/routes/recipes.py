"""Recipes kept, read back in three forms, scaled; and the lists of a dinner made of them."""

from __future__ import annotations

import json
from typing import Annotated, Any
from uuid import uuid4

from fastapi import APIRouter, Depends, Request, Response

from turnspit.api.dinners import lists_of
from turnspit.api.kept import kept_recipe, recipe_of, recipes_there_are
from turnspit.api.pasted import TAKES_FILES, FileRoute
from turnspit.api.readers import reader_for
from turnspit.api.schemas.kept_recipes import RecipeBody, RecipeGiven, RecipesGiven
from turnspit.api.schemas.lists import ListsBody, ListsGiven
from turnspit.api.schemas.recipes import ScaleBody, ScaleGiven
from turnspit.api.service import Service, service_of
from turnspit.errors import Impossible
from turnspit.recipes import Recipe, read_recipe, starter_keys, write_json_ld, write_text
from turnspit.words import Reader

router = APIRouter(tags=["recipes"])
files = APIRouter(route_class=FileRoute)
Served = Annotated[Service, Depends(service_of)]

JSON_LD, PLAIN = "application/ld+json", "text/plain"
FORMS: dict[int | str, dict[str, Any]] = {
    200: {"content": {form: {"schema": {"type": "string"}} for form in (JSON_LD, PLAIN)}}
}


@files.post("/v1/recipes", response_model=RecipeGiven, status_code=201, openapi_extra=TAKES_FILES)
async def keep(body: RecipeBody, request: Request, response: Response, service: Served) -> RecipeGiven:
    """Reads a recipe and keeps it: in JSON, or as the text, the page or the JSON-LD file itself.

    What could not be read is kept whole and named in `notes`.
    """
    given = await service.work(keep_recipe, service, body, reader_for(request, service.now()))
    response.headers["location"] = f"/v1/recipes/{given.id}"
    return given


router.include_router(files)


@router.get("/v1/recipes", response_model=RecipesGiven)
async def show_all(request: Request, service: Served) -> RecipesGiven:
    """The starter recipes, and those kept last."""
    return await service.work(recipes_there_are, service, reader_for(request, service.now()))


@router.get("/v1/recipes/{recipe_id}", response_model=RecipeGiven, responses=FORMS)
async def show(recipe_id: str, request: Request, response: Response, service: Served) -> Any:
    """A recipe; with `Accept: application/ld+json` as a schema.org Recipe, with `text/plain` as clean text."""
    reader = reader_for(request, service.now())
    recipe = await service.work(recipe_of, service, recipe_id)
    accepted = request.headers.get("accept", "")
    if JSON_LD in accepted:
        return _json_ld(recipe)
    if PLAIN in accepted:
        text = write_text(recipe, language=reader.language)
        return Response(text, media_type=f"{PLAIN}; charset=utf-8", headers={"vary": "accept"})
    response.headers["vary"] = "accept"
    return RecipeGiven.whole(recipe_id, recipe, reader, starter=recipe_id in starter_keys())


@router.delete("/v1/recipes/{recipe_id}", status_code=204)
async def forget(recipe_id: str, service: Served) -> Response:
    """Deletes a kept recipe for good."""
    if recipe_id in starter_keys():
        raise Impossible("recipe_id", recipe_id, "is a starter recipe and stays", "delete one that you kept")
    await service.work(kept_recipe, service, recipe_id)
    await service.work(service.store.delete_recipe, recipe_id)
    return Response(status_code=204)


@router.post("/v1/recipes/scale", response_model=ScaleGiven)
async def scale(body: ScaleBody, request: Request, service: Served) -> ScaleGiven:
    """A recipe for another number, mass, vessel or pan; what does not scale alike is named with its source."""
    units = None if body.units == "both" else body.units
    reader = reader_for(request, service.now(), body.language, units, body.clock)
    return await service.work(scaled, service, body, reader)


@router.post("/v1/lists", response_model=ListsGiven)
async def lists(body: ListsBody, request: Request, service: Served) -> ListsGiven:
    """Shopping by aisle, preparation by day and station, equipment at once, orders and allergens of a dinner."""
    reader = reader_for(request, service.now(), body.language, body.units, body.clock)
    return await service.work(lists_of, service, body, reader)


def scaled(service: Service, body: ScaleBody, reader: Reader) -> ScaleGiven:
    """The recipe named or given, scaled. Blocks; pages call it too."""
    recipe = recipe_of(service, body.recipe_id) if body.recipe_id else read_recipe(body.text, body.region)
    return ScaleGiven.of(body.scaled(recipe), reader, body)


def keep_recipe(service: Service, body: RecipeBody, reader: Reader) -> RecipeGiven:
    """Read a recipe, then keep what was given, so that it loses nothing. Raises what reading raises. Blocks."""
    recipe = read_recipe(body.text, body.region)
    if not recipe.ingredients:
        raise Impossible(
            "recipe", recipe.name, "has no ingredients", "paste the name, the ingredients and the method"
        )
    recipe_id = uuid4().hex
    service.store.keep_recipe(recipe_id, {"given": body.text, "region": body.region}, service.clock())
    return RecipeGiven.whole(recipe_id, recipe, reader, starter=False)


def _json_ld(recipe: Recipe) -> Response:
    text = json.dumps(write_json_ld(recipe), ensure_ascii=False, indent=2)
    return Response(text, media_type=JSON_LD, headers={"vary": "accept"})
