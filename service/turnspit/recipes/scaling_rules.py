"""What does not scale with the portions: named rules from the table `scaling_rules`, each with its source."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache, lru_cache

from turnspit.errors import Unknown
from turnspit.message import Message, Value
from turnspit.quantities import Amount
from turnspit.recipes.recipe import Ingredient, Recipe
from turnspit.recipes.spanish import food_message
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
        if row["effect"] == "surface":
            lines_of = [at for at in lines_of if _simmers(recipe, row, recipe.ingredients[at].item)]
        if (row.get("words") and not lines_of) or not _concerns(row, factor, title, steps):
            continue
        changed = _changed(recipe, linear, row, factor, lines_of)
        if not _worth_saying(row, changed, linear, lines_of):
            continue
        on = name not in rules_off
        for at, amount in changed.items() if on else ():
            if not changed_by[at]:
                lines[at], changed_by[at] = replace(linear[at], amount=amount), name
        items = tuple(linear[at].item for at in lines_of)
        message = Message(f"recipes-rule-{name}", **_values(factor, items))
        speaking.append(AppliedRule(name, on, bool(changed), items, message, row["source"], row["obtained"]))
    return tuple(lines), tuple(changed_by), tuple(speaking)


def _changed(
    recipe: Recipe, linear: tuple[Ingredient, ...], row: Row, factor: Fraction, lines_of: list[int]
) -> dict[int, Amount]:
    """The amounts by the rule, by the place of their line; none for advice."""
    if row["effect"] == "whole_roast":
        counted = {at: linear[at].amount for at in lines_of}
        return {
            at: replace(one, value=_whole(one.usual), high=None)
            for at, one in counted.items()
            if _in_parts(one) and one
        }
    instead = _instead_of_factor(recipe, row, factor, lines_of)
    originals = {at: recipe.ingredients[at].amount for at in lines_of}
    return {at: one.times(instead) for at, one in originals.items() if one is not None and instead is not None}


def _instead_of_factor(recipe: Recipe, row: Row, factor: Fraction, lines_of: list[int]) -> Fraction | None:
    """What the rule multiplies the recipe's amounts by instead of the factor; None where it does not."""
    if row["effect"] == "half_steps":
        return 2 + (factor - 2) * Fraction(row["slope"])
    if row["effect"] == "surface":
        evaporated = _evaporated_part(recipe, row, lines_of)
        kept = float(factor) - (float(factor) - float(factor) ** (2 / 3)) * evaporated
        return Fraction(kept).limit_denominator(1000)
    return None


def _worth_saying(row: Row, changed: dict[int, Amount], linear: tuple[Ingredient, ...], lines_of: list[int]) -> bool:
    """A change of under a hundredth is not worth a word, nor are whole eggs."""
    if row["effect"] == "advice":
        return True
    if row["effect"] == "whole":
        return any(_in_parts(linear[at].amount) for at in lines_of)
    pairs = ((linear[at].amount, amount) for at, amount in changed.items())
    return any(was is not None and abs(now.usual / was.usual - 1) >= Fraction(1, 100) for was, now in pairs)


def _whole(count: Fraction) -> Fraction:
    """Whole roasts for so many: the next above, unless the one below is short by less than a tenth of a roast."""
    return Fraction(max(1, math.ceil(count - Fraction(1, 10))))


def _simmers(recipe: Recipe, row: Row, item: str) -> bool:
    """Whether a step that simmers names the liquid, or the dish is a sauce, stock or stew."""
    noun = item.rsplit(maxsplit=1)[-1].casefold()
    steps = (step.text.casefold() for step in recipe.steps if _pattern(row["rule"], "in_steps").search(step.text))
    return bool(_pattern(row["rule"], "dishes").search(recipe.name)) or any(noun in text for text in steps)


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


def _values(factor: Fraction, items: tuple[str, ...]) -> dict[str, Value]:
    return {
        "items": food_message(*dict.fromkeys(items)),
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
