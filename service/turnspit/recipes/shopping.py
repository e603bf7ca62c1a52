"""A shopping list summed across recipes: what is needed, in packs one can buy, what is left over, where it stands."""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache
from types import MappingProxyType
from typing import Literal, cast

from turnspit.errors import Impossible, Unknown
from turnspit.quantities import Amount, density_or_none, food_named, piece_mass, unit, unit_named
from turnspit.recipes.food_keys import food_key
from turnspit.recipes.fruit import part_of_fruit, peel_with_the_juice
from turnspit.recipes.recipe import Ingredient, Recipe
from turnspit.recipes.writing import write_ingredient
from turnspit.reference import Row, table

Market = Literal["us", "metric"]
Measure = Literal["g", "ml", "piece"]

LOOSE_G = {"us": 453.59237 / 4, "metric": 100.0}
"""What is sold loose is weighed to the quarter pound or the hundred grams."""
LOOSE_ML = 100.0
OTHER = "other"
TAP = "tap"


@dataclass(frozen=True, slots=True)
class Need:
    """What all recipes together want of one food: `amount` in grams, millilitres or `count_unit` by `measure`.

    `trimmed` is that amount as bought, with peel, core and stems (greater than `amount` only where a recipe gives
    the food already cut, by volume). `each_kg` is the weight of one piece where the recipes say it (a 7 kg turkey).
    """

    key: str
    item: str
    measure: Measure
    amount: float
    trimmed: float
    count_unit: str = ""
    each_kg: float | None = None


@dataclass(frozen=True, slots=True)
class Bought:
    """One line of the list. `packs` of `pack_size` (in the need's measure) cover it and leave `left_over`.

    `pack` is "loose" for what is weighed out, "piece" for whole things, "" where only a pinch or "to taste" is asked.
    `lines` are the recipe lines summed here; `optional` holds where every one of them is. `made` is the part that
    another of the recipes makes (stock) or the roast gives (drippings).
    """

    need: Need | None
    item: str
    aisle: str
    pack: str
    packs: int
    pack_size: float
    left_over: float
    recipes: tuple[str, ...]
    lines: tuple[str, ...]
    optional: bool = False
    made: float = 0.0
    cost: float | None = None

    @property
    def buy(self) -> float:
        """What is bought, in the need's measure."""
        return self.packs * self.pack_size


@dataclass(frozen=True, slots=True)
class ShoppingList:
    """What to buy, by aisle in the order of a shop; `at_home` comes from the tap or cannot be bought.

    `cost` is the sum of the lines with a price, `unpriced` how many have none; None where no price was given.
    """

    aisles: Mapping[str, tuple[Bought, ...]]
    at_home: tuple[Bought, ...]
    cost: float | None = None
    unpriced: int = 0

    @property
    def lines(self) -> tuple[Bought, ...]:
        """All lines to buy."""
        return tuple(line for lines in self.aisles.values() for line in lines)


def shopping_list(
    recipes: Sequence[Recipe], market: Market = "us", prices: Mapping[str, float] | None = None
) -> ShoppingList:
    """The ingredients of all `recipes` as one list in packs of that market.

    `prices` gives what one pack costs by food key, item or any name of the food (for what is sold loose: a kilogram).
    Nothing is lost: a line that cannot be measured stands with its text. Raises Impossible for a price below zero,
    Unknown for a market that is none.
    """
    if market not in LOOSE_G:
        raise Unknown("market", market, tuple(LOOSE_G))
    groups = _groups(recipes)
    weighed = {key: sum(_amount(one, "g") for _, one in lines) for (key, by), lines in groups.items() if by == "g"}
    made = {**_made(recipes), **{(key, "g"): grams for key, grams in peel_with_the_juice(weighed).items()}}
    bought = [
        _bought(key, measure, lines, market, made.get((key, measure), 0.0))
        for (key, measure), lines in groups.items()
    ]
    if prices is not None:
        by_food = {food_key(name): price for name, price in prices.items()}  # "potatoes" is any potato
        bought = [_priced(line, {**by_food, **prices}) for line in bought]
    by_aisle = {
        aisle: tuple(sorted((line for line in bought if line.aisle == aisle), key=lambda line: line.item))
        for aisle in (*_aisle_names(), OTHER)
    }
    at_home = by_aisle.pop(TAP)
    shelves = MappingProxyType({aisle: lines for aisle, lines in by_aisle.items() if lines})
    costs = [line.cost for lines in shelves.values() for line in lines]
    known = [cost for cost in costs if cost is not None]
    return ShoppingList(
        shelves, at_home, None if prices is None else sum(known), 0 if prices is None else len(costs) - len(known)
    )


