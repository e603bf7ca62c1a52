"""Thermal properties of foods from their composition: density, specific heat, conductivity, ice, enthalpy.

Component polynomials: Choi and Okos (1986). Where several equations are in use for one property each stands here
under its author's name, and `material` takes those that fit measurements best (Fricke and Becker, HVAC&R
Research 7(4), 2001): Chen for ice and so for enthalpy, Levy for conductivity. C from -40 to 130, all others SI.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cache
from types import MappingProxyType

import numpy as np
from numpy.typing import ArrayLike, NDArray

from turnspit.errors import Impossible, Unknown
from turnspit.heat.material import Material
from turnspit.reference import table

Floats = NDArray[np.float64]

LATENT_HEAT_ICE = 333.6e3
"""Heat of fusion of ice at 0 C, J/kg."""
LEAN_MEAT_FREEZING_C = -1.7
"""Where the composition table prints no freezing point: that of its lean beef rows."""
TEMPERATURE_RANGE_C = (-40.0, 130.0)


@dataclass(frozen=True, slots=True)
class Composition:
    """What a food is made of, mass fractions, and where it begins to freeze (C).

    Raises Impossible for fractions that are negative or do not add up to 1 within 3 percent.
    """

    water: float
    protein: float
    fat: float
    ash: float
    carbohydrate: float = 0.0
    freezing_c: float = LEAN_MEAT_FREEZING_C

    def __post_init__(self) -> None:
        parts = self._parts()
        total = sum(parts.values())
        for name, value in parts.items():
            if not value >= 0:
                raise Impossible(name, value, "is below 0", "give a mass fraction from 0 to 1")
        if not abs(total - 1) < 0.03:
            raise Impossible("composition", total, "is not 1 in all", "give mass fractions that add up to 1")
        if not self.freezing_c < 0:
            raise Impossible("freezing_c", self.freezing_c, "is not below 0", "food freezes below 0 C")

    def _parts(self) -> dict[str, float]:
        return {name: getattr(self, name) for name in ("water", "protein", "fat", "ash", "carbohydrate")}

    @property
    def solids(self) -> float:
        """Everything but the water."""
        return 1.0 - self.water

    @property
    def bound_water(self) -> float:
        """Water held by the protein that does not freeze: 0.4 of its mass (ASHRAE Refrigeration 2006, ch. 9)."""
        return min(0.4 * self.protein, self.water)

    def dry_parts(self) -> dict[str, float]:
        """The solid components by name."""
        return {name: value for name, value in self._parts().items() if name != "water"}


def composition(food: str) -> Composition:
    """The composition of a food of the table `composition`, made to add up to 1. Raises Unknown."""
    rows = table("composition").by("food")
    if food not in rows:
        raise Unknown("food", food, tuple(rows))
    row = rows[food]
    parts = {name: row[name] for name in ("water", "protein", "fat", "ash", "carbohydrate")}
    total = sum(parts.values())
    return Composition(
        **{name: value / total for name, value in parts.items()},
        freezing_c=row.get("freezing_c", LEAN_MEAT_FREEZING_C),
    )


# ---------------------------------------------------------------------------------------------- components


@cache
def _polynomials(quantity: str) -> Mapping[str, tuple[float, float, float]]:
    rows = table("choi_okos").by("component")
    return MappingProxyType({name: tuple(row[quantity]) for name, row in rows.items() if quantity in row})


def _component(quantity: str, name: str, temperature_c: ArrayLike) -> Floats:
    c0, c1, c2 = _polynomials(quantity)[name]
    t = np.asarray(temperature_c, dtype=float)
    return np.asarray(c0 + t * (c1 + t * c2))


def component_conductivity(name: str, temperature_c: ArrayLike) -> Floats:
    """Conductivity of a pure component, W/mK (Choi and Okos)."""
    return _component("conductivity", name, temperature_c)


def component_density(name: str, temperature_c: ArrayLike) -> Floats:
    """Density of a pure component, kg/m3 (Choi and Okos)."""
    return _component("density", name, temperature_c)


def component_specific_heat(name: str, temperature_c: ArrayLike) -> Floats:
    """Specific heat of a pure component, J/kgK (Choi and Okos); water below 0 C is the supercooled liquid."""
    above = 1e3 * _component("specific_heat", name, temperature_c)
    if name != "water":
        return above
    below = 1e3 * _component("specific_heat", "supercooled water", temperature_c)
    return np.where(np.asarray(temperature_c, dtype=float) < 0, below, above)


def _component_enthalpy(name: str, temperature_c: Floats) -> Floats:
    """Integral of the specific heat from 0 C, J/kg; ice carries its latent heat."""

    def integral(key: str) -> Floats:
        c0, c1, c2 = _polynomials("specific_heat")[key]
        return np.asarray(1e3 * temperature_c * (c0 + temperature_c * (c1 / 2 + temperature_c * c2 / 3)))

    if name == "water":
        return np.where(temperature_c < 0, integral("supercooled water"), integral("water"))
    return integral(name) - (LATENT_HEAT_ICE if name == "ice" else 0.0)


# ------------------------------------------------------------------------------------------------------ ice


def ice_chen(food: Composition, temperature_c: ArrayLike) -> Floats:
    """Mass fraction of ice, (xw - xb)(1 - tf/t) below the freezing point (Chen 1985; ASHRAE 2006 ch. 9, eq. 5)."""
    t = np.minimum(np.asarray(temperature_c, dtype=float), food.freezing_c)
    return np.asarray((food.water - food.bound_water) * (1 - food.freezing_c / t))


def ice_tchigeov(food: Composition, temperature_c: ArrayLike) -> Floats:
    """Mass fraction of ice in meats from -45 C, 1.105 xw / (1 + 0.7138 / ln(tf - t + 1)) (Tchigeov 1979)."""
    below_k = food.freezing_c - np.asarray(temperature_c, dtype=float)
    log = np.log(np.maximum(below_k, 1e-12) + 1)
    return np.where(below_k > 0, 1.105 * food.water * log / (log + 0.7138), 0.0)


# ------------------------------------------------------------------------------- specific heat and enthalpy


def specific_heat(food: Composition, temperature_c: ArrayLike) -> Floats:
    """Specific heat without change of phase, J/kgK: the components' by mass fraction, all water liquid."""
    parts = {"water": food.water, **food.dry_parts()}
    return np.asarray(sum(x * component_specific_heat(name, temperature_c) for name, x in parts.items()))


