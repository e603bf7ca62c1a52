"""Mass: `16 lb`, `16#`, `12-14 pound`, `7 kilos`, `lb 4 oz` compounds, `a pound and a half`, `3 kilo 200`."""

from __future__ import annotations

import re
from itertools import pairwise

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures.measures import KG, Measure, read_measures
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.tokens import Number

grammar = Grammar("<mass>")
_THREE_DIGITS = re.compile(r"[1-9]\d{0,2}[.,]\d{3}")
_NOT_GRAMS = (
    "<deg>|<temperature_unit>|<c>|<convection>|oven|people|guests|covers|pax|ppl|personas|<time_unit>|<mass_unit>"
)
_NOT_OUNCES = f"{_NOT_GRAMS}|<ampm>|<oclock>|<fraction>|x|-|to|or"


@grammar.rule("<number> g|gr|grs|gm|gram|grams|gramos", gives="<mass>")
def _point_of_thousands(value: Number | float) -> Measure | None:
    """`5.500 g` is five and a half kilograms: whether a sign parts thousands is told by what can be."""
    said = number(value)
    if not _THREE_DIGITS.fullmatch(said.digits):
        return None
    grams = float(re.sub("[.,]", "", said.digits))
    return Measure(grams, "g", grams / 1000)


@grammar.rule("<number> kg|kgs|kilo|kilos", gives="<mass>")
def _comma_of_parts(value: Number | float) -> Measure | None:
    """`7,300 kg` is no truckload; `1,000 kg` is what it says."""
    said = number(value)
    if not _THREE_DIGITS.fullmatch(said.digits) or said.digits.endswith(",000"):
        return None
    kg = float(said.digits.replace(",", "."))
    return Measure(kg, "kg", kg)


@grammar.rule(f"<number> kilo|kilos <number> !{_NOT_GRAMS}", gives="<mass>")
def _kilos_and_grams(kilos: Number | float, grams: Number | float) -> Measure | None:
    whole, rest = number(kilos).value, number(grams)
    if whole != int(whole) or rest.value % 50 or not 100 <= rest.value < 1000:
        return None
    kg = whole + rest.value / 1000
    return Measure(kg, "kg", kg)


@grammar.rule(f"<number> pound <number> !{_NOT_OUNCES}", gives="<mass>")
def _pounds_and_ounces(pounds: Number | float, ounces: Number | float) -> Measure | None:
    whole, rest = number(pounds).value, number(ounces).value
    if whole != int(whole) or rest != int(rest) or not 1 <= rest <= 15:
        return None
    lb = whole + rest / 16
    return Measure(lb, "lb", lb * KG["lb"])


@grammar.rule("<number> lb|lbs <number> bird|turkey|chicken|goose|duck|capon|ham", gives="<mass>", keeps=True)
def _pounds_and_ounces_of_one(pounds: Number | float, ounces: Number | float) -> Measure | None:
    """`13 lb 4 bird`; "13 lb 4 birds" are four."""
    return _pounds_and_ounces(pounds, ounces)


@grammar.rule(
    "<number> , <number> ,? and|or|o|y|<and_sign>|, <number> <mass_unit>",
    "<number> , <number> , <number> ,? and|or|o|y|<and_sign>|, <number> <mass_unit>",
    gives="<masses>",
)
def _sizes_on_offer(*values: object) -> tuple[Measure, ...] | None:
    """`5, 7 and 9 kilos`: sizes to choose from, none of which has been chosen."""
    unit = str(values[-1])
    said = [value.value for value in values if isinstance(value, Number)]
    rising = all(low < high for low, high in pairwise(said))
    return tuple(Measure(one, unit, one * KG[unit]) for one in said) if rising else None


@grammar.rule("<number> k", gives="<mass>")
def _two_point_four_k(value: Number | float) -> Measure:
    kg = number(value).value
    return Measure(kg, "kg", kg)


# No oven is set to this, so that it can only be grams ("3 kg 350" is an oven).
_ABOVE_OVENS = 550


@grammar.rule(f"<number> kg|kgs <number> !{_NOT_GRAMS}", gives="<mass>")
def _kg_and_grams(kilos: Number | float, grams: Number | float) -> Measure | None:
    return _kilos_and_grams(kilos, grams) if number(grams).value >= _ABOVE_OVENS else None


read_measures(grammar, "<mass_unit>", KG)
