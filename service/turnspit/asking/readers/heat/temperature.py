"""Temperatures: `325F`, `160 deg C`, `gas 4`; a bare number takes the unit in which it is plausible."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures.measures import Measure
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.tokens import Number

Units = Literal["us", "metric"]
# Gas marks 1 to 9 are 25 F steps from 275 F; below 1 the marks halve (British gas cookers).
_GAS_MARK_1_F = 275.0
_MARK_STEP_F = 25.0


@dataclass(frozen=True, slots=True)
class Temperature:
    """A temperature as it was said: the value and its unit, "" where none was said."""

    value: float
    unit: str

    @property
    def celsius(self) -> float:
        """In degrees Celsius; only for one whose unit is known."""
        if self.unit == "degF":
            return (self.value - 32) / 1.8
        if self.unit == "gas_mark":
            return (gas_mark_f(self.value) - 32) / 1.8
        return self.value


def gas_mark_f(mark: float) -> float:
    """The oven temperature of a gas mark in Fahrenheit."""
    if mark >= 1:
        return _GAS_MARK_1_F + (mark - 1) * _MARK_STEP_F
    return 250.0 if mark >= 0.5 else 225.0


@dataclass(frozen=True, slots=True)
class Said:
    """A temperature, or a bare number that may be one, and where it stands; `unit` is "" where none was said."""

    place: int
    value: float
    unit: str
    bare: bool

    def celsius(self, usual: str) -> float:
        """In Celsius, by `usual` where no unit was said."""
        return Temperature(self.value, self.unit or usual).celsius

    @property
    def core_like(self) -> bool:
        """Whether meat could be wished to end there."""
        bare_celsius = not self.unit and self.value <= 95
        return 35 <= self.celsius("degC" if bare_celsius else "degF") <= 99

    @property
    def oven_like(self) -> bool:
        """Whether an oven could be set to it."""
        return self.value >= 100 or self.unit == "degC"


grammar = Grammar("<temperature>")


@grammar.rule("<gas> <number>", gives="<temperature>")
def _gas_mark(_: str, mark: Number | float) -> Temperature | None:
    value = number(mark).value
    return Temperature(value, "gas_mark") if 0 < value <= 10 else None


@grammar.rule("<number> -|to|or|a|o <number> <deg>? <temperature_unit>", gives="<temperature>")
def _range(low: Number | float, high: Number | float, _: str | None, unit: str) -> Temperature | None:
    low_value, high_value = number(low).value, number(high).value
    return Temperature((low_value + high_value) / 2, unit) if 0 < low_value < high_value < 2 * low_value else None


@grammar.rule("<number> <deg>? <temperature_unit>", gives="<temperature>")
def _with_unit(value: Number | float, _: str | None, unit: str) -> Temperature:
    return Temperature(number(value).value, unit)


@grammar.rule("<number> <deg> <c>", gives="<temperature>")
def _degrees_c(value: Number | float, _: str, __: str) -> Temperature:
    return Temperature(number(value).value, "degC")


@grammar.rule("<number> <c>", gives="<temperature>")
def _c_is_celsius_from_15_up(value: Number | float, _: str) -> Temperature | None:
    said = number(value)
    # "2 c flour" is cups, "160 c" degrees.
    return Temperature(said.value, "degC") if said.value >= 15 or said.value <= 0 else None


@grammar.rule("^<at> <volume>", gives="<temperature>")
def _at_cups_is_celsius(volume: Measure) -> Temperature | None:
    """`off the truck at 4 c`: nothing is at cups."""
    return Temperature(volume.value, "degC") if volume.unit == "cup" else None


@grammar.rule("<number> <deg>", gives="<temperature>")
def _degrees(value: Number | float, _: str) -> Temperature:
    return Temperature(number(value).value, "")


def plausible_oven(value: float, usual: Units | None) -> tuple[str, bool]:
    """The unit of a bare oven setting, and whether it had to be guessed against another plausible one."""
    if value <= 12:
        return "gas_mark", False
    if value > 260:
        return "degF", False
    if value < 200:
        return "degC", False
    if usual is not None:
        return ("degF" if usual == "us" else "degC"), False
    if value % 25 == 0 and value != 200:
        return "degF", True
    return "degC", True


def plausible_core(value: float, usual: Units | None = None) -> str:
    """The unit of a bare probe reading or end temperature: meat is hardly taken above 82 C, nor to below 83 F; who
    cooks in Celsius takes a shoulder up to 95."""
    return "degC" if value <= (95 if usual == "metric" else 82) else "degF"


_COLD_C = 25
# Nothing that was to be kept cold is warmer than this on a hot day.
_HOT_DAY_C = 50


def plausible_cold(value: float, usual: Units | None = None) -> str:
    """The unit of a bare reading of something kept cold, or just warm: a refrigerator at 45 is one at 45 F, but for
    who cooks in Celsius."""
    return "degC" if value < (_HOT_DAY_C if usual == "metric" else _COLD_C) else "degF"
