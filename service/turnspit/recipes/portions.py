"""How big: from the diners to the weight to buy, the birds that make it up, the days they need and the sides."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import Literal

from turnspit.errors import Impossible, OutOfRange
from turnspit.message import Caution, Message
from turnspit.recipes.carving import SERVING_KG, Carved, carved, row_for
from turnspit.reference import Row, caution, table

Appetite = Literal["plain", "hungry"]

POUND_KG = 0.45359237
US_CUP_L = 0.2365882365
CHILD_EATS = 0.5
"""Of an adult's portion, under about twelve (common practice, no source)."""
MOST_COVERS = 5000
THAW_LB_A_DAY = (5.0, 4.0)
"""USDA FSIS, Let's Talk Turkey: 24 hours for every 4 to 5 pounds in the refrigerator."""
FLOCK_PIECE = 16 / 24
"""Where one piece is not enough, pieces of at most this share of the largest: they cook evenly (common practice)."""


@dataclass(frozen=True, slots=True)
class SizeCase:
    """Who eats. `children` and `non_eaters` (of the roast) are counted among `covers`.

    `largest_piece_kg` bounds one piece where the oven or the shop does.
    """

    covers: int
    children: int = 0
    non_eaters: int = 0
    appetite: Appetite = "plain"
    leftovers: bool = False
    kind: str = "turkey"
    bone_in: bool | None = None
    largest_piece_kg: float | None = None


@dataclass(frozen=True, slots=True)
class Flock:
    """One way to make up the weight: `count` pieces of `each_kg`. Days to thaw in the refrigerator if frozen."""

    count: int
    each_kg: float
    thaw_days: tuple[int, int]
    carved: Carved

    @property
    def total_kg(self) -> float:
        """All of them together."""
        return self.count * self.each_kg


@dataclass(frozen=True, slots=True)
class Side:
    """A side dish for all: litres (`basis` "us_cups"), kilograms ("lb", raw) or pieces ("count")."""

    item: str
    basis: str
    low: float
    high: float
    source: str


@dataclass(frozen=True, slots=True)
class Sizing:
    """How much to buy. `flock` is the advised way, `others` the ways weighed beside it.

    `total_kg` is `count` pieces of `each_kg`, never less than the diners need; `needed_kg` is what they need.
    `buy_frozen_days` is how many days before the roast a frozen one must be in the refrigerator.
    """

    case: SizeCase
    eaters: float
    per_cover_kg: float
    needed_kg: float
    flock: Flock
    others: tuple[Flock, ...]
    sides: tuple[Side, ...]
    buy_frozen_days: int
    buy_fresh_days: tuple[int, int]
    headline: Message
    notes: tuple[Message, ...] = ()
    assumptions: tuple[Message, ...] = ()
    cautions: tuple[Caution, ...] = ()
    sources: tuple[str, ...] = ()

    @property
    def count(self) -> int:
        """Pieces to buy."""
        return self.flock.count

    @property
    def each_kg(self) -> float:
        """The weight of one piece."""
        return self.flock.each_kg

    @property
    def total_kg(self) -> float:
        """The weight of all pieces."""
        return self.flock.total_kg

    @property
    def carved(self) -> Carved:
        """What they give."""
        return self.flock.carved

    def buy_by(self, roast_on: date, *, frozen: bool) -> date:
        """The last day to have it at home: frozen with its days to thaw, fresh a day or two ahead."""
        return roast_on - timedelta(days=self.buy_frozen_days if frozen else self.buy_fresh_days[1])


def size_roast(case: SizeCase) -> Sizing:
    """How big a roast, or how many, for the diners of `case`.

    A whole turkey is a pound a person (USDA), a pound and a half with leftovers. Raises Impossible where nobody eats,
    OutOfRange above 5000 covers, Unknown for a kind without a portion.
    """
    _check(case)
    row = row_for("portions_roast", case.kind, case.bone_in)
    eaters = case.covers - case.non_eaters - case.children * (1.0 - CHILD_EATS)
    per_cover_kg = _per_cover_lb(row, case) * POUND_KG
    needed_kg = eaters * per_cover_kg
    flocks = _flocks(case, row, needed_kg)
    sizing = Sizing(
        case=case,
        eaters=eaters,
        per_cover_kg=per_cover_kg,
        needed_kg=needed_kg,
        flock=flocks[0],
        others=flocks[1:],
        sides=sides(case.covers - case.children * (1.0 - CHILD_EATS)),
        buy_frozen_days=flocks[0].thaw_days[1],
        buy_fresh_days=(row["fresh_days"][0], row["fresh_days"][1]),
        headline=_headline(case, flocks[0]),
        sources=(str(row["source"]), flocks[0].carved.source),
    )
    return replace(sizing, notes=_notes(sizing), assumptions=_assumptions(sizing), cautions=_cautions())


def sides(eaters: float) -> tuple[Side, ...]:
    """What each side takes for that many diners: litres, kilograms of raw food, or pieces."""
    to_si = {"us_cups": US_CUP_L, "lb": POUND_KG, "count": 1.0}
    return tuple(
        Side(
            str(row["item"]),
            str(row["basis"]),
            eaters * row["low"] * to_si[row["basis"]],
            eaters * row["high"] * to_si[row["basis"]],
            str(row["source"]),
        )
        for row in table("portions_sides")
    )


def thaw_days(mass_kg: float) -> tuple[int, int]:
    """Days in the refrigerator, 24 h for every 4 to 5 lb (USDA), counted up to whole days."""
    pounds = mass_kg / POUND_KG
    low, high = (max(1, math.ceil(round(pounds / rate, 6))) for rate in THAW_LB_A_DAY)
    return low, high


