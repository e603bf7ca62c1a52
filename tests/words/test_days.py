"""Days as headings."""

from datetime import datetime

import pytest

from turnspit.words import Reader
from turnspit.words.days import day_heading, day_name
from turnspit.words.reader import Language

AT = datetime.fromisoformat("2026-11-26T23:30:00-05:00")


@pytest.mark.parametrize(("language", "name"), [("en", "Thursday, November 26"), ("es", "jueves, 26 de noviembre")])
def test_a_day_is_named_in_its_own_zone(language: Language, name: str) -> None:
    assert day_name(AT, Reader(AT, language)) == name
    assert day_heading(AT, Reader(AT, language)) == name[0].upper() + name[1:]
