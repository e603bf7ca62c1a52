"""The words as data: every tag that a rule asks for exists, both languages know it, and phrases are written plainly."""

from __future__ import annotations

import re
import tomllib
from importlib import resources
from pathlib import Path

import pytest

import turnspit.asking
from turnspit.asking.clean import clean
from turnspit.asking.readers import GRAMMARS
from turnspit.asking.vocabulary import kind_words, vocabulary

ROOM = Path(turnspit.asking.__file__).parent
# The kinds of the ask contract; the heat room knows a few more, which no line names by itself.
KINDS = [
    "turkey",
    "turkey_breast",
    "chicken",
    "capon",
    "duck",
    "goose",
    "game_hen",
    "beef_rib",
    "beef_tenderloin",
    "beef_round",
    "pork_loin",
    "pork_shoulder",
    "fresh_ham",
    "lamb_leg",
    "veal_loin",
]
# Tags that tokens carry by their shape, and those that readers put on an item.
BY_SHAPE = {"<number>", "<fraction>", "<slashed>", "<ordinal>", "<date>", "<hm>", "<h_m>", "<temperature_read>"} | {
    "<denied_value>"
}


def tables(language: str) -> dict[str, dict[str, list[str]]]:
    text = resources.files("turnspit.asking.vocabulary").joinpath(f"{language}.toml").read_text(encoding="utf-8")
    return tomllib.loads(text)


def given() -> set[str]:
    return {rule.gives for grammar in GRAMMARS for rule in grammar.rules}


def test_every_tag_that_code_asks_for_is_given_by_something() -> None:
    known = {f"<{tag}>" for tag in tables("en") | tables("es")} | given() | BY_SHAPE
    asked: dict[str, str] = {}
    for path in [*ROOM.glob("*.py"), *ROOM.glob("readers/**/*.py"), *ROOM.glob("intents/*.py")]:
        if path.name != "grammar.py":
            asked |= dict.fromkeys(re.findall(r"(?<!\?P)<[a-z_]+>", path.read_text(encoding="utf-8")), path.name)
    assert {tag: name for tag, name in asked.items() if tag not in known and tag not in ("<tag>", "<b>")} == {}


def test_every_table_is_asked_for_somewhere() -> None:
    code = "".join(
        path.read_text(encoding="utf-8")
        for path in [*ROOM.glob("*.py"), *ROOM.glob("readers/**/*.py"), *ROOM.glob("intents/*.py")]
    )
    assert sorted(tag for tag in tables("en") | tables("es") if f"<{tag}>" not in code) == []


@pytest.mark.parametrize("language", ["en", "es"])
def test_phrases_are_plain_and_stand_once_in_a_table(language: str) -> None:
    for tag, values in tables(language).items():
        phrases = [phrase for row in values.values() for phrase in row]
        assert len(phrases) == len(set(phrases)), f"{tag}: {[p for p in phrases if phrases.count(p) > 1]}"
        for phrase in phrases:
            assert phrase == phrase.lower().strip(), f"{tag}: {phrase!r}"
            assert "'" not in phrase, f"{tag}: {phrase!r}"


def test_both_languages_name_the_same_roasts_and_dangers() -> None:
    assert set(tables("en")["roast"]) == set(tables("es")["roast"]) == set(KINDS)
    assert set(tables("es")["danger"]) <= set(tables("en")["danger"])


def test_values_are_alike_in_both_languages() -> None:
    for tag in (
        "state",
        "stuffed",
        "bone_in",
        "injected",
        "salt",
        "place",
        "meal",
        "doneness",
        "mass_unit",
        "volume_unit",
    ):
        assert set(tables("es")[tag]) <= set(tables("en")[tag]), tag


@pytest.mark.parametrize("kind", KINDS)
def test_a_roast_is_called_by_a_name_that_reads_back(kind: str) -> None:
    for language in ("en", "es"):
        words = kind_words(kind, "es" if language == "es" else "en")
        known = vocabulary("es" if language == "es" else "en")
        first, *rest = clean(words).split()
        phrases = known.phrases[first].get(rest[0] if rest else "", ())
        assert any(phrase == (first, *rest) and tags.get("<roast>") == kind for phrase, tags in phrases)
