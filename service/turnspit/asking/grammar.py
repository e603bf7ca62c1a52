"""The small engine under the readers: phrases as patterns over a tagged line.

A line is a list of `Item`s: a word, or several that the vocabulary knows as one, with what they may mean (`tags`). A
rule is
named by its pattern, which is written like the phrase it reads:

    @clock.rule("half past <number>")
    def _half_past(hour): ...

A pattern is a row of elements: a bare word, `<tag>` for an item that carries the tag, `a|<b>` for either, and a `?`
behind for one that may be missing. A `!` before the last one says what must not come next ("<number> of <them>
!<people>"), a `^` before the first one what must stand before ("^<meal> <number> <number>"). Items tagged `soft`
(articles, "about", "please") may stand between two elements. The function gets the values of the elements with a
`<tag>` in their order (None for a missing one or a bare word) and gives a value, or None to pass.
Rules are tried in the order in which they are written: that order is the precedence, there is no other.

Matching costs at most a constant (rules x pattern length) for each item, so a line is read in time linear in its
length.
"""

from __future__ import annotations

from collections.abc import Callable, Set
from dataclasses import dataclass, field
from typing import Any, TypeAlias, TypeVar

Action: TypeAlias = Callable[..., Any]
AnyAction = TypeVar("AnyAction", bound=Callable[..., Any])
Element: TypeAlias = tuple[tuple[str, ...], bool, bool]
_LONGEST_GAP = 3
# "for 8 how many lbs" are no 8 lb.
_UNITS = frozenset(("<mass_unit>", "<volume_unit>"))
_ASKED = frozenset(("<how_big>", "<how_much>"))
# No number reaches its unit over these.
_PARTS_UNIT = frozenset(("<a>", "'the", "'this", "'that", "'my"))


@dataclass(slots=True)
class Item:
    """A stretch of the line: its words, what they may mean, and where they stand in the text."""

    words: str
    tags: dict[str, Any]
    start: int
    end: int
    rule: str = ""

    def __contains__(self, tag: str) -> bool:
        return tag in self.tags

    def get(self, tag: str) -> Any:
        """The value under a tag, None without it."""
        return self.tags.get(tag)


@dataclass(frozen=True, slots=True)
class Rule:
    """One phrase: its pattern, split into elements, and what it gives.

    `follows` are the tags of which one must come next for the rest to match, None where nothing must. None of
    `unless` may come next behind it, one of `behind` must stand before it.
    """

    name: str
    elements: tuple[Element, ...]
    gives: str
    action: Action
    keeps: bool = False
    follows: frozenset[str] | None = None
    unless: frozenset[str] = frozenset()
    behind: frozenset[str] = frozenset()

    def match(self, items: list[Item], at: int) -> tuple[int, list[Any]] | None:
        """Where the match that starts at `at` ends, and the values of its tags; None without one."""
        if self.behind and self.behind.isdisjoint(_coming(items, at, -1)):
            return None
        found = _match(self.elements, 0, items, at, [])
        if found is None or (self.unless and not self.unless.isdisjoint(_coming(items, found[0] - 1))):
            return None
        return found


@dataclass(slots=True)
class _Start:
    """The rules, by number, that start with one tag: those of one element, and the others by what must follow."""

    alone: list[int] = field(default_factory=list)
    followed: dict[str, list[int]] = field(default_factory=dict)

    def add(self, number: int, follows: frozenset[str] | None) -> None:
        if follows is None:
            self.alone.append(number)
        for follower in follows or ():
            self.followed.setdefault(follower, []).append(number)


