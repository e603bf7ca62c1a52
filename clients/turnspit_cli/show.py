"""An ask response as text, on a terminal or in a pipe."""

from __future__ import annotations

import sys
from collections.abc import Iterable
from datetime import datetime
from itertools import groupby
from typing import Any

from rich.console import Console
from rich.table import Table
from rich.text import Text

from turnspit.message import Message
from turnspit.words import Reader, say
from turnspit.words.days import day_heading
from turnspit.words.measures import clock

PIPED_WIDTH = 110
MARK = "- "
STYLES = {"stop": "bold red", "warn": "bold yellow", "info": "dim"}


class Screen:
    """Where answers are shown. In a pipe: no colours, no boxes, a width that does not depend on a window."""

    def __init__(self, console: Console | None = None) -> None:
        self.console = console or Console(width=None if sys.stdout.isatty() else PIPED_WIDTH, highlight=False)

    def show(self, response: dict[str, Any]) -> None:
        """Print one ask response."""
        reader = reader_of(response)
        self.console.print(Text(response["answer"]["headline"], style="bold"))
        grave = [caution for caution in response["cautions"] if caution["severity"] != "info"]
        self._cautions(grave, reader)
        self._lines(response["answer"]["lines"])
        plan = response["data"].get("plan")
        if plan and plan["tasks"]:
            self._timetable(plan["tasks"], reader)
        self._listed("cli-assumed", response["assumptions"], reader)
        self._listed("cli-info", [c["text"] for c in response["cautions"] if c not in grave], reader)
        self._trace(response["data"].get("trace", []))
        if response["question"]:
            self.console.print(Text(f"\n{response['question']['text']}", style="bold"))
            self._lines(response["question"]["choices"], MARK)
        self._listed("cli-next", response["next"], reader)

    def _lines(self, lines: Iterable[str], mark: str = "") -> None:
        for line in lines:
            self.console.print(Text(f"{mark}{line}"))

    def _cautions(self, cautions: list[dict[str, Any]], reader: Reader) -> None:
        for caution in cautions:
            label = _label(f"cli-{caution['severity']}", reader)
            self.console.print(Text.assemble((f"{label}: ", STYLES[caution["severity"]]), caution["text"]))

    def _timetable(self, tasks: list[dict[str, Any]], reader: Reader) -> None:
        timed = [(datetime.fromisoformat(task["start"]), _task(task)) for task in tasks]
        for day, of_day in groupby(timed, key=lambda row: day_heading(row[0], reader)):
            self.console.print(Text(f"\n{day}", style="bold"))
            self._table((Text(clock(at, reader), style="bold"), task) for at, task in of_day)

    def _listed(self, key: str, texts: list[str], reader: Reader) -> None:
        if texts:
            self.console.print(Text(f"\n{_label(key, reader)}", style="bold"))
            self._table((MARK.strip(), Text(text, style="dim")) for text in texts)

    def _table(self, rows: Iterable[tuple[str | Text, ...]]) -> None:
        table = Table(box=None, show_header=False, pad_edge=False, padding=(0, 2, 0, 0))
        for row in rows:
            table.add_row(*row)
        with self.console.capture() as written:
            self.console.print(table)
        print("\n".join(line.rstrip() for line in written.get().rstrip("\n").split("\n")), flush=True)

    def _trace(self, traces: list[dict[str, Any]]) -> None:
        if not traces:
            return
        self.console.print()
        self._table((repr(t["words"]), t["path"], str(t["value"]), t["rule"]) for t in traces)


def reader_of(response: dict[str, Any]) -> Reader:
    """The reader that a response was worded for, at the time of its first task."""
    held = response["data"].get("reader", {})
    plan = response["data"].get("plan") or {}
    at = plan.get("now") or next((task["start"] for task in plan.get("tasks", [])), "2000-01-01T00:00:00+00:00")
    return Reader(datetime.fromisoformat(at), **held)


def _task(task: dict[str, Any]) -> Text:
    text = Text(task["title"])
    for caution in task["cautions"]:
        if caution["severity"] != "info":
            text.append(f"\n{caution['text']}", style=STYLES[caution["severity"]])
    return text


def _label(key: str, reader: Reader) -> str:
    return say(Message(key), reader)
