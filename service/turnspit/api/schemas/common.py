"""What all bodies share. Types are strict: a number is not written as text, and true is no number."""

from __future__ import annotations

from datetime import datetime
from math import isfinite
from typing import Annotated, Any, Self

from pydantic import AllowInfNan, BaseModel, ConfigDict, Field, Strict, StrictBool, StrictInt, model_validator

from turnspit.message import Caution, Severity
from turnspit.spread import Spread
from turnspit.words import Reader, say
from turnspit.words.reader import Clock, Language, Units

Number = Annotated[float, Strict(), AllowInfNan(False)]
Whole = StrictInt
Yes = StrictBool
Zone = Annotated[str, Field(max_length=64, examples=["America/New_York"])]


class Body(BaseModel):
    """A request body: unknown fields are refused, so that a misspelt one is never dropped in silence.

    null is "not said": the field takes its default, and one that must be said is missing.
    """

    model_config = ConfigDict(extra="forbid", frozen=True)

    @model_validator(mode="before")
    @classmethod
    def _null_is_not_said(cls, given: Any) -> Any:
        if not isinstance(given, dict):
            return given
        return {name: value for name, value in given.items() if value is not None or name not in cls.model_fields}


class ReaderFields(Body):
    """For whom the texts of the answer are written."""

    language: Language | None = Field(default=None, description="By default from Accept-Language.")
    units: Units | None = Field(default=None, description="Which units lead in texts.")
    clock: Clock | None = Field(default=None, description="By default 12h with US units, 24h with metric ones.")


class TimedFields(ReaderFields):
    """For whom, and when and where that is."""

    now: datetime | None = Field(
        default=None, description="By default the server's clock.", examples=["2026-11-25T09:00:00-05:00"]
    )
    timezone: Zone | None = Field(default=None, description="By default the server's zone.")


class Given(BaseModel):
    """A part of a response."""

    model_config = ConfigDict(frozen=True)


class Q(Given):
    """Tenth, fiftieth and ninetieth percentile of what the ensemble expects."""

    p10: float
    p50: float
    p90: float

    @classmethod
    def of(cls, spread: Spread, digits: int = 2) -> Self:
        """Rounded to `digits`."""
        return cls(**spread.document(digits))

    @classmethod
    def finite(cls, spread: Spread, digits: int = 2) -> Self | None:
        """The same, or None where a percentile is never reached: JSON has no infinity."""
        return cls.of(spread, digits) if all(isfinite(value) for value in (spread.p10, spread.p90)) else None


class CautionGiven(Given):
    """A warning with the rule it rests on; `stop` may not be passed."""

    text: str
    rule: str
    severity: Severity

    @classmethod
    def of(cls, caution: Caution, reader: Reader) -> Self:
        """In the reader's words."""
        return cls(text=say(caution.message, reader), rule=caution.rule, severity=caution.severity)
