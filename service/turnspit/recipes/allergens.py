"""The nine major allergens as a recipe's words show them; the label of what is bought decides."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Literal

from turnspit.recipes.recipe import Ingredient
from turnspit.reference import table

Standing = Literal["contains", "may contain"]


@dataclass(frozen=True, slots=True)
class AllergenFlag:
    """One allergen, whether the words say it is in or only that it often is, and the items that show it."""

    allergen: str
    standing: Standing
    items: tuple[str, ...]


def allergens(ingredients: Iterable[Ingredient]) -> tuple[AllergenFlag, ...]:
    """The allergens of a list of ingredients; alternatives, optional items and unread lines are searched too."""
    found: dict[str, dict[Standing, list[str]]] = {}
    for ingredient in ingredients:
        for one in (ingredient, *ingredient.alternatives):
            for allergen, standing in _standings(one.item.casefold()):
                found.setdefault(allergen, {}).setdefault(standing, []).append(one.item)
    return tuple(_flag(allergen, found[allergen]) for allergen in allergen_names() if allergen in found)


def allergen_names() -> tuple[str, ...]:
    """The nine, in the order of the law."""
    return tuple(row["allergen"] for row in table("allergens"))


def _flag(allergen: str, items: dict[Standing, list[str]]) -> AllergenFlag:
    standing: Standing = "contains" if "contains" in items else "may contain"
    return AllergenFlag(allergen, standing, tuple(dict.fromkeys(items[standing])))


@lru_cache(maxsize=8192)
def _standings(item: str) -> tuple[tuple[str, Standing], ...]:
    found: list[tuple[str, Standing]] = []
    for allergen, contains, may, excluded in _patterns():
        rest = excluded.sub(" ", item) if excluded else item
        if contains.search(rest):
            found.append((allergen, "contains"))
        elif may and may.search(rest):
            found.append((allergen, "may contain"))
    return tuple(found)


_Patterns = tuple[str, re.Pattern[str], re.Pattern[str] | None, re.Pattern[str] | None]


@cache
def _patterns() -> tuple[_Patterns, ...]:
    found: list[_Patterns] = []
    for row in table("allergens"):
        contains = _any_of(row["words"])
        assert contains is not None
        found.append((row["allergen"], contains, _any_of(row.get("may", ())), _any_of(row.get("not", ()))))
    return tuple(found)


def _any_of(words: Iterable[str]) -> re.Pattern[str] | None:
    longest_first = sorted(words, key=len, reverse=True)
    if not longest_first:
        return None
    return re.compile(rf"(?<![^\W\d_])(?:{'|'.join(map(re.escape, longest_first))})(?![^\W\d_])")
