"""What is asked about: `subject` for safety, carving and leftovers, and the topic of a question about safety."""

from __future__ import annotations

from turnspit.asking.contract import Intent
from turnspit.asking.scene import Scene

_ASKS_SUBJECT = frozenset(("safety", "carve", "leftovers"))


def read(scene: Scene, asked: tuple[Intent, ...]) -> None:
    """Put `subject` where the intents have one."""
    if _ASKS_SUBJECT.isdisjoint(asked):
        return
    for place, item in scene.find("<subject>"):
        if "<roast>" not in item:
            scene.put("subject", item.tags["<subject>"], "subject", place, keep=True)
            return
    for tag in ("<roast>", "<generic>", "<subject>"):
        for place, item in scene.find(tag):
            name = item.tags[tag]
            if name == "roast":
                continue
            scene.put("subject", name, "subject", place, keep=True)
            return


def topic(scene: Scene) -> str:
    """The key of `[danger]` that the line speaks of, "" for none."""
    return next((str(item.tags["<danger>"]) for _, item in scene.find("<danger>")), "")
