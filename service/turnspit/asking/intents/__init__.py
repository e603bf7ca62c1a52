"""What a line asks: all its intents in their order.

A line is cut where a question word or a new sentence begins. Each piece is tried against `ASKED`, an ordered
list: the first test that holds names its intent. Where no piece asks anything, the line tells something, and `TOLD`
says what a cook wants who tells that.
"""

from __future__ import annotations

from turnspit.asking.contract import Intent
from turnspit.asking.intents import tenor
from turnspit.asking.intents.asked import ASKED
from turnspit.asking.intents.piece import QUESTION_WORDS, Piece
from turnspit.asking.intents.technique import technique
from turnspit.asking.intents.told import TOLD
from turnspit.asking.scene import Scene

# Intents that a question of technique stands in the place of.
_GIVE_WAY = frozenset(("doneness", "roast_time", "plan"))
# Intents that "how long" may be about when it stands apart from their words.
_HAVE_THEIR_HOURS = frozenset(("thaw", "brine", "leftovers", "carve", "safety"))


def intents(scene: Scene, converts: bool, scales: bool) -> tuple[Intent, ...]:
    """All that the line asks, in the order in which it asks; empty where nothing of it is understood."""
    asked = _intents(scene, converts, scales)
    aside: int | None = scene.hints.get("aside")
    if aside is None:
        return asked if converts or scales else tenor.settle(scene, asked)
    if "convert" in asked:
        return asked
    starts = [start for _, start, _ in scene.hints.get("pieces", ())]
    before = sum(start < aside for start in starts) if starts else len(asked) if aside else 0
    return (*asked[:before], "convert", *asked[before:])


def _intents(scene: Scene, converts: bool, scales: bool) -> tuple[Intent, ...]:
    if converts:
        return ("convert",)
    if scales:
        return ("scale", *_beside_scaling(scene))
    found: list[tuple[Intent, Piece]] = []
    for start, end in _pieces(scene):
        piece = Piece(scene, start, end)
        intent = next((name for name, test in ASKED if test(piece)), None)
        advice = technique(piece)
        if advice:
            # What is done to the roast, and not when it is done, is asked.
            scene.hints["technique"] = advice
            asks_leave = intent == "safety" and not piece.has("<danger>", "<out>", "<safe>", "<temperature_read>")
            intent = None if intent in _GIVE_WAY or asks_leave else intent
        if intent is not None and intent not in [name for name, _ in found]:
            found.append((intent, piece))
    whole = Piece(scene, 0, len(scene.items))
    if found:
        settled = _settled(found, whole)
        plans = whole.said("serve_at") and whole.said("roast.mass_kg")
        if [name for name, _ in settled] == ["carve"] and settled[0][1].start and plans:
            # "dinner at 6, 14 lb, and how do I carve it after".
            settled = [("plan", Piece(scene, 0, settled[0][1].start)), *settled]
        scene.hints["pieces"] = [(name, piece.start, piece.end) for name, piece in settled]
        return tuple(name for name, _ in settled)
    if scene.hints.get("technique") and not whole.said("serve_at", "reading.temperature_c"):
        return ("help",)
    told = next((name for name, test in TOLD if test(whole)), None)
    scene.hints["told"] = told is not None
    if told is not None:
        return (told,)
    if scene.has("<convert>"):
        return ("convert",)
    return ("help",) if _asks_for_help(whole) else ()


def _asks_for_help(whole: Piece) -> bool:
    """One word that asks for help ("examples", "hi") has to stand nearly alone."""
    asked = [item for item in whole.items if "<help>" in item]
    alone = whole.unknown_words == 0 or any(" " in item.words or item.words in _HELP for item in asked)
    return bool(asked) and alone and not whole.has("<off_topic>")


_HELP = ("help", "ayuda", "ayudame")


def _beside_scaling(scene: Scene) -> tuple[Intent, ...]:
    """`double the gravy and how long does gravy keep`: what another part of the line asks."""
    found: list[Intent] = []
    for start, end in _pieces(scene):
        piece = Piece(scene, start, end)
        intent = next((name for name, test in ASKED if test(piece)), None)
        feared = intent != "safety" or piece.has("<danger>", "<out>", "<core_temp>", "<what_temp>")
        scales = not start or piece.has("<scale>", "<factor>", "<recipe>", "<covers>")
        if intent in _HAVE_THEIR_HOURS and feared and not scales:
            found.append(intent)
    return tuple(dict.fromkeys(found))


_FEARS = ("<danger>", "<out>", "<safe>", "<ok>")


