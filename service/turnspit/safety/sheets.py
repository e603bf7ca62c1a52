"""What is kept and pinned up: the rows of a log sheet and its CSV, labels for what is chilled, the staff card.

Values and messages only; a page or a printer gives them their shape.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal

from turnspit.errors import Impossible
from turnspit.message import Message
from turnspit.reference import Kitchen, is_licensed, rule
from turnspit.safety.log import Log, LogEntry
from turnspit.safety.logcheck import Gap, LogVerdict

Storage = Literal["refrigerator", "freezer"]
CSV_COLUMNS = (
    "number",
    "measured_at",
    "recorded_at",
    "who",
    "station",
    "temperature_c",
    "action",
    "corrects",
    "stands",
    "note",
)


@dataclass(frozen=True, slots=True)
class SheetRow:
    """One line of a log sheet: an entry, whether it still stands, or a gap in which nothing was measured."""

    at: datetime
    entry: LogEntry | None = None
    gap: Gap | None = None
    stands: bool = True


def sheet_rows(log: Log, verdict: LogVerdict) -> tuple[SheetRow, ...]:
    """The entries by time of measuring, corrected ones marked as such, with every gap as a line of its own."""
    replaced = {entry.corrects for entry in log.entries if entry.corrects is not None}
    rows = [SheetRow(entry.at, entry=entry, stands=entry.number not in replaced) for entry in log.entries]
    rows += [SheetRow(gap.since, gap=gap) for gap in verdict.gaps]
    return tuple(sorted(rows, key=lambda row: (row.at, row.gap is not None)))


def log_csv(log: Log) -> str:
    """The whole log as CSV (RFC 4180), in the order of recording; times in ISO 8601, temperatures in C."""
    replaced = {entry.corrects for entry in log.entries if entry.corrects is not None}
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(("kind", "item", *CSV_COLUMNS))
    for entry in log.entries:
        core_c = "" if entry.temperature_c is None else f"{entry.temperature_c:.1f}"
        writer.writerow(
            (
                log.kind,
                _inert(log.item),
                entry.number,
                entry.at.isoformat(),
                entry.recorded_at.isoformat(),
                _inert(entry.who),
                _inert(entry.station),
                core_c,
                entry.action or "",
                entry.corrects or "",
                "yes" if entry.number not in replaced else "no",
                _inert(entry.note),
            )
        )
    return text.getvalue()


def _inert(text: str) -> str:
    """Text that a spreadsheet will not take for a formula."""
    return f"'{text}" if text.startswith(("=", "+", "-", "@", "\t", "\r")) else text


@dataclass(frozen=True, slots=True)
class Label:
    """What is stuck on a chilled box: the item, when it was made, the last day to use it, who put it away."""

    item: str
    made_at: datetime
    use_by: datetime | None
    initials: str
    storage: Storage
    rule: str


def label(
    item: str, made_at: datetime, initials: str, kitchen: Kitchen | None = None, storage: Storage = "refrigerator"
) -> Label:
    """The label of a cooked dish; unstated, the stricter of both kitchens' days.

    At home four days after it was made; in a licensed kitchen the seventh calendar day, the day of preparation being
    the first. Frozen food carries no last day for safety. Raises Impossible without initials.
    """
    if not initials.strip():
        raise Impossible("initials", initials, "are empty", "give the initials of who put it away")
    if storage == "freezer":
        return Label(item, made_at, None, initials, storage, "leftovers-days")
    licensed = kitchen is not None and is_licensed(kitchen)
    name = "date-marking" if licensed else "leftovers-days"
    days = rule(name, kitchen).limits["elapsed_max_days"]
    use_by = made_at + timedelta(days=days - 1 if licensed else days)
    return Label(item, made_at, use_by, initials, storage, name)


@dataclass(frozen=True, slots=True)
class CardSection:
    """One part of the staff card: a heading and its lines."""

    title: Message
    lines: tuple[Message, ...]


def staff_card(kitchen: Kitchen | None = None) -> tuple[CardSection, ...]:
    """The one-page card for teaching: probe, carve, cool, keep."""
    licensed = kitchen is not None and is_licensed(kitchen)
    cooling = "two-hours" if kitchen == "home" else "cooling-two-stage"
    keeping = "date-marking" if licensed else "leftovers-days"
    parts: Sequence[tuple[str, tuple[str, ...]]] = (
        ("probe", ("thermometer-check", "thermometer-decides", "poultry-165", "meat-145", "stuffing-165")),
        ("carve", ("raw-juices", "colour-no-proof", "time-control" if licensed else "two-hours")),
        ("hold", ("hot-hold",)),
        ("cool", (cooling, keeping, "reheat-165")),
        ("guests", ("allergens", "at-risk", "local-codes")),
    )
    return tuple(
        CardSection(Message(f"safety-card-{name}"), tuple(Message(f"rule-{each}") for each in rules))
        for name, rules in parts
    )
