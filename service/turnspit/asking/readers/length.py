"""Length: `5,000 ft`, `1600 m`, `10 inches`."""

from __future__ import annotations

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures import METRES, read_measures

grammar = Grammar("<length>")
read_measures(grammar, "<length_unit>", METRES)
