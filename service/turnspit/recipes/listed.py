"""The lines of the lists as messages: what to buy, to order, to have at once."""

from __future__ import annotations

from turnspit.message import Message, Value
from turnspit.quantities import density_or_none
from turnspit.quantities.foods import is_liquid
from turnspit.recipes.order import OrderLine
from turnspit.recipes.prep import EquipmentNeed, PrepDay
from turnspit.recipes.shopping import Bought, Measure
from turnspit.recipes.spanish import food_message, in_language


def bought_line(bought: Bought) -> Message:
    """One line of a shopping list: how many packs of what size, and what is left over."""
    need = bought.need
    if need is None:
        return Message("recipes-buy-unmeasured", item=food_message(bought.item), line=bought.lines[0])
    values: dict[str, Value] = {"item": food_message(bought.item), "packs": bought.packs}
    if not bought.packs:
        return Message(
            "recipes-buy-made", item=food_message(bought.item), amount=amount(need.trimmed, need.measure, need.item)
        )
    if bought.pack in ("loose", "piece"):
        weighed_or_counted = amount(bought.buy, need.measure, need.item, need.each_kg)
        return Message("recipes-buy-loose", item=food_message(bought.item), amount=weighed_or_counted)
    return Message(
        "recipes-buy-packs",
        **values,
        pack=Message(f"recipes-pack-{bought.pack}", count=bought.packs),
        size=amount(bought.pack_size, need.measure, need.item),
        left=amount(bought.left_over, need.measure, need.item),
    )


def order_line(line: OrderLine) -> Message:
    """One line of an order sheet, without its dates."""
    cold = line.receive_at_most_c is not None
    parts = [part for part in (_cases(line), _packs(line)) if part is not None]
    ordered = parts[0] if len(parts) == 1 else Message("recipes-order-both", cases=parts[0], packs=parts[1])
    return Message(
        "recipes-order-cold" if cold else "recipes-order",
        item=food_message(line.item),
        ordered=ordered,
        receive_c=line.receive_at_most_c or 0.0,
    )


def _cases(line: OrderLine) -> Message | None:
    if not line.cases:
        return None
    size = amount(line.case, line.measure, line.item, line.each_kg)
    case_of = Message(f"recipes-case-{line.case_of}", count=line.cases)
    return Message("recipes-order-packs", packs=line.cases, pack=case_of, size=size)


def _packs(line: OrderLine) -> Message | None:
    if not line.packs:
        return None
    if line.pack in ("loose", "piece"):
        return amount(line.packs * line.pack_size, line.measure, line.item, line.each_kg)
    size = amount(line.pack_size, line.measure, line.item)
    pack = Message(f"recipes-pack-{line.pack}", count=line.packs)
    return Message("recipes-order-packs", packs=line.packs, pack=pack, size=size)


def day_heading(day: PrepDay) -> Message:
    """The day of a prep list."""
    return Message("recipes-day", days=day.days_before)


def station_heading(station: str) -> Message:
    """The station of a prep list."""
    return Message(f"recipes-station-{station}")


def aisle_heading(aisle: str) -> Message:
    """The aisle of a shopping list."""
    return Message(f"recipes-aisle-{aisle}")


def equipment_line(need: EquipmentNeed) -> Message:
    """How many of a thing at once, and for which recipes."""
    said, spanish = (_users(need, language) for language in ("en", "es"))
    thing = Message("recipes-food", said=need.equipment, es=in_language(need.equipment, "es"))
    return Message(
        "recipes-at-once", count=need.count, equipment=thing, recipes=Message("recipes-food", said=said, es=spanish)
    )


def _users(need: EquipmentNeed, language: str) -> str:
    return "; ".join(in_language(name, language) for name in need.recipes)


def amount(value: float, measure: Measure, item: str, each_kg: float | None = None) -> Message:
    """Grams, millilitres or pieces (of `each_kg`); what is poured is told by volume."""
    if measure == "piece" and each_kg is not None:
        return Message("recipes-amount-pieces-of", count=value, each_kg=each_kg)
    if measure == "piece":
        return Message("recipes-amount-pieces", count=value)
    dense = density_or_none(item) if measure == "g" and is_liquid(item) else None
    if measure == "ml" or dense is not None:
        litres = value / 1000.0 if dense is None else value / 1000.0 / dense.kg_per_l
        return Message("recipes-amount-volume", litres=litres)
    return Message("recipes-amount-mass", kg=value / 1000.0)
