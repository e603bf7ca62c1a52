"""Length: `5,000 ft`, `1600 m`, `10 inches`."""

from __future__ import annotations

import re

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures import METRES, Measure, read_measures
from turnspit.asking.readers.numbers import number
from turnspit.asking.tokens import Number

grammar = Grammar("<length>")
_THREE_DIGITS = re.compile(r"[1-9]\d?[.]\d{3}")


@grammar.rule("<number> m|metro|metros|metres|meters", gives="<length>")
def _point_of_thousands(value: Number | float) -> Measure | None:
    """`2.600 m` is the height of a town: nobody measures a kitchen to the millimetre."""
    said = number(value)
    if not _THREE_DIGITS.fullmatch(said.digits):
        return None
    metres = float(said.digits.replace(".", ""))
    return Measure(metres, "m", metres)


@grammar.rule("mile high", gives="<length>")
def _a_mile_high() -> Measure:
    return Measure(1.0, "mile", METRES["mile"])


read_measures(grammar, "<length_unit>", METRES)
