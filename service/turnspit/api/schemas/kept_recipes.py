"""`/v1/recipes`: a recipe read from what was given, as it is kept and shown."""

from __future__ import annotations

import json
from typing import Annotated, Any, Self

from pydantic import ConfigDict, Field

from turnspit.api.schemas.common import Body, Given
from turnspit.quantities import Amount, Region, write_amount
from turnspit.recipes import Ingredient, Recipe, Step, allergens, in_language, write_json_ld, write_text, write_yield
from turnspit.words import Reader, say

RECIPE_LIMIT = 500_000
RECIPE_EXAMPLE: dict[str, Any] = {
    "recipe": "Pan gravy\nServes 8\n\n4 cups turkey stock\n1/2 cup flour\n1/2 cup drippings\n1 tsp salt\n\n"
    "Whisk flour into the drippings, cook 3 minutes, add stock, simmer 10 minutes."
}
RecipeText = Annotated[str, Field(max_length=RECIPE_LIMIT)]


class RecipeBody(Body):
    """A recipe to keep."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [RECIPE_EXAMPLE]})

    recipe: RecipeText | dict[str, Any] = Field(
        description="Plain text, a page (best with JSON-LD in it), or a schema.org Recipe."
    )
    region: Region | None = Field(default=None, description="Whose cups and spoons; by default as the recipe shows.")

    @property
    def text(self) -> str:
        """As the recipes room reads it."""
        return self.recipe if isinstance(self.recipe, str) else json.dumps(self.recipe)


class RecipeNamed(Given):
    """One recipe of the list."""

    id: str
    name: str
    makes: str
    kind: str
    starter: bool = Field(description="Comes with the service, and stays.")

    @classmethod
    def of(cls, recipe_id: str, recipe: Recipe, reader: Reader, *, starter: bool) -> Self:
        """In the reader's language."""
        makes = write_yield(recipe.makes, reader.language) if recipe.makes else ""
        name = in_language(recipe.name, reader.language)
        return cls(id=recipe_id, name=name, makes=makes, kind=recipe.kind, starter=starter)


class RecipesGiven(Given):
    """The starter recipes, and those kept last."""

    starters: list[RecipeNamed]
    kept: list[RecipeNamed]


class StepGiven(Given):
    """One step, with what its words name."""

    text: str
    section: str
    minutes: tuple[float, float] | None
    temperatures_c: list[float]
    equipment: list[str]
    station: str
    days_before: int

    @classmethod
    def of(cls, step: Step, language: str = "en") -> Self:
        """From the recipes room's."""
        return cls(
            text=in_language(step.text, language),
            section=step.section,
            minutes=step.minutes,
            temperatures_c=[round(c, 2) for c in step.temperatures_c],
            equipment=list(step.equipment),
            station=step.station,
            days_before=step.days_before,
        )


class AmountGiven(Given):
    """An amount as it stands on the line; the unit is empty for what is counted."""

    value: float
    high: float | None = Field(description="The upper end of a range.")
    unit: str
    size: str = Field(description="large, heaped, No. 10 ...")
    about: bool
    each: str = Field(description="What one holds or weighs.")
    equals: str = Field(description="The same amount in the recipe's own other unit.")

    @classmethod
    def of(cls, amount: Amount) -> Self:
        """From the quantities room's."""
        return cls(
            value=float(amount.value),
            high=None if amount.high is None else float(amount.high),
            unit=amount.unit,
            size=amount.size,
            about=amount.approximate,
            each=write_amount(amount.each) if amount.each else "",
            equals=write_amount(amount.equals) if amount.equals else "",
        )


class IngredientGiven(Given):
    """One line as it was read; `read` is False for one that is kept whole."""

    text: str
    item: str
    amount: AmountGiven | None
    section: str
    preparation: str
    notes: list[str] = Field(description="Remarks in brackets.")
    optional: bool
    to_taste: bool
    purpose: str = Field(description="What it is for.")
    extra: str = Field(description="More of it, and what for.")
    alternatives: list[str]
    kilograms: float | None = Field(description="Its mass, where a published measure leads there.")
    read: bool

    @classmethod
    def of(cls, one: Ingredient) -> Self:
        """From the recipes room's."""
        return cls(
            text=one.text,
            item=one.item,
            amount=AmountGiven.of(one.amount) if one.amount else None,
            section=one.section,
            preparation=one.preparation,
            notes=list(one.notes),
            optional=one.optional,
            to_taste=one.to_taste,
            purpose=one.purpose,
            extra=one.extra,
            alternatives=[other.text for other in one.alternatives],
            kilograms=_rounded(one.kilograms()),
            read=one.read,
        )


class AllergenGiven(Given):
    """One of the nine major allergens as the words show it; the label decides."""

    allergen: str
    standing: str
    items: list[str]

    @classmethod
    def all_of(cls, recipe: Recipe) -> list[Self]:
        """Those of a recipe."""
        return [
            cls(allergen=flag.allergen, standing=flag.standing, items=list(flag.items))
            for flag in allergens(recipe.ingredients)
        ]


class RecipeGiven(RecipeNamed):
    """A recipe whole: as read, as clean text and as a schema.org Recipe."""

    description: str
    region: str | None
    ingredients: list[IngredientGiven]
    steps: list[StepGiven]
    allergens: list[AllergenGiven]
    notes: list[str]
    source: str
    text: str
    json_ld: dict[str, Any]

    @classmethod
    def whole(cls, recipe_id: str, recipe: Recipe, reader: Reader, *, starter: bool) -> Self:
        """In the reader's language; amounts as the recipe has them."""
        named = RecipeNamed.of(recipe_id, recipe, reader, starter=starter)
        return cls(
            **named.model_dump(),
            description=in_language(recipe.description, reader.language),
            region=recipe.region,
            ingredients=[IngredientGiven.of(one) for one in recipe.ingredients],
            steps=[StepGiven.of(step, reader.language) for step in recipe.steps],
            allergens=AllergenGiven.all_of(recipe),
            notes=[say(note, reader) for note in recipe.notes],
            source=recipe.source,
            text=write_text(recipe, language=reader.language),
            json_ld=write_json_ld(recipe),
        )


def _rounded(kilograms: float | None) -> float | None:
    return None if kilograms is None else round(kilograms, 4)
