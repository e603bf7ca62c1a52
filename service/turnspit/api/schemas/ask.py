"""`POST /v1/ask`: the ask contract."""

from __future__ import annotations

from datetime import datetime
from typing import Any, Literal

from pydantic import BaseModel, ConfigDict, Field

from turnspit.api.schemas.common import CautionGiven, Given, Yes, Zone
from turnspit.asking.contract import Intent
from turnspit.words.reader import Units

TEXT_LIMIT = 20_000

ASK_EXAMPLE: dict[str, Any] = {
    "text": "16 lb bird, dinner at 6",
    "conversation": None,
    "now": "2026-11-25T09:00:00-05:00",
    "timezone": "America/New_York",
    "units": None,
    "kitchen": None,
    "explain": False,
}


class AskBody(BaseModel):
    """A line as a cook would type it. Unknown fields are passed over, so that newer screens keep working."""

    model_config = ConfigDict(extra="ignore", frozen=True, json_schema_extra={"examples": [ASK_EXAMPLE]})

    text: str = Field(max_length=TEXT_LIMIT)
    conversation: str | None = Field(
        default=None, max_length=64, description="The id that the line before got; one that has expired starts anew."
    )
    now: datetime | None = Field(default=None, description="By default the server's clock.")
    timezone: Zone | None = Field(default=None, description="By default the server's zone.")
    units: Units | None = Field(default=None, description="By default what the text uses.")
    kitchen: Literal["home", "licensed"] | None = Field(
        default=None, description="Whose rules lead; unstated, the stricter of the two."
    )
    explain: Yes = Field(default=False, description="Show which words gave which value.")


class AnswerGiven(Given):
    """The answer first, then the few lines that matter."""

    headline: str
    lines: list[str]


class QuestionGiven(Given):
    """A question asked back; any of the choices may be sent as the next line."""

    text: str
    choices: list[str]


class AskGiven(Given):
    """The answer to a line."""

    conversation: str
    intent: Intent
    intents: list[Intent]
    understood: dict[str, Any] = Field(description="Only what was said, in SI; a key that was not said is absent.")
    answer: AnswerGiven
    assumptions: list[str]
    cautions: list[CautionGiven]
    question: QuestionGiven | None
    next: list[str] = Field(description="Lines that would go on naturally.")
    data: dict[str, Any] = Field(description="The numbers behind the words, by intent.")
