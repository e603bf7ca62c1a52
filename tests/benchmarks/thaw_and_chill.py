"""Processor time of thawing and cooling forecasts, distinct inputs: python tests/benchmarks/thaw_and_chill.py."""

from __future__ import annotations

import time

from turnspit.heat import ChillCase, ThawCase, forecast_chill, forecast_thaw

ROUNDS = 12


def best_ms(make):
    """The least processor time of a round, in ms; each round has its own input."""
    spent = []
    for number in range(ROUNDS):
        start = time.process_time()
        make(number)
        spent.append(1000 * (time.process_time() - start))
    return min(spent), sorted(spent)[len(spent) // 2]


CASES = {
    "thaw, turkey, refrigerator, 64 members": lambda i: forecast_thaw(ThawCase("turkey", 7 + 0.01 * i)),
    "thaw, turkey, cold water, 64 members": lambda i: forecast_thaw(ThawCase("turkey", 7 + 0.01 * i, "cold_water")),
    "thaw, rib roast, refrigerator, 64 members": lambda i: forecast_thaw(ThawCase("beef_rib", 4 + 0.01 * i)),
    "thaw, both in turn, 64 members": lambda i: forecast_thaw(
        ThawCase("turkey", 7 + 0.01 * i, "cold_water", refrigerator_h=36)
    ),
    "thaw, one member": lambda i: forecast_thaw(ThawCase("turkey", 7 + 0.01 * i, members=1)),
    "chill, 50 mm layer, 64 members": lambda i: forecast_chill(ChillCase("turkey", "slab", (50 + 0.1 * i,))),
    "chill, joint of 4 kg, 64 members": lambda i: forecast_chill(ChillCase("beef", "brick", mass_kg=4 + 0.01 * i)),
    "chill, pot in ice, 64 members": lambda i: forecast_chill(
        ChillCase("stock", "pot", mass_kg=10 + 0.01 * i, medium="ice_bath")
    ),
    "chill, one member": lambda i: forecast_chill(ChillCase("turkey", "slab", (50 + 0.1 * i,), members=1)),
}

if __name__ == "__main__":
    for name, make in CASES.items():
        make(99)
        least, median = best_ms(make)
        print(f"{name:44s} least {least:6.1f} ms, median {median:6.1f} ms")
