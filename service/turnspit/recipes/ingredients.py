"""Reads one ingredient line: amount, item, preparation, brackets, alternatives, what it is for.

The order in which things are taken out of a line: bullets; "optional"; "to taste"; "plus more"; "for greasing";
the amount (at the head, or behind the item); brackets; preparation behind the first comma; alternatives; preparation
words before the food. A line that begins like an amount but is none, or has no words, is kept whole, `read` False.
"""

from __future__ import annotations

import html
import re
from dataclasses import dataclass, replace
from functools import cache, lru_cache

from turnspit.quantities import Amount, Region, food_named, is_food_name, is_package, plain, take_amount, unit
from turnspit.recipes.recipe import Ingredient
from turnspit.reference import table

_BULLET = re.compile(r"^\s*(?:[-*•·▢☐□◦‣–—+]+|\[[ xX]?\]|\d+\))\s*")
_LETTER = re.compile(r"[^\W\d_]")
_STARTS_LIKE_AMOUNT = re.compile(r"\d|[/.,]\d|x\s*\d", re.IGNORECASE)
LONGEST_LINE = 1000
"""A longer line is no ingredient: it is kept whole, unread."""
_ASIDE_WORDS = re.compile(
    r"option|opcional|\bif\b|taste|gusto|\bas\b|q\.?\s?s\b|\bplus\b|\bmore\b|\bmás\b|extra|additional|\bfor\b|\bto\b|\bpara\b",
    re.IGNORECASE,
)
"""Without one of these no aside can stand on the line: a quick look that saves the four searches below."""
_OPTIONAL = re.compile(
    r"[\s,;]*[(\[]?\s*\b(?:optional(?:ly)?|if (?:desired|using|you like|you have (?:it|them)|available|liked|wished)|"
    r"opcional(?:es)?)\b\s*[)\]]?\s*:?",
    re.IGNORECASE,
)
_TO_TASTE = re.compile(
    r"[\s,;]*[(\[]?\s*\b(?:or\s+)?(?:more\s+(?:or less\s+)?)?(?:(?:just\s+)?to (?:your )?taste|"
    r"according to taste|al gusto|as (?:needed|"
    r"required|desired|necessary)|q\.?\s?s\.?(?=\W|$))\s*[)\]]?",
    re.IGNORECASE,
)
_EXTRA = re.compile(
    r"[\s,;]*[(\[]?\s*\b(?:plus|and|with|y)\s+(?:(?:a little|some|a bit)\s+)?(?:more|extra|additional|más)\b\s*"
    r"(?P<what>[^)\]]*)[)\]]?|,\s*plus\s+(?P<amount>\d.*)$",
    re.IGNORECASE,
)
_PURPOSE = re.compile(
    r"[\s,;]*[(\[]?\s*\b(?P<what>(?:for|to|para)\s+(?:the\s+)?(?:[^\W\d_]+-)?(?:[^\W\d_]{2,}ing\b|(?:serve|garnish|"
    r"decorate|finish|coat|cover|fill|top|grease|dust|brush|glaze|pan|tin|dish|bowl|rack|table|cavity|skin|pot|servir|"
    r"adornar|decorar|engrasar)\b)[^)\]]*)[)\]]?$",
    re.IGNORECASE,
)
_FROM_FRUIT = re.compile(
    r"^(?:the\s+)?(?P<part>(?:(?:finely|freshly)\s+)?(?:(?:grated|squeezed|strained|pared)\s+)?(?:juice|zest|rind|peel|"
    r"zumo|jugo|ralladura)(?:\s*(?:and|&|y)\s*(?:the\s+)?(?:(?:finely\s+)?grated\s+)?(?:juice|zest|rind|peel))?)\s+"
    r"(?:(?:of|from|de)\s+|(?=\d))",
    re.IGNORECASE,
)
_ONE_UNSAID = re.compile(
    r"(?:(?:small|large|big|good|generous)\s+)?(?:(?:pinch|dash|handful|splash|drizzle|knob|squeeze|grind|smidgen|glug)"
    r"(?:ful|ing)?|(?:sprig|bunch|drop|slice|piece|strip|head|stick|packet|package|can|tin|jar)(?=\s+of\b))\b",
    re.IGNORECASE,
)
_BRACKETED = re.compile(r"\s*[(\[]([^()\[\]]*)[)\]]")
_COMMA = re.compile(
    r",(?!\d)|;|\s+[-—]+\s+|\s—|—\s|\s+(?=at room temp|(?:mixed|dissolved|blended|beaten|soaked|cut|sliced|chopped|"
    r"torn|broken|divided|melted|cooked|left)\s+(?:with|in|into|to|for|from|between|over)\b)",
    re.IGNORECASE,
)
_OR = re.compile(r"\s+(?:or|o)\s+(?!(?:more|less|so)\b)|(?<=[^\W\d_]{3})/(?=[^\W\d_]{3})", re.IGNORECASE)
_AND_OR = re.compile(r"\band\s*/\s*or\b", re.IGNORECASE)
_OF = re.compile(r"^(?:of|de)\s+(?:the\s+)?", re.IGNORECASE)
_EACH = re.compile(r"^(?:each|ea\.?)\s+(?:of\s+)?", re.IGNORECASE)
_OF_EACH = re.compile(r"\beach\b(?!\s*[)\]])", re.IGNORECASE)
_LISTED = re.compile(r"\s*(?:,\s*(?:and\s+)?|\s+(?:and|&|y)\s+)\s*")
_OF_WEIGHT = re.compile(r"(?:,|\s+of|\s+de|\s+weighing)\s+(?=(?:about|approx\.?|unos)?\s*\d)", re.IGNORECASE)
_EACH_INSIDE = re.compile(r"\b(?:each|apiece|cada un[oa]|c/u)\b", re.IGNORECASE)
_TRAILING_AMOUNT = re.compile(r"(?:\s*[,:=]|\s+-+|\s*\.{2,}|\s*…|\s)\s*(?=[~\d])")


