"""Getting a frozen roast thawed: the refrigerator's days, cold water's hours, or the oven straight from frozen."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, time, timedelta
from math import ceil, floor
from typing import TYPE_CHECKING, Any

from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.taken import Taken, kind_of, mass_of, name_of, roast_phrase
from turnspit.asking.answers.topics import topic_of
from turnspit.asking.answers.wishes import dinner_of
from turnspit.message import Caution, Message
from turnspit.reference import caution

if TYPE_CHECKING:
    from turnspit.heat import ThawForecast
    from turnspit.planning import Timetable

LICENSED_LIMIT_H = 4.0
DAY_H = 24.0
FREEZER_C, PART_FROZEN_C = -18.0, -2.0
LOWEST_OVEN_C = 163.0
"""325 F: the federal floor for a roast in the oven."""


def answer(enquiry: Enquiry) -> Answer:
    """Both ways of thawing with their windows; where a roast is frozen today, the quick ways lead."""
    from turnspit.heat import ThawCase, forecast_thaw

    taken = Taken(enquiry)
    kind = kind_of(taken)
    mass_kg = mass_of(taken, kind)
    start_c = PART_FROZEN_C if enquiry.said("roast.state") == "part_frozen" else FREEZER_C
    cold = forecast_thaw(ThawCase(kind, mass_kg, "refrigerator", start_c=start_c))
    water = forecast_thaw(ThawCase(kind, mass_kg, "cold_water", start_c=start_c))
    # "Cold water or the fridge" asks for the better way.
    topic = "" if topic_of(enquiry.line, "thaw_which") else topic_of(enquiry.text, "thaw")
    roast = roast_phrase(kind, mass_kg, int(enquiry.said("roast.count") or 1))
    in_cold = Message("asking-thaw-refrigerator", roast=roast, **_window(cold))
    in_water = _in_water(water)
    from_frozen = _from_frozen(taken, kind, mass_kg)
    headline, *lines = {
        "hurried": (Message("asking-thaw-hurried"), in_water, from_frozen, in_cold),
        "from_frozen": (from_frozen, in_water, in_cold),
        "cold_water": (in_water, in_cold, from_frozen),
        "keeps": (Message("asking-thaw-keeps"), in_cold, in_water),
    }.get(topic, (in_cold, in_water, from_frozen, Message("asking-thaw-keeps")))
    by_day = _by_day(enquiry, cold)
    told = [*_enough(enquiry, cold, water, topic), *by_day, headline, *lines]
    headline, lines = told[0], told[1:]
    timetable = _dinner(enquiry)
    if timetable is not None and topic_of(enquiry.line, "thaw_in_time"):
        headline, lines = _in_time(timetable, cold), [timetable.headline, *(one for one in told if one != in_cold)]
    elif timetable is not None:
        headline, lines = _with_dinner(timetable, headline, lines, topic == "hurried")
    return Answer(
        headline=headline,
        lines=(*lines, *_licensed_lines(enquiry, water)),
        reasons=_reasons(cold, water),
        assumptions=(*taken.assumptions, *(Message("asking-taken-noon", at=m.values["by"]) for m in by_day)),
        assumed=taken.assumed,
        cautions=(*cold.cautions, *water.cautions, *_cautions(enquiry, water)),
        next=(
            Message("asking-next-frozen-plan", kg=mass_kg, roast=name_of(kind)),
            Message("asking-next-counter"),
            Message("asking-next-why"),
        ),
        data={
            "thaw": {"refrigerator": _document(cold), "cold_water": _document(water)},
            **({} if timetable is None else _plan_document(timetable, enquiry)),
        },
    )


def _dinner(enquiry: Enquiry) -> Timetable | None:
    """The plan for the frozen roast, where the dinner's time is known."""
    if enquiry.said("serve_at") is None:
        return None
    from turnspit.planning import plan_dinner

    wish = dinner_of(enquiry)
    state = wish.roast.state if wish.roast.state in {"frozen", "part_frozen"} else "frozen"
    return plan_dinner(replace(wish, roast=replace(wish.roast, state=state)), enquiry.now)


def _with_dinner(
    timetable: Timetable, headline: Message, lines: list[Message], hurried: bool
) -> tuple[Message, list[Message]]:
    """What the plan makes of it: first where the cook is pressed, else behind the plain answer."""
    if hurried or not timetable.as_wished:
        return timetable.headline, [headline, *lines]
    start = next((task for task in timetable.tasks if task.id == "thaw"), None)
    told = [] if start is None else [Message("asking-plan-task", title=start.title, at=start.start)]
    return headline, [*told, timetable.headline, *lines]


def _in_time(timetable: Timetable, cold: ThawForecast) -> Message:
    """Whether it thaws in time, in one sentence; how it comes to the table stands behind."""
    return Message(f"asking-thaw-in-time-{'yes' if timetable.as_wished else 'no'}", **_window(cold))


def _plan_document(timetable: Timetable, enquiry: Enquiry) -> dict[str, Any]:
    from turnspit.planning import timetable_document

    return {"plan": timetable_document(timetable, enquiry.reader)}


def _window(thaw: ThawForecast) -> dict[str, float]:
    """The refrigerator's window; in whole days, counted up, as the federal table is; under a day in half hours."""
    whole = thaw.rule_h is not None and thaw.case.start_c < PART_FROZEN_C
    low_h = min(thaw.rule_h[0] if whole and thaw.rule_h else thaw.model_h.p10, thaw.plan_h)
    if low_h < DAY_H:
        return {"low_min": floor(low_h * 2) * 30, "high_min": ceil(thaw.plan_h * 2) * 30}
    return {"low_min": _days(low_h) * DAY_H * 60, "high_min": _days(thaw.plan_h) * DAY_H * 60}


