"""Volume: `5 gallon`, `2 cups`, `half a gallon`, `un litro y medio`."""

from __future__ import annotations

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures import LITRES, Measure, read_measures

grammar = Grammar("<volume>")
read_measures(grammar, "<volume_unit>", LITRES)


@grammar.rule("per|por|each|every <volume_unit>", gives="<volume>")
def _per(unit: str) -> Measure:
    return Measure(1.0, unit, LITRES[unit])
