"""`POST /v1/recipes/scale`: a recipe for another number, mass, vessel or pan."""

from __future__ import annotations

import json
from typing import Annotated, Any, Self

from pydantic import ConfigDict, Field

from turnspit.api.schemas.common import Body, CautionGiven, Given, Number, ReaderFields, Whole
from turnspit.quantities import Region, pan
from turnspit.recipes import Recipe, ScaledRecipe, read_recipe, scale_recipe, write_json_ld, write_text, write_yield
from turnspit.words import Reader, say

SCALE_EXAMPLE: dict[str, Any] = {
    "recipe": "Pan gravy\nServes 8\n\n4 cups turkey stock\n1/2 cup flour\n1/2 cup drippings\n1 tsp salt\n\n"
    "Whisk flour into the drippings, cook 3 minutes, add stock, simmer 10 minutes.",
    "servings": 14,
}
Name = Annotated[str, Field(max_length=100)]
RECIPE_LIMIT = 500_000


class ShortBody(Body):
    """The one ingredient of which there is only so much."""

    item: Name
    value: Number
    unit: Name


class ScaleBody(ReaderFields):
    """A recipe and exactly one target: factor, servings, covers, roast_kg, vessel_l, both pans, or short."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [SCALE_EXAMPLE]})

    recipe: Annotated[str, Field(max_length=RECIPE_LIMIT)] | dict[str, Any] = Field(
        description="Plain text, a page with JSON-LD in it, or a schema.org Recipe."
    )
    region: Region | None = Field(default=None, description="Whose cups and spoons; by default as the recipe shows.")
    factor: Number | None = None
    servings: Number | None = None
    covers: Whole | None = None
    roast_kg: Number | None = Field(default=None, description="Mass of the roast that the recipe names.")
    vessel_l: Number | None = Field(default=None, description="A vessel to be filled.")
    pan_from: Name | None = Field(default=None, examples=["13 x 9 x 2 in"])
    pan_to: Name | None = Field(default=None, examples=["GN 1/1 65 mm"])
    short: ShortBody | None = None
    rules_off: list[Name] = Field(default_factory=list, max_length=50, description="Rules that shall not apply.")

    def scaled(self) -> ScaledRecipe:
        """As the recipes room gives it. Raises what it raises."""
        text = self.recipe if isinstance(self.recipe, str) else json.dumps(self.recipe)
        return scale_recipe(
            read_recipe(text, self.region),
            factor=self.factor,
            servings=self.servings,
            covers=self.covers,
            roast_kg=self.roast_kg,
            vessel_l=self.vessel_l,
            pan_from=pan(self.pan_from) if self.pan_from else None,
            pan_to=pan(self.pan_to) if self.pan_to else None,
            short=(self.short.item, self.short.value, self.short.unit) if self.short else None,
            rules_off=self.rules_off,
        )


class LineGiven(Given):
    """One line of the list, as a cook would measure it."""

    text: str
    original: str
    linear: str = Field(description="The amount times the factor, before any rule.")
    rule: str = Field(description="The rule that changed it, empty for none.")
    read: bool = Field(description="False for a line that could not be read: it is kept whole, and is not scaled.")


class RuleGiven(Given):
    """A rule by which not everything scales alike; any can be turned off."""

    rule: str
    on: bool
    changes_amounts: bool
    items: list[str]
    text: str
    source: str
    obtained: str


class AllergenGiven(Given):
    """One of the nine major allergens as the words show it; the label decides."""

    allergen: str
    standing: str
    items: list[str]


class ScaleGiven(Given):
    """The recipe scaled, line by line, as clean text and as a schema.org Recipe."""

    factor: float
    by: str = Field(description="What set the factor.")
    name: str
    makes: str
    lines: list[LineGiven]
    steps: list[str]
    rules: list[RuleGiven]
    allergens: list[AllergenGiven]
    notes: list[str]
    cautions: list[CautionGiven]
    text: str
    json_ld: dict[str, Any]

    @classmethod
    def of(cls, scaled: ScaledRecipe, reader: Reader, body: ScaleBody) -> Self:
        """In the reader's words; in the recipe's own system of measures unless the reader named one."""
        recipe: Recipe = scaled.recipe
        return cls(
            factor=round(float(scaled.factor), 6),
            by=say(scaled.by, reader),
            name=recipe.name,
            makes=write_yield(recipe.makes, reader.language) if recipe.makes else "",
            lines=[
                LineGiven(
                    text=line.text(body.units, reader.language),
                    original=line.original.text,
                    linear=line.linear_text(body.units, reader.language),
                    rule=line.rule,
                    read=line.ingredient.read,
                )
                for line in scaled.lines
            ],
            steps=[step.text for step in recipe.steps],
            rules=[
                RuleGiven(
                    rule=rule.rule,
                    on=rule.on,
                    changes_amounts=rule.changes_amounts,
                    items=list(rule.items),
                    text=say(rule.message, reader),
                    source=rule.source,
                    obtained=rule.obtained,
                )
                for rule in scaled.rules
            ],
            allergens=[
                AllergenGiven(allergen=flag.allergen, standing=flag.standing, items=list(flag.items))
                for flag in scaled.allergens
            ],
            notes=[say(note, reader) for note in scaled.notes],
            cautions=[CautionGiven.of(caution, reader) for caution in scaled.cautions],
            text=write_text(recipe, body.units, reader.language),
            json_ld=write_json_ld(recipe),
        )
