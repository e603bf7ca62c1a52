"""Answers that home cooks were given beside the point: the asked limit, the asked hours, the wish, no thermometer."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, Reply, ask

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


def reply(*lines: str) -> Reply:
    conversation = None
    for line in lines:
        told, conversation = ask(Line(line, NOW), conversation, "homes")
    return told


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("how long is too long to brine turkey breast", "No longer than 8 h"),
        ("longest i can dry brine a turkey", "No longer than 48 h"),
        ("Brining a 14 lb turkey overnight, how much salt?", "12 h (8–48 h will do)"),
        ("dry brine 14 lb for 36 hours", "36 h (24–48 h will do)"),
        ("5 kg turkey, when do I salt it", "Salt the 5 kg (11 lb) turkey dry"),
        ("9.5 lb injected bird, do I salt it still", "No brine and no added salt"),
        ("How do I know the pork's cooked without a thermometer?", "There is no sure way without a thermometer"),
        ("¿cómo sé si el pollo está hecho sin termómetro?", "Sin termómetro no hay manera segura"),
        ("tenderloin, medium rare, when is it done", "resting takes it to about 135 °F"),
        (
            "Do I have to cook stuffing to 165 even if it's outside the bird",
            "Yes, 165 °F (74 °C) is what it must reach",
        ),
        (
            "half the guests are vegetarian, 16 of us, how big a bird",
            "About 8 lb (3.6 kg) of turkey for the 8 of 16 who eat it",
        ),
        ("somos 16 y la mitad son vegetarianos, qué tamaño de pavo", "para los 8 de 16 que lo comen"),
        ("do i leave the turkey to sit 20 minutes or an hour", "30–45 min before carving"),
        ("how long can sprouts and roast spuds sit on the hot plate", "As long as every part stays at 140 °F"),
        ("how long can i keep gravy hot", "As long as every part stays at 140 °F"),
        ("what temperature for medium rare lamb leg", "resting takes it to about 135 °F"),
        ("is medium rare lamb leg safe", "Not at 135 °F"),
        ("recipe for 8, scale to 5", "0.625"),
        ("duck to 63 C ok?", "Not at 63 °C (145 °F): it must reach 74 °C"),
    ],
)
def test_the_headline_answers_what_is_asked(line, said):
    assert said in reply(line).headline


def test_dry_salt_is_told_in_the_salt_that_was_named_for_the_whole_bird_and_with_its_days():
    told = reply("dry brine, how much kosher per lb, 14lb, how many days before")
    words = " ".join((told.headline, *told.lines))
    assert "kosher salt a pound" in words
    assert "44 g" in words
    assert "24–48 h" in words


def test_a_shoulder_that_stands_still_is_said_to_stall():
    told = reply("pork shoulder stuck at 160 for two hours!!!")
    assert any(line.startswith("It stalls") for line in told.lines)


def test_a_wish_is_pulled_at_the_same_reading_whether_its_end_or_its_time_is_asked():
    asked_when = reply("when is a 4 lb tenderloin done, medium rare")
    asked_long = reply("4 lb tenderloin medium rare, how long at 425")
    out = next(line for line in asked_long.lines if line.startswith("Out when"))
    assert out in (asked_when.headline, *asked_when.lines)


def test_a_guest_at_greater_risk_stays_in_a_plan_that_grows():
    told = reply("16 lb bird, dinner tomorrow at 6", "my sister is pregnant", "make it 20 lb")
    assert "at-risk" in {caution.rule for caution in told.cautions}


def test_a_plan_carries_the_cautions_of_this_plan_alone():
    assert [said.rule for said in reply("leg of lamb 2.5 kg for 7pm").cautions] == ["meat-145", "local-codes"]


def test_who_eats_none_is_told_in_a_talk_too():
    told = reply("how big a turkey for 16", "half of them are vegetarian")
    assert told.headline.startswith("About 8 lb (3.6 kg) of turkey for the 8 of 16")


def test_what_is_in_the_house_need_not_be_bought():
    bought = reply("I've a goose, 5.2kg, dinner christmas day at 3").data["plan"]["tasks"]
    asked = reply("goose 5.2kg, dinner christmas day at 3").data["plan"]["tasks"]
    assert [task["id"] for task in asked] == ["shop", *(task["id"] for task in bought)]


def test_a_cup_is_that_of_the_place():
    perth = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("Australia/Perth"))
    told, _ = ask(Line("500ml chicken stock into cups", perth), None, "homes")
    assert told.headline == "500 mL = 2 cups"
    assert "250 mL" in " ".join(told.assumptions)
