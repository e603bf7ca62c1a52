"""Readings in clauses of their own, with no probe beside them: `it's 140 now`, `coldest one 71, hottest 83`."""

from __future__ import annotations

from collections.abc import Callable

from turnspit.asking.readers.heat.temperature import Said
from turnspit.asking.readers.heat.wished_end import too_hot_for_meat
from turnspit.asking.scene import Scene

_NOW = ("now", "right now", "currently", "at the moment", "ahora")
_IT_IS = ("its", "its now", "is now", "now at", "climbed to")
_EXTREMES = ("coldest", "coolest", "lowest", "hottest", "warmest", "highest", "mas frio", "mas fria", "mas caliente")
_EXTREME_REACH = 5
_PULLED = ("pulled", "took", "came out", "out at", "out of", "taken out", "saque", "salio", "lo saque")


def read_so(scene: Scene, said: Said) -> bool:
    """Whether a bare number is read in the meat by such a clause."""
    return said.bare and said.core_like and any(clause(scene, said) for clause in _CLAUSES)


def _at_an_extreme(scene: Scene, said: Said) -> bool:
    """`coldest one 71, hottest 83`: of several that were probed."""
    before = " ".join(item.words for item in scene.items[max(0, said.place - _EXTREME_REACH) : said.place])
    other = scene.has("<oven>", "<cold_place>", "<how_long>")
    return not other and any(word in before for word in _EXTREMES)


def _it_is_now(scene: Scene, said: Said) -> bool:
    """`when will it hit 165, it's 140 now`."""
    behind, before = _beside(scene, said.place)
    asks = scene.has(
        "<probe>", "<place>", "<done>", "<when>", "<subject>", "<danger>", "<rate>", "<rest>", "<oven_left>"
    )
    return asks and (behind in _NOW or before[-1:] in ([word] for word in _NOW))


def _it_is(scene: Scene, said: Said) -> bool:
    """`took the stuffing out, it's 148`, `took it out at 125, now it's 131`."""
    _, before = _beside(scene, said.place)
    told = scene.has("<place>", "<done>", "'needs") or (before[:1] == ["now"] and scene.has("<probe>"))
    return before[-1:] == ["its"] and told and not scene.has("<oven>", "<mass>")


def _out_at(scene: Scene, said: Said) -> bool:
    """`out of the oven at 150`"""
    at = scene.before_is(said.place, "<at>")
    out = None if at is None else scene.before_is(at, "<oven_left>")
    return out is not None and scene.items[out].tags["<oven_left>"] is False


def _inside(scene: Scene, said: Said) -> bool:
    """`only 120 inside`"""
    return scene.after_is(said.place, "'inside", "'dentro") is not None


def _it_was(scene: Scene, said: Said) -> bool:
    """`was 130 half an hour ago, now 141`: both of them."""
    was = any(item.words == "was" for item in scene.items[max(0, said.place - 1) : said.place])
    tells = scene.has("<ago>") and any(item.words in ("was", "era") for item in scene.items)
    return tells and (was or is_latest(scene, said.place)) and not scene.has("<oven>", "<mass>")


def _asked_of_a_roast(scene: Scene, said: Said) -> bool:
    """`is my turkey done at 165`, `my pork loin is 63, ok`, `tenderloin 125 medium rare yet`, `155 pull?`."""
    if said.value < _RAW or not scene.has(*_ASKED):
        return False
    done = scene.before_is(said.place, "<target>")
    if done is not None:
        return scene.items[done].words == "done at" and scene.has("<can>")
    pulls = scene.after_is(said.place, "<target>")
    if pulls is not None and scene.items[pulls].words == "pull":
        return pulls + 1 == len(scene.items) or scene.items[pulls + 1].words == "?"
    verb = scene.items[said.place - 1].words if said.place else ""
    yet = scene.has("<doneness>") and scene.has("'yet")
    return (verb in ("is", "esta a") or yet) and scene.before_is(said.place, "<roast>", "<generic>") is not None


_RAW = 40
_ASKED = ("<safe>", "<ok>", "<done>", "<done_word>", "<doneness>", "<target>", "<rest>", "<carve>")


