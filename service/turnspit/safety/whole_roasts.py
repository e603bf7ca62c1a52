"""The code's time table for whole meat roasts: how long all parts must be held at a temperature below 63 C."""

from __future__ import annotations

from functools import cache

from turnspit.reference import table
from turnspit.reference.rules import LIMIT_TOLERANCE


def hold_min(core_c: float) -> float | None:
    """Minutes all parts must be held at `core_c`; 0 from 70 C (158 F), None below the first row (54.4 C, 130 F).

    Between rows the longer time of the cooler row holds. Source: FDA Food Code 3-401.11(B)(1).
    """
    reached = [seconds for row_c, seconds in _rows() if core_c >= row_c - LIMIT_TOLERANCE]
    return reached[-1] / 60 if reached else None


def table_starts_c() -> float:
    """The coolest temperature of the table."""
    return _rows()[0][0]


@cache
def _rows() -> tuple[tuple[float, float], ...]:
    rows = table("food_code_roasts").rows
    return tuple(((float(row["printed_f"]) - 32) / 1.8, float(row["hold_s"])) for row in rows)
