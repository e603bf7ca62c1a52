"""What a forecast of a roast has to say beside its numbers: what it assumed, and where someone could be hurt."""

from __future__ import annotations

from turnspit.heat.cases import OvenStep, RoastCase
from turnspit.heat.crowding import household_pieces
from turnspit.heat.oven import OFF_BELOW_C
from turnspit.heat.preparation import resting
from turnspit.heat.roasts import RoastRow
from turnspit.message import Caution, Message
from turnspit.reference import caution

SAFE_OVEN_C = 162.7
SLOW_BIRD_C, SLOW_MEAT_C = 104.9, 79.9
"""Ovens below these are slow whatever is in them: for a bird that is a stop, for other meat a warning."""
FAN_LOWER_K = 20.0
"""A fan oven set this much lower roasts as a still one does (the usual 20 C or 25 F; kitchen charts)."""
SAFE_MEAT_C = 62.7


def assumptions(case: RoastCase, row: RoastRow) -> tuple[Message, ...]:
    """What the forecast took for granted, most useful first."""
    first = min(case.oven, key=lambda step: step.from_min)
    oven = "heat-oven-fan" if first.convection else "heat-oven-still"
    heated = "" if case.preheated else "-cold"
    said = [Message(f"{oven}{heated}", oven_c=first.temperature_c), _state(case)]
    if any(step.cover != "none" for step in case.oven):
        said.append(Message("heat-cover"))
    if case.openings_min:
        said.append(Message("heat-openings", count=len(case.openings_min)))
    if case.bastings_min:
        said.append(Message("heat-bastings", count=len(case.bastings_min)))
    if case.count > 1:
        said.append(Message("heat-count", count=case.count, mass_kg=case.mass_kg))
    if case.count > household_pieces(case.mass_kg):
        said.append(Message("heat-count-crowded", count=household_pieces(case.mass_kg)))
    if case.tied is not None:
        form = "bird" if row.poultry else "joint"
        said.append(Message(f"heat-{'tied' if case.tied else 'untied'}-{form}"))
    if case.pan != "any":
        said.append(Message(f"heat-pan-{case.pan}"))
    if case.bone_in not in (None, row.bone_in) and not (row.bone_in and row.boneless_factor > 1.0):
        said.append(Message("heat-bone-untold"))
    if case.stuffed:
        said.append(Message("heat-stuffed"))
        if any(_as_still_c(step) < SAFE_OVEN_C for step in _on(case)):
            said.append(Message("heat-stuffed-slow"))
    if row.kind == "turkey":
        said.append(Message("heat-spans-chart-and-measured"))
    if any(place.standing == "assumed" for place in row.stations):
        said.append(Message("heat-places-assumed"))
    if row.calibration == "shape only":
        said.append(Message("heat-shape-only"))
    said += _extrapolations(case, row)
    if case.altitude_m >= 600.0:
        said.append(Message("heat-altitude", altitude_m=case.altitude_m))
    if case.rest_min > 0.0:
        said.append(Message(f"heat-rest-{resting(case, row)}", rest_min=case.rest_min))
    if case.platter is not None:
        said.append(Message("heat-platter", mm=case.platter.depth_mm, served_c=case.platter.served_c))
    return tuple(said)


def _state(case: RoastCase) -> Message:
    if case.state == "thawed":
        return Message("heat-thawed", start_c=case.start_c)
    return Message("heat-frozen" if case.state == "frozen" else "heat-part-frozen")


def _extrapolations(case: RoastCase, row: RoastRow) -> list[Message]:
    said = []
    low_kg, high_kg = row.checked_kg
    if not low_kg <= case.mass_kg <= high_kg:
        said.append(Message("heat-mass-extrapolated", low_kg=low_kg, high_kg=high_kg))
    low_c, high_c = row.checked_oven_c
    settings = [_as_still_c(step) for step in _on(case)]
    if any(not low_c - 20.0 <= setting <= high_c + 20.0 for setting in settings):
        key = "heat-oven-extrapolated" if low_c < high_c else "heat-oven-extrapolated-one"
        said.append(Message(key, low_c=low_c, high_c=high_c))
    return said


def cautions(case: RoastCase, row: RoastRow, target_c: float, pull_c: float) -> tuple[Caution, ...]:
    """The rules above the forecast: a bird pulled early must still read its minimum before it is carved."""
    said = [caution("thermometer-decides", "info")]
    on = _on(case)
    if any(_as_still_c(step) < SAFE_OVEN_C for step in on):
        said.append(caution("oven-325", "warn" if row.poultry else "info"))
    if any(step.temperature_c < (SLOW_BIRD_C if row.poultry else SLOW_MEAT_C) for step in on):
        said.append(caution("slow-oven", "stop" if row.poultry else "warn"))
    if row.poultry and min(target_c, pull_c) < row.safe_c - 0.2:
        said.append(caution("poultry-165", "stop" if target_c < row.safe_c - 0.2 else "warn"))
    if not row.poultry and target_c < SAFE_MEAT_C:
        intact = row.kind.startswith(("beef", "lamb"))
        said.append(caution("beef-lamb-time-table" if intact else "meat-145", "warn"))
    if case.stuffed:
        said.append(caution("stuffing-165", "warn"))
    if case.platter is not None:
        said.append(caution("two-hours", "info"))
    if case.pan == "glass":
        said.append(caution("glass-pan", "info"))
    if case.state != "thawed":
        said.append(caution("from-frozen", "warn"))
    return tuple(said)


def _on(case: RoastCase) -> list[OvenStep]:
    return [step for step in case.oven if step.temperature_c >= OFF_BELOW_C]


def _as_still_c(step: OvenStep) -> float:
    return step.temperature_c + (FAN_LOWER_K if step.convection else 0.0)
