"""The brine: wished or not, its hours, the water, the vessel and the kind of salt."""

from __future__ import annotations

from turnspit.asking.grammar import Item
from turnspit.asking.readers.measures.measures import Measure
from turnspit.asking.scene import Scene

# `table`, `the coarse one`: up to so many items a line answers with the kind of salt alone.
_A_WORD = 4


def read(scene: Scene) -> None:
    """Put every `brine.*` value."""
    asks = scene.has("<how_long>", "<how_much>", "<can>", "<what_temp>", "'how", "'what", "'whats", "'should", "'?")
    for place, item in scene.find("<brined>"):
        if scene.before_is(place, "'or", "'o") is not None:
            # "brine or no brine".
            continue
        # A question about brining is not yet the wish to do it.
        if item.tags["<brined>"] is False or "<wish>" in item or not asks or _told_first(scene, place):
            scene.put("brine.wanted", item.tags["<brined>"], "brine: wanted", place, keep=True)
    about = scene.has("<brine>", "<brined>", "<salt>") or (
        scene.talk and (scene.hints.get("talk_of") == "brine" or any(p.startswith("brine.") for p in scene.before))
    )
    for place, item in sorted(scene.find("<volume>", unused=True), key=lambda row: _is_rate(row[1])):
        measure: Measure = item.tags["<volume>"]
        vessel = scene.after_is(place, "<vessel>")
        water = scene.after_is(place, "<water>")
        if vessel is None and water is None:
            unsaid = _of_a_stuff(scene, place) or _within(scene, place)
            near = None if unsaid else scene.nearest(place, "<vessel>", "<water>", reach=3)
            vessel = near[1] if near and near[2] == "<vessel>" else _beside_a_comma(scene, place)
            water = near[1] if near and near[2] == "<water>" else None
        if vessel is not None and not about and _of_a_dish(scene, vessel):
            # "a 10 litre pot of turkey stock" brines nothing.
            continue
        if vessel is not None:
            scene.put("brine.vessel_l", round(measure.si, 3), "brine: vessel", place, vessel)
        elif water is not None or (about and (_of_the_brine(scene, place) or not _of_a_stuff(scene, place))):
            scene.put("brine.water_l", round(measure.si, 3), "brine: water", place)
    if about and scene.talk and not scene.has("<salt>") and len(scene.items) <= _A_WORD:
        for place, item in scene.find("<salt_word>"):
            scene.put("brine.salt_kind", item.tags["<salt_word>"], "brine: salt", place)
    if about:
        for place, item in scene.find("<salt_word>"):
            if scene.before_is(place, "<only_have>") is not None:
                # "kosher salt? I only have table".
                scene.put("brine.salt_kind", item.tags["<salt_word>"], "brine: the salt there is", place)
        for place, item in scene.find("<salt>"):
            if item.tags["<salt>"] != "plain":
                scene.put("brine.salt_kind", item.tags["<salt>"], "brine: salt", place, keep=True)


def _told_first(scene: Scene, place: int) -> bool:
    """`brine it overnight then roast - 14 lb, 6 pm, what's my schedule`: said before anything is asked."""
    opens = all("<soft>" in item for item in scene.items[:place])
    return opens and scene.after_is(place, "<duration>") is not None


def _is_rate(item: Item) -> bool:
    """`1 cup per gallon, 3 gallons`, `1 cup of salt to a gallon`: so much for each, and not all there is."""
    return item.words.startswith(("per ", "each ", "every ", "por ")) or "<salt>" in item


def _within(scene: Scene, place: int) -> bool:
    """`3 gallons in a cooler`: what is in the vessel, and not its size."""
    inside = scene.after_is(place, "'in", "'en")
    return inside is not None and scene.after_is(inside, "<vessel>") is not None


def _beside_a_comma(scene: Scene, place: int) -> int | None:
    """`big cooler, 60 quarts`: the vessel whose size this is."""
    comma = scene.before_is(place, "<break>")
    return None if comma is None else scene.before_is(comma, "<vessel>")


def _of_a_stuff(scene: Scene, place: int) -> bool:
    of = scene.after_is(place, "'of", "'de")
    return scene.after_is(place if of is None else of, "<salt>", "<ingredient>") is not None


def _of_a_dish(scene: Scene, vessel: int) -> bool:
    of = scene.after_is(vessel, "'of", "'de")
    return of is not None and scene.has("<stock>", "<subject>", "<cooked>", "<leftovers>")


def _of_the_brine(scene: Scene, place: int) -> bool:
    """`ratio for wet brine 1 gal table salt`: a gallon of brine, and no gallon of salt."""
    of_brine = scene.before_is(place, "<brine>") is not None
    return of_brine and float(scene.items[place].tags["<volume>"].si) >= _A_BRINE_L


_A_BRINE_L = 2.0
