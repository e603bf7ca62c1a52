import re
from datetime import UTC, datetime
from fractions import Fraction

import pytest

from turnspit.brine import BrineCase, plan_brine
from turnspit.brine.geometry import geometry
from turnspit.brine.salts import usual_cups_of_salt
from turnspit.message import Message
from turnspit.reference import table
from turnspit.words import LANGUAGES, Reader, say

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
CASES = [
    BrineCase(),
    BrineCase(mass_kg=8.16, vessel_l=18.9, sugar_percent=2.0),
    BrineCase(mass_kg=10.9, vessel_l=18.9, salt_kind="flake_kosher"),
    BrineCase(mass_kg=10.9, strength_percent=13.0, hours=30.0),
    BrineCase(mass_kg=10.9, hours=3.0, water_l=2.0),
    BrineCase(mass_kg=6.0, hours=60.0, water_l=18.0, vessel_l=20.0),
    BrineCase(mass_kg=6.0, strength_percent=5.48, hours=2.0),
    BrineCase(mass_kg=6.0, sold_as="kosher"),
    BrineCase(mass_kg=6.0, sold_as="injected", method="dry"),
    BrineCase(mass_kg=6.0, sold_as="plain", method="dry"),
    BrineCase(mass_kg=11.0, count=10, vessel_l=150.0),
    BrineCase(kind="pork_loin", mass_kg=0.5, method="equilibrium"),
    *(BrineCase(kind=kind, mass_kg=2.0) for kind in sorted({str(row["kind"]) for row in table("salt_geometry")})),
]


@pytest.mark.parametrize("case", CASES, ids=str)
def test_every_plan_can_be_said_in_every_language_and_unit(case):
    plan = plan_brine(case)
    said = [plan.headline, *plan.steps, *plan.notes, *plan.assumptions, *(c.message for c in plan.cautions)]
    for language in LANGUAGES:
        for units in ("us", "metric"):
            reader = Reader(NOW, language=language, units=units)
            for message in said:
                text = say(message, reader)
                assert text
                assert "brine-" not in text


def test_every_salt_and_vessel_has_a_name():
    for reader in (Reader(NOW), Reader(NOW, language="es")):
        for row in table("brine_vessels"):
            assert say(Message(f"brine-vessel-{row['key']}"), reader)
        for row in table("salts"):
            assert say(Message(f"brine-salt-{row['kind']}"), reader)


def test_the_first_line_can_be_acted_on():
    line = say(plan_brine(BrineCase(mass_kg=8.165, vessel_l=18.93)).headline, Reader(NOW))
    assert line.startswith(
        "Brine for the 18 lb (8.2 kg) turkey: 2.6 gal (9.8 L) of water in all and 564 g (19.9 oz) of"
    )
    assert "about 1 3/4 US cups + 3 tbsp of table salt; 8–48 h at 40 °F (4 °C) or below." in line


def test_a_joint_is_not_called_a_bird():
    assert geometry("pork_loin")[0].name == "joint"
    steps = [step.key for step in plan_brine(BrineCase(kind="pork_loin", mass_kg=2.0)).steps]
    assert "brine-step-joint-in" in steps
    assert "brine-step-bird-in" not in steps


@pytest.mark.parametrize("kind", ["table", "flake_kosher", "coarse_kosher"])
@pytest.mark.parametrize("mass_kg", [0.6, 2.0, 4.2, 6.35, 8.16, 10.9])
def test_the_salt_said_is_within_three_percent_by_spoon_and_half_a_percent_by_weight(kind, mass_kg):
    plan = plan_brine(BrineCase(mass_kg=mass_kg, salt_kind=kind, method="wet"))
    text = say(plan.headline, Reader(NOW)).replace(",", "")
    grams = float(re.search(r"([\d.]+) g \(", text)[1])
    assert grams == pytest.approx(plan.salt_g, rel=0.01)
    said = re.search(r"about (.*) of (?:table|light|coarse)", text)[1]
    cups = sum(
        _number(part) * {"cup": 1, "cups": 1, "tbsp": 1 / 16, "tsp": 1 / 48}[part.split()[-1]]
        for part in said.split(" + ")
    )
    assert cups == pytest.approx(usual_cups_of_salt(plan.salt_g, kind), rel=0.03)


def _number(part):
    return float(sum(Fraction(word) for word in part.split() if word[0].isdigit()))


@pytest.mark.parametrize(
    ("language", "sold_as", "line"),
    [
        (
            "en",
            "injected",
            "No brine and no added salt: this turkey breast is sold injected, so it is salted already.",
        ),
        (
            "en",
            "kosher",
            "No brine and no added salt: this turkey breast is sold as kosher, so it is salted already.",
        ),
        (
            "es",
            "injected",
            "Ni salmuera ni sal añadida: la pechuga de pavo se vende con solución añadida y ya lleva sal.",
        ),
        ("es", "kosher", "Ni salmuera ni sal añadida: la pechuga de pavo se vende kosher y ya lleva sal."),
    ],
)
def test_how_it_is_sold_agrees_with_what_is_sold(language, sold_as, line):
    plan = plan_brine(BrineCase(kind="turkey_breast", mass_kg=3.0, sold_as=sold_as))
    assert say(plan.headline, Reader(NOW, language=language)) == line


def test_a_joint_is_salted_as_a_joint():
    for method in ("wet", "dry"):
        plan = plan_brine(BrineCase(kind="pork_loin", mass_kg=2.0, method=method))
        text = " ".join(say(step, Reader(NOW)) for step in plan.steps)
        assert not re.search(r"thighs|giblets|cavity|a bird", text)
