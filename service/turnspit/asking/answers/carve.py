"""After the oven: resting, carving, and how much meat there will be."""

from __future__ import annotations

import re

from turnspit.asking.answers import holding
from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.roasting import rest_line
from turnspit.asking.answers.taken import Taken, forecast_of, kind_of, mass_of, name_of, roast_case_of, roast_phrase
from turnspit.asking.answers.topics import topic_of
from turnspit.message import Message
from turnspit.reference import caution

_EITHER = re.compile(r"\d ?(?:min\w*)? (?:or|o) (?:\d|an? |half|una? |media)|minut\w* (?:or|o) ")


def answer(enquiry: Enquiry) -> Answer:
    """Resting, carving or the amount of meat, whichever the line is about; the others follow as lines."""
    from turnspit.heat import roast

    taken = Taken(enquiry)
    kind = kind_of(taken)
    row = roast(kind)
    form = "breast" if kind == "turkey_breast" else "bird" if row.poultry else "joint"
    topic = topic_of(enquiry.text, "carve", "carve")
    if topic == "early":
        return holding.early(taken)
    mass_kg = mass_of(taken, kind)
    told = {
        "rest": rest_line(row, mass_kg),
        "carve": Message(f"asking-carve-{form}", roast=name_of(kind)),
        "amount": _amount(kind, mass_kg, int(enquiry.said("roast.count") or 1)),
    }
    headline = _loss(taken) if topic == "loss" else told.pop(topic)
    verdict = _long_enough(enquiry, headline) if topic == "rest" else None
    rise = (_rise(taken),) if topic == "rest" else ()
    return Answer(
        headline=verdict or headline,
        lines=(*([headline] if verdict else []), *rise, *told.values(), Message("asking-carve-board")),
        reasons=(Message("asking-why-rest"), Message(f"asking-carve-{form}-how"), Message("asking-why-yield")),
        assumptions=taken.assumptions,
        assumed=taken.assumed,
        cautions=(caution("two-hours", "info"), caution("raw-juices", "info")),
        next=(Message("asking-next-early"), Message("asking-next-leftovers"), Message("asking-next-why")),
        data={"carve": {"rest_min": list(row.rest_min_range)}},
    )


def _long_enough(enquiry: Enquiry, usual: Message) -> Message | None:
    """Whether the rest that was said is right; None where none was said."""
    rest_h = enquiry.said("elapsed_h")
    if rest_h is None or _EITHER.search(enquiry.line.lower()):
        # "20 minutes or an hour" is answered with the usual rest.
        return None
    low_min, high_min = float(usual.values["low_min"]), float(usual.values["high_min"])  # type: ignore[arg-type]
    rest_min = float(rest_h) * 60
    key = "long" if rest_min > high_min else "short" if rest_min < low_min else "enough"
    return Message(f"asking-carve-rest-{key}", rest_min=rest_min, low_min=low_min, high_min=high_min)


def _rise(taken: Taken) -> Message:
    """How far the slowest place goes on heating after the oven, from the forecast."""
    forecast = forecast_of(roast_case_of(taken))
    peak = forecast.peak_c[forecast.deciding_station]
    return Message("asking-carve-rise", low_k=peak.p10 - forecast.pull_c, high_k=peak.p90 - forecast.pull_c)


def _loss(taken: Taken) -> Message:
    """What it loses in the oven, from the forecast."""
    case = roast_case_of(taken)
    forecast = forecast_of(case)
    low, high = forecast.loss_fraction.p10, forecast.loss_fraction.p90
    return Message(
        "asking-carve-loss",
        roast=roast_phrase(case.kind, case.mass_kg, case.count),
        low=low * 100,
        high=high * 100,
        left_kg=case.mass_kg * case.count * (1 - forecast.loss_fraction.p50),
        c=forecast.pull_c,
    )


def _amount(kind: str, mass_kg: float, count: int) -> Message:
    from turnspit.heat import roast
    from turnspit.recipes import carved

    meat = carved(roast(kind).bought_as, mass_kg * count)
    return Message(
        "asking-carve-amount", roast=roast_phrase(kind, mass_kg, count), kg=meat.meat_kg, servings=meat.servings
    )
