"""Getting the brine cold before the bird goes in: how much ice, by enthalpy balance; how long a pot takes without."""

from __future__ import annotations

import math
from dataclasses import dataclass

from turnspit.brine.cases import BrinePlan
from turnspit.brine.solution import WATER_KG_L, specific_heat_j_kg_k
from turnspit.errors import OutOfRange
from turnspit.spread import Spread

FUSION_J_KG = 333_550.0
"""Heat of fusion of ice at 0 C (IAPWS, 1 atm)."""
ICE_J_KG_K = 2050.0
WATER_J_KG_K = 4186.0
"""Mean of water between 0 and 100 C."""
BOILING_C = 100.0
CONCENTRATE_PERCENT = 20.0
"""The hot part is kept at or below this strength, so that the salt dissolves with ease."""
STRONGEST_CONCENTRATE_PERCENT = 23.0
"""Where that leaves too little room for ice; the tables end there, cold water holds 26 percent."""
LEAST_SHARE = 1 / 6


@dataclass(frozen=True, slots=True)
class ColdBrine:
    """The water of a brine in three parts: heated with the salt to `hot_c`, cold from the tap, and ice (kg)."""

    concentrate_water_l: float
    hot_c: float
    cold_water_l: float
    ice_kg: float
    final_c: float


def ice_to_chill_kg(
    brine_kg: float, strength_percent: float, from_c: float, to_c: float = 4.0, ice_c: float = 0.0
) -> float:
    """Ice that brings `brine_kg` of brine from `from_c` to `to_c`, vessel and losses left out.

    m_ice = m c (T0 - T) / (L + c_w T - c_ice T_ice), in C. The ice's water counts into the brine: make it stronger
    to begin with. Raises OutOfRange for a final temperature outside 0 to 40 C.
    """
    OutOfRange.check("to_c", to_c, 0.0, 40.0, "a brine is chilled to 4 C or below, above freezing")
    heat = brine_kg * specific_heat_j_kg_k(strength_percent) * (from_c - to_c)
    return max(heat, 0.0) / _taken_by_ice_j_kg(to_c, ice_c)


def cold_brine(
    water_l: float,
    strength_percent: float,
    sugar_percent: float = 0.0,
    *,
    tap_c: float = 15.0,
    to_c: float = 3.0,
    ice_c: float = 0.0,
) -> ColdBrine:
    """How to split the water of a brine so that it is at `to_c` as soon as it is mixed.

    Salt and sugar boil in the least water that takes them easily (at most 20 percent strong, at least a sixth of the
    water); the rest is tap water at `tap_c` and ice. Where ice for all the rest is too little (a strong brine), the
    concentrate is 23 percent, there is no tap water, and it is only heated to what the ice can take.
    """
    water_kg = water_l * WATER_KG_L
    salt_kg = water_kg * strength_percent / (100.0 - strength_percent)
    sugar_kg = water_kg * sugar_percent / (100.0 - sugar_percent)
    ice_j_kg, tap_j_kg = _taken_by_ice_j_kg(to_c, ice_c), WATER_J_KG_K * (tap_c - to_c)
    for concentrate_percent in (CONCENTRATE_PERCENT, STRONGEST_CONCENTRATE_PERCENT):
        by_salt_kg = salt_kg * (100.0 - concentrate_percent) / concentrate_percent
        heated_kg = min(max(by_salt_kg, sugar_kg, LEAST_SHARE * water_kg), water_kg)
        rest_kg = water_kg - heated_kg
        hot_percent = 100.0 * salt_kg / (salt_kg + heated_kg)
        hot_j_k = (heated_kg + salt_kg + sugar_kg) * specific_heat_j_kg_k(hot_percent)
        ice_kg = (hot_j_k * (BOILING_C - to_c) + rest_kg * tap_j_kg) / (ice_j_kg + tap_j_kg)
        if ice_kg <= rest_kg:
            return ColdBrine(heated_kg / WATER_KG_L, BOILING_C, (rest_kg - ice_kg) / WATER_KG_L, ice_kg, to_c)
    return ColdBrine(heated_kg / WATER_KG_L, to_c + rest_kg * ice_j_kg / hot_j_k, 0.0, rest_kg, to_c)


def unaided_cooling(
    water_l: float, *, from_c: float = 95.0, to_c: float = 4.44, refrigerator_c: float = 3.0
) -> Spread:
    """Hours that a pot of brine, as wide as it is deep, takes in a refrigerator when no ice goes in.

    By the heat model for pots of liquid. Raises OutOfRange outside 0.1 to 60 L, and Impossible where the refrigerator
    is not colder than `to_c`.
    """
    from turnspit.heat import ChillCase, forecast_chill  # only this question needs it

    OutOfRange.check("water_l", water_l, 0.1, 60.0, "divide a larger brine over several pots")
    across_mm = 1000.0 * (4.0 * water_l / 1000.0 / math.pi) ** (1 / 3)
    case = ChillCase(
        food="water", shape="pot", dims_mm=(across_mm, across_mm), medium_c=refrigerator_c, from_c=from_c, to_c=to_c
    )
    return forecast_chill(case).hours


@dataclass(frozen=True, slots=True)
class WithoutIce:
    """A brine mixed from its hot concentrate and tap water alone: how warm it is then, and hours to 4.4 C."""

    from_c: float
    hours: Spread


def cooling_without_ice(plan: BrinePlan, refrigerator_c: float = 3.0) -> WithoutIce | None:
    """How long the brine of a plan takes to be cold enough in the refrigerator where there is no ice.

    The ice of the plan is tap water then. By `unaided_cooling`, whose errors it raises; None for dry salting.
    """
    cold_kg = (plan.cold_water_l + plan.ice_kg / WATER_KG_L) * WATER_KG_L
    if not plan.concentrate_water_l:
        return None
    hot_kg = plan.concentrate_water_l * WATER_KG_L + (plan.salt_g + plan.sugar_g) / 1000.0
    hot_percent = 100.0 * plan.salt_g / 1000.0 / hot_kg
    hot_j_k, cold_j_k = hot_kg * specific_heat_j_kg_k(hot_percent), cold_kg * WATER_J_KG_K
    from_c = (hot_j_k * plan.concentrate_c + cold_j_k * plan.case.tap_c) / (hot_j_k + cold_j_k)
    return WithoutIce(from_c, unaided_cooling(plan.water_l, from_c=from_c, refrigerator_c=refrigerator_c))


def _taken_by_ice_j_kg(to_c: float, ice_c: float) -> float:
    return FUSION_J_KG + WATER_J_KG_K * to_c - ICE_J_KG_K * min(ice_c, 0.0)
