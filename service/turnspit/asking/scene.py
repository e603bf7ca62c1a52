"""The line while it is read: its items, what has been used, and the values found so far with the words that gave
them.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import datetime
from typing import Any, Literal

from turnspit.asking.contract import Intent, Trace
from turnspit.asking.grammar import Item
from turnspit.asking.vocabulary import Language

Units = Literal["us", "metric"]
_BREAK_COSTS = 3
_REACH = 12


@dataclass(slots=True)
class Scene:
    """What the readers of one line share. `before` is what the conversation holds, by path; `usual` the reader's
    units; `apart` how many of the diners before are children, and how many do not eat the roast; `tenor` how much
    the words speak for each intent.
    """

    items: list[Item]
    now: datetime
    language: Language = "en"
    usual: Units | None = None
    before: Mapping[str, Any] = field(default_factory=dict)
    talk: bool = False
    apart: tuple[int, int] = (0, 0)
    tenor: Mapping[Intent, float] = field(default_factory=dict)
    values: dict[str, Any] = field(default_factory=dict)
    traces: list[Trace] = field(default_factory=list)
    used: set[int] = field(default_factory=set)
    ambiguous: str = ""
    hints: dict[str, Any] = field(default_factory=dict)
    tags: set[str] = field(init=False)

    def __post_init__(self) -> None:
        self.tags = {tag for item in self.items for tag in item.tags}

    def put(self, path: str, value: Any, rule: str, *places: int, keep: bool = False) -> None:
        """Set a value that the items at `places` gave; the first that is said of a path stands."""
        if path in self.values:
            return
        self.values[path] = value
        words = " ".join(self.items[place].words for place in sorted(set(places)))
        self.traces.append(Trace(rule, words, path, value))
        if not keep:
            self.used.update(places)

    def change(self, path: str, value: Any) -> None:
        """Set a value anew in the light of the talk; the words that gave it stay."""
        self.values[path] = value
        self.traces[:] = [replace(trace, value=value) if trace.path == path else trace for trace in self.traces]

    def drop(self, path: str) -> None:
        """Take a value back, with its trace."""
        self.values.pop(path, None)
        self.traces[:] = [trace for trace in self.traces if trace.path != path]

    def has(self, *tags: str) -> bool:
        """Whether any item carries one of the tags."""
        return not self.tags.isdisjoint(tags)

    def find(self, tag: str, unused: bool = False) -> Iterator[tuple[int, Item]]:
        """The items that carry a tag, with their places."""
        if tag not in self.tags:
            return
        for place, item in enumerate(self.items):
            if tag in item.tags and not (unused and place in self.used):
                yield place, item

    def walk(self, place: int, step: int) -> Iterator[tuple[int, int, Item]]:
        """The items from a place on in one direction, with how far they are: soft words are free, a break costs
        more.
        """
        far = 0
        at = place + step
        for _ in range(_REACH):
            if not 0 <= at < len(self.items):
                return
            item = self.items[at]
            if "<break>" in item.tags:
                far += _BREAK_COSTS
            elif "<soft>" not in item.tags:
                far += 1
            yield far, at, item
            at += step

    def nearest(
        self, place: int, *tags: str, reach: float = 4, after_costs: float = 0, but: Collection[int] = ()
    ) -> tuple[float, int, str] | None:
        """The nearest item with one of the tags within reach, those at `but` aside: how far, where, and the tag."""
        best: tuple[float, int, str] | None = None
        for step, cost in ((-1, 0.0), (1, after_costs)):
            for far, at, item in self.walk(place, step):
                if far + cost > reach or (best is not None and far + cost >= best[0]):
                    break
                tag = next((tag for tag in tags if tag in item.tags), None)
                if tag is not None and at not in but:
                    best = (far + cost, at, tag)
                    break
        return best

    def before_is(self, place: int, *tags: str) -> int | None:
        """The place of the item just before (soft words aside) if it carries one of the tags."""
        return self._beside(range(place - 1, max(-1, place - 1 - _REACH), -1), tags)

    def after_is(self, place: int, *tags: str) -> int | None:
        """The place of the item just after (soft words aside) if it carries one of the tags."""
        return self._beside(range(place + 1, min(len(self.items), place + 1 + _REACH)), tags)

    def _beside(self, places: range, tags: tuple[str, ...]) -> int | None:
        """The first of the places that carries one of the tags, over soft words alone."""
        for at in places:
            found = self.items[at].tags
            if not found.keys().isdisjoint(tags):
                return at
            if "<soft>" not in found:
                return None
        return None
