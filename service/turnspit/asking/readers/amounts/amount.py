"""An amount to convert: `2 cups kosher salt in grams`, `how many ounces in a pound`, `350 F in C`, `and in
grams?`.
"""

from __future__ import annotations

from turnspit.asking.grammar import Item
from turnspit.asking.readers.amounts.measured import holds_food, is_food, item_of
from turnspit.asking.readers.heat.temperature import Temperature, plausible_oven
from turnspit.asking.readers.measures.measures import KG, LITRES, Measure
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.readers.measures.pieces import pieces
from turnspit.asking.readers.talk.repair import CORRECTS
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Number

_MEASURES = ("<mass>", "<volume>", "<length>", "<temperature>", "<pieces>")
_UNITS = ("<mass_unit>", "<volume_unit>", "<temperature_unit>", "<gas>", "<c>", "<length_unit>")


def target_unit(item: Item) -> str:
    """The unit an item names when it stands alone."""
    for tag in _UNITS:
        if tag in item:
            return "degC" if tag == "<c>" else str(item.tags[tag])
    return ""


def read(scene: Scene) -> bool:
    """Put every `amount.*` value where the line asks to convert; tells whether it does."""
    if _corrects_a_reading(scene):
        return False
    if _turned_round(scene):
        return True
    source = next(
        ((place, tag) for place, item in enumerate(scene.items) for tag in _MEASURES if tag in item.tags), None
    )
    target = _target(scene, source[0] if source else None)
    if source is not None and source[1] != "<temperature>" and target is not None and _is_degrees(scene, target):
        # "16 lb at 325 in C".
        source = None
    if source is None and target is None and _goes_on(scene):
        target = _lone_unit(scene)
    if source is not None and target is None and _lone_heat(scene, source[0]):
        value = scene.items[source[0]].tags["<temperature>"]
        scene.put("amount.value", _number(value), "amount: a lone temperature", source[0])
        unit = value.unit or plausible_oven(value.value, scene.usual)[0]
        scene.put("amount.unit", unit, "amount: unit", source[0])
        return True
    if _is_of_a_dinner(scene, source, target):
        return False
    by_volume = source is not None and source[1] == "<volume>"
    if (source is None or by_volume) and target is None and scene.has("<weigh>") and not scene.has(*_OF_A_DINNER):
        source = source or _counted(scene, None) or _one_of(scene, None)
        return source is not None and _put_counted(scene, *source)
    if target is None and not (source and (scene.has("<convert>") or _how_hot(scene, source[0]))):
        return _goes_on(scene) and _another_amount(scene, source)
    if source is None and target is not None and _put_bare_degrees(scene, target):
        return True
    if source is None and target is not None:
        source = _of_two_units(scene, target) or _counted(scene, target) or _one_of(scene, target)
    if source is None:
        return target is not None and _goes_on(scene) and _put_target(scene, target)
    return _put(scene, source, target)


def _is_degrees(scene: Scene, place: int) -> bool:
    return not scene.items[place].tags.keys().isdisjoint(("<temperature_unit>", "<gas>", "<c>"))


def _put(scene: Scene, source: tuple[int, str], target: int | None) -> bool:
    """The amount at `source`, with what it is of and the unit asked for."""
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


def _is_of_a_dinner(scene: Scene, source: tuple[int, str] | None, target: int | None) -> bool:
    """Whether a measure beside a unit is of a dinner or a brine, and nothing is to be converted."""
    of_a_pan = source is not None and source[1] == "<length>"
    held = not of_a_pan and any(not holds_food(scene, place) for place, _ in scene.find("<vessel>"))
    asks_its_size = target is not None and scene.has("<how_much>") and not scene.has(*_ROASTS)
    dinner = scene.has("<meal>", "<when_day>", "<covers>") or _has_its_hour(scene)
    brines = (held and not asks_its_size) or scene.has("<brine>", "<brined>")
    if (brines or dinner) and not scene.has("<convert>"):
        return True
    if source is not None and target is not None and _salts_water(scene, source[0], target):
        return True
    # "18 lb bird = how many lbs of cooked meat".
    return scene.has("<yield>") and scene.has(*_ROASTS)


def _has_its_hour(scene: Scene) -> bool:
    """`7 kg turkey at 6, answer in pounds please`: a dinner."""
    at_hour = any(scene.before_is(place, "<at>") is not None for place, _ in scene.find("<number>"))
    return scene.has(*_ROASTS) and at_hour


