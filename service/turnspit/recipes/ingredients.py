"""Reads one ingredient line: amount, item, preparation, brackets, alternatives, what it is for.

The order in which things are taken out of a line: bullets; "optional"; "to taste"; "plus more"; "for greasing";
the amount (at the head, or behind the item); brackets; preparation behind the first comma; alternatives; preparation
words before the food. A line that begins like an amount but is none, or has no words, is kept whole, `read` False.
"""

from __future__ import annotations

import html
import re
from dataclasses import replace
from functools import lru_cache

from turnspit.quantities import Amount, Region, food_named, is_package, plain, take_amount, unit
from turnspit.recipes.asides import take_asides
from turnspit.recipes.items import ingredient_words, read_item, with_alternatives
from turnspit.recipes.recipe import Ingredient

_BULLET = re.compile(r"^\s*(?:[-*•·▢☐□◦‣–—+]+|\[[ xX]?\]|\d+\))\s*")
_LETTER = re.compile(r"[^\W\d_]")
_STARTS_LIKE_AMOUNT = re.compile(r"\d|[/.,]\d|x\s*\d", re.IGNORECASE)
LONGEST_LINE = 1000
"""A longer line is no ingredient: it is kept whole, unread."""
_FROM_FRUIT = re.compile(
    r"^(?:the\s+|el\s+|las?\s+)?(?P<part>(?:(?:finely|freshly)\s+)?(?:(?:grated|squeezed|strained|pared)\s+)?"
    r"(?:juice|zest|rind|peel|yolks?|whites?|zumo|jugo|ralladura|cáscara|piel|yemas?|claras?)(?:\s*(?:and|&|y)\s*(?:the\s+)?(?:(?:finely\s+)?grated\s+)?(?:juice|zest|rind|peel))?)\s+"
    r"(?:(?:of|from|de)\s+|(?=\d))",
    re.IGNORECASE,
)
_ONE_UNSAID = re.compile(
    r"""(?P<described>(?:small|large|big|good|generous|[a-z]+-sized)\s+)?
    (?:few\ grains
      | (?:pinch|dash|handful|splash|drizzle|knob|squeeze|grind|smidgen|glug)(?:ful|ing)?
      | (?:sprig|bunch|drop|slice|piece|strip|head|stick|packet|pack|package|can|tin|jar|bag|box
        |bottle|tub|bulb|loaf)(?(described)|(?=\s+of\b))
    )\b""",
    re.IGNORECASE | re.VERBOSE,
)
_BRACKETED = re.compile(r"\s*[(\[]([^()\[\]]*)[)\]]")
_EACH = re.compile(r"^(?:each|ea\.?)\s*:?\s+(?:of\s+)?", re.IGNORECASE)
_ANOTHER_AMOUNT = re.compile(r"(?:,|\s+(?:&|\+|and))\s+(?=[\d½¼¾⅓⅔])", re.IGNORECASE)
_OR_IN_BRACKETS = re.compile(r"\s*[(\[](or\s+(?!to\b|more\b|less\b)[^()\[\]\d][^()\[\]]*)[)\]]", re.IGNORECASE)
_CHOICE_IN_BRACKETS = re.compile(r"\s*[(\[]or\s+(\d[^()\[\]]*)[)\]]", re.IGNORECASE)
_ONE_OR_TWO = re.compile(r"^(?:an?|one)\s+([^\W\d_]+)\s+or\s+two\b", re.IGNORECASE)
_APIECE = re.compile(r"^(?:each|ea)\b\.?\s*", re.IGNORECASE)
_ONE_OF_SIZE = re.compile(r"^1- (?=\d)")
_FOOD_BEHIND = re.compile(r"\([^()]*\)\s*[^\W\d_]")
_RAMAS = {"canela": "stick", "apio": "stalk"}
_OF_EACH = re.compile(r"\beach\b(?!\s*[)\]])", re.IGNORECASE)
_LISTED = re.compile(r"\s*(?:,\s*(?:and\s+)?|\s+(?:and|&|y)\s+)\s*")
_OF_WEIGHT = re.compile(r"(?:,?\s+weighing|,|\s+of|\s+de)\s+(?:like\s+)?|\s*(?P<each>@)\s*", re.IGNORECASE)
_EACH_INSIDE = re.compile(r"\b(?:each|apiece|cada un[oa]|c/u)\b", re.IGNORECASE)
_TRAILING_AMOUNT = re.compile(
    r"(?:\s*[,:=]|\s+[-—]+|\s+x|\s*\.{2,}|\s*…|\s)\s*(?=[~\d]|(?:about|approx\.?|unos|unas)\s+\d)"
)
_SIZE_OF = re.compile(r"\s(?:about\s+)?(the\s+size\s+of\s+(?:an?\s+)?[^\W\d_]+(?:'s\s+egg)?)", re.IGNORECASE)
_NO_WORDS = re.compile(r"(?<=[^\W\d_)])[*†‡]+|(?<=[^\W\d_])\(e?s\)|</?[a-z][^<>]*>", re.IGNORECASE)


