"""Whose cups and spoons a recipe means: stated, or inferred from its words, and then said."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from typing import cast

from turnspit.message import Message
from turnspit.quantities import Region
from turnspit.reference import table

LEAST_WEIGHT = 2


@dataclass(frozen=True, slots=True)
class RegionFound:
    """The region of a recipe's measures (None where nothing shows it) and the words that showed it."""

    region: Region | None
    signs: tuple[str, ...] = ()

    def note(self) -> Message:
        """What is to be said of it."""
        if self.region is None:
            return Message("recipes-region-assumed")
        return Message("recipes-region-inferred", region=self.region, signs=", ".join(self.signs[:4]))


def infer_region(text: str) -> RegionFound:
    """The region that the words of a recipe point to; see the table `region_signs` for the weights."""
    signs, pattern = _signs()
    said = dict.fromkeys(match.group().casefold() for match in pattern.finditer(text))
    weights: dict[str, int] = {}
    words: dict[str, list[str]] = {}
    for word in said:
        for region, weight in signs[word]:
            weights[region] = weights.get(region, 0) + weight
            words.setdefault(region, []).append(word)
    ranked = sorted(weights, key=lambda region: -weights[region])
    if not ranked or weights[ranked[0]] < LEAST_WEIGHT:
        return RegionFound(None)
    if len(ranked) > 1 and weights[ranked[0]] == weights[ranked[1]]:
        return RegionFound(None)
    strongest = sorted(words[ranked[0]], key=lambda word: -dict(signs[word])[ranked[0]])
    return RegionFound(cast(Region, ranked[0]), tuple(strongest))


@cache
def _signs() -> tuple[dict[str, list[tuple[str, int]]], re.Pattern[str]]:
    signs: dict[str, list[tuple[str, int]]] = {}
    for row in table("region_signs"):
        for word in row["words"]:
            signs.setdefault(word, []).append((row["region"], row["weight"]))
    longest_first = sorted(signs, key=len, reverse=True)
    pattern = "|".join(re.escape(word) for word in longest_first)
    return signs, re.compile(rf"(?<![^\W\d_])(?:{pattern})(?![^\W\d_])", re.IGNORECASE)
