"""Reads the amount at the head of a text: number or range, size, unit, and what one tin of it holds.

Forms read, each by the function of that name: "2 x 400 g tins", "1 (14 oz) can", "a 14-oz can" (packed);
"3 lb 4 oz", "1 cup plus 2 tbsp" (compound); "1 tsp to 1 tbsp" (range over units); "2 cups (250 g)" (equal).
"""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction

from turnspit.errors import Impossible
from turnspit.quantities.amount import Amount
from turnspit.quantities.given import check_text
from turnspit.quantities.numbers import plain, take_number, take_range
from turnspit.quantities.units import Region, holds_more, is_package, names_a_food, unit, unit_named, unit_ratio

_ABOUT = re.compile(
    r"(?:(?:about|approximately|around|roughly|circa|some|nearly|almost|just over|just under|at least|up to|unos|"
    r"unas|aproximadamente)\b|(?:approx|ca?|aprox)\.|approx\b|~|≈)\s*",
    re.IGNORECASE,
)
_ABOUT_AFTER = re.compile(r"[\s,]*(?:approx\.?|approximately|or so|aprox\.?)(?=\W|$)", re.IGNORECASE)
_FEW = re.compile(r"(?:a\s+)?(?:good\s+)?(?:few|several|couple)\b", re.IGNORECASE)
_SIZE = re.compile(
    r"\s*\(?([a-z]+(?=[- ]sized)|extra[- ]large|"
    r"very large|very small|large|medium|small|jumbo|big|sm|lge?|med|heaped|heaping|rounded|rounding|level|"
    r"(?:no\.?|#)\s?\d+(?:\s+1/2)?|scant|generous|good|packed|fat|thick|thin|grandes?|median[oa]s?|pequeñ[oa]s?|colmad[oa]s?|ras[oa]s?)"
    r"(?:[- ]sized?|\.)?\)?(?=[\s,])",
    re.IGNORECASE,
)
_SIZE_BEHIND = re.compile(r"\s+(colmad[oa]s?|ras[oa]s?|generos[oa]s?|llen[oa]s?)(?=\s)", re.IGNORECASE)
_DESCRIBED_PIECE = re.compile(
    r"\s+(?P<word>[a-z]+(?:-[a-z]+)*)(?=(?P<piece>\s+[a-z]+)(?:\s*\([^()]*\))?\s+of\s)", re.IGNORECASE
)
_PLAIN_SIZES = ("small", "medium", "large", "big", "good", "fair")
_SIZES_SHORT = {"sm": "small", "lg": "large", "lge": "large", "med": "medium"}
_AND_HALF = re.compile(r"\s+(?:and\s+a|y)\s+(?P<part>half|quarter|media|medio|cuarto)\b", re.IGNORECASE)
_SPACE = re.compile(r"\s+")
_HYPHEN = re.compile("-")
_HYPHEN_TO = re.compile(r"-\s*(?:to|or)\s+", re.IGNORECASE)
_ARTICLE = re.compile(
    r"(?:\s+an?(?=\s)|\s+de(?=\s+(?:taza|cucharad|kilo|litro|libra))|\s*x(?=\s+[^\W\d]))", re.IGNORECASE
)
_TIMES = re.compile(r"\s*[x*]\s*(?=\d)", re.IGNORECASE)
_UNIT_WORDS = re.compile(r"(?:\s*|-)(?P<first>[^\W\d_]+|#(?!\d)|\")(?:\.?\s+(?P<second>[^\W\d_]+))?")
_JOINED = re.compile(r"['-][^\W\d_]")
_STOP = re.compile(r"\.(?!\d)")
_DEGREE = re.compile(r"\s*(?:°|º|deg(?:rees?)?\.?)\s*([CF])\b", re.IGNORECASE)
_PLUS = re.compile(r"\s*(?:,?\s*(?:plus|and|y|con)\b|,|\+|&)?\s*", re.IGNORECASE)
_TO = re.compile(r"\s*(?:-|—|to\b|a\b)\s*", re.IGNORECASE)
_OF = re.compile(r"\s*(?:of|de|d')\s+(?:an?\s+|the\s+|la\s+)?", re.IGNORECASE)
_OF_SIZE = re.compile(r"\s+(?:of|de)\s+(?=\d)", re.IGNORECASE)
_BRACKET = re.compile(r"\s*[(\[]\s*(?:=|or\s+)?\s*(?P<inside>[^()\[\]]+)[)\]]", re.IGNORECASE)
_BRACKET_END = re.compile(r"[\s,]*(?:each|apiece|cada un[oa]|c/u|total|net)?\.?\s*(?:$|/|;|,?\s*or\b)", re.IGNORECASE)
_OR_PARTS = re.compile(r"\s*(?:\bor\b|=|;)\s*", re.IGNORECASE)
_SLASH = re.compile(r"\s*(?:/|\||=|\bor\b)\s*(?:(?:about|scant|generous)\s+)?(?=\d)", re.IGNORECASE)
_EACH = re.compile(r"\b(?:each|apiece|cada un[oa]|c/u)\b", re.IGNORECASE)


