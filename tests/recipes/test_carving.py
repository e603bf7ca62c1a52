import pytest

from turnspit.errors import OutOfRange, Unknown
from turnspit.recipes import carved
from turnspit.reference import table


def test_half_a_turkey_is_eaten():
    meat = carved("turkey", 10.0)
    assert meat.meat_kg == pytest.approx(5.3)
    assert meat.white_kg == pytest.approx(0.6 * 5.3)  # 60 to 40: common practice, no source
    assert meat.white_kg + meat.dark_kg == pytest.approx(meat.meat_kg)
    assert meat.servings == 31
    assert carved("turkey", 10.0, serving_kg=0.085).servings == 62


def test_a_joint_has_no_white_and_dark_meat():
    assert carved("lamb_leg", 3.0).white_kg is None


def test_the_bone_is_told_apart():
    assert carved("pork_loin", 2.0, bone_in=True).meat_kg < carved("pork_loin", 2.0, bone_in=False).meat_kg
    assert carved("beef_round", 2.0, bone_in=True).meat_kg == carved("beef_round", 2.0).meat_kg


@pytest.mark.parametrize("row", list(table("yields_carved")), ids=lambda row: f"{row['kind']}-{row['bone_in']}")
def test_yields_are_in_order(row):
    assert row["cooked_low"] <= row["cooked_of_raw"] <= row["cooked_high"] < 1
    assert 0.3 < row["carved_of_raw"] <= row["cooked_of_raw"]
    meat = carved(row["kind"], 4.0, bone_in=row["bone_in"])
    assert meat.meat_kg + meat.bones_kg == pytest.approx(max(meat.cooked_kg.p50, meat.meat_kg))


def test_the_usual_row_stands_first():
    first = {}
    for row in table("yields_carved"):
        first.setdefault(row["kind"], row["usual"])
    assert all(first.values())


def test_bad_input_is_refused():
    with pytest.raises(OutOfRange, match="is that pounds"):
        carved("turkey", -1.0)
    with pytest.raises(OutOfRange, match="serving_kg"):
        carved("turkey", 5.0, serving_kg=0.0)
    with pytest.raises(Unknown, match="use one of turkey"):
        carved("swan", 5.0)