def _check(case: SizeCase) -> None:
    if case.covers < 1:
        raise Impossible("covers", case.covers, "is below 1", "say how many eat")
    OutOfRange.check("covers", case.covers, 1, MOST_COVERS, "plan more than 5000 covers in parts")
    for name in ("children", "non_eaters"):
        if getattr(case, name) < 0:
            raise Impossible(name, getattr(case, name), "is below 0", "leave it out where there are none")
    if case.children + case.non_eaters > case.covers:
        raise Impossible(
            "children",
            case.children,
            f"and {case.non_eaters} who do not eat it are more than {case.covers} covers",
            "count both among the covers",
        )
    if case.non_eaters == case.covers:
        raise Impossible("non_eaters", case.non_eaters, "is everyone", "then no roast is needed")
    if case.largest_piece_kg is not None and not case.largest_piece_kg > 0:
        raise Impossible("largest_piece_kg", case.largest_piece_kg, "is not above 0", "give the largest that fits")


def _per_cover_lb(row: Row, case: SizeCase) -> float:
    extra = row["hungry_lb"] - row["plain_lb"] if case.appetite == "hungry" else 0.0
    return float((row["leftovers_lb"] if case.leftovers else row["plain_lb"]) + extra)


def _flocks(case: SizeCase, row: Row, needed_kg: float) -> tuple[Flock, ...]:
    """The advised way first, then the neighbours: fewer larger pieces, more smaller ones."""
    largest = row["largest_piece_lb"] * POUND_KG
    if case.largest_piece_kg is not None:
        largest = min(largest, case.largest_piece_kg)
    least = min(row["least_piece_lb"] * POUND_KG, largest)
    fewest = math.ceil(needed_kg / largest - 1e-9)
    if row["kind"] == "game_hen":  # one each: nothing to weigh
        usual_kg = row["usual_piece_lb"] * POUND_KG
        return (_flock(case, math.ceil(needed_kg / usual_kg - 1e-9), usual_kg),)
    advised = fewest if fewest == 1 else max(fewest, math.ceil(needed_kg / (largest * FLOCK_PIECE) - 1e-9))
    counts = [advised, *(count for count in (fewest, advised + 1, advised * 2) if count != advised)]
    fitting = [count for count in dict.fromkeys(counts) if count == advised or needed_kg / count >= least]
    return tuple(_flock(case, count, max(needed_kg / count, least)) for count in fitting[:3])


def _flock(case: SizeCase, count: int, each_kg: float) -> Flock:
    return Flock(count, each_kg, thaw_days(each_kg), carved(case.kind, count * each_kg, bone_in=case.bone_in))


def _headline(case: SizeCase, flock: Flock) -> Message:
    key = "recipes-size-headline-leftovers" if case.leftovers else "recipes-size-headline"
    return Message(
        key,
        covers=case.covers,
        count=flock.count,
        each_kg=flock.each_kg,
        total_kg=flock.total_kg,
        roast=Message(f"roast-{case.kind}"),
    )


def _notes(sizing: Sizing) -> tuple[Message, ...]:
    case, meat = sizing.case, sizing.carved
    said = [
        Message(
            "recipes-size-edible",
            percent=100.0 * meat.meat_of_raw,
            meat_kg=meat.meat_kg,
            servings=meat.servings,
            serving_kg=SERVING_KG,
        )
    ]
    if meat.white_kg and meat.dark_kg:
        said.append(Message("recipes-size-white-dark", white_kg=meat.white_kg, dark_kg=meat.dark_kg))
    said += [
        Message("recipes-size-other", count=other.count, each_kg=other.each_kg, days=other.thaw_days[1])
        for other in sizing.others[:1]
    ]
    if sizing.others:
        said.append(Message("recipes-size-two-smaller" if meat.white_kg else "recipes-size-two-joints"))
    if sizing.total_kg > 1.1 * sizing.needed_kg:
        said.append(Message("recipes-size-least", each_kg=sizing.each_kg, needed_kg=sizing.needed_kg))
    low, high = sizing.flock.thaw_days
    said.append(Message("recipes-size-frozen" if low < high else "recipes-size-frozen-days", low=low, high=high))
    said.append(Message("recipes-size-fresh", low=sizing.buy_fresh_days[0], high=sizing.buy_fresh_days[1]))
    by = {side.item: side for side in sizing.sides}
    said.append(
        Message(
            "recipes-size-sides",
            dressing_low=by["dressing"].low,
            dressing_high=by["dressing"].high,
            gravy_low=by["gravy"].low,
            gravy_high=by["gravy"].high,
            potatoes_low=by["potatoes"].low,
            potatoes_high=by["potatoes"].high,
        )
    )
    if case.non_eaters:
        said.append(Message("recipes-size-non-eaters", count=case.non_eaters))
    return tuple(said)


def _assumptions(sizing: Sizing) -> tuple[Message, ...]:
    case = sizing.case
    said = [Message("recipes-size-assumed-portion", per_kg=sizing.per_cover_kg)]
    if case.children:
        said.append(Message("recipes-size-assumed-children", children=case.children))
    if not case.leftovers:
        said.append(Message("recipes-size-assumed-no-leftovers"))
    return tuple(said)


def _cautions() -> tuple[Caution, ...]:
    return (caution("thaw-counter", "info"), caution("leftovers-days", "info"))
