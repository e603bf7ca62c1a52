"""Slips of the thumb, words run together, and words that must be left alone."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking.clean import clean
from turnspit.asking.contract import Line
from turnspit.asking.reading import read_line
from turnspit.asking.spelling import correct
from turnspit.asking.vocabulary import Language

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


@pytest.mark.parametrize(
    ("typed", "read"),
    [
        ("trukey", "turkey"),
        ("turky", "turkey"),
        ("chiken", "chicken"),
        ("frozn", "frozen"),
        ("stufed", "stuffed"),
        ("leftovres", "leftovers"),
        ("brien", "brine"),
        ("thrusday", "thursday"),
        ("thermomter", "thermometer"),
        ("utrkey", "turkey"),
        ("urkey", "turkey"),
        ("thw", "thaw"),
    ],
)
def test_slip_is_put_right(typed: str, read: str) -> None:
    assert correct(typed, "en").words == (read,)


@pytest.mark.parametrize(
    ("typed", "read"),
    [("lbturkey", ("lb", "turkey")), ("dinnerat", ("dinner", "at")), ("howlong", ("how", "long"))],
)
def test_words_run_together_are_parted(typed: str, read: tuple[str, ...]) -> None:
    assert correct(typed, "en").words == read


@pytest.mark.parametrize(
    "word",
    ["bread", "breath", "water", "word", "house", "there", "heart", "chick", "thin", "salad", "bind", "zzzz", "duct"],
)
def test_ordinary_word_or_a_far_one_is_left_alone(word: str) -> None:
    assert correct(word, "en").words == (word,)


@pytest.mark.parametrize(
    ("word", "language"),
    [("mutton", "en"), ("cricket", "en"), ("station", "en"), ("ticket", "en"), ("meaning", "en"), ("gano", "es")],
)
def test_word_of_everyday_language_is_no_slip(word: str, language: Language) -> None:
    assert correct(word, language).words == (word,)


@pytest.mark.parametrize(
    ("typed", "language", "read"),
    [
        ("brst", "en", "breast"),
        ("stfd", "en", "stuffed"),
        ("bnls", "en", "boneless"),
        ("pute", "en", "turkey"),
        ("hetelucht", "en", "fan"),
        ("gigot", "en", "leg of lamb"),
        ("cnto", "es", "cuanto"),
    ],
)
def test_shorthand_is_written_out(typed: str, language: Language, read: str) -> None:
    assert correct(typed, language).words == tuple(read.split())


def test_slashes_of_tickets_are_written_out() -> None:
    assert clean("b/in w/ stuffing, w/o gravy") == "bone in with  stuffing, without gravy"


def test_a_correction_that_turns_the_answer_is_said() -> None:
    assert read_line(Line("frozn 12 lb chiken, diner at 7", NOW), None).corrections == (
        ("frozn", "frozen"),
        ("chiken", "chicken"),
    )
    assert read_line(Line("12 lb bird, diner tomorow at 7", NOW), None).corrections == ()


def test_spanish_is_corrected_to_spanish() -> None:
    assert correct("congelao", "es").words == ("congelado",)
    assert read_line(Line("pabo de 7 kilos para la cena a las 9", NOW), None).understood["roast"]["kind"] == "turkey"
