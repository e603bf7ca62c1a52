import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from turnspit.brine import cold_brine, ice_to_chill_kg
from turnspit.brine import solution as nacl
from turnspit.brine.salts import cups_of_salt, grams_by_volume, usual_cups_of_salt
from turnspit.errors import Impossible, OutOfRange

strengths = st.floats(0.1, 20.0)


@settings(deadline=None)
@given(st.floats(0.1, 100.0), strengths, strengths)
def test_weakening_and_strengthening_meet_the_strength_asked_for(water_l, first, second):
    salt_g = nacl.salt_g(water_l, first)
    if second < first:
        more_l = nacl.diluting_water_l(salt_g, water_l, second)
        assert nacl.salt_g(water_l + more_l, second) == pytest.approx(salt_g)
    else:
        more_g = nacl.strengthening_salt_g(salt_g, water_l, second)
        assert nacl.salt_g(water_l, second) == pytest.approx(salt_g + more_g)
    assert nacl.of_brine_percent(nacl.of_water_percent(first)) == pytest.approx(first)


def test_stronger_is_denser_and_freezes_lower():
    values = [(nacl.density_kg_l(w), -nacl.freezing_c(w), nacl.salometer_deg(w)) for w in (0, 1, 5, 12, 20)]
    assert values == sorted(values)


@settings(deadline=None)
@given(st.floats(0.5, 100.0), strengths, st.floats(0.0, 8.0), st.floats(0.0, 35.0), st.floats(0.0, 5.0))
def test_the_water_is_split_without_loss(water_l, strength, sugar, tap_c, to_c):
    cold = cold_brine(water_l, strength, sugar, tap_c=max(tap_c, to_c), to_c=to_c)
    parts_l = cold.concentrate_water_l + cold.cold_water_l + cold.ice_kg / nacl.WATER_KG_L
    assert parts_l == pytest.approx(water_l)
    assert min(cold.concentrate_water_l, cold.ice_kg) > 0
    assert cold.cold_water_l > -1e-9
    assert to_c < cold.hot_c <= 100


def test_the_salt_of_the_concentrate_dissolves():
    for strength in (1.0, 5.48, 13.0, 20.0):
        cold = cold_brine(10.0, strength)
        in_the_pot = nacl.of_brine_percent(nacl.salt_g(10.0, strength) / 10 / cold.concentrate_water_l / 0.9982)
        assert in_the_pot <= 25.0 + 1e-6


def test_colder_ice_goes_further():
    assert ice_to_chill_kg(10, 5.0, 30, ice_c=-18.0) < ice_to_chill_kg(10, 5.0, 30)
    assert ice_to_chill_kg(10, 5.0, 2.0, to_c=4.0) == 0
    with pytest.raises(OutOfRange, match="to_c"):
        ice_to_chill_kg(10, 5.0, 30, to_c=-5.0)


def test_cups_of_salt_by_its_crystals():
    dense, light = cups_of_salt(292.0, "table")
    assert dense < 1 < light
    assert usual_cups_of_salt(292.0, "table") == pytest.approx(1.0)
    assert usual_cups_of_salt(292.0, "flake_kosher") == pytest.approx(2.05, abs=0.02)  # "2 for 1", NC State FAQ
    low, high = grams_by_volume(500.0, "coarse_kosher")
    assert low < 500 < high


@pytest.mark.parametrize(("strength", "error"), [(0.0, Impossible), (27.0, Impossible), (21.0, OutOfRange)])
def test_strengths_that_are_no_brine(strength, error):
    with pytest.raises(error):
        nacl.check_strength(strength)
