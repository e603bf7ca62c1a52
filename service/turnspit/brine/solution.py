"""Salt in water: strength, density, freezing point, specific heat, salometer degrees.

Strength is grams of salt in 100 g of salt and water together. "Percent of the water" is the other way cooks count.
"""

from __future__ import annotations

from functools import cache

import numpy as np
from numpy.typing import NDArray

from turnspit.errors import Impossible, OutOfRange
from turnspit.reference import table

SATURATION_PERCENT = 26.395
"""The most salt water holds at 60 F: 100 degrees of the salometer (The Salometer and How to Use It)."""
CURE_PERCENT = 20.0
"""Above about this strength meat loses water and the brine is a cure (pork loin data, salt_diffusivity)."""
WATER_KG_L = 0.9982
SODIUM_OF_SALT = 22.98977 / (22.98977 + 35.453)


def check_strength(strength_percent: float) -> None:
    """Refuse a strength that cannot be dissolved (Impossible) or that cures instead of seasoning (OutOfRange)."""
    if not strength_percent > 0:
        raise Impossible(
            "strength_percent", strength_percent, "is not above 0", "give grams of salt in 100 g of brine"
        )
    if strength_percent > SATURATION_PERCENT:
        raise Impossible(
            "strength_percent",
            strength_percent,
            f"is above {SATURATION_PERCENT:g}, all the salt that cold water dissolves",
            "use about 5.5, the federal strength: 3/4 cup table salt to a US gallon of water",
        )
    if strength_percent > CURE_PERCENT:
        raise OutOfRange(
            "strength_percent",
            strength_percent,
            f"is above {CURE_PERCENT:g}: that is a cure, it draws water out of the meat",
            "use about 5.5, or a tested curing recipe",
        )


def of_water_percent(strength_percent: float) -> float:
    """Grams of salt to 100 g of water, from percent of the brine: 100 w / (100 - w)."""
    return 100.0 * strength_percent / (100.0 - strength_percent)


def of_brine_percent(of_water: float) -> float:
    """Percent of the brine from grams of salt to 100 g of water: 100 p / (100 + p)."""
    return 100.0 * of_water / (100.0 + of_water)


def salt_g(water_l: float, strength_percent: float) -> float:
    """Grams of salt for `water_l` litres of water at 20 C; all watery liquids and melted ice count as water."""
    return 1000.0 * water_l * WATER_KG_L * strength_percent / (100.0 - strength_percent)


def diluting_water_l(salt_in_g: float, water_l: float, strength_percent: float) -> float:
    """Litres of water that weaken a brine of `salt_in_g` in `water_l`; negative if it is weaker already."""
    return salt_in_g * (100.0 - strength_percent) / strength_percent / 1000.0 / WATER_KG_L - water_l


def strengthening_salt_g(salt_in_g: float, water_l: float, strength_percent: float) -> float:
    """Grams of salt that strengthen a brine of `salt_in_g` in `water_l`; negative if it is stronger already."""
    return salt_g(water_l, strength_percent) - salt_in_g


def salometer_deg(strength_percent: float) -> float:
    """Degrees of the 60 F salometer, on which 26.395 percent is 100."""
    return 100.0 * strength_percent / SATURATION_PERCENT


def density_kg_l(strength_percent: float, temperature_c: float = 15.0) -> float:
    """Density from the table at 15 and 20 C; below 15 C the 15 C value stands (under 0.3 percent low)."""
    share = min(max((temperature_c - 15.0) / 5.0, 0.0), 1.0)
    cold = _at("nacl_density", "density_15c_kg_m3", strength_percent)
    warm = _at("nacl_density", "density_20c_kg_m3", strength_percent)
    return (cold + share * (warm - cold)) / 1000.0


def freezing_c(strength_percent: float) -> float:
    """Where the first ice forms, C; to the eutectic at 23.3 percent, above which the eutectic's -21.1 C is given."""
    return _at("nacl_freezing", "freezing_c", strength_percent)


def specific_heat_j_kg_k(strength_percent: float) -> float:
    """Specific heat at 4 C, 0 to 23 percent."""
    return _at("nacl_specific_heat", "specific_heat_j_kg_k", strength_percent)


def _at(name: str, column: str, strength_percent: float) -> float:
    strengths, values = _columns(name, column)
    return float(np.interp(strength_percent, strengths, values))


@cache
def _columns(name: str, column: str) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    rows = sorted((float(row["strength_percent"]), float(row[column])) for row in table(name))
    return np.array([row[0] for row in rows]), np.array([row[1] for row in rows])