def read_ingredients(line: str, region: Region | None = None, section: str = "") -> tuple[Ingredient, ...]:
    """The ingredients on a line: mostly one; several for "1 tsp each salt and sage", "1 onion & 2 carrots"."""
    found = read_ingredient(line, region, section)
    parts = [part.strip() for part in _ANOTHER_AMOUNT.split(line) if part.strip()]
    if len(parts) > 1 and found.read:
        several = tuple(read_ingredient(part, region, section) for part in parts)
        if all(one.amount is not None and food_named(one.item) for one in several):
            return several
    said_each = found.read and _OF_EACH.search(line)
    taken = take_amount(plain(html.unescape(_BULLET.sub("", line)))) if said_each else None
    each = _EACH.match(taken[1]) if taken is not None else None
    if taken is None or each is None or found.amount is None:
        return (found,)
    foods = [food.strip(" :") for food in _LISTED.split(taken[1][each.end() :])]
    if len(foods) < 2 or not all(food_named(food) for food in foods):
        return (found,)
    return tuple(replace(found, item=food, preparation="") for food in foods)


def read_ingredient(line: str, region: Region | None = None, section: str = "") -> Ingredient:
    """The ingredient on the line, by the measures of `region`. Never raises: the unreadable is kept and marked."""
    text = " ".join(line.split())
    said = _BULLET.sub("", text)
    rest = _SIZE_OF.sub(r" (\1)", plain(_NO_WORDS.sub("", html.unescape(said))))
    unread = Ingredient(text, said or text, section=section, read=False)
    if not _LETTER.search(rest) or len(rest) > LONGEST_LINE:
        return unread
    rest, others = _choices_in_brackets(rest)
    rest, asides = take_asides(_OR_IN_BRACKETS.sub(r" \1", rest))
    amount, rest, part = _part_of_fruit(rest, region) or (*_amount(rest, region), "")
    if amount is None and _STARTS_LIKE_AMOUNT.match(rest):
        return unread
    rest, notes, amount = _brackets(rest, amount, region)
    rest, amount = _weight_behind(rest, amount)
    found = with_alternatives(read_item(rest, _rama(amount, rest), text, section), others)
    if not found.item or not _LETTER.search(found.item):
        return unread
    return replace(
        found,
        preparation=", ".join(filter(None, (part, found.preparation))),
        notes=notes,
        optional=asides.optional,
        to_taste=asides.to_taste,
        purpose=asides.purpose,
        extra=asides.extra,
    )


def _rama(amount: Amount | None, rest: str) -> Amount | None:
    """In Spanish one word for three things: a sprig of thyme, a stick of cinnamon, a stalk of celery."""
    piece = _RAMAS.get(rest.casefold().partition(" ")[0].strip(",")) if amount is not None else None
    return replace(amount, unit=piece) if amount is not None and piece and amount.unit == "sprig" else amount


def _choices_in_brackets(rest: str) -> tuple[str, list[str]]:
    """The line without "(or 1 tsp dried thyme)", and each such choice; "(or 2 cups)" names no food and stays."""
    choices = [match for match in _CHOICE_IN_BRACKETS.finditer(rest) if (take_amount(match[1]) or ("", ""))[1]]
    for match in reversed(choices):
        rest = rest[: match.start()] + rest[match.end() :]
    return rest, [match[1] for match in choices]


def _part_of_fruit(rest: str, region: Region | None) -> tuple[Amount, str, str] | None:
    """ "grated zest of 1 lemon": one lemon, of which the grated zest is used."""
    match = _FROM_FRUIT.match(rest)
    taken = take_amount(rest[match.end() :], region) if match else None
    return (*taken, match["part"].casefold()) if match is not None and taken is not None else None


@lru_cache(maxsize=4096)
def names_part_of_fruit(preparation: str) -> bool:
    """Whether the words are a part of a fruit ("juice", "finely grated zest"), as in "juice of 2 lemons"."""
    match = _FROM_FRUIT.match(f"{preparation} of ")
    return match is not None and match["part"] == preparation


