"""The timed plan: when the roast goes in, when to start checking, what comes first; the timetable itself is data."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, time, timedelta
from math import ceil, floor
from typing import TYPE_CHECKING, Any

from turnspit.asking.answers import holding, roast_time, steps
from turnspit.asking.answers.answer import Answer, Enquiry, once, sources_line
from turnspit.asking.answers.dial import dial_line
from turnspit.asking.answers.roasting import (
    before_carving,
    forecast_document,
    outward,
    reasons,
    roast_cautions,
    tender,
)
from turnspit.asking.answers.taken import USUAL_KIND, Taken, name_of, usual_kind
from turnspit.asking.answers.topics import topic_of
from turnspit.asking.answers.wishes import brined, dinner_of
from turnspit.message import Caution, Message
from turnspit.words import Reader

if TYPE_CHECKING:
    from turnspit.planning import Timetable

EXPLAINED_TASKS = ("roast_in", "thaw", "brine_in", "rest", "hold")
ALWAYS_SAID = ("poultry-165", "meat-145", "stuffing-just-before")
"""Reminders that belong to the answer itself; the others stand with the task they are about, and behind "why"."""
PUT_FIRST = {"planning-headline-other": "asking-plan-other", "planning-headline-later": "asking-plan-later"}
"""Headlines of planning that say first why not, with ours that say first what to do."""
TOLD_TASKS = (("thaw_2", "asking-plan-task"), ("rest", "asking-plan-by"), ("carve", "asking-plan-task"))
LIKELY_EARLY = timedelta(minutes=45)
HEARD = ("heat-count-crowded",)
"""Remarks of the heat room that a cook has to hear: more pieces than a household oven holds."""
PINK_KINDS = ("beef_rib", "beef_tenderloin", "lamb_leg")
"""Roasts that are served pink; which one it is changes the times much."""
POUND_KG = 0.45359237


def answer(enquiry: Enquiry) -> Answer:
    """The timetable for the dinner; without a time, how long the roast takes and a question for the time."""
    if holding.is_early(enquiry):
        return holding.early(Taken(enquiry))
    if enquiry.said("serve_at") is None and enquiry.said("start_at") is None:
        if steps.asked(enquiry) == "ahead":
            return _ahead(enquiry)
        return _on_a_day(enquiry) if enquiry.day else _without_time(enquiry)
    from turnspit.planning import plan_dinner, timetable_document

    wish = dinner_of(enquiry)
    timetable = plan_dinner(wish, enquiry.now)
    salted = brined(enquiry)
    if not salted and _said_brined(enquiry) and _has_no_time_to_brine(timetable):
        salted = True
        timetable = plan_dinner(replace(wish, brine=replace(wish.brine, done=True)), enquiry.now)
    unclear = enquiry.said("roast.kind") is None and usual_kind(enquiry) != USUAL_KIND
    headline, *lines = _told(enquiry, timetable)
    warned, reminded = _cautions(timetable)
    if topic_of(enquiry.line, "asks_too_late") and not topic_of(enquiry.line, "steps_before"):
        key = "asking-too-late" if timetable.headline.key in PUT_FIRST else "asking-in-time"
        headline = Message(key, plan=headline)
    return Answer(
        headline=headline,
        lines=tuple(lines),
        reasons=(*_reasons(timetable), *reminded),
        assumptions=(
            *([Message("asking-taken-brined")] if salted else []),
            *([Message("asking-taken-cut", roast=name_of(enquiry.likely_kind))] if enquiry.likely_kind else []),
            *(told for told in timetable.assumptions if told.key in HEARD or not told.key.startswith("heat-")),
        ),
        assumed=_assumed(enquiry, timetable),
        cautions=(*warned, *(steps.ahead_cautions() if steps.asked(enquiry) == "ahead" else ())),
        question=Message("asking-ask-kind") if unclear else None,
        choices=tuple(name_of(kind) for kind in PINK_KINDS) if unclear else (),
        asks="roast.kind" if unclear else "",
        next=_next(enquiry, timetable),
        data={"plan": timetable_document(timetable, enquiry.reader), **_forecast(timetable)},
    )


def _told(enquiry: Enquiry, timetable: Timetable) -> tuple[Message, ...]:
    """The plan, or the steps of it that are asked for."""
    if steps.asked(enquiry) == "next":
        return steps.next_steps(enquiry, timetable)
    if steps.asked(enquiry) == "ahead":
        return steps.before_the_day(enquiry, timetable)
    forecast = timetable.forecast
    off = dial_line(enquiry, forecast.case.oven[0].temperature_c) if forecast is not None else ()
    return (_headline(timetable), *off, *_why_not(timetable), *_lines(enquiry, timetable))


def _ahead(enquiry: Enquiry) -> Answer:
    """What can be made on the days before, whatever the roast and its hour."""
    headline, *lines = steps.before_the_day(enquiry, None)
    return Answer(
        headline=headline,
        lines=tuple(lines),
        reasons=(Message("technique-why"),),
        cautions=steps.ahead_cautions(),
        question=Message("asking-ask-serve_at"),
        choices=tuple(Message("asking-choice-at", at=at) for at in _around(enquiry, _tomorrow(enquiry))),
        asks="serve_at",
        next=(Message("asking-next-plan"), Message("asking-next-thaw"), Message("asking-next-brine")),
    )


def _tomorrow(enquiry: Enquiry) -> datetime:
    return enquiry.now.replace(minute=0, second=0, microsecond=0) + timedelta(days=1)


def _said_brined(enquiry: Enquiry) -> bool:
    """ "Brined 16 lb turkey": it may be brined already, or wanted so."""
    return bool(topic_of(enquiry.text, "brined"))


def _has_no_time_to_brine(timetable: Timetable) -> bool:
    return any(told.key == "planning-no-time-for-brine" for told in timetable.assumptions)


def _without_time(enquiry: Enquiry) -> Answer:
    today = enquiry.now.replace(minute=0, second=0, microsecond=0)
    times = [at if at > enquiry.now else at + timedelta(days=1) for at in _around(enquiry, today)]
    return _asking_when(roast_time.answer(enquiry), times)


def _on_a_day(enquiry: Enquiry) -> Answer:
    """A day without its hour is planned for the usual one, which is said and asked."""
    day = datetime.combine(date.fromisoformat(enquiry.day), time(), enquiry.now.tzinfo)
    at = day.replace(hour=enquiry.usual_hour)
    if at <= enquiry.now and day.date() == enquiry.now.date():
        return _without_time(enquiry)
    planned = answer(replace(enquiry, understood={**enquiry.understood, "serve_at": at.isoformat()}))
    if planned.question is not None:
        return planned
    told = Message("asking-taken-hour", at=at)
    return _asking_when(
        replace(
            planned, assumptions=(told, *planned.assumptions), assumed={"serve_at": at.isoformat(), **planned.assumed}
        ),
        _around(enquiry, day),
    )


def _around(enquiry: Enquiry, day: datetime) -> list[datetime]:
    return [day.replace(hour=hour) for hour in range(enquiry.usual_hour - 1, enquiry.usual_hour + 2)]


def _asking_when(told: Answer, times: list[datetime]) -> Answer:
    return replace(
        told,
        question=Message("asking-ask-serve_at"),
        choices=tuple(Message("asking-choice-at", at=at) for at in times),
        asks="serve_at",
    )


def _headline(timetable: Timetable) -> Message:
    """Planning's own; for a wish that is refused as too rare one that names one temperature, not three."""
    said = timetable.headline.values
    seen, plan = said.get("seen"), said.get("plan")
    if timetable.headline.key in PUT_FIRST:
        others = {name: value for name, value in said.items() if name != "why"}
        return Message(PUT_FIRST[timetable.headline.key], **others)
    if not (isinstance(seen, Message) and seen.key == "safety-wished" and isinstance(plan, Message)):
        return timetable.headline
    return Message("asking-plan-too-rare", c=seen.values["temperature_c"], safe_c=seen.values["needed_c"], plan=plan)


