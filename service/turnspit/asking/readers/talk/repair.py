"""Slips put right in the same breath: `dinner at 6 no wait 7`, `16 lb, sorry, 18 lb`, `18 not 16`, `not a duck, a
goose`.

A mark ("sorry", "i mean") between two values of one dimension puts the later one in the place of the earlier. What is
denied ("not 16") is taken out where its like stands beside it. A bare number takes the dimension and the unit of the
value that it corrects: of those before it the nearest of its size.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from turnspit.asking.grammar import Item
from turnspit.asking.readers.company.covers import Covers
from turnspit.asking.readers.heat.temperature import Temperature
from turnspit.asking.readers.hours.clock import Clock, digits_clock
from turnspit.asking.readers.hours.duration import HOURS, Duration
from turnspit.asking.readers.measures.measures import KG, LITRES, Measure
from turnspit.asking.tokens import Number

# What has a size, and what has a name. A name may be said by a part of it: `pork shoulder, i mean loin`.
SIZES = ("<mass>", "<volume>", "<length>", "<temperature>", "<covers>", "<clock>", "<duration>", "<number>")
_NAMES = (
    "<when_day>", "<roast>", "<place>", "<doneness>", "<state>", "<stuffed>", "<bone_in>", "<injected>",
    "<convection>", "<salt>", "<factor>",
)  # fmt: skip
_VALUES = (*SIZES, *_NAMES)
_UNITS = {"<mass_unit>": KG, "<volume_unit>": LITRES}
CORRECTS = ("<repair>", "<second_thought>", "<denied>", "<wrong>")
"""The marks of a correction."""
# How many items that are no mere fillers may stand between a value and the mark that corrects it.
_REACH = {"<repair>": 8, "<second_thought>": 1, "<denied>": 4, "<wrong>": 1}
_FILLERS = ("<soft>", "<break>", "<at>", "<for>", "<repair>", "<second_thought>", "'-", "'no", "'but", "'its", "'the")
# "not before 6" denies nothing.
_BEHIND_NOT = ("<soft>", "<for>", "<hour_at>", "'at", "'the")
_OF_A_RECIPE = frozenset(("<recipe>", "<scale>", "<says>", "<ingredient>"))
# A number this much larger or smaller than one said before still corrects it where it stands nearest, and where it is
# the only one up to so much.
_NEAR, _FAR = 1.6, 4.0


def mend(items: list[Item]) -> list[Item]:
    """The line with its slips put right."""
    if not any(mark in item for item in items for mark in CORRECTS):
        return items
    items = list(items)
    tags = {tag for item in items for tag in item.tags}
    recipe = not _OF_A_RECIPE.isdisjoint(tags) or ("<subject>" in tags and tags.isdisjoint(("<roast>", "<generic>")))
    at = 0
    while at < len(items):
        mark = _mark(items, at)
        if mark == "<denied>":
            _deny(items, at, recipe)
        elif mark == "<wrong>":
            _wrong(items, at)
        elif mark in ("<repair>", "<second_thought>") and _replace(items, at, _REACH[mark]):
            # The next mark may stand where this one stood: "14 lb, no sorry 15, no wait 16".
            at = max(at - _REACH[mark], -1)
        at += 1
    return items


def _mark(items: list[Item], at: int) -> str:
    """The mark of an item: Spanish `no` denies what follows at once, and begins anew before a pause."""
    item = items[at]
    if "<put_off>" in item:
        # "dinner not till 3"
        return ""
    if "<denied>" in item and (at + 1 == len(items) or "<break>" not in items[at + 1]):
        return "<denied>"
    return next((mark for mark in CORRECTS if mark in item), "")


def _replace(items: list[Item], mark: int, reach: int) -> bool:
    """Whether the value behind the mark was put in the place of its like before it."""
    later = _value_from(items, mark + 1)
    if later is None:
        return False
    earlier = _like(items, later, _before(items, mark, reach))
    if earlier is None:
        return False
    if _same(items[earlier], items[later]):
        # "duck, i meant duck" corrects what was said in a line before.
        del items[earlier]
        return False
    doubted = _doubted(items, earlier)
    if doubted is not None:
        earlier, mark = doubted, doubted + 1
    items[earlier] = _corrected(items[earlier], items[later])
    first = mark
    while first > earlier + 1 and "<break>" in items[first - 1]:
        first -= 1
    last = later + 1
    if first < mark and last < len(items) and items[last].words == ",":
        last += 1
    del items[first:last]
    return True


def _doubted(items: list[Item], other: int) -> int | None:
    """`14 lb or 15? no, 14.5`: the value that a bare number was the other choice of."""
    either = other - 1
    while either > 0 and "<soft>" in items[either]:
        either -= 1
    if either < 0 or items[either].words not in ("or", "o") or not _bare(items[other]):
        return None
    return _like(items, other, _before(items, either, 1))


def _same(one: Item, other: Item) -> bool:
    return any(tag in one and one.tags[tag] == other.get(tag) for tag in (*_NAMES, "<mass>", "<temperature>"))


def _deny(items: list[Item], mark: int, recipe: bool) -> None:
    """`18 not 16`, `not a duck, a goose`: what is denied is taken out, and its like stands in its place."""
    denied = _value_from(items, mark + 1, _BEHIND_NOT)
    if denied is None or (recipe and (_bare(items[denied]) or "<covers>" in items[denied])):
        # "serves 4, not 6" scales.
        return
    stands = _like(items, denied, _before(items, mark, _REACH["<denied>"]))
    if stands is not None:
        items[stands] = _corrected(items[denied], items[stands])
        _take_out(items, mark, denied)
        return
    stands = _like(items, denied, _behind(items, denied, _REACH["<denied>"]))
    if stands is not None:
        later = _corrected(items[denied], items[stands])
        del items[stands]
        items.insert(denied + 1, later)
        _take_out(items, mark, denied)


def _wrong(items: list[Item], mark: int) -> None:
    """`325 was wrong, 350`."""
    denied = next((place for place in _before(items, mark, 1) if _is_value(items[place])), None)
    stands = _like(items, denied, _behind(items, mark, _REACH["<denied>"])) if denied is not None else None
    if denied is None or stands is None:
        return
    items[stands] = _corrected(items[denied], items[stands])
    _take_out(items, denied, denied)


def _take_out(items: list[Item], first: int, denied: int) -> None:
    """Leave of a denied value only that it was denied: nothing is parted by it."""
    item = items[denied]
    tags = {"<denied_value>": size(item) or item.words, "<soft>": "soft"}
    last = denied + 1
    if last < len(items) and items[last].words in (",", ")"):
        last += 1
    if first and items[first - 1].words == "(":
        first -= 1
    items[first:last] = [Item(item.words, tags, items[first].start, item.end, "repair: denied")]


def _before(items: list[Item], at: int, reach: int) -> Iterator[int]:
    return _walk(items, range(at - 1, -1, -1), reach)


def _behind(items: list[Item], at: int, reach: int) -> Iterator[int]:
    return _walk(items, range(at + 1, len(items)), reach)


def _walk(items: list[Item], places: range, reach: int) -> Iterator[int]:
    """The places that are reached: fillers are free."""
    for place in places:
        if _is_value(items[place]) or not any(tag in items[place] for tag in _FILLERS):
            yield place
            reach -= 1
            if reach < 0:
                return


def _value_from(items: list[Item], at: int, fillers: tuple[str, ...] = _FILLERS) -> int | None:
    """The value that stands at a place, over fillers."""
    for place in range(at, min(at + 6, len(items))):
        if _is_value(items[place]) or _unit(items[place]):
            return place
        if not any(tag in items[place] for tag in fillers):
            return None
    return None


def _is_value(item: Item) -> bool:
    return any(tag in item for tag in _VALUES) or "<cut>" in item


def _bare(item: Item) -> Number | None:
    """The number of an item that is of no dimension yet; `for 18` may yet be hours."""
    covers = item.get("<covers>")
    if covers is not None and not covers.sure and not covers.more:
        return Number(float(covers.count), str(covers.count))
    return item.get("<number>") if not any(tag in item for tag in SIZES[:-1]) else None


def _unit(item: Item) -> str:
    return item.get("<mass_unit>") or item.get("<volume_unit>") or item.get("<temperature_unit>") or ""


def _like(items: list[Item], place: int, others: Iterator[int]) -> int | None:
    """Of the places the one whose value is of the dimension of that at `place`."""
    item, alike = items[place], []
    for nth, other in enumerate(others):
        found = items[other]
        shared = any(tag in item and tag in found for tag in (*_VALUES, "<cut>") if tag != "<number>")
        if shared or _is_part(item, found) or _is_part(found, item) or _in_unit(found, _unit(item)) is not None:
            return other
        times = far(size(item), size(found))
        if _bare(item) or (_bare(found) and nth <= 1 and times <= 2 * _NEAR):
            alike.append((other, times))
    near = next((other for other, times in alike if times <= _NEAR), None)
    if near is not None:
        return near
    nearest = min(alike, key=lambda row: row[1], default=None)
    return nearest[0] if nearest is not None and nearest[1] <= _FAR else None


def _is_part(item: Item, other: Item) -> bool:
    return "<cut>" in item and "<roast>" in other and cut(other.tags["<roast>"], item.tags["<cut>"]) != ""


def _corrected(earlier: Item, later: Item) -> Item:
    """The later item, its value made whole by what the earlier one said."""
    tags = dict(later.tags)
    number = _bare(later)
    if number is not None and ("<covers>" not in later or not _bare(earlier)):
        dimension = next((tag for tag in SIZES if tag in earlier), "<number>")
        tags = {dimension: valued(earlier.tags[dimension], number)}
    elif "<cut>" in later and "<roast>" in earlier and "<roast>" not in later:
        tags = {"<roast>": cut(earlier.tags["<roast>"], later.tags["<cut>"])}
    elif _unit(later) and not _is_value(later):
        dimension = next(tag for tag in SIZES if tag in earlier)
        tags = {dimension: _in_unit(earlier, _unit(later))}
    elif "<clock>" in later and "<clock>" in earlier and not later.tags["<clock>"].half:
        tags["<clock>"] = replace(later.tags["<clock>"], half=earlier.tags["<clock>"].half)
    tags["<denied_value>"] = size(earlier) or earlier.words
    words = f"{earlier.words} {later.words}"
    return Item(words, tags, earlier.start, later.end, "repair: the later word")


def _in_unit(item: Item, unit: str) -> Any:
    """The value of an item in another unit, None where it has none of that dimension."""
    for tag, table in (("<mass>", KG), ("<volume>", LITRES)):
        if unit in table and tag in item:
            value = item.tags[tag].value
            return Measure(value, unit, value * table[unit])
    if unit.startswith("deg") and "<temperature>" in item:
        return Temperature(item.tags["<temperature>"].value, unit)
    return None


def size(item: Item) -> float | None:
    """The number that was said of an item's value, None where it has none."""
    value = next((item.tags[tag] for tag in SIZES if tag in item), None)
    match value:
        case Clock():
            return (value.hour % 12 or 12) + value.minute / 60
        case Covers():
            return float(value.count + value.more)
        case Duration():
            return value.hours / HOURS.get(value.unit, 1.0)
        case Measure() | Temperature() | Number():
            return value.value
    return float(value) if isinstance(value, int | float) else None


