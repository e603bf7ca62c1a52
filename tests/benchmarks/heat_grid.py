"""What the coarse steps and cells of a roast's forecast cost in accuracy: `python tests/benchmarks/heat_grid.py`.

Every kind of roast in several ovens, as forecast and again on three times the cells with a quarter of the steps.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from unittest.mock import patch

import numpy as np

from turnspit.heat import KINDS, OvenStep, RoastCase, cook, forecast_roast, preparation, pull, roast

FINE = (
    (preparation, {"CELLS": 36, "CELLS_FINE": 42}),
    (cook, {"OVEN_STEP": 0.012, "REST_STEP": 0.0073, "STEPS_S": (5.0, 500.0), "GROWTH": 1.2, "FOLLOWING": 1.2}),
    (pull, {"TRIED_STEP": 0.02}),
)
STEADY = ((OvenStep(0, 140.0),), (OvenStep(0, 163.0),), (OvenStep(0, 180.0, True),), (OvenStep(0, 220.0),))
CHANGING = ((OvenStep(0, 220.0), OvenStep(25, 150.0)), (OvenStep(0, 150.0), OvenStep(60, 200.0, True)))
MEMBERS = 24


def cases() -> Iterator[tuple[str, RoastCase]]:
    """Every kind at its usual mass: steady ovens, changing ones, frozen, stuffed."""
    for kind in KINDS:
        row = roast(kind)
        plain = RoastCase(kind, row.usual_mass_kg, members=MEMBERS)
        for name, ovens in (("steady oven", STEADY), ("changing oven", CHANGING)):
            for oven in ovens:
                yield name, replace(plain, oven=oven)
        yield "changing oven", replace(plain, preheated=False, openings_min=(30.0, 60.0))
        if row.poultry:
            yield "frozen", replace(plain, state="frozen")
        if row.stuffing:
            yield "stuffed", replace(plain, stuffed=True)


def answers() -> np.ndarray:
    """Minutes at P50 and P90, the advised pull, the first place's median peak; a row a case."""
    found = []
    for _, case in cases():
        forecast = forecast_roast(case)
        peak = next(iter(forecast.peak_c.values())).p50
        found.append((forecast.ready_min.p50, forecast.ready_min.p90, forecast.advised_pull_c, peak))
    return np.array(found)


def main() -> None:
    """Print the differences, mean and greatest."""
    coarse = answers()
    patches = [patch.object(module, name, value) for module, values in FINE for name, value in values.items()]
    for one in patches:
        one.start()
    fine = answers()
    for one in patches:
        one.stop()
    names = np.array([name for name, _ in cases()])
    minutes = 100 * np.abs(coarse[:, :2] / fine[:, :2] - 1).max(axis=1)
    advised, peaks = np.abs(coarse[:, 2:] - fine[:, 2:]).T
    for name in dict.fromkeys(names):
        chosen = names == name
        told = ", ".join(
            f"{what} {values[chosen].mean():.2f} (at most {values[chosen].max():.2f}) {unit}"
            for what, values, unit in (
                ("minutes", minutes, "%"),
                ("advised pull", advised, "K"),
                ("peak", peaks, "K"),
            )
        )
        print(f"{name:14s} {told}")


if __name__ == "__main__":
    main()
