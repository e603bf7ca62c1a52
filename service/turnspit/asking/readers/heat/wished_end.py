"""The wished end of a roast among the temperatures of a line: `pull at 160`, `58 core`, `want 130`."""

from __future__ import annotations

from collections.abc import Callable
from typing import Literal

from turnspit.asking.grammar import Item
from turnspit.asking.readers.heat.temperature import Said, plausible_core
from turnspit.asking.scene import Scene
from turnspit.heat import roast

Target = Literal["target", "oven", "nothing"]
# No oven roasts at less.
_NO_OVEN_C = 80.0
_WILL_REACH = ("hit", "reach", "reached", "get to", "up to")
_REACHES = ("hits", "reaches", "gets to")


def wished_end(scene: Scene, said: Said) -> Target | None:
    """ "target" where the temperature is the end that is wished, "oven" where it is told like one but is too hot,
    "nothing" where it goes on rising to that end."""
    if _has_risen(scene, said):
        return None
    found = next((found for clue in _CLUES if (found := clue(scene, said)) is not None), None)
    if found == "target":
        _told_of_a_core(scene, said)
    return found


def _has_risen(scene: Scene, said: Said) -> bool:
    """`up to 161`, `it's up to 161 now`, after a reading of 150."""
    probe = scene.before_is(said.place, "<probe>")
    led = probe is not None and all("<soft>" in item for item in scene.items[:probe])
    return led and "reading.temperature_c" in scene.before


def _told_of_a_core(scene: Scene, said: Said) -> None:
    """`to 195 internal` names the core and probes nothing."""
    near = scene.nearest(said.place, "<place>", "<probe>", reach=1.5)
    if near is None or not _names_the_core(scene.items[near[1]]):
        return
    for tag in ("<place>", "<probe>", "<core_temp>", "<what_temp>"):
        scene.items[near[1]].tags.pop(tag, None)
    scene.tags = {tag for item in scene.items for tag in item.tags}


def _cook_to(scene: Scene, said: Said) -> Target | None:
    """`pull at 160`, `to 57`."""
    wished = scene.before_is(said.place, "<target>")
    # "is my chicken done at 158" asks.
    if wished is not None and not (scene.items[wished].words == "done at" and scene.has("<can>")):
        return "target" if said.core_like else "oven"
    if scene.has("<danger>") and any(item.get("<danger>") == "cooling" for item in scene.items):
        # "how long to chill it to 41".
        return None
    reached = scene.before_is(said.place, "'reach") if scene.has("<how_long>") else None
    if reached is not None:
        # "to reach 54" asks for no temperature.
        for tag in ("<core_temp>", "<what_temp>"):
            scene.items[reached].tags.pop(tag, None)
        scene.tags = {tag for item in scene.items for tag in item.tags}
    to = scene.before_is(said.place if reached is None else reached, "'to", "'till", "'til", "'until")
    if to is None and scene.language == "en":
        # "how long to 145"
        asked = scene.before_is(said.place, "<how_long>")
        to = asked if asked is not None and scene.items[asked].words.endswith(" to") else None
    if to is not None and scene.has("'reheated"):
        # "reheated turkey to 140, enough?"
        return None
    if to is not None and too_hot_for_meat(scene, said):
        # "220 then down to 160", in Celsius.
        return "oven"
    return "target" if said.core_like and to is not None else None


def _until_it_reads(scene: Scene, said: Said) -> Target | None:
    """`325F until breast reads 160`, `I take my birds out at 160`."""
    at = said.place
    while (beside := scene.before_is(at, "<probe>", "<place>", "<turkey_place>", "<at>", "'out")) is not None:
        at = beside
    till = scene.before_is(at, *_TILL)
    takes = scene.items[at].words.startswith("out") and any(
        item.words in _TAKES for item in scene.items[max(0, at - 4) : at]
    )
    if not said.core_like or at == said.place or (till is None and not takes):
        return None
    for item in scene.items[at : said.place]:
        for tag in ("<probe>", "<place>"):
            item.tags.pop(tag, None)
    scene.tags = {tag for item in scene.items for tag in item.tags}
    return "target"


_TILL = ("'until", "'till", "'til", "'hasta")
_TAKES = ("take", "takes", "pull", "pulls")


def _up_to_an_end(scene: Scene, said: Said) -> Target | None:
    """`reverse sear, 225 until 120`: the heat, told before the end."""
    till = scene.after_is(said.place, *_TILL)
    end = scene.after_is(till, "<number>") if till is not None else None
    cooler = end is not None and scene.items[end].tags["<number>"].value + _HOTTER_K <= said.value
    return "oven" if said.bare and said.oven_like and cooler else None


