"""The place of each reading: `60 in the breast, thigh 70`, `74 en la pechuga, 76 en el muslo`."""

from __future__ import annotations

from turnspit.asking.readers.heat.course import course
from turnspit.asking.readers.heat.free_clauses import row
from turnspit.asking.readers.heat.temperature import Said
from turnspit.asking.readers.heat.wished_end import is_red
from turnspit.asking.scene import Scene


def is_stuffed_bird(scene: Scene, place: int) -> bool:
    """`pavo relleno: 60 en la pechuga`: what the bird is like, and no place in it."""
    if "<stuffed>" not in scene.items[place]:
        return False
    weighed = scene.before_is(place, "<mass>")
    bird = scene.before_is(place if weighed is None else weighed, "<roast>", "<generic>")
    return bird is not None and all(item.words != ":" for item in scene.items[bird:place])


def in_a_row_with_a_place(scene: Scene, place: int) -> bool:
    """Whether one of the numbers that stand in a row with this one has a place beside it."""
    return any(scene.nearest(at, "<place>", reach=2) is not None for at in row(scene, place) if at != place)


def places_of(scene: Scene, readings: list[Said]) -> list[int | None]:
    """The place of each reading: all before ("breast 150, thigh 165") or all behind ("150 in the breast")."""
    places = [
        p
        for p, item in enumerate(scene.items)
        if ("<place>" in item or "<turkey_place>" in item) and not is_stuffed_bird(scene, p)
    ]
    if is_red(scene):
        # "lamb leg 54 in the centre": its leg is the roast.
        places = [p for p in places if scene.items[p].get("<place>") != "thigh"] or places
    # "the stuffing is 149 in the middle": which middle is said.
    places = [p for p in places if scene.items[p].get("<place>") != "centre"] or places
    if not places:
        return [None] * len(readings)
    if len(places) == 1 and all(said.place in course(scene) for said in readings):
        return [places[0]] * len(readings)
    if (
        len(places) == len(readings)
        and readings[-1].place in row(scene, readings[0].place)
        and readings[-1].place < places[0]
    ):
        # "139 and 148 in breast and thigh"
        return list(places)
    named = {said.place: _in_a_place(scene, said, places) for said in readings}
    found: dict[int, int | None] = {at: place for at, place in named.items() if place is not None}
    rest = [said for said in readings if said.place not in found]
    free = [place for place in places if place not in found.values()]
    if free and rest:
        found |= zip((said.place for said in rest), _beside_or_in_turn(scene, rest, free), strict=True)
    for one, other in zip(reversed(readings[:-1]), reversed(readings[1:]), strict=True):
        if not free and one.place not in found and other.place in named and _goes_on(scene, one.place, other.place):
            # "62 and 61 in the breast"
            found[one.place] = found.get(other.place)
    return [found.get(said.place) for said in readings]


def _in_a_place(scene: Scene, said: Said, places: list[int]) -> int | None:
    """The place that follows a reading with its preposition: `60 en la pechuga`; not so in `breast 150 in 20 min`."""
    for at in range(said.place + 1, len(scene.items)):
        words = scene.items[at].words
        if at in places:
            led = words.startswith(_IN) or scene.before_is(at, *_IN_WORDS) is not None
            return at if led and scene.before_is(said.place, "<place>") is None else None
        if "<soft>" not in scene.items[at] and f"{words} " not in _IN:
            return None
    return None


_IN = ("in ", "en ", "at ")
_IN_WORDS = tuple(f"'{word.strip()}" for word in _IN)


def _beside_or_in_turn(scene: Scene, readings: list[Said], places: list[int]) -> list[int | None]:
    leads = places[0] < readings[0].place
    beside = [_led_by(scene, said, places) for said in readings]
    if len(places) < len(readings) and any(place is not None for place in beside):
        # "150 and the thigh 155": the thigh is the second one's; "breasts 62 61 and 58" are all breasts.
        for at in range(1, len(readings)):
            if beside[at] is None and _goes_on(scene, readings[at - 1].place, readings[at].place):
                beside[at] = beside[at - 1]
        return beside
    found: list[int | None] = []
    for said in readings:
        before = [p for p in places if p < said.place and p not in found]
        behind = [p for p in places if p > said.place and p not in found]
        choice = (before[-1:] or behind[:1]) if leads else (behind[:1] or before[-1:])
        found.append(choice[0] if choice else None)
    return found


def _led_by(scene: Scene, said: Said, places: list[int]) -> int | None:
    """The place that stands before a reading, with a word between at most: `thigh all over 74`."""
    for far, at, item in scene.walk(said.place, -1):
        if far > _A_WORD_BETWEEN or any(tag in item for tag in _PARTS_READINGS):
            return None
        if at in places:
            return at
    return None


_A_WORD_BETWEEN = 2
_PARTS_READINGS = ("<number>", "<temperature>", "<and_sign>", "<break>")


def _goes_on(scene: Scene, one: int, other: int) -> bool:
    """Whether nothing but commas and `and` stands between two readings."""
    between = scene.items[one + 1 : other]
    return all(item.words in (",", "/") or "<and_sign>" in item or "<soft>" in item for item in between)
