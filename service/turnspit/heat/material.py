"""What a body is made of, as the solver sees it: enthalpy and conductivity against temperature, ice included."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Number: TypeAlias = float | Floats
"""One value for all columns, or one for each."""

LATENT_J_KG = 2.33e6
"""Heat of evaporation of water near 70 C, between the 2.36 MJ/kg of 60 C and the 2.26 MJ/kg of 100 C (IAPWS)."""


@dataclass(frozen=True, slots=True)
class Material:
    """A moist food, per m3; each field is a number or an array that broadcasts to (cells, columns).

    Unfrozen: H = capacity T, k = conductivity + conductivity_slope T.
    Below `freezing_c` (Tf < 0 C): ice share s = 1 - Tf/T, H = capacity Tf + frozen_capacity (T - Tf) - latent s,
    k = unfrozen k at Tf + ice_conductivity s. Enthalpy is zero at 0 C (unfrozen).

    Units: capacities J/(m3 K), latent J/m3 (all freezable water), conductivities W/(m K), temperatures C.
    Source: Chen (1985), as given in ASHRAE Handbook - Refrigeration (2006), ch. 9, for the ice share and enthalpy.
    """

    capacity: Number
    conductivity: Number
    conductivity_slope: Number = 0.0
    freezing_c: Number = -1.5
    frozen_capacity: Number = 2.0e6
    latent: Number = 0.0
    ice_conductivity: Number = 0.0

    def columns(self, chosen: NDArray[np.intp] | slice) -> Material:
        """The material of some of the columns."""

        def some(value: Number) -> Number:
            return value[..., chosen] if isinstance(value, np.ndarray) and value.ndim else value

        return Material(*(some(getattr(self, name)) for name in self.__dataclass_fields__))

    def ice_share(self, temperature_c: Floats) -> Floats:
        """Share of the freezable water that is ice, 0 to 1."""
        share = self.freezing_c / np.minimum(temperature_c, self.freezing_c)
        return np.asarray(np.subtract(1.0, share, out=share) if np.ndim(share) else 1.0 - share)

    def enthalpy(self, temperature_c: Floats) -> Floats:
        """Volumetric enthalpy in J/m3 at `temperature_c`."""
        below: Floats = np.minimum(temperature_c - self.freezing_c, 0.0)
        above: Floats = np.maximum(temperature_c, self.freezing_c)
        ice: Floats = self.latent * self.ice_share(temperature_c)
        return self.capacity * above + self.frozen_capacity * below - ice

    def temperature_c(self, enthalpy: Floats) -> Floats:
        """The temperature that holds `enthalpy`: the inverse of `enthalpy`, in closed form."""
        if not self.has_ice(enthalpy):
            return np.asarray(enthalpy / self.capacity)
        # below Tf: frozen_capacity T^2 - total T + latent Tf = 0 has one negative root; from Tf on it is Tf
        depth: Floats = np.asarray(enthalpy - self.capacity * self.freezing_c)
        total: Floats = np.minimum(depth, 0.0)
        total += self.frozen_capacity * self.freezing_c + self.latent
        root: Floats = total * total
        root -= 4.0 * self.frozen_capacity * self.latent * self.freezing_c
        total -= np.sqrt(root, out=root)
        total /= 2.0 * self.frozen_capacity
        above: Floats = np.maximum(depth, 0.0, out=depth)
        above /= self.capacity
        return np.add(total, above, out=total)

    def secant_capacity(self, temperature_c: Floats, enthalpy: Floats, step_k: float = 0.25) -> Floats:
        """Apparent capacity in J/(m3 K) over the next `step_k` of warming; the latent heat is inside it."""
        gained: Floats = self.enthalpy(temperature_c + step_k) - enthalpy
        return gained / step_k

    def conductivity_at(self, temperature_c: Floats) -> Floats:
        """Thermal conductivity in W/(m K)."""
        above: Floats = np.maximum(temperature_c, self.freezing_c)
        ice: Floats = self.ice_conductivity * self.ice_share(temperature_c)
        return self.conductivity + self.conductivity_slope * above + ice

    def has_ice(self, enthalpy: Floats) -> bool:
        """Whether any cell is below its freezing point."""
        return bool(np.any(enthalpy < self.capacity * self.freezing_c))
