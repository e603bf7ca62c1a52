"""Salt and sugar as a kitchen measures them: cups from grams, with the range of the crystals."""

from __future__ import annotations

from turnspit.brine.cases import SaltKind
from turnspit.reference import table

SUGAR_G_PER_US_CUP = 200.0
"""USDA SR28, NDB 19335, granulated sugar."""


def cups_of_salt(grams: float, kind: SaltKind) -> tuple[float, float]:
    """US cups that hold `grams` of that salt: (densest crystals, lightest crystals)."""
    row = table("salts").by("kind")[kind]
    return grams / row["g_per_us_cup_high"], grams / row["g_per_us_cup_low"]


def usual_cups_of_salt(grams: float, kind: SaltKind) -> float:
    """US cups of that salt at its usual weight a cup."""
    return grams / float(table("salts").by("kind")[kind]["g_per_us_cup"])


def grams_by_volume(grams: float, kind: SaltKind) -> tuple[float, float]:
    """What would truly be in the cups that usually hold `grams`: least and most, by crystals."""
    row = table("salts").by("kind")[kind]
    cups = grams / row["g_per_us_cup"]
    return cups * row["g_per_us_cup_low"], cups * row["g_per_us_cup_high"]
