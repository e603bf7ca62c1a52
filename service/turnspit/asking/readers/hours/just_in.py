"""An hour just past behind what has gone in: `we've only just put it in, 10:50`, `bird's in! 8:55`."""

from __future__ import annotations

from datetime import timedelta

from turnspit.asking.scene import Scene

# What went in longer ago is told with its "at".
_JUST = timedelta(hours=2)
_WENT_IN = ("<starts_now>", "<started>", "<start>")
_YET_TO_COME = ("<when>", "<can>", "<plan>", "'if", "'ill", "'well", "'gonna", "'going", "'lets")
_OF_DINNER = ("<for>", "<meal>", "<serve>", "'by", "'before", "'until", "'till")


def just_in(scene: Scene, place: int, ago: timedelta) -> bool:
    """Whether an hour that was so long ago tells when the roast went in."""
    if ago > _JUST or scene.has(*_YET_TO_COME) or scene.before_is(place, *_OF_DINNER) is not None:
        return False
    for _, at, item in scene.walk(place, -1):
        if any(tag in item for tag in _WENT_IN) or (item.words == "in" and _ends_a_clause(scene, at)):
            return True
        if "<break>" not in item and "<soft>" not in item and "<at>" not in item:
            return False
    return False


def _ends_a_clause(scene: Scene, at: int) -> bool:
    """`bird's in!`"""
    return at > 0 and at + 1 < len(scene.items) and "<break>" in scene.items[at + 1]
