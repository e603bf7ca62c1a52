"""An amount to convert: `2 cups kosher salt in grams`, `how many ounces in a pound`, `350 F in C`, `and in
grams?`.
"""

from __future__ import annotations

from turnspit.asking.grammar import Item
from turnspit.asking.readers.measures import Measure
from turnspit.asking.readers.numbers import number
from turnspit.asking.readers.pieces import pieces
from turnspit.asking.readers.temperature import Temperature
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Number
from turnspit.quantities import food_named

_MEASURES = ("<mass>", "<volume>", "<length>", "<temperature>", "<pieces>")
_UNITS = ("<mass_unit>", "<volume_unit>", "<temperature_unit>", "<gas>", "<c>", "<length_unit>")
_LONGEST_NAME = 6


def target_unit(item: Item) -> str:
    """The unit an item names when it stands alone."""
    for tag in _UNITS:
        if tag in item:
            return "degC" if tag == "<c>" else str(item.tags[tag])
    return ""


def read(scene: Scene) -> bool:
    """Put every `amount.*` value where the line asks to convert; tells whether it does."""
    source = next(
        ((place, tag) for place, item in enumerate(scene.items) for tag in _MEASURES if tag in item.tags), None
    )
    target = _target(scene, source[0] if source else None)
    if source is None and target is None and _goes_on(scene):
        target = _lone_unit(scene)
    if scene.has("<brine>", "<brined>", "<vessel>", "<meal>", "<when_day>", "<covers>") and not scene.has(
        "<convert>"
    ):
        return False
    if target is None and not (source and scene.has("<convert>")):
        return _goes_on(scene) and _another_amount(scene, source)
    if source is None and target is not None and _put_bare_degrees(scene, target):
        return True
    if source is None and target is not None:
        source = _counted(scene, target)
    if source is None:
        return target is not None and _goes_on(scene) and _put_target(scene, target)
    place, tag = source
    value = scene.items[place].tags[tag]
    unit = value.unit or "degF"
    if isinstance(value, Temperature) and not value.unit:
        unit = "degC" if target is not None and target_unit(scene.items[target]) == "degF" else "degF"
    scene.put("amount.value", _number(value), "amount: value", place)
    scene.put("amount.unit", unit, "amount: unit", place)
    name, places = item_of(scene, place, target)
    if name and tag != "<temperature>":
        scene.put("amount.item", name, "amount: item", *places)
    if target is not None:
        scene.put("amount.target_unit", target_unit(scene.items[target]), "amount: target unit", target)
    return True


def read_aside(scene: Scene) -> bool:
    """Put a whole conversion that stands beside another question: `350F in C and how long for a 14 lb turkey`."""
    for place, item in enumerate(scene.items):
        tag = next((tag for tag in _MEASURES if tag in item.tags), None)
        target = _beside(scene, place) if tag is not None and _begins(scene, place) else None
        if tag is None or target is None or not _asks_elsewhere(scene, place, target):
            continue
        name, places = item_of(scene, place, target)
        value = item.tags[tag]
        scene.put("amount.value", _number(value), "amount: value", place)
        scene.put("amount.unit", value.unit or "degF", "amount: unit", place)
        if name and tag != "<temperature>":
            scene.put("amount.item", name, "amount: item", *places)
        scene.put("amount.target_unit", target_unit(scene.items[target]), "amount: target unit", target)
        scene.hints["aside"] = place
        return True
    return False


_PARTS = ("<break>", "<and_sign>", "'and", "'y")
_OTHER_QUESTIONS = ("<how_long>", "<how_big>", "<how_much>", "<when>", "<plan>", "<thaw>", "<brine>", "<oven_temp>")


def _begins(scene: Scene, place: int) -> bool:
    """Whether a new part of the line begins at the amount, or just before it with `convert` or `what is`."""
    at = place - 1
    while at >= 0 and any(tag in scene.items[at] for tag in ("<soft>", "<convert>", "'what", "'whats")):
        at -= 1
    return at < 0 or any(tag in scene.items[at] for tag in _PARTS)


def _beside(scene: Scene, place: int) -> int | None:
    """The unit asked for behind an amount, up to three words on, with which the part of the line ends."""
    for into in range(place + 1, min(place + 5, len(scene.items) - 1)):
        unit = scene.items[into + 1]
        if "<break>" in scene.items[into]:
            return None
        if any(tag in scene.items[into] for tag in ("<in>", "'in", "'to")) and target_unit(unit):
            ends = into + 2 == len(scene.items) or any(tag in scene.items[into + 2] for tag in _PARTS)
            return into + 1 if ends and not any(tag in unit for tag in _MEASURES) else None
    return None


def _asks_elsewhere(scene: Scene, first: int, last: int) -> bool:
    rest = [item for place, item in enumerate(scene.items) if not first <= place <= last]
    return any(tag in item for item in rest for tag in _OTHER_QUESTIONS)


def _lone_unit(scene: Scene) -> int | None:
    """`gas mark?`: a line that is nothing but a unit."""
    rest = [place for place, item in enumerate(scene.items) if not ("<soft>" in item or "<break>" in item)]
    return rest[0] if len(rest) == 1 and target_unit(scene.items[rest[0]]) else None


