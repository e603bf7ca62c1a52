"""One amount as a person types it into a field of a form or an argument of a command, in SI.

A bare number is refused wherever its unit could be either of two: 60 degrees may be rare or boiling hot.
"""

from __future__ import annotations

import re

from turnspit.errors import Impossible
from turnspit.quantities.numbers import plain
from turnspit.quantities.reading import read_amount
from turnspit.quantities.units import kilograms, litres, metres, unit

DEGREES = {f"{sign}{letter}": f"deg{letter.upper()}" for letter in "cf" for sign in ("", "°", "º", "deg")}
"""Of a temperature; "c" alone is a cup everywhere else."""
MINUTES = {
    word: minutes
    for minutes, words in (
        (1, "m min mins minute minutes minuto minutos"),
        (60, "h hr hrs hour hours hora horas"),
        (1440, "d day days día días dia dias"),
    )
    for word in words.split()
}
_NUMBER = r"-?[\d.,/\s½¼¾⅓⅔⅛]*[\d½¼¾⅓⅔⅛]"
_AMOUNT = re.compile(rf"\s*({_NUMBER})\s*(.*?)\s*")
_GAS_MARK = re.compile(
    rf"\s*(?:gas(?:\s+mark)?|gas_mark|marca(?:\s+de)?\s+gas|regulo)\s*({_NUMBER})\s*", re.IGNORECASE
)
_SPANS = re.compile(rf"\s*(?:,|and\b|y\b)?\s*({_NUMBER})\s*([^\W\d]+)?")


def typed_number(text: str) -> float:
    """A bare number, with a decimal point or comma or as a fraction. Raises Impossible."""
    found = _AMOUNT.fullmatch(text)
    if found is None or found[2] not in ("", "%"):
        raise Impossible("number", text, "is no number", "write it like 14 or 1.5")
    return _number(found[1])


def typed_whole(text: str) -> int:
    """A whole number. Raises Impossible."""
    value = typed_number(text)
    if not value.is_integer():
        raise Impossible("number", text, "is no whole number", "write it like 14")
    return int(value)


def typed_amount(text: str) -> tuple[float, str]:
    """The number and its unit as written ("" for a bare number). Raises Impossible for what is not one amount."""
    mark = _GAS_MARK.fullmatch(text)
    if mark is not None:
        return _number(mark[1]), "gas_mark"
    found = _AMOUNT.fullmatch(text)
    if found is None or re.search(r"\d", found[2]):
        raise Impossible("amount", text, "is not an amount", 'write a number and a unit, as "18 lb"')
    return _number(found[1]), unit_asked(found[2]) if found[2].casefold() != "c" else "cup"


def unit_asked(text: str) -> str:
    """A unit as written, degrees by their letter."""
    return DEGREES.get(text.casefold(), text)


def typed_celsius(text: str, degrees: str = "") -> float:
    """A temperature in C; `degrees` ("F" or "C") holds for a bare number. Raises Impossible where neither tells."""
    found = _AMOUNT.fullmatch(text)
    unit = DEGREES.get((found[2] or degrees).casefold()) if found else None
    if found is None or unit is None:
        raise Impossible("temperature", text, "is no temperature", 'write it with its degrees, as "160 F" or "71 C"')
    value = _number(found[1])
    return (value - 32) / 1.8 if unit == "degF" else value


def typed_kilograms(text: str) -> float:
    """A mass in kg. Raises Impossible and Unknown."""
    return kilograms(*_with_unit(text, "mass", '"18 lb" or "8 kg"'))


def typed_litres(text: str) -> float:
    """A volume in L. Raises Impossible and Unknown."""
    return litres(*_with_unit(text, "volume", '"5 gal" or "20 L"'))


def typed_kilograms_or_litres(text: str) -> tuple[float | None, float | None]:
    """An amount of food as (kg, None) or (None, L), by the unit written. Raises Impossible and Unknown."""
    value, name = _with_unit(text, "amount", '"8 L" or "10 lb"')
    return (None, litres(value, name)) if unit(name).dimension == "volume" else (kilograms(value, name), None)


def typed_metres(text: str) -> float:
    """A length or a height in m. Raises Impossible and Unknown."""
    return metres(*_with_unit(text, "length", '"2 in", "5 cm" or "5000 ft"'))


def typed_hours(text: str) -> float:
    """A span in hours: "3 h", "90 min", "1 h 30 min", "2 days"; a bare number is hours. Raises Impossible."""
    total_min, end, bare = 0.0, 0, plain(text).strip()
    while found := _SPANS.match(bare, end):
        minutes = MINUTES.get((found[2] or "h").casefold())
        if minutes is None:
            break
        total_min, end = total_min + _number(found[1]) * minutes, found.end()
    if not end or bare[end:].strip():
        raise Impossible("hours", text, "is no span of time", 'write it as "3 h", "90 min" or "2 days"')
    return total_min / 60


def _with_unit(text: str, name: str, example: str) -> tuple[float, str]:
    amount = read_amount(text)
    if not amount.unit:
        raise Impossible(name, text, "has no unit", f"write it as {example}")
    return float(amount.usual), amount.unit


def _number(text: str) -> float:
    negative = text.startswith("-")
    value = float(read_amount(text.removeprefix("-").strip()).usual)
    return -value if negative else value
