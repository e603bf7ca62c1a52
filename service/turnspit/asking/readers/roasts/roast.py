"""The roast: its kind, mass, count and state; stuffed or not, with the bone or without, injected or plain."""

from __future__ import annotations

from collections.abc import Collection

from turnspit.asking.contract import Intent
from turnspit.asking.grammar import Item
from turnspit.asking.readers.measures.measures import Measure
from turnspit.asking.readers.roasts import flags, state
from turnspit.asking.readers.roasts.counts import is_plural
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Number
from turnspit.heat import roast

_MOST_PIECES = 60
_CUTS = {
    "beef": ("beef_rib", "beef_tenderloin", "beef_round"),
    "pork": ("pork_loin", "pork_shoulder", "fresh_ham"),
    "ham": ("fresh_ham",),
    "lamb": ("lamb_leg",),
    "veal": ("veal_loin",),
}
_CUT_IS_NO_MATTER = frozenset(("safety", "leftovers", "carve", "convert", "scale", "help", "unknown"))
_USUAL_RED = "beef_rib"


def read(scene: Scene) -> None:
    """Put every `roast.*` value."""
    _kind(scene)
    _unknown_cut(scene)
    flags.read(scene)
    state.read(scene)
    _mass(scene)
    _count(scene)
    _doneness(scene)


def _doneness(scene: Scene) -> None:
    """`medium rare` is a temperature of the roast's own row, of beef's where that row has none."""
    kind = scene.values.get("roast.kind") or scene.before.get("roast.kind") or _USUAL_RED
    for place, item in scene.find("<doneness>"):
        name = item.tags["<doneness>"]
        if "<danger>" in item or item.words.startswith("pink"):
            if not _pink_is_wished(scene, kind):
                continue
            if item.tags.pop("<danger>", None) is not None and not any("<danger>" in one for one in scene.items):
                scene.tags.discard("<danger>")
        celsius = roast(kind).doneness.get(name) or roast(_USUAL_RED).doneness.get(name)
        if celsius is None:
            # Only a cut full of sinew is pulled apart.
            continue
        scene.put("roast.target_c", celsius, "roast: doneness", place, keep=True)


_PINK_KINDS = ("beef_rib", "beef_tenderloin", "beef_round", "lamb_leg", "veal_loin")
_PINK_MEATS = ("beef", "lamb", "veal")
# Beside these pink is seen, or asked about, and so feared.
_PINK_FEARED = """
<can> <safe> <done> <done_word> <probe> <temperature_read> <out> <rest> 'is 'still 'came 'looks 'inside
'bit 'sale 'salio 'esta 'quedo 'sigue
"""


def _pink_is_wished(scene: Scene, kind: str) -> bool:
    """`leg of lamb 2.5 kg, pink`: of beef, lamb or veal, with nothing that tells of a fear."""
    named = "roast.kind" in scene.values or "roast.kind" in scene.before
    meat = any(item.get("<generic>") in _PINK_MEATS for item in scene.items)
    # "ok, lamb leg 2 kg pink" opens with it.
    leave = any("<ok>" in item for item in scene.items[1:])
    return ((named and kind in _PINK_KINDS) or meat) and not (leave or scene.has(*_PINK_FEARED.split()))


def _kind(scene: Scene) -> None:
    for place, item in enumerate(scene.items):
        if "<turkey_kind>" in item and (place in scene.used or "<roast>" not in item):
            scene.put("roast.kind", item.tags["<turkey_kind>"], "roast: the bird of that place", place, keep=True)
        elif "<roast>" in item and not _of_pork_instead(item):
            scene.put("roast.kind", item.tags["<roast>"], "roast: kind", place, keep=True)
    if "roast.kind" not in scene.values:
        for place, item in scene.find("<place>", unused=True):
            if item.get("<place>") == "breast" and _is_a_joint(scene, place):
                scene.put("roast.kind", "turkey_breast", "roast: a breast with its weight", place, keep=True)


def _of_pork_instead(item: Item) -> bool:
    """`pork tenderloin` is none of beef, and no cut that is known here."""
    return item.get("<generic>") == "pork" and str(item.tags["<roast>"]).startswith("beef")


