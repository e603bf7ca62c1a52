"""An order sheet from a shopping list: cases, the day to order, the day it comes, how cold it must be received."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date, timedelta

from turnspit.message import Caution
from turnspit.recipes.portions import thaw_days
from turnspit.recipes.shopping import Bought, Measure, Need, ShoppingList, as_measured
from turnspit.reference import caution, rule, table

SUNDAY = 6
DELIVERED_DAYS_BEFORE = 1
"""Before the cooking starts, the day before the dinner or the earliest prep (common practice, no source)."""
LEAST_OF_A_CASE = 0.5
"""Up to half a case is bought by the pack, beside whole cases too (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class OrderLine:
    """One food to order: `cases` of `case` (in `measure`: g, ml or piece), and `packs` of `pack_size` beside them.

    Together they leave `left_over` beyond the need. `case_of` is what a case is ("sack"), `pack` what a shop sells
    ("loose" and "piece" are weighed or counted out). `receive_at_most_c` is None for what is not cold.
    """

    item: str
    measure: Measure
    amount: float
    cases: int
    case: float
    case_of: str
    left_over: float
    order_by: date
    deliver_on: date
    receive_at_most_c: float | None
    packs: int = 0
    pack: str = ""
    pack_size: float = 0.0
    each_kg: float | None = None


@dataclass(frozen=True, slots=True)
class OrderSheet:
    """The lines by the day to order; `cautions` for receiving."""

    lines: tuple[OrderLine, ...]
    cautions: tuple[Caution, ...]


def order_sheet(
    shopping: ShoppingList, serve_on: date, *, prep_days: int = 1, frozen_roast_kg: float | None = None
) -> OrderSheet:
    """What to order of `shopping` for a dinner on `serve_on`, with `prep_days` of work before it.

    A frozen roast (one piece of `frozen_roast_kg`) is delivered its days of thawing earlier. Nothing is ordered or
    delivered on a Sunday (common practice). Cold goods are received at 5 C or below (Food Code 3-202.11).
    """
    lines = sorted(
        (
            _line(bought, bought.need, serve_on, prep_days, frozen_roast_kg)
            for bought in shopping.lines
            if bought.need and bought.packs
        ),
        key=lambda line: (line.order_by, line.item),
    )
    cold = any(line.receive_at_most_c is not None for line in lines)
    return OrderSheet(tuple(lines), (caution("receiving-41"),) if cold else ())


def _line(bought: Bought, need: Need, serve_on: date, prep_days: int, frozen_roast_kg: float | None) -> OrderLine:
    row = table("order_cases").by("key").get(need.key)
    wanted = max(need.trimmed - bought.made, 0.0)
    if need.measure == "piece":
        wanted = math.ceil(wanted - 1e-9)
    case = 0.0 if row is None else as_measured(float(row["case"]), row["measure"], need) or 0.0
    cases, packs = _cases_and_packs(wanted, case, bought.pack_size)
    days = prep_days + DELIVERED_DAYS_BEFORE
    if need.key.startswith("roast_") and frozen_roast_kg is not None:
        days = prep_days + thaw_days(frozen_roast_kg)[1]
    deliver_on = _working_day(serve_on - timedelta(days=days))
    lead = int(row["lead_days"]) if row is not None else 1
    cold = bool(row["cold"]) if row is not None else bought.aisle in ("meat", "dairy", "frozen")
    return OrderLine(
        item=bought.item,
        measure=need.measure,
        amount=wanted,
        cases=cases,
        case=case,
        case_of=str(row["case_of"]) if row is not None and cases else "",
        left_over=cases * case + packs * bought.pack_size - wanted,
        order_by=_working_day(deliver_on - timedelta(days=lead)),
        deliver_on=deliver_on,
        receive_at_most_c=rule("receiving-41").limits["food_max_c"] if cold else None,
        packs=packs,
        pack=bought.pack,
        pack_size=bought.pack_size,
        each_kg=need.each_kg,
    )


def _cases_and_packs(wanted: float, case: float, pack: float) -> tuple[int, int]:
    """Whole cases, and packs for what is left of up to half a case."""
    cases = int(wanted / case + 1e-9) if case else 0
    rest = wanted - cases * case
    if case and rest > LEAST_OF_A_CASE * case:
        return cases + 1, 0
    return cases, math.ceil(rest / pack - 1e-9)


def _working_day(day: date) -> date:
    return day - timedelta(days=1) if day.weekday() == SUNDAY else day
