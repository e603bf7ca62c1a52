"""A piece of a line, as the tests of the intents see it."""

from __future__ import annotations

from turnspit.asking.scene import Scene

_QUESTION_TAGS = """
<how_big> <how_long> <how_much> <when> <what_temp> <oven_temp> <where> <plan> <probe_where> <done> <yield>
"""
QUESTION_WORDS = tuple(_QUESTION_TAGS.split())

_FEEDS = ("feed", "serv", "enough", "suffic", "do for", "alcanza", "da para", "basta")


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

    @property
    def hours(self) -> float:
        """The hours that are said to have gone by."""
        return float(self.scene.values.get("elapsed_h", 0.0))

    @property
    def oven_c(self) -> float | None:
        """The oven's setting that is said."""
        found: float | None = self.scene.values.get("oven.temperature_c")
        return found

    @property
    def talk_of(self) -> str:
        """What the talk was about before this line."""
        return str(self.scene.hints.get("talk_of", ""))

    @property
    def of_frozen(self) -> bool:
        """Whether the roast is said to be frozen, in part at least."""
        return self.said("roast.state") and self.scene.values["roast.state"] != "thawed"

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
    def parted(self) -> bool:
        """Whether "and" parts it from what comes next."""
        return self.end < len(self.scene.items) and self.items[-1].words in ("and", "y", "then", "plus")

    @property
    def feeds(self) -> bool:
        """Whether it asks, in plain words, if so much feeds so many."""
        return any("<feeds>" in item and item.words.startswith(_FEEDS) for item in self.items)

    @property
    def unknown_words(self) -> int:
        """How many words mean nothing to anybody here."""
        return sum(item.words.isalpha() and len(item.tags) == 1 for item in self.items)

    def places(self, tag: str) -> list[int]:
        """Where in the line the items of this piece stand that carry the tag."""
        return [self.start + at for at, item in enumerate(self.items) if tag in item]

    @property
    def only_counts(self) -> bool:
        """`..., how many?`: nothing but the question."""
        return self.only_asks("<how_much>", "<covers>", "<mass>", "<birds>")

    def only_asks(self, question: str, *beside: str) -> bool:
        """Whether it is nothing but a question word, beside what these tags stand for."""
        small = ("<soft>", "<break>", "<and_sign>", "'and", "'y", *beside)
        rest = [item for item in self.items if not any(tag in item.tags for tag in small)]
        return len(rest) == 1 and question in rest[0].tags

    @property
    def danger(self) -> str:
        """The first danger that it speaks of, "" for none."""
        return next((str(item.tags["<danger>"]) for item in self.items if "<danger>" in item), "")

    @property
    def chooses_a_rest(self) -> bool:
        """Whether it asks which of two spans something stands ("20 minutes or an hour"), one less than an hour."""
        spans = [item.tags["<duration>"].hours for item in self.items if "<duration>" in item]
        return self.has("'or", "'o") and bool(spans) and min(spans) < 1 and self.has("<stands>", "<rest>")

    @property
    def serves(self) -> bool:
        """Whether it speaks of serving; "ready" alone may be the roast's, at the oven."""
        return any(item.get("<serve>") not in (None, "ready") for item in self.items)

    @property
    def ok_asked(self) -> bool:
        """Whether "ok" asks for leave ("2 hours on the counter ok?") and does not open a sentence ("ok, 15 lb
        then") nor tells something ("the cavity is fine now").
        """
        ok = next((at for at, item in enumerate(self.items) if "<ok>" in item), 0)
        if not ok:
            return False
        told = ok - 1 if ok > 1 else -1
        leave = any("<can>" in item for at, item in enumerate(self.items) if at != told)
        return leave or self.items[-1].words == "?" or "<ok>" in self.items[-1].tags

    @property
    def is_asked(self) -> bool:
        """Whether a question mark ends it."""
        return self.end < len(self.scene.items) and self.scene.items[self.end].words == "?"

    @property
    def asks(self) -> bool:
        """Whether a question word opens or fills it."""
        return self.is_asked or self.has(*QUESTION_WORDS, "<can>", "'what", "'whats", "'how", "'which", "'?")