def _days(hours: float) -> int:
    return ceil(round(hours / DAY_H, 1))


def _in_water(thaw: ThawForecast) -> Message:
    if thaw.rule_h is None:
        return Message("asking-thaw-cold-water", plan_min=ceil(thaw.plan_h * 2) * 30)
    if thaw.plan_h <= thaw.rule_h[1]:
        return Message("asking-thaw-cold-water-rule", rule_min=thaw.rule_h[1] * 60)
    return Message("asking-thaw-cold-water-longer", rule_min=thaw.rule_h[1] * 60, plan_min=ceil(thaw.plan_h * 2) * 30)


def _enough(enquiry: Enquiry, cold: ThawForecast, water: ThawForecast, topic: str) -> tuple[Message, ...]:
    """Whether the hours that were said are enough, in the water or in the refrigerator."""
    elapsed_h = enquiry.said("elapsed_h")
    overnight = topic_of(enquiry.text, "overnight") and (elapsed_h is None or elapsed_h <= DAY_H)
    if topic == "cold_water" and overnight:
        return (Message("asking-thaw-not-overnight"),)
    if elapsed_h is None:
        return ()
    thaw = water if topic == "cold_water" else cold
    key = "asking-thaw-enough" if elapsed_h >= thaw.plan_h else "asking-thaw-not-enough"
    return (Message(key, given_min=elapsed_h * 60, plan_min=thaw.plan_h * 60),)


def _by_day(enquiry: Enquiry, cold: ThawForecast) -> tuple[Message, ...]:
    """Whether the refrigerator has it thawed by the noon of the day that was said, if it goes in now."""
    if not enquiry.day or enquiry.said("serve_at") is not None or enquiry.said("elapsed_h") is not None:
        return ()
    noon = datetime.combine(date.fromisoformat(enquiry.day), time(12), enquiry.now.tzinfo)
    if noon.date() <= enquiry.now.date():
        return ()
    low_at, high_at = (enquiry.now + timedelta(minutes=span) for span in _window(cold).values())
    key = "yes" if high_at <= noon else "maybe" if low_at <= noon else "no"
    asked = "-late" if topic_of(enquiry.line, "asks_too_late") else ""
    return (Message(f"asking-thaw-by-day-{key}{asked}", by=noon, low_at=low_at, high_at=high_at),)


def _from_frozen(taken: Taken, kind: str, mass_kg: float) -> Message:
    """The way without thawing, with its computed window."""
    from turnspit.heat import OvenStep, RoastCase, forecast_roast, roast

    said = taken.enquiry.said
    oven_c = float(said("oven.temperature_c") or max(roast(kind).usual_oven_c, LOWEST_OVEN_C))
    oven = (OvenStep(0.0, oven_c, bool(said("oven.convection"))),)
    ready = forecast_roast(RoastCase(kind, mass_kg, state="frozen", oven=oven)).ready_min
    return Message("asking-thaw-from-frozen", oven_c=oven_c, low_min=ready.p10, high_min=ready.p90)


def _licensed_lines(enquiry: Enquiry, water: ThawForecast) -> tuple[Message, ...]:
    if enquiry.kitchen == "home" or water.surface_above_5c_h.p90 <= LICENSED_LIMIT_H:
        return ()
    return (Message("asking-thaw-licensed", hours_min=water.surface_above_5c_h.p90 * 60),)


def _cautions(enquiry: Enquiry, water: ThawForecast) -> tuple[Caution, ...]:
    rules = ["thaw-counter", "thaw-cold-water", "thaw-refrigerator", "from-frozen"]
    if enquiry.kitchen != "home" and water.surface_above_5c_h.p90 > LICENSED_LIMIT_H:
        rules.append("thaw-four-hours")
    return tuple(caution(rule, "warn" if rule == "thaw-four-hours" else "info") for rule in rules)


def _reasons(cold: ThawForecast, water: ThawForecast) -> tuple[Message, ...]:
    told = []
    for way, thaw in (("refrigerator", cold), ("cold-water", water)):
        computed = Message(
            f"asking-why-thaw-{way}",
            low_min=thaw.model_h.p10 * 60,
            high_min=thaw.model_h.p90 * 60,
            plan_min=thaw.plan_h * 60,
        )
        told.append(computed)
        if thaw.rule_h:
            rule = Message("asking-why-thaw-rule", low_min=thaw.rule_h[0] * 60, high_min=thaw.rule_h[1] * 60)
            told.append(rule)
    return (*told, Message("asking-why-thaw-safer"))


def _document(thaw: ThawForecast) -> dict[str, Any]:
    return {
        "plan_h": round(thaw.plan_h, 2),
        "model_h": thaw.model_h.document(),
        "rule_h": [round(hours, 2) for hours in thaw.rule_h] if thaw.rule_h else None,
        "surface_above_5c_h": thaw.surface_above_5c_h.document(),
        "curve": {
            "hour": [round(float(hour), 2) for hour in thaw.curve_h],
            "core_c": [round(float(c), 1) for c in thaw.core_c],
            "surface_c": [round(float(c), 1) for c in thaw.surface_c],
        },
    }
