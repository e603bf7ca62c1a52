"""The food of a line, what is done to it first, and what may stand in its place."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace
from functools import cache

from turnspit.quantities import Amount, food_named, is_food_name, take_amount
from turnspit.recipes.recipe import Ingredient
from turnspit.reference import table

_COMMA = re.compile(
    r",(?!\d)|;|\s+[-—]+\s+|\s—|—\s|\s+(?=at room temp|(?:mixed|dissolved|blended|beaten|soaked|cut|sliced|chopped|"
    r"torn|broken|divided|melted|cooked|left)\s+(?:with|in|into|to|for|from|between|over)\b|"
    r"a temperatura ambiente|(?:(?:cortad|partid)[oa]s? )?en (?:rodajas|cubos|trozos|dados|cuartos|tiras|"
    r"láminas|mitades|juliana)\b)",
    re.IGNORECASE,
)
_OR = re.compile(r"\s+(?:or|o)\s+(?!(?:more|less|so)\b)|(?<=[^\W\d_]{3})/(?=[^\W\d_]{3})", re.IGNORECASE)
_AND_OR = re.compile(r"\band\s*/\s*or\b", re.IGNORECASE)
_SIZE_BEHIND = re.compile(r"\s(grandes?|median[oa]s?|pequeñ[oa]s?|chic[oa]s?)(?=$|[\s,])", re.IGNORECASE)
_OF = re.compile(r"^(?:of|de)\s+(?:the\s+)?", re.IGNORECASE)
_LISTED = re.compile(r"\s*(?:,\s*(?:and\s+)?|\s+(?:and|&|y)\s+)\s*")
_EACH = re.compile(r"^(?:each|ea\.?)\s+(?:of\s+)?", re.IGNORECASE)


def read_item(rest: str, amount: Amount | None, text: str, section: str) -> Ingredient:
    """Item, preparation and alternatives from the words that are left."""
    described = _OF.sub("", rest.lstrip(" ,;|"))
    rest, amount = _size_behind(_EACH.sub("", described), amount)
    listed = (amount is None or rest != described) and _all_foods(rest)
    head, preparation = (rest, "") if listed else _split_preparation(rest)
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
    return with_alternatives(found, others)


def with_alternatives(found: Ingredient, others: Iterable[str]) -> Ingredient:
    """The ingredient with what may stand in its place, each read by its words ("dried", "1 tsp dried thyme")."""
    more = tuple(_alternative(other, found) for other in others)
    return replace(found, alternatives=found.alternatives + more) if more else found


def _size_behind(rest: str, amount: Amount | None) -> tuple[str, Amount | None]:
    """In Spanish the size of what is counted stands behind it: "2 zanahorias medianas"."""
    match = _SIZE_BEHIND.search(rest) if amount is not None and not amount.size else None
    if match is None or amount is None:
        return rest, amount
    return f"{rest[: match.start()]}{rest[match.end() :]}", replace(amount, size=match[1].casefold())


def _all_foods(text: str) -> bool:
    """ "salt, pepper and nutmeg": nothing but foods, none of them a preparation of the first."""
    foods = _LISTED.split(text)
    return len(foods) > 1 and "," in text and all(map(_is_food, foods))


def _is_food(text: str) -> bool:
    return food_named(text) is not None or text.casefold().rpartition(" ")[2] in ingredient_words("seasoning")


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
        if words[at].casefold() in ingredient_words("preparation_behind") and not _named_so(words[: at + 1]):
            return " ".join(words[:at]), " ".join(words[at:])
    return rest, ""


def _alternatives(head: str) -> tuple[str, tuple[str, ...]]:
    """ "butter or margarine" apart; "chicken or vegetable stock" shares its last word, where that makes a food."""
    if _AND_OR.search(head):
        return head, ()
    first, *others = _OR.split(head)
    if not others or not first.strip():
        return head, ()
    shared = _shared(first, others[-1]) if not is_food_name(first) else ""
    return shared or first.strip(), tuple(others)


def _shared(first: str, other: str) -> str:
    """What "vegetable" means before "or chicken stock cubes": with as many last words as make a food; or ""."""
    words = other.split()
    if len(words) < 2:
        return ""
    if first.casefold() in ingredient_words("description") and _undescribed(other) != other:
        return f"{first} {_undescribed(other)}"
    if len(words) > 2 and is_food_name(f"{first} {words[-2]}"):
        return " ".join((first, *words[-2:]))
    last = f"{first} {words[-1]}"
    return last if is_food_name(last) or first.casefold() in ingredient_words("description") else ""


def _alternative(text: str, main: Ingredient) -> Ingredient:
    taken = take_amount(text.strip(), main.amount.region if main.amount else None)
    amount, rest = taken if taken is not None and taken[1] else (main.amount, text.strip())
    before, item = _leading_preparation(rest)
    if all(word in ingredient_words("description") for word in item.casefold().split()):  # "or frozen"
        item = f"{item} {_undescribed(main.item)}"
    return Ingredient(text.strip(), item.strip(" .,;:"), amount, before, section=main.section)


def _undescribed(item: str) -> str:
    """The food without what describes it: "fresh rosemary" is rosemary."""
    words = item.split()
    while len(words) > 1 and words[0].casefold() in ingredient_words("description"):
        del words[0]
    return " ".join(words)


def _leading_preparation(text: str) -> tuple[str, str]:
    """Parts "finely chopped onion" into preparation and food, unless that would name another food (mashed potato)."""
    words = text.split()
    end = done = 0
    while end < len(words) - 1:
        word = words[end].casefold().strip(",")
        manner, _, done_so = word.rpartition("-")  # fine-chopped
        after_manner = end > 0 and words[end - 1].casefold() in ingredient_words("manner")
        if (
            word in ingredient_words("preparation")
            or (after_manner and word in ingredient_words("prepared_after_manner"))
            or (manner in ingredient_words("manner") and done_so in ingredient_words("preparation"))
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
    if _named_so(words):
        return "", text
    return before, item


def _named_so(words: list[str]) -> bool:
    """Whether the food has its name from what was done to it: minced beef, pan rallado."""
    text = " ".join(words).casefold()
    return any(text.startswith(name) for name in ingredient_words("named_with_preparation"))


def ingredient_words(kind: str) -> frozenset[str]:
    """The words of one kind of the table `ingredient_words`."""
    return _by_kind()[kind]


def _preparing() -> frozenset[str]:
    return ingredient_words("preparation") | ingredient_words("manner") | {"and"}


@cache
def _by_kind() -> dict[str, frozenset[str]]:
    return {row["kind"]: frozenset(row["words"]) for row in table("ingredient_words")}
