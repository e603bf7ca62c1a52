"""A kept log: begun, added to, judged. The server's clock alone tells when an entry was recorded."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Any
from uuid import uuid4

from turnspit.api.problems import no_such
from turnspit.api.schemas.logs import LogEntryBody, LogGiven, LogNamed, NewLogBody, entries_given, findings_given
from turnspit.api.service import Service
from turnspit.errors import Impossible
from turnspit.moment import zone
from turnspit.safety import GRADES, INTERVAL_MIN, Log, LogVerdict, check_log
from turnspit.storage import KeptLog
from turnspit.words import Reader

SHOWN = 100
AHEAD = timedelta(minutes=1)
"""Two clocks differ by so much; what is said to have been measured later than that is refused."""
MOST_ENTRIES = 2000
FINISHES = "finished"


@dataclass(frozen=True, slots=True)
class OpenLog:
    """A kept log with its entries as the safety room takes them; `finishes` are the numbers of those that end it."""

    id: str
    head: Mapping[str, Any]
    opened_at: datetime
    log: Log
    finishes: frozenset[int]

    @property
    def finished_at(self) -> datetime | None:
        """When the food was served or stored; None where it was not, or was measured or treated again since."""
        ends = [entry.at for entry in self.log.entries if entry.number in self.finishes]
        since = [one.at for one in (*self.log.readings(), *self.log.actions())]
        return ends[-1] if ends and all(at <= ends[-1] for at in since) else None

    def verdict(self, now: datetime) -> LogVerdict:
        """What the rules say at `now`; of a finished log also as it stood then, and the graver of both holds."""
        kitchen, interval_min = self.head["kitchen"], self.head["interval_min"]
        ended = self.finished_at
        if ended is None:
            return check_log(self.log, now, kitchen, interval_min)
        final = check_log(self.log, now, kitchen, interval_min, finished=True)
        then = check_log(self.log, ended, kitchen, interval_min)
        gaps = tuple(dict.fromkeys((*then.gaps, *final.gaps)))
        return replace(max((final, then), key=lambda one: GRADES.index(one.severity)), gaps=gaps)


def begin(service: Service, body: NewLogBody, reader: Reader) -> LogGiven:
    """A new log. Raises Impossible for a zone that is none. Blocks."""
    log_id = uuid4().hex
    now = service.clock()
    place = body.timezone or service.settings.timezone
    zone(place)
    head = {
        "kind": body.kind,
        "item": body.item.strip(),
        "kitchen": service.kitchen(body.kitchen),
        "interval_min": body.interval_min,
        "timezone": place,
    }
    if not head["item"]:
        raise Impossible("item", body.item, "is empty", "say what is measured")
    service.store.open_log(log_id, head, now)
    return shown(service, log_id, reader)


def add(service: Service, log_id: str, body: LogEntryBody, reader: Reader) -> LogGiven:
    """The log with one entry more. Raises NotKept, and what the safety room raises. Blocks."""

    def entry(kept: KeptLog) -> Mapping[str, Any]:
        # Read under the number it will have, so that no two entries ever share one.
        now = service.clock()
        at = body.at or now
        if len(kept.entries) >= MOST_ENTRIES:
            raise Impossible("log", log_id, f"has {MOST_ENTRIES} entries", "begin another for what follows")
        if at > now + AHEAD:
            raise Impossible("at", at.isoformat(), "is still to come", "log what was measured, when it was measured")
        added = _added(_open(kept).log, body, at.astimezone(now.tzinfo), now)
        document = dict(added.document()["entries"][-1])
        return {**document, FINISHES: True} if body.finished else document

    kept = service.store.add_to_log(log_id, entry)
    if kept is None:
        raise no_such("log", log_id, "POST /v1/logs begins one")
    return _given(_open(kept), service, reader)


def open_log(service: Service, log_id: str) -> OpenLog:
    """The log of that id. Raises NotKept without one. Blocks."""
    kept = service.store.log(log_id)
    if kept is None:
        raise no_such("log", log_id, "POST /v1/logs begins one")
    return _open(kept)


def shown(service: Service, log_id: str, reader: Reader) -> LogGiven:
    """The log with its verdict. Blocks."""
    return _given(open_log(service, log_id), service, reader)


def logs_there_are(service: Service) -> list[LogNamed]:
    """The logs last begun, each with how it stands. Blocks."""
    now = service.clock()
    return [_named(_open(kept), now) for kept in service.store.logs(SHOWN)]


def reader_at(service: Service, opened: OpenLog, reader: Reader) -> Reader:
    """The reader, told times in the zone of the log."""
    return replace(reader, now=service.clock().astimezone(zone(opened.head["timezone"])))


def _open(kept: KeptLog) -> OpenLog:
    rows = [{name: value for name, value in row.items() if name != FINISHES} for row in kept.entries]
    finishes = frozenset(number for number, row in enumerate(kept.entries, 1) if row.get(FINISHES))
    log = Log.from_document({"kind": kept.document["kind"], "item": kept.document["item"], "entries": rows})
    return OpenLog(kept.id, kept.document, kept.opened_at, log, finishes)


def _added(log: Log, body: LogEntryBody, at: datetime, now: datetime) -> Log:
    if body.action is not None:
        return log.act(body.action, at, body.who, recorded_at=now, note=body.note)
    if body.temperature_c is None:
        added = log.note(body.note, at, body.who)
    elif body.corrects is not None:
        return log.correct(body.corrects, body.temperature_c, body.who, now, body.note)
    else:
        added = log.reading(at, body.temperature_c, body.who, recorded_at=now, station=body.station)
    last = replace(added.entries[-1], recorded_at=now, note=body.note)
    return replace(added, entries=(*added.entries[:-1], last))


def _named(opened: OpenLog, now: datetime) -> LogNamed:
    verdict = opened.verdict(now)
    return LogNamed(
        id=opened.id,
        kind=opened.log.kind,
        item=opened.log.item,
        opened_at=opened.opened_at,
        grade=verdict.severity,
        open_stops=len(verdict.open_stops),
        finished=opened.finished_at is not None,
        closed=verdict.closed,
    )


def _given(opened: OpenLog, service: Service, reader: Reader) -> LogGiven:
    told = reader_at(service, opened, reader)
    return LogGiven(
        id=opened.id,
        kind=opened.log.kind,
        item=opened.log.item,
        kitchen=opened.head["kitchen"],
        interval_min=opened.head["interval_min"] or INTERVAL_MIN[opened.log.kind],
        timezone=str(told.now.tzinfo),
        opened_at=opened.opened_at,
        entries=entries_given(opened.log, opened.finishes),
        finished=opened.finished_at is not None,
        **findings_given(opened.verdict(service.clock()), told),
    )
