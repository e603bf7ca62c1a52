import pytest

from turnspit.errors import Impossible, Unknown
from turnspit.quantities import in_unit, kilograms, litres, metres, registry, unit, unit_named, varies_by_region
from turnspit.reference import table


@pytest.mark.parametrize(
    ("spelling", "name"),
    [
        ("T", "tbsp"),
        ("t", "tsp"),
        ("Tbsp.", "tbsp"),
        ("teaspoonfuls", "tsp"),
        ("c.", "cup"),
        ("C", "cup"),
        ("lbs.", "lb"),
        ("#", "lb"),
        ("fl. oz.", "floz"),
        ("Fluid Ounces", "floz"),
        ("cucharadas", "tbsp"),
        ("litre", "L"),
        ("furlong", None),
        ("", None),
    ],
)
def test_a_unit_is_known_by_its_spellings(spelling, name):
    assert unit_named(spelling) == name


@pytest.mark.parametrize(
    ("name", "region", "ml"),
    [
        ("tbsp", None, 14.78676478125),
        ("tbsp", "AU", 20),
        ("tbsp", "NZ", 15),
        ("cup", "AU", 250),
        ("cup", "imperial", 284.130625),
        ("pint", "UK", 568.26125),
        ("pint", "AU", 568.26125),
        ("floz", "CA", 28.4130625),
        ("dsp", "US", 10),
    ],
)
def test_a_measure_has_the_size_of_its_region(name, region, ml):
    assert unit(name, region).si * 1000 == pytest.approx(ml, rel=1e-12)


def test_what_is_the_same_everywhere_does_not_vary():
    assert varies_by_region("cup")
    assert not varies_by_region("g")
    assert unit("g", "AU") == unit("g")


def test_si_doors():
    assert kilograms(16, "lb") == pytest.approx(7.25747792)
    assert litres(5, "gal") == pytest.approx(18.92705892)
    assert metres(2, "in") == pytest.approx(0.0508)
    assert in_unit(kilograms(16, "lb"), "lb") == pytest.approx(16)


@pytest.mark.parametrize(
    ("call", "error", "said"),
    [
        (lambda: kilograms(1, "cup"), Impossible, "cup measures volume: give a unit of mass"),
        (lambda: litres(1, "clove"), Impossible, "clove measures count"),
        (lambda: unit("furlong"), Unknown, "unit furlong is not known"),
        (lambda: unit("cup", "Mars"), Unknown, "region Mars is not known: use one of US, UK, AU"),
        (lambda: in_unit(1, "clove"), Impossible, "clove has no fixed size"),
    ],
)
def test_a_wrong_unit_is_refused_with_the_way_out(call, error, said):
    with pytest.raises(error, match=said):
        call()


def test_pint_knows_every_unit_and_agrees():
    for row in table("units"):
        name = "_".join(filter(None, (row["unit"], row.get("region")))).replace(
            "in", "inch", 1 if row["unit"] == "in" else 0
        )
        base = {"mass": "kg", "volume": "L", "length": "m"}[row["dimension"]]
        assert registry().Quantity(1.0, name).to(base).magnitude == pytest.approx(row["si"], rel=1e-12)


def test_every_spelling_belongs_to_one_unit_or_is_written_down_as_shared():
    owners = {}
    for row in table("unit_names"):
        for name in row["names"]:
            owners.setdefault(name.casefold(), set()).add(row["unit"])
    shared = {name for name, units in owners.items() if len(units) > 1}
    assert shared == {"chorrito", "chorritos", "loncha", "lonchas", "tallo", "tallos"} & shared


def test_every_unit_with_a_size_has_a_spelling():
    assert {row["unit"] for row in table("units")} <= {row["unit"] for row in table("unit_names")}
