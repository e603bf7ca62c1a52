"""What each temperature of the line is for: the oven, a probe reading, or the end that is wished.

Precedence: a place or probe word beside it makes a reading, an oven word a setting, "cook to" a target; else its
height tells.
"""

from __future__ import annotations

from dataclasses import dataclass

from turnspit.asking.readers.bare import is_spoken_hour
from turnspit.asking.readers.moment import bare_clock
from turnspit.asking.readers.temperature import Temperature, plausible_cold, plausible_core, plausible_oven
from turnspit.asking.scene import Scene

_OVEN_FROM_C = 100.0
_READ_AT_MOST = 220
_WILL_REACH = ("hit", "reach", "reached", "get to", "up to")
# What a temperature is for that was asked for.
_PENDING = {"oven.temperature_c": "oven", "reading.temperature_c": "reading", "roast.target_c": "target"}
# Words that ask about, or fear for, what was read on a probe.
_ASKED_OF = ("<safe>", "<ok>", "<done>", "<done_word>", "<cold_place>", "<danger>")


@dataclass(frozen=True, slots=True)
class _Said:
    place: int
    value: float
    unit: str
    bare: bool


def read(scene: Scene) -> None:
    """Put `oven.temperature_c`, `roast.target_c`, `reading` and `readings`."""
    readings: list[_Said] = []
    _other_unit(scene)
    for said in _said(scene):
        use = _use(scene, said)
        if use == "reading":
            readings.append(said)
        elif use == "oven":
            _put_oven(scene, said)
        elif use == "target":
            unit = said.unit or plausible_core(said.value)
            celsius = Temperature(said.value, unit).celsius
            scene.put("roast.target_c", round(celsius, 2), "temperature: cook to", said.place)
    _put_readings(scene, readings)
    for place, item in scene.find("<oven_left>"):
        if readings:
            scene.put("reading.oven_left_on", item.tags["<oven_left>"], "oven left on", place)


def _roasts_low(scene: Scene) -> bool:
    """Whether so low a temperature is an oven's: something is roasted or started at it."""
    return scene.has("<cook>", "<start>", "<overnight>") and not scene.has("<place>", "<probe>", "<rest>", "<out>")


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


def _said(scene: Scene) -> list[_Said]:
    found = []
    for place, item in enumerate(scene.items):
        if place in scene.used:
            continue
        if "<temperature>" in item:
            value: Temperature = item.tags["<temperature>"]
            found.append(_Said(place, value.value, value.unit, False))
        elif "<number>" in item and 30 <= item.tags["<number>"].value <= (5000 if scene.has("<place>") else 650):
            if bare_clock(scene, place) is not None or is_spoken_hour(scene, item.tags["<number>"]):
                continue
            found.append(_Said(place, item.tags["<number>"].value, "", True))
    return found


def _use(scene: Scene, said: _Said) -> str:
    pending = _PENDING.get(scene.hints.get("pending", ""))
    if pending is not None:
        return pending
    if said.unit == "gas_mark":
        return "oven"
    oven = scene.before_is(said.place, "<oven>", "<convection>", "'to", "<at>", "'a")
    if (
        oven is not None
        and ("<oven>" in scene.items[oven] or scene.before_is(oven, "<oven>") is not None)
        and _oven_like(said)
    ):
        return "oven"
    target = scene.before_is(said.place, "<target>")
    to = scene.before_is(said.place, "'to")
    if to is not None and scene.before_is(to, "<rest>") is not None:
        return ""
    if target is not None or (scene.before_is(said.place, "'to") is not None and _core_like(said)):
        return "target" if _core_like(said) else "oven"
    places = scene.nearest(said.place, "<place>", "<probe>", "<turkey_place>", reach=3.5)
    ovens = scene.nearest(said.place, "<oven>", "<convection>", reach=4.5)
    if ovens and (not places or ovens[0] <= places[0]) and _oven_like(said):
        return "oven"
    if places and scene.has("<when>") and scene.items[places[1]].words in _WILL_REACH:
        return "target"
    if places and (said.value <= _READ_AT_MOST or places[0] <= 2):
        return "reading"
    if said.unit != "degC" and 170 <= said.value <= 250 and _roasts_low(scene):
        return "oven"
    if said.bare:
        at = scene.before_is(said.place, "<at>", "<start>")
        if _danger(scene) == "warm_holding" and at is not None and not scene.has("<oven>"):
            return "reading"
        if scene.has("<overnight>") and 180 <= said.value <= 300:
            return "oven"
        if (
            at is not None
            and 90 <= said.value <= _READ_AT_MOST
            and scene.has("<subject>")
            and not scene.has("<roast>", "<place>")
        ):
            return "reading"
        if at is not None and said.value >= 140 and not scene.has("<place>", "<probe>", *_ASKED_OF):
            return "oven" if said.value > _READ_AT_MOST or said.value % 5 == 0 else ""
        if said.value >= 250 and said.value % 5 == 0:
            return "oven"
        if at is not None and said.value <= _READ_AT_MOST and scene.has(*_ASKED_OF):
            return "reading"
        return "reading" if _asked_of(scene, said) else ""
    if not said.unit and said.value > _READ_AT_MOST / 2:
        return "reading" if said.value <= _READ_AT_MOST and scene.has("<place>", "<probe>", *_ASKED_OF) else "oven"
    return "oven" if Temperature(said.value, said.unit or "degC").celsius >= _OVEN_FROM_C else "reading"