_HOTTER_K = 40


def _pulled_by_plan(scene: Scene, said: Said) -> Target | None:
    """`two pork shoulders for thirty, pulled at 92`, `I like my rib pulled at 52`: nothing roasts yet that was read.

    Where it then comes `up to 57`, that is the end.
    """
    probe = scene.before_is(said.place, "<probe>")
    if probe is None or scene.items[probe].words not in _PULLED or not (said.core_like and is_red(scene)):
        return None
    ordered = scene.has("<mass>") and scene.has("<covers>") and scene.has("<clock>", "<meal>")
    liked = any(tag in item for item in scene.items[:probe] for tag in _LIKED)
    if not (ordered or liked) or scene.has(*_PROBED, *_NOW) or (scene.has("<place>") and not liked):
        return None
    del scene.items[probe].tags["<probe>"]
    scene.tags = {tag for item in scene.items for tag in item.tags}
    later = [place for tag in ("<number>", "<temperature>") for place, _ in scene.find(tag) if place > said.place]
    rises = any(scene.items[place - 1].words.endswith("to") for place in later)
    return "nothing" if rises else "target"


_LIKED = ("'like", "'likes", "'want", "'wants", "'prefer", "'always", "'usually", "'normally", "<wish>", "<need>")
_PULLED = ("pulled at", "pulled it at")


def _cooked_at_its_end(scene: Scene, said: Said) -> Target | None:
    """`can I cook chicken at 60`: no oven is so cool, so that is where the meat ends."""
    if scene.has("<done>") or _is_set(scene):
        # "stalled at 160", "bird's at 150, oven 350"
        return None
    cooks = scene.has("<cook>") and scene.before_is(said.place, "<at>", "'a") is not None
    if scene.after_is(said.place, "<convection>") is not None:
        return None
    oven = too_hot_for_meat(scene, said) or scene.after_is(said.place, "<convection>", "<oven>") is not None
    if not cooks or oven or scene.has("<place>", "<probe>") or not said.core_like:
        return None
    return "target" if said.celsius(plausible_core(said.value)) <= _NO_OVEN_C and said.value < 170 else None


def _is_set(scene: Scene) -> bool:
    """Whether a number stands right behind an oven or a smoker."""
    return any(
        scene.after_is(place, "<number>", "<temperature>") is not None
        for place, item in scene.find("<cook>")
        if "<oven>" in item or item.words == "smoker"
    )


# Where beef and lamb are wished to end.
_ROSY_C = 45, 75


def _needs_to_be(scene: Scene, said: Said) -> Target | None:
    """`it's 115, needs to be 130 by 6`, `tenderloin, 135 after resting`"""
    words = " ".join(item.words for item in scene.items[max(0, said.place - 2) : said.place])
    after = scene.after_is(said.place, "<been_in>")
    rested = after is not None and scene.after_is(after, "<rest>") is not None
    hot = said.bare and said.core_like and said.value >= _HOT_F
    return "target" if hot and (rested or words.endswith(_TO_BE)) else None


_TO_BE = ("needs to be", "has to be", "needs to be at", "has to be at", "needs to hit", "should end at")
_HOT_F = 100
_WANTS = ("<need>", "'want", "'wants", "'like", "'wanting")


def _roast_wanted_at(scene: Scene, said: Said) -> Target | None:
    """`I want my lamb leg at 57`, `want breast at 155`"""
    at = scene.before_is(said.place, "<at>")
    roast = scene.before_is(at, "<roast>", "<generic>", "<place>") if at is not None else None
    wanted = roast is not None and scene.before_is(roast, *_WANTS) is not None
    if roast is None or not wanted or not said.core_like or too_hot_for_meat(scene, said):
        return None
    scene.items[roast].tags.pop("<place>", None)
    scene.tags = {tag for item in scene.items for tag in item.tags}
    return "target"


def _wanted_end(scene: Scene, said: Said) -> Target | None:
    """`rib is at 105, want 130`; `need 130` may be portions."""
    wish = scene.before_is(said.place, *_WANTS)
    if wish is None or "<turned_to>" in scene.items[wish] or not said.core_like:
        return None
    probed = scene.has("<place>", "<probe>", "<temperature>") or "reading.temperature_c" in scene.before
    probed = probed or (is_red(scene) and said.value >= _ROSY_C[0] and _is_set(scene))
    rosy = (
        scene.usual == "metric" and scene.has("<mass>") and is_red(scene) and _ROSY_C[0] <= said.value <= _ROSY_C[1]
    )
    if said.bare and not (100 <= said.value <= 185 or probed or rosy):
        return None
    of_a_roast = "roast.target_c" in scene.before or "reading.temperature_c" in scene.before
    return "target" if of_a_roast or scene.has("<roast>", "<generic>", "<place>", "<probe>") else None


