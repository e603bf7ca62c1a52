"""A form as a value: its fields, what was typed, what that means, and what is wrong beside the field at fault."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from itertools import groupby
from typing import Any, Literal

from fastapi import Request
from fastapi.responses import Response
from pydantic import ValidationError

from turnspit.api.readers import reader_for
from turnspit.api.service import Service
from turnspit.errors import TurnspitError
from turnspit.message import Message
from turnspit.words import Reader, say
from turnspit_web.problems import MOST_KNOWN, Problem, names_in, told_problem
from turnspit_web.rendering import Filled, filled, page

Kind = Literal["text", "number", "date", "lines", "choice", "tick"]
Values = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class Field:
    """One field: `read` turns its text into a value, and raises TurnspitError for what it is not.

    `called` are the names under which a refusal of the core speaks of it; `like` an example, for each language where
    one does not read in all; `told` the beginning of the keys that name its options, `unsaid` the key of the empty
    one. `start` may differ by the reader's units; a `folded` field waits under "more".
    """

    name: str
    read: Callable[[str], Any] = str
    kind: Kind = "text"
    options: tuple[str, ...] = ()
    start: str | Mapping[str, str] = ""
    needed: bool = False
    short: bool = False
    folded: bool = False
    like: str | Mapping[str, str] = ""
    told: str = ""
    unsaid: str = "form-any"
    longest: int = 200
    called: tuple[str, ...] = ()
    known: Callable[[], Sequence[str]] = tuple

    def begins(self, reader: Reader) -> str:
        """What it holds before anything is typed."""
        return self.start if isinstance(self.start, str) else self.start[reader.units]

    def example(self, reader: Reader) -> str:
        """How it may be written."""
        return self.like if isinstance(self.like, str) else self.like[reader.language]

    def speaks(self, names: Iterable[str]) -> bool:
        """Whether one of these names means this field."""
        return not {self.name, *self.called}.isdisjoint(names)


@dataclass(frozen=True, slots=True)
class Form:
    """The fields of one page, which is at `/name` and whose texts are `form-name-field`."""

    name: str
    fields: tuple[Field, ...]
    method: Literal["get", "post"] = "get"

    def field(self, name: str) -> Field:
        """The field of that name."""
        return next(each for each in self.fields if each.name == name)

    def rows(self, *, folded: bool | None = None) -> list[list[Field]]:
        """The fields as they stand below one another; short ones that follow each other share a line."""
        wanted = [each for each in self.fields if folded in (None, each.folded)]
        rows: list[list[Field]] = []
        for short, group in groupby(wanted, key=lambda each: each.short):
            together = list(group)
            rows += [together] if short else [[each] for each in together]
        return rows

    def label(self, asked: Field, reader: Reader) -> str:
        """What is asked for in a field."""
        return say(Message(f"form-{self.name}-{asked.name}"), reader)

    def options(self, asked: Field, reader: Reader) -> list[tuple[str, str]]:
        """The options of a choice, each with its name."""
        told = asked.told or f"form-{self.name}-{asked.name}-"
        keys = [(value, told + value.replace(" ", "-") if value else asked.unsaid) for value in asked.options]
        return [(value, _named(key, value, reader)) for value, key in keys]

    def typed(self, given: Filled, reader: Reader) -> Typed:
        """What came in, read field by field."""
        start = {each.name: each.begins(reader) for each in self.fields}
        if start.keys().isdisjoint(given):
            return Typed(self, start, start, begun=False)
        texts = {each.name: _text(each, given, start[each.name]) for each in self.fields}
        values: dict[str, Any] = {}
        problems: dict[str, Problem] = {}
        for each in self.fields:
            if len(texts[each.name]) > each.longest:
                problems[each.name] = Message("form-too-long", longest=each.longest)
                continue
            try:
                values[each.name] = _value(each, texts[each.name])
            except TurnspitError as error:
                problems[each.name] = _unread(texts[each.name], each.example(reader), error)
        for each in self.fields:
            if each.needed and not texts[each.name]:
                problems[each.name] = Message("form-needed")
            if each.kind == "choice" and texts[each.name] not in each.options:
                known = ", ".join(name for _, name in self.options(each, reader)[:MOST_KNOWN])
                problems[each.name] = Message("form-unknown", text=texts[each.name][:60], known=known)
        return Typed(self, start, texts, values, problems)


@dataclass(frozen=True, slots=True)
class Typed:
    """A form as it came in: `texts` as typed, `values` as read (None where empty), `problems` by field."""

    form: Form
    start: Mapping[str, str]
    texts: Mapping[str, str]
    values: Values = field(default_factory=dict)
    problems: Mapping[str, Problem] = field(default_factory=dict)
    begun: bool = True

    def refused(self, error: TurnspitError | ValidationError) -> Typed:
        """The same with what the core refused, beside the field it speaks of or, of none, above the form."""
        names = names_in(error)
        at = next((each.name for each in self.form.fields if each.speaks(names)), "")
        return replace(self, problems={**self.problems, at: error})

    def problem(self, name: str, reader: Reader) -> str:
        """What is wrong with that field, "" for nothing; the name "" is the whole form."""
        found = self.problems.get(name)
        if found is None:
            return ""
        like = self.form.field(name).example(reader) if name else ""
        return told_problem(found, reader, self.texts.get(name, ""), like)

    def first_problem(self) -> str:
        """The name of the first field at fault."""
        return next((each.name for each in self.form.fields if each.name in self.problems), "")

    def unfolded(self) -> bool:
        """Whether something was said, or is wrong, under "more"."""
        folded = [each.name for each in self.form.fields if each.folded]
        return any(name in self.problems or self.texts[name] not in ("", self.start[name]) for name in folded)


Work = Callable[[Service, Values, Reader], Mapping[str, Any]]


async def form_page(form: Form, request: Request, service: Service, work: Work, **shown: Any) -> Response:
    """The page of a form, with what `work` makes of it where it was filled in; 422 where that cannot be."""
    reader = reader_for(request, service.now())
    given: Filled = await filled(request) if request.method == "POST" else asked(request)
    typed = form.typed(given, reader)
    answer: Mapping[str, Any] | None = None
    if typed.begun and not typed.problems:
        try:
            answer = await service.work(work, service, typed.values, reader)
        except (ValidationError, TurnspitError) as error:
            typed = typed.refused(error)
    template, status = f"worked/{form.name}.html", 422 if typed.problems else 200
    return page(template, status, reader=reader, form=form, typed=typed, answer=answer, **shown)


def asked(request: Request) -> Filled:
    """The fields of a form that stand in the address."""
    return {name: request.query_params.getlist(name) for name in request.query_params}


def _named(key: str, value: str, reader: Reader) -> str:
    """An option by its text; one that has none yet by its own name, for the page stands all the same."""
    try:
        return say(Message(key), reader)
    except KeyError:
        return value.replace("_", " ")


def _text(asked: Field, given: Filled, start: str) -> str:
    """What was typed; a choice that an address leaves out is taken as the page offers it."""
    left_out = asked.kind == "choice" and asked.name not in given
    return start if left_out else given.get(asked.name, [""])[-1].strip()


def _unread(text: str, like: str, error: TurnspitError) -> Problem:
    return Message("form-unread", text=text, like=like) if like else error


def _value(asked: Field, text: str) -> Any:
    if asked.kind == "tick":
        return bool(text)
    return asked.read(text) if text else None
