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
LOSS_MOST = 0.65
"""Its water: nothing is left to boil away. Only a roast forgotten in the hottest fan oven comes near."""
EXPELLED = 0.35
"""Meat lets go of its juice as its proteins shrink: half of it by 60 C, in the end a third of the raw mass (after the
water-holding curve of van der Sman 2007, from memory)."""


def cooking_loss(cooked: Cook, pulled: State, row: RoastRow, members: Members) -> Floats:
    """Mass lost in the oven as a share of the raw mass, one value a member: evaporated and dripped.

    Evaporation is the model's own, over the surface that a place's shape has for its volume. What the shrinking meat
    expels either evaporates or is still there to drip, and of that the share `row.drip`, fitted to published yields,
    leaves: loss = evaporated + drip (expelled - evaporated).
    """
    body = cooked.body
    evaporated = pulled.water_kg_m2 / (DENSITY_KG_M3 * body.volumes_m().sum(axis=0))
    shrunk = body.mean(1.0 / (1.0 + np.exp((SHRINK_C - body.temperature_c(pulled)) / SHRINK_WIDTH_K)))
    meat = np.array([place.core == 0.0 for place in cooked.places])

    def mean_place(values: Floats) -> Floats:
        return np.asarray(values.reshape(len(cooked.places), cooked.members)[meat].mean(axis=0))

    left = mean_place(np.maximum(EXPELLED * shrunk - evaporated, 0.0))
    return np.minimum(mean_place(evaporated) + np.minimum(row.drip * members["drip"], 1.0) * left, LOSS_MOST)
