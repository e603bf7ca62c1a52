"""The pages of recipes: those there are, one of them scaled, and the lists of a dinner."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response
from pydantic import ValidationError

from turnspit.api.dinners import lists_of
from turnspit.api.kept import recipe_of, recipes_there_are
from turnspit.api.problems import NotKept
from turnspit.api.readers import reader_for
from turnspit.api.routes.recipes import keep_recipe, scaled
from turnspit.api.schemas.kept_recipes import RecipeBody
from turnspit.api.schemas.lists import ListsBody
from turnspit.api.schemas.recipes import ScaleBody
from turnspit.api.service import Service
from turnspit.errors import Impossible, TurnspitError
from turnspit.message import Message
from turnspit.quantities import convert, read_amount
from turnspit.recipes import Recipe, named_roast, starters
from turnspit.recipes.allergens import allergen_names
from turnspit.words import say
from turnspit.words.reader import Units
from turnspit_web.problems import refused_by
from turnspit_web.rendering import (
    Filled,
    Refusal,
    Served,
    field,
    filled,
    from_elsewhere,
    missing,
    page,
    see_other,
)
from turnspit_web.view import ordered

router = APIRouter(include_in_schema=False, default_response_class=HTMLResponse)

SCALED = {"pan_from": "old", "pan_to": "to", "short": "item"} | dict.fromkeys(
    ("servings", "factor", "roast_kg", "vessel_l", "roast", "vessel", "amount", "unit", "value", "pan"), "to"
)
"""Names of the core for what the form calls otherwise."""
MEASURES = ("", "us", "metric", "both")


@router.get("/recipes")
async def recipes_page(request: Request, service: Served) -> Response:
    """The starters and those kept, and a box to paste another into."""
    return await _recipes(request, service)


@router.post("/recipes")
async def keep(request: Request, service: Served) -> Response:
    """Keeps what was pasted and goes to its page."""
    if from_elsewhere(request):
        return Response(status_code=403)
    form = await filled(request)
    reader = reader_for(request, service.now())
    try:
        given = await service.work(keep_recipe, service, RecipeBody(recipe=field(form, "recipe")), reader)
    except (ValidationError, TurnspitError) as error:
        return await _recipes(request, service, pasted=field(form, "recipe"), error=error)
    return see_other(f"/recipes/{given.id}")


@router.get("/recipes/{recipe_id}")
async def recipe_page(recipe_id: str, request: Request, service: Served) -> Response:
    """One recipe for as many as are asked for, in letters for arm's length; printed, it is one sheet."""
    wish = Wish.of(request)
    units: Units | None = "us" if wish.units == "us" else "metric" if wish.units in ("metric", "both") else None
    reader = reader_for(request, service.now(), units=units)
    refused = None
    try:
        recipe = await service.work(recipe_of, service, recipe_id)
    except NotKept as error:
        return missing(request, service, error)
    try:
        given = await service.work(scaled, service, wish.body(recipe_id), reader)
    except (ValidationError, TurnspitError) as error:
        refused = refused_by(error, reader, ("to", "item", "old", "units"), SCALED)
        given = await service.work(scaled, service, ScaleBody(recipe_id=recipe_id, factor=1.0), reader)
    return page(
        "recipe.html",
        422 if refused else 200,
        reader=reader,
        recipe_id=recipe_id,
        recipe=recipe,
        given=given,
        wish=wish,
        ways=_ways(recipe),
        measures=MEASURES,
        refused=refused,
    )


@router.get("/lists")
async def lists_page(request: Request, service: Served) -> Response:
    """What a dinner asks of shop and kitchen, once it is said for how many."""
    form: Filled = {name: request.query_params.getlist(name) for name in request.query_params}
    units = field(form, "units")
    reader = reader_for(request, service.now(), units="us" if units == "us" else "metric" if units else None)
    there_are = await service.work(recipes_there_are, service, reader)
    given, refused = None, None
    if field(form, "covers"):
        try:
            given = await service.work(lists_of, service, _lists_body(form, service), reader)
        except (ValidationError, TurnspitError) as error:
            refused = refused_by(error, reader, ("covers", "children", "kind", "serve_on"))
    return page(
        "lists.html",
        422 if refused else 200,
        reader=reader,
        form=form,
        given=given,
        refused=refused,
        allergens=allergen_names(),
        ordered=ordered,
        kinds=[(one.roast, say(Message(f"roast-{one.roast}"), reader)) for one in starters() if one.roast],
        kept=there_are.kept,
    )


