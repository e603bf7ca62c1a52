"""Whose cups and spoons a recipe means: stated, or inferred from its words, and then said."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from typing import cast

from turnspit.message import Message
from turnspit.quantities import Region
from turnspit.reference import table

LEAST_WEIGHT = 2
LONGEST_SIGN = 4
_WORDS = re.compile(r"[^\W\d_]+(?:['’-][^\W\d_]+)*'?|°[a-z]|\b20(?= ?ml)")


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
    signs = _signs()
    said = dict.fromkeys(phrase for phrase in _phrases(text) if phrase in signs)
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


def _phrases(text: str) -> Iterator[str]:
    """Every run of one to four words of the text, in its order."""
    words = _WORDS.findall(text.casefold())
    for start in range(len(words)):
        phrase = words[start]
        yield phrase
        for word in words[start + 1 : start + LONGEST_SIGN]:
            phrase = f"{phrase} {word}"
            yield phrase


@cache
def _signs() -> dict[str, list[tuple[str, int]]]:
    signs: dict[str, list[tuple[str, int]]] = {}
    for row in table("region_signs"):
        for word in row["words"]:
            signs.setdefault(" ".join(_WORDS.findall(word)), []).append((row["region"], row["weight"]))
    return signs
