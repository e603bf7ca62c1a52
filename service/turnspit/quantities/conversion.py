"""Any household measure in any other, through mass, volume, pieces and the food; what is uncertain is said."""

from __future__ import annotations

from dataclasses import dataclass, replace

from turnspit.errors import Impossible, OutOfRange
from turnspit.message import Message
from turnspit.quantities.foods import Density, PieceMass, density, food_named, piece_mass, unknown_food
from turnspit.quantities.given import check_number, check_text
from turnspit.quantities.oven import celsius, fahrenheit, gas_mark, nearest_gas_mark
from turnspit.quantities.registry import pint_convert
from turnspit.quantities.units import Region, Unit, unit, varies_by_region

LARGEST = 1e12
WEIGH_ABOVE = 0.05
"""A range wider than this part of the value either way is answered with "weigh it"."""


@dataclass(frozen=True, slots=True)
class Conversion:
    """`value` of `unit`, in [low, high] where measures or foods vary.

    `exact` holds when both units are defined by one another; `weigh` says that scales should decide; `kinds` gives
    (kind, low, high) where the item has kinds that must be told apart. `notes` are texts of `quantities.ftl`.
    """

    value: float
    low: float
    high: float
    unit: str
    exact: bool
    weigh: bool
    source: str
    item: str = ""
    notes: tuple[Message, ...] = ()
    kinds: tuple[tuple[str, float, float], ...] = ()


def convert(
    value: float,
    unit_name: str,
    target_unit: str,
    item: str | None = None,
    region: Region | str | None = None,
) -> Conversion:
    """`value` of one unit in another, by the measures of `region` (US when none is said, and then it is noted).

    Between mass, volume and pieces the food decides: `item` names it. Raises Unknown for a unit, region or food
    that is not known; Impossible for a negative or absurd value and for units that nothing relates.
    """
    check_number("value", value)
    given, target = unit(unit_name, region), unit(target_unit, region)
    if item is not None:
        check_text("item", item, "name the food, as flour, or leave it out")
    if given.name == "dozen":
        value, given = value * 12, unit("piece")
    if "temperature" in (given.dimension, target.dimension):
        return _oven(value, given, target)
    if value < 0:
        raise Impossible("value", value, "is negative", "give an amount of zero or more")
    OutOfRange.check("value", value, 0, LARGEST, "no kitchen holds so much: check the number")
    result = (
        _same_dimension(value, given, target) if _direct(given, target) else _through_food(value, given, target, item)
    )
    if region is None and (varies_by_region(given.name) or varies_by_region(target.name)):
        result = replace(result, notes=(*result.notes, Message("quantities-us-measures")))
    return result


def _direct(given: Unit, target: Unit) -> bool:
    return given.name == target.name or (given.dimension == target.dimension and given.dimension != "count")


def _same_dimension(value: float, given: Unit, target: Unit) -> Conversion:
    if given.dimension == "count":
        return Conversion(value, value, value, target.name, True, False, given.source)
    at = pint_convert(value, given, target)
    low = at * (given.si_low / given.si) / (target.si_high / target.si)
    high = at * (given.si_high / given.si) / (target.si_low / target.si)
    exact = given.exact and target.exact
    vague = next((one for one in (given, target) if not one.exact), None)
    notes = (Message("quantities-vague-measure", unit=vague.name),) if vague else ()
    source = given.source if given.source == target.source else f"{given.source}; {target.source}"
    return Conversion(at, low, high, target.name, exact, not exact, source, "", notes)


def _through_food(value: float, given: Unit, target: Unit, item: str | None) -> Conversion:
    if not item:
        raise Impossible(
            "item",
            "(none)",
            f"is needed from {given.name} to {target.name}",
            "say what it is: a cup of flour and a cup of honey do not weigh the same",
        )
    if "length" in (given.dimension, target.dimension):
        raise Impossible("unit", given.name, f"cannot become {target.name}", "a length has no mass or volume")
    if food_named(item) is None:
        raise unknown_food(item)
    mass = _in_kilograms(value, given, item)
    if target.dimension == "mass":
        result = _scaled(mass, target, (1 / target.si,) * 3)
    elif target.dimension == "volume":
        result = _in_volume(mass, density(item), target)
    else:
        piece = _piece(item, target)
        result = _scaled(mass, target, (1 / piece.kg, 1 / piece.high, 1 / piece.low), piece.source)
    weigh = result.weigh or max(result.high - result.value, result.value - result.low) > WEIGH_ABOVE * result.value
    return replace(result, weigh=weigh, notes=(*result.notes, *((Message("quantities-weigh"),) if weigh else ())))


