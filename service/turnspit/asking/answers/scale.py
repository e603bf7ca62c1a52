"""More or fewer servings: a recipe line by line, one amount, or the bare factor with what does not grow in step."""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING, Any

from turnspit.asking.answers.answer import Answer, Enquiry, sources_line
from turnspit.asking.answers.convert import amount
from turnspit.asking.answers.topics import topic_of
from turnspit.errors import Impossible, OutOfRange
from turnspit.message import Message
from turnspit.words import say

if TYPE_CHECKING:
    from turnspit.recipes import Recipe, ScaledRecipe

LARGEST_FACTOR = 1000.0
WHOLE = 0.01
"""A third that was written to four figures still divides by three."""
LEAST_LINES = 3
"""A text of so many lines with figures is a recipe that was pasted."""


def answer(enquiry: Enquiry) -> Answer:
    """The recipe that was pasted or named, the amount that was given, else the factor alone."""
    recipe = _recipe(enquiry)
    factor = _factor(enquiry, recipe)
    if factor is None and topic_of(enquiry.line, "recipe") == "recipe":
        recipe, factor = _one_of_ours(enquiry, recipe)
    if factor is None and enquiry.said("amount.item") is not None:
        return _asked_what_is_needed(enquiry) if recipe is None else _by_what_there_is(enquiry, recipe)
    if factor is None:
        return _asked()
    if recipe is not None:
        return _scaled_recipe(enquiry, scale_by(recipe, factor), factor)
    headline, lines = _headline(enquiry, factor), [Message("asking-scale-not-linear"), Message("asking-scale-time")]
    data: dict[str, Any] = {"factor": factor}
    value, unit, item = (enquiry.said(f"amount.{name}") for name in ("value", "unit", "item"))
    if value is not None and unit is not None and not _converts(enquiry):
        lines.insert(0, headline)
        headline = _scaled_amount(enquiry, factor)
        data |= {"value": value * factor, "unit": unit, "item": item}
    return Answer(
        headline=headline,
        lines=tuple(lines),
        reasons=(Message("asking-why-scale"),),
        next=(Message("asking-next-scale-gravy"), Message("asking-next-convert"), Message("asking-next-why")),
        data={"scale": data},
    )


def _recipe(enquiry: Enquiry) -> Recipe | None:
    """The recipe in the text itself, else the starter recipe that it names."""
    from turnspit.recipes import read_recipe, read_starter

    pasted = [line for line in enquiry.text.splitlines() if line.strip()]
    while pasted and topic_of(pasted[0], "commands"):
        pasted.pop(0)
    if sum(any(map(str.isdigit, line)) for line in pasted) >= LEAST_LINES:
        titled = not any(map(str.isdigit, pasted[0]))
        title = [] if titled else [say(Message("asking-scale-your-recipe"), enquiry.reader)]
        return read_recipe("\n".join((*title, *pasted)))
    item = str(enquiry.said("amount.item") or "")
    if item and enquiry.said("scale.factor") is None and enquiry.said("scale.to") is None:
        # "Only 700 g potatoes", said of mash: the item is no dish.
        dish = topic_of(enquiry.text.casefold().replace(item, ""), "dishes")
        return read_starter(dish).recipe if dish else None
    dish = topic_of(enquiry.text, "dishes")
    if enquiry.said("scale.from") is not None:
        # "From 6 to 15" is said of the cook's own recipe.
        return None
    whole = enquiry.said("amount.item") is None or _converts(enquiry)
    return read_starter(dish).recipe if dish and whole else None


def _converts(enquiry: Enquiry) -> bool:
    """Whether the amount that was said is to be converted, and is none of the recipe's: "double the stuffing, and how
    many grams is 3 cups breadcrumbs"."""
    return enquiry.said("amount.target_unit") is not None


def _one_of_ours(enquiry: Enquiry, recipe: Recipe | None) -> tuple[Recipe | None, float | None]:
    """ "A gravy recipe": the starter recipe as it stands, or for so many where only one number was said."""
    from turnspit.recipes import read_starter

    dish, servings = topic_of(enquiry.text, "dishes"), enquiry.said("scale.from")
    if recipe is None and dish and servings:
        recipe = read_starter(dish).recipe
    if recipe is None or recipe.makes is None:
        return recipe, None
    return recipe, 1.0 if servings is None else servings / float(recipe.makes.usual)


def _factor(enquiry: Enquiry, recipe: Recipe | None) -> float | None:
    factor, servings, wanted = (enquiry.said(f"scale.{name}") for name in ("factor", "from", "to"))
    if wanted is None:
        wanted = enquiry.said("covers")
    for name, value in (("scale.factor", factor), ("scale.from", servings), ("scale.to", wanted)):
        if value is not None and not value > 0:
            raise Impossible(name, value, "is not above zero", "say a number of servings from 1 up")
    if recipe is not None and recipe.makes is not None and recipe.makes.unit == "serving":
        servings = float(recipe.makes.usual)
    both = enquiry.said("scale.from") is not None and enquiry.said("scale.to") is not None
    if servings is not None and wanted is not None and (factor is None or both):
        # Who eats decides: a factor beside it may be a slip.
        factor = wanted / servings
    if factor is not None:
        OutOfRange.check("scale.factor", factor, 1 / LARGEST_FACTOR, LARGEST_FACTOR, "scale it in several steps")
    return None if factor is None else float(factor)


