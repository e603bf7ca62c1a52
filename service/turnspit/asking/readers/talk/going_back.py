"""Going back to a value that was said earlier in the talk: `back to the 16`, `stick with 325`, `the smaller one`."""

from __future__ import annotations

from typing import Any

from turnspit.asking.readers.hours.clock import digits_clock
from turnspit.asking.readers.talk.held import MOMENTS, as_said
from turnspit.asking.readers.talk.repair import far
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Number

# So near are two sayings of one number.
_SAME = 1.01
_SIZED = "roast.mass_kg"


def read(scene: Scene) -> None:
    """Put the earlier value that the line goes back to."""
    if not scene.hints.get("earlier"):
        return
    _a_number(scene)
    _one_of_them(scene)


def _a_number(scene: Scene) -> None:
    for place, item in scene.find("<number>", unused=True):
        if not _led(scene, place) and not item.words.endswith("after all"):
            continue
        path, value = _earlier(scene, item.tags["<number>"])
        if path:
            scene.put(path, value, "going back: the number", place)
            return


def _led(scene: Scene, place: int) -> bool:
    """`stick with the 14`, `leave it at 3`."""
    at = scene.before_is(place, "<at>", "<hour_at>")
    return scene.before_is(place if at is None else at, "<returns>", "<hold>") is not None


def _earlier(scene: Scene, said: Number) -> tuple[str, Any]:
    """The path and the value that had that number, of those that changed last; "" where none had."""
    clock = digits_clock(said)
    for path, values in reversed(scene.hints["earlier"].items()):
        number = said.value
        if path in MOMENTS:
            if clock is None:
                continue
            number = (clock.hour % 12 or 12) + clock.minute / 60
        for value in reversed(values):
            if any(far(number, one.number) <= _SAME for one in as_said(path, value, scene.usual == "metric")):
                return path, value
    return "", None


def _one_of_them(scene: Scene) -> None:
    """`go with the smaller one`, of the weights that were told."""
    weights = [*scene.hints["earlier"].get(_SIZED, ()), scene.before.get(_SIZED)]
    for place, item in scene.find("<one_of_them>"):
        led = scene.before_is(place, "<returns>") is not None
        if not led or weights[-1] is None or len(weights) < 2:
            continue
        chosen = {"lesser": min, "greater": max}.get(item.tags["<one_of_them>"])
        weight = chosen(weights) if chosen is not None else weights[0]
        scene.put(_SIZED, weight, "going back: the weight", place)
