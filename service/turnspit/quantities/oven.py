"""Oven settings: degrees, gas marks, words, and what a fan oven is set to for the heat of a still one."""

from __future__ import annotations

import math
from functools import cache

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.reference import Row, table

ABSOLUTE_ZERO_C = -273.15
FAN_LOWER_K = 20.0
"""A fan oven is set about 25 F lower, in metric books 15 to 20 C (published convection rule); we take the larger."""


def celsius(value: float, unit: str) -> float:
    """A temperature in degrees C from degC, degF or gas_mark.

    Raises Impossible below absolute zero and for what is no temperature, OutOfRange for a gas mark that no oven has.
    """
    if not math.isfinite(value):
        raise Impossible("temperature", value, "is not a number", "give degrees")
    if unit == "gas_mark":
        return float(gas_mark(value)["c"])
    if unit not in ("degC", "degF"):
        raise Unknown("temperature unit", unit, ("degC", "degF", "gas_mark"))
    c = float(value) if unit == "degC" else (value - 32) * 5 / 9
    if c < ABSOLUTE_ZERO_C:
        raise Impossible("temperature", f"{value:g} {unit}", "is below absolute zero", "check the unit")
    return c


def fahrenheit(c: float) -> float:
    """Degrees F from degrees C."""
    return c * 9 / 5 + 32


def gas_mark(mark: float) -> Row:
    """The row of a gas mark (mark, f, c). Raises OutOfRange for one that no dial has."""
    OutOfRange.check("gas_mark", mark, 0.25, 9, "gas ovens are marked 1/4, 1/2 and 1 to 9")
    return min(_marks(), key=lambda row: abs(row["mark"] - mark))


def nearest_gas_mark(c: float) -> float:
    """The gas mark nearest to an oven temperature. Raises OutOfRange more than a mark beyond the dial."""
    f = fahrenheit(c)
    OutOfRange.check("oven_f", f, 212.0, 500.0, "a gas mark stands for 225 to 475 F (110 to 240 C)")
    return float(min(_marks(), key=lambda row: abs(row["f"] - f))["mark"])


def still_oven_c(fan_c: float) -> float:
    """The still-oven temperature that roasts like a fan oven at `fan_c`."""
    return fan_c + FAN_LOWER_K


def fan_oven_c(still_c: float) -> float:
    """The setting of a fan oven that roasts like a still one at `still_c`."""
    return still_c - FAN_LOWER_K


def oven_word_c(word: str) -> tuple[float, float]:
    """The range in C that a word ("moderate", "hot") stands for. Raises Unknown."""
    said = " ".join(word.casefold().removesuffix("oven").split())
    for row in table("oven_words"):
        if said == row["word"] or said in row["also"]:
            return (row["f_low"] - 32) * 5 / 9, (row["f_high"] - 32) * 5 / 9
    raise Unknown("oven word", word, tuple(row["word"] for row in table("oven_words")))


@cache
def _marks() -> tuple[Row, ...]:
    return table("oven_marks").rows
