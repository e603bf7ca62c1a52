"""Conversions that kitchens ask for: what is counted, and ovens with a fan and without."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))


@pytest.mark.parametrize(
    ("text", "said"),
    [
        # published convection rule: 25 F, in metric books 20 C
        ("fan oven for 350F", ("350 °F", "325 °F")),
        ("what is 180 fan in a normal oven", ("180 °C", "200 °C")),
        ("180 con ventilador a horno normal", ("180 °C", "200 °C")),
        # a gas oven has no fan: 200 C is mark 6
        ("convert 180c fan to gas mark", ("180 °C", "gas mark 6")),
        # USDA SR28: a large egg 50 g, a clove of garlic 3 g
        ("2 eggs in grams", ("2 eggs", "100 g")),
        ("3 cloves of garlic in grams", ("3 cloves", "9 g")),
        ("¿cuánto pesa un huevo?", ("1 huevo", "50 g")),
    ],
)
def test_the_answer_gives_both_sides(text: str, said: tuple[str, str]) -> None:
    reply, _ = ask(Line(text, NOW), None, "c")
    assert reply.intent == "convert"
    assert all(part in reply.headline for part in said), reply.headline


def test_a_recipe_is_cut_to_what_there_is() -> None:
    _, talk = ask(Line("scale the mash to 10", NOW), None, "c")
    reply, _ = ask(Line("I have only 700 g potatoes", NOW), talk, "c")
    assert reply.intent == "scale"
    assert reply.data["scale"]["factor"] == pytest.approx(0.7 / 2.54, rel=0.05)
    alone, _ = ask(Line("I have only 700 g potatoes", NOW), None, "c")
    assert alone.question is not None