def _is_a_joint(scene: Scene, place: int) -> bool:
    """`six 10 lb bone-in breasts`, `a breast of 3 kg`: what is weighed is no place of a bird."""
    if scene.has("<generic>", "<temperature_read>", "<probe>"):
        return False
    weighed = scene.before_is(place, "<mass>", "<bone_in>"), scene.after_is(place, "<mass>", "<bone_in>")
    return scene.has("<mass>") and any(at is not None for at in weighed)


def _unknown_cut(scene: Scene) -> None:
    """Beef, pork, lamb, veal or ham without the cut: which roast it is makes hours of difference, so it is asked."""
    if "roast.kind" in scene.values:
        return
    for _, item in scene.find("<generic>"):
        cuts = _CUTS.get(item.tags["<generic>"], ())
        if cuts:
            scene.ambiguous = scene.ambiguous or "roast.kind"
            scene.hints.setdefault("cuts", cuts)


def settle_cut(scene: Scene, asked: Collection[Intent]) -> None:
    """Lamb and veal have one cut here: where the answer hangs on the cut, it is that one."""
    cuts = scene.hints.get("cuts", ())
    if len(cuts) == 1 and cuts != _CUTS["ham"] and not _CUT_IS_NO_MATTER.issuperset(asked):
        scene.put("roast.kind", cuts[0], "roast: the only cut", *(p for p, _ in scene.find("<generic>")), keep=True)


def _mass(scene: Scene) -> None:
    masses = [(place, item) for place, item in scene.find("<mass>", unused=True)]
    masses = [row for row in masses if not _of_an_ingredient(scene, row[0])]
    masses = [row for row in masses if not _a_rate(scene, row[0], row[1])]
    masses = [row for row in masses if not _a_portion(scene, row[0], row[1].tags["<mass>"])]
    if not masses:
        return
    place, item = min(masses, key=lambda row: _from_roast(scene, row[0], row[1]))
    place, item = next(row for row in masses if _says_again(row[1], item))
    measure: Measure = item.tags["<mass>"]
    scene.put("roast.mass_kg", round(measure.si, 3), "roast: mass", place)
    if measure.si_range is not None:
        low, high = measure.si_range
        scene.put("roast.mass_kg_range", [round(low, 3), round(high, 3)], "roast: mass range", place)


# How far a weight that is told again in another unit is rounded.
_ROUNDED = 0.03


def _says_again(one: Item, other: Item) -> bool:
    """`6 kg (13 lb) turkey`: one weight in two units, of which the first was weighed."""
    first: Measure = one.tags["<mass>"]
    second: Measure = other.tags["<mass>"]
    return abs(first.si - second.si) <= _ROUNDED * abs(second.si)


def _a_rate(scene: Scene, place: int, item: Item) -> bool:
    """`30 min a pound`."""
    timed = scene.before_is(place, "<duration>", "<time_unit>") is not None
    return timed and float(item.tags["<mass>"].value) == 1 and not item.words[0].isdigit()


# Nobody is served more than this.
_LARGEST_PORTION_KG = 1.5
_PORTION_REACH = 4


def _a_portion(scene: Scene, place: int, measure: Measure) -> bool:
    """`a pound a head`, `200 g cooked portion`, `a pound and a half each for 10`: what one guest gets."""
    if measure.si > _LARGEST_PORTION_KG:
        return False
    if " per " in scene.items[place].words or scene.nearest(place, "<portion>", reach=_PORTION_REACH) is not None:
        return True
    lightest, _ = roast(scene.values.get("roast.kind") or scene.before.get("roast.kind") or "turkey").mass_kg_range
    served = "covers" in scene.values and "roast.count" not in scene.values
    return served and measure.si < lightest / 2 and scene.nearest(place, "<birds>", reach=2) is not None


def _of_an_ingredient(scene: Scene, place: int) -> bool:
    """`2 lb butter`; `16 lb kosher turkey` is a turkey."""
    after = scene.after_is(place, "<salt>", "<ingredient>")
    return after is not None and scene.after_is(after, "<roast>", "<generic>") is None


def _from_roast(scene: Scene, place: int, item: Item) -> float:
    near = scene.nearest(place, "<roast>", "<generic>", reach=6)
    return near[0] if near else 9.0 + place / 1000 - item.tags["<mass>"].si / 1e9


