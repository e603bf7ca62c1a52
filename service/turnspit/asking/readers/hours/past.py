"""Hours and days of what is past: since when it was left out, when it was thawed, from when it is."""

from __future__ import annotations

from turnspit.asking.scene import Scene

_LEFT = ("left", "forgot", "dumped", "dropped", "delivered", "dejo", "dejaron", "deje", "dejamos", "olvid", "descarg")
_NEXT_CLAUSE = ("<break>", "<when_day>", "<cook>", "<meal>", "<serve>", "<start>")
_REACH = 4
_FROM = ("from", "since", "del", "desde", "cooked", "roasted", "made")
_IS_NOW = ("its now", "its", "now", "now its", "today", "todays", "today is", "hoy", "hoy es", "ya es")


def read(scene: Scene) -> None:
    """Put `elapsed_h` where food is told from one day to now: `turkey from Thursday, it's now Tuesday`."""
    days = [(place, int(item.tags["<weekday>"])) for place, item in scene.find("<weekday>") if "<when_day>" in item]
    if len(days) != 2 or not scene.has("<roast>", "<generic>", "<subject>", "<leftovers>"):
        return
    (first, made), (second, today) = days
    before = [item.words for item in scene.items[max(0, second - 2) : second]]
    behind = scene.items[second + 1].words if second + 1 < len(scene.items) else ""
    led = any(item.words.startswith(_FROM) for item in scene.items[max(0, first - 2) : first + 1])
    if not (led and (behind in ("now", "ahora") or any(words in _IS_NOW for words in before))):
        return
    scene.put("elapsed_h", 24.0 * ((today - made) % 7 or 7), "elapsed: from a day to now", first, second)
    scene.used.update(place for place, _ in scene.find("<when_day>"))
    scene.hints["kept"] = True


def left_at(scene: Scene, place: int) -> bool:
    """`left the turkeys on the dock at 7`: since when it has stood out of the cold."""
    if scene.before_is(place, "<at>", "'a") is None or not scene.has("<out>", "<no_cold_place>", "<on_table>"):
        return False
    for _, _, item in scene.walk(place, -1):
        if item.words.startswith(_LEFT):
            return True
        if "<break>" in item:
            return False
    return False


def thawed_on(scene: Scene, place: int) -> bool:
    """`thawed it tuesday, roasting saturday`: no day of a roast; "thawed by" and "in time for friday" may be."""
    led = scene.items[place - 1].words.endswith("for") if place else False
    if led or scene.before_is(place, "'by", "<at>") is not None:
        return False
    for far, _, item in scene.walk(place, -1):
        if "<thaw>" in item or item.get("<state>") == "thawed":
            return far <= _REACH
        if far > _REACH or any(tag in item for tag in _NEXT_CLAUSE):
            return False
    return False
