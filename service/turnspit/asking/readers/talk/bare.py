"""A bare number in a talk: what was asked for, or the value that the talk holds and that is of its size."""

from __future__ import annotations

from turnspit.asking.readers.hours.clock import digits_clock
from turnspit.asking.readers.hours.next_hour import next_after
from turnspit.asking.readers.measures.measures import KG
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Number

# A new mass is within this of the one before ("make it 20" after 16 lb); further off an hour is the likelier meaning.
_NEAR = 0.45
_FARTHEST = 6.0


# What may have been asked back and a bare number answers.
_TOLD_BY_A_NUMBER = ("covers", "roast.mass_kg", "serve_at", "brine.hours", "elapsed_h", "roast.count")


def read(scene: Scene) -> None:
    """Put the one value that an unused number gives in the light of the talk."""
    _listed_hour(scene)
    _weight_first(scene)
    if not scene.talk or scene.values.keys() - {"units"}:
        return
    numbers = [(place, item.tags["<number>"]) for place, item in scene.find("<number>", unused=True)]
    if len(numbers) == _CHANGE_AND_TOTAL:
        _so_many_now(scene, *numbers)
    if len(numbers) != 1:
        return
    place, said = numbers[0]
    asked = scene.hints.get("pending")
    pending = asked if asked in _TOLD_BY_A_NUMBER else ("roast.count" if so_many(scene, place, said) else "")
    path = pending or ("serve_at" if is_spoken_hour(scene, said) else "") or _likely(scene, place, said)
    added = scene.before_is(place, "<add>") is not None and isinstance(scene.before.get("covers"), int)
    if added and path in ("covers", "serve_at") and not pending and said.value == int(said.value):
        # "add 30", in a talk of 240 covers.
        scene.put("covers", scene.before["covers"] + int(said.value), "bare number: more covers", place)
    elif path == "covers" and said.value == int(said.value):
        scene.put("covers", int(said.value), "bare number: covers", place)
    elif path == "roast.mass_kg":
        unit = "lb" if scene.usual != "metric" else "kg"
        scene.put("roast.mass_kg", round(said.value * KG[unit], 3), f"bare number: {unit}", place)
    elif path == "serve_at":
        clock = digits_clock(said)
        if clock is not None:
            scene.hints["serve_clock"] = clock
            scene.hints["serve_place"] = place
    elif path in ("brine.hours", "elapsed_h"):
        scene.put(path, said.value, "bare number: hours", place)
    elif path == "roast.count":
        scene.put(path, int(said.value), "bare number: how many", place)


_CHANGE_AND_TOTAL = 2


def _so_many_now(scene: Scene, change: tuple[int, Number], total: tuple[int, Number]) -> None:
    """`lost two, 13`, of fifteen; `se suman dos, 14`, of twelve."""
    before = scene.before.get("covers")
    if isinstance(before, int) and abs(total[1].value - before) == change[1].value:
        scene.put("covers", int(total[1].value), "bare number: how many it comes to", change[0], total[0])


# What a ticket lists; a question or a plural has a number of its own.
_LISTED = (
    "<roast>",
    "<generic>",
    "<mass>",
    "<temperature>",
    "<number>",
    "<state>",
    "<stuffed>",
    "<oven>",
    "<soft>",
    "<break>",
)


def _listed_hour(scene: Scene) -> None:
    """`turkey 14, 325, 6`: behind the weight and the oven stands the hour of dinner."""
    if not {"roast.mass_kg", "oven.temperature_c"} <= scene.values.keys() or "serve_at" in scene.values:
        return
    last = len(scene.items) - 1
    left = [place for place, _ in scene.find("<number>", unused=True)]
    if left != [last] or not all(any(tag in item for tag in _LISTED) for item in scene.items):
        return
    said: Number = scene.items[last].tags["<number>"]
    clock = digits_clock(said)
    if (
        clock is not None
        and clock.is_open
        and scene.before_is(last, "<break>", "<temperature>", "<number>") is not None
    ):
        at = next_after(scene.now, clock, None, "", "dinner")
        scene.put("serve_at", at.isoformat(), "bare number: the hour of a ticket", last)
        scene.hints["serve_clock"] = clock


