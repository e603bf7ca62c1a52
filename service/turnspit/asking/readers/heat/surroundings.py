"""Temperatures of the kitchen, not of an oven or a roast: of the refrigerator it thaws in, of the day, of a dial."""

from __future__ import annotations

from turnspit.asking.readers.heat.temperature import Said, plausible_cold
from turnspit.asking.scene import Scene

# A refrigerator, a cellar, a porch in winter.
_COLD_C = -30.0, 12.0
_COLD_ENOUGH_C = 5.0
_PLANNED = ("plan", "roast_time", "size", "brine")
_THAWS = ("frozen", "part_frozen")
_HOT_DAY = 120
# No dial is further off, in either degrees.
_MOST_OFF = 75


def surroundings(scene: Scene, said: Said) -> bool:
    """Whether the temperature is that of a place, of the weather, or how far a dial is off."""
    tests = (_of_a_cold_place, _of_the_thaw_water, _of_the_weather, _off_the_dial)
    return any(test(scene, said) for test in tests)


def _of_a_cold_place(scene: Scene, said: Said) -> bool:
    """`frozen 20 lb, fridge at 38`, `thaw in a 3 degree fridge`: how cold the place is in which it thaws.

    In a talk that plans a dinner, so is `the walk-in is at 36`, as long as that is cold enough.
    """
    low, high = _COLD_C
    celsius = said.celsius(plausible_cold(said.value, scene.usual))
    if not low <= celsius <= high or scene.has("<safe>", "<ok>", "<out>", "<danger>"):
        return False
    thaws = scene.has("<thaw>") or any(item.get("<state>") in _THAWS for item in scene.items)
    beside = scene.nearest(said.place, "<cold_place>", reach=2.5) is not None
    planned = scene.hints.get("talk_of") in _PLANNED and celsius <= _COLD_ENOUGH_C
    return beside and (thaws or planned or scene.before.get("roast.state") in _THAWS)


def _of_the_thaw_water(scene: Scene, said: Said) -> bool:
    """`thaw it in 40 degree water`"""
    water = scene.after_is(said.place, "<water>") is not None
    return water and scene.has("<thaw>") and not scene.has("<safe>", "<ok>", "<danger>")


def _of_the_weather(scene: Scene, said: Said) -> bool:
    """`on the buffet, a 35 degree day`."""
    near = scene.nearest(said.place, "<weather>", reach=1.5)
    return near is not None and said.value <= _HOT_DAY


def _off_the_dial(scene: Scene, said: Said) -> bool:
    """`my oven runs 25 degrees cold`: how far the dial is off."""
    off = scene.after_is(said.place, "<off_by>") is not None or scene.before_is(said.place, "<off_by>") is not None
    return off and scene.has("<oven>") and said.value <= _MOST_OFF
