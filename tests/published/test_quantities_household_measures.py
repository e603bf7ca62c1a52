"""Ingredient masses against USDA SR28 (files WEIGHT and FOOD_DES), within the rounding of the printed grams.

Every household measure of the release that we ship is a check: the density comes from one measure of each food and
form, the others are predicted from it. Where the release contradicts itself by more than its rounding, the pair is
listed here.
"""

import pytest

from turnspit.quantities import density_or_none, litres
from turnspit.reference import table

VOLUMES = {"cup", "tbsp", "tsp", "floz", "quart"}
CONTRADICTIONS = {
    # spoons that the release prints further from the cup of the same food than its rounding allows: grams printed
    ("sugar_turbinado", "tsp"): 4.6,
    ("sour_cream", "tbsp"): 12.0,
    ("cheese_parmesan_grated", "tbsp"): 5.0,
    ("onion_flakes", "tbsp"): 5.0,
    ("celery_raw", "tbsp"): 7.5,
    ("vanilla_extract", "tsp"): 4.2,
}


def rows():
    names = {row["key"]: row["names"][0] for row in table("foods")}
    for row in table("household_masses"):
        if row["unit"] in VOLUMES:
            yield row, names[row["key"]]


@pytest.mark.parametrize(("row", "name"), list(rows()), ids=lambda value: value if isinstance(value, str) else "")
def test_each_printed_measure_lies_in_the_range_we_give(row, name):
    found = density_or_none(f"{name}, {row.get('form', '')}")
    volume = row["amount"] * litres(1, row["unit"], "US")
    rounding = 0.5 if row["grams"] >= 10 and row["grams"] == int(row["grams"]) else 0.05
    low, high = found.low * volume * 1000 - rounding, found.high * volume * 1000 + rounding
    inside = low <= row["grams"] <= high
    assert inside is (CONTRADICTIONS.get((row["key"], row["unit"])) != row["grams"])
