"""What a line asks: all its intents in their order.

A line is cut where a question word or a new sentence begins. Each piece is tried against `_ASKED`, an ordered list:
the first
test that holds names the piece's intent. Where no piece asks anything, the line tells something, and `_TOLD` says
what a
cook wants who tells that.
"""

from __future__ import annotations

from collections.abc import Callable

from turnspit.asking.contract import Intent
from turnspit.asking.scene import Scene

_QUESTION_TAGS = """
<how_big> <how_long> <how_much> <when> <what_temp> <oven_temp> <where> <plan> <probe_where> <done> <yield>
"""
_QUESTION_WORDS = tuple(_QUESTION_TAGS.split())


# From this age on a question about leftovers is how long they keep, and not how long they stood.
_DAYS_OLD_H = 20
# Whoever asks whether an oven as low as this will do asks of safety.
_LOW_OVEN_C = 136
# Intents that "how long" may be about when it stands apart from their words.
_HAVE_THEIR_HOURS = frozenset(("thaw", "brine", "leftovers", "carve", "safety"))


class Piece:
    """A piece of the line: the tags in it, and those of the whole line."""

    def __init__(self, scene: Scene, start: int, end: int) -> None:
        self.scene = scene
        self.start, self.end = start, end
        self.items = scene.items[start:end]
        self.tags = {tag for item in self.items for tag in item.tags}

    def has(self, *tags: str) -> bool:
        """Whether the piece carries one of the tags."""
        return not self.tags.isdisjoint(tags)

    def said(self, *paths: str) -> bool:
        """Whether the line gave one of the values."""
        return any(path in self.scene.values for path in paths)

    def follows(self, first: str, *after: str) -> bool:
        """Whether an item with one of the tags stands behind one with the first, soft words aside."""
        at = [place for place, item in enumerate(self.items) if first in item.tags]
        for place in at:
            rest = [item for item in self.items[place + 1 : place + 5] if "<soft>" not in item.tags]
            if rest and any(tag in rest[0].tags for tag in after):
                return True
        return False

    @property
    def only_counts(self) -> bool:
        """`..., how many?`: nothing but the question."""
        small = ("<soft>", "<break>", "<and_sign>")
        rest = [item for item in self.items if not any(tag in item.tags for tag in small)]
        return len(rest) == 1 and "<how_much>" in rest[0].tags

    @property
    def danger(self) -> str:
        """The first danger that it speaks of, "" for none."""
        return next((str(item.tags["<danger>"]) for item in self.items if "<danger>" in item), "")

    @property
    def serves(self) -> bool:
        """Whether it speaks of serving; "ready" alone may be the roast's, at the oven."""
        return any(item.get("<serve>") not in (None, "ready") for item in self.items)

    @property
    def ok_asked(self) -> bool:
        """Whether "ok" asks for leave ("2 hours on the counter ok?") and does not open a sentence ("ok, 15 lb
        then").
        """
        if not self.has("<ok>") or (self.items and "<ok>" in self.items[0].tags):
            return False
        return self.has("<can>") or self.items[-1].words == "?" or "<ok>" in self.items[-1].tags

    @property
    def asks(self) -> bool:
        """Whether a question word opens or fills it."""
        return self.has(*_QUESTION_WORDS, "<can>", "'what", "'whats", "'how", "'which", "'?")


Test = Callable[[Piece], bool]


def _size(piece: Piece) -> bool:
    if piece.scene.has("<yield>") or piece.has("<vessel>"):
        return False
    if piece.only_counts and piece.said("covers"):
        return True
    if piece.has("<how_big>") or piece.follows("<how_much>", "<roast>", "<generic>", "<mass>"):
        return True
    if not (piece.has("<can>", "<enough>") and piece.said("covers")) or piece.said("serve_at"):
        return False
    return piece.said("roast.mass_kg") or "roast.mass_kg" in piece.scene.before


def _carve(piece: Piece) -> bool:
    if piece.has("<yield>"):
        return True
    if piece.has("<when>") and piece.has("<carve>"):
        return True
    return piece.has("<carve>", "<rest>") and not piece.has("<thaw>") and not piece.said("serve_at")


def _leftovers(piece: Piece) -> bool:
    if piece.has("<stock>", "<reheat>"):
        return not piece.has("<thaw>")
    hours = piece.scene.values.get("elapsed_h", 0)
    eaten = piece.has("<cooked>", "<safe>", "<ok>") and not piece.has(
        "<out>", "<raw>", "<thaw>", "<temperature_read>"
    )
    if hours >= _DAYS_OLD_H and eaten and not piece.said("roast.state"):
        return True
    if piece.has("<out>") or (0 < hours < _DAYS_OLD_H and piece.has("<safe>") and not piece.has("<keep>")):
        return False
    if piece.has("<freeze>") and piece.has("<can>") and not piece.has("<danger>", "<raw>", "<thaw>", "<state>"):
        return True
    if piece.scene.hints.get("talk_of") == "leftovers" and piece.has("<freezer>", "<keep>"):
        return True
    if piece.has("<danger>") and not piece.has("<how_long>"):
        return False
    if "leftovers_wanted" in piece.scene.values:
        return False
    return piece.has("<leftovers>") or (
        piece.has("<keep>")
        and piece.has("<how_long>")
        and not (piece.has("<brine>", "<thaw>") or _tells_state(piece))
    )


