"""Numbers as cooks write them: 1 1/2, 1½, 1-1/2, 1,5, .5, 1,000, "one and a half", "half a dozen", and ranges.

Everything works on text made plain by `plain`: fractions in one sign become n/d, dashes and spaces one kind
each, and 1.500 g becomes 1500 g.
"""

from __future__ import annotations

import re
import unicodedata
from fractions import Fraction
from functools import lru_cache

_SIGNS = {
    "⁄": "/",
    "∕": "/",
    "×": "x",
    "✕": "x",
    "’": "'",
    "‘": "'",
    "“": '"',
    "”": '"',
    "″": '"',
    "‐": "-",
    "‑": "-",
    "‒": "-",
    "–": "-",
    "−": "-",
    "\u00ad": "",
    "\u200b": "",
    "\ufeff": "",
}
_TABLE = str.maketrans(_SIGNS)
_FRACTION_SIGN = re.compile(r"(?:(\d)\s*)?([¼-¾⅐-⅞↉])")
_SPACE = re.compile(r"\s+")
_POINTED_THOUSANDS = re.compile(
    r"(?<![\d.,])[1-9]\d{0,2}(?:\.\d{3})+(?=\s*(?:g|gr|grs|grams?|grammes?|gramos?|ml|millilit(?:re|er)s?|mililitros?)\b)",
    re.IGNORECASE,
)
"""Spanish and German for 1,500 g: no kitchen weighs a thousandth of a gram."""

WORDS = {
    "a": 1, "an": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8,
    "nine": 9, "ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16,
    "eighteen": 18, "twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "hundred": 100,
    "un": 1, "una": 1, "uno": 1, "dos": 2, "tres": 3, "cuatro": 4, "cinco": 5, "seis": 6, "siete": 7, "ocho": 8,
    "nueve": 9, "diez": 10, "doce": 12,
}  # fmt: skip
_PARTS = {
    "half": (1, 2), "halves": (1, 2), "third": (1, 3), "thirds": (1, 3), "quarter": (1, 4), "quarters": (1, 4),
    "fourth": (1, 4), "fourths": (1, 4), "eighth": (1, 8), "eighths": (1, 8), "media": (1, 2), "medio": (1, 2),
    "tercio": (1, 3), "tercios": (1, 3), "cuarto": (1, 4), "cuartos": (1, 4),
}  # fmt: skip
MOST_DIGITS = 12
"""A longer number is no amount of food, and is not read."""
_LOOSE = {"couple": 2, "few": 3, "several": 4}

_WORD = "|".join(sorted(WORDS, key=len, reverse=True))
_PART = "|".join(sorted(_PARTS, key=len, reverse=True))
_NUMBER = re.compile(
    rf"""
    (?P<whole>\d+)(?:\s+|\s*-\s*|\s+(?:and|&|y)\s+)(?P<top>\d+)\s?/\s?(?P<bottom>\d+)(?![\d/])
    | (?P<numerator>\d+)\s?/\s?(?P<denominator>\d+)(?![\d/])
    | (?P<thousands>[1-9]\d{{0,2}}(?:,\d{{3}})+)(?!\d)(?:\.(?P<decimals>\d+))?
    | (?P<decimal>\d*[.,]\d+)
    | (?P<integer>\d+)(?!\d|\s?/)(?:\s+(?:and|&)\s+(?:a|one)[\s-]+(?P<and_part>{_PART})\b)?
    | (?:an?\s+)?(?:good\s+)?(?P<loose>couple|few|several)\b(?:\s+of\b)?
    | (?:a\s+)?(?P<half_dozen>half\s+(?:a\s+)?dozen)\b
    | (?:(?P<of_word>{_WORD})[\s-]+)?(?P<part>{_PART})\b(?!-and-)(?:\s+(?:of\s+)?an?\b)?
    | (?P<word>{_WORD})\b(?:\s+(?:and\s+(?:a|one)|y)[\s-]+(?P<word_part>{_PART})\b)?
        (?:\s+(?P<dozen>dozen|docenas?|hundred|cien)\b)?
    | (?P<only_dozen>dozen|docena)\b
    """,
    re.VERBOSE | re.IGNORECASE,
)
_TO = re.compile(r"\s*(?:-|—|\bto\b|\bor\b|\ba(?=\s+\d)|\bo(?=\s+\d))\s*", re.IGNORECASE)
_BETWEEN = re.compile(r"(?:from|between|entre|de)\s+(?=\d)", re.IGNORECASE)
_AND = re.compile(r"\s*(?:and|y)\s*", re.IGNORECASE)


