"""The course of a probe, told by the clock: `at 1:15 it was 120, at 2 it is 133`, `140 at 3:40, 58 now`."""

from __future__ import annotations

from turnspit.asking.readers.hours.bare_clock import bare_clock
from turnspit.asking.scene import Scene

# Meat that is probed twice is no cooler and no hotter than this, in either unit.
_COOLEST, _HOTTEST = 25, 212
_TELLS = ("was", "is", "its", "now")
_NOW = ("now", "ahora")


def course(scene: Scene) -> dict[int, int]:
    """By the place of each reading that was told with its hour, the place of the hour; empty for fewer than two."""
    if "course" not in scene.hints:
        found = {}
        if scene.has("<at>") and not scene.has("<oven>", "<meal>", "<serve>", "<convection>"):
            for place, item in scene.find("<number>", unused=True):
                hour = (
                    (_hour_of(scene, place) or _now(scene, place))
                    if _COOLEST < item.tags["<number>"].value <= _HOTTEST
                    else None
                )
                if hour is not None:
                    found[place] = hour
        # Two that are both of now are of two places.
        scene.hints["course"] = found if len(set(found.values())) > 1 else {}
    told: dict[int, int] = scene.hints["course"]
    return told


def _hour_of(scene: Scene, place: int) -> int | None:
    """The hour right behind a number, or right before it with a verb between."""
    at = scene.after_is(place, "<at>")
    behind = scene.after_is(at, "<clock>", "<number>") if at is not None else None
    if behind is not None and _is_hour(scene, behind):
        return behind
    before = scene.before_is(place, "<clock>", "<number>")
    if before is None or not _is_hour(scene, before) or scene.before_is(before, "<at>") is None:
        return None
    between = {item.words for item in scene.items[before + 1 : place]}
    return before if between.intersection(_TELLS) else None


def _now(scene: Scene, place: int) -> int | None:
    """`58 now`, `now 58`, `now it's 58`: the place of the word."""
    for step in (1, -1):
        beside = next(
            (at for _, at, item in scene.walk(place, step) if "<soft>" not in item or item.words in _NOW), None
        )
        while beside is not None and scene.items[beside].words in _VERBS and 0 < beside < len(scene.items) - 1:
            beside += step
        if beside is not None and any(word in _NOW for word in scene.items[beside].words.split()):
            return beside
    return None


_VERBS = ("its", "is", "it", "at", "reads")


def _is_hour(scene: Scene, place: int) -> bool:
    item = scene.items[place]
    return "<clock>" in item or ("<number>" in item and bare_clock(scene, place) is not None)