def _why_not(timetable: Timetable) -> list[Message]:
    """Why it is not planned as it was wished, behind the plan itself."""
    why = timetable.headline.values.get("why")
    return [why] if timetable.headline.key in PUT_FIRST and isinstance(why, Message) else []


def _lines(enquiry: Enquiry, timetable: Timetable) -> tuple[Message, ...]:
    lines: list[Message] = []
    under_way = timetable.oven_in_at is not None and timetable.oven_in_at < enquiry.now
    first = next((task for task in timetable.tasks if not (under_way and task.start < enquiry.now)), None)
    if first is not None:
        lines.append(Message("asking-plan-first", title=first.title, at=max(first.start, enquiry.now)))
    if timetable.ready is not None and timetable.pull_c is not None:
        window = timetable.ready
        low_at, high_at = outward(window.p10, window.p90)
        lines.append(Message("asking-plan-ready", low_at=low_at, high_at=high_at, c=timetable.pull_c))
    lines += _before_carving(timetable)
    by_id = {task.id: task for task in timetable.tasks}
    if "hold" in by_id and _likely_early(timetable):
        lines.append(Message("asking-plan-hold", title=by_id["hold"].title))
    lines += [
        Message(key, title=by_id[name].title, at=by_id[name].start) for name, key in TOLD_TASKS if name in by_id
    ]
    if not timetable.as_wished:
        lines += [
            Message("asking-plan-way", title=way.title, why=way.why)
            for way in timetable.ways
            if way.possible and not way.chosen
        ]
    return tuple(lines)


