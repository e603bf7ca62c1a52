"""A talk that turns aside, comes back to its dinner, or is told what changes nothing."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, Reply, ask

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


def last(*lines: str) -> Reply:
    """The reply to the last of the lines."""
    conversation = None
    for text in lines:
        reply, conversation = ask(Line(text, NOW), conversation, "talk")
    return reply


@pytest.mark.parametrize(
    "lines",
    [
        ("turkey was left on the table all night", "how many days is the rest in the fridge good for?"),
        ("sobró pavo de anoche, quedó afuera toda la noche", "lo que sí refrigeré, ¿cuántos días dura?"),
    ],
)
def test_hours_that_something_stood_out_are_no_hours_in_the_refrigerator(lines: tuple[str, ...]) -> None:
    reply = last(*lines)
    assert reply.intent == "leftovers"
    assert "3–4 d" in reply.headline
    assert "throw it away" in reply.headline or "tírelo" in reply.headline
    assert any(caution.rule == "two-hours" and caution.severity == "stop" for caution in reply.cautions)


def test_an_oven_that_went_off_is_turned_on_again_first() -> None:
    for said in (
        "turned the oven off by accident!! stuffing 141",
        "oops I turned the oven off by mistake, breast 141",
    ):
        assert last("16 lb stuffed turkey, dinner today at 5", said).headline.startswith("Oven back on now")
    assert last("pavo relleno de 6 kg, cena a las 5", "se apagó el horno, relleno a 61").headline.startswith(
        "Encienda"
    )


def test_an_oven_turned_off_on_purpose_is_left_off() -> None:
    assert "back on" not in last("16 lb turkey, dinner at 5", "oven off to let it coast, thigh 166").headline


def test_a_plan_with_its_stuffing_and_no_reading_is_a_plan() -> None:
    said = "El pavo relleno (5.200 g) tiene que estar listo mañana al mediodía y solo tengo un horno"
    assert last(said).headline.startswith("Meta el pavo")


def test_what_changes_nothing_is_told_so() -> None:
    plan = last("16 lb turkey, dinner at 6").headline
    assert last("16 lb turkey, dinner at 6", "make it nicer").headline == f"No change taken from that: {plan}"
    assert last("16 lb turkey, dinner at 6", "make it 18 lb").headline.startswith("Put the 18 lb")


def test_a_question_in_between_gives_the_dinner_back() -> None:
    lines = ("14 lb turkey, stuffed, dinner tomorrow at 6", "is it ok to stuff it tonight?", "fine, no stuffing then")
    assert last(*lines).intent == "plan"
    assert last(*lines).headline.startswith("Put the 14 lb (6.4 kg) turkey in tomorrow")
