"""Who sits at the table, told one by one: `me, my wife, two kids and the in-laws`, `7 adults and my nephew`.

A row of people, parted by commas and "and", in which a relative is named, makes one number; "so seven people" behind
some is the sum.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from turnspit.asking.grammar import Grammar, Item
from turnspit.asking.readers.company.covers import Covers
from turnspit.asking.readers.measures.numbers import number

_JOINS = frozenset((",", "and", "y", "plus", "+", "mas", "then", "e", "n", "with", "con", "viene"))
_WE_ARE = frozenset(("were", "we are", "well be", "we will be", "itll be", "somos", "seremos", "vamos a ser"))
_AGES = frozenset(("under", "aged", "over", "age"))
_BOTH = frozenset(("both", "ambos", "ambas"))
# Whose mother: "the missus plus her mum".
_WHOSE = frozenset(("her", "his", "their", "hers", "sus", "su"))
_MINE = frozenset(("my", "our", "mi", "mis", "nuestros"))
_SUMS = frozenset(("so", "makes", "thats", "altogether", "total"))
# "plus one" is a guest, "that one" a bird.
_NO_RELATIVE = frozenset(("one",))


class _Company(Grammar):
    """People are told in rows of any length, which no pattern spells out."""

    def reduce(self, items: list[Item]) -> list[Item]:
        """The line with every row of people made one item of covers."""
        if not any("<relatives>" in item or _of_kids(item.get("<covers>")) for item in items):
            return items
        reduced: list[Item] = []
        at = 0
        while at < len(items):
            row = list(_row(items, at))
            total = _total(items, row[-1][0]) if row else None
            kids_last = len(row) > 1 and all(_of_kids(covers) for _, covers, _ in row[1:])
            joined = len(row) > 2 or any(_joins(item) for item in items[at : row[-1][0]]) if row else False
            if (
                total is not None
                or (len(row) > 1 and joined and any(relative for _, _, relative in row))
                or kids_last
            ):
                end, count = total or (row[-1][0], _sum(items, row))
                covers = replace(row[0][1], count=count, kids=sum(one.kids for _, one, _ in row))
                reduced.append(_joined(items[at:end], covers))
                at = end
            else:
                reduced.append(items[at])
                at += 1
        return reduced


grammar = _Company("<covers>")


def _of_kids(covers: object) -> bool:
    """Whether all of them are children."""
    return isinstance(covers, Covers) and 0 < covers.count == covers.kids


def _joined(row: list[Item], covers: Covers) -> Item:
    words = " ".join(item.words for item in row)
    return Item(words, {"<covers>": covers}, row[0].start, row[-1].end, "company: a row of people")


def _joins(item: Item) -> bool:
    """Whether it joins one to the next; "and the four kids" does with its first word."""
    return item.words.split()[0] in _JOINS


def _row(items: list[Item], at: int) -> Iterator[tuple[int, Covers, bool]]:
    """The people that stand in a row from a place on: where each ends, how many they are, and whether relatives."""
    found = _people(items, at)
    while found is not None:
        yield found
        at = found[0]
        joined = comma = False
        while at < len(items) and (items[at].words in _JOINS or items[at].words in _WHOSE or "<soft>" in items[at]):
            if items[at].words in _SUMS:
                return
            # "me my husband his parents": whose each is joins them.
            joined = joined or any(items[at].words in words for words in (_JOINS, _MINE, _WHOSE))
            comma = items[at].words == ","
            at += 1
        if at < len(items) and "<relatives>" in items[at]:
            # "mum dad me and the kids": they stand side by side.
            joined = joined or items[at].words.split()[0] in (*_MINE, *_WHOSE) or (at == found[0] and found[2])
        kids = at < len(items) and _of_kids(items[at].get("<covers>"))
        found = _added(items, at)
        in_all = at < len(items) and (" of us" in items[at].words or items[at].words in _WE_ARE)
        if found is None and (joined or kids) and not (comma and in_all):
            # "the in-laws, 6 of us", "mi suegra, somos 11" is who they are, "the in-laws and 4 of us" more.
            found = _people(items, at)


def _added(items: list[Item], at: int) -> tuple[int, Covers, bool] | None:
    """`plus my brother`: people who come to those told before."""
    more = items[at].get("<covers>") if at < len(items) else None
    if not isinstance(more, Covers) or more.count or more.more <= 0 or not _joins(items[at]):
        return None
    return at + 1, replace(more, count=more.more, more=0), True


def _sum(items: list[Item], row: list[tuple[int, Covers, bool]]) -> int:
    """How many a row comes to; "four of us so seven people" has been summed already."""
    summed = [one.count for end, one, _ in row if not _SUMS.isdisjoint(items[end - 1].words.split())]
    return summed[-1] if summed else sum(one.count for _, one, _ in row)


def _total(items: list[Item], at: int) -> tuple[int, int] | None:
    """`so seven people` behind a row: where it ends, and how many they are in all."""
    said = False
    while at < len(items) and ("<soft>" in items[at] or items[at].words in _SUMS):
        said = said or items[at].words in _SUMS
        at += 1
    covers = items[at].get("<covers>") if at < len(items) else None
    return (at + 1, covers.count) if said and isinstance(covers, Covers) and covers.count else None


def _people(items: list[Item], at: int) -> tuple[int, Covers, bool] | None:
    if at == len(items):
        # A row may end the line: "me, my wife,".
        return None
    item = items[at]
    covers = item.get("<covers>")
    if isinstance(covers, Covers):
        aged = items[at + 1].words in _AGES if at + 2 < len(items) and "<number>" in items[at + 2] else False
        return (at + (3 if aged else 1), covers, False) if covers.count and not covers.more else None
    told = item.words in _WE_ARE or item.words.endswith(" of")
    if "<feeds>" in item and told and at + 1 < len(items) and "<number>" in items[at + 1]:
        return at + 2, Covers(int(number(items[at + 1].tags["<number>"]).value)), False
    many = 1
    if "<number>" in item or item.words in _BOTH:
        many = 2 if item.words in _BOTH else int(number(item.tags["<number>"]).value)
        at += 1
        while at < len(items) and "<soft>" in items[at]:
            at += 1
    if at < len(items) and "<relatives>" in items[at] and items[at].words not in _NO_RELATIVE:
        each = 1 if many > 1 else int(items[at].tags["<relatives>"])
        return at + 1, Covers(many * each), True
    return None