def _each_person(scene: Scene) -> bool:
    return any(item.words in ("per person", "por persona", "per head") for item in scene.items)


def _talks_of_a_roast(scene: Scene) -> bool:
    return any(path.startswith("roast.") for path in scene.before) or scene.hints.get("talk_of") in _OF_ROASTS


_OF_ROASTS = ("plan", "roast_time", "thaw", "size", "brine", "carve")


def _count(scene: Scene) -> None:
    for place, item in scene.find("<count>"):
        if _one_of_a_kind(scene, place, item):
            scene.used.add(place)
            continue
        of_a_roast = scene.has("<roast>", "<generic>", "<mass>") or _talks_of_a_roast(scene)
        if of_a_roast and not ("<mass>" not in item and scene.before_is(place, "<for>") is not None):
            scene.put("roast.count", item.tags["<count>"], "roast: how many", place, keep=True)
    if _each_person(scene):
        return
    for place, item in scene.find("<number>", unused=True):
        said: Number = item.tags["<number>"]
        if said.value != int(said.value) or not 0 < said.value <= _MOST_PIECES:
            continue
        if scene.before_is(place, "<meal>", "<serve>", "<for>", "<feeds>"):
            continue
        each = scene.after_is(place, "<birds>")
        if each is not None and said.value > 1 and (scene.has("<roast>", "<generic>") or _talks_of_a_roast(scene)):
            scene.put("roast.count", int(said.value), "roast: how many of them", place)
            continue
        if each is not None and scene.items[each].words in ("each", "apiece", "ea"):
            # "one each for 7": how many a guest gets.
            continue
        noun = _counted(scene, place)
        noun = _listed(scene, place) if noun is None else noun
        either = noun is not None and scene.after_is(noun, "'or", "'o") is not None
        if either or scene.before_is(place, "'or", "'o") is not None:
            # "one big turkey or two?" is asked.
            continue
        if said.value > 1 and _right_before_a_weight(scene, place):
            scene.put("roast.count", int(said.value), "roast: how many", place)
            continue
        weighed = noun is not None and scene.after_is(noun, "<mass>") is not None
        plural = noun is not None and (weighed or is_plural(scene.items[noun].words))
        if noun is None or (said.value > 1 and said.digits and not plural):
            continue
        scene.put("roast.count", int(said.value), "roast: how many", place)


def _one_of_a_kind(scene: Scene, place: int, item: Item) -> bool:
    """`it's one of those injected turkeys` tells which, and not how many."""
    near = scene.nearest(place, "<roast>", "<generic>", reach=_PORTION_REACH)
    named = near is not None and near[1] > place and is_plural(scene.items[near[1]].words)
    return item.tags["<count>"] == 1 and " of " in item.words and named


def _right_before_a_weight(scene: Scene, place: int) -> bool:
    """`put 2 14 lb in`, `six 10 lb breasts`: nothing stands between, and none of it is an hour or a setting."""
    after = place + 1
    told = scene.before_is(place, "<at>", "<oven>", "<when_day>", "<roast>", "<generic>") is not None
    return after < len(scene.items) and "<mass>" in scene.items[after] and not told


def _listed(scene: Scene, place: int) -> int | None:
    """The noun that a list counts behind it: `turkeys: 3`, `14 lb turkeys (2)`."""
    noun = scene.before_is(place, "<roast>", "<generic>")
    told = noun is not None and (scene.items[place].words[0] == "(" or scene.items[place - 1].words == ":")
    return noun if told else None


_NOUNS = ("<roast>", "<generic>", "<birds>")
_BEFORE_THE_NOUN = ("<mass>", "<state>", "<stuffed>", "<bone_in>", "<fresh>")


def _counted(scene: Scene, place: int) -> int | None:
    """The noun that a number counts, over what may stand between: `two frozen 12 lb turkeys`, `2 x 6 kg geese`."""
    after = scene.after_is(place, *_NOUNS, *_BEFORE_THE_NOUN, "'x")
    while after is not None and not any(tag in scene.items[after] for tag in _NOUNS):
        if scene.items[after].words.endswith("pounders"):
            return after
        after = scene.after_is(after, *_NOUNS, *_BEFORE_THE_NOUN)
    return after
