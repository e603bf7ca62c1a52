"""How long something stood, told by two hours: `on the counter from 10 to 2`, `in the car from 1 until now`."""

from __future__ import annotations

from dataclasses import replace

from turnspit.asking.readers.hours.clock import Clock, digits_clock
from turnspit.asking.scene import Scene

_FROM = frozenset(("from", "since", "between", "desde", "entre"))
_TO = ("'to", "'until", "'till", "'til", "'and", "'-", "'hasta", "'a", "'y")
_OUT = frozenset(("out", "outside", "fuera", "afuera"))
_NOW = frozenset(("now", "right now", "just now", "ahora"))
_AN_HOUR = ("<clock>", "<number>")
_BRINE = ("<brine>", "<brined>")


def read(scene: Scene) -> None:
    """Mark as out of the cold what was `out since 1`, and put `elapsed_h` where both hours are said."""
    for place, item in scene.find("<from_to>"):
        span = item.tags["<from_to>"]
        _out_before(scene, place)
        _put(scene, (span.high - span.low) % 12, place)
    _in_and_out(scene)
    for place, item in enumerate(scene.items):
        if item.words not in _FROM:
            continue
        first = scene.after_is(place, *_AN_HOUR)
        start = None if first is None else _clock(scene, first)
        if first is None or start is None:
            continue
        _out_before(scene, place)
        day = scene.after_is(first, "<when_day>")
        to = scene.after_is(first if day is None else day, *_TO)
        until = None if to is None else _until(scene, to)
        if to is None or until is None or (scene.has("<meal>") and not _of_brine(scene, place)):
            continue
        last, end = until
        _table_before(scene, place)
        spans = 24 if not start.is_open and not end.is_open else 12
        _put(scene, (end.minutes() - start.minutes()) / 60 % spans, first, last)


def _in_and_out(scene: Scene) -> None:
    """`in the brine at 9 pm, out at 9 am`: two hours, the later one behind `out`."""
    brine = next((place for place, item in enumerate(scene.items) if not item.tags.keys().isdisjoint(_BRINE)), None)
    hours = [place for place, item in enumerate(scene.items) if not item.tags.keys().isdisjoint(_AN_HOUR)]
    hours = [place for place in hours if brine is not None and place > brine]
    if brine is None or len(hours) < 2 or scene.has("<meal>"):
        return
    start, end = _clock(scene, hours[0]), _clock(scene, hours[1])
    between = " ".join(item.words for item in scene.items[hours[0] : hours[1]]).split()
    if start is not None and end is not None and not _OUT_OF.isdisjoint(between):
        spans = 12 if start.is_open or end.is_open else 24
        _put(scene, (end.minutes() - start.minutes()) / 60 % spans, hours[0], hours[1])


_OUT_OF = frozenset(("out", "saco", "sacar", "sacarlo", "sacamos", "fuera"))


def _of_brine(scene: Scene, place: int) -> bool:
    """`brine from 9pm to 9am`: hours in the brine."""
    near = scene.nearest(place, *_BRINE, reach=4)
    return near is not None and not scene.has("<out>")


def _put(scene: Scene, hours: float, *places: int) -> None:
    if hours and _of_brine(scene, places[0]):
        scene.put("brine.hours", round(hours, 4), "brine: from one hour to another", *places)
        return
    # "Open house from 2 to 6, how long can the ham sit out" asks before it stands.
    stood = scene.has("<out>") or any(item.get("<danger>") == "power_cut" for item in scene.items)
    if stood and hours and not scene.has("<how_long>"):
        scene.put("elapsed_h", round(hours, 4), "elapsed: from one hour to another", *places)


def _clock(scene: Scene, place: int) -> Clock | None:
    item = scene.items[place]
    found: Clock | None = item.tags["<clock>"] if "<clock>" in item else digits_clock(item.tags["<number>"])
    day = scene.after_is(place, "<when_day>")
    if found is not None and found.is_open and day is not None and scene.items[day].tags["<when_day>"].half:
        # "from 8 tonight until 8 tomorrow morning"
        return replace(found, half=scene.items[day].tags["<when_day>"].half)
    return found


def _until(scene: Scene, to: int) -> tuple[int, Clock] | None:
    """Where a span ends, and its hour; `until about now` ends when the line is typed."""
    place = scene.after_is(to, *_AN_HOUR)
    if place is not None:
        end = _clock(scene, place)
        return None if end is None else (place, end)
    soft = (at for far, at, item in scene.walk(to, 1) if not far and item.words in _NOW)
    now = next(soft, None)
    return None if now is None else (now, Clock(scene.now.hour, scene.now.minute, "", "24h"))


def _out_before(scene: Scene, place: int) -> None:
    """`chicken out since 1`: out of the cold, and not out of the oven."""
    before = place - 1
    if before >= 0 and scene.items[before].words in _OUT and not scene.has("<out>", "<oven>", "<temperature_read>"):
        _mark(scene, before)


def _table_before(scene: Scene, place: int) -> None:
    """`on the table from 12:30 till 3`: it stood there, and is not served then."""
    at = scene.before_is(place, "<on_table>")
    if at is not None:
        _mark(scene, at)
        scene.items[at].tags.pop("<serve>", None)
        if not any("<serve>" in item for item in scene.items):
            scene.tags.discard("<serve>")


def _mark(scene: Scene, place: int) -> None:
    scene.items[place].tags["<out>"] = "out"
    scene.tags.add("<out>")
