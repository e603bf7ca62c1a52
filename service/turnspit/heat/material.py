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
        return np.maximum(0.0, 1.0 - self.freezing_c / np.minimum(temperature_c, self.freezing_c), dtype=float)

    def enthalpy(self, temperature_c: Floats) -> Floats:
        """Volumetric enthalpy in J/m3 at `temperature_c`."""
        below: Floats = np.minimum(temperature_c - self.freezing_c, 0.0)
        above: Floats = np.maximum(temperature_c, self.freezing_c)
        return self.capacity * above + self.frozen_capacity * below - self.latent * self.ice_share(temperature_c)

    def temperature_c(self, enthalpy: Floats) -> Floats:
        """The temperature that holds `enthalpy`: the inverse of `enthalpy`, in closed form."""
        unfrozen: Floats = enthalpy / self.capacity
        if not self.has_ice(enthalpy):
            return unfrozen
        # below Tf: frozen_capacity T^2 - total T + latent Tf = 0 has one negative root, written without cancellation
        depth: Floats = enthalpy - self.capacity * self.freezing_c
        total: Floats = self.frozen_capacity * self.freezing_c + self.latent + np.minimum(depth, 0.0)
        root: Floats = np.sqrt(total * total - 4.0 * self.frozen_capacity * self.latent * self.freezing_c)
        warm: Floats = 2.0 * self.latent * self.freezing_c / np.where(total + root > 0.0, total + root, 1.0)
        deep: Floats = (total - root) / (2.0 * self.frozen_capacity)
        return np.where(depth >= 0.0, unfrozen, np.where(total > 0.0, warm, deep))

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