def _goes_on(scene: Scene) -> bool:
    """Whether the talk was about converting and this line names no dinner."""
    return "amount.value" in scene.before and not scene.has("<meal>", "<roast>", "<generic>", "<serve>", "<how_long>")


def _put_target(scene: Scene, target: int) -> bool:
    scene.put("amount.target_unit", target_unit(scene.items[target]), "amount: target unit", target)
    return True


def _another_amount(scene: Scene, source: tuple[int, str] | None) -> bool:
    """`and 375?`, `3 cups`: the same conversion of another amount."""
    if source is not None:
        value = scene.items[source[0]].tags[source[1]]
        scene.put("amount.value", _number(value), "amount: value", source[0])
        if value.unit:
            scene.put("amount.unit", value.unit, "amount: unit", source[0])
        name, places = item_of(scene, source[0], None)
        if name:
            scene.put("amount.item", name, "amount: item", *places)
        return True
    numbers = [place for place, _ in scene.find("<number>")]
    names = [place for place, item in enumerate(scene.items) if "<ingredient>" in item or "<salt>" in item]
    if len(names) == 1 and not numbers:
        scene.put("amount.item", scene.items[names[0]].words, "amount: another item", names[0])
        return True
    if len(numbers) != 1:
        return False
    scene.put("amount.value", _number(scene.items[numbers[0]].tags["<number>"]), "amount: value", numbers[0])
    return True


def _put_bare_degrees(scene: Scene, target: int) -> bool:
    """`180 fan in fahrenheit`, `350 in C`: a bare number is in the other degrees."""
    other = {"degF": "degC", "degC": "degF"}.get(target_unit(scene.items[target]))
    numbers = [(place, item) for place, item in scene.find("<number>") if place < target]
    if other is None or len(numbers) != 1 or scene.has("<roast>", "<generic>", "<place>", "<probe>", "<meal>"):
        return False
    place, item = numbers[0]
    scene.put("amount.value", _number(item.tags["<number>"]), "amount: value", place)
    scene.put("amount.unit", other, "amount: the other degrees", place)
    return _put_target(scene, target)


def _counted(scene: Scene, target: int) -> tuple[int, str] | None:
    """`2 eggs in grams`, `how many grams is an onion`: a food that is counted."""
    if scene.has("<meal>", "<place>", "<probe>") or "<temperature_unit>" in scene.items[target]:
        return None
    for place, item in enumerate(scene.items):
        counts = item.get("<number>") or item.get("<a>")
        if counts is not None and is_food(scene, place):
            item.tags["<pieces>"] = pieces(number(counts).value)
            return place, "<pieces>"
    return None


def is_food(scene: Scene, place: int) -> bool:
    """Whether a food is named behind a count."""
    food = next((item for _, _, item in scene.walk(place, 1) if "<soft>" not in item), None)
    return food is not None and ("<ingredient>" in food or food_named(food.words) is not None)


def _number(value: Measure | Temperature | Number) -> float | int:
    return plain(value.value)


def plain(value: float) -> float | int:
    """A number as one would say it: whole where it is."""
    rounded = round(value, 6)
    return int(rounded) if rounded == int(rounded) else rounded


def _target(scene: Scene, source: int | None) -> int | None:
    """The unit that is asked for: `in grams`, `to C`, `how many cups`."""
    for place, item in enumerate(scene.items):
        if place == source or not target_unit(item) or any(tag in item for tag in _MEASURES):
            continue
        if (
            scene.before_is(
                place,
                "<in>",
                "'in",
                "'to",
                "<how_much>",
                "<what_temp>",
                "<deg>",
                "<convert>",
                "'of",
                "'a",
                "<gas>",
                "<and_in>",
            )
            is not None
        ):
            return place
        if "<gas>" in item and source is not None:
            return place
        if source is not None and (
            "<how_big>" in item or (scene.has("'=") and scene.before_is(place, "'?") is not None)
        ):
            return place
        into = scene.after_is(place, "<in>", "'in", "'per", "'to", "<for>")
        if into is not None and source is not None and scene.after_is(into, *_MEASURES) == source:
            return place
    return None


def item_of(scene: Scene, source: int, target: int | None) -> tuple[str, list[int]]:
    """The words of what is measured: behind the amount up to the next thing that is none of its name."""
    places: list[int] = []
    for place in range(source + 1, len(scene.items)):
        item = scene.items[place]
        dot = item.words == "." and place == source + 1
        if place == target or (_ends_name(item) and not dot) or len(places) >= _LONGEST_NAME:
            break
        if not places and ("'of" in item or "<soft>" in item or dot):
            continue
        places.append(place)
    if not places:
        places = _named_before(scene, target, source) or _named_behind(scene, target, source)
    while places and any(tag in scene.items[places[-1]] for tag in _HANGS):
        places.pop()
    return " ".join(scene.items[place].words for place in places), places


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
            "<in>",
            "'in",
            "'to",
            "<convert>",
            "<weigh>",
            "<how_much>",
            "'is",
            "'equals",
        )
    )
