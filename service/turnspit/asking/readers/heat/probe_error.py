"""How far a probe is off, told beside what it reads in the meat: `36 in ice water, breast 167`."""

from __future__ import annotations

from turnspit.asking.scene import Scene

_ICE_WATER = ("ice water", "iced water", "icewater", "ice bath", "agua con hielo")
_MOST_OFF = 15
_REACH = 4
_CELSIUS_UP_TO, _ICE_F, _ICE_AT_MOST = 15, 32, 45


def read(scene: Scene) -> tuple[float, int] | None:
    """By how many of its degrees the probe reads too high, and the place of the number; None where nothing is told
    of it, or nothing was read in the meat. The test is no question then."""
    if not scene.has("<place>"):
        return None
    found = _in_ice(scene) or _off_by(scene)
    if found is None or not _in_meat(scene, found[1]):
        return None
    for item in scene.items:
        if item.get("<danger>") == "thermometer":
            del item.tags["<danger>"]
    scene.tags = {tag for item in scene.items for tag in item.tags}
    scene.used.add(found[1])
    return found


def _in_ice(scene: Scene) -> tuple[float, int] | None:
    """What it reads where it should read 0 C or 32 F."""
    ice = next((place for place in range(len(scene.items)) if _is_ice_water(scene, place)), None)
    if ice is None or not scene.has("<probe>", "<danger>"):
        return None
    near = scene.nearest(ice, "<number>", "<temperature>", reach=_REACH)
    if near is None:
        return None
    value: float = scene.items[near[1]].tags[near[2]].value
    if value > _ICE_AT_MOST:
        return None
    off = scene.after_is(near[1], "<off_by>")
    if off is not None:
        return _signed(scene, value, off), near[1]
    return value - (0 if value <= _CELSIUS_UP_TO else _ICE_F), near[1]


def _is_ice_water(scene: Scene, place: int) -> bool:
    """Ice and water, in one item or in several side by side; no ice chest and no juice."""
    words = " ".join(item.words for item in scene.items[place : place + 3])
    return words.startswith(_ICE_WATER) or scene.items[place].words.endswith(_ICE_WATER)


def _off_by(scene: Scene) -> tuple[float, int] | None:
    """`my thermometer reads 3 degrees too high`."""
    if scene.has("<oven>") or not scene.has("<probe>"):
        return None
    for place, item in scene.find("<off_by>"):
        at = scene.before_is(place, "<number>", "<temperature>")
        if at is not None and "<place>" not in item:
            tags = scene.items[at].tags
            value: float = tags["<temperature>" if "<temperature>" in tags else "<number>"].value
            if value <= _MOST_OFF:
                return _signed(scene, value, place), at
    return None


def _signed(scene: Scene, value: float, off: int) -> float:
    low = any(word in scene.items[off].words for word in ("low", "cold", "menos"))
    return -value if low else value


def _in_meat(scene: Scene, own: int) -> bool:
    """Whether another number stands beside a place."""
    return any(
        place != own and scene.nearest(place, "<place>", reach=3) is not None
        for tag in ("<number>", "<temperature>")
        for place, _ in scene.find(tag)
    )
