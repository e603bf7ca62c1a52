"""The one ingredient that is short: what there is of it against what the recipe needs."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction

from turnspit.errors import Impossible
from turnspit.message import Message, Value
from turnspit.quantities import Amount, System, food_named, unit, write_amount
from turnspit.quantities.units import unit_ratio
from turnspit.quantities.writing import METRIC_UNITS
from turnspit.recipes.recipe import Ingredient, Recipe
from turnspit.recipes.spanish import food_message


@dataclass(frozen=True, slots=True)
class Shortage:
    """What there is of one food and what is needed of it; `factor` is the one over the other.

    `serves` is for how many the needed amount is, None where that is not known.
    """

    item: str
    have: Amount
    needed: Amount
    factor: Fraction
    serves: Fraction | None = None

    @property
    def servings(self) -> Fraction | None:
        """For how many there is enough, exactly; None where nobody said for how many the recipe is."""
        return None if self.serves is None else self.serves * self.factor

    def message(self) -> Message:
        """What is to be said of it: 700 g of the 1.2 kg needed, and for how many whole servings that is."""
        said: dict[str, Value] = {
            "item": food_message(self.item),
            "have": write_amount(self.have, item=self.item),
            "needed": write_amount(self.needed, item=self.item, system=self._system()),
        }
        if self.servings is None or self.serves is None:
            return Message("recipes-by-short", factor=float(self.factor), **said)
        whole = math.floor(self.servings + Fraction(1, 20))
        return Message("recipes-by-short-serves", servings=whole, serves=float(self.serves), **said)

    def _system(self) -> System | None:
        """What is needed is told in the measures of what there is, so that the two can be compared."""
        if not self.have.unit or not unit(self.have.unit).si:
            return None
        return "metric" if self.have.unit in METRIC_UNITS else "us"


def shortage(item: str, have: Amount, needed: Amount, serves: float | Fraction | None = None) -> Shortage:
    """By how much a recipe that needs so much of `item` is to be scaled for what there is of it.

    Units may differ: pieces, volumes and masses are compared by the food's published measures. Raises Impossible
    for nothing or less of either, and where the two cannot be compared.
    """
    for name, amount in (("have", have), ("needed", needed)):
        positive(name, amount.usual)
    line = Ingredient(item, item, needed)
    return Shortage(item, have, needed, _ratio([line], have), None if serves is None else positive("serves", serves))


def shortage_in(recipe: Recipe, item: str, value: float, unit_name: str) -> Shortage:
    """The same for a recipe: all its lines of that food together. Raises Impossible where it has none."""
    have = Amount(positive("short", value), unit(unit_name).name if unit_name else "")
    lines = _lines_of(recipe, item)
    if not lines:
        items = ", ".join(one.item for one in recipe.ingredients if one.amount is not None)
        raise Impossible("short", item, "is not in the recipe with an amount", f"name one of {items}")
    makes = recipe.makes
    serves = makes.usual if makes is not None and makes.unit == "serving" else None
    factor = _ratio(lines, have)
    same = lines[0].amount if len(lines) == 1 else None
    return Shortage(lines[0].item, have, same or have.times(1 / factor), factor, serves)


def _lines_of(recipe: Recipe, item: str) -> list[Ingredient]:
    """The lines whose item has all those words, or else is the same food ("papas" for potatoes)."""
    wanted = item.casefold().split()
    given = [one for one in recipe.ingredients if one.amount is not None]
    food = food_named(item)
    return [one for one in given if _names(one, wanted)] or [
        one for one in given if food and food_named(one.item) == food
    ]


def _ratio(lines: list[Ingredient], have: Amount) -> Fraction:
    for measure in (_same_unit, _masses, _volumes):
        pairs = [measure(line, have) for line in lines]
        needed = sum((pair[0] for pair in pairs if pair is not None), Fraction(0))
        first = pairs[0]
        if None not in pairs and first is not None and needed:
            return first[1] / needed
    raise Impossible(
        "short",
        lines[0].item,
        f"in {have.unit or 'pieces'} cannot be compared with the recipe's amount",
        "weigh it, or count it",
    )


_Pair = tuple[Fraction, Fraction] | None


def _same_unit(line: Ingredient, have: Amount) -> _Pair:
    """Both in the unit of what there is, where they are of one kind: exact."""
    amount = line.amount
    if amount is None or amount.unit == have.unit:
        return None if amount is None else (amount.usual, have.usual)
    kinds = [unit(one.unit, one.region).dimension if one.unit else "count" for one in (amount, have)]
    if kinds[0] != kinds[1] or kinds[0] not in ("mass", "volume"):
        return None
    return amount.usual * unit_ratio(amount.unit, have.unit, amount.region), have.usual


def _masses(line: Ingredient, have: Amount) -> _Pair:
    return _exact(line.kilograms(), have.kilograms(line.food))


def _volumes(line: Ingredient, have: Amount) -> _Pair:
    return _exact(line.litres(), have.litres())


def _exact(needed: float | None, there: float | None) -> _Pair:
    return None if needed is None or there is None else (Fraction(needed), Fraction(there))


def _names(ingredient: Ingredient, wanted: list[str]) -> bool:
    words = {word.removesuffix("s") for word in ingredient.item.casefold().replace(",", " ").split()}
    return all(word.removesuffix("s") in words or word.removesuffix("es") in words for word in wanted)


def positive(name: str, value: float | Fraction) -> Fraction:
    """The value exactly. Raises Impossible for nothing or less."""
    if not math.isfinite(value) or value <= 0:
        raise Impossible(name, float(value), "is not above zero", "give an amount above zero")
    return Fraction(value)
