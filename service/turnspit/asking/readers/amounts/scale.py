"""Scaling: `from 6 to 20`, `double it`, `half the recipe`, `recipe serves 4, I need 10`, `times 1.5`."""

from __future__ import annotations

from turnspit.asking.grammar import Item
from turnspit.asking.readers.amounts.amount import plain
from turnspit.asking.readers.amounts.measured import is_food, item_of
from turnspit.asking.readers.company.covers import Covers
from turnspit.asking.readers.measures.measures import Measure
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Number


def read(scene: Scene) -> bool:
    """Put every `scale.*` value where the line asks to scale; tells whether it does."""
    short = _short(scene)
    if not short and (_more_brine(scene) or not _about_a_recipe(scene)):
        return False
    if _of_the_recipe(scene):
        return True
    _shares(scene)
    for place, _ in scene.find("<halved>"):
        scene.put("scale.factor", 0.5, "scale: half", place)
    for place, item in scene.find("<factor>"):
        if scene.after_is(place, "<water>") is None:
            said: float = item.tags["<factor>"]
            fewer = said > 1 and scene.after_is(place, *_LESS) is not None
            scene.put("scale.factor", round(1 / said, 4) if fewer else said, "scale: factor", place)
    _parts_of_a_recipe(scene)
    for place, item in scene.find("<from_to>"):
        scene.put("scale.from", plain(item.tags["<from_to>"].low), "scale: from to", place)
        scene.put("scale.to", plain(item.tags["<from_to>"].high), "scale: from to", place)
    _times(scene)
    counts = _counts(scene)
    if len(counts) >= 2:
        first, last = counts[0], counts[1]
        recipe_last = (
            scene.before_is(last[0], "<recipe>") is not None and scene.before_is(first[0], "<recipe>") is None
        )
        if (
            recipe_last
            or (
                _is_former(scene, last[0])
                and not _is_served(scene, first[0])
                and scene.before_is(last[0], "'to") is None
            )
            or (_is_goal(scene, first[0]) and not (_is_goal(scene, last[0]) or _is_of_recipe(scene, first[0])))
        ):
            first, last = last, first
        scene.put("scale.from", first[1], "scale: from", first[0])
        scene.put("scale.to", last[1], "scale: to", last[0])
    elif len(counts) == 1 and (short or "scale.factor" not in scene.values):
        place, count = counts[0]
        former = scene.talk and not scene.has("<need>") and _tells_of_the_recipe(scene, place)
        wished = _is_goal(scene, place) or scene.has("<scale>", *_MAKE) or "scale.from" in scene.before
        goal = not former and wished
        scene.put("scale.to" if goal else "scale.from", count, "scale: one", place)
    elif len(counts) == 1 and _tells_of_the_recipe(scene, counts[0][0]):
        # "halve a recipe that serves 10"
        scene.put("scale.from", counts[0][1], "scale: what the recipe serves", counts[0][0])
    return short or any(path.startswith("scale.") for path in scene.values) or scene.has("<scale>")


_MAKE = ("'hazme", "'haz", "'hacer", "'hacerla", "'cook", "'cooking")


def _more_brine(scene: Scene) -> bool:
    """`scale to 50 L`, in a talk of a brine: how much of it is wanted, and no servings."""
    servings = scene.has("<covers>", "<recipe>", "<factor>", "<from_to>")
    return scene.hints.get("talk_of") == "brine" and scene.has("<volume>") and not servings


def _tells_of_the_recipe(scene: Scene, place: int) -> bool:
    """`no sorry, the recipe's for 6`, `actually it serves 5`: what it was, and not what it is to be."""
    return _is_former(scene, place) or scene.before_is(place, "<recipe>") is not None


def _of_the_recipe(scene: Scene) -> bool:
    """`it takes 3 lb potatoes, how many is that`: of one thing in the recipe that is being scaled."""
    scaled = "scale.factor" in scene.before or {"scale.from", "scale.to"} <= scene.before.keys()
    if not scaled or scene.has("<only_have>", "<roast>", "<generic>", "<brine>", "<meal>", "<convert>", "<covers>"):
        return False
    measures = [
        (place, tag) for place, item in enumerate(scene.items) if (tag := _measure(item)) not in ("", "<number>")
    ]
    if len(measures) != 1 or not scene.has("<takes>", "<need>", "<says>", "<how_much>", "<ingredient>", "<subject>"):
        return False
    place, tag = measures[0]
    value = scene.items[place].tags[tag]
    scene.put("amount.value", plain(value.value), "scale: of the recipe", place)
    scene.put("amount.unit", value.unit, "scale: of the recipe", place)
    name, places = item_of(scene, place, None)
    if name:
        scene.put("amount.item", name, "scale: of the recipe", *places)
    return True