def _asked_of(scene: Scene, said: _Said) -> bool:
    """A bare number that is asked about ("is 160 ok") or follows a reading in the talk ("now 145")."""
    if said.value > _READ_AT_MOST:
        return False
    return scene.nearest(said.place, *_ASKED_OF, reach=3.5) is not None or "reading.temperature_c" in scene.before


def _core_like(said: _Said) -> bool:
    unit = said.unit or plausible_core(said.value)
    return 35 <= Temperature(said.value, unit).celsius <= 99


def _oven_like(said: _Said) -> bool:
    return said.value >= 100 or said.unit == "degC"


def _put_oven(scene: Scene, said: _Said) -> None:
    unit, guessed = (said.unit, False) if said.unit else plausible_oven(said.value, scene.usual)
    scene.put("oven.temperature_c", round(Temperature(said.value, unit).celsius, 2), f"oven: {unit}", said.place)
    if not said.unit and scene.usual != "metric" and said.value <= 200 and _danger(scene) == "warm_holding":
        unit, guessed = "degF", False
        scene.values["oven.temperature_c"] = round(Temperature(said.value, unit).celsius, 2)
    if (
        not said.unit
        and said.value < 200
        and scene.usual != "metric"
        and scene.has("<start>", "<overnight>")
        and scene.has("<safe>")
    ):
        # What is feared for at 180 is an oven at 180 F.
        unit, guessed = "degF", False
        scene.values["oven.temperature_c"] = round(Temperature(said.value, unit).celsius, 2)
    if guessed and scene.has("<overnight>"):
        # Nobody roasts all night at 200 C.
        unit, guessed = "degF", False
        scene.values["oven.temperature_c"] = round(Temperature(said.value, unit).celsius, 2)
    if guessed:
        scene.ambiguous = scene.ambiguous or "oven.temperature_c"
        scene.hints["ambiguous_value"] = said.value
    elif not said.unit:
        scene.hints["unit_taken"] = unit


def _danger(scene: Scene) -> str:
    return next((str(item.tags["<danger>"]) for _, item in scene.find("<danger>")), "")


def _put_readings(scene: Scene, readings: list[_Said]) -> None:
    if not readings:
        return
    found = []
    for said, place in zip(readings, _places(scene, readings), strict=True):
        cold = scene.has("<cold_place>", "<out>") and place is None
        cold = cold or _danger(scene) == "thermometer"
        unit = said.unit or (plausible_cold(said.value) if cold else plausible_core(said.value))
        one: dict[str, float | str] = {"temperature_c": round(Temperature(said.value, unit).celsius, 2)}
        if place is not None:
            item = scene.items[place]
            one["place"] = item.tags.get("<turkey_place>") or item.tags["<place>"]
            scene.used.add(place)
        found.append((one, said.place, place))
        scene.items[said.place].tags["<temperature_read>"] = True
        scene.tags.add("<temperature_read>")
    coldest = min(found, key=lambda row: float(row[0]["temperature_c"]))
    for name, value in coldest[0].items():
        places = [coldest[1]] if coldest[2] is None else [coldest[1], coldest[2]]
        scene.put(f"reading.{name}", value, "reading: temperature in place", *places)
    if len(found) > 1:
        scene.put("readings", [row[0] for row in found], "reading: several", *(row[1] for row in found))


def _places(scene: Scene, readings: list[_Said]) -> list[int | None]:
    """The place of each reading: all before ("breast 150, thigh 165") or all behind ("150 in the breast")."""
    places = [p for p, item in enumerate(scene.items) if "<place>" in item or "<turkey_place>" in item]
    if not places:
        return [None] * len(readings)
    leads = places[0] < readings[0].place
    found: list[int | None] = []
    for said in readings:
        before = [p for p in places if p < said.place and p not in found]
        behind = [p for p in places if p > said.place and p not in found]
        choice = (before[-1:] or behind[:1]) if leads else (behind[:1] or before[-1:])
        found.append(choice[0] if choice else None)
    return found
