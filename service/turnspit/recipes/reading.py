"""The one door for a recipe that someone gives: plain text, JSON-LD, or a page, best with JSON-LD inside."""

from __future__ import annotations

import re

from turnspit.errors import Impossible, Unknown
from turnspit.quantities import REGIONS, Region
from turnspit.recipes.json_ld import read_json_ld
from turnspit.recipes.page import is_page, page_text
from turnspit.recipes.recipe import Recipe
from turnspit.recipes.text import check_length, read_text

_JSON = re.compile(r'\s*(?:\{|\[\s*[\[{"])')


def read_recipe(text: str, region: Region | str | None = None) -> Recipe:
    """The recipe in the text, whatever its form; `region` states whose cups and spoons it uses.

    Raises Impossible for a text without a recipe, Unknown for a region that is none of REGIONS.
    """
    if region is not None and region not in REGIONS:
        raise Unknown("region", region, REGIONS)
    if looks_like_json_ld(text):
        try:
            return read_json_ld(text, region)
        except Impossible:
            if not is_page(text):  # a page's JSON-LD may tell of anything else
                raise
    if is_page(text):
        return read_text(page_text(text), region)
    check_length(text)
    return read_text(text, region)


def looks_like_json_ld(text: str) -> bool:
    """Whether the text is JSON, or a page with JSON-LD in it."""
    return bool(_JSON.match(text)) or ("ld+json" in text and "<script" in text.casefold())
