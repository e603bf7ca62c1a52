"""`POST /v1/plans` and what a plan is when it is given out."""

from __future__ import annotations

from datetime import datetime, time
from typing import Annotated, Any, Literal

from pydantic import AwareDatetime, ConfigDict, Field

from turnspit.api.schemas.common import Body, CautionGiven, Given, Number, TimedFields, Whole, Yes
from turnspit.api.schemas.roasts import Seed
from turnspit.brine.cases import SaltKind, SoldAs
from turnspit.heat import SEED
from turnspit.heat.cases import State
from turnspit.planning import BrineWish, Dinner, OvenWish, RoastWish

PLAN_EXAMPLE: dict[str, Any] = {
    "roast": {"kind": "turkey", "mass_kg": 7.257, "state": "thawed"},
    "serve_at": "2026-11-26T18:00:00-05:00",
    "now": "2026-11-25T09:00:00-05:00",
    "timezone": "America/New_York",
    "units": "us",
}


class RoastWishBody(Body):
    """The roast; what is left out is assumed and said. `mass_kg` is one piece."""

    kind: Annotated[str, Field(max_length=40)] | None = None
    mass_kg: Number | None = None
    count: Whole | None = None
    state: State | None = None
    stuffed: Yes | None = None
    bone_in: Yes | None = None
    sold_as: SoldAs | None = None
    target_c: Number | None = None


class OvenWishBody(Body):
    """The oven or ovens; all are alike."""

    temperature_c: Number | None = None
    convection: Yes | None = None
    count: Whole | None = None


class BrineWishBody(Body):
    """Whether to brine, and with what."""

    wanted: Yes | None = None
    hours: Number | None = None
    water_l: Number | None = None
    vessel_l: Number | None = None
    salt_kind: SaltKind | None = None
    strength_percent: Number | None = None


class PlanBody(TimedFields):
    """A dinner as it is wanted; `serve_at` leads, or `start_at` (when the roast goes in)."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [PLAN_EXAMPLE]})

    roast: RoastWishBody = Field(default_factory=RoastWishBody)
    serve_at: AwareDatetime | None = None
    start_at: AwareDatetime | None = None
    covers: Whole | None = None
    children: Whole = 0
    non_eaters: Whole = 0
    leftovers_wanted: Yes | None = None
    oven: OvenWishBody = Field(default_factory=OvenWishBody)
    brine: BrineWishBody = Field(default_factory=BrineWishBody)
    kitchen: Literal["home", "licensed"] | None = None
    at_risk: Yes = Field(default=False, description="Someone at the table is old, ill, pregnant or very young.")
    altitude_m: Number = 0
    work_from: time = Field(default=time(6), description="Nobody is asked to work before this hour.")
    work_until: time = time(23)
    seed: Seed = SEED

    def dinner(self, now: datetime, kitchen: Literal["home", "licensed"] | None) -> Dinner:
        """As planning takes it, told in the zone of `now`; `kitchen` is the service's own where none is said."""
        return Dinner(
            roast=RoastWish(**self.roast.model_dump()),
            serve_at=self.serve_at.astimezone(now.tzinfo) if self.serve_at else None,
            start_at=self.start_at.astimezone(now.tzinfo) if self.start_at else None,
            covers=self.covers,
            children=self.children,
            non_eaters=self.non_eaters,
            leftovers_wanted=self.leftovers_wanted,
            oven=OvenWish(**self.oven.model_dump()),
            brine=BrineWish(**self.brine.model_dump()),
            kitchen=self.kitchen or kitchen,
            at_risk=self.at_risk,
            altitude_m=self.altitude_m,
            work_from=self.work_from,
            work_until=self.work_until,
            seed=self.seed,
        )


class WindowGiven(Given):
    """When something uncertain is expected."""

    p10: str
    p50: str
    p90: str


class TaskGiven(Given):
    """One thing to do; `hands` is false where it is only waiting."""

    model_config = ConfigDict(frozen=True, extra="allow")

    id: str
    title: str
    why: str
    start: str
    end: str
    place: str
    hands: bool
    slack_min: float
    details: list[str]
    cautions: list[CautionGiven]
    window: WindowGiven | None


class WayGiven(Given):
    """One way to the table that was weighed."""

    model_config = ConfigDict(frozen=True, extra="allow")

    id: str
    title: str
    why: str
    possible: bool
    serve_at: str
    first_at: str
    oven_in_at: str
    chosen: bool


class PlanGiven(Given):
    """A timetable. Where nothing is possible `tasks` is empty and `ways` tells what would be."""

    model_config = ConfigDict(frozen=True, extra="allow")

    id: str
    serve_at: str
    as_wished: bool
    headline: str
    oven_in_at: str | None
    check_from: str | None
    ready: WindowGiven | None
    pull_c: float | None
    tasks: list[TaskGiven]
    ways: list[WayGiven]
    curve: list[dict[str, Any]] = Field(description="`at`, `minute`, and per station `<station>_c`.")
    assumptions: list[str]
    cautions: list[CautionGiven]
    sources: list[str]
    brine: dict[str, Any] | None
    thaw: dict[str, Any] | None
    reader: dict[str, str] = Field(description="The language, units and clock that the texts are worded for.")