def specific_heat_unfrozen_chen(food: Composition) -> float:
    """Unfrozen specific heat, J/kgK: 4.19 - 2.30 xs - 0.628 xs^3 in kJ (Chen 1985)."""
    return 1e3 * (4.19 - 2.30 * food.solids - 0.628 * food.solids**3)


def specific_heat_frozen_chen(food: Composition, temperature_c: ArrayLike) -> Floats:
    """Apparent specific heat below the freezing point, J/kgK (Chen 1985)."""
    t = np.asarray(temperature_c, dtype=float)
    freezable = food.water - food.bound_water
    latent = freezable * LATENT_HEAT_ICE * food.freezing_c / t**2
    return np.asarray(1e3 * (1.55 + 1.26 * food.solids) - latent)


def specific_heat_frozen_schwartzberg(food: Composition, temperature_c: ArrayLike, solute_kg_kmol: float) -> Floats:
    """Apparent specific heat below the freezing point, J/kgK (Schwartzberg 1976), the best fit among those compared.

    `solute_kg_kmol` is the effective molar mass of the solids, E = 18.02 / solute.
    """
    t = np.asarray(temperature_c, dtype=float)
    difference, ratio = 2.1, 18.02 / solute_kg_kmol
    depression = 8.314 * 273.2**2 / (18.02 * t**2) - 0.8 * difference
    unfrozen = specific_heat_unfrozen_chen(food)
    return np.asarray(
        unfrozen + 1e3 * ((food.bound_water - food.water) * difference + ratio * food.solids * depression)
    )


