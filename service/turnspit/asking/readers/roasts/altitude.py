"""The height of the kitchen above the sea: `at 5,280 feet`, `1600 m`."""

from __future__ import annotations

from turnspit.asking.readers.measures.measures import METRES, Measure
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Number
from turnspit.words import usual_units

# A length of this much in a kitchen can only be its height above the sea.
_HIGH_M = 300


def read(scene: Scene) -> None:
    """Put `altitude_m`."""
    if not scene.has("<altitude>") and not _high_length(scene):
        return
    for place, item in scene.find("<length>", unused=True):
        measure: Measure = item.tags["<length>"]
        if measure.unit in ("ft", "m", "mile"):
            scene.put("altitude_m", round(measure.si, 1), "altitude", place)
    for place, item in scene.find("<number>", unused=True):
        said: Number = item.tags["<number>"]
        if said.value >= _HIGH_M and scene.nearest(place, "<altitude>", reach=1) is not None:
            # "elevation 8500"
            unit = METRES["m" if _in_metres(scene, said) else "ft"]
            scene.put("altitude_m", round(said.value * unit, 1), "altitude: a number beside it", place)


# The highest towns lie here; what is above is told in feet.
_HIGHEST_M = 5100


def _in_metres(scene: Scene, said: Number) -> bool:
    metric = scene.usual == "metric" or (scene.usual is None and usual_units(scene.now) == "metric")
    return said.value <= _HIGHEST_M and (metric or scene.language == "es")


def _high_length(scene: Scene) -> bool:
    return any(
        item.tags["<length>"].si >= _HIGH_M and item.tags["<length>"].unit != "mile"
        for _, item in scene.find("<length>")
    )
