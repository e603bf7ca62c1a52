"""Scaling: `from 6 to 20`, `double it`, `half the recipe`, `recipe serves 4, I need 10`, `times 1.5`."""

from __future__ import annotations

from turnspit.asking.readers.covers import Covers
from turnspit.asking.scene import Scene


def read(scene: Scene) -> bool:
    """Put every `scale.*` value where the line asks to scale; tells whether it does."""
    if not _about_a_recipe(scene):
        return False
    for place, _ in scene.find("<halved>"):
        scene.put("scale.factor", 0.5, "scale: half", place)
    for place, item in scene.find("<factor>"):
        scene.put("scale.factor", item.tags["<factor>"], "scale: factor", place)
    for place, item in scene.find("<from_to>"):
        scene.put("scale.from", _plain(item.tags["<from_to>"].low), "scale: from to", place)
        scene.put("scale.to", _plain(item.tags["<from_to>"].high), "scale: from to", place)
    _times(scene)
    counts = _counts(scene)
    if len(counts) >= 2:
        first, last = counts[0], counts[1]
        recipe_last = (
            scene.before_is(last[0], "<recipe>") is not None and scene.before_is(first[0], "<recipe>") is None
        )
        if recipe_last or _is_former(scene, last[0]) or (_is_goal(scene, first[0]) and not _is_goal(scene, last[0])):
            first, last = last, first
        scene.put("scale.from", first[1], "scale: from", first[0])
        scene.put("scale.to", last[1], "scale: to", last[0])
    elif len(counts) == 1 and "scale.factor" not in scene.values:
        place, count = counts[0]
        goal = _is_goal(scene, place) or scene.has("<scale>") or "scale.from" in scene.before
        scene.put("scale.to" if goal else "scale.from", count, "scale: one", place)
    return any(path.startswith("scale.") for path in scene.values) or scene.has("<scale>")


def _about_a_recipe(scene: Scene) -> bool:
    if scene.has("<scale>", "<factor>", "<recipe>", "<halved>") or _between_covers(scene):
        return True
    goes_on = any(path.startswith("scale.") for path in scene.before)
    if goes_on and not scene.has("<meal>", "<roast>", "<generic>", "<serve>", "<how_long>", "<how_big>"):
        return True
    dish = scene.has("<subject>", "<ingredient>", "<brine>") and not scene.has(
        "<mass>", "<meal>", "<roast>", "<generic>"
    )
    instead = (
        scene.has("<instead_of>") and scene.has("<covers>") and not scene.has("<roast>", "<generic>", "<how_big>")
    )
    return instead or (
        dish
        and (
            scene.has("<times>")
            or (scene.has("<scale_to>") and scene.has("<covers>"))
            or len(list(scene.find("<covers>"))) > 1
            or (scene.has("<covers>") and any(_is_goal(scene, p) for p, _ in scene.find("<number>", unused=True)))
        )
    )


def _between_covers(scene: Scene) -> bool:
    """`from 6 to 20` scales, `from 160 to 165` does not."""
    return scene.has("<from_to>") and not scene.has(
        "<place>",
        "<probe>",
        "<safe>",
        "<duration>",
        "<temperature>",
        "<rest>",
        "<out>",
        "<danger>",
        "<roast>",
        "<meal>",
    )


def _times(scene: Scene) -> None:
    for place, item in scene.find("<number>", unused=True):
        if (
            scene.after_is(place, "'x", "<times>") is not None
            or scene.before_is(place, "<times>", "<by_factor>") is not None
        ):
            scene.put("scale.factor", item.tags["<number>"].value, "scale: times", place)


def _counts(scene: Scene) -> list[tuple[int, int | float]]:
    found: list[tuple[int, int | float]] = []
    for place, item in enumerate(scene.items):
        if place in scene.used:
            continue
        if "<covers>" in item:
            covers: Covers = item.tags["<covers>"]
            found.append((place, covers.count))
        elif "<number>" in item:
            found.append((place, _plain(item.tags["<number>"].value)))
    return found


def _plain(value: float) -> int | float:
    return int(value) if value == int(value) else value


def _is_former(scene: Scene, place: int) -> bool:
    if scene.items[place].words.startswith(("serves", "feeds", "makes")):
        return True
    return scene.before_is(place, "<instead_of>", "<says>") is not None


def _is_goal(scene: Scene, place: int) -> bool:
    return scene.before_is(place, "'to", "<need>", "<scale>", "<scale_to>") is not None
