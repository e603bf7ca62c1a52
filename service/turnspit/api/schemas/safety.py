"""`POST /v1/safety/checks`: what the published rules say."""

from __future__ import annotations

from typing import Annotated, Any, Literal, Self

from pydantic import ConfigDict, Field

from turnspit.api.schemas.common import Body, Given, Number, ReaderFields, Yes
from turnspit.safety import Finding, SafetyQuestion, Topic, grade
from turnspit.safety.finding import Grade
from turnspit.safety.question import Method, State
from turnspit.words import Reader, say

CHECK_EXAMPLE: dict[str, Any] = {
    "kitchen": "home",
    "question": {"topic": "left_out", "subject": "turkey", "state": "cooked", "elapsed_h": 3},
}
Word = Annotated[str, Field(max_length=40)]


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
    procedure: Yes = Field(default=False, description="A written, approved procedure is followed.")
    at_risk: Yes = False


class CheckBody(ReaderFields):
    """What is to be checked, and whose rules lead; unstated, the stricter of both."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [CHECK_EXAMPLE]})

    kitchen: Literal["home", "licensed"] | None = None
    question: QuestionBody

    def asked(self) -> SafetyQuestion:
        """As the safety room takes it."""
        return SafetyQuestion(**self.question.model_dump())


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


class CheckGiven(Given):
    """The findings, the gravest first; local codes and licensed practice prevail."""

    grade: Grade
    findings: list[FindingGiven]

    @classmethod
    def of(cls, findings: tuple[Finding, ...], reader: Reader) -> Self:
        """From the safety room's answer, in the reader's words."""
        return cls(grade=grade(findings), findings=[FindingGiven.of(finding, reader) for finding in findings])
