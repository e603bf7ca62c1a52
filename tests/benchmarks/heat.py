"""How long the heat room takes, in processor time on one core: `python tests/benchmarks/heat.py`.

Every run is another bird, so that no cache answers; the best of some runs is printed, since others share the machine.
"""

from __future__ import annotations

import resource
import time
from collections.abc import Callable

import numpy as np

from turnspit.heat import RoastCase, ThawCase, forecast_roast, forecast_thaw, tridiagonal
from turnspit.heat.cook import cook
from turnspit.heat.ensemble import draw
from turnspit.heat.roasts import roast


def best_ms(run: Callable[[float], object], times: int = 30) -> float:
    """The quickest of `times` runs, each with a mass of its own, in ms of processor time."""
    found = float("inf")
    for i in range(times):
        start = time.process_time()
        run(0.01 * i)
        found = min(found, time.process_time() - start)
    return found * 1e3


def main() -> None:
    """Print the table."""
    turkey = roast("turkey")
    runs: dict[str, Callable[[float], object]] = {
        "256 members, 3 places, oven alone": lambda m: cook(
            RoastCase("turkey", 7.0 + m), turkey, draw(turkey, 256, 1), 74.0
        ),
        "forecast, 256 members, 3 places": lambda m: forecast_roast(RoastCase("turkey", 7.0 + m)),
        "forecast, stuffed": lambda m: forecast_roast(RoastCase("turkey", 7.0 + m, stuffed=True)),
        "forecast, from frozen": lambda m: forecast_roast(RoastCase("turkey", 7.0 + m, state="frozen")),
        "forecast, beef rib": lambda m: forecast_roast(RoastCase("beef_rib", 3.0 + m)),
        "forecast, one member": lambda m: forecast_roast(RoastCase("turkey", 7.0 + m, members=1)),
        "thaw, refrigerator": lambda m: forecast_thaw(ThawCase("turkey", 7.0 + m)),
        "thaw, cold water": lambda m: forecast_thaw(ThawCase("turkey", 7.0 + m, method="cold_water")),
    }
    for name, run in runs.items():
        run(0.5)
        print(f"{name:36s} {best_ms(run):7.1f} ms")
    print(f"{'most memory held':36s} {resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024:7.0f} MB")
    print("\nsweep against one LAPACK call, 12 cells, microseconds")
    for columns in (3, 24, 60, 150, 768):
        whole, sweep = (
            best_ms(lambda _, solve=solve, columns=columns: _solve(solve, columns), 200) * 1e3
            for solve in (tridiagonal._as_one_system, tridiagonal._sweep)
        )
        print(f"  {columns:4d} columns: one call {whole:6.0f}, sweep {sweep:6.0f}")


def _solve(solve: Callable[..., np.ndarray], columns: int) -> np.ndarray:
    return solve(np.full((12, columns), 3.0), np.ones((11, columns)), np.ones((12, columns)))


if __name__ == "__main__":
    main()
