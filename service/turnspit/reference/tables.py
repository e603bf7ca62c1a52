"""Loads the published tables: one TOML file a table, a source on every row, or the load stops and says where.

A file has `title`, `source` (document, table, year), `obtained` (one of STANDINGS) and `[[row]]` entries. A row may
give its own `source` and `obtained`; where the file has none, each row must.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from types import MappingProxyType
from typing import Any

from turnspit.errors import Unknown

STANDINGS = ("exact", "print", "abstract", "computed", "memory", "common practice")
"""How a figure came here: exact by definition, read in a copy of the document, in its abstract, computed from other
rows, recalled and not read again, or a rule of the trade without a source."""

Row = Mapping[str, Any]


class BadTable(Exception):
    """A table file that may not be used; the text names file, row and fault."""


@dataclass(frozen=True, slots=True)
class Table:
    """A published table; each row carries `source` and `obtained` beside its own columns."""

    name: str
    title: str
    note: str
    rows: tuple[Row, ...]

    def __iter__(self) -> Iterator[Row]:
        return iter(self.rows)

    def by(self, column: str) -> Mapping[str, Row]:
        """The rows by a column whose values are unique. Raises BadTable for a value that stands twice."""
        found: dict[str, Row] = {}
        for number, row in enumerate(self.rows, 1):
            value = str(row[column])
            if value in found:
                raise BadTable(f"{self.name}.toml, row {number}: {column} {value!r} stands twice")
            found[value] = row
        return MappingProxyType(found)


def names() -> tuple[str, ...]:
    """The tables there are."""
    entries = files("turnspit.reference").joinpath("data").iterdir()
    return tuple(sorted(entry.name.removesuffix(".toml") for entry in entries if entry.name.endswith(".toml")))


@cache
def table(name: str) -> Table:
    """The table of that name. Raises Unknown without one, BadTable where a row has no source."""
    if name not in names():
        raise Unknown("table", name, names())
    text = files("turnspit.reference").joinpath("data", f"{name}.toml").read_text(encoding="utf-8")
    return parse(name, text)


def parse(name: str, text: str) -> Table:
    """A table from the text of its file; see the module for the form. Raises BadTable."""
    try:
        content = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise BadTable(f"{name}.toml: {error}") from error
    if not content.get("title") or not content.get("row"):
        raise BadTable(f"{name}.toml: a title and at least one [[row]] are needed")
    inherited: dict[str, Any] = {key: content[key] for key in ("source", "obtained") if key in content}
    rows = tuple(_row(name, number, {**inherited, **row}) for number, row in enumerate(content["row"], 1))
    return Table(name, str(content["title"]), str(content.get("note", "")), rows)


def _row(name: str, number: int, row: dict[str, Any]) -> Row:
    if not str(row.get("source", "")).strip():
        raise BadTable(f"{name}.toml, row {number}: no source")
    if row.get("obtained") not in STANDINGS:
        raise BadTable(
            f"{name}.toml, row {number}: obtained {row.get('obtained')!r} is none of {', '.join(STANDINGS)}"
        )
    empty = [key for key, value in row.items() if value in ("", [])]
    if empty:
        raise BadTable(f"{name}.toml, row {number}: {', '.join(empty)} is empty")
    return MappingProxyType(row)