@dataclass(frozen=True, slots=True)
class Wish:
    """How the recipe is wanted: as the page's own form says it."""

    by: str = ""
    to: str = ""
    old: str = ""
    item: str = ""
    units: str = ""
    rules_off: tuple[str, ...] = ()

    @classmethod
    def of(cls, request: Request) -> Wish:
        """From the address: a rule that was shown and is not among those left on is off."""
        asked = request.query_params
        said = {name: asked.get(name, "").strip() for name in ("by", "to", "old", "item", "units")}
        on = asked.getlist("on")
        return cls(**said, rules_off=tuple(rule for rule in asked.getlist("rule") if rule not in on))

    def body(self, recipe_id: str) -> ScaleBody:
        """As the recipes room takes it. Raises ValidationError, and Impossible for what is no amount."""
        same = {"recipe_id": recipe_id, "rules_off": list(self.rules_off), "units": self.units or None}
        return ScaleBody.model_validate({**same, **self._target()})

    def _target(self) -> Mapping[str, Any]:
        if not self.to:
            return {"factor": 1.0}
        if self.by == "pan":
            return {"pan_from": self.old or None, "pan_to": self.to}
        if self.by in ("roast", "vessel", "short"):
            amount = read_amount(self.to)
            value, unit = float(amount.usual), amount.unit
            if self.by == "short":
                return {"short": {"item": self.item, "value": value, "unit": unit}}
            name, into, assumed = ("roast_kg", "kg", "kg") if self.by == "roast" else ("vessel_l", "L", "L")
            return {name: convert(value, unit or assumed, into).value}
        try:
            number = float(self.to.replace(",", "."))
        except ValueError as error:
            raise Impossible("to", self.to, "is no number", "write it like 14 or 1.5") from error
        return {"servings" if self.by == "servings" else "factor": number}


def _ways(recipe: Recipe) -> list[str]:
    """By what this recipe can be scaled, the usual way first."""
    serves = recipe.makes is not None and recipe.makes.unit == "serving"
    ways = ["servings", "factor"] if serves else ["factor"]
    try:
        named_roast(recipe)
        ways.append("roast")
    except TurnspitError:
        pass
    return [*ways, "vessel", "pan", "short"]


def _lists_body(form: Filled, service: Service) -> ListsBody:
    covers = _whole(form, "covers")
    dishes = [_dish(recipe_id, recipe_of(service, recipe_id), covers) for recipe_id in form.get("dish", [])]
    kind = field(form, "kind") if "kind" in form else "turkey"
    dinner = {
        "covers": covers,
        "children": _whole(form, "children"),
        "kind": kind,
        "leftovers": "leftovers" in form,
        "brine": "brine" in form,
    }
    day = field(form, "serve_on")
    return ListsBody.model_validate(
        {
            "dinner": dinner if kind else None,
            "dishes": dishes,
            "avoid": form.get("avoid", []),
            "serve_on": day or None,
        }
    )


def _dish(recipe_id: str, recipe: Recipe, covers: int) -> dict[str, Any]:
    """A recipe that serves so many is scaled to the diners; any other is made as it stands."""
    serves = recipe.makes is not None and recipe.makes.unit == "serving"
    return {"recipe_id": recipe_id, **({"servings": float(covers)} if serves else {})}


def _whole(form: Filled, name: str) -> int:
    said = field(form, name)
    try:
        return int(said or 0)
    except ValueError as error:
        raise Impossible(name, said, "is no whole number", "write it like 14") from error


async def _recipes(request: Request, service: Service, pasted: str = "", error: Refusal | None = None) -> Response:
    reader = reader_for(request, service.now())
    there_are = await service.work(recipes_there_are, service, reader)
    refused = refused_by(error, reader, ("recipe",)) if error else None
    status = 422 if refused else 200
    return page("recipes.html", status, reader=reader, there_are=there_are, pasted=pasted, refused=refused)
