"""`POST /v1/lists`: what a dinner of several recipes asks of shop, days, stations and equipment."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date
from typing import Any, Self

from pydantic import ConfigDict, Field, model_validator

from turnspit.api.schemas.common import Body, CautionGiven, Given, Number, ReaderFields, Whole, Yes
from turnspit.api.schemas.recipes import Name
from turnspit.api.schemas.sizes import SizePart
from turnspit.message import Message
from turnspit.recipes import (
    Bought,
    EquipmentNeed,
    OrderLine,
    PrepDay,
    Recipe,
    ShoppingList,
    Sizing,
    aisle_heading,
    allergens,
    bought_line,
    day_heading,
    equipment_at_once,
    equipment_line,
    in_language,
    order_line,
    order_sheet,
    prep_list,
    shopping_list,
    station_heading,
    write_yield,
)
from turnspit.recipes.menu import SIDES
from turnspit.recipes.shopping import Market
from turnspit.reference import Kitchen, caution
from turnspit.safety import check_allergens
from turnspit.words import Reader, say

LISTS_EXAMPLE: dict[str, Any] = {"dinner": {"covers": 14}, "serve_on": "2026-11-26"}


class DinnerPart(SizePart):
    """A whole roast dinner of the starter recipes, sized to its diners."""

    sides: list[Name] = Field(default_factory=lambda: list(SIDES), max_length=30, description="Keys of starters.")
    brine: Yes = False


class DishBody(Body):
    """One recipe of the dinner, for so many servings or times a factor; as it stands without either."""

    recipe_id: Name
    servings: Number | None = None
    factor: Number | None = None

    @model_validator(mode="after")
    def _one_of_both(self) -> Self:
        if self.servings is not None and self.factor is not None:
            raise ValueError("give servings or factor, not both")
        return self


class ListsBody(ReaderFields):
    """A dinner of the starters, kept or starter recipes by their ids, or both together."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [LISTS_EXAMPLE]})

    dinner: DinnerPart | None = None
    dishes: list[DishBody] = Field(default_factory=list, max_length=40)
    market: Market | None = Field(default=None, description="Whose packs; by default those of the reader's units.")
    prices: dict[Name, Number] | None = Field(
        default=None, description="What a pack costs by food; for what is sold loose, a kilogram."
    )
    serve_on: date | None = Field(default=None, description="Adds an order sheet with its days.")
    prep_days: Whole | None = Field(
        default=None, ge=0, le=14, description="Days of work before it; by default as early as a recipe begins."
    )
    frozen_roast_kg: Number | None = Field(default=None, gt=0, le=100)
    avoid: list[Name] = Field(default_factory=list, max_length=20, description="Allergens a guest must avoid.")

    @model_validator(mode="after")
    def _something_to_cook(self) -> Self:
        if self.dinner is None and not self.dishes:
            raise ValueError("give a dinner, dishes, or both")
        return self


class BoughtGiven(Given):
    """One line of the shopping list. Amounts are in `measure`: g, ml or piece; null where nothing measures it."""

    text: str
    item: str
    measure: str | None
    needed: float | None
    buy: float
    left_over: float
    packs: int
    pack: str
    optional: bool
    cost: float | None
    recipes: list[str]
    lines: list[str] = Field(description="The recipe lines summed here.")

    @classmethod
    def of(cls, bought: Bought, reader: Reader) -> Self:
        """In the reader's words."""
        need = bought.need
        return cls(
            text=say(bought_line(bought), reader),
            item=bought.item,
            measure=need.measure if need else None,
            needed=round(need.trimmed, 1) if need else None,
            buy=round(bought.buy, 1),
            left_over=round(bought.left_over, 1),
            packs=bought.packs,
            pack=bought.pack,
            optional=bought.optional,
            cost=None if bought.cost is None else round(bought.cost, 2),
            recipes=_named(bought.recipes, reader),
            lines=list(bought.lines),
        )


class AisleGiven(Given):
    """What stands together in a shop."""

    aisle: str
    heading: str
    lines: list[BoughtGiven]


class ShoppingGiven(Given):
    """The list in the order of a shop; `at_home` is made, or comes from the tap."""

    aisles: list[AisleGiven]
    at_home: list[BoughtGiven]
    cost: float | None
    unpriced: int

    @classmethod
    def of(cls, shopping: ShoppingList, reader: Reader) -> Self:
        """In the reader's words."""
        return cls(
            aisles=[
                AisleGiven(
                    aisle=aisle,
                    heading=say(aisle_heading(aisle), reader),
                    lines=[BoughtGiven.of(line, reader) for line in lines],
                )
                for aisle, lines in shopping.aisles.items()
            ],
            at_home=[BoughtGiven.of(line, reader) for line in shopping.at_home],
            cost=None if shopping.cost is None else round(shopping.cost, 2),
            unpriced=shopping.unpriced,
        )


class TaskGiven(Given):
    """One step of one recipe, at the longest so many minutes before the end of its day."""

    recipe: str
    text: str
    from_min: float
    to_min: float


