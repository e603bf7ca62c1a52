"""`POST /v1/safety/checks`: what the published rules say to a question, a plan, a log, a cooling or a history."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from typing import Annotated, Any, Literal, Self

from pydantic import AwareDatetime, ConfigDict, Field, model_validator

from turnspit.api.schemas.chills import ChillPart
from turnspit.api.schemas.common import Body, Given, Number, Q, TimedFields, Whole, Yes
from turnspit.api.schemas.lethality import LethalityBody, LethalityGiven
from turnspit.reference import Kitchen as CodeName
from turnspit.safety import (
    GRADES,
    CoolingPlan,
    Corrective,
    Finding,
    Grade,
    Log,
    LogKind,
    PlanFacts,
    SafetyQuestion,
    Topic,
    check_log,
    check_plan,
    check_question,
    corrected_c,
    grade,
    plan_cooling,
)
from turnspit.safety.logcheck import INTERVAL_MIN_RANGE
from turnspit.safety.plan import PlanThaw
from turnspit.safety.question import Method, State
from turnspit.words import Reader, say

CHECK_EXAMPLE: dict[str, Any] = {
    "kitchen": "home",
    "question": {"topic": "left_out", "subject": "turkey", "state": "cooked", "elapsed_h": 3},
}
Word = Annotated[str, Field(max_length=40)]
Kitchen = Literal["home", "licensed"]
ProbeError = Annotated[
    Number,
    Field(
        ge=-20,
        le=20,
        description="How much the probe reads too high, in K. A reading is judged with and without it, the graver"
        " answer is given.",
    ),
]


class QuestionBody(Body):
    """One question. What is left out is taken at its less safe value, and the finding names it."""

    topic: Topic
    subject: Word = ""
    elapsed_h: Number | None = None
    temperature_c: Number | None = None
    ambient_c: Number | None = None
    oven_c: Number | None = None
    place: Word = ""
    state: State | None = None
    method: Method | None = None
    mass_kg: Number | None = None
    altitude_m: Number | None = None
    stuffed: Yes = False
    whole: Yes = False
    convection: Yes = False
    injected: Yes = False
    cooked_after: Yes | None = None
    held: Yes = Field(default=False, description="`temperature_c` was measured the whole time, not only now.")
    bought_stuffed: Yes = Field(default=False, description="Sold stuffed and frozen, with a mark of inspection.")
    procedure: Yes = Field(default=False, description="A written, approved procedure is followed.")
    at_risk: Yes = False
    probe_error_k: ProbeError = 0.0

    def questions(self) -> tuple[SafetyQuestion, ...]:
        """As the safety room takes it: as it was read, and as the error of the probe makes it."""
        asked = SafetyQuestion(**self.model_dump(exclude={"probe_error_k"}))
        if self.temperature_c is None or self.topic == "thermometer" or not self.probe_error_k:
            return (asked,)
        return asked, replace(asked, temperature_c=corrected_c(self.temperature_c, self.probe_error_k))


class PlanFactsBody(Body):
    """A plan in plain numbers; what is left out is not part of it."""

    kind: Word = "turkey"
    mass_kg: Number | None = None
    stuffed: Yes = False
    injected: Yes = False
    frozen: Yes = False
    at_risk: Yes = False
    oven_c: Number | None = None
    convection: Yes = False
    roast_h: Number | None = None
    target_c: Number | None = None
    pull_c: Number | None = None
    measured_before_carving: Yes = False
    thaw: PlanThaw | None = None
    warm_surface_h: Number | None = None
    raw_kept_h: Number | None = None
    stuffed_ahead_h: Number | None = None
    out_of_cold_h: Number | None = None
    brine_c: Number | None = None
    brine_h: Number | None = None
    hold_c: Number | None = None
    hold_h: Number | None = None
    standing_h: Number | None = None
    ambient_c: Number | None = None
    finished_another_day: Yes = False


class EntryBody(Body):
    """A reading (`temperature_c`, perhaps at a `station`), or a corrective `action`, with who and when."""

    at: AwareDatetime
    who: Word
    temperature_c: Number | None = None
    station: Word = ""
    action: Corrective | None = None
    corrects: Whole | None = Field(default=None, description="The number, from 1, of the reading this one replaces.")
    note: Annotated[str, Field(max_length=500)] = ""

    @model_validator(mode="after")
    def _one_of_both(self) -> Self:
        if (self.temperature_c is None) == (self.action is None):
            raise ValueError("an entry is either a reading (temperature_c) or an action")
        return self

    def added_to(self, log: Log, error_k: float) -> Log:
        """The log with this entry, the error of the probe taken off. Raises what the safety room raises."""
        if self.action is not None:
            return log.act(self.action, self.at, self.who, note=self.note)
        assert self.temperature_c is not None
        core_c = corrected_c(self.temperature_c, error_k)
        if self.corrects is not None:
            return log.correct(self.corrects, core_c, self.who, self.at, self.note)
        return log.reading(self.at, core_c, self.who, station=self.station)


class LogBody(Body):
    """A log of one food, its entries in the order they were recorded."""

    kind: LogKind
    item: Annotated[str, Field(max_length=200)]
    entries: list[EntryBody] = Field(max_length=2000)
    interval_min: Number | None = Field(
        default=None,
        ge=INTERVAL_MIN_RANGE[0],
        le=INTERVAL_MIN_RANGE[1],
        description="The kitchen's own monitoring interval.",
    )
    probe_error_k: ProbeError = 0.0
    finished: Yes = Field(default=False, description="It has been served or stored.")

    def logs(self) -> tuple[Log, ...]:
        """As the safety room takes it: as it was read, and as the error of the probe makes it."""
        return tuple(self._log(error_k) for error_k in sorted({0.0, self.probe_error_k}, key=abs))

    def _log(self, error_k: float) -> Log:
        log = Log(self.kind, self.item)
        for entry in self.entries:
            log = entry.added_to(log, error_k)
        return log


class CheckBody(TimedFields):
    """Exactly one of `question`, `plan`, `log`, `cooling`, `lethality`; unstated, the stricter rules lead."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [CHECK_EXAMPLE]})

    kitchen: Kitchen | None = None
    question: QuestionBody | None = None
    plan: PlanFactsBody | None = None
    log: LogBody | None = None
    cooling: ChillPart | None = Field(default=None, description="Will it make the two-stage limit; what depth would?")

    lethality: LethalityBody | None = Field(default=None, description="What measured readings earn by the tables.")

    @model_validator(mode="after")
    def _exactly_one(self) -> Self:
        parts = (self.question, self.plan, self.log, self.cooling, self.lethality)
        if sum(part is not None for part in parts) != 1:
            raise ValueError("give exactly one of question, plan, log, cooling and lethality")
        return self


