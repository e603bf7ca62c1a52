"""The dishes of a dinner, sized to its diners, and the lists that come of them."""

from __future__ import annotations

from dataclasses import replace

from turnspit.api.kept import recipe_of
from turnspit.api.schemas.lists import DishBody, ListsBody, ListsGiven, listed
from turnspit.api.service import Service
from turnspit.recipes import Recipe, menu, scale_recipe
from turnspit.words import Reader


def lists_of(service: Service, body: ListsBody, reader: Reader) -> ListsGiven:
    """All lists of a dinner. Raises what reading, sizing and scaling raise. Blocks; pages call it too."""
    dishes = [_scaled(service, dish) for dish in body.dishes]
    sizing = None
    if body.dinner is not None:
        planned = menu(body.dinner.case(), tuple(body.dinner.sides), brine=body.dinner.brine)
        sizing, dishes = planned.sizing, [*planned.recipes, *dishes]
    return listed(body, _told_apart(dishes), sizing, service.settings.kitchen, reader)


def _scaled(service: Service, dish: DishBody) -> Recipe:
    recipe = recipe_of(service, dish.recipe_id)
    if dish.servings is not None:
        return scale_recipe(recipe, servings=dish.servings).shown()
    if dish.factor is not None:
        return scale_recipe(recipe, factor=dish.factor).shown()
    return recipe


def _told_apart(dishes: list[Recipe]) -> list[Recipe]:
    """Dishes of the same name numbered: each is a dish of its own on every list."""
    seen: dict[str, int] = {}
    apart = []
    for dish in dishes:
        seen[dish.name] = seen.get(dish.name, 0) + 1
        apart.append(dish if seen[dish.name] == 1 else replace(dish, name=f"{dish.name} ({seen[dish.name]})"))
    return apart