def _how_hot(scene: Scene, source: int) -> bool:
    """`gas 6 cuántos grados son`, `what is gas 5 in degrees`, `350 F cuántos grados son`: in the other degrees."""
    value = scene.items[source].get("<temperature>")
    if not isinstance(value, Temperature) or not value.unit or scene.has(*_OF_A_ROAST, "<core_temp>", "<safe>"):
        return False
    in_degrees = any("<deg>" in item or item.words.endswith(_DEGREES) for item in scene.items)
    asks = scene.has("<what_temp>") and (value.unit == "gas_mark" or in_degrees)
    into = any(scene.before_is(at, "<in>", "'in", "'en", "<how_much>") is not None for at, _ in scene.find("<deg>"))
    return asks or into


_DEGREES = ("cuantos grados", "degrees", "degree")


_ROASTS = ("<roast>", "<generic>")
_OF_A_ROAST = (*_ROASTS, "<place>", "<meal>", "<covers>", "<how_long>", "<mass>")
_OF_A_DINNER = (*_OF_A_ROAST, "<probe>")


def _one_of(scene: Scene, target: int | None) -> tuple[int, str] | None:
    """`pint of cream in ml`, `tbsp kosher salt in grams`: a unit that is said without its number is one."""
    for place, item in enumerate(scene.items):
        if place == target or not ("<volume_unit>" in item or "<mass_unit>" in item):
            continue
        of_it = scene.after_is(place, "'of", "'de", "<salt>", "<ingredient>") is not None
        if of_it or (place == 0 and is_food(scene, place)):
            return place, _measure(item, 1.0)
    return None


def _of_two_units(scene: Scene, target: int) -> tuple[int, str] | None:
    """`pints to litres, 3`, `oz to g 12`: the one number of the line is of the other unit."""
    numbers = [item.tags["<number>"].value for _, item in scene.find("<number>")]
    units = [place for place, item in enumerate(scene.items) if place != target and target_unit(item)]
    if (
        len(numbers) != 1
        or len(units) != 1
        or not {"<mass_unit>", "<volume_unit>"} & scene.items[units[0]].tags.keys()
    ):
        return None
    return units[0], _measure(scene.items[units[0]], numbers[0])


def _measure(item: Item, value: float) -> str:
    """Make a unit that stands alone a measure of so many; gives the tag of its dimension."""
    tag, sizes = ("<volume>", LITRES) if "<volume_unit>" in item else ("<mass>", KG)
    unit = item.tags[f"{tag[:-1]}_unit>"]
    item.tags[tag] = Measure(value, unit, value * sizes[unit])
    return tag


def _salts_water(scene: Scene, source: int, target: int) -> bool:
    """`how many cups of kosher salt per gallon`: nobody measures salt in gallons, so they are of brine."""
    measure = scene.items[source].tags.get("<volume>")
    of = scene.after_is(target, "'of", "'de")
    salt = scene.after_is(target if of is None else of, "<salt>") is not None
    return salt and isinstance(measure, Measure) and measure.si >= _WATER_L


_WATER_L = 0.9


_BESIDE_A_UNIT = ("<soft>", "<break>", "<and_sign>", "<amend>")


def _lone_unit(scene: Scene) -> int | None:
    """`gas mark?`, `and grams`, `cucharadas mejor`: a line that is nothing but a unit."""
    rest = [place for place, item in enumerate(scene.items) if not any(tag in item for tag in _BESIDE_A_UNIT)]
    return rest[0] if len(rest) == 1 and target_unit(scene.items[rest[0]]) else None


def _corrects_a_reading(scene: Scene) -> bool:
    """`no wait, it's in fahrenheit, 140`, of a probe: the degrees are told and not asked for."""
    heats = ("reading.temperature_c", "oven.temperature_c")
    told = scene.has(*CORRECTS, "<denied_value>") and any(path in scene.before for path in heats)
    return told and "amount.value" not in scene.before and not scene.has("<convert>", "<how_much>", "<what_temp>")


def _turned_round(scene: Scene) -> bool:
    """`other way round`, `sorry, F to C`: the conversion of the talk from the one unit to the other."""
    had, wanted = scene.before.get("amount.unit"), scene.before.get("amount.target_unit")
    if had is None or wanted is None or scene.has(*_MEASURES, "<number>"):
        return False
    named = [(place, target_unit(item)) for place, item in enumerate(scene.items) if target_unit(item)]
    if scene.has("<other_way>") and not named:
        places, had, wanted = [place for place, _ in scene.find("<other_way>")], wanted, had
    elif len(named) == 2 and scene.before_is(named[1][0], "<in>", "'to", "'in", "'a", "'en") is not None:
        places, had, wanted = [place for place, _ in named], named[0][1], named[1][1]
    else:
        return False
    scene.put("amount.unit", had, "amount: turned round", *places)
    scene.put("amount.target_unit", wanted, "amount: turned round", *places)
    return True


