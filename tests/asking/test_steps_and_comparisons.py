"""Single steps of a plan, what is done ahead, and how one time compares with another."""

from __future__ import annotations

import re
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, Reply, ask
from turnspit.heat import RoastCase, forecast_roast

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


def _talk(*lines: str) -> list[Reply]:
    replies, talk = [], None
    for text in lines:
        reply, talk = ask(Line(text, NOW), talk, "c")
        replies.append(reply)
    return replies


def test_the_next_step_is_the_first_of_the_plan() -> None:
    plan, step = _talk("16 lb bird, dinner tomorrow at 6", "what's next?")
    assert step.headline == plan.lines[0]
    assert step.intents == ("plan",)


def test_what_is_done_ahead_leaves_the_stuffing_to_the_day() -> None:
    (plain,) = _talk("what can I do the day before")
    assert plain.question is not None
    assert any(caution.rule == "stuffing-just-before" for caution in plain.cautions)
    (frozen,) = _talk("frozen 14 lb turkey, dinner sunday at 2, what can I prep ahead?")
    assert "Thaw" in frozen.headline
    (spanish,) = _talk("qué puedo adelantar")
    assert "El día antes" in spanish.headline


@pytest.mark.parametrize(
    ("text", "other"),
    [
        ("does a stuffed 14 lb turkey take longer", {}),
        ("two 14 lb turkeys together twice as long?", {}),
        ("how long does a frozen 14 lb turkey take compared to thawed", {}),
        ("14 lb turkey with convection, how much faster", {}),
    ],
)
def test_a_comparison_gives_the_other_time_too(text: str, other: dict[str, object]) -> None:
    (reply,) = _talk(text)
    plain = forecast_roast(RoastCase("turkey", 6.35, **other))  # type: ignore[arg-type]
    hours, minutes = divmod(5 * round(plain.ready_min.p10 / 5), 60)
    told = f"{hours} h {minutes} min" if minutes else f"{hours} h"
    assert any(line.split(" it takes ")[-1].split(" takes ")[-1].startswith(told) for line in reply.lines)


def test_minutes_a_pound_are_the_windows_and_no_rule() -> None:
    (reply,) = _talk("how many minutes per pound for a 14 lb turkey")
    line = next(line for line in reply.lines if "minutes a pound" in line)
    low, high = (int(found) for found in re.findall(r"\d+", line)[:2])
    ready = reply.data["forecast"]["ready_min"]
    assert (low, high) == (round(ready["p10"] / 14), round(ready["p90"] / 14))


def test_what_it_loses_is_told_in_percent() -> None:
    (reply,) = _talk("how much does a 15lb turkey lose when cooked")
    assert reply.intents == ("carve",)
    assert "%" in reply.headline


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("is 15 minutes rest enough for a 14 lb turkey", "15 min is short"),
        ("can I rest a 14 lb turkey for 40 minutes", "Yes, 40 min"),
        ("can it rest for 2 hours", "2 h is longer"),
        ("is it safe to leave it in the brine 2 days", "Yes, kept at"),
    ],
)
def test_a_question_of_enough_gets_its_yes_or_no(text: str, told: str) -> None:
    (reply,) = _talk(text)
    assert reply.headline.startswith(told)


def test_height_is_counted_and_said() -> None:
    (reply,) = _talk("we live at 6,200 feet, 16 lb turkey, will it take longer")
    assert any(line.startswith("At sea level") for line in reply.lines)


def test_a_rest_is_judged_by_the_wish_and_the_safe_minimum_is_named() -> None:
    (coasts,) = _talk("tenderloin 118 F, oven off, will it coast to 130")
    assert "130 °F" in coasts.headline
    assert "145 °F" in coasts.headline
    (cold,) = _talk("tenderloin 80 F, oven off, will it coast to 130")
    assert "Back into the hot oven" in cold.headline


def test_an_icy_cavity_is_no_question_of_aromatics() -> None:
    (reply,) = _talk("turkey still icy inside the cavity what now")
    assert reply.intents == ("thaw",)
    assert "onion" not in reply.headline