_MEASURES = ("<mass>", "<volume>", "<pieces>", "<number>")
_NEEDS = ("<takes>", "<need>", "<says>", "<recipe>")


def _short(scene: Scene) -> bool:
    """`I have only 700 g potatoes`: the amount there is of one thing, or, where what is needed is said too, the part
    that it is of that."""
    others = ("<roast>", "<generic>", "<brine>", "<vessel>", "<meal>", "<serve>")
    if not scene.has("<only_have>") or scene.has(*others):
        return False
    there = next((at for at, _ in scene.find("<only_have>")), 0)
    measures = [(place, tag) for place, item in enumerate(scene.items) if (tag := _measure(item))]
    had = next((row for row in measures if row[0] > there), None)
    needs = next((row for row in measures if row != had and scene.before_is(row[0], *_NEEDS) is not None), None)
    if had is None or (had[1] == "<number>" and needs is None and not is_food(scene, had[0])):
        return False
    value = scene.items[had[0]].tags[had[1]]
    for name, places in (item_of(scene, row[0], None) for row in (had, needs) if row is not None):
        if name:
            scene.put("amount.item", name, "scale: what there is", *places)
    wanted = scene.items[needs[0]].tags[needs[1]] if needs is not None and needs[1] in (had[1], "<number>") else None
    if needs is not None and wanted is not None and _size(wanted) > 0:
        had_size = value.value if isinstance(wanted, Number) else _size(value)
        scene.put("scale.factor", round(had_size / _size(wanted), 4), "scale: short", had[0], needs[0])
        return True
    scene.put("amount.value", plain(value.value), "scale: what there is", had[0])
    scene.put("amount.unit", getattr(value, "unit", "piece"), "scale: what there is", had[0])
    return True


def _measure(item: Item) -> str:
    return next((tag for tag in _MEASURES if tag in item), "")


def _size(value: Measure | Number) -> float:
    return value.si if isinstance(value, Measure) else value.value


def _shares(scene: Scene) -> None:
    """`50% more gravy`, `increase the recipe by half`, `cut the recipe by two thirds`, `make 75% of it`."""
    for place, _ in scene.find("<percent>"):
        said = scene.before_is(place, "<number>")
        if said is not None:
            share = scene.items[said].tags["<number>"].value / 100
            change = _more_or_less(scene, said, place)
            factor = 1 + change * share if change else share
            scene.put("scale.factor", round(factor, 4), "scale: percent", said, place)
    for tag, share_tag in (("<part>", "<part>"), ("<by_half>", "<factor>")):
        for place, item in scene.find(tag):
            change = _more_or_less(scene, place, place)
            if tag == "<part>" and _is_what_is_left(scene, place):
                scene.put("scale.factor", item.tags[tag], "scale: down to a part", place)
            elif change:
                scene.put("scale.factor", round(1 + change * item.tags[share_tag], 4), "scale: by a part", place)


_UP = ("increase", "bump", "raise", "scale up", "aumenta", "sube", "subir")
_DOWN = ("reduc", "decrease", "cut", "lower", "scale down", "baja", "disminu")


def _is_what_is_left(scene: Scene, place: int) -> bool:
    """`cut the recipe to a third`."""
    cut = any(item.words.startswith(_DOWN) for item in scene.items[:place])
    return cut and scene.before_is(place, "'to", "<scale_to>") is not None


def _more_or_less(scene: Scene, first: int, last: int) -> int:
    """1 for a share that is added, -1 for one that is taken away, 0 for one that is to be made."""
    behind = scene.after_is(last, "<more>")
    if behind is not None:
        return int(scene.items[behind].tags["<more>"])
    if scene.before_is(first, "'add", "'agrega", "'+", "'plus") is not None:
        return 1
    if scene.before_is(first, "<by_factor>", "'un") is None and "<by_half>" not in scene.items[first]:
        return 0
    words = [item.words for item in scene.items[:first]]
    return any(word.startswith(_UP) for word in words) - any(word.startswith(_DOWN) for word in words)


def _parts_of_a_recipe(scene: Scene) -> None:
    """`two thirds of a cake recipe`, `a batch and a half`."""
    for place, _ in scene.find("<recipe>"):
        more = scene.after_is(place, "<and_part>")
        if more is not None:
            scene.put("scale.factor", 1 + scene.items[more].tags["<and_part>"], "scale: batches", place, more)
        near = [(at, item) for far, at, item in scene.walk(place, -1) if far <= _NEAR]
        part = next(((at, item) for at, item in near if "<part>" in item or "<fraction>" in item), None)
        if part is not None and any("'of" in item or "'de" in item for _, item in near):
            said = part[1].tags.get("<part>") or part[1].tags["<fraction>"].value
            scene.put("scale.factor", said, "scale: part of a recipe", part[0], place)


_NEAR = 4


