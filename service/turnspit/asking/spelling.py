"""Spelling: a word the vocabulary does not hold becomes the nearest one it does, where that is safe to say.

A word is left alone when it is known, when it is an ordinary word of the language (`*_plain.txt`, `everyday.py`), or
when nothing is near enough. Two words run together are parted, and shorthand (`shorthand.toml`) is written out. A
correction between words of different meaning (`frozen` is no slip of `fresh`) cannot happen, since both are known;
one that lands on a word which turns the answer is `grave` and is said.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from rapidfuzz import process
from rapidfuzz.distance import OSA

from turnspit.asking.vocabulary import Language, markers, shorthand, vocabulary
from turnspit.asking.vocabulary.everyday import everyday_words

_VOWELS = frozenset("aeiouy")
_SHORTEST = 4
# From this length on two slips are allowed.
_LONG = 6
_LONGEST = 24
# A correction that lands on one of these changes what the answer is, so it is told.
_GRAVE = frozenset(
    [
        "frozen",
        "thawed",
        "stuffed",
        "unstuffed",
        "boneless",
        "injected",
        "fahrenheit",
        "celsius",
        "breast",
        "thigh",
        "turkey",
        "chicken",
        "goose",
        "duck",
        "capon",
        "brined",
        "congelado",
        "relleno",
        "descongelado",
    ]
)


@dataclass(frozen=True, slots=True)
class Correction:
    """What was typed and what it was read as; `grave` where the answer hangs on it."""

    typed: str
    read: str
    grave: bool


@dataclass(frozen=True, slots=True)
class Spelled:
    """The word, or the words it was parted into."""

    words: tuple[str, ...]
    correction: Correction | None = None


@lru_cache(maxsize=8192)
def correct(word: str, language: Language) -> Spelled:
    """How a word is read."""
    known = vocabulary(language)
    written_out = shorthand(language).get(word)
    if written_out is not None:
        return Spelled(written_out)
    if word in known.known or _too_short(word) or len(word) > _LONGEST:
        return Spelled((word,))
    for ending in ("s", "es"):
        stem = word.removesuffix(ending)
        if stem != word and stem in known.words:
            return Spelled((stem,))
    slips, near = _nearest(word, language)
    parted = _parted(word, known.known) if slips != 1 else ()
    if (parted or near) and word in everyday_words(language):
        return Spelled((word,))
    if parted:
        return Spelled(parted, Correction(word, " ".join(parted), False))
    if near:
        return Spelled((near,), Correction(word, near, near in _GRAVE))
    return Spelled((word,))


def _too_short(word: str) -> bool:
    """Short words are too near to each other to be corrected; without a vowel ("thw") they are no words."""
    return len(word) < _SHORTEST and (len(word) < 3 or not _VOWELS.isdisjoint(word))


def _nearest(word: str, language: Language) -> tuple[int, str]:
    """How many slips off the likeliest known word is, and the word; (0, "") for none.

    Words of the language come before the other's nouns, letters swapped before letters left out, and these before
    other slips.
    """
    allowed = 1 if len(word) < _LONG else 2
    core = vocabulary(language).core
    foreign = markers()["es" if language == "en" else "en"]
    found = process.extract(
        word, _targets(language, word[:2]), scorer=OSA.distance, score_cutoff=allowed, limit=8, processor=None
    )
    ranked = [
        (distance, target[0] != word[0], target in foreign, target not in core, _slip(word, target), target)
        for target, distance, _ in found
    ]
    if not ranked:
        return 0, ""
    distance, other_start, *_, target = min(ranked)
    if other_start and (distance > 1 or (len(word) < _LONG and target[1:] != word)):
        return 0, ""
    return distance, target


def _slip(word: str, target: str) -> int:
    """0 where only the order slipped, 1 where letters were left out, 2 for any other slip."""
    if sorted(word) == sorted(target):
        return 0
    letters = iter(target)
    return 1 if all(letter in letters for letter in word) else 2


@lru_cache(maxsize=2048)
def _targets(language: Language, start: str) -> tuple[str, ...]:
    """The words that may be meant: they begin alike, or with the first two letters swapped, or with one more or
    one less.
    """
    first, second = start[0], start[1]
    starts = _by_start(language)
    return tuple(
        word for pair, words in starts.items() if pair[0] in (first, second) or pair[1] == first for word in words
    )


@lru_cache(maxsize=2)
def _by_start(language: Language) -> dict[str, list[str]]:
    starts: dict[str, list[str]] = {}
    for word in sorted(vocabulary(language).words):
        if len(word) >= _SHORTEST and word.isalpha():
            starts.setdefault(word[:2], []).append(word)
    return starts


def _parted(word: str, known: frozenset[str]) -> tuple[str, ...]:
    """The fewest known words that make up this one, () without such; single letters do not count as words."""
    best: list[tuple[str, ...] | None] = [()] + [None] * len(word)
    for end in range(1, len(word) + 1):
        for start in range(max(0, end - 14), end):
            before, piece = best[start], word[start:end]
            if before is None or piece not in known or (len(piece) < 3 and piece not in _SHORT_WORDS):
                continue
            if best[end] is None or len(before) + 1 < len(best[end] or ()):
                best[end] = (*before, piece)
    found = best[-1]
    return found if found is not None and len(found) > 1 and len(found) <= 5 else ()


_SHORT_WORDS = frozenset(["at", "in", "lb", "kg", "oz", "pm", "am", "on", "is", "it", "to", "of", "by", "my", "how"])