def _when_it_reaches(scene: Scene, said: Said) -> Target | None:
    """`when will it hit 165`, `how long to hit 195`."""
    reached = scene.before_is(said.place, "<probe>")
    to = reached is not None and scene.before_is(reached, "'to") is not None
    if reached is not None and to and scene.items[reached].words in _WILL_REACH and said.core_like:
        del scene.items[reached].tags["<probe>"]
        scene.tags = {tag for item in scene.items for tag in item.tags}
        return "target"
    asked = [place for tag in ("<how_long>", "<when>") for place, _ in scene.find(tag)]
    if reached is not None and scene.items[reached].words in _REACHES and asked and min(asked) < reached:
        return "target" if said.core_like else None
    place = scene.nearest(said.place, "<place>", "<probe>", "<turkey_place>", reach=3.5)
    return "target" if place and scene.has("<when>") and scene.items[place[1]].words in _WILL_REACH else None


_INTERNAL = ("internal", "temperatura in")
_PROBED_TAGS = """
<done> <done_word> <been_in> <started> <starts_now> <rest> <danger> <safe> <ok> <oven_left> <to_go> <out>
"""
_PROBED = tuple(_PROBED_TAGS.split())
_NOW = ("'now", "'ahora", "'currently", "'already", "'ya")
_WELL_DONE_BIRD_C = 70.0


def _core_of_an_order(scene: Scene, said: Said) -> Target | None:
    """`lamb legs 2.6 kg, 58 core`: a raw roast with its weight has no core to read yet."""
    if not said.core_like or not scene.has("<mass>") or scene.has(*_PROBED, *_NOW):
        return None
    near = scene.nearest(said.place, "<place>", "<probe>", reach=1.5)
    inside = scene.after_is(said.place, "'inside", "'dentro") is not None
    if not (near or inside) or not all(map(_names_the_core, scene.items)):
        return None
    if scene.has("<clock>") and not scene.has("<meal>", "<serve>", "<start>"):
        return None
    hot = said.celsius(plausible_core(said.value, scene.usual)) >= _WELL_DONE_BIRD_C
    return "target" if hot or is_red(scene) else None


def _names_the_core(item: Item) -> bool:
    """No other place and no probe: `reads`, `is at` and `now` tell of one."""
    core = item.get("<place>") == "centre" or item.words.startswith(_INTERNAL)
    return core or not ("<place>" in item or "<probe>" in item)


# Who cooks in Celsius sets no oven below this, and takes no meat so far.
_OVEN_FROM_C = 110


def too_hot_for_meat(scene: Scene, said: Said) -> bool:
    """Whether a bare number is an oven's for who cooks in Celsius."""
    return not said.unit and scene.usual == "metric" and said.value >= _OVEN_FROM_C and said.value % 5 == 0


def is_red(scene: Scene) -> bool:
    """Whether beef, pork, lamb or veal is spoken of; a bird ends where it is safe."""
    kinds = [str(item.tags["<roast>"]) for _, item in scene.find("<roast>")] or [scene.before.get("roast.kind", "")]
    if any(item.get("<generic>") in ("beef", "pork", "lamb", "veal", "ham", "roast", "meat") for item in scene.items):
        return True
    return any(kind and not roast(kind).poultry for kind in kinds)


# Between a doneness and what it is in degrees: "rare, so like 120", "poco hecho, o sea 50".
_THAT_IS = frozenset((",", "(", "so", "o", "sea", "osea", "i", "e", "say", "meaning"))


_PULLS = ("pulled", "pull apart", "shred", "fall apart")


def _with_its_doneness(scene: Scene, said: Said) -> Target | None:
    """`i want it pulled so like 203`, `rare, so 120`: the end that its name stands for."""
    oven = scene.after_is(said.place, "<oven>", "<convection>") is not None or too_hot_for_meat(scene, said)
    if not said.core_like or oven:
        return None
    so = False
    for _, _, item in scene.walk(said.place, -1):
        if "<doneness>" in item or (item.words.startswith(_PULLS) and so):
            return "target"
        so = so or item.words in ("so", "say")
        if "<soft>" not in item and item.words not in _THAT_IS:
            return None
    return None


_CLUES: tuple[Callable[[Scene, Said], Target | None], ...] = (
    _with_its_doneness,
    _up_to_an_end,
    _cook_to,
    _until_it_reads,
    _pulled_by_plan,
    _cooked_at_its_end,
    _needs_to_be,
    _roast_wanted_at,
    _wanted_end,
    _core_of_an_order,
    _when_it_reaches,
)
