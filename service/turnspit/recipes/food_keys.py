"""The key under which lines for the same thing are summed, and by which it is called in another language."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from types import MappingProxyType

from turnspit.quantities import food_named
from turnspit.recipes.inflection import in_number
from turnspit.reference import table


def food_key(item: str) -> str:
    """The key under which lines for the same thing are summed: that of `foods`, of a roast, or the item itself."""
    roast = _roast_named(item)
    return roast or food_named(item) or in_number(" ".join(item.casefold().split()), many=False)


def _roast_named(item: str) -> str | None:
    """The roast an item is ("whole turkey, 14 lb" but not "turkey stock" or "turkey neck")."""
    words = re.findall(r"[^\W\d_]+", item.casefold())
    while words and words[0] in ("a", "whole", "fresh", "frozen", "thawed", "plain", "oven-ready"):
        words.pop(0)
    name = " ".join(words)
    kind = _roasts().get(name) or _roasts().get(name.removesuffix("s"))
    return f"roast_{kind}" if kind else None


@cache
def _roasts() -> Mapping[str, str]:
    """Kinds of roast by the names under which they are bought."""
    return MappingProxyType(
        {str(name): str(row["kind"]) for row in table("yields_carved") for name in row.get("names", ())}
    )
