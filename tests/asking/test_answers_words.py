"""The words of the answers: every text is used, every path can be shown, every offered line can be read."""

import re
from datetime import datetime
from functools import cache
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask, read_line
from turnspit.asking.moves import WORDS
from turnspit.heat import KINDS, roast
from turnspit.message import Message
from turnspit.words import Reader, keys, say

NOW = datetime(2026, 11, 25, 9, tzinfo=ZoneInfo("America/New_York"))
SERVICE = Path(__file__).parents[2] / "service" / "turnspit"
SOURCE = "\n".join(path.read_text(encoding="utf-8") for path in (SERVICE / "asking").rglob("*.py"))
STARTS = {*re.findall(r'f"(asking-[\w-]+?)\{', SOURCE), *WORDS.values()}
ASKING = sorted(key for key in keys("en") if key.startswith("asking-"))

PATHS = [
    "roast.kind",
    "roast.mass_kg",
    "roast.count",
    "roast.state",
    "roast.stuffed",
    "roast.bone_in",
    "roast.injected",
    "roast.target_c",
    "covers",
    "leftovers_wanted",
    "serve_at",
    "start_at",
    "oven.temperature_c",
    "oven.convection",
    "oven.count",
    "brine.wanted",
    "brine.hours",
    "brine.water_l",
    "brine.vessel_l",
    "brine.salt_kind",
    "amount.value",
    "amount.unit",
    "amount.item",
    "amount.target_unit",
    "scale.from",
    "scale.to",
    "scale.factor",
    "reading.temperature_c",
    "reading.place",
    "reading.at",
    "reading.oven_left_on",
    "elapsed_h",
    "altitude_m",
    "subject",
    "units",
]


@pytest.mark.parametrize("key", ASKING)
def test_every_text_is_used(key):
    assert f'"{key}"' in SOURCE or any(key.startswith(start) for start in STARTS)


@pytest.mark.parametrize("path", PATHS)
def test_every_path_of_the_contract_can_be_shown(path):
    assert f"asking-value-{path.replace('.', '-')}" in keys("en")


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("stuffed", [False, True])
def test_every_station_has_a_name(kind, stuffed):
    row = roast(kind)
    for station in row.places(stuffed and row.poultry):
        assert f"asking-station-{station.name}" in keys("en")


VALUES = {
    "kg": 9.07,
    "c": 74.0,
    "count": 12,
    "at": NOW.replace(hour=19),
    "unit": Message("asking-unit-oz"),
    "roast": Message("roast-turkey"),
}
OFFERED = [key for key in ASKING if key.startswith(("asking-next-", "asking-choice-"))]
TALK = "16 lb turkey for 10, dinner at 6"
PLATICA = "pavo de 7 kg para 10, cena a las 8"


@pytest.mark.parametrize("key", OFFERED)
@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("clock", ["12h", "24h"])
def test_an_offered_line_is_understood_in_english(key, units, clock):
    _understood(key, Reader(NOW, "en", units, clock), TALK)


@pytest.mark.parametrize("key", OFFERED)
def test_an_offered_line_is_understood_in_spanish(key):
    _understood(key, Reader(NOW, "es", "metric", "24h"), PLATICA)


TALKS = {
    "asking-next-in-unit": "2 cups flour in grams",
    "asking-choice-": "brine for a 16 lb turkey",
    "asking-next-kosher-salt": "brine for a 16 lb turkey",
}
"""Where a line is offered in another talk than the dinner's."""


def _understood(key, reader, talk):
    talk = next((other for start, other in TALKS.items() if key.startswith(start)), talk)
    text = say(Message(key, **VALUES), reader)
    reading = read_line(Line(text, NOW), _after(talk))
    assert reading.intents != ("unknown",), text


@cache
def _after(talk):
    return ask(Line(talk, NOW), None, "a")[1]