def _amount(rest: str, region: Region | None) -> tuple[Amount | None, str]:
    """The amount at the head, or behind the item ("Butter, 2 oz"); the words that are left."""
    lower = rest.casefold()
    for nothing in ingredient_words("nothing"):
        if lower.startswith(f"{nothing} ") and not lower[len(nothing) + 1].isdigit():
            some = take_amount(f"3 {rest[len(nothing) :]}", region) if nothing in ("unos", "unas") else None
            if some is not None and some[0].unit:  # "unas gotas": a few drops
                return replace(some[0], approximate=True), some[1]
            return None, rest[len(nothing) :].strip()
    rest = _ONE_OF_SIZE.sub("1 ", _ONE_OR_TWO.sub(r"1-2 \1", rest))
    taken = take_amount(f"1 {rest}" if _ONE_UNSAID.match(rest) else rest, region)
    if taken is not None:
        return _counted_food(rest, taken)
    for joint in _TRAILING_AMOUNT.finditer(rest):
        behind = take_amount(rest[joint.end() :], region)
        tail = _APIECE.sub("", behind[1]) if behind is not None else ""
        if (
            behind is not None
            and joint.start()
            and not _is_measure(behind[0], "length")
            and (not tail or tail[0] in ",;(")
        ):
            return behind[0], f"{rest[: joint.start()].rstrip(' ,:-—.…')}{_led(tail)}"
    food, comma, words = rest.partition(", ")
    in_words = take_amount(words, region) if comma else None
    return (in_words[0], food) if in_words is not None and in_words[0].unit and not in_words[1] else (None, rest)


def _led(tail: str) -> str:
    return f" {tail}" if tail.startswith("(") else tail


def _counted_food(rest: str, taken: tuple[Amount, str]) -> tuple[Amount | None, str]:
    """ "6 cloves": where nothing follows a piece, the piece itself is the food."""
    amount, behind = taken
    counted = amount.unit and unit(amount.unit).dimension == "count" and amount.each is None
    if counted and (not behind or behind[0] in ",;" or (behind[0] == "(" and not _FOOD_BEHIND.match(behind))):
        word = rest[: len(rest) - len(behind)].rsplit(maxsplit=1)[-1].strip(",;.")
        return replace(amount, unit=""), f"{word}{_led(behind)}"
    return amount, behind


def _weight_behind(rest: str, amount: Amount | None) -> tuple[str, Amount | None]:
    """ "1 goose, about 5 kg", "a turkey of 6 kg": the weight of what is counted."""
    if amount is None or amount.equals is not None or (amount.unit and unit(amount.unit).dimension != "count"):
        return rest, amount
    for joint in _OF_WEIGHT.finditer(rest):
        other = take_amount(rest[joint.end() :], amount.region)
        if other is None or not _is_measure(other[0], "mass", "length" if amount.unit else "mass"):
            continue
        behind = _EACH_INSIDE.sub("", other[1]).strip()
        if not behind or behind[0] == ",":
            weight, shorter = other[0], f"{rest[: joint.start()]}{behind}"
            said_each = behind != other[1] or joint["each"] or _holds(amount, weight)
            return shorter, replace(amount, each=weight) if said_each else replace(amount, equals=weight)
    return rest, amount


def _holds(amount: Amount, other: Amount) -> bool:
    """Whether the other is what each piece holds or measures, not the same amount in another unit."""
    return bool(amount.unit) and (is_package(amount.unit) or _is_measure(other, "length"))


def _brackets(rest: str, amount: Amount | None, region: Region | None) -> tuple[str, tuple[str, ...], Amount | None]:
    """Remarks in brackets; a weight or a volume is what each tin holds, or the equivalent of what is counted."""
    notes: list[str] = []
    for inside in (text.strip() for text in _BRACKETED.findall(rest)):
        each = _EACH_INSIDE.search(inside)
        other = take_amount(_EACH_INSIDE.sub("", inside).strip(), region)
        if other is None or other[1].strip(" .") or not _is_measure(other[0], "mass", "volume"):
            notes += [inside] if inside else []
        elif amount is None:
            amount = other[0]
        elif (each or (amount.unit and is_package(amount.unit))) and amount.each is None:
            amount = replace(amount, each=other[0])
        elif amount.equals is None:
            amount = replace(amount, equals=other[0])
        else:
            notes.append(inside)
    return _BRACKETED.sub("", rest).strip(), tuple(notes), amount


def _is_measure(amount: Amount, *dimensions: str) -> bool:
    return bool(amount.unit) and unit(amount.unit).dimension in dimensions
