"""What a measured history of a roast proves by the time-temperature tables: credit, and the conditions it hangs on.

The default for "done" is the instant temperature of the code; this is shown beside it as information. Only measured
readings come in here. No credit is given unless the guideline's cooking conditions are met or stated.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np

from turnspit.errors import OutOfRange
from turnspit.message import Message
from turnspit.reference import Kitchen, rule
from turnspit.safety.finding import Finding, finding
from turnspit.safety.lethality import REQUIRED_LOG10, Species, hold_table, log10_reduction

Moisture = Literal[
    "immersed", "sealed_bag", "direct_heat", "steam_half", "sealed_oven_half", "humid_quarter", "humid"
]
LONGEST_GAP_MIN = 15.0
"""Between readings farther apart nothing is credited (our choice: a stirred oven can fall that far in this time)."""

CORE_C = (-60.0, 105.0)
"""What the inside of meat may read: above boiling it is Fahrenheit taken for Celsius, or the probe is in the oven."""


@dataclass(frozen=True, slots=True)
class Measured:
    """One measured temperature: minutes from any zero, C, and where."""

    minute: float
    core_c: float
    station: str = ""


@dataclass(frozen=True, slots=True)
class Conditions:
    """What the guideline asks beside the table. None is "not known", and counts as not met.

    `moisture` is one of the guideline's ways of keeping the surface moist; without one, `mass_kg` of 4.54 kg (10 lb)
    or more in an oven held at `lowest_oven_c` of 121 C (250 F) or more will do. `come_up_h` states the hours from
    10 to 54 C where the readings begin above 10 C. `probe_error_k` is taken off every reading.
    """

    moisture: Moisture | None = None
    mass_kg: float | None = None
    lowest_oven_c: float | None = None
    come_up_h: float | None = None
    probe_error_k: float = 1.0


@dataclass(frozen=True, slots=True)
class Proof:
    """Log10 reduction of Salmonella by station and at the coldest, what of it is credited, and why.

    `credited_log10` is zero where a condition fails. `met` tells whether the required reduction is credited; it never
    replaces the instant temperature of the code for a home cook.
    """

    species: Species
    by_station: Mapping[str, float]
    coldest: str
    log10: float
    credited_log10: float
    required_log10: float
    met: bool
    findings: tuple[Finding, ...]


def prove(
    readings: Sequence[Measured],
    species: Species,
    conditions: Conditions,
    fat_percent: float | None = None,
    kitchen: Kitchen = "home",
) -> Proof:
    """What measured readings earn. Come-up and carryover count; the coldest station decides.

    Readings may come in any order; two of one station at the same minute count as the cooler. Between readings the
    cooler of both is credited, across more than 15 minutes nothing. Raises OutOfRange for a probe error below zero
    and for a reading that no meat has (above 105 C).
    """
    OutOfRange.check("probe_error_k", conditions.probe_error_k, 0.0, 20.0, "give how far the probe may be off")
    for each in readings:
        OutOfRange.check("core_c", each.core_c, *CORE_C, "is that Fahrenheit?")
    hold = hold_table(species, fat_percent)
    courses = {station: _course(readings, station) for station in sorted({each.station for each in readings})}
    by_station = {
        station: float(log10_reduction(hold, minutes, core_c - conditions.probe_error_k, LONGEST_GAP_MIN))
        for station, (minutes, core_c) in courses.items()
    }
    coldest = min(by_station, key=lambda station: by_station[station], default="")
    reached = by_station.get(coldest, 0.0)
    findings = (_come_up(courses, conditions, kitchen), _moisture(conditions, kitchen))
    credited = reached if all(each.severity == "ok" for each in findings) else 0.0
    required = REQUIRED_LOG10[species]
    met = credited >= required - 1e-9
    seen = Message("safety-lethality", reduction=round(reached, 1), required=required)
    shown = finding(kitchen, "time-temperature", "info", "cook_on", seen, action=Message("safety-do-instant-decides"))
    return Proof(species, by_station, coldest, reached, credited, required, met, (*findings, shown))


def _course(readings: Sequence[Measured], station: str) -> tuple[np.ndarray, np.ndarray]:
    coolest: dict[float, float] = {}
    for each in readings:
        if each.station == station:
            coolest[each.minute] = min(each.core_c, coolest.get(each.minute, each.core_c))
    minutes = np.array(sorted(coolest))
    return minutes, np.array([coolest[minute] for minute in minutes])


def come_up_h(minutes: np.ndarray, core_c: np.ndarray) -> float | None:
    """Hours from the last reading at or below 10 C (50 F) to the first at or above 54 C (130 F), at the slowest.

    None where the readings do not begin below 10 C; infinite where they never reach 54 C.
    """
    limits = rule("come-up-six-hours").limits
    cold = np.flatnonzero(core_c <= limits["from_c"])
    hot = np.flatnonzero(core_c >= limits["to_c"])
    if hot.size == 0:
        return float("inf")
    before = cold[cold < hot[0]]
    return float((minutes[hot[0]] - minutes[before[-1]]) / 60) if before.size else None


def _come_up(courses: Mapping[str, tuple[np.ndarray, np.ndarray]], stated: Conditions, kitchen: Kitchen) -> Finding:
    name = "come-up-six-hours"
    measured = [come_up_h(minutes, core_c) for minutes, core_c in courses.values()]
    hours = [stated.come_up_h if each is None else each for each in measured]
    if not hours or any(each is None for each in hours):
        return finding(kitchen, name, "warn", "measure", Message("safety-come-up-unknown"), unknown=("come_up_h",))
    slowest_h = max(each for each in hours if each is not None)
    if slowest_h == float("inf"):
        return finding(kitchen, name, "warn", "cook_on", Message("safety-come-up-not-yet"))
    seen = Message("safety-come-up", minutes=slowest_h * 60)
    if slowest_h <= rule(name).limits["elapsed_max_h"]:
        return finding(kitchen, name, "ok", "go_on", seen)
    return finding(kitchen, name, "stop", "discard", seen, action=Message("safety-do-ask-authority"))


def _moisture(stated: Conditions, kitchen: Kitchen) -> Finding:
    limits = rule("moist-heat").limits
    heavy = stated.mass_kg is not None and stated.mass_kg >= limits["mass_min_kg"] - 1e-3
    hot = stated.lowest_oven_c is not None and stated.lowest_oven_c >= limits["oven_min_c"] - 1e-2
    if stated.moisture is not None or (heavy and hot):
        return finding(kitchen, "moist-heat", "ok", "go_on", Message("safety-moist"))
    unknown = tuple(name for name in ("moisture", "mass_kg", "lowest_oven_c") if getattr(stated, name) is None)
    return finding(kitchen, "moist-heat", "info", "cook_on", Message("safety-moist-unknown"), unknown=unknown)
