"""One egg, two eggs: the item of a counted line in the number that scaling gave it (in English)."""

from __future__ import annotations

import re

IRREGULAR = {
    "goose": "geese",
    "leaf": "leaves",
    "loaf": "loaves",
    "half": "halves",
    "potato": "potatoes",
    "tomato": "tomatoes",
}
SAME = frozenset(
    [
        "anise",
        "asparagus",
        "fish",
        "salmon",
        "cod",
        "trout",
        "shrimp",
        "squid",
        "broccoli",
        "couscous",
        "molasses",
        "choy",
        "garlic",
        "celery",
    ]
)
_PLURALS = {plural: singular for singular, plural in IRREGULAR.items()}
_HEAD = re.compile(r"^(?P<before>.*?)(?P<noun>[^\W\d_]+)(?P<after>(?:\s+(?:of|in|with|from)\b.*)?)$", re.IGNORECASE)


def in_number(item: str, *, many: bool) -> str:
    """The item with its noun in the plural or the singular: "leg of lamb" to "legs of lamb", "eggs" to "egg"."""
    match = _HEAD.match(item)
    if match is None or match["noun"].casefold() in SAME:
        return item
    noun = _plural(match["noun"]) if many else _singular(match["noun"])
    return f"{match['before']}{noun}{match['after']}"


def _plural(noun: str) -> str:
    low = noun.casefold()
    if low in IRREGULAR:
        return IRREGULAR[low]
    if low in _PLURALS or low.endswith("s"):
        return noun
    if re.search(r"(?:x|ch|sh)$", low):
        return f"{noun}es"
    return f"{noun[:-1]}ies" if re.search(r"[^aeiou]y$", low) else f"{noun}s"


def _singular(noun: str) -> str:
    low = noun.casefold()
    if low in _PLURALS:
        return _PLURALS[low]
    if not low.endswith("s") or low.endswith(("ss", "us")):
        return noun
    if re.search(r"(?:x|ch|sh)es$", low):
        return noun[:-2]
    return f"{noun[:-3]}y" if low.endswith("ies") else noun[:-1] or noun