def read_amount(text: str, region: Region | None = None) -> Amount:
    """The amount that is the whole text ("2 1/2 cups", "3 lb 4 oz", "a pinch"), by the measures of `region`.

    Raises Impossible for a text that is not one amount.
    """
    check_text("amount", text, "write a number and a unit, as 2 1/2 cups or 340 g")
    taken = take_amount(plain(text), region)
    if taken is None or taken[1].strip(" .,;"):
        raise Impossible("amount", text, "is not an amount", "write a number and a unit, as 2 1/2 cups or 340 g")
    return taken[0]


def take_amount(text: str, region: Region | None = None) -> tuple[Amount, str] | None:
    """The amount at the head of a plain text and the rest behind it, or None where no number stands there."""
    about = _ABOUT.match(text) or _FEW.match(text)
    start = 0 if about is None or _FEW.match(text) else about.end()
    found = _packed(text, start, region) or _measured(text, start, region)
    if found is None:
        return None
    amount, end = found
    amount, end = _with_equal(text, end, amount)
    after = _ABOUT_AFTER.match(text, end)
    if about or after:
        amount, end = replace(amount, approximate=True), after.end() if after else end
    of = _OF.match(text, end)
    return amount, text[of.end() if of else end :].strip()


def _measured(text: str, start: int, region: Region | None) -> tuple[Amount, int] | None:
    """Number or range, then size and unit if there are any: "2 heaped tbsp", "3 large", "400g"."""
    number = take_range(text, start)
    if number is None:
        return None
    low, high, end = number
    end = _skip(_ARTICLE, text, end)
    size, after_size = _size(text, end)
    named, after_unit = _unit(text, after_size)
    if named is None and not size:
        size, after_size = _described_piece(text, end)
        named, after_unit = _unit(text, after_size)
    if named is None:
        return Amount(low, "", high, region, size=size), after_size
    if named == "dozen":
        return Amount(low * 12, "", high and high * 12, region, size=size), after_unit
    and_half = _AND_HALF.match(text, after_unit) if high is None else None
    if and_half:
        low += Fraction(1, 4) if and_half["part"][0] in "qcQC" else Fraction(1, 2)
        after_unit = and_half.end()
    behind = _SIZE_BEHIND.match(text, after_unit)  # "cucharada colmada"
    if behind:
        size, after_unit = behind[1].casefold(), behind.end()
    amount = Amount(low, named, high, region, size=size)
    sized = _OF_SIZE.match(text, after_unit) if is_package(named) else None
    each = _sized(text, sized.end(), region) if sized else None
    if each is not None:  # "1 lata de 400 g de tomate"
        return replace(amount, each=each[0]), each[1]
    over = _range_over_units(text, after_unit, amount)
    return over or _compound(text, after_unit, amount)


def _packed(text: str, start: int, region: Region | None) -> tuple[Amount, int] | None:
    """What comes in pieces of a stated size: "2 x 400 g tins", "1 (14 oz) can", "two 14-oz cans", "a 400 g tin"."""
    number = take_range(text, start)
    if number is None:
        return None
    count, high, end = number
    size, after_size = _size(text, end)
    bracket = _BRACKET.match(text, after_size)
    if bracket:
        each = _whole_measure(bracket["inside"], region)
        if each is None:
            return None
        container, after = _container(text, bracket.end())
        return Amount(count, container, high, region, size=size, each=each), after
    times = _TIMES.match(text, end)
    nested = _sized(text, times.end() if times else _skip(_SPACE, text, end), region)
    if nested is not None and (times or text[end : end + 1] == " "):
        container, after = _container(text, _skip_other_measures(text, nested[1], region))
        return Amount(count, container, high, region, each=nested[0]), after
    single = _sized(text, start, region)
    container, after = _container(text, _skip_other_measures(text, single[1], region)) if single else ("", 0)
    return (Amount(Fraction(1), container, None, region, each=single[0]), after) if single and container else None


def _skip_other_measures(text: str, end: int, region: Region | None) -> int:
    """Past the same size in other units: "1.8kg/4lb"."""
    while slash := _SLASH.match(text, end):
        other = _sized(text, slash.end(), region)
        if other is None:
            break
        end = _compound(text, other[1], other[0])[1]
    return end


def _sized(text: str, start: int, region: Region | None) -> tuple[Amount, int] | None:
    """A mass, volume or length: "400 g", "14-oz", "12- to 14-pound", "2-inch", "six-pound"."""
    number = take_range(text, start)
    if number is None or not (text[start : start + 1].isdigit() or text[number[2] : number[2] + 1] == "-"):
        return None
    low, high, end = number
    upper = _HYPHEN_TO.match(text, end) if high is None else None
    second = take_number(text, upper.end()) if upper else None
    if second is not None and second[0] > low:
        high, end = second
    named, after = _unit(text, end)
    if named is None or unit(named).dimension not in ("mass", "volume", "length"):
        return None
    return Amount(low, named, high, region), _skip(_HYPHEN, text, after)


