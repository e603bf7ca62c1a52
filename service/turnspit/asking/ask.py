"""The whole of asking: a line is read, each of its intents is answered, and the answers are put into words."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, datetime
from typing import Any, Literal

from turnspit.asking import moves
from turnspit.asking.answers import Answer, Enquiry, answers_to, gravest_first, takes_over, together
from turnspit.asking.answers.topics import topic_of
from turnspit.asking.clean import clean
from turnspit.asking.contract import Intent, Line, Question, Reply, SaidCaution
from turnspit.asking.conversation import Conversation
from turnspit.asking.conversions import conversions
from turnspit.asking.reading import Reading, read_line, remember
from turnspit.message import Caution, Message
from turnspit.reference import caution
from turnspit.words import Reader, say, usual_units
from turnspit.words.reader import Clock

NEXT_LINES = 3
LONGEST_TEXT = 10_000
COMPUTED: frozenset[Intent] = frozenset(("plan", "roast_time", "doneness", "thaw", "size"))
"""Intents whose answer is computed anew by what is said, and so changes."""
WARMING = ("16 lb turkye, dinner at 6", "pabvo de 7 kg, cena a las 6")
"""A plan and a slip in each language: they ask for everything that is loaded late."""


def warm() -> None:
    """Load what the first line would wait for: words, tables, the heat model. A service does so while it starts."""
    for text in WARMING:
        ask(Line(text, datetime(2026, 11, 25, 9, tzinfo=UTC)), None, "")


def ask(line: Line, conversation: Conversation | None, conversation_id: str) -> tuple[Reply, Conversation]:
    """The reply to `line`, and the conversation as it stands after it.

    A pure function of its arguments: no clock, no chance. What cannot be met (a dinner in the past, a 900 lb bird) is
    answered kindly; nothing a person can type raises.
    """
    reading = read_line(line, conversation)
    reader = _reader(line, reading, conversation)
    answer = _answer(line, reading, reader, conversation)
    reply = _worded(answer, line, reading, reader, conversation_id)
    return reply, _continued(answer, line, reading, conversation, conversation_id)


def _reader(line: Line, reading: Reading, conversation: Conversation | None) -> Reader:
    """Language and habits as the line shows them; the units asked for, else those of the text, else the place's."""
    before = conversation or Conversation("")
    units = (
        line.units
        or reading.understood.get("units")
        or (reading.units if reading.intents != ("unknown",) else None)
        or _by_degrees(reading)
        or before.units
        or ("metric" if reading.language == "es" else usual_units(line.now))
    )
    usual: Clock = "24h" if reading.language == "es" and units == "metric" else "12h"
    return Reader(line.now, reading.language, units, reading.clock or before.clock or usual)


def _by_degrees(reading: Reading) -> Literal["metric"] | None:
    """Metric where a bare number of the line was read as degrees Celsius: "68 in the breast"."""
    bare = (trace for trace in reading.traces if trace.path.endswith("_c") and isinstance(trace.value, int | float))
    said = ((re.findall(r"\d+(?:[.,]\d+)?", trace.words), trace.value) for trace in bare)
    celsius = any(float(number.replace(",", ".")) == value for numbers, value in said for number in numbers)
    return "metric" if celsius else None


def _answer(line: Line, reading: Reading, reader: Reader, conversation: Conversation | None) -> Answer:
    if reading.move == "start_over":
        return moves.started_over()
    if reading.move == "thanks":
        return moves.thanked()
    enquiry = _enquiry(line, reading, reader, conversation)
    answer = together(_answers(line, reading, enquiry))
    stops = any(each.severity == "stop" for each in answer.cautions)
    if stops and takes_over(reading.intents, enquiry):
        # How long leftovers keep is no danger by itself.
        answer = replace(answer, besides=("safety",))
    if reading.move == "why":
        return moves.why(answer, line.explain)
    if reading.move == "assumptions":
        return moves.assumptions(answer)
    if reading.move == "show":
        return moves.shown(answer, reading.understood, answer.assumed)
    if conversation is not None and _may_change_nothing(line, reading, conversation):
        asked = replace(enquiry, children=conversation.children, non_eaters=conversation.non_eaters)
        before = together(answers_to(reading.intents, replace(asked, text=conversation.answered)))
        return (
            moves.as_before(answer) if (before.headline, before.lines) == (answer.headline, answer.lines) else answer
        )
    return answer


def _answers(line: Line, reading: Reading, enquiry: Enquiry) -> list[Answer]:
    """What each intent is answered, and each conversion where the line asks for several."""
    several = conversions(line) if reading.intents == ("convert",) and reading.move == "ask" else []
    if not several:
        return answers_to(reading.intents, enquiry)
    parts = [replace(enquiry, understood=read.understood, text=part.text) for part, read in several]
    return [answer for part in parts for answer in answers_to(("convert",), part)]


def _may_change_nothing(line: Line, reading: Reading, conversation: Conversation) -> bool:
    """Whether an amendment may leave the answer as it was: it gave no value, or one that little rests on."""
    same = reading.understood == conversation.understood or not COMPUTED.intersection(reading.intents)
    again = reading.move == "amend" and reading.intents == conversation.intents
    return same and again and "?" not in line.text


def _enquiry(line: Line, reading: Reading, reader: Reader, conversation: Conversation | None) -> Enquiry:
    return Enquiry(
        reading.understood,
        reader,
        line.now,
        line.kitchen,
        _text(line, reading, conversation),
        reading.topic,
        day=reading.kept.get("day") or "",
        meal=reading.kept.get("meal") or "",
        likely_kind=_likely_kind(line, reading),
        technique=reading.technique,
        children=reading.kept.get("children", 0),
        non_eaters=reading.kept.get("non_eaters", 0),
        before=_told_before(reading, conversation),
    )


