"""What every verb shares: its options, its request checked as the route checks it, its answer as JSON or as text."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import TYPE_CHECKING, Annotated, Any, Literal, TypeVar

import typer

if TYPE_CHECKING:
    from pydantic import BaseModel

    from turnspit.words import Reader

Model = TypeVar("Model", bound="BaseModel")
Document = dict[str, Any]

AsJson = Annotated[bool, typer.Option("--json", help="Print the response of the same route as JSON.")]
UnitsOption = Annotated[Literal["us", "metric"], typer.Option("--units", help="Which units lead in texts.")]
LanguageOption = Annotated[Literal["en", "es"], typer.Option("--language", help="Language of the texts.")]
KitchenOption = Annotated[
    Literal["home", "licensed"] | None, typer.Option("--kitchen", help="Whose rules lead; by default the stricter.")
]


def request(model: type[Model], **values: Any) -> Model:
    """The request of a route, checked as the route does. Raises Impossible for the first field at fault."""
    return _checked(lambda: model.model_validate(values))


def request_json(model: type[Model], text: str) -> Model:
    """The same from JSON text."""
    return _checked(lambda: model.model_validate_json(text))


def reader(units: str, language: str) -> Reader:
    """Whoever reads the answer, now."""
    from turnspit.moment import utc_now
    from turnspit.words import Reader

    led: Literal["us", "metric"] = "us" if units == "us" else "metric"
    return Reader(utc_now(), "es" if language == "es" else "en", led, "12h" if led == "us" else "24h")


def label(key: str, asker: Reader, **values: Any) -> str:
    """One of the command line's own texts."""
    from turnspit.message import Message
    from turnspit.words import say

    return say(Message(f"cli-{key}", **values), asker)


def print_json(document: Document) -> None:
    """A document as it is."""
    print(json.dumps(document, ensure_ascii=False, indent=2), flush=True)


def show(document: Document, as_json: bool, told: Callable[[Document], str]) -> None:
    """Print a document as it is, or as it is told."""
    if as_json:
        print_json(document)
    else:
        print(told(document), flush=True)


def graded(severity: str, text: str, asker: Reader) -> str:
    """A line that leads with how grave it is."""
    return f"{label(f'grade-{severity}', asker)}: {text}"


def answered(document: Document, asker: Reader, *lists: str) -> str:
    """Headline, grave cautions, the lists named, and what was assumed."""
    grave = [one for one in document["cautions"] if one["severity"] != "info"]
    lines = [document["headline"], *(graded(one["severity"], one["text"], asker) for one in grave)]
    lines += [f"- {line}" for name in lists for line in document[name]]
    lines += [f"  {line}" for line in document["assumptions"]]
    return "\n".join(lines)


def findings(document: Document, asker: Reader) -> str:
    """The findings of a check, the gravest first."""
    lines = []
    for one in document["findings"]:
        action = "" if one["rule"] == "local-codes" else f" {one['action']}"
        lines.append(graded(one["severity"], f"{one['seen']}{action} ({one['citation']})", asker))
    return "\n".join(lines)


def _checked(make: Callable[[], Model]) -> Model:
    from pydantic import ValidationError

    from turnspit.errors import Impossible

    try:
        return make()
    except ValidationError as error:
        first = error.errors()[0]
        name = ".".join(map(str, first["loc"])) or "request"
        said = str(first["msg"]).removeprefix("Value error, ")
        given = "" if isinstance(first["input"], dict) else str(first["input"])[:60]
        raise Impossible(name, given, f"cannot be ({said})", "see --help for what is taken") from error
