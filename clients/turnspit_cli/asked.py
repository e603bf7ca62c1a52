"""Amounts as they are typed on the command line, as the rooms take them."""

from __future__ import annotations

import re
from typing import Any

from turnspit.errors import Impossible

DEGREES = {"f": "degF", "°f": "degF", "degf": "degF", "c": "degC", "°c": "degC", "degc": "degC"}
"""Of a temperature; "c" alone is a cup everywhere else."""
_SPLIT = re.compile(r"\s*(-?[\d.,/\s½¼¾⅓⅔⅛]*[\d½¼¾⅓⅔⅛])\s*(.*?)\s*")


def value_and_unit(text: str) -> tuple[float, str]:
    """The number and its unit ("" for a bare number). Raises Impossible where there is no number."""
    found = _SPLIT.fullmatch(text)
    if found is None:
        raise Impossible("amount", text, "is not an amount", 'write a number and a unit, as "18 lb"')
    return _number(found[1]), unit_asked(found[2]) if found[2].casefold() != "c" else "cup"


def unit_asked(text: str) -> str:
    """A unit, degrees by their letter."""
    return DEGREES.get(text.casefold(), text)


def celsius(text: str) -> float:
    """A temperature in C. Raises Impossible without its degrees: 60 may be either, and one of them is dangerous."""
    found = _SPLIT.fullmatch(text)
    unit = DEGREES.get(found[2].casefold()) if found else None
    if found is None or unit is None:
        raise Impossible("temperature", text, "is no temperature", 'write it with its degrees, as "160 F" or "71 C"')
    value = _number(found[1])
    return (value - 32) / 1.8 if unit == "degF" else value


def kilograms(text: str) -> float:
    """A mass in kg. Raises Impossible and Unknown."""
    return _in(text, "kg", "mass", '"18 lb" or "8 kg"')


def litres(text: str) -> float:
    """A volume in L. Raises Impossible and Unknown."""
    return _in(text, "L", "volume", '"5 gal" or "20 L"')


def measured(text: str) -> dict[str, Any]:
    """What there is of one thing, as the route takes it. Raises Impossible."""
    from turnspit.recipes import read_ingredient

    one = read_ingredient(text, "US")
    if one.amount is None or not one.read:
        raise Impossible("short", text, "is not an amount of something", 'write it as "700 g potatoes"')
    return {"item": one.item, "value": float(one.amount.usual), "unit": one.amount.unit}


def _in(text: str, unit: str, name: str, example: str) -> float:
    from turnspit.quantities import convert

    value, said = value_and_unit(text)
    if not said:
        raise Impossible(name, text, "has no unit", f"write it as {example}")
    return convert(value, said, unit).value


def _number(text: str) -> float:
    from turnspit.quantities import read_amount

    negative = text.startswith("-")
    value = float(read_amount(text.removeprefix("-").strip()).usual)
    return -value if negative else value
