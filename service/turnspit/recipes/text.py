"""Recipes as plain text: read from what was pasted, written as clean text.

Read line by line: a heading changes the part ("Ingredients", "Method") or the section ("For the brine:"); yield and
times are taken where they stand. Without headings a line that begins with an amount is an ingredient, a sentence
a step.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field, replace

from turnspit.errors import Impossible
from turnspit.message import Message
from turnspit.quantities import Region, System, plain, take_amount, varies_by_region
from turnspit.recipes.headings import (
    Part,
    TimeKind,
    read_heading_yield,
    read_part,
    read_section,
    read_time_line,
    read_yield_line,
)
from turnspit.recipes.ingredients import read_ingredients
from turnspit.recipes.items import ingredient_words
from turnspit.recipes.recipe import Ingredient, Recipe, Step, Yield
from turnspit.recipes.regions import RegionFound, infer_region
from turnspit.recipes.spanish import in_language
from turnspit.recipes.steps import read_step
from turnspit.recipes.writing import write_ingredient, write_yield

LONGEST_TEXT = 200_000
"""Characters that are read of one recipe; more is refused."""

_MARKUP = re.compile(r"^#+\s*|\*\*|__|^[=\-_*]{3,}\s*$")
_COLUMNS = re.compile(r"\s+[|•·]\s+")
_STEP_NUMBER = re.compile(r"^\s*(?:step\s*)?\d{1,2}\s*[.):]\s*(?=\D)|^\s*step\s*\d{1,2}\b[.:]?\s*", re.IGNORECASE)
_BULLET = re.compile(r"^[-*•▢☐□]\s+")
_SENTENCE = re.compile(r"[.!?](?:\s|$)")


def read_text(text: str, region: Region | None = None) -> Recipe:
    """The recipe in pasted plain text. `region` states whose measures it uses; unstated, they are inferred and said.

    Raises Impossible for an empty or endless text, and for a yield of nothing.
    """
    check_length(text)
    found = RegionFound(region) if region else infer_region(text)
    lines = [_MARKUP.sub("", " ".join(line.split())).strip() for line in text.splitlines()]
    sheet = _Sheet(found.region, headed=any(read_part(line) == "ingredients" for line in lines))
    for line in filter(None, lines):
        sheet.take(line)
    return with_notes(sheet.recipe(), found, stated=region is not None)


def check_length(text: str) -> None:
    """Raises Impossible for a text that is empty or too long to be one recipe."""
    if not text.strip():
        raise Impossible("recipe", "(empty)", "has no text", "paste the name, the ingredients and the method")
    if len(text) > LONGEST_TEXT:
        raise Impossible(
            "recipe", f"{len(text)} characters", f"is longer than {LONGEST_TEXT}", "paste one recipe alone"
        )


def with_notes(recipe: Recipe, found: RegionFound, *, stated: bool) -> Recipe:
    """The recipe with its region and what is to be said: how it was inferred, unread lines, a missing yield."""
    notes: list[Message] = []
    units = (one.amount.unit for one in recipe.ingredients if one.amount is not None)
    if not stated and any(varies_by_region(unit) for unit in units):
        notes.append(found.note())
    if recipe.unread:
        notes.append(Message("recipes-unread", count=len(recipe.unread), first=recipe.unread[0].text))
    if recipe.makes is None:
        notes.append(Message("recipes-no-yield"))
    return replace(recipe, region=found.region, region_signs=found.signs, notes=tuple(notes))


def write_text(recipe: Recipe, system: System | None = None, language: str = "en") -> str:
    """The recipe as clean text that `read_text` reads back; headings and units in that language."""
    headings = {"en": ("Ingredients", "Method", "Notes"), "es": ("Ingredientes", "Preparación", "Notas")}[language]
    lines = [in_language(recipe.name, language), ""]
    if recipe.makes is not None:
        lines += [write_yield(recipe.makes, language)]
    lines += [text for text in (_time_line(recipe, language),) if text]
    lines += [in_language(recipe.description, language)] if recipe.description else []
    lines += ["", headings[0]]
    section = ""
    for one in recipe.ingredients:
        lines += [f"{one.section}:"] if one.section != section and one.section else []
        section = one.section
        lines.append(f"- {write_ingredient(one, system, language)}")
    lines += ["", headings[1]]
    section = ""
    for number, step in enumerate(recipe.steps, 1):
        lines += [f"{step.section}:"] if step.section != section and step.section else []
        section = step.section
        lines.append(f"{number}. {in_language(step.text, language)}")
    lines += ["", headings[2], *recipe.remarks] if recipe.remarks else []
    return "\n".join(lines) + "\n"


def _time_line(recipe: Recipe, language: str) -> str:
    names = {"en": ("Prep", "Cook", "Total"), "es": ("Preparación", "Cocción", "Tiempo total")}[language]
    times = zip(names, (recipe.prep_min, recipe.cook_min, recipe.total_min), strict=True)
    return " | ".join(f"{name}: {minutes:g} min" for name, minutes in times if minutes)


def is_step(line: str) -> bool:
    """Whether a line is a step without any heading to say so: it is numbered, or an order and no food."""
    if _STEP_NUMBER.match(line):
        return True
    first, _, rest = line.casefold().partition(" ")
    ends = line.rstrip().endswith((".", "!"))
    orders = ingredient_words("order")
    if first.strip(",.") in orders:
        return bool(rest) or ends
    return ends and first.strip(",.") in ingredient_words("order_or_food") and len(rest.split()) > 1


@dataclass
class _Sheet:
    """A recipe in the reading: the part and section that the next line belongs to, and what was read so far."""

    region: Region | None
    headed: bool
    part: Part = "head"
    section: str = ""
    numbered: bool = False
    awaited: bool = False
    name: str = ""
    makes: Yield | None = None
    times: dict[TimeKind, float] = field(default_factory=dict)
    description: list[str] = field(default_factory=list)
    ingredients: list[Ingredient] = field(default_factory=list)
    steps: list[Step] = field(default_factory=list)
    remarks: list[str] = field(default_factory=list)

    def take(self, line: str) -> None:
        """Put one line where it belongs."""
        part = read_part(line)
        if part is not None:
            self.part, self.section = part, ""
            self.makes = self.makes or read_heading_yield(line)
        elif not self._is_yield_or_time(line):
            {
                "head": self._head,
                "ingredients": self._ingredient,
                "steps": self._step,
                "remarks": self.remarks.append,
            }[self.part](line)

    def recipe(self) -> Recipe:
        """What was read."""
        return Recipe(
            name=self.name or "Recipe",
            makes=self.makes,
            ingredients=tuple(self.ingredients),
            steps=tuple(self.steps),
            prep_min=self.times.get("prep"),
            cook_min=self.times.get("cook"),
            total_min=self.times.get("total"),
            description="\n".join(self.description),
            remarks=tuple(self.remarks),
        )

    def _is_yield_or_time(self, line: str) -> bool:
        if self.part == "remarks" or (not self.name and self.part == "head"):
            return False
        if self.part == "steps":  # "Roast 50 minutes" is a step there, "Serves 6" is not
            found = read_yield_line(line) if self.makes is None and not _STEP_NUMBER.match(line) else None
            self.makes = self.makes or found
            return found is not None
        columns = _COLUMNS.split(line)
        read = [(read_yield_line(one) if self.makes is None else None, read_time_line(one)) for one in columns]
        if not all(makes or time for makes, time in read):
            return False
        for makes, time in read:
            self.makes = makes or self.makes
            if time:
                self.times.setdefault(*time)
        return True

    def _head(self, line: str) -> None:
        begins = take_amount(plain(line)) is not None and not _STEP_NUMBER.match(line)
        if not self.name and not (begins and not self.headed):
            self.name = line
        elif self.headed:
            self.description.append(line)
        else:
            self._without_headings(line, begins)

    def _without_headings(self, line: str, begins_with_amount: bool) -> None:
        sentence = is_step(line) or (len(line) > 40 and bool(_SENTENCE.search(line)))
        if begins_with_amount and not sentence:
            self._ingredient(line)
        elif sentence and self.ingredients:
            self._step(line)
        elif self.ingredients and not self.steps:
            self._ingredient(line)
        elif self.steps:
            self._step(line)
        else:
            self.description.append(line)

    def _ingredient(self, line: str) -> None:
        section = read_section(line)
        if section is not None:
            self.section = section
        elif self.ingredients and self.part == "ingredients" and is_step(line) and not _BULLET.match(line):
            self.part, self.section = "steps", ""  # the heading of the method is missing
            self._step(line)
        else:
            self.ingredients += read_ingredients(line, self.region, self.section)

    def _step(self, line: str) -> None:
        number = _STEP_NUMBER.match(line)
        section = None if number or self.part == "head" else read_section(line)
        if section is not None:
            self.section = section
            return
        text = _BULLET.sub("", line[number.end() :] if number else line)
        if self.numbered and not number and not self.awaited and self.steps:
            self.steps[-1] = read_step(f"{self.steps[-1].text} {text}", self.section)
        elif text:
            self.steps.append(read_step(text, self.section))
        self.numbered = self.numbered or bool(number)
        self.awaited = not text