def enthalpy_chen(food: Composition, temperature_c: ArrayLike) -> Floats:
    """Enthalpy above -40 C, J/kg (Chen 1985; ASHRAE 2006 ch. 9, the equations of its worked example 3)."""
    t = np.asarray(temperature_c, dtype=float)

    def frozen(at: Floats) -> Floats:
        latent = (food.water - food.bound_water) * LATENT_HEAT_ICE * food.freezing_c / (-40.0 * at)
        return np.asarray((at + 40.0) * (1e3 * (1.55 + 1.26 * food.solids) - latent))

    above_k = np.maximum(t - food.freezing_c, 0.0)
    return np.asarray(frozen(np.minimum(t, food.freezing_c)) + above_k * specific_heat_unfrozen_chen(food))


def enthalpy_chang_tao(food: Composition, temperature_c: ArrayLike) -> Floats:
    """Enthalpy of frozen meat above -45.6 C, J/kg, water 73 to 94 percent (Chang and Tao 1981)."""
    excess = food.water - 0.73
    y = 0.316 - 0.247 * excess - 0.688 * excess**2
    z = 22.95 + 54.68 * (y - 0.28) - 5589.03 * (y - 0.28) ** 2
    reduced = (np.asarray(temperature_c, dtype=float) + 273.15 - 227.6) / (food.freezing_c + 273.15 - 227.6)
    return np.asarray(1e3 * (9.79246 + 405.096 * food.water) * (y * reduced + (1 - y) * reduced**z))


def freezing_chang_tao(water: float) -> float:
    """Initial freezing point of meat, C, from its water fraction (Chang and Tao 1981)."""
    return 271.18 + 1.47 * water - 273.15


def enthalpy(food: Composition, temperature_c: ArrayLike) -> Floats:
    """Enthalpy above liquid at 0 C, J/kg: components by Choi and Okos, ice by Chen, each at its own temperature."""
    t = np.asarray(temperature_c, dtype=float)
    ice = ice_chen(food, t)
    wet = (food.water - ice) * _component_enthalpy("water", t) + ice * _component_enthalpy("ice", t)
    dry = sum(x * _component_enthalpy(name, t) for name, x in food.dry_parts().items())
    return np.asarray(wet + dry)


# ----------------------------------------------------------------------------------- density, conductivity


def _phases(food: Composition, temperature_c: ArrayLike, ice: ArrayLike | None) -> dict[str, Floats]:
    """Mass fractions with the water split into liquid and ice (Chen's, unless given)."""
    frozen = ice_chen(food, temperature_c) if ice is None else np.asarray(ice, dtype=float)
    dry = {name: np.asarray(x) for name, x in food.dry_parts().items() if x > 0}
    return {"water": np.asarray(food.water - frozen), "ice": frozen, **dry}


def volume_fractions(food: Composition, temperature_c: ArrayLike, ice: ArrayLike | None = None) -> dict[str, Floats]:
    """Share of the volume by component; `ice` is a mass fraction, by default Chen's."""
    volumes = {
        name: x / component_density(name, temperature_c) for name, x in _phases(food, temperature_c, ice).items()
    }
    total = sum(volumes.values())
    return {name: np.asarray(volume / total) for name, volume in volumes.items()}


def density(food: Composition, temperature_c: ArrayLike, ice: ArrayLike | None = None) -> Floats:
    """Density without pores, kg/m3: 1 / sum(x / rho)."""
    phases = _phases(food, temperature_c, ice)
    volume = sum(x / component_density(name, temperature_c) for name, x in phases.items())
    return np.asarray(sum(phases.values()) / volume)


def conductivity_parallel(food: Composition, temperature_c: ArrayLike, ice: ArrayLike | None = None) -> Floats:
    """Upper bound, components side by side along the heat flow: sum(v k), W/mK."""
    shares = volume_fractions(food, temperature_c, ice)
    return np.asarray(sum(v * component_conductivity(name, temperature_c) for name, v in shares.items()))


def conductivity_perpendicular(food: Composition, temperature_c: ArrayLike, ice: ArrayLike | None = None) -> Floats:
    """Lower bound, components in layers across the heat flow: 1 / sum(v / k), W/mK."""
    shares = volume_fractions(food, temperature_c, ice)
    return np.asarray(1 / sum(v / component_conductivity(name, temperature_c) for name, v in shares.items()))


