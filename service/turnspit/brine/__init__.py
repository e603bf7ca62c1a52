"""Salt in water and in meat: strength, amounts for a bird and a vessel, cold, hours, uptake."""

from turnspit.brine.cases import BrineCase, BrinePlan, Method, SaltKind, SaltProfile, SoldAs
from turnspit.brine.cooling import (
    ColdBrine,
    WithoutIce,
    cold_brine,
    cooling_without_ice,
    ice_to_chill_kg,
    unaided_cooling,
)
from turnspit.brine.plan import equilibrium_salt_g, hours_to_salt, plan_brine
from turnspit.brine.vessel import CommonVessel, Fit, common_vessels, fit

__all__ = [
    "BrineCase",
    "BrinePlan",
    "ColdBrine",
    "CommonVessel",
    "Fit",
    "Method",
    "SaltKind",
    "SaltProfile",
    "SoldAs",
    "WithoutIce",
    "cold_brine",
    "common_vessels",
    "cooling_without_ice",
    "equilibrium_salt_g",
    "fit",
    "hours_to_salt",
    "ice_to_chill_kg",
    "plan_brine",
    "unaided_cooling",
]