def _groups(recipes: Sequence[Recipe]) -> Mapping[tuple[str, str], list[tuple[Recipe, Ingredient]]]:
    """Lines by food and measure; what has no measure joins a line of the same food that has one."""
    groups: dict[tuple[str, str], list[tuple[Recipe, Ingredient]]] = {}
    for recipe in recipes:
        for ingredient in recipe.ingredients:
            groups.setdefault(_group(ingredient), []).append((recipe, ingredient))
    for key, measure in [*groups]:
        joined = next((other for other in groups if other[0] == key and other[1]), None)
        if not measure and joined:
            groups[joined] += groups.pop((key, measure))
    return groups


def _made(recipes: Sequence[Recipe]) -> Mapping[tuple[str, str], float]:
    """Grams of a food that one of the recipes makes for the others, as a stock is made for the gravy."""
    made: dict[tuple[str, str], float] = {}
    for recipe in recipes:
        key = food_named(recipe.name)
        makes = recipe.makes
        if makes is None or key is None or makes.unit == "serving" or unit_named(makes.unit) is None:
            continue
        kilograms = Amount(makes.usual, makes.unit, region=recipe.region).kilograms(_names()[key])
        if kilograms is not None:
            made[(key, "g")] = made.get((key, "g"), 0.0) + 1000.0 * kilograms
    return made


def _group(ingredient: Ingredient) -> tuple[str, str]:
    part = part_of_fruit(ingredient)
    if part is not None:
        return part[0], "g"
    key = food_key(ingredient.item)
    if not ingredient.read or ingredient.amount is None:
        return key, ""
    if _pack_measure(key) == "piece" or key.startswith("roast_"):
        return key, "piece" if _pieces(ingredient) is not None else _weighed(ingredient)
    return key, _weighed(ingredient)


def _weighed(ingredient: Ingredient) -> str:
    if ingredient.kilograms() is not None or _in_packs(ingredient) is not None:
        return "g"
    if ingredient.litres() is not None:
        return "ml"
    return f"piece {ingredient.amount.unit if ingredient.amount else ''}".strip()


def _bought(key: str, measure: str, lines: list[tuple[Recipe, Ingredient]], market: Market, made: float) -> Bought:
    first = lines[0][1]
    need = _need(key, measure, [ingredient for _, ingredient in lines]) if measure else None
    if "drippings" in first.item and need:
        made = need.amount  # the roast gives them
    pack, size = _pack(need, market) if need else ("", 0.0)
    wanted = max(need.trimmed - made, 0.0) if need else 0.0
    if need and need.measure == "piece":
        wanted = math.ceil(wanted - 1e-9)
    packs = math.ceil(wanted / size - 1e-9) if size else 0
    return Bought(
        need=need,
        item=_display(key, [ingredient for _, ingredient in lines]),
        aisle=TAP if made and not packs else _aisle(key, first.item),
        pack=pack,
        packs=packs,
        pack_size=size,
        left_over=packs * size - wanted,
        made=min(made, need.trimmed) if need else 0.0,
        recipes=tuple(dict.fromkeys(recipe.name for recipe, _ in lines)),
        lines=tuple(_line(ingredient, market) for _, ingredient in lines),
        optional=all(ingredient.optional for _, ingredient in lines),
    )


def _need(key: str, measure: str, ingredients: Iterable[Ingredient]) -> Need:
    listed = list(ingredients)
    amounts = [_amount(ingredient, measure) for ingredient in listed]
    trimmed = [
        amount / (1.0 - _refuse(key)) if _already_cut(ingredient) else amount
        for amount, ingredient in zip(amounts, listed, strict=True)
    ]
    kind, _, count_unit = measure.partition(" ")
    each_kg = _each_kg(listed) if kind == "piece" else None
    item = _names().get(key, listed[0].item)
    return Need(key, item, cast(Measure, kind), sum(amounts), sum(trimmed), count_unit, each_kg)


def _each_kg(ingredients: Sequence[Ingredient]) -> float | None:
    """The weight of one piece, on average, where every line says it: "13 (7 kg) turkeys"."""
    said = [one.amount for one in ingredients if one.amount is not None and (one.amount.each or one.amount.equals)]
    weights = [one.kilograms() for one in said]
    known = [kilograms for kilograms in weights if kilograms is not None]
    return sum(known) / float(sum(one.usual for one in said)) if known and len(known) == len(ingredients) else None


