"""Every printed cell of the FSIS tables. Source: FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix
A), FSIS-GD-2021-0014, December 2021: Tables 2 and 6 (meat, 6.5, 7 and 5-log10), Table 3 (chicken) and Table 4 (turkey), 7-log10."""

import numpy as np
import pytest

from turnspit.reference import table
from turnspit.safety import hold_table, log10_reduction
from turnspit.safety.lethality import cell_s

CELLS = [
    (species, row["printed_f"], fat, cell_s(row["time"][fat - 1], row["unit"][fat - 1]))
    for species in ("chicken", "turkey")
    for row in table(f"fsis_{species}").rows
    for fat in range(1, 13)
]
MEAT = [
    (row["printed_f"], log10, cell_s(row["time"][n], row["unit"][n]))
    for row in table("fsis_meat").rows
    for n, log10 in enumerate((6.5, 7.0, 5.0))
]


def celsius(fahrenheit):
    return (fahrenheit - 32) / 1.8


def held(hold, core_c, seconds):
    return float(log10_reduction(hold, [0, seconds / 60], [core_c, core_c]))


def test_all_cells_are_here():
    assert len(CELLS) == 2 * 30 * 12
    assert len(MEAT) == 31 * 3


def test_no_cell_is_shorter_than_print_and_only_zeros_are_longer(capsys):
    excess = {}
    for species, fahrenheit, fat, seconds in CELLS:
        asked = float(hold_table(species, fat).hold_s(celsius(fahrenheit)))
        assert asked >= seconds - 1e-9
        excess[species, fahrenheit, fat] = asked - seconds
        if seconds > 0:
            assert asked == pytest.approx(seconds)
    for fahrenheit, log10, seconds in MEAT:
        asked = float(hold_table("meat", log10=log10).hold_s(celsius(fahrenheit)))
        assert asked >= seconds - 1e-9
        excess["meat", fahrenheit, log10] = asked - seconds
        if seconds > 0:
            assert asked == pytest.approx(seconds)
    worst = max(excess, key=excess.get)
    with capsys.disabled():
        print(f"\nFSIS tables: worst excess over print {excess[worst]:.1f} s at {worst} (printed 0 s)")
    assert excess[worst] <= 15.0


@pytest.mark.parametrize("species", ["chicken", "turkey"])
def test_holding_just_the_printed_time_gives_the_stated_reduction(species):
    for kind, fahrenheit, fat, seconds in CELLS:
        if kind == species and seconds > 0:
            assert held(hold_table(species, fat), celsius(fahrenheit), seconds) >= 7.0 - 1e-9
            assert held(hold_table(species, fat), celsius(fahrenheit), seconds * 0.99) < 7.0


def test_holding_just_the_printed_time_gives_the_stated_reduction_in_meat():
    for fahrenheit, log10, seconds in MEAT:
        if seconds > 0:
            assert held(hold_table("meat", log10=log10), celsius(fahrenheit), seconds) >= log10 - 1e-9
            assert held(hold_table("meat", log10=log10), celsius(fahrenheit), seconds * 0.99) < log10


def test_the_least_and_most_at_160_f_are_as_the_guideline_text_says():
    at_160 = [seconds for _, fahrenheit, _, seconds in CELLS if fahrenheit == 160]
    assert (min(at_160), max(at_160)) == (13.7, 26.9)


def test_nothing_is_earned_below_the_first_row():
    for species in ("chicken", "turkey", "other_poultry", "meat"):
        hold = hold_table(species)
        assert held(hold, hold.starts_c - 0.01, 1e6) == 0.0


def test_unknown_fat_is_read_in_the_fattest_column():
    at = np.linspace(57.8, 74, 60)
    assert (hold_table("turkey").hold_s(at) == hold_table("turkey", 12).hold_s(at)).all()
    assert (hold_table("turkey", 30).hold_s(at) == hold_table("turkey", 12).hold_s(at)).all()


def test_other_poultry_takes_the_longer_of_both_tables():
    for fahrenheit in range(136, 166):
        both = [float(hold_table(species, 5).hold_s(celsius(fahrenheit))) for species in ("chicken", "turkey")]
        assert float(hold_table("other_poultry", 5).hold_s(celsius(fahrenheit))) == max(both)


def test_the_whole_roast_table_of_the_food_code_is_the_6_5_log_column():
    meat = {fahrenheit: seconds for fahrenheit, log10, seconds in MEAT if log10 == 6.5}
    for row in table("food_code_roasts").rows:
        assert meat[row["printed_f"]] == row["hold_s"]
