"""A log of readings against a roast or a food: append-only, with who and when; a correction is a new entry."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, fields, replace
from datetime import datetime, timedelta
from typing import Any, Literal, Self, get_args

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.reference import Action

LogKind = Literal["roast", "cooling", "hot_holding", "cold_holding", "thaw"]
Corrective = Literal["cooked_on", "reheated", "chilled", "discarded"]
LOG_KINDS: tuple[LogKind, ...] = get_args(LogKind)
CORRECTIVES: tuple[Corrective, ...] = get_args(Corrective)
CLOCKS_APART = timedelta(minutes=5)
"""How far the clock of who measures may be ahead of the clock that records."""

CORRECTS: Mapping[Action, tuple[Corrective, ...]] = {
    "cook_on": ("cooked_on", "discarded"),
    "measure": ("cooked_on", "discarded"),
}
"""Which recorded action answers a stop; whatever is not named here is answered by throwing away alone."""


@dataclass(frozen=True, slots=True)
class LogEntry:
    """One line of a log. `at` is when it was measured or done, `recorded_at` when it was written down, both aware.

    It holds a reading (`temperature_c` at `station`), a corrective `action`, or only a note. `corrects` is the number
    of the entry whose reading it replaces. `number` counts from 1 in the order of recording.
    """

    number: int
    at: datetime
    recorded_at: datetime
    who: str
    temperature_c: float | None = None
    station: str = ""
    action: Corrective | None = None
    corrects: int | None = None
    note: str = ""


@dataclass(frozen=True, slots=True)
class Log:
    """The entries about one food, in the order they were recorded. Every method gives a new log; none removes.

    Raises Unknown for a kind of log that is not kept.
    """

    kind: LogKind
    item: str
    entries: tuple[LogEntry, ...] = ()

    def __post_init__(self) -> None:
        if self.kind not in LOG_KINDS:
            raise Unknown("kind", self.kind, LOG_KINDS)

    def reading(
        self, at: datetime, temperature_c: float, who: str, recorded_at: datetime | None = None, station: str = ""
    ) -> Log:
        """The log with one reading more. Raises OutOfRange for a temperature food cannot have, Impossible."""
        OutOfRange.check("temperature_c", temperature_c, -60.0, 130.0, "is that Fahrenheit?")
        return self._with(LogEntry(0, at, recorded_at or at, who, temperature_c=temperature_c, station=station))

    def correct(self, number: int, temperature_c: float, who: str, recorded_at: datetime, note: str = "") -> Log:
        """The log with a new entry that replaces the reading of entry `number`; the old one stays to be seen."""
        wrong = self._reading(number)
        OutOfRange.check("temperature_c", temperature_c, -60.0, 130.0, "is that Fahrenheit?")
        return self._with(
            replace(wrong, recorded_at=recorded_at, who=who, temperature_c=temperature_c, corrects=number, note=note)
        )

    def act(
        self, action: Corrective, at: datetime, who: str, recorded_at: datetime | None = None, note: str = ""
    ) -> Log:
        """The log with a corrective action."""
        if action not in CORRECTIVES:
            raise Impossible("action", action, "corrects nothing", f"record one of {', '.join(CORRECTIVES)}")
        return self._with(LogEntry(0, at, recorded_at or at, who, action=action, note=note))

    def note(self, text: str, at: datetime, who: str) -> Log:
        """The log with a remark that changes nothing."""
        return self._with(LogEntry(0, at, at, who, note=text))

    def readings(self, station: str | None = None) -> tuple[LogEntry, ...]:
        """The readings that stand, corrections applied, by time of measuring; of one station where it is named."""
        replaced = {entry.corrects for entry in self.entries if entry.corrects is not None}
        standing = [
            entry
            for entry in self.entries
            if entry.temperature_c is not None and entry.number not in replaced and station in (None, entry.station)
        ]
        return tuple(sorted(standing, key=lambda entry: (entry.at, entry.number)))

    def actions(self) -> tuple[LogEntry, ...]:
        """The corrective actions by time."""
        return tuple(sorted((entry for entry in self.entries if entry.action), key=lambda entry: entry.at))

    def until(self, now: datetime) -> Log:
        """The log without what is dated after `now`: what is yet to be measured shows nothing."""
        return replace(self, entries=tuple(entry for entry in self.entries if entry.at <= now + CLOCKS_APART))

    def before_corrections(self) -> tuple[tuple[Log, datetime], ...]:
        """The log as it stood just before each correction, with the time of it."""
        return tuple(
            (replace(self, entries=self.entries[:count]), entry.recorded_at)
            for count, entry in enumerate(self.entries)
            if entry.corrects is not None
        )

    def before_late_readings(self) -> tuple[tuple[Log, datetime], ...]:
        """The log as it stood before each reading that was written down late and behind a later one.

        With the time of the last reading it then had: what that showed, a reading from memory does not undo.
        """
        return tuple(
            (replace(self, entries=self.entries[:count]), max(before))
            for count, entry in enumerate(self.entries)
            if entry.temperature_c is not None
            and entry.corrects is None
            and entry.recorded_at > entry.at
            and (before := [one.at for one in self.entries[:count] if one.temperature_c is not None])
            and max(before) > entry.at
        )

    def document(self) -> dict[str, Any]:
        """The JSON form, for keeping; what is not there is left out."""
        return {"kind": self.kind, "item": self.item, "entries": [_entry_document(entry) for entry in self.entries]}

    @classmethod
    def from_document(cls, document: Mapping[str, Any]) -> Self:
        """The log that `document` was made from. Raises KeyError or ValueError for anything else."""
        return cls(document["kind"], document["item"], tuple(_entry(row) for row in document["entries"]))

    def _reading(self, number: int) -> LogEntry:
        found = next(
            (each for each in self.entries if each.number == number and each.temperature_c is not None), None
        )
        if found is None:
            raise Impossible("number", number, "is no reading of this log", "correct the number of a reading")
        return found

    def _with(self, entry: LogEntry) -> Log:
        if not entry.who.strip():
            raise Impossible("who", entry.who, "is empty", "give the initials of who measured")
        for name in ("at", "recorded_at"):
            if getattr(entry, name).utcoffset() is None:
                raise Impossible(name, getattr(entry, name), "has no time zone", "give the offset")
        if entry.at > entry.recorded_at + CLOCKS_APART:
            raise Impossible("at", entry.at, "is later than it was written down", "give the time it was measured")
        return replace(self, entries=(*self.entries, replace(entry, number=len(self.entries) + 1)))


def _entry_document(entry: LogEntry) -> dict[str, Any]:
    values = {each.name: getattr(entry, each.name) for each in fields(entry)}
    times = {name: values[name].isoformat() for name in ("at", "recorded_at")}
    return {name: value for name, value in {**values, **times}.items() if value not in (None, "")}


def _entry(row: Mapping[str, Any]) -> LogEntry:
    times = {name: datetime.fromisoformat(row[name]) for name in ("at", "recorded_at")}
    return LogEntry(**{**row, **times})
