"""What the talk holds, asked for in another unit: `what's that in kilos`, `in F for mum`."""

from __future__ import annotations

from turnspit.asking.readers.amounts.amount import target_unit
from turnspit.asking.readers.measures.measures import KG, LITRES, METRES
from turnspit.asking.readers.talk.held import Held, held
from turnspit.asking.scene import Scene

_DEGREES = ("degC", "degF", "gas_mark")
_DIMENSIONS = (frozenset(KG), frozenset(LITRES), frozenset(METRES), frozenset(_DEGREES))
_THAT = ("<convert>", "'that", "'it", "'eso", "'esto")
# What says more than that something is to be converted.
_SAYS_MORE = ("<number>", "<mass>", "<volume>", "<temperature>", "<ingredient>", "<salt>", "<clock>")


def read(scene: Scene) -> bool:
    """Put the amount that was said last and can be told in the unit of the line; tells whether there is one."""
    units = [(place, target_unit(item)) for place, item in enumerate(scene.items) if target_unit(item)]
    if len(units) != 1 or not scene.has(*_THAT) or not scene.has("<in>", "<convert>") or scene.has(*_SAYS_MORE):
        return False
    place, unit = units[0]
    found = _said_last(scene, unit)
    if found is None:
        return False
    scene.put("amount.value", found.number, "amount: what was said", place)
    scene.put("amount.unit", found.unit, "amount: what was said", place)
    scene.put("amount.target_unit", unit, "amount: target unit", place)
    return True


def _said_last(scene: Scene, unit: str) -> Held | None:
    """The value of the last line, else of an earlier one, that has another unit of the same dimension."""
    alike = next((units for units in _DIMENSIONS if unit in units), frozenset())
    fits = [one for one in held(scene) if one.unit in alike and one.unit != unit]
    said = scene.hints.get("last_said", ())
    return next((one for one in fits if one.path in said), fits[-1] if fits else None)
