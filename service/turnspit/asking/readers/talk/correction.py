"""A line that corrects what was said before it: `oops, 18 not 16`, `sorry loin`, `i mean the breast`, `it's kilos`.

A value with its unit takes the place of the one that is held wherever it is said. Here stands what a correction
leaves out: a bare number takes the dimension and the unit of the value that it corrects, a unit the number, a cut
its animal, a place its reading, and an hour its day.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from turnspit.asking.grammar import Item
from turnspit.asking.readers.company.covers import Covers
from turnspit.asking.readers.heat.surroundings import surroundings
from turnspit.asking.readers.heat.temperature import Said, Temperature
from turnspit.asking.readers.hours.clock import Clock, digits_clock
from turnspit.asking.readers.hours.next_hour import at_clock, next_after
from turnspit.asking.readers.measures.measures import KG, LITRES
from turnspit.asking.readers.talk.bare import so_many
from turnspit.asking.readers.talk.held import MOMENTS, Held, held
from turnspit.asking.readers.talk.repair import CORRECTS, cut, far
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Number

# Words that tell which value a number corrects.
_CUES = {
    "serve_at": ("<meal>", "<serve>"),
    "start_at": ("<start>", "<started>"),
    "oven.temperature_c": ("<oven>", "<convection>"),
    "altitude_m": ("<altitude>",),
    "reading.temperature_c": ("<probe>",),
    "roast.mass_kg": ("<weigh>",),
    "covers": ("<people>", "<feeds>"),
    "scale.to": ("<feeds>", "<people>"),
    "brine.vessel_l": ("<vessel>",),
    "brine.water_l": ("<water>",),
}
# Beside these a number has a use of its own.
_TAKEN = ("<roast>", "<generic>", "<birds>", "<place>", "<people>", "<oven>", "<percent>", "<later>", "<mass>")
# Nobody is so far off: a number larger or smaller than this many times is no correction of the one before.
_FARTHEST = 8.0
# What the line just before said is corrected rather than what was said earlier, up to this much further off.
_LAST_SAID = 1.8
# A longer line is no mere correction.
_LONGEST = 16
_ASKS = ("<how_long>", "<how_big>", "<how_much>", "<what_temp>", "<when>", "<where>")
# In Spanish an hour has its article.
_NO_ARTICLE = 1.3
_DEGREES = ("degC", "degF")
# No setting is mistaken for one so many times as high, but for the other degrees: 180 and 356.
_OTHER_DEGREES = 2.5
_HOURS_ROUND = 12
# Minutes after midnight.
_FIRST_DINNER = 10 * 60


def is_slip(scene: Scene) -> bool:
    """Whether the line puts a slip right, and does not ask what another choice would make of it."""
    return scene.has(*CORRECTS, "<denied_value>") and not scene.has("<changes>") and _tells(scene)


def _corrects(scene: Scene) -> bool:
    """Whether the line sets a value of the talk anew: a slip, or `make it 18`."""
    return scene.has(*CORRECTS, "<denied_value>", "<changes>", "<strong_amend>") and _tells(scene)


def _tells(scene: Scene) -> bool:
    return scene.talk and not scene.has(*_ASKS) and "<can>" not in scene.items[0]


def read(scene: Scene) -> None:
    """Put what the line corrects of the talk."""
    _one_more(scene)
    if not _corrects(scene) or len(scene.items) > _LONGEST:
        return
    _children(scene)
    _in_degrees(scene)
    _number(scene)
    _clock(scene)
    _temperature(scene)
    _volume(scene)
    _unit(scene)
    _cut(scene)
    _place(scene)


def _children(scene: Scene) -> None:
    """`only 2 kids`, of 10 adults and 4 children: the grown-ups stay."""
    children, non_eaters = scene.apart
    for place, item in scene.find("<covers>", unused=True):
        said: Covers = item.tags["<covers>"]
        if children and said.count and said.count == said.kids:
            scene.put("covers", scene.before["covers"] - children + said.kids, "correction: the children", place)
            scene.hints["apart"] = (said.kids, non_eaters)


def _in_degrees(scene: Scene) -> None:
    """`it's in fahrenheit, 140`: the heat that is held and is nearest to it, in those degrees."""
    numbers = list(scene.find("<number>", unused=True))
    units = [place for place, item in enumerate(scene.items) if _unit_of(item) in _DEGREES]
    if len(numbers) != 1 or len(units) != 1 or scene.has("<temperature>"):
        return
    place, said = numbers[0][0], numbers[0][1].tags["<number>"].value
    unit = _unit_of(scene.items[units[0]])
    every = [one for one in held(scene) if one.unit in _DEGREES]
    of_heat = [one for one in every if one.unit == unit] or every
    one = min(of_heat, key=lambda one: far(said, one.number), default=None)
    if one is not None and far(said, one.number) <= _OTHER_DEGREES:
        scene.put(one.path, Held(one.path, said, unit).si(said), "correction: in degrees", place, units[0])
        if "units" in scene.before:
            scene.put("units", "us" if unit == "degF" else "metric", "correction: in degrees", units[0])


def _number(scene: Scene) -> None:
    if scene.has("<held_up>"):
        # "actually they're late, 7": an hour.
        return
    numbers = [(place, item.tags["<number>"]) for place, item in scene.find("<number>", unused=True)]
    numbers = [row for row in numbers if scene.after_is(row[0], *_TAKEN) is None]
    if len(numbers) != 1 or scene.nearest(numbers[0][0], "<place>", reach=2) is not None:
        return
    place, said = numbers[0]
    if so_many(scene, place, said):
        return
    one = _corrected(scene, place, said)
    if one is None:
        return
    if one.path in MOMENTS:
        clock = digits_clock(said)
        if clock is not None:
            _moment(scene, one.path, clock, place)
    elif one.path not in ("covers", "roast.count") or said.value == int(said.value):
        scene.put(one.path, one.si(said.value), "correction: the number", place)


def _corrected(scene: Scene, place: int, said: Number) -> Held | None:
    """The value that a bare number corrects: one that is named or denied, else the nearest of its size."""
    every = list(held(scene))
    if scene.before_is(place, "<hour_at>", "'at", "'@") is not None:
        heat = () if scene.before_is(place, "<hour_at>") is not None else _DEGREES
        every = [one for one in every if one.path in MOMENTS or one.unit in heat]
    elif _moves_to(scene, place) and _as_clock(said) is not None:
        every = [one for one in every if one.path in MOMENTS] or every
    cues = [path for path, tags in _CUES.items() if scene.has(*tags)]
    named = [one for one in every if one.path in cues]
    if cues and not named:
        # "oven at 350 rather", where no oven was spoken of: it is told anew.
        return None
    denied = [item.tags["<denied_value>"] for _, item in scene.find("<denied_value>")]
    for one in named or every:
        if any(isinstance(value, float) and far(value, one.number) <= 1.01 for value in denied):
            return one
    clock = _as_clock(said)
    last = scene.hints.get("last_said", ())
    ranked = []
    for one in named or every:
        value = said.value
        if one.path in MOMENTS:
            if clock is None:
                continue
            value = clock.hour + clock.minute / 60
        times = far(value, one.number)
        if one.path in MOMENTS and value < one.number:
            # One is an hour past twelve.
            times = min(times, far(value + _HOURS_ROUND, one.number))
        elif one.path in MOMENTS and _HOURS_ROUND <= value < _HOURS_ROUND + 1:
            # 12.30 is half an hour before one.
            times = min(times, far(value, one.number + _HOURS_ROUND))
        if one.path in MOMENTS and scene.language == "es" and len(every) > 1:
            times *= _NO_ARTICLE
        if times <= _FARTHEST:
            ranked.append((times / (_LAST_SAID if one.path in last else 1.0), one))
    return min(ranked, key=lambda row: row[0], default=(0.0, None))[1]


_MOVES = ("move", "push", "bump", "shift", "slide", "delay", "postpone", "bring", "pasa", "mueve")


def _moves_to(scene: Scene, place: int) -> bool:
    """`move it to 6`, whatever else is of its size."""
    to = scene.before_is(place, "'to", "'till", "'until")
    return to is not None and to > 0 and scene.items[to - 1].words.split()[0] in _MOVES


def _as_clock(said: Number) -> Clock | None:
    """`430` is an hour, `350` and `400` are an oven's."""
    clock = digits_clock(said)
    return clock if clock is not None and (said.value <= 24 or clock.minute in (15, 30, 45)) else None


