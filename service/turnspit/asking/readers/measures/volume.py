"""Volume: `5 gallon`, `2 cups`, `half a gallon`, `un litro y medio`."""

from __future__ import annotations

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures.measures import LITRES, Measure, read_measures
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.tokens import Number

grammar = Grammar("<volume>")
read_measures(grammar, "<volume_unit>", LITRES)


@grammar.rule("<number> <c>", gives="<volume>")
def _c_is_cups_below_15(value: Number | float, _: str) -> Measure | None:
    said = number(value).value
    return Measure(said, "cup", said * LITRES["cup"]) if 0 < said < 15 else None


@grammar.rule("per|por|each|every <volume_unit>", gives="<volume>")
def _per(unit: str) -> Measure:
    return Measure(1.0, unit, LITRES[unit])


@grammar.rule("<salt> to the|a <volume_unit>", gives="<volume>", keeps=True)
def _salt_to_the_gallon(_: str, unit: str) -> Measure:
    return Measure(1.0, unit, LITRES[unit])
