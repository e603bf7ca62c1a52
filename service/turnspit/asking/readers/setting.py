"""The oven beside its temperature: fan or not, and how many; and the height of the kitchen above the sea."""

from __future__ import annotations

from turnspit.asking.readers.measures import Measure
from turnspit.asking.scene import Scene

_MOST_OVENS = 8


def read(scene: Scene) -> None:
    """Put `oven.convection`, `oven.count` and `altitude_m`."""
    for place, item in scene.find("<convection>"):
        scene.put("oven.convection", item.tags["<convection>"], "oven: fan", place, keep=True)
    for place, item in scene.find("<double_oven>"):
        scene.put("oven.count", int(item.tags["<double_oven>"]), "oven: how many", place, keep=True)
    for place, item in scene.find("<number>", unused=True):
        said = item.tags["<number>"].value
        if said == int(said) and 1 <= said <= _MOST_OVENS and _of_ovens(scene, place):
            scene.put("oven.count", int(said), "oven: how many", place)
    _altitude(scene)


def _of_ovens(scene: Scene, place: int) -> bool:
    after = scene.after_is(place, "<oven>", "<convection>")
    if after is not None and "<oven>" not in scene.items[after]:
        after = scene.after_is(after, "<oven>")
    return after is not None and scene.items[after].words.endswith(_NOUNS)


_NOUNS = ("oven", "ovens", "horno", "hornos", "cooker", "cookers")


def _altitude(scene: Scene) -> None:
    if not scene.has("<altitude>") and not _high_length(scene):
        return
    for place, item in scene.find("<length>", unused=True):
        measure: Measure = item.tags["<length>"]
        if measure.unit in ("ft", "m", "mile"):
            scene.put("altitude_m", round(measure.si, 1), "altitude", place)


def _high_length(scene: Scene) -> bool:
    return any(item.tags["<length>"].si >= 300 for _, item in scene.find("<length>"))
