"""An oven's setting for another kind of oven: `180 fan in a normal oven`, `fan oven for 350F`."""

from __future__ import annotations

from turnspit.asking.readers.heat.temperature import Temperature, plausible_oven
from turnspit.asking.scene import Scene

_OF_A_DINNER = ("<roast>", "<generic>", "<mass>", "<meal>", "<covers>", "<place>", "<clock>", "<how_long>")
_ASKS = ("<convert>", "<recipe>", "<what_temp>", "<oven_temp>", "<how_much>", "'what", "'whats", "'que")
_INTO = {"en": ("'to", "'into", "'in", "<for>"), "es": ("'a", "'en", "<for>")}


def read(scene: Scene) -> bool:
    """Put the setting as an amount and the oven it is wanted for as `oven.convection`; tells whether it did."""
    if _of_the_talk(scene):
        return True
    settings = list(scene.find("<temperature>")) or [
        row for row in scene.find("<number>") if _COOLEST <= row[1].tags["<number>"].value <= _HOTTEST
    ]
    fans = [(place, item.tags["<convection>"]) for place, item in scene.find("<convection>")]
    if len(settings) != 1 or not fans or scene.has(*_OF_A_DINNER):
        return False
    place, item = settings[0]
    of_the_setting = next((row for row in fans if row[0] in _beside(scene, place)), None)
    wanted = next((row for row in fans if row != of_the_setting), None)
    into = _INTO[scene.language]
    led = any(scene.before_is(row[0], *into) is not None for row in fans) or scene.before_is(place, *into) is not None
    in_a_unit = any("<temperature_unit>" in item or "<gas>" in item for item in scene.items)
    if len(fans) == 1 and (in_a_unit or not (scene.has(*_ASKS) or led)):
        return False
    value = item.get("<temperature>") or Temperature(item.tags["<number>"].value, "")
    unit = value.unit or plausible_oven(value.value, scene.usual)[0]
    at, convection = wanted if wanted is not None else (fans[0][0], not fans[0][1])
    scene.put("amount.value", round(value.value, 6), "amount: an oven's setting", place)
    scene.put("amount.unit", unit, "amount: unit", place)
    scene.put("oven.convection", convection, "oven: the kind it is wanted for", at)
    return True


def _of_the_talk(scene: Scene) -> bool:
    """`fan?`, after `350F to C`."""
    fans = list(scene.find("<convection>"))
    of_an_oven = scene.before.get("amount.unit") in ("degC", "degF", "gas_mark")
    goes_on = of_an_oven and scene.hints.get("talk_of") == "convert" and len(scene.items) <= _A_WORD
    if not goes_on or len(fans) != 1 or scene.has("<number>"):
        return False
    scene.put("oven.convection", fans[0][1].tags["<convection>"], "oven: the kind it is wanted for", fans[0][0])
    return True


# `and with a fan?`: a line up to so many items says no more.
_A_WORD = 5
_COOLEST, _HOTTEST = 100, 600


def _beside(scene: Scene, place: int) -> tuple[int | None, int | None]:
    """Right behind the setting (`180 fan`), or right before it (`fan 180`)."""
    return scene.after_is(place, "<convection>"), scene.before_is(place, "<convection>")
