"""Measures: a number with its unit, or a range of them, in SI. Mass, volume and length are read alike."""

from __future__ import annotations

from dataclasses import dataclass

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.tokens import Number

# Exact by definition (the yard and pound agreement of 1959; the gallon of 231 cubic inches).
KG = {"lb": 0.45359237, "kg": 1.0, "g": 0.001, "oz": 0.028349523125}
LITRES = {
    "mL": 0.001, "cL": 0.01, "L": 1.0, "tsp": 0.00492892159375, "tbsp": 0.01478676478125, "cup": 0.2365882365,
    "floz": 0.0295735295625, "pint": 0.473176473, "quart": 0.946352946, "gal": 3.785411784, "stick": 0.118294118,
}  # fmt: skip
METRES = {"mm": 0.001, "cm": 0.01, "in": 0.0254, "ft": 0.3048, "m": 1.0, "mile": 1609.344}
US_UNITS = frozenset(("lb", "oz", "tsp", "tbsp", "cup", "floz", "pint", "quart", "gal", "degF", "in", "ft", "mile"))
METRIC_UNITS = frozenset(("kg", "g", "mL", "L", "degC", "mm", "cm", "m", "cL"))


@dataclass(frozen=True, slots=True)
class Measure:
    """A measure: its value in the unit that was said, and in SI; the ends where a range was said."""

    value: float
    unit: str
    si: float
    si_range: tuple[float, float] | None = None


def read_measures(grammar: Grammar, unit: str, si: dict[str, float]) -> None:
    """Give a grammar the rules of one dimension: `unit` is the tag of its units, `si` what each is in SI."""
    gives = grammar.name

    def of(value: float, name: str) -> Measure:
        return Measure(value, name, value * si[name])

    @grammar.rule(
        f"<number> -|to|or|through <number> {unit}",
        f"between|entre <number> and|y <number> {unit}",
        f"from|de <number> to|a <number> {unit}",
        gives=gives,
    )
    def _range(low: Number | float, high: Number | float, name: str) -> Measure | None:
        low_value, high_value = number(low).value, number(high).value
        if not 0 < low_value < high_value <= 3 * low_value:
            return None
        middle = (low_value + high_value) / 2
        return Measure(middle, name, middle * si[name], (low_value * si[name], high_value * si[name]))

    @grammar.rule(f"<number> a|o <number> {unit}", gives=gives)
    def _range_in_spanish(low: Number | float, high: Number | float, name: str) -> Measure | None:
        # "how long 4 a 12 lb bird" is none.
        return _range(low, high, name) if number(high).value < 2 * number(low).value else None

    @grammar.rule(f"<number> {unit} -|to|or|a|o <number> {unit}", gives=gives)
    def _range_with_both_units(low: Number | float, unit_low: str, high: Number | float, name: str) -> Measure | None:
        low_value, high_value = number(low).value, number(high).value
        if unit_low != name or not 0 < low_value < high_value <= 3 * low_value:
            return None
        return _range(low, high, name)

    @grammar.rule(f"<number> {unit} and|y|,|.? <number> {unit}", gives=gives)
    def _compound(large: Number | float, large_unit: str, small: Number | float, small_unit: str) -> Measure | None:
        if (large_unit, small_unit) not in _COMPOUNDS:
            return None
        total = number(large).value * si[large_unit] + number(small).value * si[small_unit]
        return Measure(total / si[large_unit], large_unit, total)

    @grammar.rule(f"<number> {unit} <and_part>", f"<number> {unit} and|y <part>", gives=gives)
    def _and_a_half(value: Number | float, name: str, part: float) -> Measure:
        return of(number(value).value + part, name)

    @grammar.rule(f"<number> {unit}", f"<number> -|+ {unit}", gives=gives)
    def _plain(value: Number | float, name: str) -> Measure:
        return of(number(value).value, name)

    @grammar.rule(f"<part> of? <a>? {unit}", gives=gives)
    def _part(part: float, _: float | None, name: str) -> Measure:
        return of(part, name)

    @grammar.rule(f"<a> {unit} <and_part>", f"<a> {unit} and|y <part>", gives=gives)
    def _one_and_a_half(_: float, name: str, part: float) -> Measure:
        return of(1 + part, name)

    @grammar.rule(f"{unit} <and_part>", f"each|every|per {unit} <and_part>", gives=gives)
    def _unit_and_a_half(name: str, part: float) -> Measure:
        return of(1 + part, name)

    @grammar.rule(f"<a> {unit}", gives=gives)
    def _one(_: float, name: str) -> Measure:
        return of(1.0, name)


_COMPOUNDS = frozenset(
    (("lb", "oz"), ("kg", "g"), ("L", "mL"), ("ft", "in"), ("gal", "quart"), ("cup", "tbsp"), ("tbsp", "tsp"))
)
