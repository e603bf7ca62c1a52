"""A wished end is told from a reading, and the cold of a refrigerator or the heat of the day from both."""

from __future__ import annotations

from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import ask
from turnspit.asking.contract import Line
from turnspit.asking.reading import flat, read_line

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


def understood(text: str) -> dict[str, Any]:
    return flat(read_line(Line(text, NOW), None).understood)


@pytest.mark.parametrize(
    ("text", "celsius"),
    [
        ("lamb legs 2.6kg x 9, boned and rolled, 58 core", 58),
        ("veal loin 3kg boneless, 160 oven, 60 internal: mins?", 60),
        ("rosbif 1,5 kg a 54 grados de corazon, horno 120", 54),
        ("pork shoulder 2,8 kg 170 until 85 core", 85),
        ("breast 150, target 160", 71.11),
        ("rib core 48, want 54", 54),
    ],
)
def test_end_that_is_wished_is_no_reading_of_it(text: str, celsius: float) -> None:
    found = understood(text)
    assert found["roast.target_c"] == celsius
    assert found.get("reading.temperature_c") != celsius


@pytest.mark.parametrize(
    ("text", "celsius"),
    [
        ("lamb leg at 58 core now, how long", 58),
        ("core temp 47, beef tenderloin", 47),
        ("core 62 on the pork loin, done?", 62),
    ],
)
def test_core_that_is_probed_is_no_wish(text: str, celsius: float) -> None:
    found = understood(text)
    assert found["reading.temperature_c"] == celsius
    assert "roast.target_c" not in found


@pytest.mark.parametrize(
    "text",
    [
        "8kg frozen, fridge 4 deg",
        "18 lb frozen, walkin at 38",
        "pavo congelado 6 kilos, nevera a 4 grados",
        "thaw 6 kg in a 3 degree fridge",
    ],
)
def test_place_where_it_thaws_is_not_probed(text: str) -> None:
    assert "reading.temperature_c" not in understood(text)
    assert read_line(Line(text, NOW), None).intents == ("thaw",)


@pytest.mark.parametrize("text", ["breast 150, target 160", "thigh 60 target 70"])
def test_bird_whose_breast_or_thigh_is_named_is_never_taken_for_beef(text: str) -> None:
    reply, _ = ask(Line(text, NOW), None, "one")
    assert "beef" not in " ".join(reply.document()["assumptions"])
    assert "165" in reply.document()["answer"]["headline"] or "74" in reply.document()["answer"]["headline"]


@pytest.mark.parametrize(
    "text",
    [
        "gigot d'agneau 2,2 kg, pink",
        "pata de cordero rosada, 2,5 kg",
        "Beef fillet 1200 gram rosé",
        "ribs of beef 5kg, pink",
    ],
)
def test_pink_of_beef_and_lamb_is_a_wish(text: str) -> None:
    reading = read_line(Line(text, NOW), None)
    assert flat(reading.understood)["roast.target_c"] == 57
    assert reading.intents != ("safety",)


@pytest.mark.parametrize(
    "text", ["lamb is pink inside, ok?", "chicken 2 kg pink", "pollo rosado", "is the pork loin pink"]
)
def test_pink_elsewhere_is_a_fear(text: str) -> None:
    reading = read_line(Line(text, NOW), None)
    assert reading.intents == ("safety",)
    assert "roast.target_c" not in flat(reading.understood)


@pytest.mark.parametrize(
    ("text", "celsius"),
    [
        ("duck of 2,3 kilo done in 2 hours by 180", 180),
        ("beef tenderloin 1,6 kg, oven at 80, how long", 80),
        ("turkey 9 kg, roast at 160 fan", 160),
    ],
)
def test_oven_of_who_cooks_in_celsius(text: str, celsius: float) -> None:
    found = understood(text)
    assert found["oven.temperature_c"] == celsius
    assert "roast.target_c" not in found
    assert "reading.temperature_c" not in found