def _beside_the_oven(scene: Scene, said: Said) -> bool:
    """`bird's at 150 right now, oven 350`: the oven is told apart."""
    at = scene.before_is(said.place, "<at>")
    roast = at is not None and scene.before_is(at, "<roast>", "<generic>") is not None
    if not roast or said.value < _RAW or scene.has("<mass>", "<can>"):
        return False
    others = (place for place, _ in scene.find("<number>") if place != said.place)
    return any(scene.before_is(place, "<oven>", "<cook>", "<oven_left>") is not None for place in others)


def _in_progress(scene: Scene, said: Said) -> bool:
    """`165 already`, `just checked, 147`, `hace una hora 50, ahora 58`, `beef at 49 resting`."""
    counted = scene.after_is(said.place, *_COUNTED) is not None or scene.before_is(said.place, "<for>") is not None
    other_talk = scene.talk and "reading.temperature_c" not in scene.before
    ordered = scene.has("<mass>", "<how_long>") and too_hot_for_meat(scene, said)
    if counted or other_talk or ordered or said.value < _RAW or scene.has("<recipe>", "<scale>"):
        return False
    meat = said.value >= _HOTTER_THAN_A_COUNT or scene.language == "es" or scene.has(*_OF_MEAT)
    close = scene.nearest(said.place, *_CLOSE_STATES, reach=2.5) is not None
    return meat and (close or scene.nearest(said.place, *_STATES, reach=4.5) is not None or scene.has("<oven_left>"))


_COUNTED = ("<roast>", "<generic>", "<people>", "<time_unit>", "<mass_unit>", "<duration>", "'dollars")
_OF_MEAT = ("<roast>", "<generic>", "<place>", "<probe>", "<done>")
_CLOSE_STATES = ("'already", "'ya", "'now", "'only", "'been")
_STATES = ("'ahora", "'checked", "<rest>", "<ago>")
_HOTTER_THAN_A_COUNT = 100


def _of_several(scene: Scene, said: Said) -> bool:
    """`three turkeys: 155, 162, 168`, `two birds, 152 and 160`"""
    if scene.has(*_COUNTS_OR_WISHES):
        return False
    alike = [
        place
        for place in row(scene, said.place)
        if abs(scene.items[place].tags["<number>"].value - said.value) <= _OF_ONE_OVEN_K
    ]
    two = said.value >= _HOT_F and scene.has("<roast>", "<generic>", "<probe>")
    return len(alike) >= (2 if two else 3)


_COUNTS = "<mass> <oven> <covers> <people> <meal> <recipe> <what_temp> <can> <need> <how_long>"
_COUNTS_OR_WISHES = tuple(_COUNTS.split())
_OF_ONE_OVEN_K, _HOT_F = 25, 120


def row(scene: Scene, place: int) -> list[int]:
    """The places of the bare numbers that stand in a row with the one at a place: `155, 162 and 168`, `58 59 61`."""
    found = [place]
    for beside, step in ((scene.before_is, -1), (scene.after_is, 1)):
        at = place
        while (sign := beside(at, "<number>", *_IN_A_ROW)) is not None:
            at = sign if "<number>" in scene.items[sign] else sign + step
            if not 0 <= at < len(scene.items) or "<number>" not in scene.items[at]:
                break
            found.append(at)
    return found


_IN_A_ROW = ("<and_sign>", "',", "'/")
_CLAUSES: tuple[Callable[[Scene, Said], bool], ...] = (
    _inside,
    _at_an_extreme,
    _it_is_now,
    _it_is,
    _it_was,
    _out_at,
    _asked_of_a_roast,
    _beside_the_oven,
    _in_progress,
    _of_several,
)


def pulled(scene: Scene) -> bool:
    """Whether it was taken out at one of the readings: `pulled her at 157, tented, now 162`."""
    return any(item.words.startswith(_PULLED) for item in scene.items)


def is_latest(scene: Scene, place: int) -> bool:
    """Whether "now" stands beside the reading at a place."""
    behind, before = _beside(scene, place)
    return behind in _NOW or any(
        words in (*_NOW, *_IT_IS) or words.startswith(("now ", "ahora ")) for words in before
    )


def _beside(scene: Scene, place: int) -> tuple[str, list[str]]:
    """The words just behind a place, and those of the two items before it."""
    behind = scene.items[place + 1].words if place + 1 < len(scene.items) else ""
    return behind, [item.words for item in scene.items[max(0, place - 2) : place]]
