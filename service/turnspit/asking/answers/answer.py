"""What every answer module takes and gives."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime
from typing import TYPE_CHECKING, Any, TypeVar

from turnspit.asking.contract import Intent, Understood
from turnspit.message import SEVERITIES, Caution, Message
from turnspit.words import Reader

if TYPE_CHECKING:  # the planning room loads the heat model, which a question about cups does not need
    from turnspit.planning import Kitchen

Item = TypeVar("Item")
NAMED_SOURCES = 4
USUAL_HOURS = {
    "en": {"breakfast": 9, "brunch": 11, "lunch": 13, "dinner": 18},
    "es": {"breakfast": 9, "brunch": 12, "lunch": 14, "dinner": 21},
}
"""The hour of a meal that is said without one (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Enquiry:
    """One intent to be answered. `text` is the line itself; `topic` what it speaks of where safety is asked about;
    `technique` where it asks how to roast ("baste"); `day` (ISO date, "" for none) a day that was said without an
    hour, `meal` the meal of it; `likely_kind` the roast that half a name ("lamb") stands for most often; `children`
    and `non_eaters` (of the roast) are among the diners; `before` is what was answered last, where this line asks
    anew and the hours that are held were told of that."""

    understood: Understood
    reader: Reader
    now: datetime
    kitchen: Kitchen | None = None
    text: str = ""
    topic: str = ""
    day: str = ""
    meal: str = ""
    likely_kind: str = ""
    technique: str = ""
    children: int = 0
    non_eaters: int = 0
    before: str = ""

    @property
    def line(self) -> str:
        """The words of the line itself, without those that it amends."""
        return self.text.partition("\n")[0]

    def said(self, path: str) -> Any:
        """What `understood` holds at a dotted path ("roast.mass_kg"), None where nothing was said."""
        node: Any = self.understood
        for name in path.split("."):
            if not isinstance(node, Mapping) or name not in node:
                return None
            node = node[name]
        return node

    @property
    def usual_hour(self) -> int:
        """The hour of the day at which such a meal is on the table, where the reader lives."""
        return USUAL_HOURS[self.reader.language][self.meal or "dinner"]

    def moment(self, path: str) -> datetime | None:
        """The time at a path, aware, as it was said."""
        value = self.said(path)
        return datetime.fromisoformat(value) if isinstance(value, str) else value


@dataclass(frozen=True, slots=True)
class Answer:
    """An answer before it is put into words. `reasons` is what "why?" gives; `assumed` holds, by path, what was taken
    for granted; `asks` is the path of an open question; `besides` are intents that are answered though the line was
    not read as asking them (a danger that takes over)."""

    headline: Message
    lines: tuple[Message, ...] = ()
    reasons: tuple[Message, ...] = ()
    assumptions: tuple[Message, ...] = ()
    assumed: Mapping[str, Any] = field(default_factory=dict)
    cautions: tuple[Caution, ...] = ()
    question: Message | None = None
    choices: tuple[Message, ...] = ()
    asks: str = ""
    next: tuple[Message, ...] = ()
    data: Mapping[str, Any] = field(default_factory=dict)
    besides: tuple[Intent, ...] = ()


def together(answers: Sequence[Answer]) -> Answer:
    """One answer from several: the first leads, or one that stops something; the headline of each further one becomes
    a line, nothing is lost."""
    answers = sorted(answers, key=lambda answer: all(caution.severity != "stop" for caution in answer.cautions))
    first, *others = answers
    if not others:
        return replace(first, lines=once(first.lines), assumptions=once(first.assumptions))
    asking = next((answer for answer in answers if answer.question is not None), first)
    lines = once([*first.lines, *(line for other in others for line in (other.headline, *other.lines))])
    return Answer(
        headline=first.headline,
        lines=tuple(line for line in lines if line != first.headline),
        reasons=once([reason for answer in answers for reason in answer.reasons]),
        assumptions=once([assumption for answer in answers for assumption in answer.assumptions]),
        assumed={path: value for answer in reversed(answers) for path, value in answer.assumed.items()},
        cautions=tuple(caution for answer in answers for caution in answer.cautions),
        question=asking.question,
        choices=asking.choices,
        asks=asking.asks,
        next=once([answer.next[place] for place in range(3) for answer in answers if place < len(answer.next)]),
        data={name: value for answer in reversed(answers) for name, value in answer.data.items()},
    )


def gravest_first(cautions: Sequence[Caution]) -> tuple[Caution, ...]:
    """Each rule once, at its gravest, the gravest rules first."""
    by_gravity = sorted(cautions, key=lambda caution: -SEVERITIES.index(caution.severity))
    kept: dict[str, Caution] = {}
    for caution in by_gravity:
        kept.setdefault(caution.rule, caution)
    return tuple(kept.values())


def once(items: Sequence[Item]) -> tuple[Item, ...]:
    """The items in their order, each only once."""
    return tuple(dict.fromkeys(items))


def sources_line(sources: Sequence[str]) -> tuple[Message, ...]:
    """The sources in one line, the first ones named and the others counted; nothing where there are none."""
    if not sources:
        return ()
    named, more = "; ".join(sources[:NAMED_SOURCES]), max(0, len(sources) - NAMED_SOURCES)
    return (Message("asking-why-sources", sources=named, more=more),)
