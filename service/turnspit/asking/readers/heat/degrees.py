"""The oven's setting, the wished end, and the readings: what each temperature is for is told in `temperature_use`."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from turnspit.asking.readers.heat import probe_error
from turnspit.asking.readers.heat.course import course
from turnspit.asking.readers.heat.free_clauses import is_latest, pulled
from turnspit.asking.readers.heat.oven import setting
from turnspit.asking.readers.heat.places import places_of
from turnspit.asking.readers.heat.temperature import Said, Temperature, plausible_cold, plausible_core, plausible_oven
from turnspit.asking.readers.heat.temperature_use import danger, temperatures, use
from turnspit.asking.scene import Scene


def read(scene: Scene) -> None:
    """Put `oven.temperature_c`, `roast.target_c`, `reading` and `readings`."""
    _other_unit(scene)
    _lone_number(scene)
    readings: list[Said] = []
    ovens: list[Said] = []
    error = probe_error.read(scene)
    found = temperatures(scene)
    uses = [use(scene, said) for said in found]
    for said, first in zip(found, uses, strict=True):
        # A wished end takes the name of the core away: `at 225 to 128 internal` probes nothing.
        match use(scene, said) if said.oven_like and first != "target" and "target" in uses else first:
            case "reading":
                readings.append(said)
            case "oven":
                ovens.append(said)
            case "target":
                celsius = round(said.celsius(plausible_core(said.value, scene.usual)), 2)
                scene.put("roast.target_c", celsius, "temperature: cook to", said.place)
    if ovens:
        _put_oven(scene, setting(scene, ovens))
        scene.used.update(said.place for said in ovens)
    else:
        _turned_up(scene)
    if not readings:
        _cooled(scene)
    _put_readings(scene, readings if error is None else [_corrected(said, error[0]) for said in readings])
    held = "reading.temperature_c" in scene.before
    for place, item in scene.find("<oven_left>"):
        if held or (readings and not scene.has("<cold_place>")):
            scene.put("reading.oven_left_on", item.tags["<oven_left>"], "oven left on", place)
    if held and not readings and "reading.place" not in scene.before and len(scene.items) <= _SHORT:
        for place, item in scene.find("<place>"):
            scene.put("reading.place", item.tags["<place>"], "reading: its place", place)


# `in the thigh` after a reading: a line up to so many items tells of no more than its place.
_SHORT = 4


def _other_unit(scene: Scene) -> None:
    """`celsius` alone, when it was asked in which degrees the oven is set."""
    held = scene.before.get("oven.temperature_c")
    if scene.hints.get("pending") != "oven.temperature_c" or held is None:
        return
    for place, item in enumerate(scene.items):
        unit = "degC" if "<c>" in item else item.get("<temperature_unit>")
        if unit is None:
            continue
        # A setting is a whole number in the unit in which it was said.
        value = held if abs(held - round(held)) < 0.01 else round(held * 1.8 + 32)
        scene.put("oven.temperature_c", round(Temperature(value, unit).celsius, 2), f"oven: {unit}", place)


def _lone_number(scene: Scene) -> None:
    """`in the breast` after a bare `150` that nothing could be made of: it was a reading."""
    lone, places = scene.hints.get("lone"), list(scene.find("<place>"))
    if lone is None or len(places) != 1 or any("<number>" in item for item in scene.items):
        return
    place, item = places[0]
    celsius = Temperature(lone, plausible_core(lone)).celsius
    scene.put("reading.temperature_c", round(celsius, 2), "reading: the number before", place)
    scene.put("reading.place", item.tags["<place>"], "reading: its place", place)


def _cooled(scene: Scene) -> None:
    """`took 3 hours to get from 135 to 70`: how cool it has become."""
    for place, item in scene.find("<from_to>", unused=True):
        span = item.tags["<from_to>"]
        if scene.has("<duration>") and span.high < span.low and span.low >= _HOT_C:
            celsius = Temperature(span.high, "degF" if span.low > _BOILING_C else "degC").celsius
            scene.put("reading.temperature_c", round(celsius, 2), "reading: cooled to", place, keep=True)
            item.tags.setdefault("<danger>", "cooling")
            scene.tags.add("<danger>")
        elif scene.has("<place>", "<probe>") and all(
            _COOLEST_ROAST <= end <= _HOTTEST_ROAST for end in (span.low, span.high)
        ):
            # "jumped from 140 to 155, breast", "temp dropped from 150 to 145".
            celsius = Temperature(span.high, plausible_core(span.high)).celsius
            scene.put("reading.temperature_c", round(celsius, 2), "reading: risen to", place, keep=True)
            for at, found in scene.find("<place>"):
                scene.put("reading.place", found.tags["<place>"], "reading: its place", at)


def _turned_up(scene: Scene) -> None:
    """`went from 325 to 375 at noon`: what the oven is set to since."""
    for place, item in scene.find("<from_to>", unused=True):
        span = item.tags["<from_to>"]
        if min(span.low, span.high) > _HOTTEST_ROAST and not scene.has("<place>", "<probe>"):
            _put_oven(scene, Said(place, span.high, "", True))


_HOT_C, _BOILING_C = 55, 100
_COOLEST_ROAST, _HOTTEST_ROAST = 30, 212


def _corrected(said: Said, error: float) -> Said:
    """What it would read on a probe that is not off: of the meat, in the degrees of the test."""
    return replace(said, value=said.value - error)


def _put_oven(scene: Scene, said: Said) -> None:
    unit, guessed = _oven_unit(scene, said)
    scene.put("oven.temperature_c", round(said.celsius(unit), 2), f"oven: {unit}", said.place)
    if guessed:
        scene.ambiguous = scene.ambiguous or "oven.temperature_c"
        scene.hints["ambiguous_value"] = said.value


def _oven_unit(scene: Scene, said: Said) -> tuple[str, bool]:
    """The unit of an oven's setting, and whether it is a guess that must be asked back."""
    if said.unit:
        return said.unit, False
    if scene.usual != "metric" and _low_on_purpose(scene, said):
        return "degF", False
    unit, guessed = plausible_oven(said.value, scene.usual)
    # Nobody roasts all night at 200 C.
    long = any(item.tags["<duration>"].hours >= _ALL_NIGHT_H for _, item in scene.find("<duration>"))
    return (
        ("degF", False)
        if said.value <= _LOW_F and (long or scene.has("<overnight>")) and guessed
        else (unit, guessed)
    )


