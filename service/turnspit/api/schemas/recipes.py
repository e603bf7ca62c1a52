"""`POST /v1/recipes/scale`: a recipe for another number, mass, vessel or pan."""

from __future__ import annotations

import json
from typing import Annotated, Any, Literal, Self

from pydantic import ConfigDict, Field, model_validator

from turnspit.api.schemas.common import Body, CautionGiven, Given, Number, ReaderFields, Whole
from turnspit.api.schemas.kept_recipes import RECIPE_EXAMPLE, AllergenGiven, AmountGiven, RecipeText, StepGiven
from turnspit.quantities import Region, System, pan, write_amount
from turnspit.recipes import (
    Recipe,
    ScaledLine,
    ScaledRecipe,
    in_language,
    scale_recipe,
    write_json_ld,
    write_text,
    write_yield,
)
from turnspit.recipes.writing import write_line_amount
from turnspit.words import Reader, say
from turnspit.words.reader import Units

SCALE_EXAMPLE: dict[str, Any] = {**RECIPE_EXAMPLE, "servings": 14}
METRIC = ("g", "kg", "mL", "L")
Name = Annotated[str, Field(max_length=100)]


class ShortBody(Body):
    """The one ingredient of which there is only so much."""

    item: Name
    value: Number
    unit: Name


class ScaleBody(ReaderFields):
    """A recipe and exactly one target: factor, servings, covers, roast_kg, vessel_l, both pans, or short."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [SCALE_EXAMPLE]})

    recipe: RecipeText | dict[str, Any] | None = Field(
        default=None, description="Plain text, a page with JSON-LD in it, or a schema.org Recipe."
    )
    recipe_id: Name | None = Field(default=None, description="In its place: a kept recipe, or the key of a starter.")
    units: Units | Literal["both"] | None = Field(  # type: ignore[assignment]
        default=None, description="Measures to write in; by default the recipe's own."
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

    @model_validator(mode="after")
    def _one_recipe(self) -> Self:
        if (self.recipe is None) == (self.recipe_id is None):
            raise ValueError("give either recipe or recipe_id")
        return self

    @property
    def text(self) -> str:
        """The recipe as the recipes room reads it."""
        return self.recipe if isinstance(self.recipe, str) else json.dumps(self.recipe)

    @property
    def system(self) -> System | None:
        """The measures to write in; None for the recipe's own."""
        return None if self.units == "both" else self.units

    def scaled(self, recipe: Recipe) -> ScaledRecipe:
        """That recipe, as the recipes room scales it. Raises what it raises."""
        return scale_recipe(
            recipe,
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
    amount: str = Field(description="With what the text begins; empty where no amount is given.")
    item: str
    measured: AmountGiven | None = Field(description="The amount after the rules, exact, before it is written.")
    original: str
    section: str
    other: str = Field(description="With units both: the amount in the other system, empty where it is the same.")
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


class ScaleGiven(Given):
    """The recipe scaled, line by line, as clean text and as a schema.org Recipe."""

    factor: float
    by: str = Field(description="What set the factor.")
    name: str
    makes: str
    lines: list[LineGiven]
    steps: list[str]
    method: list[StepGiven]
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
            name=in_language(recipe.name, reader.language),
            makes=write_yield(recipe.makes, reader.language) if recipe.makes else "",
            lines=[_line(line, reader, body) for line in scaled.lines],
            steps=[in_language(step.text, reader.language) for step in recipe.steps],
            method=[StepGiven.of(step, reader.language) for step in recipe.steps],
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
            allergens=AllergenGiven.all_of(recipe),
            notes=[say(note, reader) for note in scaled.notes],
            cautions=[CautionGiven.of(caution, reader) for caution in scaled.cautions],
            text=write_text(scaled.shown(body.system), body.system, reader.language),
            json_ld=write_json_ld(recipe),
        )


def _line(line: ScaledLine, reader: Reader, body: ScaleBody) -> LineGiven:
    text = line.text(body.system, reader.language)
    return LineGiven(
        text=text,
        amount=_amount(line, text, reader, body.system),
        item=line.ingredient.item,
        measured=AmountGiven.of(line.ingredient.amount) if line.ingredient.amount else None,
        original=line.original.text,
        section=line.original.section,
        other=_other(line, reader) if body.units == "both" else "",
        linear=line.linear_text(body.system, reader.language),
        rule=line.rule,
        read=line.ingredient.read,
    )


def _amount(line: ScaledLine, text: str, reader: Reader, system: System | None) -> str:
    one = line.ingredient
    if one.amount is None or not one.read:
        return ""
    amount = write_line_amount(one.amount, one.item, system, reader.language)
    return amount if text.startswith(amount) else ""


def _other(line: ScaledLine, reader: Reader) -> str:
    """The amount in the system that the line itself is not written in."""
    amount, item = line.ingredient.amount, line.ingredient.item
    if amount is None or not line.ingredient.read:
        return ""
    metric_first = amount.unit in METRIC
    own, other = (
        write_amount(amount, item=item, system=system, language=reader.language)
        for system in (None, "us" if metric_first else "metric")
    )
    return other if other != own else ""