def read_ingredients(line: str, region: Region | None = None, section: str = "") -> tuple[Ingredient, ...]:
    """The ingredients on a line: one, or several where an amount is given for "each" ("1 tsp each salt and sage")."""
    found = read_ingredient(line, region, section)
    said_each = found.read and _OF_EACH.search(line)
    taken = take_amount(plain(html.unescape(_BULLET.sub("", line)))) if said_each else None
    each = _EACH.match(taken[1]) if taken is not None else None
    if taken is None or each is None or found.amount is None:
        return (found,)
    foods = [food.strip() for food in _LISTED.split(taken[1][each.end() :])]
    if len(foods) < 2 or not all(food_named(food) for food in foods):
        return (found,)
    return tuple(replace(found, item=food, preparation="") for food in foods)


def read_ingredient(line: str, region: Region | None = None, section: str = "") -> Ingredient:
    """The ingredient on the line, by the measures of `region`. Never raises: the unreadable is kept and marked."""
    text = " ".join(line.split())
    said = _BULLET.sub("", text)
    rest = plain(html.unescape(said))
    unread = Ingredient(text, said or text, section=section, read=False)
    if not _LETTER.search(rest) or len(rest) > LONGEST_LINE:
        return unread
    rest, asides = _asides(rest)
    amount, rest, part = _part_of_fruit(rest, region) or (*_amount(rest, region), "")
    if amount is None and _STARTS_LIKE_AMOUNT.match(rest):
        return unread
    rest, notes, amount = _brackets(rest, amount)
    rest, amount = _weight_behind(rest, amount)
    found = _item(rest, amount, text, section)
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


@dataclass(frozen=True, slots=True)
class _Said:
    """What a line says beside its amount and item."""

    optional: bool
    to_taste: bool
    purpose: str
    extra: str


_NOTHING_SAID = _Said(optional=False, to_taste=False, purpose="", extra="")


def _asides(rest: str) -> tuple[str, _Said]:
    if not _ASIDE_WORDS.search(rest):
        return rest.strip(" ,;"), _NOTHING_SAID
    rest, optional = _without(_OPTIONAL, rest)
    extra = _EXTRA.search(rest)
    shorter = rest[: extra.start()] + rest[extra.end() :] if extra else rest
    named = take_amount(shorter) if extra else None
    if named is not None and not named[1]:
        extra = None  # "1 cup plus more flour": the food stands behind it
    else:
        rest = shorter
    rest, to_taste = _without(_TO_TASTE, rest)
    purpose = _PURPOSE.search(rest)
    if purpose and purpose.start():
        rest = rest[: purpose.start()]
    said = _Said(
        optional,
        to_taste,
        purpose["what"].strip(" .,") if purpose and purpose.start() else "",
        (extra["amount"] or extra["what"].strip(" .,") or "more") if extra else "",
    )
    return rest.strip(" ,;"), said


