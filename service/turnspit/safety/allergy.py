"""Allergens across the dishes of one dinner: who may eat what, and what may have touched it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache

from turnspit.errors import Unknown
from turnspit.message import Message, Value
from turnspit.reference import Kitchen, table
from turnspit.safety.finding import Finding, finding


@dataclass(frozen=True, slots=True)
class DishFinding:
    """What a check found about one dish."""

    dish: str
    finding: Finding


def check_allergens(
    dishes: Mapping[str, Iterable[str]], avoid: Iterable[str] = (), kitchen: Kitchen = "home"
) -> tuple[DishFinding, ...]:
    """The dishes of a dinner for guests who must avoid some allergens, gravest first.

    `dishes` maps each dish to the allergens its recipe holds or may hold. A dish that holds one to be avoided is a
    stop for that guest; every other dish of the same kitchen carries the warning of cross-contact. With nothing to
    avoid, each dish that holds an allergen is told. What a guest calls it is understood ("dairy", "gluten", "nuts":
    tree nuts and peanuts). Raises Unknown for a word that is none of the nine and that no dish is said to hold.
    """
    held = {dish: _allergens(allergens) for dish, allergens in dishes.items()}
    shunned = _allergens(avoid)
    for stranger in sorted(shunned.difference(_major(), *held.values())):
        raise Unknown("avoid", stranger, _major())
    touched = any(allergens & shunned for allergens in held.values())
    found = [DishFinding(dish, _dish(allergens, shunned, touched, kitchen)) for dish, allergens in held.items()]
    order = ("stop", "warn", "info", "ok")
    return tuple(sorted(found, key=lambda each: order.index(each.finding.severity)))


def _dish(allergens: frozenset[str], shunned: frozenset[str], touched: bool, kitchen: Kitchen) -> Finding:
    if allergens & shunned:
        seen = Message("safety-dish-holds", allergens=_named(allergens & shunned))
        return finding(kitchen, "allergens", "stop", "tell", seen, action=Message("safety-do-not-serve-to"))
    if touched:
        seen = Message("safety-dish-beside")
        return finding(kitchen, "allergens", "warn", "tell", seen, action=Message("safety-do-keep-apart"))
    if allergens:
        seen = Message("safety-dish-holds", allergens=_named(allergens))
        return finding(kitchen, "allergens", "info" if not shunned else "warn", "tell", seen)
    return finding(kitchen, "allergens", "ok", "go_on", Message("safety-dish-free"))


def _allergens(words: Iterable[str]) -> frozenset[str]:
    """The allergens that the words name; a word that names none of the nine stands for itself."""
    names = _names()
    folded = (word.strip().casefold() for word in words)
    return frozenset(allergen for word in folded for allergen in names.get(word, (word,)))


def _major() -> tuple[str, ...]:
    return tuple(str(row["allergen"]) for row in table("allergens"))


@cache
def _names() -> Mapping[str, tuple[str, ...]]:
    """Every name of an allergen and every food that holds it, with the allergens meant."""
    names: dict[str, tuple[str, ...]] = {}
    for row in table("allergens"):
        for word in dict.fromkeys((row["allergen"], *row.get("called", ()), *row["words"])):
            names[word] = (*names.get(word, ()), row["allergen"])
    return names


def _named(allergens: Iterable[str]) -> Value:
    """The names in the order of the alphabet, the nine major ones in the reader's language."""
    major = _major()
    names: list[Value] = [
        Message(f"safety-allergen-{name.replace(' ', '-')}") if name in major else name for name in sorted(allergens)
    ]
    said = names.pop()
    while names:
        said = Message("safety-and", first=names.pop(), rest=said)
    return said
