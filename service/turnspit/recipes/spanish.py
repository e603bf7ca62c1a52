"""Lines and lists in Spanish: what a food is called, what is done to it, its size; the rest as it is."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from functools import cache, lru_cache

from turnspit.message import Message
from turnspit.recipes.food_keys import food_key
from turnspit.recipes.recipe import Ingredient
from turnspit.reference import Row, table

_WORDS = re.compile(r"[^\W\d_]+")
_JOINTS = re.compile(r",?\s+and\s+|,\s+")


def in_spanish(ingredient: Ingredient) -> Ingredient:
    """The line with food, preparation, size and use in Spanish, as far as they are known."""
    food = spanish_food(ingredient.item)
    amount = ingredient.amount
    size = _said(amount.size, food) if amount is not None and amount.size and not amount.unit else None
    if amount is not None and size is not None:
        food, amount = f"{food} {size}", replace(amount, size="")
    return replace(
        ingredient,
        item=food,
        amount=amount,
        preparation=_prepared(ingredient.preparation, food),
        purpose=_uses().get(ingredient.purpose.casefold(), ingredient.purpose),
        alternatives=tuple(in_spanish(one) for one in ingredient.alternatives),
    )


def food_message(*items: str) -> Message:
    """The foods, a comma between them, in the reader's language."""
    return Message("recipes-food", said=", ".join(items), es=", ".join(spanish_food(item) for item in items))


def in_language(text: str, language: str) -> str:
    """A text of the starter recipes (a name, a step, a thing in use) in that language; any other as it is."""
    return _texts().get(text, text) if language == "es" else text


@lru_cache(maxsize=4096)
def spanish_food(item: str) -> str:
    """What an item is called in Spanish; the item itself where that is not known, or where it is Spanish already."""
    words = item.casefold()
    exact = _by("item").get(words)
    if exact is not None:
        return str(exact["es"])
    row = _by("key").get(food_key(item))
    if row is None or _spanish_words() & set(_WORDS.findall(words)):
        return item
    many = words.endswith("s") and not words.endswith("ss")
    return str(row.get("many", row["es"]) if many else row["es"])


def _prepared(preparation: str, food: str) -> str:
    """Every part of it in Spanish, or the whole as it is."""
    whole = _said(preparation, food)
    parts = [_said(part, food) for part in _JOINTS.split(preparation)] if whole is None else [whole]
    return preparation if None in parts else " y ".join(part for part in parts if part)


def _said(words: str, food: str) -> str | None:
    found = _preparations().get(words.casefold())
    if found is None:
        return None
    noun = food.partition(" ")[0]
    plural = "s" if noun.endswith("s") else ""
    feminine = noun.removesuffix("s").endswith("a")
    return found.replace("*", ("a" if feminine else "o") + plural).replace("+", plural)


@cache
def _by(column: str) -> Mapping[str, Row]:
    return {row[column]: row for row in table("food_names_es") if column in row}


@cache
def _spanish_words() -> frozenset[str]:
    """Words of Spanish names that no English name of a food has."""
    spanish = {
        word for row in table("food_names_es") for name in (row["es"], row.get("many", "")) for word in _words(name)
    }
    english = {word for row in table("foods") for word in _words(row["names"][0])}
    return frozenset(spanish - english)


def _words(name: str) -> list[str]:
    return _WORDS.findall(name.casefold())


@cache
def _preparations() -> Mapping[str, str]:
    return {word: str(row["es"]) for row in table("preparation_words_es") for word in row.get("en", ())}


@cache
def _texts() -> Mapping[str, str]:
    return {str(row["en"]): str(row["es"]) for row in table("starter_texts_es")}


@cache
def _uses() -> Mapping[str, str]:
    return {word: str(row["es"]) for row in table("preparation_words_es") for word in row.get("use", ())}
