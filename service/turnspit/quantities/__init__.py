"""Units, household measures and foods by measure; reading amounts from text and writing them as a cook would.

Sizes, spellings, masses and oven marks are tables of `reference`. SI floats come out (`kilograms`, `litres`,
`celsius`); `convert` answers with a range and its source wherever measures or foods vary.
"""

from turnspit.quantities.amount import Amount
from turnspit.quantities.conversion import Conversion, convert
from turnspit.quantities.foods import (
    Density,
    PieceMass,
    density,
    density_or_none,
    food_named,
    food_names,
    is_food_name,
    is_liquid,
    nearest_foods,
    piece_mass,
)
from turnspit.quantities.numbers import plain, take_number, take_range
from turnspit.quantities.oven import (
    celsius,
    fahrenheit,
    fan_oven_c,
    gas_mark,
    nearest_gas_mark,
    oven_word_c,
    still_oven_c,
)
from turnspit.quantities.pans import Pan, box_pan, pan, round_pan
from turnspit.quantities.reading import read_amount, take_amount
from turnspit.quantities.registry import registry
from turnspit.quantities.typed import (
    typed_amount,
    typed_celsius,
    typed_hours,
    typed_kilograms,
    typed_litres,
    typed_metres,
    typed_number,
    typed_whole,
    unit_asked,
)
from turnspit.quantities.units import (
    REGIONS,
    Region,
    Unit,
    in_unit,
    is_package,
    kilograms,
    litres,
    metres,
    unit,
    unit_named,
    varies_by_region,
    written_unit,
)
from turnspit.quantities.writing import Measured, System, measured, tolerance_for, write_amount

__all__ = [
    "REGIONS",
    "Amount",
    "Conversion",
    "Density",
    "Measured",
    "Pan",
    "PieceMass",
    "Region",
    "System",
    "Unit",
    "box_pan",
    "celsius",
    "convert",
    "density",
    "density_or_none",
    "fahrenheit",
    "fan_oven_c",
    "food_named",
    "food_names",
    "gas_mark",
    "in_unit",
    "is_food_name",
    "is_liquid",
    "is_package",
    "kilograms",
    "litres",
    "measured",
    "metres",
    "nearest_foods",
    "nearest_gas_mark",
    "oven_word_c",
    "pan",
    "piece_mass",
    "plain",
    "read_amount",
    "registry",
    "round_pan",
    "still_oven_c",
    "take_amount",
    "take_number",
    "take_range",
    "tolerance_for",
    "typed_amount",
    "typed_celsius",
    "typed_hours",
    "typed_kilograms",
    "typed_litres",
    "typed_metres",
    "typed_number",
    "typed_whole",
    "unit",
    "unit_asked",
    "unit_named",
    "varies_by_region",
    "write_amount",
    "written_unit",
]
