"""`/v1/logs`: readings with who and when, only ever added to, and what the rules say of them."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated, Any, Self

from pydantic import AwareDatetime, ConfigDict, Field, model_validator

from turnspit.api.schemas.common import Body, Given, Number, ReaderFields, Whole, Yes, Zone
from turnspit.api.schemas.safety import FindingGiven, GapGiven, Kitchen, Word
from turnspit.safety import Corrective, Grade, Log, LogKind, LogVerdict
from turnspit.safety.logcheck import INTERVAL_MIN_RANGE
from turnspit.words import Reader

LOG_EXAMPLE: dict[str, Any] = {"kind": "cooling", "item": "turkey stock", "kitchen": "licensed"}
ENTRY_EXAMPLE: dict[str, Any] = {"who": "AB", "temperature_c": 57.5}


class NewLogBody(Body):
    """A log to be begun: what is logged, and by whose rules."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [LOG_EXAMPLE]})

    kind: LogKind
    item: Annotated[str, Field(min_length=1, max_length=200)]
    kitchen: Kitchen | None = Field(default=None, description="Unstated, the stricter of both kitchens' rules leads.")
    interval_min: Number | None = Field(
        default=None,
        ge=INTERVAL_MIN_RANGE[0],
        le=INTERVAL_MIN_RANGE[1],
        description="The kitchen's own monitoring interval.",
    )
    timezone: Zone | None = Field(default=None, description="In which its times are told; by default the server's.")


class LogEntryBody(ReaderFields):
    """One of: a reading (`temperature_c`, perhaps at a `station`), an `action`, `finished`, or a `note` alone."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [ENTRY_EXAMPLE]})

    who: Word
    at: AwareDatetime | None = Field(default=None, description="When it was measured or done; by default now.")
    temperature_c: Number | None = None
    station: Word = ""
    action: Corrective | None = None
    corrects: Whole | None = Field(default=None, description="The number of the reading that this one replaces.")
    finished: Yes = Field(default=False, description="It was served, or stored for good: no further reading is due.")
    note: Annotated[str, Field(max_length=500)] = ""

    @model_validator(mode="after")
    def _one_thing(self) -> Self:
        said = (self.temperature_c is not None, self.action is not None, self.finished)
        if sum(said) > 1 or not (any(said) or self.note.strip()):
            raise ValueError("an entry is a reading (temperature_c), an action, finished, or a note")
        if self.corrects is not None and self.temperature_c is None:
            raise ValueError("a correction gives the temperature_c that is right")
        return self


class EntryGiven(Given):
    """One entry as it was recorded; `stands` is False for a reading that a later one replaces."""

    number: int
    at: datetime
    recorded_at: datetime
    who: str
    temperature_c: float | None
    station: str
    action: str | None
    corrects: int | None
    finished: bool
    note: str
    stands: bool


class LogNamed(Given):
    """One log of the list, with how it stands."""

    id: str
    kind: LogKind
    item: str
    opened_at: datetime
    grade: Grade
    open_stops: int
    finished: bool
    closed: bool


class LogsGiven(Given):
    """The logs last begun."""

    logs: list[LogNamed]


class LogGiven(Given):
    """A log whole, and the verdict on it as it stands now."""

    id: str
    kind: LogKind
    item: str
    kitchen: str | None = Field(description="`home`, `licensed`, or `licensed_` and the place of its local code.")
    interval_min: float
    timezone: str
    opened_at: datetime
    entries: list[EntryGiven]
    grade: Grade
    findings: list[FindingGiven]
    open_stops: list[FindingGiven] = Field(description="Stops that no action has answered; nothing else ends them.")
    gaps: list[GapGiven]
    finished: bool
    closed: bool = Field(description="The food was thrown away.")


def entries_given(log: Log, finishes: frozenset[int]) -> list[EntryGiven]:
    """The entries of a log; `finishes` are the numbers of those that end it."""
    replaced = {entry.corrects for entry in log.entries if entry.corrects is not None}
    return [
        EntryGiven(
            number=entry.number,
            at=entry.at,
            recorded_at=entry.recorded_at,
            who=entry.who,
            temperature_c=entry.temperature_c,
            station=entry.station,
            action=entry.action,
            corrects=entry.corrects,
            finished=entry.number in finishes,
            note=entry.note,
            stands=entry.number not in replaced,
        )
        for entry in log.entries
    ]


def findings_given(verdict: LogVerdict, reader: Reader) -> dict[str, Any]:
    """The verdict as fields of `LogGiven`, in the reader's words."""
    return {
        "grade": verdict.severity,
        "findings": [FindingGiven.of(found, reader) for found in verdict.findings],
        "open_stops": [FindingGiven.of(found, reader) for found in verdict.open_stops],
        "gaps": [GapGiven(since=gap.since, until=gap.until) for gap in verdict.gaps],
        "closed": verdict.closed,
    }
