"""What does not scale with the portions: named rules from the table `scaling_rules`, each with its source."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache, lru_cache

from turnspit.errors import Unknown
from turnspit.message import Message
from turnspit.quantities import Amount
from turnspit.recipes.recipe import Ingredient, Recipe
from turnspit.reference import Row, table

MOST_EVAPORATED = 0.5
"""No more than this part of the liquid is taken to simmer away, whatever the steps say."""


@dataclass(frozen=True, slots=True)
class AppliedRule:
    """A rule that has to do with this scaling: `on` unless it was turned off; `items` are the lines it speaks of."""

    rule: str
    on: bool
    changes_amounts: bool
    items: tuple[str, ...]
    message: Message
    source: str
    obtained: str


def scaling_rules() -> tuple[str, ...]:
    """The names of all rules, any of which can be turned off."""
    return tuple(_rows())


def apply_rules(
    recipe: Recipe, linear: tuple[Ingredient, ...], factor: Fraction, rules_off: frozenset[str]
) -> tuple[tuple[Ingredient, ...], tuple[str, ...], tuple[AppliedRule, ...]]:
    """The lines as they are to be measured, the rule that changed each ("" for none), and all rules that speak.

    `linear` are the lines times the factor. Raises Unknown for a rule to be turned off that is none.
    """
    for name in rules_off - _rows().keys():
        raise Unknown("rule", name, scaling_rules())
    lines, changed_by = list(linear), [""] * len(linear)
    speaking: list[AppliedRule] = []
    title, steps = _said(recipe)
    concerned: dict[str, list[int]] = {}
    for at, one in enumerate(linear):
        for name in _rules_of(one.item) if one.amount is not None else ():
            concerned.setdefault(name, []).append(at)
    for name, row in _rows().items():
        lines_of = concerned.get(name, [])
        if (row.get("words") and not lines_of) or not _concerns(row, factor, title, steps):
            continue
        change = _change(recipe, row, factor, lines_of)
        if not _worth_saying(row, change, factor, [linear[at] for at in lines_of]):
            continue
        on = name not in rules_off
        for at in lines_of if on and change is not None else ():
            amount = recipe.ingredients[at].amount
            if not changed_by[at] and amount is not None and change is not None:
                lines[at] = replace(linear[at], amount=amount.times(change))
                changed_by[at] = name
        items = tuple(linear[at].item for at in lines_of)
        message = Message(f"recipes-rule-{name}", **_values(factor, items))
        speaking.append(AppliedRule(name, on, change is not None, items, message, row["source"], row["obtained"]))
    return tuple(lines), tuple(changed_by), tuple(speaking)


def _change(recipe: Recipe, row: Row, factor: Fraction, lines_of: list[int]) -> Fraction | None:
    """What the rule multiplies the recipe's amounts by instead of the factor; None for advice."""
    if row["effect"] == "half_steps":
        return 2 + (factor - 2) * Fraction(row["slope"])
    if row["effect"] == "surface":
        evaporated = _evaporated_part(recipe, row, lines_of)
        kept = float(factor) - (float(factor) - float(factor) ** (2 / 3)) * evaporated
        return Fraction(kept).limit_denominator(1000)
    return None


def _worth_saying(row: Row, change: Fraction | None, factor: Fraction, lines: list[Ingredient]) -> bool:
    """A change of under a hundredth is not worth a word, nor is whole eggs."""
    if change is not None:
        return abs(change / factor - 1) >= Fraction(1, 100)
    return row["effect"] != "whole" or any(_in_parts(one.amount) for one in lines)


def _evaporated_part(recipe: Recipe, row: Row, lines_of: list[int]) -> float:
    """The part of the liquid that simmers away at the recipe's own size; the pot is twice as wide as that is high."""
    litres = sum(recipe.ingredients[at].litres() or 0.0 for at in lines_of)
    steps = (step for step in recipe.steps if step.minutes and _pattern(row["rule"], "in_steps").search(step.text))
    hours = sum(sum(step.minutes) / 2 for step in steps if step.minutes and not _COVERED.search(step.text)) / 60
    if not litres or not hours:
        return 0.0
    area_m2 = math.pi / 4 * (8 / math.pi * litres / 1000) ** (2 / 3)
    rate_kg_m2_h = float(row["rate_kg_m2_h"])
    return min(float(rate_kg_m2_h * area_m2 * hours / litres), MOST_EVAPORATED)


def _concerns(row: Row, factor: Fraction, title: str, steps: str) -> bool:
    """Whether the factor is in the rule's range and the recipe of its kind."""
    up, down = row.get("from_factor"), row.get("to_factor")
    if factor == 1 or not ((up is not None and factor >= up) or (down is not None and factor <= down)):
        return False
    if row.get("never_in") and _pattern(row["rule"], "never_in").search(title):
        return False
    if row.get("only_in") and not _pattern(row["rule"], "only_in").search(title):
        return False
    return not row.get("in_steps") or bool(_pattern(row["rule"], "in_steps").search(steps))


def _said(recipe: Recipe) -> tuple[str, str]:
    """What the recipe and its parts are called, and what is done in it."""
    titles = {recipe.name, recipe.kind, *(one.section for one in recipe.ingredients)}
    return " ".join(titles), " ".join((recipe.name, *(step.text for step in recipe.steps)))


def _in_parts(amount: Amount | None) -> bool:
    return amount is not None and not amount.unit and amount.usual.denominator != 1


def _values(factor: Fraction, items: tuple[str, ...]) -> dict[str, str | float]:
    return {
        "items": ", ".join(dict.fromkeys(items)),
        "factor": round(float(factor), 3),
        "batches": math.ceil(factor / 3),
        "time_factor": round(float(factor) ** (2 / 3), 2),
    }


@lru_cache(maxsize=8192)
def _rules_of(item: str) -> tuple[str, ...]:
    """The rules with a food that the item ends with ("freshly grated nutmeg"); fresh herbs are no dried ones."""
    words = tuple(item.casefold().split())
    ends = {words[-length:] for length in (1, 2, 3) if length <= len(words)}
    found = (name for name, foods in _foods().items() if not ends.isdisjoint(foods))
    return tuple(name for name in found if not ("fresh" in words and name == "herbs-half-steps"))


@cache
def _foods() -> dict[str, frozenset[tuple[str, ...]]]:
    return {name: frozenset(tuple(food.split()) for food in row.get("words", ())) for name, row in _rows().items()}


@cache
def _pattern(rule: str, column: str) -> re.Pattern[str]:
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, _rows()[rule][column]))})", re.IGNORECASE)


@cache
def _rows() -> dict[str, Row]:
    return dict(table("scaling_rules").by("rule"))


_COVERED = re.compile(r"\bcover(?:ed)?\b", re.IGNORECASE)
