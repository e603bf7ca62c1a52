"""`POST /v1/chills`: how long something hot takes to be cold."""

from __future__ import annotations

from typing import Any, Self

from pydantic import ConfigDict, Field

from turnspit.api.schemas.common import Body, CautionGiven, Given, Number, Q, ReaderFields, Yes
from turnspit.api.schemas.roasts import Members, Seed, curve
from turnspit.heat import SEED, ChillCase, ChillForecast
from turnspit.heat.cases import Medium, Packaging, Shape
from turnspit.reference import rule
from turnspit.words import Reader, say

CHILL_EXAMPLE: dict[str, Any] = {
    "food": "cooked beef",
    "shape": "slab",
    "dims_mm": [50],
    "mass_kg": 0.94,
    "medium": "air",
    "medium_c": 0,
    "air_m_s": 1.2,
    "packaging": None,
    "from_c": 70,
    "to_c": 10,
}


class ChillPart(Body):
    """What cools, in what.

    `dims_mm`: slab its depth; cylinder and pot diameter and height, a rectangular pan its three edges; brick three
    edges, of which one or two may follow from `mass_kg`; a bird goes by its mass.
    """

    food: str = Field(max_length=60)
    shape: Shape
    dims_mm: list[Number] = Field(default_factory=list, max_length=3)
    mass_kg: Number | None = None
    medium: Medium = "air"
    medium_c: Number = 3
    air_m_s: Number = 0
    packaging: Packaging | None = None
    stirred: Yes = False
    from_c: Number = 57
    to_c: Number = 5
    members: Members = 64
    seed: Seed = SEED

    def case(self) -> ChillCase:
        """As the heat room takes it."""
        given = {name: getattr(self, name) for name in ChillPart.model_fields}
        return ChillCase(**{**given, "dims_mm": tuple(self.dims_mm)})


class ChillBody(ChillPart, ReaderFields):
    """The same, with for whom the texts are written."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [CHILL_EXAMPLE]})


class StagesGiven(Given):
    """The two stages of the food code at the slowest point; null where the curve does not go so far."""

    first_h: Q | None = Field(description="From 57 C, or from where it starts if cooler, to 21 C; within 2 h.")
    total_h: Q | None = Field(description="And on to 5 C; within 6 h in all.")

    @classmethod
    def of(cls, forecast: ChillForecast) -> Self:
        """Read off the curve."""
        limits = rule("cooling-two-stage").limits
        start_c = min(limits["from_c"], forecast.case.from_c)
        first_h, total_h = (forecast.hours_between(start_c, limits[name]) for name in ("middle_c", "cold_c"))
        return cls(first_h=Q.finite(first_h), total_h=Q.finite(total_h))


class ChillGiven(Given):
    """Hours until the slowest point is cold."""

    hours: Q
    stages: StagesGiven
    curve: list[dict[str, Any]] = Field(description="`hour`, and `slowest_c` at the slowest point.")
    assumptions: list[str]
    cautions: list[CautionGiven]

    @classmethod
    def of(cls, forecast: ChillForecast, reader: Reader) -> Self:
        """From the heat room's answer, in the reader's words."""
        return cls(
            hours=Q.of(forecast.hours),
            stages=StagesGiven.of(forecast),
            curve=curve("hour", forecast.curve_h, {"slowest_c": forecast.slowest_c}),
            assumptions=[say(message, reader) for message in forecast.assumptions],
            cautions=[CautionGiven.of(caution, reader) for caution in forecast.cautions],
        )