@dataclass(slots=True)
class Grammar:
    """The rules of one dimension, in order of precedence, indexed by what they start with."""

    name: str
    rules: list[Rule] = field(default_factory=list)
    _starts: dict[str, _Start] = field(default_factory=dict)

    def rule(self, *patterns: str, gives: str = "", keeps: bool = False) -> Callable[[AnyAction], AnyAction]:
        """Add a rule for each pattern; the decorated function makes the value.

        With `keeps` the item that is made still means all that its parts do ("left the ham out" is still a ham).
        """

        def add(action: AnyAction) -> AnyAction:
            for pattern in patterns:
                row, _, barred = pattern.partition(" !")
                led, row = row[1:].split(" ", 1) if row.startswith("^") else ("", row)
                elements = tuple(_element(part) for part in row.split())
                if elements[0][1]:
                    raise ValueError(f"{self.name} rule {pattern!r} starts with an element that may be missing")
                rule = Rule(
                    f"{self.name}: {pattern}",
                    elements,
                    gives or self.name,
                    action,
                    keeps,
                    _follows(elements),
                    frozenset(_element(barred)[0]) if barred else frozenset(),
                    frozenset(_element(led)[0]) if led else frozenset(),
                )
                for start in elements[0][0]:
                    self._starts.setdefault(start, _Start()).add(len(self.rules), rule.follows)
                self.rules.append(rule)
            return action

        return add

    def reduce(self, items: list[Item]) -> list[Item]:
        """The line with every match, from left to right, put in the place of the items it read."""
        reduced: list[Item] = []
        starts = self._starts.keys()
        at = 0
        while at < len(items):
            # Most items start nothing.
            found = None if starts.isdisjoint(items[at].tags) else self.first(items, at)
            if found is None:
                reduced.append(items[at])
                at += 1
            else:
                item, at = found
                reduced.append(item)
        return reduced

    def first(self, items: list[Item], at: int) -> tuple[Item, int] | None:
        """The first rule that reads something at `at`: the item it makes and where it ends."""
        item = items[at]
        starts = self._starts
        coming = _coming(items, at)
        numbers: list[int] = []
        for tag in item.tags:
            if tag in starts:
                start = starts[tag]
                numbers += start.alone
                for follower in coming:
                    if follower in start.followed:
                        numbers += start.followed[follower]
        for number in numbers if len(numbers) <= 1 else sorted(set(numbers)):
            rule = self.rules[number]
            matched = rule.match(items, at)
            if matched is None:
                continue
            end, values = matched
            value = rule.action(*values)
            if value is not None:
                kept = items[at:end] if rule.keeps or end - at == 1 else ()
                tags = {tag: v for one in kept for tag, v in one.tags.items()}
                if end - at > 1:
                    tags.pop("<number>", None)
                tags[rule.gives] = value
                return _joined(items[at:end], tags, rule.name), end
        return None


def _element(part: str) -> Element:
    optional = part.endswith("?")
    names = part.rstrip("?").split("|")
    valued = any(name.startswith("<") for name in names)
    return tuple(name if name.startswith("<") else f"'{name}" for name in names), optional, valued


def _follows(elements: tuple[Element, ...]) -> frozenset[str] | None:
    names: set[str] = set()
    for element_names, optional, _ in elements[1:]:
        names.update(element_names)
        if not optional:
            return frozenset(names)
    return None


def _coming(items: list[Item], at: int, step: int = 1) -> Set[str]:
    """The tags of the next item, and of those that may be reached over soft ones; of those before with `step` -1."""
    near = at + step
    if not 0 <= near < len(items):
        return frozenset()
    first = items[near].tags
    if "<soft>" not in first:
        return first.keys()
    tags = set(first)
    for place in range(near + step, near + step * (1 + _LONGEST_GAP), step):
        if not 0 <= place < len(items):
            break
        tags.update(items[place].tags)
        if "<soft>" not in items[place].tags:
            break
    return tags


def _match(
    elements: tuple[Element, ...], place: int, items: list[Item], at: int, values: list[Any]
) -> tuple[int, list[Any]] | None:
    if place == len(elements):
        return at, values
    names, optional, valued = elements[place]
    gap = at
    while gap < len(items) and gap - at <= _LONGEST_GAP:
        tags = items[gap].tags
        for name in names:
            if name in tags and not (name in _UNITS and gap and not _ASKED.isdisjoint(tags)):
                value = tags[name] if name[0] == "<" else None
                found = _match(elements, place + 1, items, gap + 1, [*values, value] if valued else values)
                if found is not None:
                    return found
        if place == 0 or "<soft>" not in tags or (names[0].endswith("_unit>") and not _PARTS_UNIT.isdisjoint(tags)):
            # "165 an hour early" is no 165 hours, "feeding 20 this year" no 20 years.
            break
        gap += 1
    if optional:
        return _match(elements, place + 1, items, at, [*values, None] if valued else values)
    return None


def _joined(items: list[Item], tags: dict[str, Any], rule: str) -> Item:
    return Item(" ".join(item.words for item in items), tags, items[0].start, items[-1].end, rule)
