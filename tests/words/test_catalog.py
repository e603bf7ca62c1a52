import re
from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from turnspit.message import Message
from turnspit.words import LANGUAGES, Reader, keys, say

NOW = datetime(2026, 11, 25, 9, tzinfo=ZoneInfo("America/New_York"))
SERVICE = Path(__file__).parents[2] / "service" / "turnspit"


def test_a_name_reads_in_each_language():
    assert say(Message("roast-turkey"), Reader(NOW)) == "turkey"
    assert say(Message("roast-turkey"), Reader(NOW, language="es")) == "pavo"


def test_a_text_inside_a_text_brings_its_attributes():
    plan = Message("planning-tie", roast=Message("roast-lamb_leg"))
    assert say(plan, Reader(NOW, language="es")) == "Ate y sazone la pierna de cordero"
    assert say(plan, Reader(NOW)) == "Tie and season the leg of lamb"


def test_every_language_has_every_text():
    english = keys("en")
    assert english
    for language in LANGUAGES:
        assert keys(language) == english


def test_a_key_without_a_text_is_an_error():
    with pytest.raises(KeyError, match="roast-unicorn"):
        say(Message("roast-unicorn"), Reader(NOW))


def test_every_key_named_in_the_code_has_a_text():
    named = {
        (match, path.name)
        for path in SERVICE.rglob("*.py")
        for match in re.findall(r'Message\(\s*"([\w-]+)"', path.read_text(encoding="utf-8"))
    }
    known = keys("en")
    assert {(key, name) for key, name in named if key not in known} == set()
