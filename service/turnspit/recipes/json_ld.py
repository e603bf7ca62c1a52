"""schema.org `Recipe` as JSON-LD: read from a file or from a page that embeds it, and written.

A page may hold one object, a list or an `@graph`; `@type` may be a list. `ingredients` is the superseded name of
`recipeIngredient`: read, never written. Instructions may be a text, texts, HowToSteps or HowToSections.
"""

from __future__ import annotations

import html
import json
import re
from collections.abc import Iterator, Mapping
from dataclasses import replace
from html.parser import HTMLParser
from typing import Any

from turnspit.errors import Impossible
from turnspit.quantities import REGIONS, Region
from turnspit.recipes.headings import read_section, read_yield
from turnspit.recipes.ingredients import read_ingredients
from turnspit.recipes.recipe import Ingredient, Recipe, Step, Yield
from turnspit.recipes.regions import RegionFound, infer_region
from turnspit.recipes.steps import read_step
from turnspit.recipes.text import with_notes
from turnspit.recipes.writing import write_ingredient, write_yield

LONGEST_PAGE = 5_000_000
OURS = "turnspit:"
"""The prefix of the names that schema.org does not have."""
PASSED_ON = (
    "author",
    "image",
    "url",
    "datePublished",
    "publisher",
    "recipeCuisine",
    "cookingMethod",
    "suitableForDiet",
    "nutrition",
    "performTime",
    "video",
)
"""What a published recipe says beside, kept as it came."""
_TAGS = re.compile(r"<[^>]{0,2000}>")
_DURATION = re.compile(
    r"^P(?:(?P<w>\d+(?:[.,]\d+)?)W)?(?:(?P<d>\d+(?:[.,]\d+)?)D)?"
    r"(?:T(?:(?P<h>\d+(?:[.,]\d+)?)H)?(?:(?P<m>\d+(?:[.,]\d+)?)M)?(?:(?P<s>\d+(?:[.,]\d+)?)S)?)?$",
    re.IGNORECASE,
)
_MINUTES_IN = {"w": 10080.0, "d": 1440.0, "h": 60.0, "m": 1.0, "s": 1 / 60}
_LINE_BREAKS = re.compile(r"\n|<br\s{0,9}/?>|</p>|</li>", re.IGNORECASE)


def read_json_ld(text: str, region: Region | None = None) -> Recipe:
    """The first Recipe in JSON-LD or in an HTML page with JSON-LD inside; see `read_text` for `region`.

    Raises Impossible for a text without one, for broken JSON, and for a yield of nothing.
    """
    if len(text) > LONGEST_PAGE:
        raise Impossible(
            "recipe", f"{len(text)} characters", f"is longer than {LONGEST_PAGE}", "give the recipe alone"
        )
    documents = _documents(text)
    node = next((node for document in documents for node in _recipes(document)), None)
    if node is None:
        raise Impossible("recipe", "(none)", "is not in the JSON-LD", "give a page or file with a schema.org Recipe")
    return _read_node(node, region)


def write_json_ld(recipe: Recipe) -> dict[str, Any]:
    """The recipe as a schema.org Recipe, without keys that would be empty.

    What schema.org has no place for (region of the measures, sections of the list, remarks, station and day of a
    step) stands under names of our own, `turnspit:...`, so that reading it back loses nothing.
    """
    sections = [one.section for one in recipe.ingredients]
    document: dict[str, Any] = {
        "@context": "https://schema.org",
        "@type": "Recipe",
        "name": recipe.name,
        "description": recipe.description,
        "recipeYield": write_yield(recipe.makes) if recipe.makes else "",
        "prepTime": write_duration(recipe.prep_min),
        "cookTime": write_duration(recipe.cook_min),
        "totalTime": write_duration(recipe.total_min),
        "recipeIngredient": [write_ingredient(one) for one in recipe.ingredients],
        "recipeInstructions": _instructions(recipe.steps),
        "recipeCategory": recipe.kind,
        "keywords": ", ".join(recipe.keywords),
        "tool": list(recipe.equipment),
        "isBasedOn": recipe.source,
        **{name: json.loads(value) for name, value in recipe.passed_on},
        f"{OURS}region": recipe.region,
        f"{OURS}sections": sections if any(sections) else [],
        f"{OURS}remarks": list(recipe.remarks),
    }
    written = {key: value for key, value in document.items() if value}
    if OURS in json.dumps(written):
        written["@context"] = ["https://schema.org", {OURS.rstrip(":"): "urn:turnspit:recipe:"}]
    return written