def far(one: float | None, other: float | None) -> float:
    """How many times one number is the other, or the other the one."""
    if not one or not other or one * other < 0:
        return math.inf
    return max(one / other, other / one)


def valued(value: Any, said: Number) -> Any:
    """A value like another, of the number that was said."""
    match value:
        case Measure():
            return Measure(said.value, value.unit, value.si / value.value * said.value if value.value else 0.0)
        case Temperature():
            return Temperature(said.value, value.unit)
        case Covers():
            return Covers(int(said.value), sure=value.sure)
        case Clock():
            found = digits_clock(said)
            return replace(found, half=value.half) if found is not None and found.is_open else found or value
        case Duration():
            return Duration(said.value * HOURS.get(value.unit, 1.0), value.unit)
    return said


# The roasts of one animal, told apart by their cut alone.
_CUTS = {
    "beef": {"rib": "beef_rib", "tenderloin": "beef_tenderloin", "fillet": "beef_tenderloin", "round": "beef_round"},
    "pork": {"loin": "pork_loin", "shoulder": "pork_shoulder", "leg": "fresh_ham"},
    "fresh_ham": {"loin": "pork_loin", "shoulder": "pork_shoulder"},
    "turkey": {"crown": "turkey_breast", "whole": "turkey"},
}


def cut(kind: str, named: str) -> str:
    """The roast of the animal of `kind` that a cut names: of `pork_shoulder` and `loin` it is `pork_loin`."""
    cuts = _CUTS.get(kind) or _CUTS.get(kind.partition("_")[0], {})
    return cuts.get(named, "")
