"""A roast's weight that was told without its unit: `two 22s`, `pavo de 6,5`, `bird's 16`, `de 2,5`.

Two things make a bare number a weight: its neighbours (it stands behind the roast, behind "of", or between a count
and an s), and that such a roast is sold at such a weight, in pounds or in kilograms.
"""

from __future__ import annotations

from turnspit.asking.readers.company.diners import is_one_roast
from turnspit.asking.readers.measures.measures import KG
from turnspit.asking.readers.roasts.counts import Sized
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Number
from turnspit.heat import roast
from turnspit.words import usual_units

# Farther out than the heat model goes: a weight that is told is taken as it is, and answered.
_BEYOND = 1.3
_OF = ("de", "of", "from", "von")
_USUAL_KIND = "turkey"
# So many are told apart by a number in words.
_NAMED = 3


def read(scene: Scene) -> None:
    """Put `roast.mass_kg` (and `roast.count` of `two 22s`)."""
    for place, item in scene.find("<sized>"):
        sized: Sized = item.tags["<sized>"]
        if not (scene.has("<roast>", "<generic>") or _held(scene) or item.words.endswith("s")):
            continue
        unit = _unit(scene, sized.size)
        if unit:
            scene.put("roast.count", sized.count, "roast: how many", place)
            _put(scene, place, sized.size, unit)
    if "roast.mass_kg" in scene.values or scene.has("<how_big>", "<mass>"):
        return
    for place, item in scene.find("<covers>", unused=True):
        one = Number(float(item.tags["<covers>"].count), "")
        if is_one_roast(scene, place, item.tags["<covers>"]) and (unit := _unit(scene, one)):
            _put(scene, place, one, unit)
            return
    for place, item in scene.find("<number>", unused=True):
        said: Number = item.tags["<number>"]
        unit = _unit(scene, said) if _beside_a_roast(scene, place, said) else ""
        if unit:
            _put(scene, place, said, unit)
            return


def _put(scene: Scene, place: int, said: Number, unit: str) -> None:
    scene.put("roast.mass_kg", round(said.value * KG[unit], 3), f"roast: a weight in {unit}", place)


def _beside_a_roast(scene: Scene, place: int, said: Number) -> bool:
    if not _stands_alone(scene, place) or not (said.digits or said.value > _NAMED):
        # "duck one says 150": which duck.
        return False
    before = scene.before_is(place, "<roast>", "<generic>")
    of = place > 0 and scene.items[place - 1].words in _OF
    if _is_decimal(said):
        comma = scene.before_is(place, "',")
        listed = comma is not None and scene.before_is(comma, "<roast>", "<generic>") is not None
        return before is not None or listed or (of and _held(scene))
    return before is not None and (of or scene.language == "en")


def _stands_alone(scene: Scene, place: int) -> bool:
    """Whether no word comes next that the number may count ("turkey 2 full pans")."""
    coming = next((item for _, _, item in scene.walk(place, 1) if "<soft>" not in item), None)
    if coming is not None and (coming.words == ")" or "<place>" in coming):
        # "bird 2: breast 157": which bird.
        return False
    return coming is None or coming.words == "even" or any(tag.startswith("<") for tag in coming.tags)


def _is_decimal(said: Number) -> bool:
    """Whether it is written like a weight, and not like a clock time (`6.30`)."""
    _, sign, behind = said.digits.replace(",", ".").partition(".")
    return bool(sign) and len(behind) != 2


def _held(scene: Scene) -> bool:
    return any(path.startswith("roast.") for path in scene.before)


def _unit(scene: Scene, said: Number) -> str:
    """The unit in which a roast of this kind may weigh so much, the reader's own first; "" for none."""
    kind = scene.values.get("roast.kind") or scene.before.get("roast.kind") or _USUAL_KIND
    lightest, heaviest = roast(kind).mass_kg_range
    metric = scene.usual == "metric" or (scene.usual is None and _weighs_in_kilos(scene, said))
    units = ("kg", "lb") if metric else ("lb", "kg")
    fitting = (u for u in units if lightest / _BEYOND <= said.value * KG[u] <= heaviest * _BEYOND)
    return next(fitting, "")


def _weighs_in_kilos(scene: Scene, said: Number) -> bool:
    """Whether what else is told, or where the cook is, speaks for kilograms."""
    celsius = any(trace.rule == "oven: degC" for trace in scene.traces)
    here = _is_decimal(said) and usual_units(scene.now) == "metric"
    return scene.language == "es" or "," in said.digits or celsius or here
