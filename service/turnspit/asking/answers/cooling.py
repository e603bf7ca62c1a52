"""How long something hot takes to be cold, whether it makes the two stages, and how deep it may stand for that.

The hours are the heat room's forecast, judged by the safety room; what was not said is taken and told.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any, Literal

from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.taken import Taken, mass_of
from turnspit.asking.answers.topics import topic_of
from turnspit.asking.clean import clean
from turnspit.asking.readers import GRAMMARS
from turnspit.asking.readers.measures.measures import Measure
from turnspit.asking.tokens import tokenize
from turnspit.message import Caution, Message
from turnspit.quantities import pan
from turnspit.reference import caution
from turnspit.safety import CoolingPlan, cooling_case, plan_cooling
from turnspit.safety.cooling_case import PLACE_C, PLACES, Place

if TYPE_CHECKING:
    from turnspit.heat import ChillCase

FLOWS = ("stock", "soup", "gravy", "stew")
"""Foods that stand in a pot where only an amount of them is told."""
THIN_LAYER_M = 0.025
DEEPEST_PAN_M = 1.0
FULL_PAN = "full hotel pan 2.5 in"
PLACE_WARMEST_C, COLD_ENOUGH_C = 12.0, 4.5
"""A reading below the first is that of the refrigerator; above the second nothing in it gets to 5 C."""
MEAT_KG_L = 1.05
"""Cooked meat without gaps (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Told:
    """What a line tells of something that cools: depth in m, amount in kg or L, place and its temperature in C."""

    food: str
    place: Place
    place_c: float | None = None
    depth_m: float | None = None
    kg: float | None = None
    litres: float | None = None
    kind: str = ""


def answer(enquiry: Enquiry) -> Answer:
    """Hours and verdict where enough is told, else the depth that would do, and what is to be told."""
    told, taken = _told(enquiry), Taken(enquiry)
    if told.place_c is not None and told.place_c > COLD_ENOUGH_C:
        return _too_warm(told.place_c)
    asked = topic_of(enquiry.text, "cool_asked", "in_time")
    case = _case(told, taken)
    plan = plan_cooling(case or _layer(told), enquiry.kitchen or "licensed")
    if told.place_c is None:
        taken.told.append(Message(f"cooling-taken-{told.place}", c=PLACE_C[told.place]))
    if case is None or asked in ("depth", "way"):
        headline = _depth(plan, told, _lead(enquiry))
        lines = (*([_verdict(plan, "hours")] if case is not None else ()), *_pans(plan, told))
    else:
        headline = _verdict(plan, asked)
        lines = (plan.finding.action,) if plan.finding.severity == "ok" else _remedies(plan, told)
    asks = case is None and asked != "depth"
    return Answer(
        headline=headline,
        lines=(*lines, Message("cooling-home")),
        reasons=(Message("cooling-why", members=plan.case.members), *plan.forecast.assumptions),
        assumptions=(*taken.assumptions, *(plan.forecast.assumptions if case is not None else ())),
        assumed=taken.assumed,
        cautions=_cautions(plan, judged=case is not None),
        question=Message("cooling-ask") if asks else None,
        next=(Message("asking-next-keeps"), Message("asking-next-reheat"), Message("asking-next-why")),
        data={"cooling": _document(plan), "safety": {"topic": "cooling", "findings": _findings(plan, case)}},
    )


def _too_warm(place_c: float) -> Answer:
    """A refrigerator in which nothing becomes cold."""
    return Answer(
        headline=Message("cooling-place-warm", c=place_c),
        lines=(Message("cooling-home"),),
        cautions=(caution("cold-hold", "warn"), caution("cooling-two-stage", "warn")),
        next=(Message("asking-next-keeps"), Message("asking-next-why")),
    )


def _told(enquiry: Enquiry) -> Told:
    measures = _measures(enquiry)
    depth, mass, volume = (measures.get(tag) for tag in ("<length>", "<mass>", "<volume>"))
    read_c = enquiry.said("reading.temperature_c")
    place = next((name for name in PLACES if name == topic_of(enquiry.text, "cool_places")), PLACES[0])
    return Told(
        food=topic_of(enquiry.line, "cool_foods") or topic_of(enquiry.text, "cool_foods", "turkey"),
        place=place,
        place_c=read_c if read_c is not None and read_c < PLACE_WARMEST_C else None,
        depth_m=depth if depth is not None and depth < DEEPEST_PAN_M else None,
        kg=mass,
        litres=volume,
        kind=_whole_kind(enquiry),
    )


def _measures(enquiry: Enquiry) -> dict[str, float]:
    """The first length, mass and volume in SI, of the line or of those it amends, by the tag of the reader."""
    found: dict[str, float] = {}
    for line in enquiry.text.splitlines():
        items = tokenize(clean(line), enquiry.reader.language).items
        for grammar in GRAMMARS:
            items = grammar.reduce(items)
        for item in items:
            for tag, value in item.tags.items():
                if isinstance(value, Measure):
                    found.setdefault(tag, value.si)
    return found


def _whole_kind(enquiry: Enquiry) -> str:
    """The kind of roast that cools in one piece, "" where it is cut up or no roast."""
    kind = enquiry.said("roast.kind")
    if kind is None or topic_of(enquiry.line, "cool_cut") or topic_of(enquiry.line, "cool_foods") in FLOWS:
        return ""
    return str(kind)


def _case(told: Told, taken: Taken) -> ChillCase | None:
    """The case as far as it was told; None where neither depth nor amount makes one."""
    if told.depth_m is not None or (told.food in FLOWS and (told.kg or told.litres)):
        return cooling_case(
            told.food, told.place, depth_m=told.depth_m, kg=told.kg, litres=told.litres, place_c=told.place_c
        )
    return _in_one_piece(told, taken) if told.kind else None


def _in_one_piece(told: Told, taken: Taken) -> ChillCase:
    from turnspit.heat import roast

    mass_kg = told.kg if told.kg is not None else mass_of(taken, told.kind)
    shape: Literal["bird", "brick"] = "bird" if roast(told.kind).poultry else "brick"
    return replace(_layer(told), shape=shape, dims_mm=(), mass_kg=mass_kg)


def _layer(told: Told) -> ChillCase:
    """A thin layer of the food in that place, for the depth that would do."""
    return cooling_case(told.food, told.place, depth_m=THIN_LAYER_M, place_c=told.place_c)


def _verdict(plan: CoolingPlan, asked: str) -> Message:
    """The hours of both stages, and whether they are made."""
    hours = (plan.first_h.p10, plan.first_h.p90, plan.total_h.p10, plan.total_h.p90)
    if not all(map(math.isfinite, hours)):
        return Message("safety-cooling-never")
    first_low, first_high, total_low, total_high = (60.0 * hour for hour in hours)
    times = Message(
        "cooling-times", first_low=first_low, first_high=first_high, total_low=total_low, total_high=total_high
    )
    form = "hours" if asked == "hours" else "in_time"
    return Message(f"cooling-{form}-{plan.finding.severity}", times=times)


def _lead(enquiry: Enquiry) -> str:
    """How the answer begins that tells a depth: whether it may go in hot, and not whole."""
    if not topic_of(enquiry.line, "cool_hot"):
        return "cooling-depth"
    return "cooling-hot-in-whole" if topic_of(enquiry.line, "cool_whole") else "cooling-hot-in"


def _depth(plan: CoolingPlan, told: Told, lead: str) -> Message:
    """How deep it may stand there, and in an ice bath."""
    if told.place == "ice_bath" or plan.depth_mm is None:
        if plan.iced_depth_mm is None:
            return Message("safety-do-cool-two-stage")
        return Message(f"{lead}-ice", iced_mm=plan.iced_depth_mm)
    return Message(lead, depth_mm=plan.depth_mm, iced_mm=plan.iced_depth_mm or plan.depth_mm)


def _remedies(plan: CoolingPlan, told: Told) -> tuple[Message, ...]:
    """What would make it in time: off the bone, a shallower layer, an ice bath, so many pans."""
    cut = (Message("cooling-carve"),) if told.kind else ()
    ice = plan.iced_depth_mm if told.place != "ice_bath" and plan.depth_mm is not None else None
    iced = () if ice is None else (Message("cooling-or-ice", iced_mm=ice),)
    return (*cut, plan.finding.action, *iced, *_pans(plan, told))


def _pans(plan: CoolingPlan, told: Told) -> tuple[Message, ...]:
    """How many full hotel pans so much fills at the depth that would do."""
    by_mass = None if told.kg is None else told.kg / MEAT_KG_L
    litres = by_mass if told.litres is None else told.litres
    if litres is None or plan.depth_mm is None:
        return ()
    pans = litres / (pan(FULL_PAN).area_m2 * plan.depth_mm)
    return (Message("cooling-pans", pans=math.ceil(pans), depth_mm=plan.depth_mm),)


def _cautions(plan: CoolingPlan, *, judged: bool) -> tuple[Caution, ...]:
    found = plan.finding.caution if judged else caution("cooling-two-stage", "info")
    return (found, caution("cooling-ways", "info"), caution("two-hours", "info"))


def _findings(plan: CoolingPlan, case: ChillCase | None) -> list[dict[str, Any]]:
    found = plan.finding
    return [
        {
            "rule": found.rule,
            "severity": found.severity if case is not None else "info",
            "do": found.do if case is not None else "chill",
            "kitchen": found.kitchen,
            "citation": found.citation,
            "unknown": [] if case is not None else ["depth_mm"],
        }
    ]


def _document(plan: CoolingPlan) -> dict[str, Any]:
    finite = math.isfinite(plan.total_h.p90) and math.isfinite(plan.first_h.p90)
    return {
        "first_h": plan.first_h.document(2) if finite else None,
        "total_h": plan.total_h.document(2) if finite else None,
        "depth_mm": None if plan.depth_mm is None else math.floor(plan.depth_mm),
        "iced_depth_mm": None if plan.iced_depth_mm is None else math.floor(plan.iced_depth_mm),
    }