_ALL_NIGHT_H = 8
_LOW_F = 275
# In Spanish a lower one is in Celsius.
_LOWEST_F = 130
# Nothing is kept warm at less.
_HOT_F = 120


def _low_on_purpose(scene: Scene, said: Said) -> bool:
    """What keeps a roast warm at 170, or is feared for at 180, is an oven in Fahrenheit."""
    celsius = scene.language == "es" and said.value <= _LOWEST_F
    feared = (
        not celsius and said.value <= 200 and scene.has("<start>", "<overnight>", "'leave") and scene.has("<safe>")
    )
    return feared or (_HOT_F <= said.value <= 200 and danger(scene) == "warm_holding")


def _put_readings(scene: Scene, readings: list[Said]) -> None:
    if not readings:
        return
    found = []
    places = places_of(scene, readings)
    if len(places) == 2 and places[1] is None and is_latest(scene, readings[1].place):
        # "breast 140 an hour ago, 152 now"
        places[1] = places[0]
    units = _one_unit(readings, [_reading_unit(scene, *row) for row in zip(readings, places, strict=True)])
    for said, place, unit in zip(readings, places, units, strict=True):
        one: dict[str, Any] = {"temperature_c": round(said.celsius(unit), 2)}
        if place is not None:
            item = scene.items[place]
            one["place"] = item.tags.get("<turkey_place>") or item.tags["<place>"]
            scene.used.add(place)
        elif len(readings) > 1 and "reading.place" in scene.before:
            one["place"] = scene.before["reading.place"]
        found.append((one, said.place, place))
        scene.items[said.place].tags["<temperature_read>"] = True
        scene.tags.add("<temperature_read>")
    if len(found) == 1 and found[0][2] is None and scene.has("<leftovers>"):
        found[0][0]["place"] = "leftovers"
    # What it reads now decides over what it read there before, or when it was pulled; else the coolest.
    one_place = len({row[2] for row in found} - {None}) < 2
    latest = [row for row in found if is_latest(scene, row[1])] if one_place or pulled(scene) else []
    if one_place:
        latest = latest[-1:]
    coldest, at, place = min(latest or found, key=lambda row: float(row[0]["temperature_c"]))
    hours = course(scene)
    if hours and all(said.place in hours for said in readings):
        # The last tells how it stands; the hours of those before are past.
        scene.used.update(hours[said.place] for said in readings[:-1])
        found = found[-1:]
        coldest, at, place = found[0]
    for name, value in coldest.items():
        scene.put(f"reading.{name}", value, "reading: temperature in place", at, at if place is None else place)
    if len(found) > 1:
        scene.put("readings", [row[0] for row in found], "reading: several", *(row[1] for row in found))


def _one_unit(readings: list[Said], units: list[str]) -> list[str]:
    """Bare readings of one line have one unit: 83 beside 71 is Celsius, 62 beside 150 Fahrenheit."""
    bare = [said.value for said in readings if not said.unit]
    if min(bare, default=0) < _RAW or len(set(units)) < 2:
        return units
    return ["degC" if max(bare) <= _HOTTEST_C else "degF"] * len(units)


_RAW, _HOTTEST_C = 38, 95


_OF_COLD_FOOD = ("thermometer", "receiving", "power_cut")


def _reading_unit(scene: Scene, said: Said, place: int | None) -> str:
    cold = place is None and (
        scene.has("<cold_place>", "<out>", "<brine>", "<vessel>") or danger(scene) in _OF_COLD_FOOD
    )
    usual = "metric" if scene.language == "es" and scene.usual is None else scene.usual
    return plausible_cold(said.value, scene.usual) if cold else plausible_core(said.value, usual)