def _without(pattern: re.Pattern[str], rest: str) -> tuple[str, bool]:
    shorter = pattern.sub("", rest, count=1)
    return (shorter.strip(" ,;"), True) if shorter != rest and _LETTER.search(shorter) else (rest, False)


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
        if lower.startswith(f"{nothing} "):
            return None, rest[len(nothing) :].strip()
    taken = take_amount(f"1 {rest}" if _ONE_UNSAID.match(rest) else rest, region)
    if taken is not None:
        return _counted_food(rest, taken)
    for joint in _TRAILING_AMOUNT.finditer(rest):
        behind = take_amount(rest[joint.end() :], region)
        if behind is not None and joint.start() and (not behind[1] or behind[1][0] in ",;("):
            return behind[0], f"{rest[: joint.start()].rstrip(' ,:-.…')}{_led(behind[1])}"
    food, comma, words = rest.partition(", ")
    in_words = take_amount(words, region) if comma else None
    return (in_words[0], food) if in_words is not None and in_words[0].unit and not in_words[1] else (None, rest)


def _led(tail: str) -> str:
    return f" {tail}" if tail.startswith("(") else tail


def _counted_food(rest: str, taken: tuple[Amount, str]) -> tuple[Amount | None, str]:
    """ "6 cloves": where nothing follows a piece, the piece itself is the food."""
    amount, behind = taken
    counted = amount.unit and unit(amount.unit).dimension == "count" and amount.each is None
    if counted and (not behind or behind[0] in ",(;"):
        word = rest[: len(rest) - len(behind)].rsplit(maxsplit=1)[-1].strip(",;.")
        return replace(amount, unit=""), f"{word}{_led(behind)}"
    return amount, behind


def _weight_behind(rest: str, amount: Amount | None) -> tuple[str, Amount | None]:
    """ "1 goose, about 5 kg", "a turkey of 6 kg": the weight of what is counted."""
    if amount is None or amount.unit or amount.equals is not None:
        return rest, amount
    for joint in _OF_WEIGHT.finditer(rest):
        other = take_amount(rest[joint.end() :])
        if other is None or not _is_measure(other[0], "mass"):
            continue
        behind = _EACH_INSIDE.sub("", other[1]).strip()
        if not behind or behind[0] == ",":
            weight, shorter = _in_region(other[0], amount), f"{rest[: joint.start()]}{behind}"
            said_each = behind != other[1]
            return shorter, replace(amount, each=weight) if said_each else replace(amount, equals=weight)
    return rest, amount


def _brackets(rest: str, amount: Amount | None) -> tuple[str, tuple[str, ...], Amount | None]:
    """Remarks in brackets; a weight or a volume is what each tin holds, or the equivalent of what is counted."""
    notes: list[str] = []
    for inside in (text.strip() for text in _BRACKETED.findall(rest)):
        each = _EACH_INSIDE.search(inside)
        other = take_amount(_EACH_INSIDE.sub("", inside).strip()) if amount is not None else None
        if amount is None or other is None or other[1].strip(" .") or not _is_measure(other[0], "mass", "volume"):
            notes += [inside] if inside else []
        elif (each or (amount.unit and is_package(amount.unit))) and amount.each is None:
            amount = replace(amount, each=_in_region(other[0], amount))
        elif amount.equals is None:
            amount = replace(amount, equals=_in_region(other[0], amount))
        else:
            notes.append(inside)
    return _BRACKETED.sub("", rest).strip(), tuple(notes), amount


def _is_measure(amount: Amount, *dimensions: str) -> bool:
    return bool(amount.unit) and unit(amount.unit).dimension in dimensions


def _in_region(other: Amount, amount: Amount) -> Amount:
    return replace(other, region=amount.region)


