"""Where the roast model was checked: what lies outside is refused, with the range and the way out."""

from __future__ import annotations

from typing import get_args

from turnspit.errors import Impossible, OutOfRange
from turnspit.heat.cases import Cover, OvenStep, Pan, Platter, PlatterCover, RestPlace, RoastCase, State
from turnspit.heat.given import (
    check_draws,
    check_number,
    check_real,
    check_several,
    check_whole,
    check_word,
    check_yes,
)
from turnspit.heat.oven import OFF_BELOW_C
from turnspit.heat.roasts import RoastRow
from turnspit.heat.surface import boiling_c, pressure_at_altitude

BELOW_BOILING_K = 3.4
REFRIGERATOR_C = 4.4
"""The case's own `start_c`: said of a frozen roast it means that none was given."""
THAWED_LEAST_C, FROZEN_MOST_C, PART_FROZEN_C = -2.0, 0.0, (-5.0, 8.0)
LAST_MIN, SETTINGS_MOST, OPENINGS_MOST = 1800.0, 50, 100


def check_roast(case: RoastCase, row: RoastRow, target_c: float, pull_c: float) -> None:
    """Raise OutOfRange, Impossible or Unknown unless `case` is whole and the model holds for it."""
    _check_kinds(case)
    low_kg, high_kg = row.extended_kg
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
    ):
        check_number(name, value, low, high, f"{way_out}, from {low:g} to {high:g}")
    check_whole("count", case.count, 1, 12, "give how many pieces share the oven, from 1 to 12")
    check_draws(case.members, case.seed)
    _check_start(case)
    high_c = round(boiling_c(pressure_at_altitude(case.altitude_m)) - BELOW_BOILING_K, 1)
    for name, given_c, low_c in (("target_c", target_c, 45.0), ("pull_c", pull_c, 40.0)):
        way_out = (
            f"give it in C, {low_c:g} to {high_c:g} (is that Fahrenheit?); meat gets no hotter than boiling water"
        )
        OutOfRange.check(name, given_c, low_c, high_c, way_out)
    if case.platter is not None:
        _check_platter(case.platter)
    if case.stuffed and row.stuffing is None:
        raise Impossible("stuffed", True, f"is not for {row.kind}", "bake the stuffing apart")
    if case.stuffed and case.state != "thawed":
        raise Impossible("stuffed", True, "cannot be while it is frozen", "thaw it first, or bake the stuffing apart")


def _check_platter(platter: Platter) -> None:
    check_number("platter.depth_mm", platter.depth_mm, 5.0, 100.0, "give how deep the slices lie in mm, 5 to 100")
    check_number("platter.served_c", platter.served_c, 30.0, 60.0, "give what is still warm to eat in C, 30 to 60")
    check_word("platter.cover", platter.cover, get_args(PlatterCover))
    check_yes("platter.warmed", platter.warmed)


def _check_start(case: RoastCase) -> None:
    """Whether the state and the temperature it goes in at can both be so."""
    if case.state == "thawed" and case.start_c < THAWED_LEAST_C:
        raise Impossible(
            "start_c", case.start_c, f"is below {THAWED_LEAST_C:g}: that is not thawed", "say state frozen"
        )
    if case.state == "frozen" and case.start_c > FROZEN_MOST_C and case.start_c != REFRIGERATOR_C:
        raise Impossible(
            "start_c", case.start_c, f"is above {FROZEN_MOST_C:g}: that is not frozen", "say state thawed"
        )
    low_c, high_c = PART_FROZEN_C
    if case.state == "part_frozen" and not low_c <= case.start_c <= high_c:
        state = "frozen" if case.start_c < low_c else "thawed"
        way_out = f"say state {state}, or leave the temperature out"
        raise Impossible("start_c", case.start_c, f"is not between {low_c:g} and {high_c:g}", way_out)


def _check_oven(case: RoastCase, row: RoastRow) -> None:
    if not case.oven:
        raise Impossible("oven", "()", "has no setting", "give at least one")
    for name, given, most in (
        ("oven", case.oven, SETTINGS_MOST),
        ("openings_min", case.openings_min, OPENINGS_MOST),
        ("bastings_min", case.bastings_min, OPENINGS_MOST),
    ):
        if len(given) > most:
            raise OutOfRange(name, len(given), f"entries are above {most}", "give fewer")
    for minute in (*case.openings_min, *case.bastings_min):
        OutOfRange.check("openings_min", minute, 0.0, LAST_MIN, "give minutes from when it goes in")
    low_c, high_c = row.extended_oven_c
    first_min = min(step.from_min for step in case.oven)
    for step in case.oven:
        if not step.from_min >= 0.0:
            raise Impossible("oven.from_min", step.from_min, "is before it goes in", "count the minutes from then on")
        OutOfRange.check("oven.from_min", step.from_min, 0.0, LAST_MIN, "give minutes from when it goes in")
        if step.temperature_c >= OFF_BELOW_C:
            way_out = f"for {row.kind} the model holds in ovens from {low_c:g} to {high_c:g} C (is that Fahrenheit?)"
            OutOfRange.check("oven.temperature_c", step.temperature_c, low_c, high_c, way_out)
        elif not step.temperature_c > -50.0:
            raise Impossible("oven.temperature_c", step.temperature_c, "is no temperature", "give it in C")
    if first_min > 0.0:
        raise Impossible(
            "oven.from_min", first_min, "leaves the oven unset until then", "give a setting from minute 0"
        )
    if len({round(step.from_min * 60.0) for step in case.oven}) < len(case.oven):
        raise Impossible(
            "oven.from_min", first_min, "or a later minute has two settings", "give one setting a minute"
        )


def _check_kinds(case: RoastCase) -> None:
    """What a caller in Python can get wrong before any range: text for a number, an unknown word, no list."""
    check_real("mass_kg", case.mass_kg)
    for name in ("target_c", "pull_c"):
        if getattr(case, name) is not None:
            check_real(name, getattr(case, name))
    for name in ("stuffed", "preheated"):
        check_yes(name, getattr(case, name))
    for name in ("bone_in", "tied"):
        if getattr(case, name) is not None:
            check_yes(name, getattr(case, name))
    check_word("state", case.state, get_args(State))
    if case.rest_place is not None:
        check_word("rest_place", case.rest_place, get_args(RestPlace))
    check_word("pan", case.pan, get_args(Pan))
    if case.platter is not None and not isinstance(case.platter, Platter):
        raise Impossible("platter", case.platter, "is no platter", "give a Platter, or None")
    for name in ("openings_min", "bastings_min"):
        for minute in check_several(name, getattr(case, name)):
            check_real(name, minute)
    for step in check_several("oven", case.oven):
        if not isinstance(step, OvenStep):
            raise Impossible("oven", step, "is no setting", "give OvenStep values")
        check_real("oven.from_min", step.from_min)
        check_real("oven.temperature_c", step.temperature_c)
        check_yes("oven.convection", step.convection)
        check_word("oven.cover", step.cover, get_args(Cover))
