"""What is asked about: `subject` for safety, carving and leftovers, and the topic of a question about safety."""

from __future__ import annotations

from collections.abc import Iterator

from turnspit.asking.contract import Intent
from turnspit.asking.scene import Scene

_ASKS_SUBJECT = frozenset(("safety", "carve", "leftovers"))


_DISHES = ("<subject>",)
_ROASTS = ("<roast>", "<generic>")
_ANYTHING = ("<subject>", "<roast>")
# A dish that is named is what is asked about, then the roast, then the brine; with raw juices it is the roast they
# come from.
_ORDER = (_DISHES, _ROASTS, _ANYTHING)
_ORDER_WITH_JUICES = (_ROASTS, _DISHES)
_OF_THE_ROAST = ("cross_contact", "spoiled")
_WORD = {"turkey_breast": "turkey", "game_hen": "hen", "fresh_ham": "ham"}


def read(scene: Scene, asked: tuple[Intent, ...]) -> None:
    """Put `subject` where the intents have one, from the piece of the line that asks."""
    told = not asked or (asked == ("plan",) and scene.hints.get("told") and "serve_at" not in scene.values)
    if told and scene.hints.get("talk_of") in _ASKS_SUBJECT:
        # `and gravy?` goes on about the same question.
        asked = (scene.hints["talk_of"],)
    if _ASKS_SUBJECT.isdisjoint(asked):
        return
    if topic(scene) == "brine_reuse" and scene.has("<brine>"):
        scene.put("subject", "brine", "subject: the brine used again", keep=True)
        return
    asked_of = next((place for place in _asked_of(scene) if _name(scene, place, _ANYTHING)), None)
    if asked_of is not None:
        scene.put("subject", _name(scene, asked_of, _ANYTHING), "subject: of which it is asked", asked_of, keep=True)
        return
    pieces = [(start, end) for name, start, end in scene.hints.get("pieces", ()) if name in _ASKS_SUBJECT]
    if len(asked) == 1:
        pieces = [(0, len(scene.items))]
    if not {"safety", "leftovers"}.isdisjoint(asked):
        # Where the asking piece says "it", the rest of the line names the thing.
        pieces.append((0, len(scene.items)))
    for start, end in pieces:
        for tags in _ORDER_WITH_JUICES if topic(scene) in _OF_THE_ROAST else _ORDER:
            for place in range(start, end):
                name = _name(scene, place, tags)
                if name:
                    scene.put("subject", name, "subject", place, keep=True)
                    return


def _asked_of(scene: Scene) -> Iterator[int]:
    """`the giblets stayed in the bag, is the turkey safe`: what stands between `is` and `safe`."""
    for tag in ("<safe>", "<ok>"):
        for place, _ in scene.find(tag):
            named = scene.before_is(place, *_ANYTHING)
            if named is not None and scene.before_is(named, "'is", "'are", "<can>") is not None:
                yield named


def _other_noun(scene: Scene) -> bool:
    return any(item.get("<generic>") not in (None, "meat", "roast") for item in scene.items) or scene.has("<roast>")


def _name(scene: Scene, place: int, tags: tuple[str, ...]) -> str:
    """The one word for what an item names, "" for nothing that can be asked about."""
    item = scene.items[place]
    if tags == _DISHES and ("<roast>" in item or item.get("<subject>") == "brine"):
        return ""
    name = next((str(item.tags[tag]) for tag in tags if tag in item), "")
    if name == "carcass" and scene.has("<carve>") and scene.has("<roast>"):
        # "slice prime rib with or without the bones".
        return ""
    if name in ("roast", "poultry") or (name == "meat" and _other_noun(scene)):
        return ""
    return _WORD.get(name, name.partition("_")[0])


def topic(scene: Scene) -> str:
    """The key of `[danger]` that the line speaks of, "" for none."""
    return next((str(item.tags["<danger>"]) for _, item in scene.find("<danger>")), "")
