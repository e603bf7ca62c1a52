"""Cooling asked in words: hours, the verdict of the two stages, the depth that would do."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask
from turnspit.heat import ChillCase
from turnspit.safety import cooling_case, depth_that_cools, plan_cooling

NOW = datetime(2026, 11, 27, 20, tzinfo=ZoneInfo("America/New_York"))


def said(text, kitchen=None):
    return ask(Line(text, NOW, kitchen=kitchen), None, "c")[0]


def severity(reply):
    return reply.data["safety"]["findings"][0]["severity"]


def test_a_pot_of_stock_gets_the_hours_of_the_heat_room() -> None:
    reply = said("how long will 4 litres of stock take to cool")
    plan = plan_cooling(cooling_case("stock", litres=4.0))
    assert reply.data["cooling"]["total_h"] == plan.total_h.document(2)
    assert severity(reply) == plan.finding.severity == "stop"
    assert "too slow, the limit is 2 h and 6 h in all" in reply.headline
    assert "21 °C" in reply.headline


def test_the_same_question_in_spanish_is_the_same_answer() -> None:
    reply = said("cuánto tarda en enfriarse 4 litros de caldo")
    assert reply.data["cooling"] == said("how long will 4 litres of stock take to cool").data["cooling"]
    assert "demasiado lento" in reply.headline


@pytest.mark.parametrize(
    ("text", "verdict", "lead"),
    [
        ("will a 3 inch deep pan of sliced turkey make it in the fridge", "stop", "No:"),
        ("will a half inch deep pan of sliced turkey cool in time in the fridge", "ok", "Yes:"),
        ("¿una bandeja de pavo de 8 cm de fondo se enfría a tiempo en la nevera?", "stop", "No:"),
        ("8 quarts of broth in a stockpot in the walk-in at 36, will it cool in time", "stop", "No:"),
        ("will 8 quarts of broth cool in time in an ice bath", "ok", "Yes:"),
    ],
)
def test_whether_it_makes_the_two_stages_is_said_first(text, verdict, lead) -> None:
    reply = said(text)
    assert severity(reply) == verdict
    assert reply.headline.startswith(lead)
    assert "cooling-two-stage" in {caution.rule for caution in reply.cautions}


@pytest.mark.parametrize(
    "text", ["what depth to cool 20 lb carved meat", "¿a qué profundidad enfrío 9 kg de carne trinchada?"]
)
def test_the_depth_that_would_do_comes_with_its_pans(text) -> None:
    reply = said(text)
    deepest_mm = depth_that_cools(ChillCase("beef", "slab", (25.0,)))
    assert deepest_mm is not None
    assert reply.data["cooling"]["depth_mm"] == int(deepest_mm)
    assert "25 mm" in reply.headline
    assert any("3 full hotel pans" in line or "3 bandejas enteras" in line for line in reply.lines)
    assert reply.intents != ("carve",)


def test_a_depth_that_is_too_much_is_answered_with_one_that_is_not() -> None:
    reply = said("cooling 15 lb of carved turkey in hotel pans 4 inches deep")
    told_mm = reply.data["cooling"]["depth_mm"]
    assert plan_cooling(ChillCase("turkey", "slab", (float(told_mm),))).finding.severity == "ok"
    assert "no deeper than 1 in" in reply.lines[0]


def test_a_whole_roast_is_to_be_carved_first() -> None:
    reply = said("how long does a whole roast turkey take to cool in the fridge")
    assert severity(reply) == "stop"
    assert "slice it first" in reply.lines[0]
    assert any("14 lb" in taken for taken in reply.assumptions)


def test_a_talk_keeps_the_amount_and_the_place() -> None:
    talk = None
    for text in ("how long will 4 litres of stock take to cool", "and in an ice bath", "what if it is 8 litres"):
        reply, talk = ask(Line(text, NOW), talk, "c")
    iced = plan_cooling(cooling_case("stock", "ice_bath", litres=8.0))
    assert reply.data["cooling"]["total_h"] == iced.total_h.document(2)


def test_hot_food_may_go_in_but_not_deep_and_the_amount_is_asked() -> None:
    reply = said("can I put the hot gravy straight in the fridge")
    assert reply.headline.startswith("Yes, hot and at once, but not in a deep pot")
    assert reply.question is not None
    assert severity(reply) == "info"


def test_a_warm_refrigerator_never_gets_it_cold() -> None:
    reply = said("will a 3 inch pan of turkey cool in time in a fridge at 45")
    assert reply.headline.startswith("Never")
    assert "cold-hold" in {caution.rule for caution in reply.cautions}


@pytest.mark.parametrize(
    "text", ["how long to cool the brine", "how long should it cool before carving", "how long to thaw in the fridge"]
)
def test_what_is_cooled_for_another_reason_is_no_cooling(text) -> None:
    assert "cooling" not in said(text).data