def _safety(piece: Piece) -> bool:
    if (
        piece.has("<can>")
        and piece.has("<temperature_read>")
        and piece.has("<enough>", "<safe>", "<feeds>", "<serve>")
    ):
        return True
    if piece.has("<can>") and piece.has("<overnight>", "<cold_place>") and piece.has("<brine>", "<brined>", "<cook>"):
        return not (piece.has("<brine>", "<brined>") and piece.has("<overnight>"))
    if (
        piece.has("<stands>")
        and not piece.has("<brine>")
        and piece.has("<how_long>")
        and piece.has("<subject>")
        and not piece.has("<rest>")
    ):
        return True
    if piece.has("<raw>") and piece.has("<how_long>", "<can>") and piece.has("<keep>", "<cold_place>"):
        return True
    if piece.has("<brine>") and piece.said("reading.temperature_c"):
        return True
    if piece.has("<brine>") and not piece.said("elapsed_h") and piece.danger in ("", "cooling"):
        return (piece.has("<safe>") or piece.ok_asked) and not piece.said("brine.hours")
    if piece.danger == "pink" and piece.said("serve_at") and not piece.asks:
        return False
    if (
        piece.has("<can>")
        and piece.scene.values.get("oven.temperature_c", 999) < _LOW_OVEN_C
        and not piece.has("<how_long>")
    ):
        return True
    if piece.has("<danger>", "<out>"):
        return not (piece.has("<thaw>") and piece.has("<how_long>"))
    if piece.has("<brine>", "<brined>") and piece.said("brine.hours"):
        return False
    if piece.has("<rest>") and not piece.has("<temperature_read>"):
        return False
    if piece.has("<safe>") or piece.ok_asked:
        return not piece.has("<done>")
    if piece.has("<cold_place>") and piece.has("<temperature_read>"):
        return True
    if piece.has("<core_temp>") and piece.has("<what_temp>"):
        return True
    if piece.scene.hints.get("talk_of") == "roast_time":
        return False
    return piece.has("<what_temp>") and not piece.has("<oven>", "<brine>", "<cook>", "<oven_temp>")


def _thaw(piece: Piece) -> bool:
    if (
        piece.has("<can>")
        and piece.has("<state>")
        and not (piece.has("<cook>", "<brine>", "<brined>", "<stuffed>") or piece.said("serve_at"))
    ):
        return True
    if piece.scene.hints.get("talk_of") == "leftovers" and not piece.has("<thaw>"):
        return False
    if piece.has("<freezer>") and piece.has("<when>", "<how_long>", "<done>"):
        return True
    if piece.has("<how_long>") and piece.has("<keep>", "<cold_place>") and piece.said("roast.state"):
        return True
    return piece.has("<thaw>") and not piece.has("<no_thaw>")


def _brine(piece: Piece) -> bool:
    if not piece.asks and piece.said("serve_at", "start_at"):
        return False
    if piece.has("<brine>"):
        return True
    return (piece.has("<brined>") and piece.asks) or (piece.has("<how_much>") and piece.has("<salt>"))


def _doneness(piece: Piece) -> bool:
    if piece.has("<probe_where>", "<done>") or (piece.has("<when>") and piece.has("<serve>") and not piece.serves):
        return True
    if piece.has("<subject>") and not piece.has("<roast>", "<generic>", "<place>"):
        return False
    return piece.has("<temperature_read>") or (piece.has("<probe>") and (piece.asks or piece.has("<when>")))


def _done_word(piece: Piece) -> bool:
    if piece.has("<place>") and piece.asks and not piece.has("<subject>"):
        return True
    if piece.scene.values.get("elapsed_h", 0) >= _DAYS_OLD_H:
        return False
    return piece.has("<done_word>") and not piece.said("serve_at")


def _plan(piece: Piece) -> bool:
    if piece.has("<plan>"):
        return True
    return piece.has("<when>") and (piece.has("<start>", "<meal>") or piece.serves)


def _roast_time(piece: Piece) -> bool:
    if piece.has("<can>") and piece.has("<duration>") and piece.said("roast.mass_kg"):
        return True
    if piece.has("<can>") and piece.has("<cook>") and piece.said("roast.state"):
        return True
    if piece.has("'what", "'whats", "'que") and piece.has("<oven>") and not piece.said("oven.temperature_c"):
        return True
    if piece.has("<what_temp>") and piece.scene.hints.get("talk_of") == "roast_time":
        return True
    return piece.has("<how_long>", "<oven_temp>") or (piece.has("<what_temp>") and piece.has("<cook>", "<oven>"))


_ASKED: tuple[tuple[Intent, Test], ...] = (
    ("size", _size),
    ("leftovers", _leftovers),
    ("safety", _safety),
    ("carve", _carve),
    ("thaw", _thaw),
    ("brine", _brine),
    ("plan", _plan),
    ("doneness", _doneness),
    ("roast_time", _roast_time),
    ("doneness", _done_word),
)


