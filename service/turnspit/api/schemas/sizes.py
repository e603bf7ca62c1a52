"""`POST /v1/sizes`: how big a roast, or how many, for the diners."""

from __future__ import annotations

from typing import Annotated, Any, Self

from pydantic import ConfigDict, Field

from turnspit.api.schemas.common import Body, CautionGiven, Given, Number, Q, ReaderFields, Whole, Yes
from turnspit.recipes import Carved, FlockCooking, Side, SizeCase, Sizing, compare_flocks, size_roast
from turnspit.recipes.portions import Appetite
from turnspit.words import Reader, say

SIZE_EXAMPLE: dict[str, Any] = {"covers": 14, "children": 4, "leftovers": True}
Kind = Annotated[str, Field(max_length=40)]


class SizePart(Body):
    """Who eats. Children and those who do not eat the roast are counted among the covers."""

    covers: Whole
    children: Whole = 0
    non_eaters: Whole = 0
    appetite: Appetite = "plain"
    leftovers: Yes = False
    kind: Kind = "turkey"
    bone_in: Yes | None = None
    largest_piece_kg: Number | None = Field(
        default=None, description="The most one piece may weigh, by oven or shop."
    )

    def case(self) -> SizeCase:
        """As the recipes room takes it."""
        return SizeCase(**{name: getattr(self, name) for name in SizePart.model_fields})


class SizeBody(SizePart, ReaderFields):
    """The diners, and for whom the texts are written."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [SIZE_EXAMPLE]})


class CarvedGiven(Given):
    """What comes of the raw weight."""

    cooked_kg: Q
    meat_kg: float
    bones_kg: float
    white_kg: float | None
    dark_kg: float | None
    servings: int
    serving_kg: float
    source: str

    @classmethod
    def of(cls, carved: Carved) -> Self:
        """Rounded to ten grams."""
        white_kg, dark_kg = (None if kg is None else round(kg, 2) for kg in (carved.white_kg, carved.dark_kg))
        return cls(
            cooked_kg=Q.of(carved.cooked_kg),
            meat_kg=round(carved.meat_kg, 2),
            bones_kg=round(carved.bones_kg, 2),
            white_kg=white_kg,
            dark_kg=dark_kg,
            servings=carved.servings,
            serving_kg=carved.serving_kg,
            source=carved.source,
        )


class WayGiven(Given):
    """One way to make up the weight; the first of them is the advised one."""

    count: int
    each_kg: float
    total_kg: float
    thaw_days: tuple[int, int]
    ready_min: Q | None = Field(description="In the oven, by the heat model; absent outside its range.")
    ovens: int = Field(description="Household ovens that roast them at once.")
    legs: int
    carved: CarvedGiven

    @classmethod
    def of(cls, way: FlockCooking) -> Self:
        """From the recipes room's comparison."""
        return cls(
            count=way.flock.count,
            each_kg=round(way.flock.each_kg, 2),
            total_kg=round(way.flock.total_kg, 2),
            thaw_days=way.flock.thaw_days,
            ready_min=None if way.ready_min is None else Q.of(way.ready_min, 0),
            ovens=way.ovens,
            legs=way.legs,
            carved=CarvedGiven.of(way.flock.carved),
        )


class SideGiven(Given):
    """A side dish for all: litres, kilograms of raw food, or pieces."""

    item: str
    measure: str
    low: float
    high: float
    source: str

    @classmethod
    def of(cls, side: Side) -> Self:
        """With its unit named."""
        measure = {"us_cups": "l", "lb": "kg", "count": "piece"}[side.basis]
        low, high = round(side.low, 2), round(side.high, 2)
        return cls(item=side.item, measure=measure, low=low, high=high, source=side.source)


class SizeGiven(Given):
    """How much to buy, in what pieces, when, and what goes with it."""

    headline: str
    count: int
    each_kg: float
    total_kg: float
    needed_kg: float
    per_cover_kg: float
    eaters: float
    ways: list[WayGiven]
    sides: list[SideGiven]
    buy_frozen_days: int = Field(description="Days before the roast that a frozen one must be in the refrigerator.")
    buy_fresh_days: tuple[int, int]
    notes: list[str]
    assumptions: list[str]
    cautions: list[CautionGiven]
    sources: list[str]

    @classmethod
    def of(cls, sizing: Sizing, reader: Reader) -> Self:
        """From the recipes room's answer, in the reader's words; hours of each way by the heat model."""
        return cls(
            headline=say(sizing.headline, reader),
            count=sizing.count,
            each_kg=round(sizing.each_kg, 2),
            total_kg=round(sizing.total_kg, 2),
            needed_kg=round(sizing.needed_kg, 2),
            per_cover_kg=round(sizing.per_cover_kg, 3),
            eaters=sizing.eaters,
            ways=[WayGiven.of(way) for way in compare_flocks(sizing)],
            sides=[SideGiven.of(side) for side in sizing.sides],
            buy_frozen_days=sizing.buy_frozen_days,
            buy_fresh_days=sizing.buy_fresh_days,
            notes=[say(note, reader) for note in sizing.notes],
            assumptions=[say(note, reader) for note in sizing.assumptions],
            cautions=[CautionGiven.of(caution, reader) for caution in sizing.cautions],
            sources=list(sizing.sources),
        )


def sized(body: SizePart, reader: Reader) -> SizeGiven:
    """The answer to a size request."""
    return SizeGiven.of(size_roast(body.case()), reader)