def _weight_first(scene: Scene) -> None:
    """`8 and a half, dinner still at 7`, `how about a 12 and dinner at 4`: another weight, and something else."""
    held = scene.before.get("roast.mass_kg")
    if held is None or "serve_at" not in scene.values or "roast.mass_kg" in scene.values:
        return
    unit = "lb" if scene.usual != "metric" else "kg"
    for place, item in scene.find("<number>", unused=True):
        said: Number = item.tags["<number>"]
        opens = place == 0 or _led_by_one(scene, place)
        ends = scene.after_is(place, "<break>", "<and_sign>") is not None
        if opens and ends and abs(said.value * KG[unit] - held) <= _NEAR * held:
            scene.put("roast.mass_kg", round(said.value * KG[unit], 3), f"bare number: {unit}", place)
            return


# A weight that is told more exactly is off by less than this.
_MORE_EXACTLY = 0.15


def is_of_the_roast(scene: Scene, place: int, said: Number) -> bool:
    """`it's 6.35 on the sticker`, `three now`: another weight or count of what the talk holds, and no hour."""
    held = scene.before.get("roast.mass_kg")
    if said.value != int(said.value) and held is not None:
        unit = "lb" if scene.usual != "metric" else "kg"
        return abs(said.value * KG[unit] - float(held)) <= _MORE_EXACTLY * float(held)
    return not said.digits and place == 0 and int(scene.before.get("roast.count", 1)) > 1


def is_spoken_hour(scene: Scene, said: Number) -> bool:
    """`five thirty`, where dinner has an hour already: a clock time and no oven at 530."""
    if scene.language == "en" and said.value < _LATEST and said.value != int(said.value):
        # "six and a half" is no hour in English.
        return False
    return said.spoken is not None and said.spoken[1] in (0, 15, 30, 45) and "serve_at" in scene.before


def so_many(scene: Scene, place: int, said: Number) -> bool:
    """`que sean dos`, `x2`, of roasts; `que sean las dos` is an hour."""
    before = scene.items[place - 1].words if place else ""
    counted = (before == "que sean" and not said.digits) or before in ("x", "*")
    return counted and any(path.startswith("roast.") for path in scene.before)


def _led_by_one(scene: Scene, place: int) -> bool:
    """`they only had a 14`: one roast of so much."""
    return place > 0 and scene.items[place - 1].words in ("a", "an", "un", "una")


# So many more or fewer come than was said.
_FEW_MORE = 4
_LATEST = 24


def _likely(scene: Scene, place: int, said: Number) -> str:
    before = scene.before
    if "elapsed_h" in before and scene.hints.get("talk_of") in ("safety", "leftovers"):
        return "elapsed_h"
    if scene.has("<held_up>") and "serve_at" in before and said.value <= _LATEST:
        # "guests are late, 7"
        return "serve_at"
    if "roast.count" in before and not said.digits and said.value <= 2 * before["roast.count"] + 1:
        return "roast.count"
    if "covers" in before and scene.has("<people>", "<covers_are>"):
        # "kids are coming, so 11".
        return "covers"
    some_leave = scene.has("<relatives>", "<more>") and not _led_by_one(scene, place)
    if some_leave and isinstance(before.get("covers"), int) and abs(said.value - before["covers"]) <= _FEW_MORE:
        # "grandma has dentures, forget her, 13"
        return "covers"
    mass = before.get("roast.mass_kg")
    if mass is not None:
        held = mass / KG["lb" if scene.usual != "metric" else "kg"]
        near = abs(said.value - held) <= _NEAR * held
        if near or ("serve_at" not in before and held / _FARTHEST <= said.value <= held * _FARTHEST):
            return "roast.mass_kg"
    if "covers" in before and "serve_at" not in before:
        return "covers"
    if "serve_at" in before and said.value <= 24:
        return "serve_at"
    return "covers" if "covers" in before else ""
