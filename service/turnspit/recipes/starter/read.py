"""Reads the starter recipes from their files."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from importlib.resources import files
from typing import Any

from turnspit.errors import Unknown
from turnspit.recipes.ingredients import read_ingredient
from turnspit.recipes.recipe import Recipe, Step, Yield

SOURCE = "The Lock House, an invented kitchen"


@dataclass(frozen=True, slots=True)
class Starter:
    """A starter recipe with the figures by which its yield is checked.

    `portion_g` is one serving; `lost_percent` what evaporates and is trimmed of the ingredients in `counts` (of all
    that are measured where that is empty). A roast's yield comes from the carved share of its kind; a brine has its
    `strength_percent`, a dry salt its `percent_of_bird`.
    """

    key: str
    recipe: Recipe
    portion_g: float | None
    lost_percent: float
    counts: tuple[str, ...]
    roast: str | None
    strength_percent: float | None
    percent_of_bird: float | None
    bird_kg: float | None


@cache
def starter_keys() -> tuple[str, ...]:
    """The keys of the starter recipes, sorted."""
    entries = files("turnspit.recipes.starter").iterdir()
    return tuple(sorted(entry.name.removesuffix(".toml") for entry in entries if entry.name.endswith(".toml")))


@cache
def read_starter(key: str) -> Starter:
    """The starter recipe of that key. Raises Unknown."""
    if key not in starter_keys():
        raise Unknown("recipe", key, starter_keys())
    text = files("turnspit.recipes.starter").joinpath(f"{key}.toml").read_text(encoding="utf-8")
    return _starter(key, tomllib.loads(text))


def starters() -> tuple[Starter, ...]:
    """All starter recipes, by key."""
    return tuple(read_starter(key) for key in starter_keys())


def _starter(key: str, content: Mapping[str, Any]) -> Starter:
    makes = content["makes"]
    steps = tuple(_step(step) for step in content["steps"])
    recipe = Recipe(
        name=content["name"],
        makes=Yield(Fraction(str(makes["count"])), makes["unit"]),
        ingredients=tuple(read_ingredient(line, "US") for line in content["ingredients"]),
        steps=steps,
        region="US",
        total_min=sum(step.minutes[1] for step in steps if step.minutes),
        description=content.get("description", ""),
        kind=content["kind"],
        source=SOURCE,
    )
    return Starter(
        key=key,
        recipe=recipe,
        portion_g=makes.get("portion_g"),
        lost_percent=float(content.get("lost_percent", 0.0)),
        counts=tuple(content.get("counts", ())),
        roast=content.get("roast"),
        strength_percent=content.get("strength_percent"),
        percent_of_bird=content.get("percent_of_bird"),
        bird_kg=content.get("bird_kg"),
    )


def _step(content: Mapping[str, Any]) -> Step:
    low, high = content["minutes"]
    return Step(
        text=content["text"],
        minutes=(float(low), float(high)),
        temperatures_c=tuple(float(c) for c in content.get("temperatures_c", ())),
        equipment=tuple(content["equipment"]),
        station=content["station"],
        days_before=content.get("days_before", 0),
    )
