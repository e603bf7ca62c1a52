"""Numbers as they are said: `16 1/2`, `two and a half`, `one hundred and sixty`, `one sixty five`, `a dozen`."""

from __future__ import annotations

from turnspit.asking.grammar import Grammar
from turnspit.asking.tokens import Number

grammar = Grammar("number")


def number(value: float | Number) -> Number:
    """A plain number of the vocabulary as a `Number`."""
    return value if isinstance(value, Number) else Number(float(value))


@grammar.rule("( <number> )", gives="<number>")
def _in_brackets(value: Number | float) -> Number:
    """`(6) 18 lb birds`."""
    return number(value)


@grammar.rule("<number> -|and? <fraction>", "<number> and|y <fraction>", gives="<number>")
def _whole_and_fraction(whole: Number | float, fraction: Number) -> Number | None:
    value = number(whole)
    return Number(value.value + fraction.value) if value.value == int(value.value) and value.digits else None


@grammar.rule("<number> and change|some !<covers>|<people>", "<number> y pico", gives="<number>")
def _and_change(value: Number | float) -> Number:
    return number(value)


@grammar.rule("<number> <and_part>", "<number> and|y <part>", "<tens> <and_part>", gives="<number>")
def _and_a_half(whole: Number | float, part: float) -> Number:
    value = number(whole).value
    return Number(value + part, spoken=(int(value), round(part * 60)))


@grammar.rule("<number> <hundred> and|y? <tens> <number>?", "<a> <hundred> and|y? <tens> <number>?", gives="<number>")
def _hundred_and_more(hundreds: Number | float, hundred: float, tens: float, ones: float | None) -> Number | None:
    return Number(number(hundreds).value * hundred + tens + (number(ones).value if ones is not None else 0))


@grammar.rule("<number> <hundred> and|y <number>", "<a> <hundred> and|y <number>", gives="<number>")
def _hundred_and_ones(hundreds: Number | float, hundred: float, ones: Number | float) -> Number | None:
    return Number(number(hundreds).value * hundred + number(ones).value)


@grammar.rule("<number> <hundred>", "<a> <hundred>", gives="<number>")
def _hundreds(hundreds: Number | float, hundred: float) -> Number:
    return Number(number(hundreds).value * hundred)


@grammar.rule("<number> <tens> <number>", gives="<number>")
def _spoken_hundreds_and_ones(hundreds: Number | float, tens: float, ones: Number | float) -> Number | None:
    if not (_word(hundreds) and _word(ones)):
        return None
    top, bottom = number(hundreds).value, number(ones).value
    if not (1 <= top <= 12 and bottom < 10):
        return None
    return Number(top * 100 + tens + bottom, spoken=(int(top), int(tens + bottom)))


@grammar.rule("uno|una|one de|of <number>", gives="<number>")
def _one_of_seven(size: Number | float) -> Number:
    return number(size)


@grammar.rule("<number> dozen", gives="<number>")
def _dozens(dozens: Number | float) -> Number:
    return Number(number(dozens).value * 12)


@grammar.rule("<number> <tens>", gives="<number>")
def _spoken_hundreds(hundreds: Number | float, tens: float) -> Number | None:
    top = number(hundreds).value
    if not _word(hundreds) or not 1 <= top <= 12:
        return None
    return Number(top * 100 + tens, spoken=(int(top), int(tens)))


@grammar.rule("<number> fifteen !<mass_unit>|<roast>|<generic>|<people>|<time_unit>|<birds>", gives="<number>")
def _one_fifteen(hundreds: Number | float) -> Number | None:
    top = number(hundreds).value
    return Number(top * 100 + 15, spoken=(int(top), 15)) if _word(hundreds) and 1 <= top <= 3 else None


@grammar.rule("<tens> -|y? <number>", gives="<number>")
def _tens_and_ones(tens: float, ones: Number | float) -> Number | None:
    value = number(ones).value
    return Number(tens + value) if _word(ones) and 1 <= value <= 9 else None


@grammar.rule("<tens>", gives="<number>")
def _tens(tens: float) -> Number:
    return Number(tens)


@grammar.rule("<number>", gives="<number>")
def _plain(value: Number | float) -> Number | None:
    return None if isinstance(value, Number) else Number(value)


def _word(value: Number | float) -> bool:
    return not isinstance(value, Number) or not value.digits