def _only_names_a_plan(piece: Piece) -> bool:
    """`thaw schedule`: the plan is one of thawing."""
    return any(item.words in ("plan", "schedule", "timeline", "timetable", "plan for") for item in piece.items)


def _settled(found: list[tuple[Intent, Piece]], whole: Piece) -> list[tuple[Intent, Piece]]:
    """Two readings of one thing are one: "is 160 ok" is safety, and "thaw 14 lb, how long" asks of nothing but
    thawing.
    """
    names = {name for name, _ in found}
    drop: set[str] = set()
    to_what_end = whole.has("<core_temp>") and not whole.has("<temperature_read>")
    if "safety" in names and "doneness" in names and (to_what_end or not whole.has("<done>", "<probe_where>")):
        drop.add("doneness")
    if "safety" in names and whole.danger == "warm_holding" and not whole.said("reading.temperature_c"):
        # "keep it warm until 8 when it's done at 6".
        drop.add("doneness")
    if "safety" in names:
        # "pulled at 158, resting, is it safe": that it rests is told, not asked.
        drop |= {name for name, piece in found if name == "carve" and not piece.asks}
    if "doneness" in names and whole.said("reading.temperature_c"):
        # "at 50 in the centre, how long": how long it still needs.
        drop |= {name for name, piece in found if name == "roast_time" and not piece.has("<cook>", "<oven_temp>")}
    if "leftovers" in names and not whole.said("reading.temperature_c"):
        # "cooked the ham yesterday, how long will it keep".
        drop |= {name for name, piece in found if name == "doneness" and not piece.has("<done>")}
    if "plan" in names and whole.said("serve_at"):
        drop |= {
            name
            for name, piece in found
            if name == "doneness" and not piece.has("<temperature_read>", "<probe_where>")
        }
    if "thaw" in names or ("brine" in names and not whole.said("serve_at")):
        drop |= {
            name for name, piece in found if name == "plan" and _only_names_a_plan(piece) and not whole.has("'roast")
        }
    if "roast_time" in names:
        drop |= {name for name, piece in found if name == "safety" and not piece.has(*_FEARS, "<core_temp>")}
    if "leftovers" in names:
        drop |= {name for name, piece in found if name == "safety" and not piece.has(*_FEARS)}
    if (names - drop) & _HAVE_THEIR_HOURS:
        timed = whole.said("oven.temperature_c")
        drop |= {
            name
            for name, piece in found
            if name == "roast_time" and not (timed or piece.has("<cook>", "<takes>", "<done>"))
        }
    return [row for row in found if row[0] not in drop] or found


_ENDS = frozenset(("<break>", "<and_sign>", "'and", "'y"))


def _pieces(scene: Scene) -> list[tuple[int, int]]:
    """Where each piece of the line starts and ends."""
    starts = [0]
    said = set(scene.items[0].tags) if scene.items else set()
    for place, item in enumerate(scene.items):
        if not place:
            continue
        if _begins(scene, place, said):
            starts.append(place)
            said = set()
        said.update(item.tags)
    return [(start, end) for start, end in zip(starts, [*starts[1:], len(scene.items)], strict=True) if end > start]


_QUESTIONS = frozenset(QUESTION_WORDS)
_TIMED = frozenset(("<thaw>", "<rest>", "<how_long>"))
_ASKING = frozenset((*QUESTION_WORDS, "<can>", "'how"))
_OPEN_LATE = ("how", "what", "which", "should", "como", "que")


def _begins(scene: Scene, place: int, said: set[str]) -> bool:
    """Whether a piece begins at a place; `said` are the tags of the piece up to it."""
    item, before = scene.items[place], scene.items[place - 1]
    if item.words in (".", "?", "!", ";") or (item.words == ")" and "<number>" in before and place > 1):
        return True
    if "<brined>" in item and item.words == "and brine":
        # "thaw and brine" are two questions.
        return "<thaw>" in said
    asked = not _ASKING.isdisjoint(said)
    ended = not _ENDS.isdisjoint(before.tags) and before.words not in "()" and "'between" not in said
    if asked and ended:
        # "brine it how long, roast it how long": a comma ends what asks.
        return True
    if not _QUESTIONS.isdisjoint(item.tags) and ("<plan>" in item or asked or ended):
        return True
    if ended and item.words.endswith(" time") and not _TIMED.isdisjoint(item.tags):
        # "salt for brine + thaw time + cook time".
        return True
    late = "<can>" in item.tags or item.words in _OPEN_LATE
    return late and ("<break>" in before or before.words in ("and", "y"))