def _item(rest: str, amount: Amount | None, text: str, section: str) -> Ingredient:
    """Item, preparation and alternatives from the words that are left."""
    rest = _EACH.sub("", _OF.sub("", rest))
    head, preparation = _split_preparation(rest)
    said_or = re.match(r"or\s+", preparation, re.IGNORECASE)
    if said_or:
        other, _, preparation = preparation[said_or.end() :].partition(",")
        head, preparation = f"{head} or {other.strip()}", preparation.strip()
    main, others = _alternatives(head)
    canned = amount is not None and amount.unit in ("can", "tin", "jar")
    before, item = ("", main) if canned else _leading_preparation(main)
    found = Ingredient(
        text,
        item.strip(" .,;:"),
        amount,
        ", ".join(filter(None, (before, preparation.strip(" .,;:")))),
        section=section,
    )
    alternatives = tuple(_alternative(other, found) for other in others)
    return replace(found, alternatives=alternatives)


def _split_preparation(rest: str) -> tuple[str, str]:
    """The food and what stands behind its comma; a comma between descriptions does not part them."""
    for comma in _COMMA.finditer(rest):
        head = rest[: comma.start()].strip()
        described = [word for word in head.casefold().split() if word not in ingredient_words("description")]
        if head and described and not all(word in _preparing() for word in described):
            return head, rest[comma.end() :].strip()
    return _split_behind_food(rest)


def _split_behind_food(rest: str) -> tuple[str, str]:
    """ "3 carrots peeled and diced": preparation behind a known food without a comma."""
    words = rest.split()
    for at in range(1, len(words)):
        if words[at].casefold() in _preparing() and words[at].casefold() != "and":
            head, tail = " ".join(words[:at]), " ".join(words[at:])
            if food_named(head) is not None and food_named(tail) is None:
                return head, tail
    return rest, ""


def _alternatives(head: str) -> tuple[str, tuple[str, ...]]:
    """ "butter or margarine" apart; "chicken or vegetable stock" shares its last word, where that makes a food."""
    if _AND_OR.search(head):
        return head, ()
    first, *others = _OR.split(head)
    if not others or not first.strip():
        return head, ()
    last = others[-1].split()[-1] if others[-1].split() else ""
    shared = f"{first} {last}"
    describes = is_food_name(shared) or first.casefold() in ingredient_words("description")
    if len(others[-1].split()) > 1 and not is_food_name(first) and describes:
        return shared, tuple(others)
    return first.strip(), tuple(others)


def _alternative(text: str, main: Ingredient) -> Ingredient:
    taken = take_amount(text.strip(), main.amount.region if main.amount else None)
    amount, rest = taken if taken is not None and taken[1] else (main.amount, text.strip())
    before, item = _leading_preparation(rest)
    return Ingredient(text.strip(), item.strip(" .,;:"), amount, before, section=main.section)


def _leading_preparation(text: str) -> tuple[str, str]:
    """Parts "finely chopped onion" into preparation and food, unless that would name another food (mashed potato)."""
    words = text.split()
    end = done = 0
    while end < len(words) - 1:
        word = words[end].casefold().strip(",")
        after_manner = end > 0 and words[end - 1].casefold() in ingredient_words("manner")
        if word in ingredient_words("preparation") or (
            after_manner and word in ingredient_words("prepared_after_manner")
        ):
            end += 1
            done = end
        elif word in ingredient_words("manner") or (done == end and done and word in ("and", "or", "&", "y", "then")):
            end += 1
        else:
            break
    before, item = " ".join(words[:done]).strip(","), " ".join(words[done:])
    if not done or food_named(item) != food_named(text):
        return "", text
    if any(text.casefold().startswith(name) for name in ingredient_words("named_with_preparation")):
        return "", text
    return before, item


def ingredient_words(kind: str) -> frozenset[str]:
    """The words of one kind of the table `ingredient_words`."""
    return _by_kind()[kind]


def _preparing() -> frozenset[str]:
    return ingredient_words("preparation") | ingredient_words("manner") | {"and"}


@cache
def _by_kind() -> dict[str, frozenset[str]]:
    return {row["kind"]: frozenset(row["words"]) for row in table("ingredient_words")}
