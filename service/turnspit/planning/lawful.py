"""The plan before the rules: what it comes to in plain numbers, and what a wish against a rule is mended to."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from turnspit.errors import Impossible
from turnspit.message import Message
from turnspit.planning.route import Route
from turnspit.planning.settle import Settled
from turnspit.planning.timing import Timing
from turnspit.safety import Finding, PlanFacts, PlanVerdict, check_plan

BRINE_C = 4.0
BENCH_H = 0.5
"""Out of the cold for trussing and seasoning, beside any tempering."""


def within_the_rules(settled: Settled) -> tuple[Settled, tuple[Finding, ...]]:
    """The dinner with every wish that would break a rule mended to the nearest that does not, and those rules."""
    return _kept(settled, check_plan(_wish(settled), settled.dinner.kitchen))


def within_the_rules_as_timed(settled: Settled, route: Route) -> tuple[Settled, tuple[Finding, ...]]:
    """The same once the hours are known: an oven may be too slow only for as long as this roast takes in it."""
    return _kept(settled, check_plan(_plan(route.settled, route, None), settled.dinner.kitchen))


def _kept(settled: Settled, verdict: PlanVerdict) -> tuple[Settled, tuple[Finding, ...]]:
    if verdict.allowed:
        return settled, ()
    broken = tuple(found for found in verdict.findings if found.severity == "stop")
    return _mended(settled, verdict.changed), broken


def findings_of(settled: Settled, route: Route, brine_h: float | None) -> tuple[Finding, ...]:
    """What the rules say of the plan as it stands. Raises Impossible where it would break one after all."""
    verdict = check_plan(_plan(settled, route, brine_h), settled.dinner.kitchen)
    if not verdict.allowed:
        broken = verdict.findings[0]
        raise Impossible("plan", broken.rule, f"is broken ({broken.citation})", "change the dinner so that it holds")
    return verdict.findings


def _wish(settled: Settled) -> PlanFacts:
    return PlanFacts(
        kind=settled.row.kind,
        mass_kg=settled.mass_kg,
        stuffed=settled.stuffed,
        injected=settled.sold_as == "injected",
        frozen=settled.state == "frozen" and settled.dinner.serve_at is None,
        at_risk=settled.dinner.at_risk,
        oven_c=settled.oven_c,
        convection=settled.convection,
        target_c=settled.target_c,
        out_of_cold_h=settled.dinner.temper_min / 60 + BENCH_H,
    )


def _plan(settled: Settled, route: Route, brine_h: float | None) -> PlanFacts:
    timing, thaw = route.timing, route.thaw
    return replace(
        _wish(settled),
        frozen=settled.state == "frozen" and thaw is None,
        roast_h=timing.forecast.ready_min.p50 / 60,
        pull_c=timing.forecast.pull_c,
        measured_before_carving=True,
        thaw=thaw.case.method if thaw else None,
        warm_surface_h=thaw.surface_above_5c_h.p90 if thaw else None,
        brine_c=BRINE_C if brine_h else None,
        brine_h=brine_h,
        hold_c=settled.hot_hold_c if settled.holds_hot else None,
        hold_h=_hold_h(timing) if settled.holds_hot else None,
    )


def _hold_h(timing: Timing) -> float:
    return max(0.0, (timing.out_by - timing.ready.p10).total_seconds() / 3600)


def _mended(settled: Settled, changed: Mapping[str, Any]) -> Settled:
    wish = {name: changed[name] for name in ("oven_c", "target_c", "stuffed") if name in changed}
    told = tuple(_told_anew(message, wish) for message in settled.assumptions)
    return replace(settled, assumptions=told, **wish)


def _told_anew(message: Message, wish: Mapping[str, Any]) -> Message:
    """An assumption with the mended value in it."""
    return Message(message.key, **{name: wish.get(name, value) for name, value in message.values.items()})
