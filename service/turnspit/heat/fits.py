"""The turkey's named fits: each one reading of the published hours, kept to show how far the readings part.

`python -m turnspit.heat.fits` fits them again and prints each against all rows, fitted and checked apart.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from scipy.optimize import least_squares

from turnspit.heat.cases import OvenStep, RoastCase
from turnspit.heat.material import Floats
from turnspit.heat.roasting import forecast_roast
from turnspit.heat.roasts import RoastRow, roast
from turnspit.reference import Row, table


@dataclass(frozen=True, slots=True)
class Fit:
    """A named set of lengths of the whole turkey, with the ids of the rows it was fitted on.

    `places` is "slowest" where the hours are read as those of the last place, else the place they are read at.
    """

    name: str
    reading: str
    places: str
    radius_m: float
    mass_power: float
    stuffing_m: float
    fitted_on: tuple[str, ...]

    def row(self) -> RoastRow:
        """The turkey's row with this fit's lengths; the places keep their lag behind the breast."""
        row = roast("turkey")
        assert row.stuffing is not None
        breast = row.stations[0].radius_m
        places = [
            replace(place, radius_m=self.radius_m * place.radius_m / breast, mass_power=self.mass_power)
            for place in row.stations
            if self.places in ("slowest", place.name)
        ]
        return replace(row, stations=tuple(places), stuffing=replace(row.stuffing, radius_m=self.stuffing_m))


def turkey_fits() -> dict[str, Fit]:
    """The named fits by name."""
    names = ("name", "reading", "places", "radius_m", "mass_power", "stuffing_m")
    rows = table("turkey_fits").by("name")
    return {
        name: Fit(**{key: row[key] for key in names}, fitted_on=tuple(row["fitted_on"])) for name, row in rows.items()
    }


def turkey_rows() -> dict[str, Row]:
    """The published hours of whole turkeys, chart and measured, by id."""
    rows = [*table("roasting_charts"), *table("roasting_measured")]
    return {row["id"]: row for row in rows if row["kind"] == "turkey"}


def minutes(row: Row) -> tuple[float, float]:
    """The published minutes of a row, lowest and highest."""
    given = row["minutes"]
    return (given[0], given[1]) if isinstance(given, list) else (given, given)


def case_of(row: Row, members: int = 1) -> RoastCase:
    """The roast a published row speaks of, in the middle of its mass range."""
    mass = row["mass_kg"]
    return RoastCase(
        kind=row["kind"],
        mass_kg=(mass[0] + mass[1]) / 2.0 if isinstance(mass, list) else mass,
        stuffed=row.get("stuffed", False),
        bone_in=row.get("bone_in"),
        start_c=row.get("start_c", 4.4),
        oven=(OvenStep(0.0, row["oven_c"]),),
        target_c=row["target_c"],
        members=members,
    )


def ready_min(fit: Fit, row: Row) -> float:
    """The fit's minutes for a published row, every uncertain number at its median."""
    return forecast_roast(case_of(row), fit.row()).ready_min.p50


def refit(fit: Fit) -> Fit:
    """The lengths fitted again: least squares on the middles of `fitted_on`, stuffed rows for the stuffing's."""
    rows = turkey_rows()
    plain = [rows[name] for name in fit.fitted_on if not rows[name].get("stuffed")]
    stuffed = [rows[name] for name in fit.fitted_on if rows[name].get("stuffed")]

    def fitted(values: Sequence[float]) -> Fit:
        return replace(fit, radius_m=float(values[0]), mass_power=float(values[1]))

    start = [fit.radius_m, fit.mass_power]
    found = least_squares(lambda v: _misses(fitted(v), plain), start, x_scale=[0.001, 0.1])
    best = fitted(found.x)
    if not stuffed:
        return best
    found = least_squares(
        lambda v: _misses(replace(best, stuffing_m=float(v[0])), stuffed), [fit.stuffing_m], x_scale=0.001
    )
    return replace(best, stuffing_m=float(found.x[0]))


def _misses(fit: Fit, rows: Iterable[Row]) -> Floats:
    return np.array([ready_min(fit, row) - sum(minutes(row)) / 2.0 for row in rows])


def main() -> None:
    """Print every fit, as stored and fitted again, against every row."""
    for fit in turkey_fits().values():
        again = refit(fit)
        print(f"\nset {fit.name}: {fit.reading}")
        print(f"  stored    {fit.radius_m:.5f} m, power {fit.mass_power:.3f}, stuffing {fit.stuffing_m:.5f} m")
        print(f"  fit again {again.radius_m:.5f} m, power {again.mass_power:.3f}, stuffing {again.stuffing_m:.5f} m")
        for name, row in turkey_rows().items():
            low, high = minutes(row)
            use = "fitted" if name in fit.fitted_on else "checked"
            print(f"  {name:24s} {use:8s} {low:6.0f} to {high:4.0f} min, model {ready_min(again, row):6.1f}")


if __name__ == "__main__":
    main()
