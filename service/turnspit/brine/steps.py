"""What is said of a brine: the headline, the steps, notes, assumptions, cautions and sources, as message keys."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from typing import Any

from turnspit.brine.cases import BrineCase, BrinePlan
from turnspit.brine.guidance import Guidance
from turnspit.brine.salts import usual_cups_of_salt
from turnspit.brine.solution import SODIUM_OF_SALT
from turnspit.brine.vessel import Fit
from turnspit.message import Caution, Message, Value
from turnspit.quantities.measuring import Parts
from turnspit.quantities.writing import measured
from turnspit.reference import caution, rule, table

WHOLE_BIRDS = ("turkey", "chicken", "capon", "duck", "goose", "game_hen")
HOLLOW = (*WHOLE_BIRDS, "turkey_breast")
OUNCE_G = 28.349523125
SPOONS = ("cup", "tbsp", "tsp")
SPOON_TOLERANCES = (0.01, 0.02, 0.03)
MOST_SPOONED_CUPS = 7.9
TWO_PEOPLE_KG = 23.0
"""NIOSH lifting equation: 51 lb is the load constant under ideal conditions (from memory)."""


def refused(plan: BrinePlan) -> dict[str, Any]:
    """The words of a plan for a bird that is salted already."""
    case = plan.case
    sold = Message(f"brine-sold-{case.sold_as}")
    return {
        "headline": Message("brine-not-brined", sold_as=sold, roast=_roast(case)),
        "notes": (Message("brine-note-no-added-salt"), Message("brine-note-gravy")),
        "cautions": (caution("injected-no-brine"),),
        "sources": (rule("injected-no-brine").citation,),
    }


def too_long(case: BrineCase, nearest: BrinePlan) -> BrinePlan:
    """The plan for a time longer than raw meat keeps: not allowed, with the longest that is in its place."""
    kept = Message(
        "brine-headline-too-long",
        hours=_hours(case.hours or 0, case.hours or 0),
        most=_hours(nearest.hours, nearest.hours),
        nearest=nearest.headline,
        roast=_roast(case),
    )
    asked = replace(nearest, case=case, allowed=False, headline=kept)
    return replace(asked, cautions=tuple(sorted(cautions(asked), key=lambda one: one.severity != "stop")))


def headline(plan: BrinePlan) -> Message:
    """The brine in one line."""
    case = plan.case
    values: dict[str, Value] = {
        "meat": _meat(case),
        "salt_weight": _salt_weight(plan.salt_g),
        "cups": _cups(plan),
        "salt": Message(f"brine-salt-{case.salt_kind}"),
        "percent": plan.strength_percent,
        "hours": _planned_hours(plan),
    }
    if case.method == "dry":
        return Message("brine-headline-dry", **values)
    key = "brine-headline-misfit" if plan.fits is False and not plan.overflows else "brine-headline"
    return Message(key, **values, water_l=plan.water_l, needed_l=plan.vessel_needed_l)


def _planned_hours(plan: BrinePlan) -> Message:
    """The hours that were asked for, with those that are right where they are among them; else the right ones."""
    right = _hours(plan.hours_low, plan.hours_high)
    asked = plan.case.hours
    if asked is None or not plan.hours_low < asked < plan.hours_high:
        return right
    return Message("brine-hours-of", asked=_hours(asked, asked), right=right)


def steps(plan: BrinePlan) -> tuple[Message, ...]:
    """What to do, in order."""
    case = plan.case
    salt: dict[str, Value] = {
        "salt_weight": _salt_weight(plan.salt_g),
        "cups": _cups(plan),
        "salt": Message(f"brine-salt-{case.salt_kind}"),
    }
    label = Message("brine-step-label" if case.kind in WHOLE_BIRDS else "brine-step-label-joint")
    if case.method == "dry":
        rub = "brine-step-rub" if case.kind in WHOLE_BIRDS else "brine-step-rub-joint"
        return (
            label,
            Message(rub, **salt, percent=plan.strength_percent),
            Message("brine-step-dry-rest"),
            Message("brine-step-dry-after"),
        )
    dissolve = Message(
        "brine-step-dissolve-sugar" if plan.sugar_g else "brine-step-dissolve",
        **salt,
        sugar_kg=plan.sugar_g / 1000.0,
        water_l=plan.concentrate_water_l,
        hot_c=plan.concentrate_c,
    )
    chill = Message(
        "brine-step-ice" if plan.cold_water_l > 0.05 else "brine-step-ice-only",
        ice_kg=plan.ice_kg,
        water_l=plan.cold_water_l,
        brine_c=case.brine_c,
    )
    return (
        label,
        dissolve,
        chill,
        Message("brine-step-check-cold"),
        Message("brine-step-bird-in" if case.kind in HOLLOW else "brine-step-joint-in"),
        Message("brine-step-place", weight_kg=plan.full_weight_kg, height_mm=plan.shelf_height_mm),
        Message("brine-step-out", hours=_hours(plan.hours_low, plan.hours_high)),
        Message("brine-step-dry-skin"),
        Message("brine-step-season"),
    )


def notes(plan: BrinePlan, vessel: Fit, found: Guidance) -> tuple[Message, ...]:
    """The few lines that matter besides the steps."""
    said = [*_fit_notes(plan, vessel), *_strength_notes(plan, found)]
    low, high = plan.salt_g_range
    if high - low > 0.05 * plan.salt_g:
        said.append(Message("brine-note-weigh-salt", low_kg=low / 1000.0, high_kg=high / 1000.0, cups=_cups(plan)))
    if plan.full_weight_kg > TWO_PEOPLE_KG and plan.case.method != "dry":
        said.append(Message("brine-note-heavy", weight_kg=plan.full_weight_kg))
    said += [Message("brine-note-gravy"), Message("brine-note-allergens")]
    return tuple(said)


def assumptions(plan: BrinePlan, found: Guidance) -> tuple[Message, ...]:
    """What was not said and is taken."""
    case = plan.case
    taken = []
    if case.sold_as is None:
        taken.append(Message("brine-assumed-plain", roast=_roast(case)))
    if case.method == "wet" and case.strength_percent is None:
        key = "brine-assumed-strength" if case.hours is None or not found.strong else "brine-assumed-strong"
        taken.append(Message(key, percent=plan.strength_percent))
    if case.method == "wet" and not found.published:
        taken.append(Message("brine-assumed-hours", roast=_roast(case)))
    if case.method != "dry" and case.vessel_l is None:
        key = "brine-assumed-vessel" if plan.would_fit else "brine-assumed-vessels"
        values: dict[str, Value] = {"needed_l": plan.vessel_needed_l, "vessels": plan.vessels}
        taken.append(Message(key, **values, vessel=_vessel(plan.would_fit)))
    if case.hours is None and case.method != "dry":
        taken.append(Message("brine-assumed-time", hours=_hours(plan.hours, plan.hours)))
    return tuple(taken)


def cautions(plan: BrinePlan) -> tuple[Caution, ...]:
    """Where someone could be hurt."""
    case = plan.case
    label = [caution("injected-no-brine", "info" if case.sold_as else "warn")] if case.sold_as != "plain" else []
    too_long = case.brinable and not plan.allowed
    if case.method == "dry":
        keeps = (caution("thawed-keeps", "stop"),) if too_long else ()
        return (*label, *keeps, caution("cold-hold", "warn"), caution("raw-juices", "info"))
    return (
        *label,
        caution("brine-cold", "stop" if too_long else "warn"),
        caution("raw-juices", "warn"),
        caution("brine-discard", "warn"),
    )


def sources(plan: BrinePlan, found: Guidance) -> tuple[str, ...]:
    """Where the strength, the physics and the rules come from."""
    named = [found.source, *(rule(said.rule).citation for said in cautions(plan))]
    if plan.case.method != "dry":
        named += [
            str(table(name).rows[0]["source"]) for name in ("nacl_freezing", "nacl_density", "salt_diffusivity")
        ]
    return tuple(dict.fromkeys(named))


def _fit_notes(plan: BrinePlan, vessel: Fit) -> list[Message]:
    case = plan.case
    if case.method == "dry":
        return []
    said = []
    if plan.overflows and case.vessel_l is not None:
        spare_l = case.vessel_l - vessel.displaced_l
        said.append(
            Message(
                "brine-note-overflows",
                water_l=plan.water_l,
                displaced_l=vessel.displaced_l,
                spare_l=spare_l,
                covers_l=vessel.covers_l,
            )
        )
    elif plan.fits is False and vessel.largest_kg is not None:
        best = _vessel(vessel.would_fit)
        said += [
            Message("brine-note-misfit", needed_l=vessel.needed_l, short_l=vessel.short_l, vessel=best),
            Message("brine-note-largest", mass_kg=vessel.largest_kg, count=case.count),
        ]
        if vessel.vessels > 1:
            said.append(Message("brine-note-vessels", vessels=vessel.vessels))
    elif plan.fits:
        said.append(Message("brine-note-fits", needed_l=vessel.needed_l, displaced_l=vessel.displaced_l))
    if case.water_l is not None and case.water_l < 0.95 * vessel.covers_l:
        said.append(Message("brine-note-uncovered", water_l=case.water_l, covers_l=vessel.covers_l))
    return said


def _strength_notes(plan: BrinePlan, found: Guidance) -> list[Message]:
    case = plan.case
    grams = case.serving_g
    finished = plan.finished_salt_percent
    salt = Message(
        "brine-note-finished",
        low=finished.p10,
        high=finished.p90,
        hours=_hours(plan.hours, plan.hours),
        sodium_low=round(finished.p10 * grams * 10.0 * SODIUM_OF_SALT, -1),
        sodium_high=round(finished.p90 * grams * 10.0 * SODIUM_OF_SALT, -1),
        serving_kg=grams / 1000.0,
    )
    if case.method == "dry":
        return [salt]
    said = [
        Message("brine-note-percent", percent=plan.strength_percent, of_water=plan.of_water_percent),
        Message("brine-note-freezing", degrees=round(plan.salometer_deg), freezing_c=plan.freezing_c),
    ]
    if found.strong:
        said.append(Message("brine-note-strong", hours=_hours(plan.hours_high, plan.hours_high)))
    if case.hours is not None and case.hours > plan.hours_high + 0.1:
        said.append(
            Message(
                "brine-note-too-long",
                hours=_hours(case.hours, case.hours),
                most=_hours(plan.hours_high, plan.hours_high),
            )
        )
    if case.hours is not None and case.hours < plan.hours_low - 0.1:
        said.append(
            Message(
                "brine-note-too-short",
                hours=_hours(case.hours, case.hours),
                least=_hours(plan.hours_low, plan.hours_low),
            )
        )
    salty = table("salt_diffusivity").by("key")["finished_salt"]["too_salty_above_percent"]
    if finished.p50 > salty:
        said.append(Message("brine-note-too-salty", limit=float(salty)))
    if plan.hours_to_too_salty is not None and case.method == "wet":
        said.append(
            Message("brine-note-salty-after", hours=_hours(plan.hours_to_too_salty.p10, plan.hours_to_too_salty.p50))
        )
    if case.method == "equilibrium":
        said.append(Message("brine-note-equilibrium"))
    said.append(salt)
    return said


def _salt_weight(grams: float) -> Message:
    """Grams and ounces, within half a percent: salt is weighed."""
    return Message(
        "brine-salt-weight", grams=5 * round(grams / 5) if grams >= 1000 else round(grams), ounces=grams / OUNCE_G
    )


def _cups(plan: BrinePlan) -> Message:
    """The salt by volume in cups and spoons, within 3 percent; a large amount in cups, to the quarter."""
    cups = usual_cups_of_salt(plan.salt_g, plan.case.salt_kind)
    if cups <= MOST_SPOONED_CUPS:
        for tolerance in SPOON_TOLERANCES:
            parts = measured(Fraction(cups), "cup", region="US", system="us", tolerance=tolerance).parts
            if all(unit in SPOONS for _, unit in parts):
                return _spooned(parts)
    return Message("brine-part-cup", amount=f"{round(cups * 4) / 4:g}", many=1)


def _spooned(parts: Parts) -> Message:
    said = [Message(f"brine-part-{unit}", amount=_mixed(number), many=int(number > 1)) for number, unit in parts]
    return said[0] if len(said) == 1 else Message("brine-parts", first=said[0], second=said[1])


def _mixed(number: Fraction) -> str:
    """7/4 as "1 3/4"."""
    whole, part = divmod(number, 1)
    return " ".join(str(one) for one in (whole, part) if one)


def _hours(low: float, high: float) -> Message:
    """Hours to the half, or to the whole from six."""
    first, last = (round(hours) if hours >= 6 else round(hours * 2) / 2 for hours in (low, high))
    return Message("brine-hour" if first == last else "brine-hours", low=first, high=last)


def _vessel(key: str | None) -> Message:
    return Message(f"brine-vessel-{key or 'none'}")


def _meat(case: BrineCase) -> Message:
    """The piece or pieces with their weight."""
    key = "brine-piece" if case.count == 1 else "brine-pieces"
    return Message(key, roast=_roast(case), count=case.count, mass_kg=case.mass_kg)


def _roast(case: BrineCase) -> Message:
    return Message(f"roast-{case.kind}")
