"""A plain line cut into items: numbers, words and signs, the words spelled right and known phrases made one."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from itertools import islice
from typing import Any

from turnspit.asking.grammar import Item
from turnspit.asking.spelling import Correction, correct
from turnspit.asking.vocabulary import Language, Vocabulary, markers, vocabulary

_TOKEN = re.compile(
    r"(?P<date>\d{4}-\d{1,2}-\d{1,2})"
    r"|(?P<hm>\d{1,2}:\d{2})(?!\d)"
    r"|(?P<span>\d{1,2}h\d{2})(?!\d)"
    r"|(?P<ordinal>\d{1,2}(?:st|nd|rd|th)\b|(?<=\bthe )\d{1,2}\.(?=\s))"
    r"|(?P<fraction>\d{1,2}/\d{1,4})(?!\d)"
    r"|(?P<digits>\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:[.,]\d+)?|\.\d+)"
    r"|(?P<word>[a-z]+(?:'[a-z]+)*)"
    r"|(?P<sign>[^\sa-z0-9'])"
)
_AM_PM = re.compile(r"\b([ap])\.\s?m\b\.?")
_MOST_DIGITS = 15
_MOST_TOKENS = 200


@dataclass(frozen=True, slots=True)
class Number:
    """A number as it was said: `value`, its digits where it was written in digits, and the pair of a spoken time
    ("five thirty") where it could be one."""

    value: float
    digits: str = ""
    spoken: tuple[int, int] | None = None


@dataclass(frozen=True, slots=True)
class Tokens:
    """The items of a line, its language, the plain words in their order, and what was corrected."""

    items: list[Item]
    language: Language
    words: tuple[str, ...]
    corrections: tuple[Correction, ...]


def tokenize(text: str, usual: Language = "en") -> Tokens:
    """The items of a cleaned line; `usual` is the language that is taken where the words do not tell."""
    text = _AM_PM.sub(r" \1m", text)
    raw = [
        (match.lastgroup or "", match.group(), match.start(), match.end())
        for match in islice(_TOKEN.finditer(text), _MOST_TOKENS)
    ]
    language = _language([word for kind, word, _, _ in raw if kind == "word"], usual)
    known = vocabulary(language)
    corrections: list[Correction] = []
    pieces: list[Item] = []
    for place, (kind, word, start, end) in enumerate(raw):
        if kind == "word":
            spelled = correct(word.replace("'", ""), language)
            if spelled.correction is not None:
                corrections.append(spelled.correction)
            pieces += [Item(piece, {f"'{piece}": piece}, start, end) for piece in spelled.words]
        elif word == "-" and not _parts_numbers(raw, place):
            continue
        elif kind == "sign":
            pieces.append(Item(word, {f"'{word}": word}, start, end))
        else:
            pieces.append(_number_item(kind, word, start, end, pieces))
    return Tokens(
        _with_bare_questions(_phrased(pieces, known)),
        language,
        tuple(item.words for item in pieces),
        tuple(corrections),
    )


def _parts_numbers(raw: list[tuple[str, str, int, int]], place: int) -> bool:
    """Whether the dash at a place stands before a number; elsewhere ("bone-in", "16-lb") it only joins words."""
    return place + 1 < len(raw) and raw[place + 1][0] not in ("word", "sign")


def _language(words: list[str], usual: Language) -> Language:
    known = markers()
    english = sum(word in known["en"] for word in words)
    spanish = sum(word in known["es"] for word in words)
    if english == spanish:
        return usual
    return "en" if english > spanish else "es"


def _number_item(kind: str, word: str, start: int, end: int, before: list[Item]) -> Item:
    tags: dict[str, Any] = {}
    if kind == "digits":
        value = _value(word)
        if before and before[-1].words == "-" and before[-1].end == start and not _after_number(before):
            dash = before.pop()
            if not (before and before[-1].end == dash.start and before[-1].words.isalpha()):
                # "breast-150" has a dash and no sign.
                value, start = -value, dash.start
        tags["<number>"] = Number(value, word)
    elif kind == "fraction":
        top, bottom = (int(part) for part in word.split("/"))
        if bottom in (2, 3, 4, 5, 6, 8, 16) and top < bottom:
            tags["<fraction>"] = tags["<number>"] = Number(top / bottom)
        tags["<slashed>"] = (top, bottom)
    elif kind == "ordinal":
        tags["<ordinal>"] = int(word.rstrip("stndrh."))
    elif kind == "date":
        tags["<date>"] = tuple(int(part) for part in word.split("-"))
    else:
        hour, minute = (int(part) for part in re.split("[:h]", word))
        tags["<hm>" if kind == "hm" else "<h_m>"] = (hour, minute)
    return Item(word, tags, start, end)


def _after_number(before: list[Item]) -> bool:
    return len(before) > 1 and ("<number>" in before[-2] or "<mass_unit>" in before[-2] or before[-2].words in _GLUED)


_GLUED = frozenset(["lb", "lbs", "kg", "g", "oz", "f", "c"])


def _value(digits: str) -> float:
    if len(digits) > _MOST_DIGITS:
        digits = digits[:_MOST_DIGITS].rstrip(",.")
    if re.fullmatch(r"\d{1,3}(?:,\d{3})+(?:\.\d+)?", digits):
        return float(digits.replace(",", ""))
    return float(digits.replace(",", "."))


def _phrased(pieces: list[Item], known: Vocabulary) -> list[Item]:
    """The pieces with the longest known phrase at each place made one item."""
    items: list[Item] = []
    at = 0
    while at < len(pieces):
        size, tags = _longest(pieces, at, known)
        piece = pieces[at]
        if size == 1:
            items.append(Item(piece.words, {**piece.tags, **tags}, piece.start, piece.end))
        else:
            words = " ".join(one.words for one in pieces[at : at + size])
            items.append(Item(words, dict(tags), piece.start, pieces[at + size - 1].end))
        at += size
    return items


_SPANS = frozenset(
    ["hours", "hrs", "hour", "minutes", "mins", "min", "days", "horas", "minutos", "dias", "time", "tiempo", "rato"]
)
_COUNTED = (
    "<number>",
    "<tens>",
    "<hundred>",
    "<part>",
    "<and_part>",
    "<a>",
    "<more>",
    "<ordinal>",
    "<h_m>",
    "<time_unit>",
)
_NO_QUESTION_WORDS = """
on in same next this that first any every of last no few some per each all what other whole which by big more
mismo poco mucho buen otro estos unos varios pocos algunos otras varias al
"""
_NO_QUESTION = frozenset(_NO_QUESTION_WORDS.split())


def _with_bare_questions(items: list[Item]) -> list[Item]:
    """`14 lb, 325, hrs?`, `pavo 7 kg tiempo`: a span of time that nothing counts, at an end, asks for its number."""
    for place, item in enumerate(items):
        if item.words not in _SPANS or (place + 1 < len(items) and items[place + 1].words not in (".", "?", ";")):
            continue
        before = items[place - 1] if place else None
        if before is None or before.words in _NO_QUESTION or any(tag in before.tags for tag in _COUNTED):
            continue
        item.tags["<how_long>"] = "how_long"
    return items


def _longest(pieces: list[Item], at: int, known: Vocabulary) -> tuple[int, Mapping[str, Any]]:
    """How many pieces the longest phrase at a place takes, and what it means."""
    seconds = known.phrases.get(pieces[at].words)
    if seconds is None:
        return 1, {}
    if at + 1 < len(pieces):
        for phrase, tags in seconds.get(pieces[at + 1].words, ()):
            size = len(phrase)
            if at + size <= len(pieces) and all(pieces[at + n].words == phrase[n] for n in range(2, size)):
                return size, tags
    single = seconds.get("")
    return 1, single[0][1] if single else {}
