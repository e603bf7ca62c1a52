"""What a cook cannot know, as members: each a draw of the uncertain numbers, the same draws for every question.

Common random numbers: a member keeps its unit normals whatever is asked, so two forecasts differ by what was changed
and not by chance. Each number is stratified (a Latin hypercube), and one member alone sits at every median.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

import numpy as np

from turnspit.heat.draws import stratified_normals
from turnspit.heat.material import Floats
from turnspit.heat.roasts import RoastRow

Form = Literal["factor", "offset"]


@dataclass(frozen=True, slots=True)
class Prior:
    """An uncertain number: a factor exp(sd z) or an offset sd z about its median, and why it is that wide."""

    name: str
    form: Form
    sd: float
    why: str

    def of(self, normals: Floats) -> Floats:
        """The members' factors or offsets."""
        return np.exp(self.sd * normals) if self.form == "factor" else self.sd * normals


COMMON: tuple[Prior, ...] = (
    Prior("station", "factor", 0.025, "each place's own thickness beside the piece's"),
    Prior("shape", "offset", 0.25, "exponent n, the radius following so that the time stays: what a tape cannot see"),
    Prior("exchange", "factor", 0.09, "convection and radiation together: size of the oven, rack, crowding, pan"),
    Prior("crust", "factor", 0.30, "water loss that halves the evaporation: skin, fat, dry-brining, humidity"),
    Prior("oven", "offset", 5.0, "C: thermostat error and cycling of household ovens"),
    Prior("start", "offset", 2.0, "C: a refrigerator's spread and the walk to the oven"),
    Prior("conductivity", "factor", 0.03, "Choi and Okos against measured meats"),
    Prior("room", "offset", 2.5, "C about 21: kitchens"),
    Prior(
        "rest_exchange", "factor", 0.35, "draught, board or rack, warm plate, loose foil: published rises part by two"
    ),
    Prior("drip", "factor", 0.30, "juice lost by breed, ageing, handling"),
)
STATIONS_MOST = 4
P90_Z = 1.2816


@dataclass(frozen=True, slots=True)
class Members:
    """The drawn numbers by name, each (members,), `station` (stations, members)."""

    count: int
    values: Mapping[str, Floats]

    def __getitem__(self, name: str) -> Floats:
        return self.values[name]


def priors(row: RoastRow) -> tuple[Prior, ...]:
    """The uncertain numbers of a roast: how thick a piece of its mass is, and what all roasts share."""
    return (Prior("size", "factor", row.size_spread, row.size_why), *COMMON)


def draw(row: RoastRow, members: int, seed: int) -> Members:
    """The members of an ensemble of one roast."""
    return _members(priors(row), stratified_normals(1 + len(COMMON) + STATIONS_MOST, members, seed))


def one_at_a_time(row: RoastRow) -> Members:
    """A first member at every median, then two a prior: it alone at its 10th, then at its 90th percentile."""
    uncertain = priors(row)
    normals = np.zeros((len(uncertain) + STATIONS_MOST, 1 + 2 * len(uncertain)))
    for i, prior in enumerate(uncertain):
        normals[i, 1 + 2 * i : 3 + 2 * i] = -P90_Z, P90_Z
        if prior.name == "station":
            normals[len(uncertain) :] = normals[i]
    return _members(uncertain, normals)


def _members(uncertain: tuple[Prior, ...], normals: Floats) -> Members:
    """Members from unit normals: a row for each prior, then one for each station."""
    values = {prior.name: prior.of(normals[i]) for i, prior in enumerate(uncertain)}
    station = next(prior for prior in uncertain if prior.name == "station")
    values["station"] = station.of(normals[len(uncertain) :])
    return Members(normals.shape[1], MappingProxyType(values))