def levy(k1: Floats, k2: Floats, share1: Floats) -> Floats:
    """Conductivity of two phases, `share1` by volume of the first, W/mK (Levy 1981); symmetric in the phases."""
    ratio = k1 / k2
    sigma = (ratio - 1) ** 2 / ((ratio + 1) ** 2 + ratio / 2)
    sigma = np.maximum(sigma, 1e-9)  # equal phases: the limit is the parallel value
    b = 2 / sigma - 1 + 2 * share1
    f1 = 0.5 * (b - np.sqrt(b**2 - 8 * share1 / sigma))
    return np.asarray(k2 * ((2 + ratio) + 2 * (ratio - 1) * f1) / ((2 + ratio) - (ratio - 1) * f1))


def maxwell_eucken(continuous: Floats, dispersed: Floats, share: Floats) -> Floats:
    """Conductivity of one phase, `share` by volume, dispersed in another, W/mK (Maxwell; Eucken 1940)."""
    a = 3 * continuous / (2 * continuous + dispersed)
    return np.asarray(continuous * (1 - (1 - a * dispersed / continuous) * share) / (1 + (a - 1) * share))


def conductivity_levy(food: Composition, temperature_c: ArrayLike, ice: ArrayLike | None = None) -> Floats:
    """Levy's two-phase equation applied in turn: solids to liquid water, then fat, then ice, W/mK."""
    return _stepwise(food, temperature_c, ice, levy)


def conductivity_maxwell_eucken(food: Composition, temperature_c: ArrayLike, ice: ArrayLike | None = None) -> Floats:
    """Solids dispersed in liquid water, then fat in that, then ice in that, W/mK."""
    return _stepwise(food, temperature_c, ice, lambda k1, k2, share: maxwell_eucken(k2, k1, share))


def _stepwise(
    food: Composition,
    temperature_c: ArrayLike,
    ice: ArrayLike | None,
    mix: Callable[[Floats, Floats, Floats], Floats],
) -> Floats:
    shares = volume_fractions(food, temperature_c, ice)
    volume = shares["water"]
    k = component_conductivity("water", temperature_c)
    for name in ("protein", "carbohydrate", "ash", "fat", "ice"):
        if name in shares:
            volume = volume + shares[name]
            k = mix(component_conductivity(name, temperature_c), k, shares[name] / volume)
    return np.asarray(k)


# -------------------------------------------------------------------------------------- for the solver


@cache
def material(food: Composition) -> Material:
    """The food in the solver's closed form, fitted to Choi and Okos, Chen's ice and Levy from -30 to 90 C.

    For meats the fit holds enthalpy within 0.2 percent of the heat from -18 to 70 C and conductivity within 2 percent
    unfrozen, 8 percent with ice. The volume is held at that of 4 C, so that mass is kept as ice or heat swell it.
    """
    tf, volume_density = food.freezing_c, float(density(food, 4.0))
    warm, cold = np.linspace(0.0, 90.0, 46), np.linspace(-30.0, tf, 57)
    h_tf, h_hot = (volume_density * float(enthalpy(food, t)) for t in (tf, 80.0))
    slope, conductivity = np.polyfit(warm, conductivity_levy(food, warm), 1)
    capacity = (h_hot - h_tf) / (80.0 - tf)

    ice_share = 1 - tf / cold
    frozen = volume_density * enthalpy(food, cold) - h_tf
    (frozen_capacity, latent), *_ = np.linalg.lstsq(np.column_stack([cold - tf, -ice_share]), frozen)
    ice_gain = conductivity_levy(food, cold) - (conductivity + slope * tf)
    return Material(
        capacity=capacity,
        conductivity=float(conductivity),
        conductivity_slope=float(slope),
        freezing_c=tf,
        frozen_capacity=float(frozen_capacity),
        latent=float(latent),
        ice_conductivity=float(ice_share @ ice_gain / (ice_share @ ice_share)),
    )
