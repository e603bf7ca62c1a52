"""Volume: `5 gallon`, `2 cups`, `half a gallon`, `un litro y medio`."""

from __future__ import annotations

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures import LITRES, read_measures

grammar = Grammar("<volume>")
read_measures(grammar, "<volume_unit>", LITRES)