def _likely_early(timetable: Timetable) -> bool:
    """Whether it will most likely wait long for the dinner, as one does that was put in early."""
    rest = next((task for task in timetable.tasks if task.id == "rest"), None)
    return rest is not None and timetable.ready is not None and rest.start - timetable.ready.p50 > LIKELY_EARLY


def _before_carving(timetable: Timetable) -> list[Message]:
    """What meat taken out below its safe minimum must read before it is carved: a prediction is no proof."""
    forecast = timetable.forecast
    if forecast is None:
        return []
    from turnspit.heat import roast

    row = roast(forecast.case.kind)
    return [*before_carving(row, forecast), *tender(row, forecast)]


def _reasons(timetable: Timetable) -> tuple[Message, ...]:
    forecast = timetable.forecast
    computed: tuple[Message, ...] = ()
    if forecast is not None:
        from turnspit.heat import roast

        computed = reasons(forecast.case, roast(forecast.case.kind), forecast)
    by_id = {task.id: task for task in timetable.tasks}
    explained = [by_id[name] for name in EXPLAINED_TASKS if name in by_id]
    steps = [Message("asking-plan-why", title=task.title, why=task.why) for task in explained]
    ways = [Message("asking-plan-way", title=way.title, why=way.why) for way in timetable.ways]
    return (*computed[:1], *steps[:2], *computed[1:], *ways, *steps[2:], *sources_line(timetable.sources))


def _assumed(enquiry: Enquiry, timetable: Timetable) -> dict[str, Any]:
    """By path, what planning filled in; the sentences are planning's own."""
    if timetable.forecast is None:
        return {}
    case = timetable.forecast.case
    filled = {
        "roast.kind": case.kind,
        "roast.mass_kg": case.mass_kg,
        "roast.state": case.state,
        "roast.stuffed": case.stuffed,
        "oven.temperature_c": case.oven[0].temperature_c,
        "oven.convection": case.oven[0].convection,
    }
    return {path: value for path, value in filled.items() if enquiry.said(path) is None}


def _cautions(timetable: Timetable) -> tuple[tuple[Caution, ...], tuple[Message, ...]]:
    """What this plan warns of and what it must read when done; apart from it, the reminders that its tasks carry."""
    from turnspit.heat import roast

    found = [*timetable.cautions, *(said for task in timetable.tasks for said in task.cautions)]
    if timetable.forecast is not None:
        found += roast_cautions(timetable.forecast, roast(timetable.forecast.case.kind))
    apply = {*ALWAYS_SAID, *(["hot-hold"] if _likely_early(timetable) else [])}
    if not apply.intersection(said.rule for said in found):
        apply.add("thermometer-decides")
    warned = tuple(said for said in found if said.severity != "info" or said.rule in apply)
    rules = {"local-codes", *(said.rule for said in warned)}
    return warned, once([said.message for said in found if said.rule not in rules])


def _next(enquiry: Enquiry, timetable: Timetable) -> tuple[Message, ...]:
    case = timetable.forecast.case if timetable.forecast else None
    lines = []
    if case is not None:
        lines.append(Message("asking-next-make-it", kg=_larger(case.kind, case.mass_kg, enquiry.reader)))
    lines.append(Message("asking-next-push", at=timetable.serve_at + timedelta(hours=1)))
    if enquiry.said("roast.state") in {None, "thawed"} and case is not None and case.state == "thawed":
        lines.append(Message("asking-next-frozen"))
    lines.append(Message("asking-next-why"))
    return tuple(lines[:3])


def _larger(kind: str, mass_kg: float, reader: Reader) -> float:
    """A quarter more, in the reader's round figures; a quarter less where no roast of the kind is so heavy."""
    from turnspit.heat import roast

    unit_kg = POUND_KG if reader.units == "us" else 1.0
    units = mass_kg / unit_kg
    more_kg = max(ceil(units + 0.5), round(1.25 * units)) * unit_kg
    return more_kg if more_kg <= roast(kind).mass_kg_range[1] else max(1, floor(0.75 * units)) * unit_kg


def _forecast(timetable: Timetable) -> dict[str, Any]:
    return {"forecast": forecast_document(timetable.forecast)} if timetable.forecast else {}
