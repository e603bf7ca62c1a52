"""Plans, recipes and logs as they are kept and given out."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from turnspit.api.problems import no_such
from turnspit.api.schemas.kept_recipes import RecipeNamed, RecipesGiven
from turnspit.api.service import Service
from turnspit.recipes import Recipe, read_recipe, read_starter, starter_keys, starters
from turnspit.storage import KeptPlan, KeptRecipe
from turnspit.words import Reader

SHOWN = 100
"""So many of what was kept last are listed."""


def keep_plan(service: Service, plan: Mapping[str, Any], worded_for: Mapping[str, str]) -> dict[str, Any]:
    """Keep a plan that is given out, so that its page and its calendar can be opened; the plan as it is kept.

    `worded_for` names the language, units and clock of its texts: whoever shows it tells its times likewise.
    """
    document = {**plan, "reader": dict(worded_for)}
    service.store.keep_plan(document["id"], document, datetime.fromisoformat(document["serve_at"]), service.clock())
    return document


def kept_plan(service: Service, plan_id: str) -> KeptPlan:
    """The plan of that id. Raises NotKept without one. Blocks."""
    kept = service.store.plan(plan_id)
    if kept is None:
        raise no_such("plan", plan_id, "ask for it again")
    return kept


def kept_recipe(service: Service, recipe_id: str) -> KeptRecipe:
    """The kept recipe of that id. Raises NotKept without one. Blocks."""
    kept = service.store.recipe(recipe_id)
    if kept is None:
        raise no_such("recipe", recipe_id, "GET /v1/recipes names those there are")
    return kept


def recipe_of(service: Service, recipe_id: str) -> Recipe:
    """The starter recipe of that key, or the kept one of that id, read anew. Raises NotKept. Blocks."""
    if recipe_id in starter_keys():
        return read_starter(recipe_id).recipe
    return _read(kept_recipe(service, recipe_id))


def recipes_there_are(service: Service, reader: Reader) -> RecipesGiven:
    """The starter recipes, and those kept last. Blocks."""
    return RecipesGiven(
        starters=[RecipeNamed.of(one.key, one.recipe, reader, starter=True) for one in starters()],
        kept=[RecipeNamed.of(kept.id, _read(kept), reader, starter=False) for kept in service.store.recipes(SHOWN)],
    )


def _read(kept: KeptRecipe) -> Recipe:
    return read_recipe(kept.document["given"], kept.document["region"])
