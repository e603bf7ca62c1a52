"""What is asked of the heat room and what it answers: plain numbers in SI, percentiles for whatever is uncertain."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from turnspit.heat.given import check_number
from turnspit.message import Caution, Message
from turnspit.spread import Spread

State = Literal["thawed", "part_frozen", "frozen"]
Calibration = Literal["measured", "chart", "shape only"]
ThawMethod = Literal["refrigerator", "cold_water"]
Shape = Literal["slab", "cylinder", "brick", "bird", "pot"]
Medium = Literal["air", "water", "ice_bath"]
Packaging = Literal["bag", "mould", "wrap"]
Cover = Literal["none", "foil", "lid", "bag"]
RestPlace = Literal["board", "foil", "wrapped", "cupboard"]
PlatterCover = Literal["none", "foil"]
Pan = Literal["any", "dark", "light", "glass"]
Floats = NDArray[np.float64]

FOOD_RANGE_C = -40.0, 120.0
MEMBERS = 256
SEED = 1


@dataclass(frozen=True, slots=True)
class OvenStep:
    """The oven from one minute on: set temperature in C, fan or not, and what covers the roast in it.

    Below 40 C it counts as turned off, its door shut.
    """

    from_min: float = 0.0
    temperature_c: float = 163.0
    convection: bool = False
    cover: Cover = "none"


@dataclass(frozen=True, slots=True)
class Platter:
    """The meat once carved: slices `depth_mm` (5 to 100) deep on a platter, bare or under foil, it cold or warm.

    `served_c`: below it the meat is no longer warm to eat (30 to 60; 45 is common practice, no source).
    """

    depth_mm: float = 25.0
    cover: PlatterCover = "none"
    warmed: bool = False
    served_c: float = 45.0


@dataclass(frozen=True, slots=True)
class PlatterForecast:
    """The carved meat as it cools in the room, from the end of the rest on.

    `carved_c` is its temperature when carved, `warm_min` how long it stays above `platter.served_c` (two hours where
    it is still warm then). `clock_left_min`: what the rest has left of the two hours out of the heat; after them it
    is chilled or thrown away. `curve_c` holds three percentiles of the mean of the slices, (3, len(curve_min)).
    """

    platter: Platter
    carved_c: Spread
    warm_min: Spread
    clock_left_min: float
    curve_min: Floats = field(default_factory=lambda: np.empty(0), repr=False)
    curve_c: Floats = field(default_factory=lambda: np.empty((3, 0)), repr=False)


@dataclass(frozen=True, slots=True)
class RoastCase:
    """One roast and its oven. `mass_kg` is one piece; `count` pieces share the oven with air between them.

    `target_c` defaults to the roast's own (the safe minimum for birds), `pull_c` to `target_c`. `preheated`: the oven
    is hot when the roast goes in. `openings_min`: the minutes at which the door is opened to look, `bastings_min`: to
    baste.
    `pan` is what it lies in or over: dark or enamelled, light and bright, glass, or any (not told, as in all charts).
    `tied`: a joint tied round, a bird trussed, or neither; None where it is not told, as in all charts.
    `platter`: how it is carved after the rest, where that is asked.
    It rests on a board in the room, under loose foil, still wrapped in the foil or bag it was roasted in, or in a
    cupboard of 60 C; None: as it came out of the oven (preparation.resting). `oven_vapour_pa` is the vapour pressure
    of the oven's air: about 5 kPa in a vented oven, 20 to 60 with steam.
    """

    kind: str
    mass_kg: float
    count: int = 1
    state: State = "thawed"
    stuffed: bool = False
    bone_in: bool | None = None
    start_c: float = 4.4
    oven: tuple[OvenStep, ...] = (OvenStep(),)
    target_c: float | None = None
    pull_c: float | None = None
    rest_min: float = 30.0
    altitude_m: float = 0.0
    members: int = MEMBERS
    seed: int = SEED
    preheated: bool = True
    openings_min: tuple[float, ...] = ()
    bastings_min: tuple[float, ...] = ()
    rest_place: RestPlace | None = None
    oven_vapour_pa: float = 5000.0
    pan: Pan = "any"
    platter: Platter | None = None
    tied: bool | None = None


@dataclass(frozen=True, slots=True)
class RoastForecast:
    """What the ensemble expects of a roast; planning, never proof of safety.

    `ready_members_min` holds each member's minutes to `pull_c` at the deciding (slowest) station. `curve_c` gives per
    station the 10th, 50th and 90th percentile, shaped (3, len(curve_min)), of oven and rest together.
    `history_c` gives per station each member's temperature in the oven, shaped (len(history_min), members), carried
    on well past the target so that a reading can be placed on it.
    """

    case: RoastCase
    target_c: float
    pull_c: float
    ready_min: Spread
    ready_members_min: Floats = field(repr=False)
    deciding_station: str = ""
    advised_pull_c: float = 0.0
    peak_c: Mapping[str, Spread] = field(default_factory=dict)
    loss_fraction: Spread = field(default_factory=lambda: Spread(0.0, 0.0, 0.0))
    curve_min: Floats = field(default_factory=lambda: np.empty(0), repr=False)
    curve_c: Mapping[str, Floats] = field(default_factory=dict, repr=False)
    history_min: Floats = field(default_factory=lambda: np.empty(0), repr=False)
    history_c: Mapping[str, Floats] = field(default_factory=dict, repr=False)
    platter: PlatterForecast | None = None
    calibration: Calibration = "shape only"
    assumptions: tuple[Message, ...] = ()
    cautions: tuple[Caution, ...] = ()

    def ready_quantile_min(self, probability: float) -> float:
        """Minutes by which a share `probability` (0 to 1) of the members is ready."""
        return float(np.quantile(self.ready_members_min, probability))


@dataclass(frozen=True, slots=True)
class ThawCase:
    """A frozen piece thawing in a refrigerator or in cold water that is changed each half hour.

    `refrigerator_h`: hours it has in the refrigerator before the cold water, for both in turn (method cold_water).
    """

    kind: str
    mass_kg: float
    method: ThawMethod = "refrigerator"
    medium_c: float | None = None
    start_c: float = -18.0
    refrigerator_h: float = 0.0
    members: int = 64
    seed: int = SEED


@dataclass(frozen=True, slots=True)
class ThawForecast:
    """Hours to thaw.

    `model_h` is computed, `rule_h` the federal window (None without one), `plan_h` the safer of both: the greater of
    the rule's upper end and the model's P90. `surface_above_5c_h`: how long the surface is above 5 C by `plan_h`.
    """

    case: ThawCase
    model_h: Spread
    rule_h: tuple[float, float] | None
    plan_h: float
    surface_above_5c_h: Spread
    curve_h: Floats = field(default_factory=lambda: np.empty(0), repr=False)
    core_c: Floats = field(default_factory=lambda: np.empty(0), repr=False)
    surface_c: Floats = field(default_factory=lambda: np.empty(0), repr=False)
    assumptions: tuple[Message, ...] = ()
    cautions: tuple[Caution, ...] = ()


@dataclass(frozen=True, slots=True)
class ChillCase:
    """Something hot cooling: `dims_mm` are full thicknesses (slab: depth; cylinder and pot: diameter, height;
    brick: three edges; bird: none, from `mass_kg`)."""

    food: str
    shape: Shape
    dims_mm: tuple[float, ...] = ()
    mass_kg: float | None = None
    medium: Medium = "air"
    medium_c: float = 3.0
    air_m_s: float = 0.0
    packaging: Packaging | None = None
    stirred: bool = False
    from_c: float = 57.0
    to_c: float = 5.0
    members: int = 64
    seed: int = SEED


@dataclass(frozen=True, slots=True)
class ChillForecast:
    """Hours from `from_c` to `to_c` at the slowest point, and that point's curve (3 percentiles by time)."""

    case: ChillCase
    hours: Spread
    curve_h: Floats = field(default_factory=lambda: np.empty(0), repr=False)
    slowest_c: Floats = field(default_factory=lambda: np.empty((3, 0)), repr=False)
    assumptions: tuple[Message, ...] = ()
    cautions: tuple[Caution, ...] = ()

    def hours_between(self, from_c: float, to_c: float) -> Spread:
        """Hours the slowest point takes between two temperatures on its way down; infinite where it never arrives.

        C, from -40 to 120: raises OutOfRange beyond (NaN is), Impossible for what is no number. 0 where it is that
        cold already.
        """
        for name, value in (("from_c", from_c), ("to_c", to_c)):
            check_number(name, value, *FOOD_RANGE_C, "give a temperature of the food in C")
        bounds = []
        for row in self.slowest_c:
            falling = np.minimum.accumulate(row)[::-1]
            start, end = np.interp((from_c, to_c), falling, self.curve_h[::-1], right=0.0)
            bounds.append(float("inf") if to_c < falling[0] else max(float(end - start), 0.0))
        return Spread(*bounds)
