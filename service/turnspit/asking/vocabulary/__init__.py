"""The words of each language as data, and what they mean: `en.toml`, `es.toml`.

A table is a tag, a key a value, and its list the phrases that carry it. To teach a phrase, add it to a list. Tags
named in
`_NUMERIC` have numbers for values, `true` and `false` are truth values, everything else is text.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib import resources
from typing import Any, Literal

from turnspit.asking.clean import clean

Language = Literal["en", "es"]
Phrase = tuple[tuple[str, ...], dict[str, Any]]

_NUMERIC_TAGS = """
number tens hundred a part and_part day night morning weekday month more later overnight double_oven factor shift
relatives ordinal_word sizes
"""
_NUMERIC = frozenset(_NUMERIC_TAGS.split())
# A longer phrase ("how big a turkey") still means what a word in it does, unless it is a name ("turkey stock").
_INHERITED_TAGS = """
<roast> <generic> <weekday> <holiday> <overnight> <stuffed> <oven> <brine> <state> <recipe>
<mass_unit> <cold_place> <subject> <meal> <cook>
"""
_INHERITED = frozenset(_INHERITED_TAGS.split())
_NAME_TAGS = """
<roast> <generic> <turkey_place> <ingredient> <stock> <subject> <holiday> <state> <thaw>
<volume_unit> <place> <oven_left>
"""
_NAMES = frozenset(_NAME_TAGS.split())
_CORE_TAGS = """
<roast> <state> <stuffed> <mass_unit> <volume_unit> <temperature_unit> <time_unit> <meal> <weekday> <holiday> <number>
<place> <brine> <thaw> <leftovers> <how_long> <how_big> <oven> <convection> <doneness> <salt>
"""
_CORE = frozenset(_CORE_TAGS.split())
_TRUTH = {"true": True, "false": False}


@dataclass(frozen=True, slots=True)
class Vocabulary:
    """One language: its phrases by their first and second word ("" for a single one), the longest first, the words
    that occur in one,
    all words that are known, ordinary ones too, and those that lines turn on: a slip is taken for one of them
    first."""

    language: Language
    phrases: Mapping[str, Mapping[str, tuple[Phrase, ...]]]
    words: frozenset[str]
    known: frozenset[str]
    core: frozenset[str]


@cache
def vocabulary(language: Language) -> Vocabulary:
    """The vocabulary of a language; the other language's nouns stand behind it, for kitchens speak both."""
    own = _tables(language)
    meanings: dict[tuple[str, ...], dict[str, Any]] = {}
    for tag in ("roast", "generic"):
        _add(meanings, tag, {name: [_several(one, language) for one in row] for name, row in own[tag].items()})
    for tag, values in own.items():
        _add(meanings, tag, values)
    for phrase, tags in meanings.items():
        if len(phrase) > 1 and not _NAMES.intersection(tags):
            for word in phrase:
                for tag, value in meanings.get((word,), {}).items():
                    if tag in _INHERITED and (tag != "<mass_unit>" or "<how_big>" in tags):
                        tags.setdefault(tag, value)
    words = frozenset(word for phrase in meanings for word in phrase)
    plain = frozenset(_read(f"{language}_plain.txt").split())
    other = _tables("es" if language == "en" else "en")
    for tag in ("roast", "mass_unit", "volume_unit", "temperature_unit"):
        for value, phrases in other.get(tag, {}).items():
            unknown = [phrase for phrase in phrases if not words.intersection(_split(phrase))]
            _add(meanings, tag, {value: unknown})
    by_start: dict[str, dict[str, list[Phrase]]] = {}
    for phrase, tags in meanings.items():
        second = phrase[1] if len(phrase) > 1 else ""
        by_start.setdefault(phrase[0], {}).setdefault(second, []).append((phrase, tags))
    ordered = {
        first: {second: tuple(sorted(rows, key=lambda row: -len(row[0]))) for second, rows in seconds.items()}
        for first, seconds in by_start.items()
    }
    every = frozenset(word for phrase in meanings for word in phrase)
    core = frozenset(
        word for phrase, tags in meanings.items() if _CORE.intersection(tags) and len(phrase) < 3 for word in phrase
    )
    return Vocabulary(language, ordered, every, every | plain, core)


@cache
def shorthand(language: Language) -> Mapping[str, tuple[str, ...]]:
    """The words that stand for others, clipped or of another tongue, and what they are read as."""
    return {
        word: tuple(read.split()) for group in _tables("shorthand")[language].values() for word, read in group.items()
    }


@cache
def markers() -> Mapping[Language, frozenset[str]]:
    """The words by which a language is known: those that occur in it and not in the other."""
    english, spanish = (
        frozenset(word for phrase in _own_phrases(language) for word in phrase)
        | frozenset(_read(f"{language}_plain.txt").split())
        | frozenset(_tables("shorthand")[language]["clipped"])
        for language in ("en", "es")
    )
    return {"en": english - spanish, "es": spanish - english}


def kind_words(kind: str, language: Language) -> str:
    """What a roast is called: the first phrase of its row."""
    return str(_tables(language)["roast"][kind][0])


def _own_phrases(language: Language) -> list[tuple[str, ...]]:
    return [_split(phrase) for values in _tables(language).values() for row in values.values() for phrase in row]


def _add(meanings: dict[tuple[str, ...], dict[str, Any]], tag: str, values: Mapping[str, list[str]]) -> None:
    for name, phrases in values.items():
        value: Any = float(name) if tag in _NUMERIC else _TRUTH.get(name, name)
        for phrase in phrases:
            meanings.setdefault(_split(phrase), {})[f"<{tag}>"] = value


def _several(roast: str, language: Language) -> str:
    """The plural of a roast: `legs of lamb`, `turkey crowns`, `piernas de cordero`."""
    words = roast.split()
    of = next((at for at, word in enumerate(words) if word in ("of", "de")), len(words))
    head = 0 if language == "es" else of - 1
    if not words[head].endswith("s"):
        words[head] += "es" if language == "es" and words[head][-1] not in "aeiouáéíóú" else "s"
    return " ".join(words)


def _split(phrase: str) -> tuple[str, ...]:
    return tuple(clean(phrase).replace("-", " - ").replace("'", "").split()) if phrase != "-" else ("-",)


@cache
def _tables(name: str) -> Mapping[str, Mapping[str, Any]]:
    return tomllib.loads(_read(f"{name}.toml"))


def _read(name: str) -> str:
    return resources.files(__package__).joinpath(name).read_text(encoding="utf-8")
