"""The engine under the readers: what a pattern matches, and which rule goes first."""

from __future__ import annotations

import pytest

from turnspit.asking.grammar import Grammar, Item


def line(*words: str) -> list[Item]:
    tags = {"6": "<number>", "7": "<number>", "the": "<soft>", "about": "<soft>", "lb": "<unit>"}
    return [
        Item(word, {f"'{word}": word} | ({tags[word]: word} if word in tags else {}), place, place + 1)
        for place, word in enumerate(words)
    ]


def test_rule_takes_words_tags_and_what_may_be_missing() -> None:
    grammar = Grammar("<clock>")

    @grammar.rule("half past <number> sharp?")
    def _half_past(hour: str) -> str:
        return f"{hour}:30"

    (item,) = grammar.reduce(line("half", "past", "6"))
    assert item.tags == {"<clock>": "6:30"}
    assert item.words == "half past 6"
    assert item.rule == "<clock>: half past <number> sharp?"
    assert len(grammar.reduce(line("half", "past", "6", "sharp"))) == 1


def test_soft_words_may_stand_between_and_others_may_not() -> None:
    grammar = Grammar("<mass>")

    @grammar.rule("<number> <unit>")
    def _mass(value: str, unit: str) -> str:
        return value + unit

    assert len(grammar.reduce(line("6", "about", "lb"))) == 1
    assert len(grammar.reduce(line("6", "large", "lb"))) == 3


def test_the_rule_written_first_wins_and_one_that_passes_leaves_the_next() -> None:
    grammar = Grammar("<value>")

    @grammar.rule("<number> <number>")
    def _pair(first: str, second: str) -> str | None:
        return f"{first} and {second}" if first < second else None

    @grammar.rule("<number>")
    def _one(value: str) -> str:
        return value

    assert [item.tags.get("<value>") for item in grammar.reduce(line("6", "7"))] == ["6 and 7"]
    assert [item.tags.get("<value>") for item in grammar.reduce(line("7", "6"))] == ["7", "6"]


def test_alternatives_keep_one_place_for_their_value() -> None:
    grammar = Grammar("<value>")

    @grammar.rule("at|<number> <unit>?")
    def _either(value: str | None, unit: str | None) -> tuple[str | None, str | None]:
        return value, unit

    assert grammar.reduce(line("at"))[0].tags["<value>"] == (None, None)
    assert grammar.reduce(line("6", "lb"))[0].tags["<value>"] == ("6", "lb")


def test_keeping_rule_leaves_its_parts_their_meaning() -> None:
    grammar = Grammar("<out>")

    @grammar.rule("left <unit> out", keeps=True)
    def _out(_: str) -> str:
        return "out"

    (item,) = grammar.reduce(line("left", "lb", "out"))
    assert item.tags["<unit>"] == "lb"
    assert item.tags["<out>"] == "out"


def test_pattern_may_not_start_with_what_may_be_missing() -> None:
    grammar = Grammar("<x>")
    with pytest.raises(ValueError, match="starts with an element that may be missing"):
        grammar.rule("at? <number>")(lambda value: value)


def test_a_pattern_may_say_what_must_not_come_next() -> None:
    grammar = Grammar("<count>")

    @grammar.rule("<number> of? !<unit>")
    def _count(value: str) -> str:
        return value

    assert "<count>" in grammar.reduce(line("6", "of", "birds"))[0].tags
    assert "<count>" not in grammar.reduce(line("6", "the", "lb"))[0].tags


def test_a_pattern_may_say_what_must_stand_before() -> None:
    grammar = Grammar("<clock>")

    @grammar.rule("^half|past <number>")
    def _clock(value: str) -> str:
        return value

    assert "<clock>" in grammar.reduce(line("past", "the", "6"))[2].tags
    assert "<clock>" not in grammar.reduce(line("lb", "6"))[1].tags
