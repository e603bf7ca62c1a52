"""What is counted: `3 cloves garlic`, `a sprig of thyme`; the mass of one is the food's."""

from __future__ import annotations

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures.measures import Measure
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.tokens import Number

grammar = Grammar("<pieces>")


def pieces(count: float, unit: str = "piece") -> Measure:
    """So many of a food. A count has no SI unit of its own."""
    return Measure(count, unit, count)


@grammar.rule("<number>|<a> <piece_unit> of|de?", gives="<pieces>")
def _so_many(count: Number | float, unit: str, *_: object) -> Measure:
    return pieces(number(count).value, unit)