def read_duration(text: str) -> float | None:
    """Minutes of an ISO 8601 duration ("PT1H30M", "P1DT6H"), or None; years and months are no kitchen time."""
    match = _DURATION.match(text.strip())
    parts = {
        key: float(value.replace(",", ".")) for key, value in (match.groupdict() if match else {}).items() if value
    }
    return sum(_MINUTES_IN[key] * value for key, value in parts.items()) if parts else None


def write_duration(minutes: float | None) -> str:
    """An ISO 8601 duration to the whole minute, "" for none."""
    if minutes is None:
        return ""
    hours, rest = divmod(round(minutes), 60)
    return f"PT{f'{hours}H' if hours else ''}{f'{rest}M' if rest or not hours else ''}"


def _read_node(node: Mapping[str, Any], region: Region | None) -> Recipe:
    texts = _texts(node.get("recipeIngredient") or node.get("ingredients") or node.get("supply"))
    lines = [_clean(line) for line in texts]
    steps = tuple(_steps(node.get("recipeInstructions") or node.get("step")))
    name = _clean(_first(node.get("name"))) or "Recipe"
    stated = region or next((one for one in REGIONS if one == node.get(f"{OURS}region")), None)
    found = RegionFound(stated) if stated else infer_region("\n".join((name, *lines, *(step.text for step in steps))))
    recipe = Recipe(
        name=name,
        makes=_yield(node.get("recipeYield") or node.get("yield")),
        ingredients=tuple(_ingredients(lines, _texts(node.get(f"{OURS}sections")), found.region)),
        steps=steps,
        prep_min=read_duration(_first(node.get("prepTime"))),
        cook_min=read_duration(_first(node.get("cookTime"))),
        total_min=read_duration(_first(node.get("totalTime"))),
        description=_clean(_first(node.get("description"))),
        kind=_clean(_first(node.get("recipeCategory"))),
        keywords=tuple(
            word.strip() for text in _texts(node.get("keywords")) for word in text.split(",") if word.strip()
        ),
        remarks=tuple(_texts(node.get(f"{OURS}remarks"))),
        source=_first(node.get("isBasedOn")),
        passed_on=tuple((key, json.dumps(node[key], ensure_ascii=False)) for key in PASSED_ON if node.get(key)),
    )
    return with_notes(recipe, found, stated=stated is not None)


def _ingredients(lines: list[str], sections: list[str], region: Region | None) -> Iterator[Ingredient]:
    """The lines read; "For the brine:" among them opens a section, unless sections stand apart."""
    section = ""
    for at, line in enumerate(lines):
        heading = read_section(line) if not sections and line.endswith(":") else None
        section = sections[at] if at < len(sections) else section if heading is None else heading
        if line and heading is None:
            yield from read_ingredients(line, region, section)


def _documents(text: str) -> list[Any]:
    """The JSON documents of a file or of the ld+json scripts of a page; broken scripts of a page are passed over."""
    if text.lstrip()[:1] in ("{", "["):
        try:
            return [json.loads(text)]
        except (json.JSONDecodeError, RecursionError) as error:
            raise Impossible("recipe", "JSON", f"cannot be read ({error})", "give the whole JSON-LD") from error
    page = _Scripts()
    page.feed(text)
    documents = []
    for script in page.scripts:
        try:
            documents.append(json.loads(script, strict=False))
        except (json.JSONDecodeError, RecursionError):
            continue
    return documents