def _likely_kind(line: Line, reading: Reading) -> str:
    """The first of the cuts that half a name may mean ("lamb"), which are asked back; "" where none are."""
    if reading.ambiguous != "roast.kind" or not reading.choices:
        return ""
    named = read_line(replace(line, text=reading.choices[0]), None).understood.get("roast", {})
    return str(named.get("kind", ""))


def _told_before(reading: Reading, conversation: Conversation | None) -> str:
    """What was answered last, where a new question is asked and its hours were told of that one."""
    anew = conversation is not None and reading.move == "ask" and "elapsed_h" not in reading.kept.get("said", ())
    return conversation.answered if conversation is not None and anew else ""


def _text(line: Line, reading: Reading, conversation: Conversation | None) -> str:
    """The words that are answered: the line's own, before those it amends; those of the answer it asks about."""
    before = conversation.answered if conversation is not None else ""
    if conversation is not None and reading.move == "amend" and reading.intents == conversation.main:
        before = conversation.main_answered
    if reading.move == "ask" or not before:
        return line.text[:LONGEST_TEXT]
    return f"{line.text}\n{before}"[:LONGEST_TEXT] if reading.move == "amend" else before


def _worded(answer: Answer, line: Line, reading: Reading, reader: Reader, conversation_id: str) -> Reply:
    corrected = [
        say(Message("asking-corrected", wrote=wrote, read=read), reader) for wrote, read in reading.corrections
    ]
    read = () if answer.besides and reading.intents == ("unknown",) else reading.intents
    intents = (*read, *answer.besides)
    others = [say(Message("asking-one-dinner", other=text), reader) for text in reading.others]
    worded_for = {"language": reader.language, "units": reader.units, "clock": reader.clock}
    data: dict[str, Any] = {**answer.data, "reader": worded_for}
    if line.explain:
        data["trace"] = [
            {"rule": trace.rule, "words": trace.words, "path": trace.path, "value": trace.value}
            for trace in reading.traces
        ]
    return Reply(
        conversation=conversation_id,
        intent=intents[0],
        intents=intents,
        understood=reading.understood,
        headline=_sentence(answer.headline, reader),
        lines=tuple(_sentence(message, reader) for message in answer.lines),
        assumptions=(*corrected, *others, *(_sentence(message, reader) for message in answer.assumptions)),
        cautions=tuple(SaidCaution(say(c.message, reader), c.rule, c.severity) for c in _cautions(answer)),
        question=_question(answer, reading, reader),
        next=(*reading.others, *_next(answer, line, reader))[:NEXT_LINES],
        data=data,
    )


def _next(answer: Answer, line: Line, reader: Reader) -> tuple[str, ...]:
    """Lines that could come next, without the one that was just typed."""
    asked = clean(line.text).strip(" ?.!")
    offered = [say(message, reader) for message in answer.next]
    return tuple(text for text in offered if clean(text).strip(" ?.!") != asked)[:NEXT_LINES]


def _sentence(message: Message, reader: Reader) -> str:
    text = say(message, reader)
    return text[:1].upper() + text[1:]


def _cautions(answer: Answer) -> tuple[Caution, ...]:
    """Each rule once, the gravest first; wherever safety is spoken of, that local codes prevail ends it."""
    found = [c for c in gravest_first(answer.cautions) if c.rule != "local-codes"]
    return (*found, caution("local-codes")) if found else ()


def _question(answer: Answer, reading: Reading, reader: Reader) -> Question | None:
    if reading.ambiguous == "roast.kind" and len(reading.choices) == 1:
        return None
    if reading.ambiguous and reading.move in {"ask", "amend"}:
        return Question(say(Message(_question_key(reading.ambiguous)), reader), reading.choices)
    if answer.question is None:
        return None
    return Question(say(answer.question, reader), tuple(say(choice, reader) for choice in answer.choices))


def _question_key(path: str) -> str:
    asked = {
        "roast.kind": "asking-ask-kind",
        "roast.mass_kg": "asking-ask-mass",
        "serve_at": "asking-ask-serve_at",
        "covers": "asking-ask-covers",
        "reading.temperature_c": "asking-ask-temperature",
        "oven.temperature_c": "asking-ask-temperature",
        "amount.unit": "asking-ask-unit",
        "amount.target_unit": "asking-ask-target_unit",
    }
    return asked.get(path, "asking-ask-other")


def _continued(
    answer: Answer, line: Line, reading: Reading, conversation: Conversation | None, conversation_id: str
) -> Conversation:
    """The conversation after this line: what is held, by whom it was set, and what is still asked."""
    before = replace(conversation or Conversation(conversation_id), id=conversation_id)
    if reading.move == "thanks":
        return before
    after = remember(before, reading, line.text, answer.assumed, answer.asks)
    # What was not understood changes nothing.
    stays = reading.intents == ("unknown",) and before.answered
    answered = before.answered if stays else _text(line, reading, conversation)
    if reading.move == "start_over":
        return after
    dinner = answered if after.main == after.intents else before.main_answered
    if dinner == before.main_answered and topic_of(line.text, "safety_at_risk"):
        # A pregnant guest still comes when the bird grows.
        dinner = f"{dinner}\n{line.text}"[:LONGEST_TEXT]
    return replace(after, answered=answered, main_answered=dinner)
