"""A whole plan against the rules: refused where it would break one, with the nearest plan that does not."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, fields, replace
from types import MappingProxyType
from typing import Any, Literal

from turnspit.errors import OutOfRange
from turnspit.message import Message
from turnspit.reference import KITCHENS, Kitchen, is_licensed
from turnspit.safety.finding import (
    GRADES,
    Finding,
    finding,
    grade,
    gravest_first,
    limit,
    local_codes,
    reaches,
    within,
)
from turnspit.safety.foods import family, red_meat
from turnspit.safety.question import SafetyQuestion
from turnspit.safety.questions import doneness, hazards, keeping_cold, oven, serving, standing, thawing

PlanThaw = Literal["refrigerator", "cold_water", "counter", "hot_water"]


@dataclass(frozen=True, slots=True)
class PlanFacts:
    """What the rules ask of a plan, in plain numbers: temperatures in C, times in hours. None is "not part of it".

    `out_of_cold_h` sums tempering and preparation before the oven. `warm_surface_h` is how long a raw part is above
    5 C while it thaws. `pull_c` is where the roast leaves the oven, `measured_before_carving` whether the plan then
    asks for a measured end temperature. `hold_c` for `hold_h` is hot holding; `standing_h` runs from the heat to the
    refrigerator for what is neither held hot nor eaten, in a room at `ambient_c` (20 C). Raises OutOfRange.
    """

    kind: str = "turkey"
    mass_kg: float | None = None
    stuffed: bool = False
    injected: bool = False
    frozen: bool = False
    at_risk: bool = False
    oven_c: float | None = None
    convection: bool = False
    roast_h: float | None = None
    target_c: float | None = None
    pull_c: float | None = None
    measured_before_carving: bool = False
    thaw: PlanThaw | None = None
    warm_surface_h: float | None = None
    raw_kept_h: float | None = None
    stuffed_ahead_h: float | None = None
    out_of_cold_h: float | None = None
    brine_c: float | None = None
    brine_h: float | None = None
    hold_c: float | None = None
    hold_h: float | None = None
    standing_h: float | None = None
    ambient_c: float | None = None
    finished_another_day: bool = False

    def __post_init__(self) -> None:
        if self.mass_kg is not None:
            OutOfRange.check("mass_kg", self.mass_kg, 0.0, 200.0, "is that pounds?")
        for name in (each.name for each in fields(self)):
            value = getattr(self, name)
            if value is not None and name.endswith("_h"):
                OutOfRange.check(name, value, 0.0, 8760.0, "give hours from 0 upward")
            if value is not None and name.endswith("_c"):
                OutOfRange.check(name, value, -60.0, 350.0 if name == "oven_c" else 130.0, "is that Fahrenheit?")


@dataclass(frozen=True, slots=True)
class Breach:
    """A finding about a plan, and the facts that would keep its rule."""

    finding: Finding
    mended: Mapping[str, Any] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class PlanVerdict:
    """Whether a plan may be given. `nearest` has every broken rule mended, `changed` holds what that changes."""

    allowed: bool
    findings: tuple[Finding, ...]
    nearest: PlanFacts
    changed: Mapping[str, Any]


def check_plan(facts: PlanFacts, kitchen: Kitchen | None = None) -> PlanVerdict:
    """The findings about a plan, gravest first and local codes last; a `stop` among them refuses it.

    Unstated, both kitchens' rules are applied and each matter is judged by the stricter.
    """
    kitchens = KITCHENS if kitchen is None else (kitchen,)
    found: list[Finding] = []
    nearest = facts
    for check in PLAN_CHECKS:
        breaches = [breach for each in kitchens if (breach := check(facts, each)) is not None]
        if breaches:
            found.append(max((breach.finding for breach in breaches), key=lambda one: GRADES.index(one.severity)))
        nearest = _mended(nearest, check, kitchens)
    changed = {
        each.name: getattr(nearest, each.name)
        for each in fields(PlanFacts)
        if getattr(nearest, each.name) != getattr(facts, each.name)
    }
    applied = gravest_first(found)
    named = applied[0].kitchen if applied else kitchens[0]
    allowed = grade(found) != "stop"
    return PlanVerdict(allowed, (*applied, local_codes(named)), nearest, MappingProxyType(changed))


def _mended(facts: PlanFacts, check: PlanCheck, kitchens: tuple[Kitchen, ...]) -> PlanFacts:
    for each in kitchens:
        breach = check(facts, each)
        if breach is not None and breach.finding.severity == "stop":
            facts = replace(facts, **breach.mended)
    return facts


def _oven(facts: PlanFacts, kitchen: Kitchen) -> Breach | None:
    if facts.oven_c is None:
        return None
    asked = SafetyQuestion("oven", facts.kind, oven_c=facts.oven_c, mass_kg=facts.mass_kg,
                           convection=facts.convection, elapsed_h=facts.roast_h)  # fmt: skip
    found = oven.oven(asked, kitchen)
    if found.rule == "roast-oven" and found.severity == "warn" and _needs_no_time_table(facts, kitchen):
        return None
    _, lowest_c = oven.lowest_oven_c(facts.kind, facts.mass_kg, facts.convection, kitchen)
    return Breach(found, {"oven_c": max(lowest_c, facts.oven_c)})


def _needs_no_time_table(facts: PlanFacts, kitchen: Kitchen) -> bool:
    """The ovens of 3-401.11(B) belong to roasts below 63 C; what is roasted to that is done by 3-401.11(A)."""
    return facts.target_c is not None and reaches(facts.target_c, limit("meat-145", "core_min_c", kitchen))


def _target(facts: PlanFacts, kitchen: Kitchen) -> Breach | None:
    if facts.target_c is None:
        return None
    asked = SafetyQuestion("target", facts.kind, temperature_c=facts.target_c, injected=facts.injected,
                           stuffed=facts.stuffed, at_risk=facts.at_risk)  # fmt: skip
    return Breach(doneness.target(asked, kitchen), {"target_c": doneness.need(asked, kitchen).core_c})


def _pull(facts: PlanFacts, kitchen: Kitchen) -> Breach | None:
    """A bird leaves the oven at 74 C, or earlier only where 74 C is then measured, and never stuffed."""
    if facts.pull_c is None or red_meat(facts.kind):
        return None
    safe_c = limit("poultry-165", "core_min_c", kitchen)
    seen = Message("safety-pulled-at", temperature_c=facts.pull_c)
    if reaches(facts.pull_c, safe_c):
        return Breach(finding(kitchen, "poultry-165", "ok", "go_on", seen))
    action = Message("safety-do-cook-on-to", temperature_c=safe_c)
    if facts.stuffed:
        return Breach(finding(kitchen, "stuffing-165", "stop", "cook_on", seen, action=action), {"pull_c": safe_c})
    if facts.measured_before_carving:
        back = Message("safety-do-back-into-oven", temperature_c=safe_c)
        return Breach(finding(kitchen, "poultry-165", "info", "measure", seen, action=back))
    return Breach(
        finding(kitchen, "poultry-165", "stop", "cook_on", seen, action=action), {"measured_before_carving": True}
    )


def _thaw(facts: PlanFacts, kitchen: Kitchen) -> Breach | None:
    if facts.thaw is None:
        return None
    if facts.thaw in ("counter", "hot_water"):
        never = SafetyQuestion("thaw_method", facts.kind, method=facts.thaw)
        return Breach(thawing.method(never, kitchen), {"thaw": "refrigerator", "warm_surface_h": 0.0})
    longest_h = limit("thaw-four-hours", "elapsed_max_h", kitchen)
    if is_licensed(kitchen) and facts.warm_surface_h is not None and not within(facts.warm_surface_h, longest_h):
        seen = Message("safety-surface-warm", minutes=facts.warm_surface_h * 60)
        action = Message("safety-do-thaw-refrigerator")
        too_long = finding(kitchen, "thaw-four-hours", "stop", "refuse", seen, action=action)
        return Breach(too_long, {"thaw": "refrigerator", "warm_surface_h": 0.0})
    return Breach(thawing.method(SafetyQuestion("thaw_method", facts.kind, method=facts.thaw), kitchen))


def _raw_kept(facts: PlanFacts, kitchen: Kitchen) -> Breach | None:
    if facts.raw_kept_h is None:
        return None
    asked = SafetyQuestion("thawed_keeps", facts.kind, elapsed_h=facts.raw_kept_h, injected=facts.injected)
    return Breach(thawing.keeps(asked, kitchen), {"raw_kept_h": keeping_cold.keeps_days(asked, kitchen) * 24})


def _stuffing(facts: PlanFacts, kitchen: Kitchen) -> Breach | None:
    if facts.stuffed and facts.frozen:
        asked = SafetyQuestion("from_frozen", facts.kind, stuffed=True)
        return Breach(thawing.from_frozen(asked, kitchen), {"stuffed": False, "stuffed_ahead_h": None})
    if not facts.stuffed or facts.stuffed_ahead_h is None:
        return None
    asked = SafetyQuestion("stuffed_ahead", facts.kind, elapsed_h=facts.stuffed_ahead_h)
    return Breach(thawing.stuffed_ahead(asked, kitchen), {"stuffed_ahead_h": 0.0})


def _out_of_cold(facts: PlanFacts, kitchen: Kitchen) -> Breach | None:
    if not facts.out_of_cold_h:
        return None
    asked = SafetyQuestion("tempering", facts.kind, elapsed_h=facts.out_of_cold_h, ambient_c=facts.ambient_c)
    return Breach(standing.tempering(asked, kitchen), {"out_of_cold_h": standing.clock_h(asked, kitchen)})


def _brine(facts: PlanFacts, kitchen: Kitchen) -> Breach | None:
    if facts.brine_c is None and facts.brine_h is None:
        return None
    if facts.injected:
        salted = SafetyQuestion("brine_injected", facts.kind)
        return Breach(hazards.brine_injected(salted, kitchen))
    asked = SafetyQuestion("brine_temperature", facts.kind, temperature_c=facts.brine_c, elapsed_h=facts.brine_h)
    mended = {
        "brine_c": _at_most(facts.brine_c, limit("brine-cold", "brine_max_c", kitchen)),
        "brine_h": _at_most(facts.brine_h, limit("brine-cold", "elapsed_max_h", kitchen)),
    }
    return Breach(keeping_cold.brine_temperature(asked, kitchen), mended)


def _at_most(value: float | None, most: float) -> float | None:
    return None if value is None else min(value, most)


def _hold(facts: PlanFacts, kitchen: Kitchen) -> Breach | None:
    if facts.hold_c is None:
        return None
    asked = SafetyQuestion("warm_holding", facts.kind, temperature_c=facts.hold_c, elapsed_h=facts.hold_h)
    return Breach(serving.warm_holding(asked, kitchen), {"hold_c": serving.hot_limit_c(facts.kind, kitchen)})


def _standing(facts: PlanFacts, kitchen: Kitchen) -> Breach | None:
    if facts.standing_h is None:
        return None
    asked = SafetyQuestion("left_out", facts.kind, elapsed_h=facts.standing_h, state="cooked", procedure=True,
                           ambient_c=20.0 if facts.ambient_c is None else facts.ambient_c)  # fmt: skip
    return Breach(standing.left_out(asked, kitchen), {"standing_h": standing.clock_h(asked, kitchen)})


def _partial(facts: PlanFacts, kitchen: Kitchen) -> Breach | None:
    if not facts.finished_another_day:
        return None
    asked = SafetyQuestion("partial_cooking", facts.kind)
    return Breach(oven.partial_cooking(asked, kitchen), {"finished_another_day": False})


def _at_risk(facts: PlanFacts, kitchen: Kitchen) -> Breach | None:
    if not facts.at_risk or family(facts.kind) != "beef_lamb" or facts.target_c is not None:
        return None
    return Breach(doneness.at_risk(SafetyQuestion("at_risk", facts.kind), kitchen))


PlanCheck = Callable[[PlanFacts, Kitchen], Breach | None]
PLAN_CHECKS: tuple[PlanCheck, ...] = (
    _partial,
    _target,
    _pull,
    _oven,
    _thaw,
    _raw_kept,
    _stuffing,
    _out_of_cold,
    _brine,
    _hold,
    _standing,
    _at_risk,
)
