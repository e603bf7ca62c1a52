"""What a cook tells of a cooling, as a case of the heat room."""

import pytest

from turnspit.errors import TurnspitError
from turnspit.quantities import pan
from turnspit.safety import cooling_case


def test_a_depth_is_a_layer() -> None:
    case = cooling_case("stock", "ice_bath", depth_m=0.05)
    assert (case.shape, case.dims_mm, case.medium, case.medium_c) == ("slab", (50.0,), "ice_bath", 0.0)


def test_so_much_in_a_pan_stands_as_deep_as_its_capacity_tells_and_no_shallower_than_its_area_does() -> None:
    held = pan("GN 1/1 65 mm")
    case = cooling_case("stock", litres=held.litres / 2, container="GN 1/1 65 mm")
    assert case.dims_mm[0] == pytest.approx(65 / 2, rel=0.01)
    assert case.dims_mm[0] >= held.litres / 2 / held.area_m2
    case = cooling_case("stock", litres=4.0, container="GN 1/1 65 mm")
    by_mass = cooling_case("stock", kg=4.0, container="GN 1/1 65 mm")
    assert by_mass.dims_mm[0] == pytest.approx(case.dims_mm[0], rel=0.08)


def test_without_a_pan_it_stands_in_a_pot() -> None:
    for case in (cooling_case("stock", kg=8.0), cooling_case("stock", kg=8.0, container="pot")):
        assert (case.shape, case.dims_mm, case.mass_kg) == ("pot", (), 8.0)


def test_a_blast_chiller_blows_and_is_as_cold_as_it_is_said_to_be() -> None:
    case = cooling_case("turkey", "blast_chiller", depth_m=0.05, place_c=-10.0)
    assert (case.medium_c, case.air_m_s > 0) == (-10.0, True)


@pytest.mark.parametrize(
    ("told", "why"),
    [
        ({}, "say how deep it stands"),
        ({"litres": 8.0, "container": "GN 1/1 65 mm"}, "use 2 of them"),
        ({"litres": 1.0, "container": "trough"}, "trough is not known"),
        ({"depth_m": 0.05, "place": "attic"}, "attic is not known"),
    ],
)
def test_what_cannot_be_is_refused(told: dict[str, object], why: str) -> None:
    with pytest.raises(TurnspitError, match=why):
        cooling_case("stock", **told)  # type: ignore[arg-type]
