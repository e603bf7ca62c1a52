"""Heat transport in roasts: thaw, roast, rest and chill from one enthalpy solver, run as an ensemble.

Numbers in, numbers out: SI with temperatures in C, no clock, no files but the reference tables, no randomness but the
seed in the case. What it predicts is planning and never satisfies a safety rule.
"""

from turnspit.heat.cases import (
    MEMBERS,
    SEED,
    ChillCase,
    ChillForecast,
    OvenStep,
    Platter,
    PlatterForecast,
    RoastCase,
    RoastForecast,
    State,
    ThawCase,
    ThawForecast,
    ThawMethod,
)
from turnspit.heat.chill import depth_for, forecast_chill
from turnspit.heat.inverse import (
    Sensitivity,
    Trade,
    largest_mass_kg,
    minutes_to_allow,
    oven_for,
    sensitivities,
    trades,
)
from turnspit.heat.roasting import forecast_roast
from turnspit.heat.roasts import KINDS, RoastRow, Station, roast
from turnspit.heat.thaw import forecast_thaw

__all__ = [
    "KINDS",
    "MEMBERS",
    "SEED",
    "ChillCase",
    "ChillForecast",
    "OvenStep",
    "Platter",
    "PlatterForecast",
    "RoastCase",
    "RoastForecast",
    "RoastRow",
    "Sensitivity",
    "State",
    "Station",
    "ThawCase",
    "ThawForecast",
    "ThawMethod",
    "Trade",
    "depth_for",
    "forecast_chill",
    "forecast_roast",
    "forecast_thaw",
    "largest_mass_kg",
    "minutes_to_allow",
    "oven_for",
    "roast",
    "sensitivities",
    "trades",
]
