"""Readings in clauses of their own, with no probe beside them: `it's 140 now`, `coldest one 71, hottest 83`."""

from __future__ import annotations

from collections.abc import Callable

from turnspit.asking.readers.temperature import Said
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
    told = scene.has("<place>") or (before[:1] == ["now"] and scene.has("<probe>"))
    return before[-1:] == ["its"] and told and not scene.has("<oven>", "<mass>")


def _out_at(scene: Scene, said: Said) -> bool:
    """`out of the oven at 150`"""
    at = scene.before_is(said.place, "<at>")
    out = None if at is None else scene.before_is(at, "<oven_left>")
    return out is not None and scene.items[out].tags["<oven_left>"] is False


_CLAUSES: tuple[Callable[[Scene, Said], bool], ...] = (_at_an_extreme, _it_is_now, _it_is, _out_at)


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