def _clock(scene: Scene) -> None:
    """`sorry that was 7:30`: the hour that was said last, where no word tells which."""
    clocks = list(scene.find("<clock>", unused=True))
    times = [path for path in MOMENTS if path in scene.before]
    last = [path for path in times if path in scene.hints.get("last_said", ())]
    if len(clocks) != 1 or not times or scene.has("<temperature>"):
        return
    named = [path for path in times if scene.has(*_CUES.get(path, ()))]
    if any(scene.has(*_CUES.get(path, ())) for path in MOMENTS) and not named:
        return
    place, item = clocks[0]
    _moment(scene, (named or last or times)[0], item.tags["<clock>"], place)


def _moment(scene: Scene, path: str, clock: Clock, place: int) -> None:
    """Another hour of the day that is held: of the meal that is named, else the one nearest to the hour before."""
    before = datetime.fromisoformat(scene.before[path])
    meal = next((item.tags["<meal>"] for _, item in scene.find("<meal>")), "")
    if clock.style:
        scene.hints["clock"] = clock.style
    days = [item.tags["<when_day>"].on(scene.now) for _, item in scene.find("<when_day>", unused=True)]
    day = days[0] if days and days[0] is not None else before.date()
    if meal and clock.is_open:
        at = next_after(scene.now, clock, day, "", meal)
    else:
        hours = (clock.minutes("am"), clock.minutes("pm")) if clock.is_open else (clock.minutes(),)
        was = before.hour * 60 + before.minute
        # Who dines by day dines by day: noon is moved to six in the evening.
        early = path != "serve_at" or was < _FIRST_DINNER
        at = at_clock(scene.now, day, min(hours, key=lambda m: (not early and m < _FIRST_DINNER, abs(m - was))))
    if path == "serve_at" and at <= scene.now and not days:
        at += timedelta(hours=12)
    scene.put(path, at.isoformat(), "correction: the hour", place)


