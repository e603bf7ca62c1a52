"""How much salt the meat takes up, and what that makes on the plate: percent and milligrams of sodium.

The diffusion model gives the salt in the raw meat; the roast concentrates it (it loses water) and loses some in the
drippings. What a cook cannot know (diffusivity, thickness, partition, loss) is drawn for each member of an ensemble.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Self

import numpy as np
from numpy.typing import ArrayLike, NDArray

from turnspit.brine.cases import BrineCase, SaltProfile
from turnspit.brine.diffusion import Bath, Body, diffusivity_m2_s
from turnspit.brine.geometry import Part, geometry
from turnspit.brine.solution import SODIUM_OF_SALT
from turnspit.reference import table
from turnspit.spread import Spread

Floats = NDArray[np.float64]

THICKNESS_SIGMA = 0.2
COOKED_OF_RAW = (0.70, 0.82)
"""Hot roasted meat over raw: USDA Cooking Yields 2014 gives 68 to 82 percent."""
SALT_KEPT = (0.75, 0.95)
"""Of the salt in the raw meat, what does not leave with the drippings (memory)."""
HOURS_GRID = np.geomspace(0.5, 200.0, 20)
HOURS_MEMBERS = 48


@dataclass(frozen=True, slots=True)
class Uptake:
    """Salt in the meat of one case over time; rows are ensemble members."""

    case: BrineCase
    parts: tuple[Part, ...]
    bath: Bath = field(repr=False)
    salt_per_water: float
    travel_m2_s: Floats = field(repr=False)
    partition: Floats = field(repr=False)
    concentration: Floats = field(repr=False)

    @classmethod
    def of(cls, case: BrineCase, water_kg: float, salt_kg: float) -> Self:
        """The meat of `case` in a brine of `salt_kg` in `water_kg`."""
        parts = geometry(case.kind)
        meat_kg = case.count * case.mass_kg * parts[0].meat_of_raw
        bodies = [
            Body(part.form, part.reach_m(case.mass_kg), meat_kg * part.share_of_meat * part.water_fraction)
            for part in parts
        ]
        rows = table("salt_diffusivity").by("key")
        random = np.random.default_rng(case.seed)
        diffusivity = diffusivity_m2_s(case.brine_c) * random.lognormal(
            0.0, np.log(rows["spread"]["factor_one_sigma"]), case.members
        )
        thickness = random.lognormal(0.0, THICKNESS_SIGMA, case.members)
        partition = random.uniform(rows["partition"]["low"], rows["partition"]["high"], case.members)
        return cls(
            case=case,
            parts=parts,
            bath=Bath.of(bodies, water_kg),
            salt_per_water=salt_kg / water_kg,
            travel_m2_s=diffusivity / thickness**2,
            partition=partition,
            concentration=_concentration(random, case.members),
        )

    def raw_percent(self, hours: float) -> Floats:
        """Grams of salt in 100 g of raw meat after `hours`, native salt included: (parts, members)."""
        means = self.bath.means(self.travel_m2_s * hours * 3600.0)
        taken = 100.0 * self.salt_per_water * means * self.partition
        water = np.array([part.water_fraction for part in self.parts])
        return np.asarray(taken * water[:, None] + _native_percent(self.parts)[:, None])

    def finished_percent(self, hours: float) -> Floats:
        """Grams of salt in 100 g of carved roast, white and dark together: one a member."""
        return np.asarray(_shares(self.parts) @ self.raw_percent(hours) * self.concentration)

    def finished_by_part(self, hours: float) -> dict[str, Spread]:
        """The finished salt of each part."""
        cooked = self.raw_percent(hours) * self.concentration
        return {part.name: Spread.of(row) for part, row in zip(self.parts, cooked, strict=True)}

    def uptake_g(self, hours: float) -> Spread:
        """Grams of salt that pass from the brine into all the meat."""
        meat_g = 1000.0 * self.case.count * self.case.mass_kg * self.parts[0].meat_of_raw
        gained = _shares(self.parts) @ (self.raw_percent(hours) - _native_percent(self.parts)[:, None])
        return Spread.of(meat_g * gained / 100.0)

    def hours_to(self, *finished_percent: float) -> tuple[Spread | None, ...]:
        """Hours until the carved meat holds each much salt on average; None where most members never do in 200 h."""
        members = slice(0, min(HOURS_MEMBERS, self.case.members))
        travelled = np.outer(self.travel_m2_s[members], HOURS_GRID * 3600.0)
        means = self.bath.means(travelled.ravel()).reshape(len(self.parts), *travelled.shape)
        water = np.array([part.water_fraction for part in self.parts]) * _shares(self.parts)
        taken = 100.0 * self.salt_per_water * np.tensordot(water, means, 1) * self.partition[members, None]
        native = float(_shares(self.parts) @ _native_percent(self.parts))
        finished = (taken + native) * self.concentration[members, None]
        return tuple(_crossing(finished, target) for target in finished_percent)

    def profile(self, part: str, hours: float) -> SaltProfile:
        """Salt against depth in the raw meat of one part, at the median diffusivity, thickness and partition."""
        number = [piece.name for piece in self.parts].index(part)
        body = self.parts[number]
        travelled = diffusivity_m2_s(self.case.brine_c) * hours * 3600.0
        depth_m, per_water = self.bath.profile(number, travelled)
        taken = 100.0 * self.salt_per_water * per_water * float(np.median(self.partition)) * body.water_fraction
        return SaltProfile(part, hours, depth_m * 1000.0, taken + float(_native_percent((body,))[0]))


def sodium_mg(finished_percent: ArrayLike, serving_g: float) -> Spread:
    """Sodium of a serving of carved meat."""
    return Spread.of(np.asarray(finished_percent) / 100.0 * serving_g * 1000.0 * SODIUM_OF_SALT)


def dry_salted_percent(case: BrineCase, percent_of_raw: float) -> Floats:
    """Finished salt of a roast rubbed with `percent_of_raw` of its raw weight, all of it taken up; one a member."""
    parts = geometry(case.kind)
    raw = percent_of_raw / parts[0].meat_of_raw + float(_shares(parts) @ _native_percent(parts))
    return raw * _concentration(np.random.default_rng(case.seed), case.members)


def _crossing(finished: Floats, target: float) -> Spread | None:
    reached = np.array([np.interp(target, row, HOURS_GRID, right=np.inf) for row in finished])
    return Spread.of(reached) if np.mean(np.isfinite(reached)) >= 0.95 else None


def _concentration(random: np.random.Generator, members: int) -> Floats:
    return random.uniform(*SALT_KEPT, members) / random.uniform(*COOKED_OF_RAW, members)


def _native_percent(parts: tuple[Part, ...]) -> Floats:
    return np.array([part.sodium_mg_per_100g / 1000.0 / SODIUM_OF_SALT for part in parts])


def _shares(parts: tuple[Part, ...]) -> Floats:
    return np.array([part.share_of_meat for part in parts])
