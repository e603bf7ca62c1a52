"""What may be asked of a forecast besides: how long to allow, which oven, how large, what it hangs on and costs."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime, timedelta
from typing import Annotated, Self

from pydantic import AwareDatetime, Field

from turnspit.api.schemas.common import Body, Given, Number, Yes
from turnspit.errors import TurnspitError
from turnspit.heat import (
    RoastCase,
    RoastForecast,
    Sensitivity,
    Trade,
    largest_mass_kg,
    oven_for,
    sensitivities,
    trades,
)
from turnspit.heat.inverse import Change
from turnspit.message import Message
from turnspit.words import Reader, say

LEAST_MIN = 0.1
"""What moves the time by less is not told as moving it."""
Certainty = Annotated[Number, Field(ge=0.01, le=0.99)]


class QuestionsBody(Body):
    """What else is wanted of the forecast; only what is asked is answered."""

    certainties: list[Certainty] = Field(
        default_factory=lambda: [0.8, 0.9],
        max_length=5,
        description="How sure to be: each gives its minutes to allow.",
    )
    ready_by: AwareDatetime | None = Field(
        default=None,
        description="When it shall be rested and ready to carve: gives the latest time in for each certainty.",
        examples=["2026-11-26T18:00:00-05:00"],
    )
    within_min: Annotated[Number, Field(ge=1, le=1800)] | None = Field(
        default=None,
        description="Minutes it may take in the oven: gives the oven that does it, and the largest piece.",
    )
    certainty: Certainty = Field(default=0.9, description="How sure to be of `within_min`.")
    sensitivities: Yes = Field(default=False, description="What makes the time uncertain.")
    juice: Yes = Field(
        default=False, description="What a hotter or cooler oven and a later pull do to time and juice."
    )


class AllowGiven(Given):
    """Oven and rest together, so that a share `certainty` of such roasts is ready."""

    certainty: float
    allow_min: float
    latest_in: datetime | None = Field(description="`ready_by` less `allow_min`.")


class SoughtGiven(Given):
    """What was sought, or why there is none."""

    value: float | None
    why: str | None = None

    @classmethod
    def of(cls, seek: Callable[[], float], digits: int) -> Self:
        """The answer of `seek`, rounded, or what it says instead."""
        try:
            return cls(value=round(seek(), digits))
        except TurnspitError as error:
            return cls(value=None, why=str(error))


class SensitivityGiven(Given):
    """What one uncertain number does alone, in minutes from the median: at its 10th and at its 90th percentile."""

    name: str
    text: str
    at_p10_min: float
    at_p90_min: float

    @classmethod
    def of(cls, one: Sensitivity, reader: Reader) -> Self:
        """From the heat room's answer, in the reader's words."""
        text = say(Message(f"heat-uncertain-{one.name.replace('_', '-')}"), reader)
        return cls(name=one.name, text=text, at_p10_min=round(one.at_p10_min, 1), at_p90_min=round(one.at_p90_min, 1))


class TradeGiven(Given):
    """What a change does to the median, beside the roast as asked."""

    change: Change = Field(description="Every setting hotter or cooler, or the pull later, by `by_k`.")
    by_k: float
    ready_min: float
    loss_fraction: float
    loss_kg: float = Field(description="Of one piece.")

    @classmethod
    def of(cls, one: Trade) -> Self:
        """From the heat room's answer."""
        return cls(
            change=one.change,
            by_k=one.by_k,
            ready_min=round(one.ready_min, 1),
            loss_fraction=round(one.loss_fraction, 4),
            loss_kg=round(one.loss_kg, 3),
        )


class AnswersGiven(Given):
    """What was asked besides. Planning: a bird leaves the oven by its thermometer, whatever is answered here."""

    allow: list[AllowGiven]
    oven_c: SoughtGiven | None = Field(
        description="The setting, kept all along, that is ready within `within_min`; for a bird never under 163 C."
    )
    largest_mass_kg: SoughtGiven | None = Field(description="The heaviest piece that is ready within `within_min`.")
    sensitivities: list[SensitivityGiven] | None = Field(description="What moves the time most first.")
    juice: list[TradeGiven] | None

    @classmethod
    def of(cls, asked: QuestionsBody, forecast: RoastForecast, reader: Reader) -> Self:
        """The answers about the roast that was forecast."""
        case, within_min = forecast.case, asked.within_min
        return cls(
            allow=[_allow(certainty, forecast, asked.ready_by) for certainty in asked.certainties],
            oven_c=_sought(oven_for, case, within_min, asked.certainty, 0),
            largest_mass_kg=_sought(largest_mass_kg, case, within_min, asked.certainty, 2),
            sensitivities=[
                SensitivityGiven.of(one, reader) for one in sensitivities(case) if one.swing_min >= LEAST_MIN
            ]
            if asked.sensitivities
            else None,
            juice=[TradeGiven.of(one) for one in trades(case)] if asked.juice else None,
        )


def _allow(certainty: float, forecast: RoastForecast, ready_by: datetime | None) -> AllowGiven:
    minutes = forecast.ready_quantile_min(certainty) + forecast.case.rest_min
    latest = None if ready_by is None else ready_by - timedelta(minutes=round(minutes))
    return AllowGiven(certainty=certainty, allow_min=round(minutes, 1), latest_in=latest)


def _sought(
    seek: Callable[[RoastCase, float, float], float],
    case: RoastCase,
    within_min: float | None,
    certainty: float,
    digits: int,
) -> SoughtGiven | None:
    if within_min is None:
        return None
    return SoughtGiven.of(lambda: seek(case, within_min, certainty), digits)