def _in_kilograms(value: float, given: Unit, item: str) -> Conversion:
    if given.dimension == "mass":
        kg = value * given.si
        return Conversion(kg, kg, kg, "kg", False, False, given.source, item)
    if given.dimension == "volume":
        dense = density(item)
        litres = (value * given.si, value * given.si_low, value * given.si_high)
        kinds = tuple((kind, low * litres[1], high * litres[2]) for kind, low, high in dense.kinds)
        notes = (Message("quantities-which-salt"),) if kinds else ()
        return Conversion(
            dense.kg_per_l * litres[0],
            dense.low * litres[1],
            dense.high * litres[2],
            "kg",
            False,
            dense.weigh,
            dense.source,
            dense.item,
            notes,
            kinds,
        )
    piece = _piece(item, given)
    return Conversion(
        piece.kg * value, piece.low * value, piece.high * value, "kg", False, False, piece.source, piece.item
    )


def _piece(item: str, counted: Unit) -> PieceMass:
    size = next((word for word in ("small", "medium", "large", "jumbo") if word in item.casefold().split()), "")
    found = piece_mass(item, counted.name, size)
    if found is None:
        raise Impossible(
            "unit",
            counted.name,
            f"of {item} has no published mass",
            f"weigh one {counted.name}, or give the amount as a mass or volume",
        )
    return found


def _in_volume(mass: Conversion, dense: Density, target: Unit) -> Conversion:
    factors = (1 / dense.kg_per_l / target.si, 1 / dense.high / target.si_high, 1 / dense.low / target.si_low)
    result = _scaled(mass, target, factors, dense.source)
    if not dense.kinds:
        return result
    kinds = tuple((kind, mass.low / high / target.si, mass.high / low / target.si) for kind, low, high in dense.kinds)
    return replace(result, weigh=True, kinds=kinds, notes=(Message("quantities-which-salt"),))


def _scaled(mass: Conversion, target: Unit, factors: tuple[float, float, float], source: str = "") -> Conversion:
    """The mass in the target unit; `factors` for the usual value, the least and the most."""
    usual, least, most = factors
    return replace(
        mass,
        value=mass.value * usual,
        low=mass.low * least,
        high=mass.high * most,
        unit=target.name,
        source="; ".join(dict.fromkeys(filter(None, (mass.source, source)))),
        kinds=tuple((kind, low * least, high * most) for kind, low, high in mass.kinds),
    )


def _oven(value: float, given: Unit, target: Unit) -> Conversion:
    if given.dimension != target.dimension:
        raise Impossible(
            "unit", given.name, f"cannot become {target.name}", "a temperature converts to a temperature"
        )
    if "gas_mark" not in (given.name, target.name):
        celsius(value, given.name)  # refuses what is below absolute zero
        at = pint_convert(value, given, target)
        return Conversion(at, at, at, target.name, True, False, "BIPM SI Brochure, 9th ed. (2019)")
    notes = (Message("quantities-gas-mark"),)
    if given.name == target.name:
        mark = float(gas_mark(value)["mark"])
        return Conversion(mark, mark, mark, target.name, False, False, gas_mark(value)["source"], "", notes)
    if target.name == "gas_mark":
        mark = nearest_gas_mark(celsius(value, given.name))
        return Conversion(mark, mark, mark, target.name, False, False, gas_mark(mark)["source"], "", notes)
    row = gas_mark(value)
    both = (row["c"], (row["f"] - 32) * 5 / 9) if target.name == "degC" else (row["f"], fahrenheit(row["c"]))
    low, high = min(both), max(both)
    return Conversion(float(both[0]), low, high, target.name, False, False, row["source"], "", notes)
