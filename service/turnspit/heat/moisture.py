"""What a roast loses: water evaporated at the surface, juice and fat dripped from within."""

from __future__ import annotations

import numpy as np

from turnspit.heat.cook import Cook
from turnspit.heat.ensemble import Members
from turnspit.heat.material import Floats
from turnspit.heat.roasts import RoastRow
from turnspit.heat.solver import State

DENSITY_KG_M3 = 1050.0
SHRINK_C, SHRINK_WIDTH_K = 60.0, 5.0
"""Meat lets go of its juice as its proteins shrink, half of it by 60 C (after van der Sman 2007, from memory)."""


def cooking_loss(cooked: Cook, pulled: State, row: RoastRow, members: Members) -> Floats:
    """Mass lost in the oven as a share of the raw mass, one value a member: evaporated and dripped.

    Evaporation is the model's own, per m2 and by the surface that the station's shape has for its volume. Dripping is
    `row.drip` times the share of the volume past the shrinking of its proteins; `drip` is fitted to published yields.
    """
    body = cooked.body
    evaporated = pulled.water_kg_m2 / (DENSITY_KG_M3 * body.volumes_m().sum(axis=0))
    shrunk = body.mean(1.0 / (1.0 + np.exp((SHRINK_C - body.temperature_c(pulled)) / SHRINK_WIDTH_K)))
    meat = np.array([place.core == 0.0 for place in cooked.places])

    def mean_place(values: Floats) -> Floats:
        return np.asarray(values.reshape(len(cooked.places), cooked.members)[meat].mean(axis=0))

    return mean_place(evaporated) + row.drip * members["drip"] * mean_place(shrunk)
