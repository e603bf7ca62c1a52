"""What is told in passing is answered first: what it reads now, on a probe that is off, eaten raw, or thawed too long."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, Reply, ask

NOW = datetime(2026, 11, 26, 14, 0, tzinfo=ZoneInfo("America/New_York"))


def _ask(text: str) -> Reply:
    return ask(Line(text, NOW), None, "c")[0]


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("pour yesterday's brine over today's chickens", "No: used brine"),
        ("frozen turkey in the sink with the hot tap on", "No, not in warm water"),
        ("left all six frozen turkeys on the loading dock at 7", "for 7 h. Throw it away"),
        ("took the stuffing out the bird, it's 148, everyone's sat down", "it must read 165"),
        ("pulled her at 157, tented, now 162", "162 °F (72 °C) at the wing joint, out of the oven"),
        ("thermometer in the ice water reads 36, breast shows 167", "163 °F (73 °C) at the deepest breast"),
        ("coldest one 71 at the thigh hottest 83", "71 °C (160 °F)"),
        ("coolest of the six is 149, hottest 166", "149 °F (65 °C) at the"),
        ("juices run clear after 40 min, breast reads 160", "160 °F"),
        ("turkey out at 155, tented 20 minutes, now reads 160", "Not safe yet: 160 °F"),
        ("came out at 158, sat ten minutes, reads 162 now", "Not safe yet: 162 °F"),
        ("chicken out of the oven at 150, resting 15 minutes, 157 now", "157 °F (69 °C)"),
        ("my sister licked the spoon from the raw stuffing", "call a doctor"),
        ("turkey from thursday, it's now tuesday", "Throw it away"),
        ("how long will turkey soup keep in the freezer", "In the freezer"),
        ("my mum's on chemo, is pink lamb ok", "No: for anyone"),
        ("does the two hour rule start when we carve", "so from the oven"),
        ("how long can a duck rest before it is kept hot", "Until it nears 140"),
    ],
)
def test_what_is_told_in_passing_is_answered(text: str, part: str) -> None:
    assert part in _ask(text).headline


def test_colour_proves_nothing_beside_a_reading() -> None:
    reply = _ask("thigh 165 but it's bleeding at the bone")
    assert "is enough" in reply.headline
    assert any(line.startswith("Colour proves nothing") for line in reply.lines)


def test_a_bird_thawed_for_a_day_is_planned_for_the_day_of_the_roast() -> None:
    reply = _ask("thawed it friday, roasting saturday")
    assert "Sat" in reply.headline
    assert not any(caution.severity == "stop" for caution in reply.cautions)


@pytest.mark.parametrize(
    "text",
    [
        "turn the oven off and let the bird rest inside 20 minutes",
        "make fresh brine for the second bird",
        "turkey resting on the counter, kitchen smells great",
        "brine mixed last night, turkey goes in now",
        "leg of lamb thawed tuesday roasting friday",
        "how long to brine the chicken",
        "can two birds go in the same tub of brine",
        "take the turkey out of the fridge an hour before it goes in",
        "breakfast at 8, roast chicken on the table at 1",
        "the driver brings 6 turkeys at 9, dinner at 6",
    ],
)
def test_what_is_no_danger_stops_nothing(text: str) -> None:
    assert not any(caution.severity == "stop" for caution in _ask(text).cautions)
