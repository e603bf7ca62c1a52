from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from turnspit.errors import Impossible
from turnspit.quantities import Amount, measured, read_amount, tolerance_for, unit, write_amount


@pytest.mark.parametrize(
    ("value", "unit_name", "item", "own", "metric", "us"),
    [
        (Fraction(3, 4), "cup", "", "3/4 cup", "175 mL", "3/4 cup"),
        (Fraction(37, 100), "cup", "", "6 tbsp", "88 mL", "6 tbsp"),
        (Fraction(5, 8), "cup", "flour", "1/2 cup + 2 tbsp", "78 g", "1/2 cup + 2 tbsp"),
        (Fraction(1, 12), "cup", "", "1 tbsp + 1 tsp", "1 tbsp + 1 tsp", "1 tbsp + 1 tsp"),
        (Fraction(3, 2), "tsp", "salt", "1 1/2 tsp", "9.1 g (1 1/2 tsp)", "1 1/2 tsp"),
        (Fraction(37, 100), "tsp", "salt", *["2.25 g (1/4 tsp + 1/8 tsp)"] * 3),
        (Fraction(340), "g", "", "340 g", "340 g", "12 oz"),
        (Fraction(1500), "g", "", "1.5 kg", "1.5 kg", "3 1/4 lb"),
        (Fraction(13, 4), "lb", "", "3 1/4 lb", "1475 g", "3 1/4 lb"),
        (Fraction(37), "cup", "water", "2 1/4 gal", "8.75 L", "2 1/4 gal"),
        (Fraction(11), "cup", "flour", "3 lb", "1375 g", "3 lb"),
        (Fraction(5), "tbsp", "kosher salt", "5 tbsp", "74 mL", "5 tbsp"),
        (Fraction(12), "cup", "bread cubes", "3 quarts", "425 g", "3 quarts"),
        (Fraction(1, 2), "pint", "milk", "1/2 pint", "240 mL", "1/2 pint"),
        (Fraction(3, 2), "", "eggs", "1 1/2", "1 1/2", "1 1/2"),
        (Fraction(9, 4), "can", "", "2 1/4 cans", "2 1/4 cans", "2 1/4 cans"),
        (Fraction(134, 10), "clove", "garlic", "13 cloves", "13 cloves", "13 cloves"),
        (Fraction(1, 64), "tsp", "cayenne", *["1 smidgen"] * 3),
        (Fraction(1, 3), "tsp", "dried sage", *["1/4 tsp + 1 pinch (0.22 g)"] * 3),
        (Fraction(2, 3), "tsp", "salt", *["4.05 g (1/2 tsp + 3 pinches)"] * 3),
        (Fraction(1, 3), "tsp", "hot sauce", *["1/4 tsp + 8 drops"] * 3),
        (Fraction(1, 4), "dash", "hot sauce", *["3 drops"] * 3),
        (Fraction(1, 3), "pinch", "saffron", *["1 smidgen"] * 3),
        (Fraction(5, 8), "tsp", "pepper", *["1/2 tsp + 1/8 tsp"] * 3),
        (Fraction(1), "tsp", "kosher salt", *["1 tsp"] * 3),
        (Fraction(3, 2), "g", "salt", *["1.5 g (1/4 tsp)"] * 3),
        (Fraction(0), "g", "", "0 g", "0 g", "0 g"),
    ],
)
def test_amounts_are_written_as_a_cook_measures(value, unit_name, item, own, metric, us):
    written = [write_amount(value, unit_name, item=item, system=system) for system in (None, "metric", "us")]
    assert written == [own, metric, us]


def test_ranges_regions_and_languages():
    assert write_amount(Amount(Fraction(2), "cup", Fraction(3))) == "2–3 cups"
    assert write_amount(Amount(Fraction(1), "tsp", Fraction(3))) == "1 tsp – 1 tbsp"
    assert write_amount(Amount(Fraction(1), "", Fraction(1))) == "1"
    assert write_amount(Fraction(1, 2), "cup", region="AU", system="metric") == "125 mL"
    assert write_amount(Fraction(3, 2), "cup", language="es") == "1 1/2 tazas"
    assert write_amount(1250, "g", language="es") == "1,25 kg"


