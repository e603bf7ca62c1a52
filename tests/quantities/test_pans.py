import pytest

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.quantities import box_pan, pan, round_pan
from turnspit.reference import table


@pytest.mark.parametrize(
    ("name", "litres"),
    [
        ("GN 1/1 65 mm", 7.4),
        ("gastronorm 1/1 65 mm", 7.4),
        ("half hotel pan 4 in", 6.15),
        ("full steam table pan 2.5 in", 7.1),
        ("9x13 inch baking dish", 3.312),
        ("12 x 8 x 2 in", 3.146),
        ("30 x 20 x 5 cm", 3.0),
        ("11 x 3 in round", 4.672),
    ],
)
def test_a_pan_is_known_by_name_or_by_its_measures(name, litres):
    assert pan(name).litres == pytest.approx(litres, rel=1e-3)


def test_an_unknown_pan_is_named_with_the_nearest():
    with pytest.raises(Unknown, match="soup plate is not known: use one of"):
        pan("soup plate")


@pytest.mark.parametrize(
    ("make", "error", "said"),
    [
        (lambda: box_pan(300, 200, 0), Impossible, "depth_mm 0 is not above zero: measure the pan"),
        (lambda: round_pan(-1, 50), Impossible, "diameter_mm -1 is not above zero"),
        (lambda: box_pan(30000, 200, 50), OutOfRange, "length_mm 30000 is above 2000"),
        (lambda: pan("13 x 9 x 0 in"), Impossible, "is not above zero"),
    ],
)
def test_a_pan_of_no_depth_is_refused(make, error, said):
    with pytest.raises(error, match=said):
        make()


@pytest.mark.parametrize("row", table("pans").rows, ids=lambda row: row["name"])
def test_printed_volumes_fit_the_printed_measures(row):
    """A brim holds less than the box of its outer measures, and not less than two fifths of it (small deep ones)."""
    found = pan(row["name"])
    box = found.area_m2 * found.depth_m * 1000
    assert 0.4 * box <= found.litres <= 1.1 * box
