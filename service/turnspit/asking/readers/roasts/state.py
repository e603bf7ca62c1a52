"""Frozen, partly frozen or thawed: `not thawed yet`, `half frozen`, `the middle is still hard`, `in the freezer`."""

from __future__ import annotations

from turnspit.asking.grammar import Grammar, Item
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Number

grammar = Grammar("state")
_NEGATED = {"thawed": "frozen", "frozen": "thawed"}
_PARTLY = {"thawed": "part_frozen"}
_WITHIN = {"frozen": "part_frozen", "part_frozen": "part_frozen"}
_NOT = "not|isnt|arent|wasnt|hasnt|havent|aint|didnt|never|wont"
_ALL = "fully|completely|quite|entirely|totally|properly|all"
_INNER = "middle|center|centre|inside|insides|core|cavity|bone|neck|giblets|legs|thighs|wings|heart"
# Beside these "in the freezer" is where something is to be kept, and not where the roast is.
_STORED = ("<keep>", "<how_long>", "<leftovers>", "<cooked>", "<danger>", "<freeze>")


@grammar.rule(
    f"{_NOT} yet|been|even? {_ALL} <state>|<thaw>",
    f"{_NOT} yet|been|even? <state>|<thaw> all|through way?",
    "no|sin se? ha|han|esta|estan? <state>|<thaw> del|por todo|completo",
    "no|sin se? ha|han|esta|estan? <state>|<thaw> completamente|bien",
    gives="<state>",
)
def _not_all_thawed(state: str) -> str | None:
    """`not quite thawed`, `no se descongela del todo`."""
    return _PARTLY.get(state, "part_frozen" if state == "thaw" else None)


@grammar.rule(
    f"{_NOT} yet|been|even? <state>",
    "no se|esta|estan|es|viene|esta ha|han? <state>",
    gives="<state>",
)
def _not_in_that_state(state: str) -> str | None:
    return _NEGATED.get(state)


@grammar.rule("<fresh>|<state> or|o <state>|<fresh>", gives="<either_state>")
@grammar.rule("<fresh>|<state> <roast>|<generic> or|o <state>|<fresh>", gives="<either_state>", keeps=True)
def _one_or_the_other(*_: object) -> str:
    """`should I buy fresh or frozen`."""
    return "either"


@grammar.rule(
    "hard|solid|stiff as|like a? concrete|brick|stone|rock|ice|iron|board",
    "duro|dura|tieso como un|una? piedra|ladrillo|hielo",
    gives="<state>",
)
def _hard_as_stone() -> str:
    return "frozen"


@grammar.rule("didnt|hasnt|havent <thaw>", gives="<state>", keeps=True)
def _did_not_thaw(_: str) -> str:
    """`didn't thaw in time`."""
    return "frozen"


@grammar.rule("<fraction>|<part> <state>", gives="<state>")
def _half_frozen(part: float | Number, _: str) -> str | None:
    return "part_frozen" if 0 < number(part).value < 1 else None


@grammar.rule(
    f"{_INNER} is|are|was|still|felt|feels? still|bit|like? <state>",
    f"<state> in|at|inside|near|by|round|around|to|still {_INNER}",
    "dentro|adentro|centro|medio|interior|hueso esta|sigue|lo|aun|todavia? esta? <state>",
    "<state> dentro|adentro",
    "<state> en|por|cerca el|del? dentro|adentro|centro|medio|interior|hueso",
    gives="<state>",
)
def _frozen_within(state: str) -> str | None:
    """`soft outside but the centre is frozen`, `el centro sigue congelado`."""
    return _WITHIN.get(state)


@grammar.rule(
    f"{_INNER}|<place> of|del <roast>|<generic> is|are|was|still? <state>",
    "medio|interior|hueso del <roast>|<generic> esta|sigue? <state>",
    gives="<state>",
    keeps=True,
)
def _frozen_within_it(*values: str) -> str | None:
    """`the middle of the bird is frozen`."""
    return _WITHIN.get(values[-1])


@grammar.rule("<state> <place>", gives="<state>")
def _frozen_at_its_centre(state: str, place: str) -> str | None:
    """`sigue congelado por dentro`."""
    return _WITHIN.get(state) if place == "centre" else None


def read(scene: Scene) -> None:
    """Put `roast.state`."""
    # "is it thawed if the cavity is icy": ice that is seen counts.
    states = sorted(scene.find("<state>"), key=lambda row: row[1].tags["<state>"] != "part_frozen")
    for place, item in states:
        if "<either_state>" in item:
            continue
        if item.words.endswith("congelador") and scene.has("<cooked>", "<keep>", "<leftovers>", "<freeze>"):
            # "cuánto aguanta el pavo cocido en el congelador"
            continue
        stored = scene.has("<can>") and scene.has("<leftovers>", "<stock>", "<keep>")
        if item.words == "chilled" and scene.has("<cooked>", "<from_to>", "'down"):
            # "10 kg cooked turkey, chilled from 70 to 5", "chilled the braise down".
            continue
        if stored and scene.before_is(place, "'be") is not None:
            # "can turkey soup be frozen".
            continue
        if _of_a_side(scene, place):
            continue
        scene.put("roast.state", item.tags["<state>"], "roast: state", place, keep=True)
    for place, item in scene.find("<freezer>"):
        if _lies_frozen(scene, place, item):
            scene.put("roast.state", "frozen", "roast: in the freezer", place, keep=True)
    for place, item in scene.find("<fresh>"):
        if "<either_state>" in item:
            continue
        near = scene.nearest(place, "<roast>", "<generic>", "<mass>", reach=7)
        if not _of_a_side(scene, place) and (near or len(scene.items) <= 3):
            scene.put("roast.state", item.tags["<fresh>"], "roast: fresh", place, keep=True)


def _of_a_side(scene: Scene, place: int) -> bool:
    """`frozen peas with my 14 lb turkey`, `fresh herbs`: what goes with the roast."""
    beside = scene.after_is if scene.language == "en" else scene.before_is
    side = beside(place, "<ingredient>", "<subject>")
    if side is None or not scene.has("<roast>", "<generic>", "<mass>"):
        return False
    return not any(tag in scene.items[side] for tag in ("<roast>", "<generic>", "<stuffed>"))


def _lies_frozen(scene: Scene, place: int, item: Item) -> bool:
    """`6 kg goose in the freezer`, `forgot to take it out of the freezer`, `bone in, from the freezer`."""
    told = scene.has("<roast>", "<generic>", "<mass>")
    forgot = any(scene.has(f"'{word}") for word in _FORGOT)
    asks_leave = any("<can>" in one and one.words not in ("is", "are") for one in scene.items)
    if asks_leave or scene.has(*_STORED):
        return False
    if told and (forgot or scene.before_is(place, "'in") is not None):
        return True
    held = told or any(path.startswith("roast.") for path in scene.before)
    led = place == 0 or scene.before_is(place, "<break>", "<roast>", "<generic>", "<mass>", "<bone_in>") is not None
    return held and led and item.words in ("from the freezer", "from freezer", "del congelador")


_FORGOT = ("forgot", "forgotten", "olvido", "olvide", "olvidamos")