class FindingGiven(Given):
    """One thing a check found, and what to do now."""

    rule: str
    severity: Grade
    seen: str
    action: str
    do: str
    kitchen: str = Field(description="Whose rule was applied.")
    citation: str
    unknown: list[str] = Field(description="What was not said and was taken at its less safe value.")

    @classmethod
    def of(cls, finding: Finding, reader: Reader) -> Self:
        """In the reader's words."""
        return cls(
            rule=finding.rule,
            severity=finding.severity,
            seen=say(finding.seen, reader),
            action=say(finding.action, reader),
            do=finding.do,
            kitchen=finding.kitchen,
            citation=finding.citation,
            unknown=list(finding.unknown),
        )


class GapGiven(Given):
    """A stretch without a reading, longer than the monitoring interval."""

    since: datetime
    until: datetime


class CoolingGiven(Given):
    """Hours to the end of the first stage and of both (absent where never), and depths that would make it."""

    first_h: Q | None
    total_h: Q | None
    depth_mm: float | None
    iced_depth_mm: float | None

    @classmethod
    def of(cls, plan: CoolingPlan) -> Self:
        """From the safety room's plan."""
        return cls(
            first_h=Q.finite(plan.first_h),
            total_h=Q.finite(plan.total_h),
            depth_mm=_whole(plan.depth_mm),
            iced_depth_mm=_whole(plan.iced_depth_mm),
        )


class CheckGiven(Given):
    """The findings, the gravest first; local codes and licensed practice prevail."""

    grade: Grade
    findings: list[FindingGiven]
    allowed: bool | None = Field(default=None, description="For a plan: whether it may be carried out.")
    changed: dict[str, Any] | None = Field(
        default=None, description="For a plan: what the nearest allowed one changes."
    )
    open_stops: list[FindingGiven] | None = Field(
        default=None, description="For a log: stops no action has answered."
    )
    gaps: list[GapGiven] | None = None
    closed: bool | None = Field(default=None, description="For a log: the food was thrown away.")
    cooling: CoolingGiven | None = None
    lethality: LethalityGiven | None = None


def _whole(depth_mm: float | None) -> float | None:
    """Down to the millimetre: a layer no deeper than this."""
    return None if depth_mm is None else float(int(depth_mm))


def checked(body: CheckBody, kitchen: CodeName | None, reader: Reader) -> CheckGiven:
    """What the safety room finds, in the reader's words."""

    def told(findings: tuple[Finding, ...]) -> list[FindingGiven]:
        return [FindingGiven.of(finding, reader) for finding in findings]

    if body.question is not None:
        findings = max(
            (check_question(asked, kitchen) for asked in body.question.questions()),
            key=lambda found: GRADES.index(grade(found)),
        )
        return CheckGiven(grade=grade(findings), findings=told(findings))
    if body.plan is not None:
        plan = check_plan(PlanFacts(**body.plan.model_dump()), kitchen)
        return CheckGiven(
            grade=grade(plan.findings), findings=told(plan.findings), allowed=plan.allowed, changed=dict(plan.changed)
        )
    if body.log is not None:
        log = max(
            (
                check_log(kept, reader.now, kitchen, body.log.interval_min, body.log.finished)
                for kept in body.log.logs()
            ),
            key=lambda verdict: GRADES.index(verdict.severity),
        )
        return CheckGiven(
            grade=log.severity,
            findings=told(log.findings),
            open_stops=told(log.open_stops),
            gaps=[GapGiven(since=gap.since, until=gap.until) for gap in log.gaps],
            closed=log.closed,
        )
    if body.lethality is not None:
        proof = body.lethality.proof(kitchen)
        return CheckGiven(
            grade=grade(proof.findings), findings=told(proof.findings), lethality=LethalityGiven.of(proof)
        )
    assert body.cooling is not None
    cooling = plan_cooling(body.cooling.case(), kitchen or "licensed")
    return CheckGiven(
        grade=cooling.finding.severity, findings=told((cooling.finding,)), cooling=CoolingGiven.of(cooling)
    )
