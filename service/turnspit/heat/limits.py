"""Where the roast model was checked: what lies outside is refused, with the range and the way out."""

from __future__ import annotations

from turnspit.errors import Impossible, OutOfRange
from turnspit.heat.cases import RoastCase
from turnspit.heat.oven import OFF_BELOW_C
from turnspit.heat.roasts import RoastRow
from turnspit.heat.surface import boiling_c, pressure_at_altitude

BELOW_BOILING_K = 4.0


def check_roast(case: RoastCase, row: RoastRow, target_c: float, pull_c: float) -> None:
    """Raise OutOfRange or Impossible unless the model holds for `case`."""
    low_kg, high_kg = row.mass_kg_range
    OutOfRange.check(
        "mass_kg",
        case.mass_kg,
        low_kg,
        high_kg,
        f"for {row.kind} the model holds from {low_kg:g} to {high_kg:g} kg a piece: "
        "give the mass of one piece in kg (is that pounds?), or cut it up and forecast the parts",
    )
    _check_oven(case, row)
    for name, value, low, high, way_out in (
        ("start_c", case.start_c, -30.0, 30.0, "give the temperature it goes in at in C"),
        ("rest_min", case.rest_min, 0.0, 240.0, "give the rest in minutes; hold it hot after that"),
        ("altitude_m", case.altitude_m, -430.0, 4000.0, "give the height above the sea in m"),
        ("oven_vapour_pa", case.oven_vapour_pa, 0.0, 70000.0, "give the vapour pressure in Pa"),
        ("count", case.count, 1, 12, "give how many pieces share the oven"),
        ("members", case.members, 1, 4096, "give the size of the ensemble"),
    ):
        OutOfRange.check(name, value, low, high, f"{way_out}, from {low:g} to {high:g}")
    high_c = round(boiling_c(pressure_at_altitude(case.altitude_m)) - BELOW_BOILING_K, 1)
    for name, given_c, low_c in (("target_c", target_c, 45.0), ("pull_c", pull_c, 40.0)):
        way_out = (
            f"give it in C, {low_c:g} to {high_c:g} (is that Fahrenheit?); meat gets no hotter than boiling water"
        )
        OutOfRange.check(name, given_c, low_c, high_c, way_out)
    if case.stuffed and row.stuffing is None:
        raise Impossible("stuffed", True, f"is not for {row.kind}", "bake the stuffing apart")
    if case.stuffed and case.state != "thawed":
        raise Impossible("stuffed", True, "cannot be while it is frozen", "thaw it first, or bake the stuffing apart")


def _check_oven(case: RoastCase, row: RoastRow) -> None:
    if not case.oven:
        raise Impossible("oven", "()", "has no setting", "give at least one")
    low_c, high_c = row.oven_c_range
    for step in case.oven:
        if not step.from_min >= 0.0:
            raise Impossible("oven.from_min", step.from_min, "is before it goes in", "count the minutes from then on")
        if step.temperature_c >= OFF_BELOW_C:
            way_out = f"for {row.kind} the model holds in ovens from {low_c:g} to {high_c:g} C (is that Fahrenheit?)"
            OutOfRange.check("oven.temperature_c", step.temperature_c, low_c, high_c, way_out)
        elif not step.temperature_c > -50.0:
            raise Impossible("oven.temperature_c", step.temperature_c, "is no temperature", "give it in C")
