"""`POST /v1/brines`: a brine that can be made."""

from __future__ import annotations

from typing import Any, Self

from pydantic import ConfigDict, Field

from turnspit.api.schemas.common import CautionGiven, Given, Number, Q, ReaderFields, Whole
from turnspit.brine import (
    BrineCase,
    BrinePlan,
    CommonVessel,
    common_vessels,
    cooling_without_ice,
    hours_to_salt,
)
from turnspit.brine.cases import Method, SaltKind, SaltProfile, SoldAs
from turnspit.errors import OutOfRange
from turnspit.message import Message
from turnspit.spread import Spread
from turnspit.words import Reader, say

BRINE_EXAMPLE: dict[str, Any] = {"kind": "turkey", "mass_kg": 8.165, "vessel_l": 18.93, "salt_kind": "table"}


class BrineBody(ReaderFields):
    """A bird or joint, a vessel, a wish. What is left out is worked out, or assumed and said."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [BRINE_EXAMPLE]})

    kind: str = Field(default="turkey", max_length=40)
    mass_kg: Number
    count: Whole = 1
    sold_as: SoldAs | None = None
    vessel_l: Number | None = None
    water_l: Number | None = None
    strength_percent: Number | None = Field(default=None, description="Salt in 100 g of brine.")
    hours: Number | None = None
    salt_kind: SaltKind = "table"
    sugar_percent: Number = 0
    method: Method = Field(default="wet", description="equilibrium: only the salt that is wanted; dry: no water.")
    target_percent: Number | None = Field(
        default=None, description="Salt wanted of meat and water together, or of the raw weight when dry."
    )
    brine_c: Number = Field(default=3, description="How cold the brine is kept.")
    tap_c: Number = Field(default=15, description="The cold tap.")
    serving_g: Number = 85
    finished_percent: Number | None = Field(
        default=None,
        description="A salt wished for in the carved meat, of which `hours_to_finished` tells the hours.",
    )

    def case(self) -> BrineCase:
        """As the brine room takes it."""
        return BrineCase(**self.model_dump(exclude={"language", "units", "clock", "finished_percent"}))


class ProfileGiven(Given):
    """Salt in the raw meat of one part after so many hours, by depth below the surface."""

    part: str
    hours: float
    depth_mm: list[float]
    salt_percent: list[float]

    @classmethod
    def of(cls, profile: SaltProfile) -> Self:
        """Rounded to a tenth of a millimetre and a hundredth of a percent."""
        return cls(
            part=profile.part,
            hours=profile.hours,
            depth_mm=[round(float(mm), 1) for mm in profile.depth_mm],
            salt_percent=[round(float(percent), 2) for percent in profile.salt_percent],
        )


class VesselGiven(Given):
    """A vessel of a common size that takes the meat covered."""

    key: str
    litres: float
    height_mm: float
    covers_l: float = Field(description="The brine it then wants: the smaller the vessel, the less.")
    contents_kg: float
    text: str

    @classmethod
    def of(cls, vessel: CommonVessel, reader: Reader) -> Self:
        """In the reader's words."""
        values: dict[str, float] = {
            "height_mm": vessel.height_mm,
            "covers_l": round(vessel.covers_l, 2),
            "contents_kg": round(vessel.contents_kg, 2),
        }
        line = Message("brine-vessel-line", vessel=Message(f"brine-vessel-{vessel.key}"), **values)
        return cls(key=vessel.key, litres=vessel.litres, text=say(line, reader), **values)


class WithoutIceGiven(Given):
    """The brine where there is no ice: how warm it is when mixed, and the hours until it is cold enough."""

    from_c: float
    hours: Q
    text: str

    @classmethod
    def of(cls, plan: BrinePlan, reader: Reader) -> Self | None:
        """None for dry salting, and for a pot that is too large to be worked out."""
        try:
            found = cooling_without_ice(plan)
        except OutOfRange:
            return None
        if found is None:
            return None
        hours = Message("brine-hours", low=round(found.hours.p10), high=round(found.hours.p90))
        text = say(Message("brine-note-without-ice", from_c=found.from_c, hours=hours), reader)
        return cls(from_c=round(found.from_c, 1), hours=Q.of(found.hours, 1), text=text)


