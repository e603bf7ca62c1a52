"""Whether the probe tells the truth: ice water and boiling water, at the kitchen's altitude."""

from __future__ import annotations

from typing import Literal

import numpy as np

from turnspit.errors import OutOfRange
from turnspit.reference import rule, table
from turnspit.reference.rules import LIMIT_TOLERANCE

Bath = Literal["ice", "boiling"]
ICE_C = 0.0


def boiling_point_c(altitude_m: float) -> float:
    """Boiling point of water in C at `altitude_m` (-500 to 5500 m), interpolated in the computed table.

    Raises OutOfRange. Source: ICAO standard atmosphere and IAPWS-IF97 (table `boiling_point`).
    """
    rows = table("boiling_point").rows
    heights = [float(row["altitude_m"]) for row in rows]
    OutOfRange.check("altitude_m", altitude_m, heights[0], heights[-1], "is that feet?")
    return float(np.interp(altitude_m, heights, [float(row["boiling_c"]) for row in rows]))


def probe_error_k(reading_c: float, bath: Bath, altitude_m: float = 0.0) -> float:
    """How much the probe reads too high (below zero: too low) in ice water or in boiling water."""
    return reading_c - (ICE_C if bath == "ice" else boiling_point_c(altitude_m))


def probe_is_true(error_k: float) -> bool:
    """Whether an error is within what the Food Code allows a food thermometer (1 K)."""
    return abs(error_k) <= rule("thermometer-check").limits["error_max_k"] + LIMIT_TOLERANCE


def corrected_c(reading_c: float, error_k: float) -> float:
    """A reading with the known error of the probe taken off."""
    return reading_c - error_k