def test_a_system_that_is_asked_for_has_its_own_spoons():
    assert write_amount(2, "tbsp", region="AU") == "2 tbsp"
    assert write_amount(2, "tbsp", region="AU", system="us") == "2 tbsp + 2 tsp"
    assert write_amount(1, "cup", region="AU", system="us") == "1 cup + 1 tbsp"
    assert write_amount(2, "tbsp", region="AU", system="metric") == "2 tbsp"
    assert write_amount(1, "pint", region="UK", system="us", item="milk") == "2 1/3 cups"


def test_what_has_to_be_exact():
    for item in ("salt", "fine sea salt", "baking powder", "curing salt", "active dry yeast"):
        assert tolerance_for(item) == 0.01
    for item in ("salt pork", "salted butter", "flour", ""):
        assert tolerance_for(item) == 0.03


def test_less_than_nothing_is_refused():
    with pytest.raises(Impossible, match="negative"):
        write_amount(-1, "g")
    with pytest.raises(Impossible, match="negative"):
        measured(Fraction(-1), "g")
    with pytest.raises(Impossible, match="is not a number"):
        write_amount(float("nan"), "g")


FOODS = [
    "",
    "salt",
    "flour",
    "water",
    "butter",
    "baking powder",
    "milk",
    "sugar",
    "honey",
    "olive oil",
    "unheard-of root",
]
UNITS = ["g", "kg", "mL", "L", "tsp", "tbsp", "cup", "pint", "quart", "gal", "oz", "lb", "floz"]
amounts = st.fractions(min_value=Fraction(1, 500), max_value=2000, max_denominator=720)


def in_si(amount, item):
    """Kilograms or litres; a volume that was written as a weight is compared by the food's own measures."""
    found = unit(amount.unit)
    return found.dimension, float(amount.value) * found.si


@given(amounts, st.sampled_from(UNITS), st.sampled_from(FOODS), st.sampled_from([None, "us", "metric"]))
def test_rounding_stays_within_the_tolerance(value, unit_name, item, system):
    written = measured(value, unit_name, item, system)
    dimension, size = in_si(Amount(value, unit_name), item)
    if size < 5e-5:
        return  # 50 mg, a drop: no tolerance is kept
    if unit(written.parts[0][1]).dimension != dimension:
        other = Amount(value, unit_name)
        size = (
            other.kilograms(item) if dimension == "volume" else size / (Amount(Fraction(1), "L").kilograms(item) or 1)
        )
    near = (tolerance_for(item) + 1e-9) * size
    if dimension == "volume" and tolerance_for(item) > 0.01 and size < unit("tbsp").si:
        near = max(near, 1.02 * unit("smidgen").si)  # half a pinch
    assert abs(written.si - size) <= near


@given(
    amounts,
    st.sampled_from(UNITS),
    st.sampled_from(FOODS),
    st.sampled_from([None, "us", "metric"]),
    st.sampled_from(["en", "es"]),
)
def test_reading_what_was_written_gives_the_amount_back(value, unit_name, item, system, language):
    written = measured(value, unit_name, item, system)
    metric = system == "metric" or (system is None and unit_name in ("g", "kg", "mL", "L"))
    region = "UK" if metric else None  # metric spoons
    amount = read_amount(written.text(language), region)
    assert float(amount.value) * unit(amount.unit, region).si == pytest.approx(written.si, rel=1e-8)


@given(amounts, st.sampled_from(UNITS), st.sampled_from(FOODS))
def test_no_part_is_one_that_no_kitchen_owns(value, unit_name, item):
    for number, name in measured(value, unit_name, item).parts:
        if name in ("tsp", "tbsp", "cup", "quart", "gal", "oz", "lb"):
            assert number.denominator in (1, 2, 3, 4, 8)
            assert number.denominator != 8 or name == "tsp"