def _compound(text: str, end: int, amount: Amount) -> tuple[Amount, int]:
    """Adds smaller units that follow at once: "3 lb 4 oz", "1 cup plus 2 tbsp"."""
    first = unit(amount.unit, amount.region)
    while first.dimension in ("mass", "volume") and amount.high is None:
        start = _skip(_PLUS, text, end)
        number = take_number(text, start)
        named, after = _unit(text, number[1]) if number else (None, end)
        second = unit(named, amount.region) if named else None
        if number is None or second is None or second.dimension != first.dimension or not second.si:
            break
        if second.si > first.si or (second.si == first.si and "+" not in text[end:start]):
            break
        amount = replace(amount, value=amount.value + number[0] * unit_ratio(second.name, first.name, amount.region))
        end = after
    return amount, end


def _range_over_units(text: str, end: int, amount: Amount) -> tuple[Amount, int] | None:
    """The upper end with a unit of its own: "1 tsp to 1 tbsp", "100 g - 150 g"."""
    joint = _TO.match(text, end)
    number = take_number(text, joint.end()) if joint and amount.high is None else None
    named, after = _unit(text, number[1]) if number else (None, end)
    first, second = unit(amount.unit, amount.region), unit(named, amount.region) if named else None
    if number is None or second is None or first.dimension != second.dimension or not first.si:
        return None
    high = number[0] * unit_ratio(second.name, first.name, amount.region)
    return (replace(amount, high=high), after) if high > amount.value else None


def _with_equal(text: str, end: int, amount: Amount) -> tuple[Amount, int]:
    """The same amount in another unit ("250 g/9 oz"), or what each piece holds ("2 tins (400 g each)")."""
    bracket = _BRACKET.match(text, end) if amount.unit else None
    if bracket:
        other = _whole_measure(bracket["inside"], amount.region)
        if other is None:
            return amount, end
        is_each = _EACH.search(bracket["inside"]) or is_package(amount.unit) or unit(other.unit).dimension == "length"
        if is_each and amount.each is None:
            return replace(amount, each=other), bracket.end()
        return replace(amount, equals=other), bracket.end()
    while amount.unit and (slash := _SLASH.match(text, end)):
        measured = _measured(text, slash.end(), amount.region)
        if measured is None or not measured[0].unit or unit(measured[0].unit).dimension not in ("mass", "volume"):
            break
        amount, end = replace(amount, equals=amount.equals or measured[0]), measured[1]
    return amount, end


def _whole_measure(text: str, region: Region | None) -> Amount | None:
    """A mass, volume or length that is the whole of a bracket; of several ("450 g/1 lb") the first."""
    for part in _OR_PARTS.split(text):
        found = _sized(part, _skip(_ABOUT, part, 0), region)
        if found is None:
            continue
        amount, end = _compound(part, found[1], found[0])
        if _BRACKET_END.match(part, end):
            return replace(amount, approximate=bool(_ABOUT.match(part)))
    return None


def _container(text: str, start: int) -> tuple[str, int]:
    """The tin, bag or piece that follows a size, "" for none (then the thing itself is counted)."""
    _, after_size = _size(text, start)
    named, after = _unit(text, after_size)
    return (named, after) if named and holds_more(named) else ("", start)


def _size(text: str, start: int) -> tuple[str, int]:
    match = _SIZE.match(text, start)
    if match is None:
        return "", start
    said = match[1].casefold().replace("-", " ")
    likened = "sized" in match[0] and said not in _PLAIN_SIZES  # as a thumb, a walnut
    return f"{said}-sized" if likened else _SIZES_SHORT.get(said, said), match.end()


def is_size(word: str) -> bool:
    """Whether the word is a size wherever it stands before a unit ("large"), not only in "1 whole head of garlic"."""
    return _SIZE.match(f"{word} ") is not None


def _described_piece(text: str, start: int) -> tuple[str, int]:
    """ "whole" of "1 whole head of garlic": any word before a piece that something is of."""
    match = _DESCRIBED_PIECE.match(text, start)
    named = unit_named(match["piece"].strip()) if match else None
    if match is None or named is None or unit(named).dimension != "count":
        return "", start
    return match["word"].casefold(), match.end()


def _unit(text: str, start: int) -> tuple[str | None, int]:
    """The unit whose spelling (of two words, or of one) begins at `start`, after a space or a hyphen."""
    degree = _DEGREE.match(text, start)
    if degree:
        return f"deg{degree[1].upper()}", degree.end()
    match = _UNIT_WORDS.match(text, start)
    if match is None:
        return None, start
    two = unit_named(f"{match['first']} {match['second']}") if match["second"] else None
    if two:
        return two, _skip(_STOP, text, match.end("second"))
    named = unit_named(match["first"])
    end = match.end("first")
    joined = _JOINED.match(text, end)  # flat-leaf parsley, T-bone
    if named is None or (joined and (len(match["first"]) == 1 or unit(named).dimension == "count")):
        return None, start
    if match["second"] and (match["second"].casefold() in names_a_food(named)):
        return None, start
    return named, _skip(_STOP, text, end)


def _skip(pattern: re.Pattern[str], text: str, start: int) -> int:
    match = pattern.match(text, start)
    return match.end() if match else start
