"""A whole roast dinner from the starter recipes, each scaled to the diners: what its lists are made of."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from turnspit.errors import Unknown
from turnspit.quantities import Amount
from turnspit.recipes.inflection import in_number
from turnspit.recipes.portions import SizeCase, Sizing, size_roast
from turnspit.recipes.recipe import Recipe, Yield
from turnspit.recipes.scaling import named_roast, scale_recipe
from turnspit.recipes.starter import Starter, read_starter, starters

SIDES = ("dressing", "gravy", "neck-stock", "mashed-potatoes", "braised-greens", "glazed-carrots", "cranberry")
BIRDS = ("turkey", "chicken", "goose", "duck")
BRINED_KG = 7.3
"""The bird that the brine of the starter recipes is for, 12 to 18 lb: its middle."""
COVERS_OF_THE_STARTERS = Fraction(14)
"""Of a starter recipe that is made for the table as a whole (stock)."""


@dataclass(frozen=True, slots=True)
class Menu:
    """The dishes of one dinner as recipes for its diners, the roast first; `sizing` tells how the roast was sized."""

    sizing: Sizing
    recipes: tuple[Recipe, ...]


def menu(case: SizeCase, sides: tuple[str, ...] = SIDES, *, brine: bool = False) -> Menu:
    """The starter roast of `case.kind` and `sides`, scaled to its diners; for a bird with its brine, if wished.

    Children eat half of the sides too; those who do not eat the roast eat the sides. Raises Unknown for a roast
    without a starter recipe and for a side that is none; as `size_roast` otherwise.
    """
    by_kind = {one.roast: one for one in starters() if one.roast}
    if case.kind not in by_kind:
        raise Unknown("kind", case.kind, tuple(filter(None, by_kind)))
    sizing = size_roast(case)
    eaters = Fraction(case.covers) - Fraction(case.children, 2)
    dishes = [_roast(by_kind[case.kind], sizing)]
    if brine and case.kind in BIRDS:
        dishes.append(scale_recipe(read_starter("brine-federal").recipe, factor=sizing.total_kg / BRINED_KG).shown())
    dishes += [_side(read_starter(key), eaters) for key in sides]
    return Menu(sizing, tuple(dishes))


def _roast(starter: Starter, sizing: Sizing) -> Recipe:
    """The roast in the number and weight of the sizing, the rest of its recipe in proportion."""
    roast, raw_kg = named_roast(starter.recipe)
    scaled = scale_recipe(starter.recipe, factor=sizing.total_kg / raw_kg).shown()
    each = Amount(Fraction(str(round(sizing.each_kg, 2))), "kg")
    amount = Amount(Fraction(sizing.count), each=each)
    place = starter.recipe.ingredients.index(roast)
    text = f"{sizing.count} x {sizing.each_kg:.2f} kg {roast.item}"
    item = in_number(roast.item, many=sizing.count > 1)
    bought = replace(scaled.ingredients[place], item=item, amount=amount, text=text)
    ingredients = (*scaled.ingredients[:place], bought, *scaled.ingredients[place + 1 :])
    return replace(
        scaled, ingredients=ingredients, makes=Yield(Fraction(sizing.case.covers - sizing.case.non_eaters))
    )


def _side(starter: Starter, eaters: Fraction) -> Recipe:
    """A side for so many: by servings, or in proportion to the table it was made for."""
    makes = starter.recipe.makes
    if makes is not None and makes.unit == "serving":
        return scale_recipe(starter.recipe, servings=eaters).shown()
    return scale_recipe(starter.recipe, factor=eaters / COVERS_OF_THE_STARTERS).shown()
