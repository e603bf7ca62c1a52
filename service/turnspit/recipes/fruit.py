"""Juice and zest on a shopping list: fruits to buy, each of which gives both."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from functools import cache

from turnspit.quantities import density
from turnspit.recipes.ingredients import names_part_of_fruit
from turnspit.recipes.recipe import Ingredient
from turnspit.reference import table

_JUICE = re.compile(r"juice|zumo|jugo", re.IGNORECASE)
_FRUITS = {
    "lemon": ("lemon", "lemons", "limón", "limones"),
    "orange": ("orange", "oranges", "naranja", "naranjas"),
}


def part_of_fruit(ingredient: Ingredient) -> tuple[str, float] | None:
    """Of "juice of 2 lemons": the key of lemon juice and its grams; None for what is no such part.

    Of "zest and juice" it is the juice: the zest comes with it.
    """
    amount = ingredient.amount
    fruit = _fruit_named(ingredient.item)
    if amount is None or amount.unit or fruit is None or not names_part_of_fruit(ingredient.preparation):
        return None
    key = f"{fruit}_{'juice' if _JUICE.search(ingredient.preparation) else 'peel'}"
    return key, float(amount.usual) * _grams_of_one(key)


def peel_with_the_juice(juices: Mapping[str, float]) -> Mapping[str, float]:
    """Grams of peel, by its key, that the fruits bought for so many grams of juice give."""
    fruits = {
        fruit: math.ceil(juices[f"{fruit}_juice"] / _grams_of_one(f"{fruit}_juice") - 1e-9)
        for fruit in _FRUITS
        if f"{fruit}_juice" in juices
    }
    return {f"{fruit}_peel": count * _grams_of_one(f"{fruit}_peel") for fruit, count in fruits.items()}


@cache
def _grams_of_one(key: str) -> float:
    """What one fruit gives, by the pack of the table: a fruit."""
    row = table("packs").by("key")[key]
    dense = density(key) if row["measure"] == "ml" else None
    return float(row["us"]) * (dense.kg_per_l if dense is not None else 1.0)


def _fruit_named(item: str) -> str | None:
    last = item.casefold().rpartition(" ")[2]
    return next((fruit for fruit, names in _FRUITS.items() if last in names), None)