def _tells_plan(piece: Piece) -> bool:
    return piece.said("serve_at", "start_at")


def _tells_reading(piece: Piece) -> bool:
    return piece.said("reading.temperature_c")


def _tells_old(piece: Piece) -> bool:
    """Cooked food that is days old is kept as leftovers are."""
    return piece.scene.values.get("elapsed_h", 0) >= _DAYS_OLD_H and piece.has("<cooked>") and not piece.has("<out>")


def _tells_danger(piece: Piece) -> bool:
    if piece.danger == "pink" and piece.said("serve_at"):
        return False
    if piece.has("<danger>", "<out>", "<safe>") or piece.ok_asked:
        return True
    if not piece.has("<subject>"):
        return False
    if piece.said("elapsed_h") and not piece.said("serve_at", "reading.temperature_c"):
        # Something stood, or was kept, for so long.
        return not (_tells_state(piece) or piece.has("<brine>", "<brined>"))
    return piece.said("elapsed_h", "reading.temperature_c") and not piece.has("<roast>", "<place>")


def _tells_brine(piece: Piece) -> bool:
    return any(path.startswith("brine.") for path in piece.scene.values)


def _tells_state(piece: Piece) -> bool:
    return piece.said("roast.state") and piece.scene.values["roast.state"] != "thawed" and not piece.said("covers")


def _tells_covers(piece: Piece) -> bool:
    return piece.said("covers") and not piece.said("roast.mass_kg")


def _tells_oven(piece: Piece) -> bool:
    return piece.said("oven.temperature_c") and piece.said("roast.mass_kg", "roast.kind")


_NOT_IN_THE_OVEN = ("<out>", "<raw>", "<keep>", "<cold_place>", "<brine>", "<thaw>")


def _tells_under_way(piece: Piece) -> bool:
    return piece.has("<been_in>", "<started>") and piece.said("elapsed_h") and not piece.has(*_NOT_IN_THE_OVEN)


def _tells_roast(piece: Piece) -> bool:
    if piece.has("<off_topic>"):
        return False
    return (
        any(path.startswith(("roast.", "oven.")) for path in piece.scene.values)
        or piece.said("roast.mass_kg", "roast.kind")
        or piece.has("<generic>")
    )


_TOLD: tuple[tuple[Intent, Test], ...] = (
    ("leftovers", _tells_old),
    ("doneness", _tells_under_way),
    ("safety", _tells_danger),
    ("doneness", _tells_reading),
    ("plan", _tells_plan),
    ("brine", _tells_brine),
    ("thaw", _tells_state),
    ("size", _tells_covers),
    ("roast_time", _tells_oven),
    ("plan", _tells_roast),
)


def intents(scene: Scene, converts: bool, scales: bool) -> tuple[Intent, ...]:
    """All that the line asks, in the order in which it asks; empty where nothing of it is understood."""
    if converts:
        return ("convert",)
    if scales:
        return ("scale",)
    found: list[tuple[Intent, Piece]] = []
    for start, end in _pieces(scene):
        piece = Piece(scene, start, end)
        intent = next((name for name, test in _ASKED if test(piece)), None)
        if intent is not None and intent not in [name for name, _ in found]:
            found.append((intent, piece))
    whole = Piece(scene, 0, len(scene.items))
    if found:
        settled = _settled(found, whole)
        scene.hints["pieces"] = [(name, piece.start, piece.end) for name, piece in settled]
        return tuple(name for name, _ in settled)
    told = next((name for name, test in _TOLD if test(whole)), None)
    scene.hints["told"] = told is not None
    if told is not None:
        return (told,)
    if scene.has("<convert>"):
        return ("convert",)
    return ("help",) if scene.has("<help>") else ()


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
    if "safety" in names and "doneness" in names and not whole.has("<done>", "<probe_where>"):
        drop.add("doneness")
    if names & {"thaw", "brine"}:
        drop |= {name for name, piece in found if name == "plan" and _only_names_a_plan(piece)}
    if "roast_time" in names:
        drop |= {name for name, piece in found if name == "safety" and not piece.has(*_FEARS, "<core_temp>")}
    if "leftovers" in names:
        drop |= {name for name, piece in found if name == "safety" and not piece.has(*_FEARS)}
    if (names - drop) & _HAVE_THEIR_HOURS:
        drop |= {"roast_time" for name, piece in found if name == "roast_time" and not piece.has("<cook>", "<takes>")}
    return [row for row in found if row[0] not in drop] or found


def _pieces(scene: Scene) -> list[tuple[int, int]]:
    starts = [0]
    for place, item in enumerate(scene.items):
        if not place:
            continue
        opens = any(tag in item.tags for tag in _QUESTION_WORDS)
        if not opens and ("<can>" in item.tags or item.words in ("how", "what", "which", "should", "como", "que")):
            opens = "<break>" in scene.items[place - 1].tags or scene.items[place - 1].words in ("and", "y")
        if opens or item.words in (".", "?", "!", ";"):
            starts.append(place)
    return [(start, end) for start, end in zip(starts, [*starts[1:], len(scene.items)], strict=True) if end > start]
