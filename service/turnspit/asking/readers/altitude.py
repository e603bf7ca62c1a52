"""The height of the kitchen above the sea: `at 5,280 feet`, `1600 m`."""

from __future__ import annotations

from turnspit.asking.readers.measures import Measure
from turnspit.asking.scene import Scene

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


def _high_length(scene: Scene) -> bool:
    return any(item.tags["<length>"].si >= _HIGH_M for _, item in scene.find("<length>"))