class StationGiven(Given):
    """What one station does."""

    station: str
    heading: str
    tasks: list[TaskGiven]


class PrepDayGiven(Given):
    """One day of preparation."""

    days_before: int
    heading: str
    stations: list[StationGiven]

    @classmethod
    def of(cls, day: PrepDay, reader: Reader) -> Self:
        """In the reader's words; a step of the cook's own recipe keeps those of its recipe."""
        return cls(
            days_before=day.days_before,
            heading=say(day_heading(day), reader),
            stations=[
                StationGiven(
                    station=station,
                    heading=say(station_heading(station), reader),
                    tasks=[
                        TaskGiven(
                            recipe=in_language(task.recipe, reader.language),
                            text=in_language(task.step.text, reader.language),
                            from_min=task.from_min,
                            to_min=task.to_min,
                        )
                        for task in tasks
                    ],
                )
                for station, tasks in day.stations.items()
            ],
        )


class EquipmentGiven(Given):
    """How many of one thing at the busiest moment of the day, all dishes ready together."""

    text: str
    equipment: str
    count: int
    recipes: list[str]

    @classmethod
    def of(cls, need: EquipmentNeed, reader: Reader) -> Self:
        """In the reader's words."""
        text = say(equipment_line(need), reader)
        return cls(text=text, equipment=need.equipment, count=need.count, recipes=_named(need.recipes, reader))


class OrderGiven(Given):
    """One line of the order sheet."""

    text: str
    item: str
    cases: int
    packs: int = Field(description="Beside the cases, or in their place for less than half a case.")
    left_over: float = Field(description="Beyond the need, in g, mL or pieces.")
    order_by: date
    deliver_on: date
    receive_at_most_c: float | None

    @classmethod
    def of(cls, line: OrderLine, reader: Reader) -> Self:
        """In the reader's words."""
        return cls(
            text=say(order_line(line), reader),
            item=line.item,
            cases=line.cases,
            packs=line.packs,
            left_over=round(line.left_over, 1),
            order_by=line.order_by,
            deliver_on=line.deliver_on,
            receive_at_most_c=line.receive_at_most_c,
        )


class DishGiven(Given):
    """One dish of the dinner, with what it means for the guests who must avoid something."""

    name: str
    makes: str
    allergens: list[str]
    grade: str
    seen: str
    action: str


class ListsGiven(Given):
    """All lists of one dinner."""

    headline: str
    dishes: list[DishGiven]
    shopping: ShoppingGiven
    prep: list[PrepDayGiven]
    equipment: list[EquipmentGiven]
    order: list[OrderGiven] | None
    assumptions: list[str]
    cautions: list[CautionGiven]


def listed(
    body: ListsBody, dishes: list[Recipe], sizing: Sizing | None, kitchen: Kitchen | None, reader: Reader
) -> ListsGiven:
    """The lists of those dishes; `sizing` tells for whom, where the dinner was sized."""
    market: Market = body.market or ("us" if reader.units == "us" else "metric")
    shopping = shopping_list(dishes, market, body.prices)
    cautions = [caution("allergens"), caution("raw-juices", "info")]
    order = None
    if body.serve_on is not None:
        begun = max((step.days_before for dish in dishes for step in dish.steps), default=0)
        days = max(begun, 1) if body.prep_days is None else body.prep_days
        sheet = order_sheet(shopping, body.serve_on, prep_days=days, frozen_roast_kg=body.frozen_roast_kg)
        order = [OrderGiven.of(line, reader) for line in sheet.lines]
        cautions += sheet.cautions
    return ListsGiven(
        headline=say(sizing.headline if sizing else Message("api-lists-of", count=len(dishes)), reader),
        dishes=_dishes(body, dishes, kitchen, reader),
        shopping=ShoppingGiven.of(shopping, reader),
        prep=[PrepDayGiven.of(day, reader) for day in prep_list(dishes)],
        equipment=[EquipmentGiven.of(need, reader) for need in equipment_at_once(dishes) if need.count > 1],
        order=order,
        assumptions=[say(note, reader) for note in sizing.assumptions] if sizing else [],
        cautions=[CautionGiven.of(one, reader) for one in cautions],
    )


def _named(recipes: Iterable[str], reader: Reader) -> list[str]:
    return [in_language(name, reader.language) for name in recipes]


def _dishes(body: ListsBody, dishes: list[Recipe], kitchen: Kitchen | None, reader: Reader) -> list[DishGiven]:
    held: Mapping[str, list[str]] = {
        dish.name: [flag.allergen for flag in allergens(dish.ingredients)] for dish in dishes
    }
    judged = {one.dish: one.finding for one in check_allergens(held, body.avoid, kitchen or "home")}
    return [
        DishGiven(
            name=in_language(dish.name, reader.language),
            makes=write_yield(dish.makes, reader.language) if dish.makes else "",
            allergens=held[dish.name],
            grade=judged[dish.name].severity,
            seen=say(judged[dish.name].seen, reader),
            action=say(judged[dish.name].action, reader),
        )
        for dish in dishes
    ]