def _about_a_recipe(scene: Scene) -> bool:
    if scene.has("<halved>") and scene.has("<leftovers>"):
        # "half a ham that's left".
        return False
    if (
        scene.has("<scale>", "<recipe>", "<halved>")
        or _has_factor(scene)
        or _between_covers(scene)
        or _for_two_numbers(scene)
    ):
        return True
    if not scene.has("<roast>", "<generic>", "<meal>") and any(
        _divides(scene, at) for at, _ in scene.find("<number>")
    ):
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


def _for_two_numbers(scene: Scene) -> bool:
    """`the trifle is for a dozen and I want it for three`: no roast, and two numbers of who eats it."""
    if _is_probed(scene) or scene.has("<roast>", "<generic>", "<meal>", "<how_big>", "<clock>", "<brine>", "<plan>"):
        return False
    # "8 of us minus my brother" is one number.
    covers = [place for place, item in scene.find("<covers>") if not item.tags["<covers>"].more]
    said = [
        place
        for place, _ in scene.find("<number>")
        if scene.before_is(place, "<says>", "<need>", "'have") is not None or _is_served(scene, place)
    ]
    return len(covers) > 1 or (bool(said) and len(covers) + len(said) > 1)


def _has_factor(scene: Scene) -> bool:
    """`twice the gravy`, and not `is twice the weight twice the time`."""
    places = [place for place, _ in scene.find("<factor>")]
    return any(scene.after_is(place, *_NO_DISH) is None for place in places)


_NO_DISH = ("<weigh>", "<how_long>", "'time", "'size", "'temperature", "'as", "'peso", "'tiempo")


def _is_probed(scene: Scene) -> bool:
    """Whether a place of a roast is named that is no dish of its own, as stuffing is."""
    return any("<place>" in item and "<subject>" not in item for item in scene.items)


def _between_covers(scene: Scene) -> bool:
    """`from 6 to 20` scales, `from 160 to 165` does not."""
    return (
        scene.has("<from_to>")
        and not _is_probed(scene)
        and not scene.has(
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
    )


def _times(scene: Scene) -> None:
    for place, item in scene.find("<number>", unused=True):
        said: float = item.tags["<number>"].value
        behind = scene.after_is(place, "'x", "<times>")
        fewer = behind is not None and scene.after_is(behind, *_LESS) is not None
        if (_divides(scene, place) or fewer) and said > 0:
            scene.put("scale.factor", round(1 / said, 4), "scale: divided by", place)
        elif behind is not None or scene.before_is(place, "<times>", "<by_factor>") is not None:
            scene.put("scale.factor", said, "scale: times", place)


_LESS = ("'smaller", "'less", "'fewer")
_CUT = ("'cut", "'split", "'reduce", "'reduced")


def _divides(scene: Scene, place: int) -> bool:
    """`divide everything by three`, `cut it all into 4`."""
    by = scene.before_is(place, "<by_factor>", "'into", "'in", "'entre")
    cut = ("<divide>", *_CUT) if scene.has("<recipe>") else ("<divide>",)
    return by is not None and any(tag in item for item in scene.items[:by] for tag in cut)


def _counts(scene: Scene) -> list[tuple[int, int | float]]:
    found: list[tuple[int, int | float]] = []
    for place, item in enumerate(scene.items):
        if place in scene.used or (
            item.words in _PRONOUNS and scene.after_is(place, "<covers>", "<for>") is not None
        ):
            continue
        if "<covers>" in item:
            covers: Covers = item.tags["<covers>"]
            if not covers.more:
                found.append((place, covers.count))
        elif "<number>" in item:
            found.append((place, plain(item.tags["<number>"].value)))
    return found


# "turn a recipe for 6 into one for 10".
_PRONOUNS = ("one", "una", "uno")


def _is_former(scene: Scene, place: int) -> bool:
    if scene.items[place].words.startswith(("serves", "feeds", "makes")):
        return True
    # "100 g for 4": what is told of the recipe.
    of_it = scene.before_is(place, "<mass>", "<volume>", "<ingredient>")
    return of_it is not None or scene.before_is(place, "<instead_of>", "<says>") is not None


def _is_served(scene: Scene, place: int) -> bool:
    """`the 6-serving batter`."""
    return scene.after_is(place, "'serving", "'portion") is not None


def _is_of_recipe(scene: Scene, place: int) -> bool:
    """`recipe's for 8`."""
    of_it = scene.before_is(place, "<for>")
    return of_it is not None and scene.before_is(of_it, "<recipe>") is not None


def _is_goal(scene: Scene, place: int) -> bool:
    # "I've got 30".
    eaters = "<feeds>" in scene.items[place] and not _is_former(scene, place)
    return eaters or scene.before_is(place, "'to", "<need>", "<scale>", "<scale_to>") is not None
