"""Length: `5,000 ft`, `1600 m`, `10 inches`."""

from __future__ import annotations

import re

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures.measures import METRES, Measure, read_measures
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.tokens import Number

grammar = Grammar("<length>")
_THREE_DIGITS = re.compile(r"[1-9]\d?[.]\d{3}")


@grammar.rule("<number> m|metro|metros|metre|metres|meter|meters|msnm", gives="<length>")
def _point_of_thousands(value: Number | float) -> Measure | None:
    """`2.600 m` is the height of a town: nobody measures a kitchen to the millimetre."""
    return _thousands(number(value).digits, "m")


def _thousands(digits: str, unit: str) -> Measure | None:
    if unit not in ("m", "ft") or not _THREE_DIGITS.fullmatch(digits):
        return None
    height = float(digits.replace(".", ""))
    return Measure(height, unit, height * METRES[unit])


@grammar.rule("<number> <number> <length_unit>", gives="<length>")
def _space_of_thousands(thousands: Number | float, value: Number | float, unit: str) -> Measure | None:
    """`2 250 m`"""
    return _thousands(f"{number(thousands).digits}.{number(value).digits}", unit)


@grammar.rule("mile high", gives="<length>")
def _a_mile_high() -> Measure:
    feet = METRES["mile"] / METRES["ft"]
    return Measure(feet, "ft", METRES["mile"])


read_measures(grammar, "<length_unit>", METRES)
