"""What the service gives, for type checkers; at run time these are the plain dictionaries of the JSON."""

from __future__ import annotations

from typing import Any, Literal, NotRequired, TypedDict


class Caution(TypedDict):
    """A warning with the rule it rests on."""

    text: str
    rule: str
    severity: Literal["info", "warn", "stop"]


class Answer(TypedDict):
    """The answer in words."""

    headline: str
    lines: list[str]


class Question(TypedDict):
    """A question asked back, with choices that may be sent as the next line."""

    text: str
    choices: list[str]


class Reply(TypedDict):
    """What a line is answered with."""

    conversation: str
    intent: str
    intents: list[str]
    understood: dict[str, Any]
    answer: Answer
    assumptions: list[str]
    cautions: list[Caution]
    question: Question | None
    next: list[str]
    data: dict[str, Any]


class Amount(TypedDict):
    """A converted amount, as a range where measures or foods vary."""

    value: float
    low: float
    high: float
    unit: str
    exact: bool
    weigh: bool
    item: str
    kinds: list[dict[str, Any]]
    notes: list[str]
    source: str


class ProblemDocument(TypedDict):
    """An error, as RFC 9457 fixes it."""

    type: str
    title: str
    status: int
    detail: str
    name: NotRequired[str]
    value: NotRequired[Any]
    limit: NotRequired[str]
    way_out: NotRequired[str]
    errors: NotRequired[list[dict[str, Any]]]
