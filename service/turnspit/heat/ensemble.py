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

from turnspit.heat.cases import Calibration
from turnspit.heat.draws import stratified_normals
from turnspit.heat.material import Floats

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


PRIORS: tuple[Prior, ...] = (
    Prior("size", "factor", 0.063, "thickness of a piece of given mass: breed, trussing, cut; spans birds and chart"),
    Prior("station", "factor", 0.025, "each place's own thickness beside the piece's"),
    Prior("shape", "offset", 0.25, "exponent n, the radius following so that the time stays: what a tape cannot see"),
    Prior("exchange", "factor", 0.09, "convection and radiation together: size of the oven, rack, crowding, pan"),
    Prior("crust", "factor", 0.30, "water loss that halves the evaporation: skin, fat, dry-brining, humidity"),
    Prior("oven", "offset", 5.0, "C: thermostat error and cycling of household ovens"),
    Prior("start", "offset", 2.0, "C: a refrigerator's spread and the walk to the oven"),
    Prior("conductivity", "factor", 0.03, "Choi and Okos against measured meats"),
    Prior("room", "offset", 2.5, "C about 21: kitchens"),
    Prior("rest_exchange", "factor", 0.25, "draught, board or rack, loose foil in the rest"),
    Prior("drip", "factor", 0.30, "juice lost by breed, ageing, handling"),
)
NAMES = tuple(prior.name for prior in PRIORS)
STATIONS_MOST = 4
SHAPE_ONLY_WIDER = 1.6
P90_Z = 1.2816


@dataclass(frozen=True, slots=True)
class Members:
    """The drawn numbers by name, each (members,), `station` (stations, members)."""

    count: int
    values: Mapping[str, Floats]

    def __getitem__(self, name: str) -> Floats:
        return self.values[name]


def draw(members: int, seed: int, calibration: Calibration = "chart") -> Members:
    """The members of an ensemble; the size spreads more for a roast known by its shape only."""
    return _members(
        stratified_normals(len(PRIORS) + STATIONS_MOST, members, seed),
        SHAPE_ONLY_WIDER if calibration == "shape only" else 1.0,
    )


def one_at_a_time() -> Members:
    """A first member at every median, then two a prior: it alone at its 10th, then at its 90th percentile."""
    normals = np.zeros((len(PRIORS) + STATIONS_MOST, 1 + 2 * len(PRIORS)))
    for row in range(len(PRIORS)):
        normals[row, 1 + 2 * row : 3 + 2 * row] = -P90_Z, P90_Z
    normals[len(PRIORS) :] = normals[NAMES.index("station")]
    return _members(normals, 1.0)


def _members(normals: Floats, widen: float) -> Members:
    values: dict[str, Floats] = {}
    for row, prior in enumerate(PRIORS):
        if prior.name == "station":
            values[prior.name] = prior.of(normals[len(PRIORS) :])
        else:
            values[prior.name] = prior.of(normals[row] * (widen if prior.name == "size" else 1.0))
    return Members(normals.shape[1], MappingProxyType(values))
