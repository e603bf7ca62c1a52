"""Mass: `16 lb`, `16#`, `12-14 pound`, `7 kilos`, `lb 4 oz` compounds, `a pound and a half`."""

from __future__ import annotations

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures import KG, read_measures

grammar = Grammar("<mass>")
read_measures(grammar, "<mass_unit>", KG)