@lru_cache(maxsize=8192)
def plain(text: str) -> str:
    """The text with one kind of fraction, dash, quote and space, so that reading needs to know only one."""
    text = _FRACTION_SIGN.sub(_spelled_fraction, text.translate(_TABLE))
    text = _POINTED_THOUSANDS.sub(lambda match: match[0].replace(".", ""), text)
    return _SPACE.sub(" ", unicodedata.normalize("NFC", text)).strip()


def take_number(text: str, start: int = 0) -> tuple[Fraction, int] | None:
    """The number that begins at `start` and where it ends, or None; a fraction over zero is no number."""
    match = _NUMBER.match(text, start)
    if match is None:
        return None
    value = _value(match)
    return None if value is None else (value, match.end())


def take_range(text: str, start: int = 0) -> tuple[Fraction, Fraction | None, int] | None:
    """The number or range ("2-3", "2 to 3", "between 2 and 3") that begins at `start`: low, high or None, end."""
    between = _BETWEEN.match(text, start)
    first = take_number(text, between.end() if between else start)
    if first is None:
        return None
    low, end = first
    joint = _AND.match(text, end) if between else None
    joint = joint or _TO.match(text, end)
    second = take_number(text, joint.end()) if joint and text[joint.end() : joint.end() + 1].strip() else None
    if joint is None or second is None or not _is_range(text, joint, second[1], low, second[0]):
        return low, None, end
    return low, second[0], second[1]


def _is_range(text: str, joint: re.Match[str], end: int, low: Fraction, high: Fraction) -> bool:
    """A second number makes a range only if it is the larger; "1 or a few" and "2 to a pan" are not ranges."""
    if high <= low:
        return False
    second = text[joint.end() : end].casefold()
    return second not in ("a", "an", "un", "una")


def _value(match: re.Match[str]) -> Fraction | None:
    got = match.groupdict()
    if len(match[0]) > MOST_DIGITS and any(len(digits or "") > MOST_DIGITS for digits in got.values()):
        return None
    try:
        in_digits = _in_digits(got)
        return _in_words(got) if in_digits is None else in_digits
    except ZeroDivisionError:
        return None


def _in_digits(got: dict[str, str | None]) -> Fraction | None:
    if got["whole"]:
        top, bottom = int(got["top"] or 0), int(got["bottom"] or 1)
        return Fraction(int(got["whole"]) * bottom + top, bottom)
    if got["numerator"]:
        return Fraction(int(got["numerator"]), int(got["denominator"] or 1))
    if got["thousands"]:
        return Fraction(f"{got['thousands'].replace(',', '')}.{got['decimals'] or '0'}")
    if got["decimal"]:
        return Fraction(f"0{got['decimal'].replace(',', '.')}")
    if got["integer"]:
        whole = Fraction(int(got["integer"]))
        return whole + _part(got["and_part"]) if got["and_part"] else whole
    return None


def _in_words(got: dict[str, str | None]) -> Fraction | None:
    if got["loose"]:
        return Fraction(_LOOSE[got["loose"].casefold()])
    if got["half_dozen"]:
        return Fraction(6)
    if got["part"]:
        return _of_part(got["of_word"], got["part"])
    if got["only_dozen"]:
        return Fraction(12)
    value = Fraction(WORDS[(got["word"] or "").casefold()]) + _part(got["word_part"])
    return value * {"": 1, "h": 100, "c": 100, "d": 12}[(got["dozen"] or "")[:1].casefold()]


def _of_part(word: str | None, part: str) -> Fraction:
    """ "three quarters", "a half", "half"."""
    return (WORDS[word.casefold()] if word else 1) * _part(part)


def _part(word: str | None) -> Fraction:
    return Fraction(*_PARTS[word.casefold()]) if word else Fraction(0)


def _spelled_fraction(match: re.Match[str]) -> str:
    digit, sign = match.groups()
    parts = unicodedata.normalize("NFKC", sign).replace("⁄", "/")
    return f"{digit} {parts}" if digit else parts