class _Scripts(HTMLParser):
    """Collects what stands in `<script type="application/ld+json">`."""

    def __init__(self) -> None:
        super().__init__()
        self.scripts: list[str] = []
        self._inside = False

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Begin a script of JSON-LD."""
        kind = (dict(attrs).get("type") or "").partition(";")[0].strip().casefold()
        self._inside = tag == "script" and kind == "application/ld+json"
        self.scripts += [""] if self._inside else []

    def handle_endtag(self, tag: str) -> None:
        """End it."""
        self._inside = self._inside and tag != "script"

    def handle_data(self, data: str) -> None:
        """Take its text."""
        if self._inside:
            self.scripts[-1] += data


def _recipes(document: Any, depth: int = 0) -> Iterator[Mapping[str, Any]]:
    """Every node of type Recipe, however deep (to twenty levels, more is no page)."""
    if depth > 20:
        return
    if isinstance(document, dict):
        types = document.get("@type")
        if "Recipe" in (types if isinstance(types, list) else [types]):
            yield document
            return
        document = list(document.values())
    if isinstance(document, list):
        for inner in document:
            yield from _recipes(inner, depth + 1)


def _steps(instructions: Any, section: str = "", depth: int = 0) -> Iterator[Step]:
    """Steps from a text (a line each), a list, HowToSteps, HowToSections or an ItemList."""
    if depth > 20:
        return
    if isinstance(instructions, str):
        for line in _LINE_BREAKS.split(instructions):
            text = _clean(line)
            if text:
                yield read_step(text, section)
    elif isinstance(instructions, list):
        for one in instructions:
            yield from _steps(one, section, depth + 1)
    elif isinstance(instructions, dict):
        inner = instructions.get("itemListElement")
        if inner:
            named = "HowToSection" in str(instructions.get("@type"))
            yield from _steps(inner, _clean(_first(instructions.get("name"))) if named else section, depth + 1)
        else:
            text = _clean(_first(instructions.get("text") or instructions.get("name")))
            yield from [_planned(read_step(text, section), instructions)] if text else []


def _planned(step: Step, node: Mapping[str, Any]) -> Step:
    """The step with its station and day, where they are given."""
    station, days = node.get(f"{OURS}station"), node.get(f"{OURS}daysBefore")
    return replace(
        step,
        station=station if isinstance(station, str) else "",
        days_before=days if isinstance(days, int) and 0 <= days <= 30 else 0,
    )


def _instructions(steps: tuple[Step, ...]) -> list[dict[str, Any]]:
    """HowToSteps, gathered in HowToSections where the steps have sections."""
    written: list[dict[str, Any]] = []
    for step in steps:
        ours = {f"{OURS}station": step.station, f"{OURS}daysBefore": step.days_before}
        one = {"@type": "HowToStep", "text": step.text, **{key: value for key, value in ours.items() if value}}
        if not step.section:
            written.append(one)
        elif written and written[-1].get("name") == step.section:
            written[-1]["itemListElement"].append(one)
        else:
            written.append({"@type": "HowToSection", "name": step.section, "itemListElement": [one]})
    return written


def _yield(value: Any) -> Yield | None:
    """A yield from a number, text, QuantitativeValue or a list of these; the first with a word beside its number."""
    texts = [_yield_text(one) for one in (value if isinstance(value, list) else [value])]
    found = [makes for makes in (read_yield(text) for text in texts if text) if makes is not None]
    return next((one for one in found if one.text.strip(" 0123456789")), found[0] if found else None)


def _yield_text(value: Any) -> str:
    if isinstance(value, dict):
        return f"{value.get('value', '')} {value.get('unitText', '')}".strip()
    return _clean(str(value)) if value is not None else ""


def _texts(value: Any) -> list[str]:
    if isinstance(value, str):
        return [value]
    if isinstance(value, dict):
        return [_first(value)]
    return [text for one in value or () for text in _texts(one)] if isinstance(value, list) else []


def _first(value: Any) -> str:
    """A text, the first of a list, or the text, name or @id of an object; "" for nothing."""
    if isinstance(value, list):
        return _first(value[0]) if value else ""
    if isinstance(value, dict):
        return _first(value.get("text") or value.get("name") or value.get("@id"))
    return "" if value is None else str(value)


def _clean(text: str) -> str:
    return " ".join(html.unescape(_TAGS.sub(" ", html.unescape(text))).split())
