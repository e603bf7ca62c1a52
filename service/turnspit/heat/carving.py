"""Carving starts the cooling: slices on a platter in a room, from what each member is at the end of its rest."""

from __future__ import annotations

import numpy as np

from turnspit.heat.cases import Platter, PlatterForecast
from turnspit.heat.cook import Cook
from turnspit.heat.ensemble import Members
from turnspit.heat.material import Floats
from turnspit.heat.oven import ROOM_C
from turnspit.heat.percentiles import percentiles, spread
from turnspit.heat.preparation import Filling, inlaid, inner_share, meat
from turnspit.heat.pull import Pulled
from turnspit.heat.roasts import RoastRow
from turnspit.heat.solver import Body, graded_times, march
from turnspit.reference import rule

CELLS = 14
PLATTER_M, WARMED_C = 0.009, 60.0
PLATTER = Filling(capacity=2.0e6, conductivity=1.3, start_c=ROOM_C)
"""Stoneware, 2300 kg/m3 of 870 J/kgK (from memory)."""
RIM_PER_M = 13.7
"""Rim over top of a platter of 35 by 25 cm, for each m of depth."""
STEPS_S = 10.0, 240.0


def on_platter(platter: Platter, cooked: Cook, pulled: Pulled, row: RoastRow, members: Members) -> PlatterForecast:
    """How the meat of every member cools once it is carved at the end of its rest.

    One layer, the platter at its bottom, cooling from the top and from a rim that counts as more top.
    """
    carved_c = _mean_of_meat(cooked, pulled)
    thickness_m = platter.depth_mm / 1000.0 + PLATTER_M
    slices = Body(np.full(members.count, thickness_m), np.zeros(members.count), meat(row, members), CELLS)
    dish = PLATTER._replace(start_c=WARMED_C) if platter.warmed else PLATTER
    below = np.full(members.count, PLATTER_M / thickness_m)
    body, start_c = inlaid(slices, np.broadcast_to(carved_c, (CELLS, members.count)), below, dish)
    surface = cooked.around.platter(members, platter.cover, 1.0 + RIM_PER_M * platter.depth_mm / 1000.0)
    clock_min = 60.0 * rule("two-hours").limits["elapsed_max_h"]
    times_s = graded_times(clock_min * 60.0, *STEPS_S, 1.6)
    history = march(body, body.state(start_c), surface, times_s, keep_states=True)
    weights = body.volumes_m() * (1.0 - inner_share(body, below))
    weights /= weights.sum(axis=0)
    mean_c = np.array([(weights * body.temperature_c(state)).sum(axis=0) for state in history.states])
    minutes = history.times_s / 60.0
    warm_min = np.array([np.interp(-platter.served_c, -member, minutes) for member in mean_c.T])
    return PlatterForecast(
        platter=platter,
        carved_c=spread(carved_c),
        warm_min=spread(warm_min),
        clock_left_min=max(clock_min - float(pulled.rest_s[-1]) / 60.0, 0.0),
        curve_min=minutes,
        curve_c=percentiles(mean_c),
    )


def _mean_of_meat(cooked: Cook, pulled: Pulled) -> Floats:
    """The mean over the roast of each member at the end of its rest, stuffing left out, and never above boiling."""
    mean_c = cooked.body.mean(cooked.body.temperature_c(pulled.rested)).reshape(len(cooked.places), cooked.members)
    is_meat = np.array([place.core == 0.0 for place in cooked.places])
    return np.asarray(np.minimum(mean_c[is_meat].mean(axis=0), cooked.around.boiling_c))
