"""`POST /v1/labels` and `GET /v1/card`: what is stuck on a chilled box and pinned to the wall."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated, Any, Literal, Self

from pydantic import ConfigDict, Field

from turnspit.api.schemas.common import Body, Given, TimedFields
from turnspit.api.schemas.safety import Kitchen, Word
from turnspit.reference import Kitchen as CodeName
from turnspit.safety import CardSection, Label, label
from turnspit.words import Reader, say

LABELS_EXAMPLE: dict[str, Any] = {"items": [{"item": "turkey stock"}, {"item": "sliced breast"}], "initials": "AB"}


class LabelPart(Body):
    """One box. `made_at` is when it was cooked, by default now."""

    item: Annotated[str, Field(min_length=1, max_length=100)]
    made_at: datetime | None = None
    storage: Literal["refrigerator", "freezer"] = "refrigerator"


class LabelsBody(TimedFields):
    """The boxes of one evening, and who put them away."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [LABELS_EXAMPLE]})

    items: list[LabelPart] = Field(min_length=1, max_length=200)
    initials: Word
    kitchen: Kitchen | None = None


class LabelGiven(Given):
    """One label; `use_by` is the last day, absent for what is frozen."""

    item: str
    made_at: datetime
    use_by: datetime | None
    initials: str
    storage: str
    rule: str

    @classmethod
    def of(cls, made: Label) -> Self:
        """From the safety room's."""
        return cls(
            item=made.item,
            made_at=made.made_at,
            use_by=made.use_by,
            initials=made.initials,
            storage=made.storage,
            rule=made.rule,
        )


class LabelsGiven(Given):
    """The labels in the order of the boxes."""

    labels: list[LabelGiven]


class SectionGiven(Given):
    """One part of the card for the staff."""

    title: str
    lines: list[str]


class CardGiven(Given):
    """The card for teaching: probe, carve, keep hot, cool, ask the guests."""

    sections: list[SectionGiven]

    @classmethod
    def of(cls, sections: tuple[CardSection, ...], reader: Reader) -> Self:
        """In the reader's words."""
        return cls(
            sections=[
                SectionGiven(title=say(part.title, reader), lines=[say(line, reader) for line in part.lines])
                for part in sections
            ]
        )


def labelled(body: LabelsBody, kitchen: CodeName | None, now: datetime) -> LabelsGiven:
    """The labels; times without an offset are told in the zone of `now`. Raises what the safety room raises."""
    made = [
        label(part.item, _told(part.made_at or now, now), body.initials, kitchen, part.storage) for part in body.items
    ]
    return LabelsGiven(labels=[LabelGiven.of(one) for one in made])


def _told(at: datetime, now: datetime) -> datetime:
    return at.replace(tzinfo=now.tzinfo) if at.tzinfo is None else at.astimezone(now.tzinfo)
