"""From what the cook said to what the plan computes with: every gap filled, and every filling said."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from math import ceil

from turnspit.brine import SoldAs
from turnspit.errors import Impossible, OutOfRange
from turnspit.heat import OvenStep, RoastCase, RoastRow, State
from turnspit.heat import roast as roast_row
from turnspit.message import Message
from turnspit.planning.dinner import Dinner
from turnspit.recipes import SizeCase, Sizing, size_roast

LONGEST_AHEAD_DAYS = 60
TEMPER_LIMIT_MIN = 60.0
BASTES_MIN = (60.0, 105.0, 150.0)
SMALL_PIECE_KG = 2.5
LONGEST_CARVING_MIN = 35.0
MOST_PIECES = 40
SEVERAL = 3
"""So many pieces are taken for covers that one could never serve; a bird a little small stays one."""
ROUNDED_OFF = 0.15
MOST_OVENS = 20


@dataclass(frozen=True, slots=True)
class Settled:
    """A dinner without gaps. `stricter` is True where no kitchen was named, so that the stricter rules hold."""

    dinner: Dinner
    row: RoastRow
    mass_kg: float
    count: int
    state: State
    stuffed: bool
    sold_as: SoldAs
    target_c: float
    oven_c: float
    convection: bool
    ovens: int
    brined: bool
    licensed: bool
    stricter: bool
    assumptions: tuple[Message, ...]

    @property
    def per_oven(self) -> int:
        """Pieces that share one oven."""
        return -(-self.count // self.ovens)

    @property
    def whole_bird(self) -> bool:
        """Whether it has legs to tie and a neck for the stock: a breast, legs alone or a boned bird have not."""
        return self.row.poultry and len(self.row.stations) > 1 and self.dinner.roast.bone_in is not False

    @property
    def salted(self) -> bool:
        """Whether it comes to the oven salted: by this plan's brine, an earlier one, or as it was sold."""
        return self.brined or self.dinner.brine.done or self.sold_as != "plain"

    @property
    def large(self) -> bool:
        """A roast that wants the long rest (common practice, no source: a whole bird from 12 lb)."""
        return self.mass_kg >= 5.4

    @property
    def hot_hold_c(self) -> float:
        """Hot holding in C: 57 (135 F) in a licensed kitchen, 60 (140 F) at home and where no kitchen was named."""
        return 57.3 if self.licensed else 60.0

    @property
    def bastings_min(self) -> tuple[float, ...]:
        """Minutes after which a bird is basted, none from frozen (common practice, no source)."""
        return BASTES_MIN if self.row.poultry and self.state != "frozen" else ()

    @property
    def holds_hot(self) -> bool:
        """Whether it can wait hot: a roast served pink in the middle cannot without cooking on."""
        return self.target_c >= self.hot_hold_c

    @property
    def rest_min(self) -> float:
        """The rest the plan gives it, in minutes."""
        return 30.0 if self.large else max(15.0, min(self.row.rest_min_range[1], 20.0))

    @property
    def carve_alone_min(self) -> float:
        """Minutes one pair of hands takes for all pieces: the first with its board, the others after each other, a
        small bird in quarters (common practice, no source)."""
        each_min = 10.0 if self.large else 6.0 if self.mass_kg >= SMALL_PIECE_KG else 3.0
        return (20.0 if self.large else 15.0) + each_min * (self.count - 1)

    @property
    def carving_hands(self) -> int:
        """Pairs of hands that carve, so that none is at it for much longer than half an hour."""
        return ceil(self.carve_alone_min / LONGEST_CARVING_MIN)

    @property
    def carve_min(self) -> float:
        """Minutes until all pieces are carved by so many hands."""
        return max(20.0 if self.large else 15.0, 5.0 * ceil(self.carve_alone_min / self.carving_hands / 5.0))

    def case(self) -> RoastCase:
        """What the heat room is asked; the pull is left to it."""
        return RoastCase(
            kind=self.row.kind,
            mass_kg=self.mass_kg,
            count=self.per_oven,
            state=self.state,
            stuffed=self.stuffed,
            bone_in=self.dinner.roast.bone_in,
            oven=(OvenStep(0.0, self.oven_c, self.convection),),
            target_c=self.target_c,
            rest_min=self.rest_min,
            rest_place="foil",
            bastings_min=self.bastings_min,
            altitude_m=self.dinner.altitude_m,
            seed=self.dinner.seed,
        )