def scale_by(recipe: Recipe, factor: float) -> ScaledRecipe:
    """The recipe times a factor."""
    from turnspit.recipes import scale_recipe

    return scale_recipe(recipe, factor=Fraction(factor).limit_denominator(10_000))


def _by_what_there_is(enquiry: Enquiry, recipe: Recipe) -> Answer:
    """The recipe cut to the one item of which there is not enough."""
    from turnspit.quantities import food_named
    from turnspit.recipes import scale_recipe

    value, unit, item = (enquiry.said(f"amount.{name}") for name in ("value", "unit", "item"))
    food = food_named(item)
    named = next((one.item for one in recipe.ingredients if food and food_named(one.food) == food), item)
    scaled = scale_recipe(recipe, short=(named, float(value), "" if unit == "piece" else unit))
    return _scaled_recipe(enquiry, scaled, float(scaled.factor))


def _scaled_recipe(enquiry: Enquiry, scaled: ScaledRecipe, factor: float) -> Answer:
    reader = enquiry.reader
    system = reader.units if enquiry.said("units") else None
    written = [line.text(system, reader.language) for line in scaled.lines]
    rules = tuple(rule.message for rule in scaled.rules if rule.on)
    short = (scaled.by,) if scaled.by.key.startswith("recipes-by-short") else ()
    return Answer(
        headline=_recipe_headline(scaled),
        lines=(*short, *(Message("asking-line", text=text) for text in written), *rules, *scaled.notes),
        reasons=(Message("asking-why-scale"), *sources_line([rule.source for rule in scaled.rules])),
        cautions=scaled.cautions,
        next=(Message("asking-next-half"), Message("asking-next-double"), Message("asking-next-why")),
        data={"scale": {"factor": factor, "recipe": scaled.recipe.name, "lines": written}},
    )


def _recipe_headline(scaled: ScaledRecipe) -> Message:
    from turnspit.recipes import in_language

    makes, name = scaled.recipe.makes, scaled.recipe.name
    named = Message("recipes-food", said=name, es=in_language(name, "es"))
    said: dict[str, Any] = {"name": named, "factor": float(scaled.factor)}
    if makes is None or makes.unit != "serving":
        return Message("asking-scale-recipe", **said)
    servings = float(makes.usual)
    return Message("asking-scale-recipe-servings", servings=servings, base=servings / float(scaled.factor), **said)


def _headline(enquiry: Enquiry, factor: float) -> Message:
    servings, wanted = enquiry.said("scale.from"), enquiry.said("scale.to") or enquiry.said("covers")
    by = 1 / factor
    whole = factor < 1 and abs(by - round(by)) < WHOLE
    how = (
        Message("asking-scale-divide", by=float(round(by)))
        if whole
        else Message("asking-scale-multiply", factor=factor)
    )
    if servings is not None and wanted is not None:
        return Message("asking-scale-servings", **{"from": servings, "to": wanted}, how=how)
    return Message("asking-scale-headline", how=how)


def _scaled_amount(enquiry: Enquiry, factor: float) -> Message:
    """The amount as a cook would measure it: 4 2/3 cups, not 4.67."""
    from turnspit.quantities import write_amount

    value, unit, item = (enquiry.said(f"amount.{name}") for name in ("value", "unit", "item"))
    scaled = Fraction(value * factor).limit_denominator(10_000)
    written = write_amount(scaled, unit, item=item or "", language=enquiry.reader.language)
    said, found = amount(value, unit), Message("asking-line", text=written)
    if item:
        said, found = (Message("asking-amount-of", amount=each, item=item) for each in (said, found))
    return Message("asking-scale-amount", given=said, factor=factor, found=found)


def _asked_what_is_needed(enquiry: Enquiry) -> Answer:
    """Of the cook's own recipe nobody knows what it asks for."""
    item = str(enquiry.said("amount.item"))
    there = amount(enquiry.said("amount.value"), enquiry.said("amount.unit"))
    return Answer(
        headline=Message("asking-scale-short", item=item, there=there),
        question=Message("asking-ask-needed", item=item),
        asks="scale.from",
        next=(Message("asking-next-scale-gravy"), Message("asking-next-half"), Message("asking-next-why")),
    )


def _asked() -> Answer:
    return Answer(
        headline=Message("asking-scale-incomplete"),
        question=Message("asking-ask-scale"),
        choices=(Message("asking-next-double"), Message("asking-next-scale")),
        asks="scale.to",
        next=(Message("asking-next-scale-gravy"), Message("asking-next-scale"), Message("asking-next-double")),
    )