def _lone_heat(scene: Scene, source: int) -> bool:
    """`425 fahrenheit`, typed alone: which roast would be guessed, the same heat in other degrees is not."""
    heat = scene.items[source].get("<temperature>")
    alone = all("<soft>" in item or "<break>" in item for at, item in enumerate(scene.items) if at != source)
    return heat is not None and not scene.talk and alone


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
    """`180 fan in fahrenheit`, `my oven only does celsius, what's 325`: a bare number is in the other degrees."""
    wanted = target_unit(scene.items[target])
    numbers = list(scene.find("<number>"))
    if wanted not in _OTHER_DEGREES or len(numbers) != 1 or scene.has(*_OF_A_DINNER):
        return False
    place, item = numbers[0]
    units = [at for at, one in enumerate(scene.items) if "<temperature_unit>" in one]
    if len(units) == 2:
        # "recipe is in fahrenheit, 325, my oven is celsius": the nearer one is the number's.
        target = max(units, key=lambda at: abs(at - place))
        wanted = target_unit(scene.items[target])
    other = _OTHER_DEGREES[wanted] or plausible_oven(item.tags["<number>"].value, scene.usual)[0]
    scene.put("amount.value", _number(item.tags["<number>"]), "amount: value", place)
    scene.put("amount.unit", other, "amount: the other degrees", place)
    return _put_target(scene, target)


def _put_counted(scene: Scene, place: int, tag: str) -> bool:
    """`how much does an egg weigh`, `cup of flour weighs what`."""
    value = scene.items[place].tags[tag]
    scene.put("amount.value", _number(value), "amount: value", place)
    scene.put("amount.unit", value.unit, "amount: unit", place)
    name, places = item_of(scene, place, None)
    scene.put("amount.item", name, "amount: item", *places)
    return True


def _counted(scene: Scene, target: int | None) -> tuple[int, str] | None:
    """`2 eggs in grams`, `how many grams is an onion`: a food that is counted."""
    if scene.has("<meal>", "<place>", "<probe>") or (
        target is not None and "<temperature_unit>" in scene.items[target]
    ):
        return None
    for place, item in enumerate(scene.items):
        counts = item.get("<number>") or item.get("<a>")
        if counts is not None and is_food(scene, place):
            item.tags["<pieces>"] = pieces(number(counts).value)
            return place, "<pieces>"
    return None


_OTHER_DEGREES = {"degF": "degC", "degC": "degF", "gas_mark": ""}


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
                "'does",
                "'uses",
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
        if _in_other_words(scene, place, source):
            return place
        if source is not None and scene.after_is(place, *_MEASURES) == source and _is_per(scene.items[source]):
            return place
        into = scene.after_is(place, "<in>", "'in", "'per", "'to", "<for>")
        if into is not None and source is not None and scene.after_is(into, *_MEASURES) == source:
            return place
    return None


def _is_per(item: Item) -> bool:
    """`grams per cup of flour`."""
    return item.words.startswith(("per ", "por ", "each ", "every "))


def _in_other_words(scene: Scene, place: int, source: int | None) -> bool:
    """`8 fl oz milk mL`, `recipe says 325F, mine is celsius`: another unit for the one measure of the line."""
    if not place and source is not None and not scene.has(*_ROASTS, "<meal>", "<brine>"):
        between = scene.items[place + 1 : source]
        soft = all(not item.tags.keys().isdisjoint(_BESIDE_A_UNIT[:2]) for item in between)
        if between and soft and not scene.has("<denied>"):
            # "grams please: 4 oz of cheese".
            return True
    if scene.has(*_OF_A_DINNER, "<brine>", "<vessel>"):
        return False
    if "<temperature_unit>" in scene.items[place]:
        said = scene.items[source].get("<temperature>") if source is not None else None
        bare = source is None and any(item.tags["<number>"].value >= _AN_OVEN for _, item in scene.find("<number>"))
        return bare or (said is not None and said.unit not in ("", scene.items[place].tags["<temperature_unit>"]))
    last = max((at for at, item in enumerate(scene.items) if "<break>" not in item), default=0)
    return source is not None and place == last > source + 1


_AN_OVEN = 100
