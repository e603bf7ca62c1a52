"""How a time compares: stuffed or not, with the fan or without, two or one, frozen or thawed; and by the pound."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from types import MappingProxyType
from typing import TYPE_CHECKING

from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.answers.topics import topic_of
from turnspit.message import Message

if TYPE_CHECKING:
    from turnspit.heat import RoastCase, RoastForecast

POUND_KG = 0.45359237
HIGH_M = 300.0


def comparison(enquiry: Enquiry, forecast: RoastForecast) -> tuple[Message, ...]:
    """What it would take otherwise, where the line compares, and the minutes for a pound or a kilogram, where it
    speaks of them."""
    found = []
    if topic_of(enquiry.line, "compared") == "compared" or enquiry.said("altitude_m") is not None:
        found += _otherwise(forecast)
    if topic_of(enquiry.line, "by_weight") == "by_weight":
        found.append(_by_weight(forecast))
    return tuple(found)


def _otherwise(forecast: RoastForecast) -> list[Message]:
    from turnspit.heat import forecast_roast

    case = forecast.case
    name = next((name for name, (holds, _) in OTHERWISE.items() if holds(case)), None)
    if name is None:
        return []
    other = forecast_roast(OTHERWISE[name][1](case)).ready_min
    ready = forecast.ready_min
    return [
        Message(
            f"asking-compared-{name}",
            low_min=other.p10,
            high_min=other.p90,
            more_min=abs(ready.p50 - other.p50),
            count=case.count,
            longer="yes" if ready.p50 >= other.p50 else "no",
        )
    ]


def _by_weight(forecast: RoastForecast) -> Message:
    pounds = forecast.case.mass_kg / POUND_KG
    low_min, high_min = (span / pounds for span in (forecast.ready_min.p10, forecast.ready_min.p90))
    return Message(
        "asking-compared-by-weight",
        low=round(low_min),
        high=round(high_min),
        low_kg=round(low_min / POUND_KG),
        high_kg=round(high_min / POUND_KG),
    )


def _still(case: RoastCase) -> RoastCase:
    return replace(case, oven=tuple(replace(step, convection=False) for step in case.oven))


OTHERWISE: Mapping[str, tuple[Callable[[RoastCase], bool], Callable[[RoastCase], RoastCase]]] = MappingProxyType(
    {
        "stuffed": (lambda case: case.stuffed, lambda case: replace(case, stuffed=False)),
        "frozen": (lambda case: case.state != "thawed", lambda case: replace(case, state="thawed")),
        "flat": (
            lambda case: case.kind.endswith("_spatchcock"),
            lambda case: replace(case, kind=case.kind.removesuffix("_spatchcock")),
        ),
        "count": (lambda case: case.count > 1, lambda case: replace(case, count=1)),
        "altitude": (lambda case: case.altitude_m >= HIGH_M, lambda case: replace(case, altitude_m=0.0)),
        "fan": (lambda case: any(step.convection for step in case.oven), _still),
    }
)
"""What may be compared: whether the roast is like that, and the roast without it."""