class BrineGiven(Given):
    """Amounts, fit, cold, hours, and what the meat takes up."""

    allowed: bool = Field(
        description="False for a bird sold injected or kosher, and for longer than raw meat keeps: then the amounts "
        "are those of the longest time that is."
    )
    strength_percent: float
    hours_low: float
    hours_high: float
    water_l: float
    salt_g: float
    sugar_g: float
    salt_cups: tuple[float, float] = Field(description="What that salt may measure; weighing is exact.")
    salometer_deg: float
    freezing_c: float
    density_kg_l: float
    cover_l: float
    displaced_l: float
    vessel_needed_l: float
    fits: bool | None
    concentrate_water_l: float
    ice_kg: float
    full_weight_kg: float
    finished_salt_percent: Q
    sodium_mg_per_serving: Q
    steps: list[str]
    assumptions: list[str]
    cautions: list[CautionGiven]
    sources: list[str]
    headline: str
    notes: list[str]
    hours: float = Field(description="Those asked for, or taken between hours_low and hours_high.")
    of_water_percent: float = Field(description="Salt in percent of the water alone.")
    sugar_cups: float
    salt_g_range: tuple[float, float] = Field(description="What the usual number of cups may really weigh.")
    concentrate_c: float
    cold_water_l: float
    short_l: float = Field(description="What the vessel lacks.")
    would_fit: str | None = Field(description="A vessel that would, by its key in the table brine_vessels.")
    vessels: int
    shelf_height_mm: float
    largest_kg: float | None = Field(description="The largest bird that the vessel takes.")
    salt_by_part: dict[str, Q]
    uptake_g: Q | None
    hours_to_seasoned: Q | None = Field(description="Absent where never.")
    hours_to_too_salty: Q | None = Field(description="Absent where never.")
    profiles: list[ProfileGiven]
    hours_to_finished: Q | None = Field(description="To `finished_percent`; absent where never, or not asked.")
    vessels_that_fit: list[VesselGiven]
    without_ice: WithoutIceGiven | None

    @classmethod
    def of(cls, plan: BrinePlan, reader: Reader, finished_percent: float | None = None) -> Self:
        """From the brine room's answer, in the reader's words."""
        case = plan.case
        wet = case.method != "dry" and case.brinable
        wished = None if finished_percent is None or not wet else hours_to_salt(case, finished_percent)
        vessels = common_vessels(case.kind, case.mass_kg, case.count) if wet else ()
        said: dict[str, Any] = {
            "finished_salt_percent": Q.of(plan.finished_salt_percent),
            "sodium_mg_per_serving": Q.of(plan.sodium_mg_per_serving, 0),
            "steps": [say(message, reader) for message in plan.steps],
            "assumptions": [say(message, reader) for message in plan.assumptions],
            "cautions": [CautionGiven.of(caution, reader) for caution in plan.cautions],
            "sources": list(plan.sources),
            "headline": say(plan.headline, reader),
            "notes": [say(message, reader) for message in plan.notes],
            "salt_by_part": {part: Q.of(salt) for part, salt in plan.salt_by_part.items()},
            "uptake_g": _spread(plan.uptake_g, 0),
            "hours_to_seasoned": _spread(plan.hours_to_seasoned),
            "hours_to_too_salty": _spread(plan.hours_to_too_salty),
            "profiles": [ProfileGiven.of(profile) for profile in plan.profiles],
            "hours_to_finished": _spread(wished),
            "vessels_that_fit": [VesselGiven.of(vessel, reader) for vessel in vessels],
            "without_ice": WithoutIceGiven.of(plan, reader) if wet else None,
        }
        plain: dict[str, Any] = {name: _rounded(getattr(plan, name)) for name in cls.model_fields if name not in said}
        return cls(**plain, **said)


def _spread(spread: Spread | None, digits: int = 1) -> Q | None:
    return None if spread is None else Q.finite(spread, digits)


def _rounded(value: object) -> Any:
    if isinstance(value, tuple):
        return tuple(_rounded(part) for part in value)
    return round(value, 3) if isinstance(value, float) else value
