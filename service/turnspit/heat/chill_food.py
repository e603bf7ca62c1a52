"""What cools: found by the words of its name in the table `chill_foods`."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache

from turnspit.heat.material import Material
from turnspit.heat.properties import LEAN_MEAT_FREEZING_C, Composition, density, material
from turnspit.message import Message
from turnspit.reference import Row, table

LIQUID_FREEZING_C = -0.5
THIN_MIXING = 5.0
"""What mixes better than this by itself is thin."""
_LOOSE_WORDS = """
ground minced mince pulled shredded chopped diced taco hash carnitas carved sliced slices leftovers
"""
LOOSE_WORDS = frozenset(_LOOSE_WORDS.split())
"""Meat in such pieces lies in a pan as rice does."""
STIRRED_MIXING = 200.0
"""Mixing of what is stirred: its inside has one temperature."""


@dataclass(frozen=True, slots=True)
class ChillFood:
    """A food as it cools: material, density at 4 C, and the mixing inside (1 for what does not flow).

    `loose`: it needs a pan or a bag to lie in.
    """

    name: str
    material: Material
    density_kg_m3: float
    mixing: float
    mixing_spread: float
    stirred: float
    loose: bool
    freezing_c: float
    assumptions: tuple[Message, ...] = ()

    @property
    def thin(self) -> bool:
        """Whether it moves freely by itself, as stock does."""
        return self.mixing > THIN_MIXING


def chill_food(name: str, *, liquid: bool) -> ChillFood:
    """The food that `name` speaks of; without a known word meat, or soup where it stands in a pot.

    Of several that flow, `liquid` takes the one that mixes least: the slower figure is the safer.
    """
    row = _found(name, liquid)
    told: tuple[Message, ...] = ()
    if row is None:
        row = table("chill_foods").by("food")["soup" if liquid else "beef"]
        told = (Message("heat-chill-like-soup" if liquid else "heat-chill-like-meat"),)
    freezing_c = LIQUID_FREEZING_C if row["water"] > 0.8 else LEAN_MEAT_FREEZING_C
    stuff = Composition(
        row["water"],
        row["protein"],
        row["fat"],
        row["ash"],
        row.get("carbohydrate", 0.0),
        freezing_c=freezing_c,
    )
    mixing = float(row.get("mixing", 1.0))
    return ChillFood(
        name=row["food"],
        material=material(stuff),
        density_kg_m3=float(density(stuff, 4.0)),
        mixing=mixing,
        mixing_spread=float(row.get("mixing_spread", 0.0)),
        stirred=STIRRED_MIXING if mixing > 1 else 1.0,
        freezing_c=freezing_c,
        loose=row.get("loose", False) or bool(LOOSE_WORDS & set(_words(name))),
        assumptions=told,
    )


def _found(name: str, liquid: bool) -> Row | None:
    said = _words(name)
    said = [word for part in said for word in (part, part.removesuffix("s"))]
    for words in (_by_word("words"), _by_word("loose_words")):
        found = [word for word in words if word in said]
        flowing = [words[word] for word in found if words[word].get("mixing", 1.0) > 1]
        if liquid and flowing:
            return min(flowing, key=lambda row: float(row["mixing"]))
        if found:
            return words[max(found, key=said.index)]
    return None


def _words(name: str) -> list[str]:
    return re.findall(r"\w+", name.casefold().replace("_", " "))


@cache
def _by_word(column: str) -> dict[str, Row]:
    return {word: row for row in table("chill_foods") for word in row.get(column, ())}
