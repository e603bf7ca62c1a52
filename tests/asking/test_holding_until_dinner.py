"""A roast that is done hours before dinner, what is too late, a refrigerator wherever it stands, and a rare wish."""

from dataclasses import replace
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask

EVE = datetime(2026, 12, 24, 14, 30, tzinfo=ZoneInfo("Europe/London"))


def answer(text, now=EVE):
    return ask(Line(text, now), None, "id")[0]


@pytest.mark.parametrize(
    ("text", "until", "by"),
    [
        ("Turkey out of the oven at 3, 76 in the thigh, dinner back to 5. will it hold?", "5 pm", "5 pm"),
        ("turkey done at 4, dinner at 7", "7 pm", "6 pm"),
        ("turkey's out now, dinner pushed to 7, will it hold?", "7 pm", "4:30 pm"),
        ("turkey ready at 1, dinner not till 3", "3 pm", "3 pm"),
        ("bird comes out at 3, not eating till 5.30, will it keep", "5:30 pm", "5 pm"),
        ("pavo listo a las 2, la cena es a las 5, aguanta?", "17:00", "16:00"),
    ],
)
def test_what_waits_for_dinner_is_held_hot_or_for_two_hours(text, until, by):
    reply = answer(text)
    assert until in reply.headline
    assert f"{by}." in reply.headline
    assert {"hot-hold", "two-hours"} <= {caution.rule for caution in reply.cautions}


def test_only_who_asks_whether_it_holds_is_told_yes():
    assert answer("out at 3, dinner at 5, turkey, will it hold").headline.startswith("Yes, if it is held hot")
    assert answer("turkey done at 4, dinner at 7").headline.startswith("Hold it hot")


@pytest.mark.parametrize(
    "text",
    [
        "Turkey out of the oven at 3, 68 in the thigh, dinner back to 5. will it hold?",
        "14 lb turkey, done at 165, dinner at 6",
        "turkey out at 12 for lunch at 1, when in",
        "roast is done at 5, dinner at 5:15",
    ],
)
def test_what_is_not_done_or_waits_for_nothing_is_not_told_to_be_held(text):
    assert "tented about 30 min" not in answer(text).headline


def test_too_late_is_answered_with_a_yes_or_a_no():
    assert answer("18 lb turkey still frozen, is it too late for the fridge, for tomorrow").headline.startswith(
        "Yes, too"
    )
    assert answer("is it too late to start a 5 kg turkey now for dinner at 6?").headline.startswith("Yes, too late.")
    assert answer("is it too late to start a 5 kg turkey now for dinner at 10?").headline.startswith(
        "No, there is time."
    )


@pytest.mark.parametrize(
    "text",
    [
        "22 lb turkey, thawed in the garage fridge, dinner tomorrow at 4",
        "turkey thawed 2 days in the refrigerator in the basement, 14 lb, dinner tomorrow at 4",
        "pavo de 6 kg descongelado en la nevera del garaje, cena mañana a las 20:00",
    ],
)
def test_a_refrigerator_is_one_wherever_it_stands(text):
    assert all(caution.severity != "stop" for caution in answer(text).cautions)


def test_a_garage_is_none():
    assert any(caution.severity == "stop" for caution in answer("turkey thawed in the garage, 14 lb").cautions)


def test_rare_beef_is_planned_as_wished_at_home_with_a_warning_but_not_for_people_at_risk():
    line = Line("prime rib rare, 6.5 lb, dinner at 8", EVE, kitchen="home")
    rare, _ = ask(line, None, "id")
    assert "126 °F" in "\n".join(rare.lines)
    assert {caution.severity for caution in rare.cautions if caution.rule == "meat-145"} == {"warn"}
    pregnant, _ = ask(replace(line, text=f"{line.text}, my wife is pregnant"), None, "id")
    assert any(caution.severity == "stop" for caution in pregnant.cautions)
    unstated = answer(line.text)
    assert any(caution.severity == "stop" for caution in unstated.cautions)
