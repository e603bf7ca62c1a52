"""What an open question within one intent is about.

"Where does the probe go" and "it is done early" are both doneness; the tables in `topics.toml`, and in `dangers.toml`
and `danger_signs.toml` for what can hurt somebody, tell them apart by the words that stand in the line.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator, Mapping
from functools import cache
from importlib.resources import files

from turnspit.asking.clean import clean

_CLIPPED = re.compile(r"(\d) ?(?:h|hr|hrs)\b")
"""`2h on the side` stood for hours."""

Groups = tuple[re.Pattern[str], ...]


def topic_of(text: str, table: str, usual: str = "") -> str:
    """The first row of that table whose words stand in the text, else `usual`."""
    return next(rows_of(text, table), usual)


def rows_of(text: str, table: str) -> Iterator[str]:
    """Every row of that table whose words stand in the text, in their order."""
    plain = _CLIPPED.sub(r"\1 hours", f"{clean(text)} ")
    return (name for name, groups in _tables()[table].items() if all(group.search(plain) for group in groups))


def named(text: str, table: str) -> str:
    """The same without the case that a row's name has behind its dash."""
    return topic_of(text, table).partition("-")[0]


@cache
def _tables() -> Mapping[str, Mapping[str, Groups]]:
    room = files("turnspit.asking.answers")
    return {
        table: {name: tuple(_pattern(group) for group in groups) for name, groups in rows.items()}
        for file in ("topics.toml", "dangers.toml", "danger_signs.toml")
        for table, rows in tomllib.loads(room.joinpath(file).read_text(encoding="utf-8")).items()
    }


def _pattern(beginnings: list[str]) -> re.Pattern[str]:
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, beginnings))})")
