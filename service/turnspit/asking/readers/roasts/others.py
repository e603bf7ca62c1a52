"""Further roasts of a line, which holds one dinner: `12 lb turkey thursday at 4 and a 5 lb rib roast friday at 7`."""

from __future__ import annotations

from turnspit.asking.grammar import Item
from turnspit.asking.scene import Scene

_PARTS = ("<and_sign>", "'and", "'y", "<break>")
_NOUNS = ("<roast>", "<generic>", "<cut>", "<place>")
_LEADS = ("<a>", "<soft>", "<amend>", "<plan>", "<for>")


def others(scene: Scene, text: str) -> tuple[str, ...]:
    """The words of each part with a roast of its own weight, but the first; each could be asked by itself."""
    if "roast.mass_kg" not in scene.values or scene.has("<repair>", "<changes>", "<convert>"):
        return ()
    roasts = [part for part in _parts(scene.items) if _is_roast(part)]
    told = {(_noun(part), _kg(part)) for part in roasts[:1]}
    found = [part for part in roasts[1:] if (_noun(part), _kg(part)) not in told and _noun(part) != _noun(roasts[0])]
    return tuple(text[part[0].start : part[-1].end] for part in map(_plain, found))


def _parts(items: list[Item]) -> list[list[Item]]:
    parts: list[list[Item]] = [[]]
    for item in items:
        if any(tag in item for tag in _PARTS):
            parts.append([])
        else:
            parts[-1].append(item)
    return [part for part in parts if part]


def _is_roast(part: list[Item]) -> bool:
    """Whether a roast and its weight stand in it."""
    return any("<mass>" in item for item in part) and any(tag in item for item in part for tag in _NOUNS)


def _noun(part: list[Item]) -> str:
    return next(str(item.tags[tag]) for item in part for tag in _NOUNS if tag in item)


def _kg(part: list[Item]) -> float:
    return float(next(item.tags["<mass>"].si for item in part if "<mass>" in item))


def _plain(part: list[Item]) -> list[Item]:
    """Without the small words in front."""
    while len(part) > 1 and any(tag in part[0] for tag in _LEADS):
        part = part[1:]
    return part
