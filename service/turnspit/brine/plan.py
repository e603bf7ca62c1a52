"""`plan_brine`: from a bird, a vessel and a wish to a brine that can be made."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import get_args

from turnspit.brine import solution
from turnspit.brine.cases import BrineCase, BrinePlan, Method, SoldAs
from turnspit.brine.cooling import cold_brine
from turnspit.brine.geometry import geometry
from turnspit.brine.guidance import LONGEST_H, Guidance, check_hours, dry_row, guidance, longest_h
from turnspit.brine.salts import SUGAR_G_PER_US_CUP, cups_of_salt, grams_by_volume
from turnspit.brine.steps import assumptions, cautions, headline, notes, refused, sources, steps, too_long
from turnspit.brine.uptake import Uptake, dry_salted_percent, sodium_mg
from turnspit.brine.vessel import Fit, fit
from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.quantities.given import check_number, check_text
from turnspit.reference import table
from turnspit.spread import Spread

MASS_KG_RANGE = (0.2, 45.0)
MOST_PIECES = 500
MOST_MEMBERS = 10_000
TARGET_RANGE = (0.1, 2.5)
EQUILIBRIUM_PERCENT = 1.0
"""Salt in the raw meat and its brine together; the carved meat then holds about 1.1 percent."""
NUMBERS = ("mass_kg", "count", "sugar_percent", "brine_c", "tap_c", "serving_g", "members", "seed")
NONE = Spread(0.0, 0.0, 0.0)


@dataclass(frozen=True, slots=True)
class Amounts:
    """Water and salt of a wet brine, with the time that belongs to them."""

    guidance: Guidance
    hours: float
    water_l: float
    salt_g: float


def plan_brine(case: BrineCase) -> BrinePlan:
    """Amounts, fit, cold, hours, salt in the meat and cautions for `case`.

    A bird sold as injected or kosher is not brined: `allowed` is False and the amounts are zero. For longer than raw
    meat keeps in it `allowed` is False too, and the amounts are those of the longest time that is. Raises Impossible
    for what cannot be (a vessel smaller than the bird, more salt than water holds), OutOfRange for what was not
    checked (a cure, 100 hours), Unknown for a roast or salt that no table knows.
    """
    check(case)
    most_h = longest_h(case)
    if case.brinable and case.hours is not None and case.hours > most_h:
        return too_long(case, plan_brine(replace(case, hours=most_h)))
    vessel = fit(case.kind, case.mass_kg, case.count, None if case.method == "dry" else case.vessel_l, case.water_l)
    if not case.brinable:
        return _not_brined(case, vessel)
    return _dry(case, vessel) if case.method == "dry" else _wet(case, vessel)


def check(case: BrineCase) -> None:
    """Refuse a case that cannot be worked out, whichever way it is salted."""
    for name in NUMBERS:
        check_number(name, getattr(case, name))
    for name in ("vessel_l", "water_l", "strength_percent", "hours", "target_percent"):
        if getattr(case, name) is not None:
            check_number(name, getattr(case, name))
    check_text("kind", case.kind, "name a roast, as turkey")
    geometry(case.kind)
    salts = [str(row["kind"]) for row in table("salts")]
    if case.salt_kind not in salts:
        raise Unknown("salt_kind", case.salt_kind, salts)
    if case.method not in get_args(Method):
        raise Unknown("method", case.method, get_args(Method))
    if case.sold_as is not None and case.sold_as not in get_args(SoldAs):
        raise Unknown("sold_as", case.sold_as, get_args(SoldAs))
    if not case.count >= 1:
        raise Impossible("count", case.count, "is below 1", "give the number of birds")
    OutOfRange.check("count", case.count, 1, MOST_PIECES, "brine so many in batches")
    OutOfRange.check("serving_g", case.serving_g, 10.0, 1000.0, "give grams of carved meat, often 85 to 170")
    OutOfRange.check("members", case.members, 1, MOST_MEMBERS, "256 members are enough")
    OutOfRange.check("seed", case.seed, 0, 2**63 - 1, "give a whole number from 0 upward")
    OutOfRange.check("mass_kg", case.mass_kg, *MASS_KG_RANGE, "give the weight of one piece; is that pounds?")
    OutOfRange.check("brine_c", case.brine_c, -1.0, 4.45, "keep the brine at or below 4 C (40 F)")
    OutOfRange.check("sugar_percent", case.sugar_percent, 0.0, 20.0, "sugar is 0 to 20 percent, often half the salt")
    OutOfRange.check("tap_c", case.tap_c, 0.0, 40.0, "give the temperature of the cold tap")
    for name in ("vessel_l", "water_l"):
        litres = getattr(case, name)
        if litres is not None and not 0 < litres <= 1000:
            raise Impossible(name, litres, "is not between 0 and 1000 L", "give litres, or leave it out")
    if case.target_percent is not None:
        OutOfRange.check("target_percent", case.target_percent, *TARGET_RANGE, "meat is seasoned at about 1 percent")
    if case.strength_percent is not None:
        solution.check_strength(case.strength_percent)
    check_hours(case.hours)


def _wet(case: BrineCase, vessel: Fit) -> BrinePlan:
    amounts = _amounts(case, vessel)
    strength = amounts.guidance.strength_percent
    sugar_g = solution.salt_g(amounts.water_l, case.sugar_percent)
    cold = cold_brine(amounts.water_l, strength, case.sugar_percent, tap_c=case.tap_c, to_c=case.brine_c)
    water_kg = amounts.water_l * solution.WATER_KG_L
    uptake = Uptake.of(case, water_kg, amounts.salt_g / 1000.0)
    finished = uptake.finished_percent(amounts.hours)
    limits = table("salt_diffusivity").by("key")["finished_salt"]
    seasoned, too_salty = uptake.hours_to(limits["seasoned_low_percent"], limits["too_salty_above_percent"])
    plan = replace(
        _blank(case, vessel),
        allowed=True,
        strength_percent=strength,
        of_water_percent=solution.of_water_percent(strength),
        hours_low=amounts.guidance.hours_low,
        hours_high=amounts.guidance.hours_high,
        hours=amounts.hours,
        water_l=amounts.water_l,
        salt_g=amounts.salt_g,
        salt_cups=cups_of_salt(amounts.salt_g, case.salt_kind),
        salt_g_range=grams_by_volume(amounts.salt_g, case.salt_kind),
        sugar_g=sugar_g,
        sugar_cups=sugar_g / SUGAR_G_PER_US_CUP,
        salometer_deg=solution.salometer_deg(strength),
        freezing_c=solution.freezing_c(strength),
        density_kg_l=solution.density_kg_l(strength),
        full_weight_kg=(water_kg + (amounts.salt_g + sugar_g) / 1000.0 + case.count * case.mass_kg) / vessel.vessels,
        finished_salt_percent=Spread.of(finished),
        sodium_mg_per_serving=sodium_mg(finished, case.serving_g),
        salt_by_part=uptake.finished_by_part(amounts.hours),
        uptake_g=uptake.uptake_g(amounts.hours),
        hours_to_seasoned=seasoned,
        hours_to_too_salty=too_salty,
        profiles=tuple(uptake.profile(part.name, amounts.hours) for part in uptake.parts),
        concentrate_water_l=cold.concentrate_water_l,
        concentrate_c=cold.hot_c,
        cold_water_l=cold.cold_water_l,
        ice_kg=cold.ice_kg,
    )
    return _told(plan, vessel, amounts.guidance)


def _amounts(case: BrineCase, vessel: Fit) -> Amounts:
    water = case.water_l if case.water_l is not None else math.ceil(vessel.covers_l * 4) / 4
    if case.method == "equilibrium":
        target = EQUILIBRIUM_PERCENT if case.target_percent is None else case.target_percent
        salt = equilibrium_salt_g(meat_kg(case), water, target)
        strength = 100.0 * salt / (salt + 1000.0 * water * solution.WATER_KG_L)
        hours = LONGEST_H if case.hours is None else case.hours
        found = Guidance(strength, hours, hours, False, "mass balance")
        solution.check_strength(strength)
        return Amounts(found, hours, water, salt)
    found = guidance(case)
    hours = found.usual_hours if case.hours is None else case.hours
    return Amounts(found, hours, water, solution.salt_g(water, found.strength_percent))


def hours_to_salt(case: BrineCase, finished_percent: float) -> Spread | None:
    """Hours until the carved meat of a wet brine holds `finished_percent` salt on average, native salt included.

    None where the brine is too weak for most members of the ensemble to get there. Raises as `plan_brine`.
    """
    check(case)
    OutOfRange.check("finished_percent", finished_percent, 0.3, 5.0, "seasoned meat holds about 1 percent")
    amounts = _amounts(case, fit(case.kind, case.mass_kg, case.count, case.vessel_l, case.water_l))
    uptake = Uptake.of(case, amounts.water_l * solution.WATER_KG_L, amounts.salt_g / 1000.0)
    return uptake.hours_to(finished_percent)[0]


def equilibrium_salt_g(meat_kg: float, water_l: float, target_percent: float) -> float:
    """Salt for a brine that can never over-salt: S = t (M + L) / (100 - t), grams; M the meat without bone."""
    liquid_kg = meat_kg + water_l * solution.WATER_KG_L
    return 1000.0 * target_percent * liquid_kg / (100.0 - target_percent)


def meat_kg(case: BrineCase) -> float:
    """Raw meat without bone."""
    return case.count * case.mass_kg * geometry(case.kind)[0].meat_of_raw


def _dry(case: BrineCase, vessel: Fit) -> BrinePlan:
    row = dry_row()
    percent = row["percent_of_mass_high"] if case.target_percent is None else case.target_percent
    salt = 1000.0 * case.count * case.mass_kg * percent / 100.0
    finished = dry_salted_percent(case, percent)
    plan = replace(
        _blank(case, vessel),
        allowed=True,
        strength_percent=percent,
        hours_low=row["hours_low"],
        hours_high=row["hours_high"],
        hours=row["hours_low"] if case.hours is None else case.hours,
        salt_g=salt,
        salt_cups=cups_of_salt(salt, case.salt_kind),
        salt_g_range=grams_by_volume(salt, case.salt_kind),
        finished_salt_percent=Spread.of(finished),
        sodium_mg_per_serving=sodium_mg(finished, case.serving_g),
    )
    return _told(plan, vessel, Guidance(percent, row["hours_low"], row["hours_high"], True, str(row["source"])))


def _not_brined(case: BrineCase, vessel: Fit) -> BrinePlan:
    plan = _blank(case, vessel)
    return replace(plan, **refused(plan))


def _blank(case: BrineCase, vessel: Fit) -> BrinePlan:
    wet = case.method != "dry"
    return BrinePlan(
        case=case,
        allowed=False,
        strength_percent=0.0,
        hours_low=0.0,
        hours_high=0.0,
        water_l=0.0,
        salt_g=0.0,
        sugar_g=0.0,
        salt_cups=(0.0, 0.0),
        salometer_deg=0.0,
        freezing_c=0.0,
        density_kg_l=solution.density_kg_l(0.0),
        cover_l=vessel.covers_l if wet else 0.0,
        displaced_l=vessel.displaced_l,
        vessel_needed_l=vessel.needed_l if wet else 0.0,
        fits=vessel.fits,
        overflows=vessel.overflows,
        short_l=vessel.short_l,
        would_fit=vessel.would_fit,
        vessels=vessel.vessels,
        shelf_height_mm=vessel.height_mm if wet else 0.0,
        largest_kg=vessel.largest_kg,
        concentrate_water_l=0.0,
        ice_kg=0.0,
        full_weight_kg=case.count * case.mass_kg,
        finished_salt_percent=NONE,
        sodium_mg_per_serving=NONE,
    )


def _told(plan: BrinePlan, vessel: Fit, found: Guidance) -> BrinePlan:
    return replace(
        plan,
        headline=headline(plan),
        notes=notes(plan, vessel, found),
        steps=steps(plan),
        assumptions=assumptions(plan, found),
        cautions=cautions(plan),
        sources=sources(plan, found),
    )
