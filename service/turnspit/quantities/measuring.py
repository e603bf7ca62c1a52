"""Which spoons, cups or round weights come near to a size, and which of them ask least of the cook.

What a kitchen can measure is the table `measuring_sets`; a size may take one unit or two ("1/2 cup + 2 tbsp").
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache, lru_cache
from itertools import pairwise

from turnspit.quantities.units import Region, unit
from turnspit.reference import Row, table

STEPS = (500.0, 250.0, 100.0, 50.0, 25.0, 20.0, 10.0, 5.0, 1.0, 0.5, 0.1, 0.05, 0.01, 0.005, 0.001)
"""Steps in which grams and millilitres are written; the coarsest well within the tolerance is taken."""
PART_COSTS = {1: 0.0, 2: 0.2, 4: 0.35, 3: 0.4, 8: 0.9}
JOINING_COST = 1.2
KITCHEN_PARTS = ("1/4", "1/3", "1/2", "2/3", "3/4")

Parts = tuple[tuple[Fraction, str], ...]


@dataclass(frozen=True, slots=True)
class _Part:
    """A part of a unit that a kitchen can measure, and how much it asks of the cook."""

    size: float
    exact: Fraction
    cost: float


@dataclass(frozen=True, slots=True)
class _Set:
    """The measures of one unit, with the smaller unit that may be added to it."""

    name: str
    si: float
    parts: tuple[_Part, ...]
    least: float = 0.0
    most: float = 0.0
    smaller: _Set | None = None
    joined_below: float = 1.0


_Writing = tuple[tuple[int, _Part, str], ...]


def household(size: float, dimension: str, region: Region | None, tolerance: float) -> tuple[Parts, float] | None:
    """The plainest parts within the tolerance of a size in kg or L, and what they come to; None where none are."""
    best: tuple[float, float, _Writing] | None = None
    for cost, total, writing in _writings(size, dimension, region):
        error = abs(total - size) / size
        if error <= tolerance and (best is None or cost + 0.3 * error / tolerance < best[0]):
            best = (cost + 0.3 * error / tolerance, total, writing)
    if best is None:
        return None
    return tuple((whole + part.exact, name) for whole, part, name in best[2]), best[1]


def kept(value: Fraction, unit_name: str) -> bool:
    """Whether a cook would leave the amount in the unit it stands in (table `kept_measures`; 5, 10, 15 mL)."""
    if unit_name == "mL":
        return value % 5 == 0 and value < 1000
    row = _kept().get(unit_name)
    if row is None or "values" in row:
        return row is not None and value in row["values"]
    return value.denominator in row["parts"] and bool(row["least"] <= value <= row["most"])


def decimal(thousandths: float, tolerance: float) -> Fraction:
    """Grams or millilitres in a round step, at least one step; half the tolerance is used."""
    near = tolerance * thousandths / 2
    step = next((step for step in STEPS if abs(round(thousandths / step) * step - thousandths) <= near), STEPS[-1])
    return max(round(thousandths / step), 1) * Fraction(str(step))


def whole_or_part(value: Fraction, unit_name: str = "", item: str = "") -> Fraction:
    """Things that are counted: halves, thirds and quarters up to ten, whole above, never less than a quarter.

    What is not worth a finer cut is written in halves, or whole (table `counted_parts`).
    """
    least = least_part(unit_name, item)
    if value > 10:
        return Fraction(round(value))
    if least and value:
        return Fraction(max(round(value * least), 1), least)
    whole, part = _nearest(float(value), _parts(KITCHEN_PARTS))
    return max(whole + part.exact, Fraction(1, 4)) if value else value


def _writings(size: float, dimension: str, region: Region | None) -> Iterator[tuple[float, float, _Writing]]:
    """Each way to write a size, in one unit or with a smaller one added: its cost, what it comes to, its parts."""
    for known in _sets(dimension, region):
        count = size / known.si
        if known.least <= count <= known.most:
            whole, part = _nearest(count, known.parts)
            if whole or part.size:
                yield _cost(whole, part), (whole + part.size) * known.si, ((whole, part, known.name),)
            if known.smaller is not None:
                yield from _joined(count, known, known.smaller)


def _joined(count: float, known: _Set, smaller: _Set) -> Iterator[tuple[float, float, _Writing]]:
    whole = int(count)
    for base in known.parts[: 1 if known.name == "lb" else -1]:  # 1 lb 10 oz, never 1 1/2 lb 2 oz
        below = whole + base.size
        if not 0 < below < count:
            continue
        for more, rest in _near((count - below) * known.si / smaller.si, smaller.parts):
            if smaller.name == known.name and (more or not base.size > rest.size):
                continue  # "1/4 tsp + 1/8 tsp" is measured, "1/8 tsp + 1/4 tsp" is not written
            added = (more + rest.size) * smaller.si
            if 0 < added < min(known.si * known.joined_below, below * known.si):
                cost = JOINING_COST + _cost(whole, base) + _cost(more, rest)
                yield cost, below * known.si + added, ((whole, base, known.name), (more, rest, smaller.name))


def _near(count: float, parts: tuple[_Part, ...]) -> Iterator[tuple[int, _Part]]:
    """The nearest number with a part, and the nearest whole one where that is another: it may be near enough."""
    nearest = _nearest(count, parts)
    yield nearest
    if nearest[1].size and count > 0.9:
        yield round(count), parts[0]


def _nearest(count: float, parts: tuple[_Part, ...]) -> tuple[int, _Part]:
    """The whole number and the part that come nearest; the parts stand in order, from 0 to 1."""
    whole = int(count)
    rest = count - whole
    for lower, upper in pairwise(parts):
        if rest <= upper.size:
            part = lower if rest - lower.size <= upper.size - rest else upper
            return (whole + 1, parts[0]) if part.size == 1.0 else (whole, part)
    return whole + 1, parts[0]


def _cost(whole: int, part: _Part) -> float:
    """How much a number asks of the cook: whole least, halves little, thirds and eighths more, many spoons most."""
    return part.cost + max(0, whole - 3) * 0.05


@lru_cache(maxsize=4096)
def least_part(unit_name: str, item: str) -> int:
    """2 for what is halved at most, 1 for what stays whole, 0 for what may be cut smaller."""
    words = item.casefold().partition(",")[0].split()
    named = unit_name or (words[-1] if words else "")
    return _least_parts().get(named, 0)


@cache
def _least_parts() -> Mapping[str, int]:
    return {word: int(row["part"]) for row in table("counted_parts") for word in row["words"]}


@cache
def _kept() -> Mapping[str, Row]:
    return table("kept_measures").by("unit")


@cache
def _sets(dimension: str, region: Region | None) -> tuple[_Set, ...]:
    rows = table("measuring_sets").by("unit")
    found: list[_Set] = []
    for name, row in rows.items():
        known = unit(name, region)
        if known.dimension != dimension or (name in ("quart", "gal") and region not in (None, "US")):
            continue
        own = _Set(name, known.si, _parts(tuple(row["parts"])), row["least"], row["most"])
        smaller = row.get("joins")
        if smaller:
            joined = _Set(smaller, unit(smaller, region).si, _parts(tuple(rows[smaller]["parts"])))
            own = replace(own, smaller=joined, joined_below=row.get("joined_below", 1.0))
        found.append(own)
    return tuple(found)


@cache
def _parts(texts: Sequence[str]) -> tuple[_Part, ...]:
    exact = (Fraction(0), *(Fraction(text) for text in texts), Fraction(1))
    return tuple(_Part(float(part), part, PART_COSTS[part.denominator]) for part in exact)
