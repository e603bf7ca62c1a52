"""A conversion that is one part of a line which asks more: `350F in C and how long for a 14 lb turkey`."""

from __future__ import annotations

from turnspit.asking.readers.amounts import amount
from turnspit.asking.scene import Scene

_PARTS = ("<break>", "<and_sign>", "'and", "'y")
_OTHER_TAGS = """
<how_long> <how_big> <how_much> <when> <plan> <thaw> <brine> <oven_temp> <scale> <factor> <recipe> <what_temp> <safe>
<carve> <keep>
"""
_OTHER_QUESTIONS = frozenset(_OTHER_TAGS.split())


def read(scene: Scene) -> bool:
    """Put the `amount.*` values of the first part that is a whole conversion, where another part asks too."""
    asks = [place for place, item in enumerate(scene.items) if not _OTHER_QUESTIONS.isdisjoint(item.tags)]
    if not asks:
        return False
    for start, end in _parts(scene):
        if all(start <= place < end for place in (asks[0], asks[-1])):
            continue
        part = Scene(scene.items[start:end], scene.now, scene.language, usual=scene.usual)
        if not amount.read(part) or not {"amount.value", "amount.target_unit"} <= part.values.keys():
            continue
        for trace in part.traces:
            scene.values[trace.path] = trace.value
        scene.traces += part.traces
        scene.used |= {start + place for place in part.used}
        scene.hints["aside"] = start
        return True
    return False


def _parts(scene: Scene) -> list[tuple[int, int]]:
    ends = [place for place, item in enumerate(scene.items) if any(tag in item for tag in _PARTS)]
    starts = [0, *(place + 1 for place in ends)]
    return [(start, end) for start, end in zip(starts, [*ends, len(scene.items)], strict=True) if end > start]
