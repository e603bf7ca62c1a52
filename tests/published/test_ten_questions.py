"""The ten questions that a chef is asked most, and what the short answer must carry, with the source of each figure."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask

NOW = datetime(2026, 11, 25, 9, tzinfo=ZoneInfo("America/New_York"))

QUESTIONS = [
    # USDA FSIS, Let's Talk Turkey: a pound a person; leftovers half as much again: common practice, no source.
    # Half of it edible: USDA SR28, NDB 05165 to 05168.
    ("how big for 14", "size", ["14 lb", "21 lb", "half of a whole bird is edible"], ["leftovers-days"]),
    # USDA FSIS, Let's Talk Turkey and Turkey Basics: Safe Cooking.
    (
        "it's still frozen",
        "thaw",
        ["30 min a pound", "every half hour", "cook at once", "unstuffed", "half as long again or more"],
        ["thaw-cold-water", "thaw-counter", "from-frozen"],
    ),
    # USDA FSIS, Let's Talk Turkey: the thermometer decides. The window itself is checked below.
    ("how long 16 lb", "roast_time", ["325 °F", "the thermometer decides"], ["poultry-165", "thermometer-decides"]),
    # USDA FSIS, Let's Talk Turkey: innermost thigh, innermost wing, thickest breast.
    (
        "where do I put the probe",
        "doneness",
        ["deepest breast", "inner thigh", "wing joint", "off the bone", "the coldest counts"],
        ["poultry-165"],
    ),
    # FoodSafety.gov, Safe Minimum Internal Temperature Chart: all poultry.
    ("when is it out", "doneness", ["165 °F", "coldest place"], ["poultry-165"]),
    # USDA FSIS, The Color of Meat and Poultry.
    ("it's pink", "safety", ["Colour proves nothing", "165 °F"], ["colour-no-proof"]),
    # Tent about 30 min: common practice, no source. USDA FSIS, Leftovers and Food Safety: hot food at 140 F or above.
    ("it's done early", None, ["tent it", "about 30 min", "140 °F"], ["hot-hold", "two-hours"]),
    # USDA FSIS Meat and Poultry Hotline: 3/4 cup a gallon, overnight to two days, refrigerated.
    (
        "how much salt in the brine",
        "brine",
        ["¾ cup table salt a gallon", "8–48 h", "40 °F"],
        ["brine-cold", "brine-discard"],
    ),
    # USDA FSIS, Stuffing and Food Safety.
    (
        "stuff it?",
        "safety",
        ["apart", "165 °F", "before it leaves the oven"],
        ["stuffing-165", "stuffing-just-before"],
    ),
    # FoodSafety.gov, Cold Food Storage Chart; USDA FSIS, Leftovers and Food Safety.
    (
        "leftovers",
        "leftovers",
        ["Within 2 h", "off the bone", "shallow", "3–4 days", "165 °F"],
        ["two-hours", "leftovers-days", "reheat-165"],
    ),
]


@pytest.mark.parametrize(("text", "intent", "parts", "rules"), QUESTIONS)
def test_the_short_answer_carries(text, intent, parts, rules):
    reply, _ = ask(Line(text, NOW), None, "a")
    words = "\n".join((reply.headline, *reply.lines))
    assert intent in {None, reply.intent}
    for part in parts:
        assert part in words
    cited = [caution.rule for caution in reply.cautions]
    assert set(rules) <= set(cited)
    assert cited[-1] == "local-codes"


def test_sixteen_pounds_take_what_the_trade_says():
    """3 3/4 to 4 1/4 h at 325 F (trade answer; 12 to 15 min a pound and the USDA chart's 4 to 4 1/2 h lie around it)."""
    reply, _ = ask(Line("how long 16 lb", NOW), None, "a")
    ready = reply.data["forecast"]["ready_min"]
    assert ready["p10"] < 240 < ready["p90"]
    assert 215 <= ready["p50"] <= 265
    assert ready["p90"] / ready["p10"] <= 1.5


SPANISH = [
    ("¿de qué tamaño para 14?", "size", ["14 lb", "21 lb", "la mitad"]),
    ("sigue congelado", "thaw", ["30 min por libra", "media hora", "sin relleno", "la mitad más"]),
    ("¿cuánto tarda un pavo de 7 kg?", "roast_time", ["163 °C", "termómetro"]),
    ("¿dónde pongo el termómetro?", "doneness", ["pechuga", "muslo", "ala", "hueso", "74 °C"]),
    ("está rosado", "safety", ["El color no prueba nada", "74 °C"]),
    ("¿cuánta sal en la salmuera?", "brine", ["¾ de taza", "8–48 h"]),
    ("sobras", "leftovers", ["2 h", "3–4 días", "74 °C"]),
]


@pytest.mark.parametrize(("text", "intent", "parts"), SPANISH)
def test_the_short_answer_in_spanish(text, intent, parts):
    reply, _ = ask(Line(text, NOW, units="metric"), None, "a")
    words = "\n".join((reply.headline, *reply.lines))
    assert reply.intent == intent
    for part in parts:
        assert part in words