def settle(dinner: Dinner, now: datetime) -> Settled:
    """Fill what was not said and list it. Raises Impossible or OutOfRange for what cannot be planned."""
    _check_times(dinner, now)
    wish, oven = dinner.roast, dinner.oven
    row = roast_row(wish.kind or "turkey")
    count = _pieces("count", wish.count, MOST_PIECES)
    told: list[Message] = []
    if wish.mass_kg is None:
        count, mass_kg = _size_for(dinner, row, count, told.append)
    else:
        count, mass_kg = _count_for(dinner, row, count, wish.mass_kg, told.append), wish.mass_kg
    settled = Settled(
        dinner,
        row,
        mass_kg,
        count,
        state=wish.state or "thawed",
        stuffed=bool(wish.stuffed),
        sold_as=wish.sold_as or "plain",
        target_c=row.default_target_c if wish.target_c is None else wish.target_c,
        oven_c=row.usual_oven_c if oven.temperature_c is None else oven.temperature_c,
        convection=bool(oven.convection),
        ovens=_pieces("oven.count", oven.count, MOST_OVENS),
        brined=bool(dinner.brine.wanted) and not dinner.brine.done and (wish.sold_as or "plain") == "plain",
        licensed=dinner.kitchen == "licensed",
        stricter=dinner.kitchen is None,
        assumptions=(),
    )
    return replace(settled, assumptions=tuple(_assumed(settled, told)))


def _assumed(settled: Settled, size: list[Message]) -> Iterator[Message]:
    """Everything that was filled in, in the order a cook would ask."""
    wish, oven = settled.dinner.roast, settled.dinner.oven
    if wish.kind is None:
        yield Message("planning-assume-kind", roast=Message("roast-turkey"))
    yield from size
    if wish.state is None:
        yield Message("planning-assume-thawed")
    if wish.stuffed is None and settled.row.poultry:
        yield Message("planning-assume-unstuffed")
    if oven.temperature_c is None or oven.convection is None:
        fan = "yes" if settled.convection else "no"
        yield Message("planning-assume-oven", oven_c=settled.oven_c, fan=fan)
    if settled.brined and wish.sold_as is None:
        yield Message("planning-assume-plain")
    if settled.stricter:
        yield Message("planning-assume-stricter")


def _pieces(name: str, said: int | None, most: int) -> int:
    """How many: one where it was not said."""
    count = 1 if said is None else said
    OutOfRange.check(name, count, 1, most, "plan a larger dinner in parts")
    return count


def _check_times(dinner: Dinner, now: datetime) -> None:
    if dinner.serve_at is None and dinner.start_at is None:
        raise Impossible("serve_at", "unsaid", "is needed", "say when dinner is, or when the roast goes in")
    last = now + timedelta(days=LONGEST_AHEAD_DAYS)
    for name, at in (("serve_at", dinner.serve_at), ("start_at", dinner.start_at)):
        if at is not None and at.tzinfo is None:
            raise Impossible(name, at.isoformat(), "has no offset", "give it as ISO 8601 with its offset from UTC")
        if at is not None and at > last:
            raise OutOfRange(name, at.isoformat(), f"is over {LONGEST_AHEAD_DAYS} days ahead", "ask again nearer")
    if dinner.serve_at is not None and dinner.serve_at <= now:
        raise Impossible(
            "serve_at", dinner.serve_at.isoformat(), f"is not after {now.isoformat()}", "say a later time"
        )
    if dinner.start_at is not None and dinner.start_at < now - timedelta(hours=24):
        raise Impossible("start_at", dinner.start_at.isoformat(), "is over a day ago", "say when the roast went in")
    if dinner.work_from >= dinner.work_until:
        raise Impossible("work_from", dinner.work_from, f"is not before {dinner.work_until}", "swap the two")
    if not 0 <= dinner.temper_min <= TEMPER_LIMIT_MIN:
        raise OutOfRange("temper_min", dinner.temper_min, "is not between 0 and 60", "roast it from the refrigerator")


def _count_for(dinner: Dinner, row: RoastRow, count: int, mass_kg: float, assumed: Callable[[Message], None]) -> int:
    """How many of that mass: as said, one where it goes round, else as many as the covers want."""
    if dinner.covers is None or dinner.roast.count is not None or mass_kg <= 0:
        return count
    needed = ceil(_sizing(dinner, dinner.covers, row).needed_kg / mass_kg - ROUNDED_OFF)
    if not SEVERAL <= needed <= MOST_PIECES:
        return count
    assumed(Message("planning-assume-mass-covers", mass_kg=mass_kg, count=needed, covers=dinner.covers))
    return needed


def _sizing(dinner: Dinner, covers: int, row: RoastRow) -> Sizing:
    return size_roast(
        SizeCase(
            covers=covers,
            children=dinner.children,
            non_eaters=dinner.non_eaters,
            leftovers=bool(dinner.leftovers_wanted),
            kind=row.bought_as,
        )
    )


def _size_for(dinner: Dinner, row: RoastRow, count: int, assumed: Callable[[Message], None]) -> tuple[int, float]:
    """How many pieces of which mass: from the covers where they were said, else one of the usual size."""
    if dinner.covers is None:
        assumed(Message("planning-assume-mass", mass_kg=row.usual_mass_kg))
        return count, row.usual_mass_kg
    sizing = _sizing(dinner, dinner.covers, row)
    if dinner.roast.count is None:
        count, mass_kg = sizing.flock.count, sizing.flock.each_kg
    else:
        mass_kg = min(max(sizing.needed_kg / count, row.mass_kg_range[0]), row.mass_kg_range[1])
    assumed(Message("planning-assume-mass-covers", mass_kg=mass_kg, count=count, covers=dinner.covers))
    return count, mass_kg
