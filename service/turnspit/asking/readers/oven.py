"""The oven beside its temperature: fan or not, and how many."""

from __future__ import annotations

from turnspit.asking.scene import Scene

_MOST_OVENS = 8


def read(scene: Scene) -> None:
    """Put `oven.convection` and `oven.count`."""
    for place, item in scene.find("<convection>"):
        scene.put("oven.convection", item.tags["<convection>"], "oven: fan", place, keep=True)
    for place, item in scene.find("<double_oven>"):
        scene.put("oven.count", int(item.tags["<double_oven>"]), "oven: how many", place, keep=True)
    for place, item in scene.find("<count>"):
        if _of_ovens(scene, place):
            scene.put("oven.count", item.tags.pop("<count>"), "oven: how many", place)
    for place, item in scene.find("<number>", unused=True):
        said = item.tags["<number>"].value
        if said == int(said) and 1 <= said <= _MOST_OVENS and _of_ovens(scene, place):
            scene.put("oven.count", int(said), "oven: how many", place)


def _of_ovens(scene: Scene, place: int) -> bool:
    after = scene.after_is(place, "<oven>", "<convection>")
    if after is not None and not scene.items[after].words.endswith(_NOUNS):
        after = scene.after_is(after, "<oven>")
    return after is not None and scene.items[after].words.endswith(_NOUNS)


_NOUNS = ("combi", "combis", "oven", "ovens", "horno", "hornos", "cooker", "cookers")
