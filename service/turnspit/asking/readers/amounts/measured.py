"""The words of what is measured: `2 cups of brown sugar`, `a 12 oz bag of cranberries`, `3 medium onions`."""

from __future__ import annotations

from turnspit.asking.grammar import Item
from turnspit.asking.scene import Scene
from turnspit.quantities import food_named

_LONGEST_NAME = 6
_SIZES = ("small", "medium", "large", "mediano", "mediana", "medianos", "medianas")


def item_of(scene: Scene, source: int, target: int | None) -> tuple[str, list[int]]:
    """The words of what is measured: behind the amount up to the next thing that is none of its name."""
    places: list[int] = []
    for place in range(source + 1, len(scene.items)):
        item = scene.items[place]
        dot = item.words == "." and place == source + 1
        if place == target or (_ends_name(item) and not dot) or len(places) >= _LONGEST_NAME:
            break
        if not places and ("'of" in item or "<soft>" in item or dot or item.words in _SIZES):
            continue
        if ("'of" in item or "'de" in item) and all(_contains(scene.items[at]) for at in places):
            places = []
            continue
        places.append(place)
    if not places:
        places = _named_before(scene, target, source) or _named_behind(scene, target, source)
        places = places or _named_first(scene, source)
    while places and any(tag in scene.items[places[-1]] for tag in _HANGS):
        places.pop()
    return " ".join(scene.items[place].words for place in places), places


_CONTAINERS = ("can", "tin", "jar", "carton", "pack", "packet", "box", "bottle", "pot", "lata", "paquete", "frasco")


def _contains(item: Item) -> bool:
    return "<vessel>" in item or item.words in _CONTAINERS


# With these no name ends.
_HANGS = ("<soft>", "'of", "'and", "'y", "'i", "'we")


def _named_behind(scene: Scene, target: int | None, source: int) -> list[int]:
    """`12 oz in cups of flour`: behind the unit asked for."""
    if target is None or target < source or target + 1 >= len(scene.items) or scene.items[target + 1].words != "of":
        return []
    places = []
    for place in range(target + 2, min(target + 2 + _LONGEST_NAME, len(scene.items))):
        if _ends_name(scene.items[place]):
            break
        places.append(place)
    return places


_BESIDE_A_NAME = {"<soft>", "<break>", "<how_much>", "<can>", "'is", "'are", "'es", "'son"}


def _named_first(scene: Scene, source: int) -> list[int]:
    """`flour, 3 cups, grams`, `how much sugar is 200 g in cups`: all that stands before."""
    named = [place for place, item in enumerate(scene.items[:source]) if not item.tags.keys() & _BESIDE_A_NAME]
    return named if len(named) == 1 and scene.items[named[0]].tags.keys() & {"<ingredient>", "<salt>"} else []


def _named_before(scene: Scene, target: int | None, source: int) -> list[int]:
    """`how many grams of flour in 2 cups`: between the unit asked for and the amount."""
    if target is None or target > source:
        return []
    places = []
    for place in range(target + 1, source):
        item = scene.items[place]
        if _ends_name(item):
            break
        if "'of" not in item and "<soft>" not in item:
            places.append(place)
    return places


def _ends_name(item: Item) -> bool:
    return any(
        tag in item
        for tag in (
            "<break>",
            "<only_have>",
            "<recipe>",
            "<in>",
            "'in",
            "'to",
            "<convert>",
            "<weigh>",
            "<how_much>",
            "'is",
            "<equals>",
        )
    )


def is_food(scene: Scene, place: int) -> bool:
    """Whether a food is named behind a count."""
    named = (item for _, _, item in scene.walk(place, 1) if "<soft>" not in item and item.words not in _SIZES)
    food = next(named, None)
    return food is not None and ("<ingredient>" in food or food_named(food.words) is not None)


def holds_food(scene: Scene, vessel: int) -> bool:
    """`a 12 oz bag of cranberries`: a vessel that food is sold in, and none to brine in."""
    of = scene.after_is(vessel, "'of", "'de")
    return of is not None and scene.after_is(of, "<ingredient>") is not None
