"""The pint registry of the kitchen: only our own units, from the table `units`, so that nothing else is loaded.

A unit that differs between regions is named with its region ("cup_AU", "pint_imperial").
"""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, Any

from turnspit.quantities.units import Unit
from turnspit.reference import table

if TYPE_CHECKING:
    from pint import UnitRegistry

_BASES = ("kg = [mass]", "m = [length]", "kelvin = [temperature]; offset: 0")
_DERIVED = ("L = 1e-3 * m ** 3", "degC = kelvin; offset: 273.15", "degF = 5 / 9 * kelvin; offset: 233.15 + 200 / 9")
_BASE_OF = {"mass": "kg", "volume": "L", "length": "m"}


@cache
def registry() -> UnitRegistry[Any]:
    """The registry; pint is imported when it is first asked for, since that alone takes a fifth of a second."""
    from pint import UnitRegistry

    kitchen: UnitRegistry[Any] = UnitRegistry(None, autoconvert_offset_to_baseunit=True)
    for line in (*_BASES, *_DERIVED):
        kitchen.define(line)
    for row in table("units"):
        if row["unit"] not in _BASE_OF.values():
            name = "_".join(filter(None, (row["unit"], row.get("region"))))
            name = "inch" if name == "in" else name
            kitchen.define(f"{name} = {row['si']!r} * {_BASE_OF[row['dimension']]}")
    return kitchen


def name_in_registry(unit: Unit) -> str:
    """What the unit is called in the registry."""
    if unit.name == "in":
        return "inch"
    return f"{unit.name}_{unit.region}" if unit.region else unit.name


def pint_convert(value: float, unit: Unit, target: Unit) -> float:
    """A value in one unit as a number of another of the same dimension. Raises pint.DimensionalityError."""
    kitchen = registry()
    return float(kitchen.Quantity(value, name_in_registry(unit)).to(name_in_registry(target)).magnitude)