def _amount(ingredient: Ingredient, measure: str) -> float:
    part = part_of_fruit(ingredient)
    if part is not None:
        return part[1]
    if measure == "g":
        kilograms = ingredient.kilograms()
        return 1000.0 * kilograms if kilograms is not None else _in_packs(ingredient) or 0.0
    if measure == "ml":
        return 1000.0 * (ingredient.litres() or 0.0)
    pieces = _pieces(ingredient)
    return pieces if pieces is not None else float(ingredient.amount.usual) if ingredient.amount else 0.0


def _pieces(ingredient: Ingredient) -> float | None:
    """Whole things counted, or worked out from their mass (eggs in a cup)."""
    amount = ingredient.amount
    if amount is None:
        return None
    if not amount.unit or amount.unit == "piece":
        return float(amount.usual)
    kilograms, each = ingredient.kilograms(), piece_mass(ingredient.item, "piece")
    return None if kilograms is None or each is None else kilograms / each.kg


def _in_packs(ingredient: Ingredient) -> float | None:
    """Grams of what is counted in the packs it is sold in: bunches of parsley, heads of garlic."""
    row = _packs().get(food_key(ingredient.item))
    amount = ingredient.amount
    if row is None or amount is None or row["measure"] != "g" or row["pack"] != amount.unit:
        return None
    return float(amount.usual) * float(row["us"])


def _already_cut(ingredient: Ingredient) -> bool:
    """Whether the amount is of the trimmed food: measured by volume, as "2 cups chopped onion" is."""
    amount = ingredient.amount
    return amount is not None and bool(amount.unit) and unit(amount.unit, amount.region).dimension == "volume"


def _pack(need: Need, market: Market) -> tuple[str, float]:
    row = _packs().get(need.key)
    if need.measure == "piece":
        whole = row is not None and row["measure"] == "piece" and not need.count_unit
        return (str(row["pack"]), float(row[market])) if whole and row is not None else ("piece", 1.0)
    loose = LOOSE_G[market] if need.measure == "g" else LOOSE_ML
    size = None if row is None else as_measured(float(row[market]), row["measure"], need)
    return ("loose", loose) if row is None or size is None else (str(row["pack"]), size)


def as_measured(size: float, measure: Measure, need: Need) -> float | None:
    """A pack of `size` in the measure of `need`, by the food's density; None where that is not known."""
    if measure == need.measure:
        return size
    dense = density_or_none(need.item) if "piece" not in (measure, need.measure) else None
    if dense is None:
        return None
    return size * dense.kg_per_l if need.measure == "g" else size / dense.kg_per_l


def _priced(line: Bought, prices: Mapping[str, float]) -> Bought:
    key = line.need.key if line.need else food_key(line.item)
    price = next((prices[name] for name in (key, line.item) if name in prices), None)
    if price is None or line.need is None:
        return line
    if not price >= 0:
        raise Impossible("price", price, "is below 0", f"give what {line.item} costs")
    amount = line.packs * line.pack_size / 1000.0 if line.pack == "loose" else float(line.packs)
    return replace(line, cost=price * amount)


def _line(ingredient: Ingredient, market: Market) -> str:
    """The line in the measures of the market, its amount as it is now (a scaled recipe's text has the old one)."""
    return (
        write_ingredient(ingredient, market) if ingredient.read and ingredient.amount is not None else ingredient.text
    )


def _display(key: str, ingredients: list[Ingredient]) -> str:
    """The recipes' own word where they agree, else the name we write for the food."""
    said = {ingredient.item for ingredient in ingredients}
    return said.pop() if len(said) == 1 else _names().get(key, ingredients[0].item)


def _aisle(key: str, item: str) -> str:
    for row in table("aisles"):
        if key in row.get("keys", ()):
            return str(row["aisle"])
    if key.startswith("roast_"):
        return "meat"
    words = set(re.findall(r"[^\W\d_]+", item.casefold()))
    phrase = item.casefold()
    for row in table("aisles"):
        if any(name in words or (" " in name and name in phrase) for name in row.get("words", ())):
            return str(row["aisle"])
    return OTHER


def _refuse(key: str) -> float:
    row = table("refuse").by("key").get(key)
    return float(row["refuse_percent"]) / 100.0 if row else 0.0


def _pack_measure(key: str) -> str | None:
    row = _packs().get(key)
    return str(row["measure"]) if row else None


@cache
def _packs() -> Mapping[str, Row]:
    return table("packs").by("key")


@cache
def _aisle_names() -> tuple[str, ...]:
    return tuple(str(row["aisle"]) for row in table("aisles"))


@cache
def _names() -> Mapping[str, str]:
    names = {str(row["key"]): str(row["names"][0]) for row in table("foods")}
    return MappingProxyType(names | {f"salt_{row['kind']}": str(row["names"][0]) for row in table("salts")})