def _temperature(scene: Scene) -> None:
    """`i meant 180 F`: of the oven, the wish or the reading, whichever was said of the nearest number."""
    said = list(scene.find("<temperature>", unused=True))
    if len(said) != 1 or scene.has("<oven>", "<place>", "<probe>", "<target>", "<convection>"):
        return
    place, item = said[0]
    temperature: Temperature = item.tags["<temperature>"]
    if surroundings(scene, Said(place, temperature.value, temperature.unit, False)) or scene.has("<cold_place>"):
        return
    of_heat = [one for one in held(scene) if one.unit in _DEGREES]
    one = min(of_heat, key=lambda one: far(temperature.value, one.number), default=None)
    if one is not None and far(temperature.value, one.number) <= _OTHER_DEGREES:
        meant = Held(one.path, temperature.value, temperature.unit or one.unit)
        scene.put(one.path, meant.si(temperature.value), "correction: the temperature", place)


def _volume(scene: Scene) -> None:
    """`3 gallon, my mistake`: of the vessel or the water, whichever is held."""
    paths = [path for path in ("brine.vessel_l", "brine.water_l") if path in scene.before]
    if len(paths) != 1 or scene.has("<vessel>", "<water>"):
        return
    for place, item in scene.find("<volume>", unused=True):
        scene.put(paths[0], round(item.tags["<volume>"].si, 3), "correction: the volume", place)


def _unit(scene: Scene) -> None:
    """`it's kilos not pounds`: the number that was said, in the unit that was meant."""
    if scene.has("<number>", "<mass>", "<temperature>", "<volume>") or _asks_in_a_unit(scene):
        return
    named = [
        (place, unit)
        for place, item in enumerate(scene.items)
        if (unit := _unit_of(item)) and scene.before_is(place, "<denied>") is None
    ]
    for place, unit in reversed(named):
        for one in held(scene):
            table = KG if one.path == "roast.mass_kg" else LITRES if one.path.endswith("_l") else {}
            if unit in table or (unit in _DEGREES and one.unit in _DEGREES):
                meant = Held(one.path, one.number, unit)
                scene.put(one.path, meant.si(one.number), "correction: the unit", place)
                return


def _asks_in_a_unit(scene: Scene) -> bool:
    """`en libras mejor`, `in pounds rather`: how to tell it, and not what was meant."""
    slip = scene.has("<repair>", "<denied>", "<denied_value>", "<wrong>")
    units = [place for place, item in enumerate(scene.items) if _unit_of(item)]
    return not slip and any(scene.before_is(place, "'in", "'en") is not None for place in units)


def _unit_of(item: Item) -> str:
    unit = item.get("<mass_unit>") or item.get("<volume_unit>") or item.get("<temperature_unit>")
    return str(unit or ("degC" if "<c>" in item else ""))


def _cut(scene: Scene) -> None:
    """`sorry loin`, of pork."""
    kind = scene.before.get("roast.kind")
    read = "reading.temperature_c" in scene.before or scene.has("<number>", "<temperature>")
    if kind is None or scene.has("<roast>") or read:
        return
    for place, item in scene.find("<cut>"):
        named = cut(kind, item.tags["<cut>"])
        if named:
            scene.put("roast.kind", named, "correction: the cut", place)


def _place(scene: Scene) -> None:
    """`i mean the breast`: where the reading was taken."""
    if "reading.temperature_c" not in scene.before or scene.has("<number>", "<temperature>"):
        return
    places = list(scene.find("<place>", unused=True))
    if len(places) == 1:
        place, item = places[0]
        scene.put("reading.place", item.tags["<place>"], "correction: the place", place)


def _one_more(scene: Scene) -> None:
    """`a second turkey the same size`: one more than there were."""
    if not any(path.startswith("roast.") for path in scene.before):
        return
    for place, _ in scene.find("<another>"):
        scene.put("roast.count", scene.before.get("roast.count", 1) + 1, "correction: one more", place, keep=True)
