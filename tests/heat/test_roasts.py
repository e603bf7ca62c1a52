"""The rows of the roasts as data."""

import pytest

from turnspit.errors import Unknown
from turnspit.heat import KINDS, roast
from turnspit.heat.properties import composition


@pytest.mark.parametrize("kind", KINDS)
def test_a_row_is_whole_and_in_order(kind: str) -> None:
    row = roast(kind)
    low, high = row.mass_kg_range
    assert low <= row.checked_kg[0] <= row.usual_mass_kg <= row.checked_kg[1] <= high
    assert row.oven_c_range[0] <= row.checked_oven_c[0] <= row.checked_oven_c[1] <= row.oven_c_range[1]
    assert row.oven_c_range[0] < row.usual_oven_c < row.oven_c_range[1]
    for within, wider in ((row.mass_kg_range, row.extended_kg), (row.oven_c_range, row.extended_oven_c)):
        assert wider[0] <= within[0] < within[1] <= wider[1]
    assert row.rest_min_range[0] <= row.rest_min_range[1]
    assert row.default_target_c >= row.safe_c
    assert row.safe_c == (73.9 if row.poultry else 62.8)
    assert list(row.doneness.values()) == sorted(row.doneness.values())
    assert 0.5 < composition(row.composition).water + composition(row.composition).fat < 1.0
    for place in (*row.stations, *([row.stuffing] if row.stuffing else [])):
        assert 0.0 <= place.exponent <= 2.0
        assert 0.1 <= place.mass_power <= 0.5
        assert 0.01 < place.radius_at(row.usual_mass_kg) < 0.12


def test_a_bird_is_safe_before_it_is_done_and_its_breast_never_decides_alone() -> None:
    turkey = roast("turkey")
    assert [place.name for place in turkey.stations] == ["breast", "thigh", "wing"]
    assert [place.name for place in turkey.places(stuffed=True)][-1] == "stuffing"
    assert [place.standing for place in turkey.stations] == ["fitted", "assumed", "assumed"]


def test_an_unknown_kind_names_the_known_ones() -> None:
    with pytest.raises(Unknown, match="turkey"):
        roast("dodo")
