"""The figures that docs/brine.md quotes are those that the code gives."""

import re
from pathlib import Path

import pytest

from turnspit.brine import BrineCase, plan_brine, unaided_cooling

PAGE = " ".join((Path(__file__).parents[2] / "docs" / "brine.md").read_text(encoding="utf-8").split())
POUND_KG, GALLON_L = 0.45359237, 3.785411784
EIGHTEEN = BrineCase(mass_kg=18 * POUND_KG, vessel_l=5 * GALLON_L)


def test_the_vessel_of_an_18_lb_bird():
    plan = plan_brine(EIGHTEEN)
    largest_lb = plan.largest_kg / POUND_KG
    said = f"An 18 lb bird wants {plan.vessel_needed_l:.1f} L and {plan.water_l:.1f} L of brine in a 5 gallon bucket"
    assert f"{said}, which takes up to {largest_lb:.0f} lb" in PAGE


def test_the_salt_of_an_18_lb_bird():
    plan = plan_brine(EIGHTEEN)
    salt = plan.finished_salt_percent
    assert f"{plan.hours:.0f} hours: {salt.p10:.1f} - {salt.p50:.1f} - {salt.p90:.1f} percent" in PAGE
    sodium = plan.sodium_mg_per_serving
    assert f"{round(sodium.p10, -1):.0f} - {round(sodium.p90, -1):.0f} mg of sodium in 85 g" in PAGE


def test_the_strong_brine_and_the_mild_one():
    strong = plan_brine(BrineCase(mass_kg=18 * POUND_KG, strength_percent=13.0, hours=16.0))
    assert f"near {strong.finished_salt_percent.p50:.1f} percent after 16 hours" in PAGE
    mild = plan_brine(BrineCase(strength_percent=3.72))
    assert f"It gives {mild.hours_low:.0f} hours at 3.72 percent" in PAGE


def test_a_pot_without_ice():
    said = re.search(r"10 L takes about (\d+) hours in the refrigerator \((\d+) to (\d+);", PAGE)
    hours = unaided_cooling(10.0)
    assert [float(number) for number in said.groups()] == pytest.approx([hours.p50, hours.p10, hours.p90], rel=0.1)
