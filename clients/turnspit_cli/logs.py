"""`turnspit log`: the same kept logs as the service has, in its own database or over a running one."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import TYPE_CHECKING, Annotated, Any, Literal, Protocol

import typer

from turnspit_cli.telling import (
    AsJson,
    Document,
    KitchenOption,
    LanguageOption,
    UnitsOption,
    findings,
    label,
    reader,
    request,
    show,
)

if TYPE_CHECKING:
    from turnspit.api import Service
    from turnspit.words import Reader

Server = Annotated[str | None, typer.Option(help="A running service; by default the database it would use.")]
Who = Annotated[str, typer.Option(help="Initials of who measured or did it.")]

log = typer.Typer(no_args_is_help=True, help="Keep a log for the food-safety file; it is only ever added to.")


@log.command("begin")
def begin(
    kind: Annotated[Literal["roast", "cooling", "hot_holding", "cold_holding", "thaw"], typer.Argument()],
    item: Annotated[str, typer.Argument(help="turkey, stock, gravy ...")],
    *,
    kitchen: KitchenOption = None,
    server: Server = None,
    as_json: AsJson = False,
) -> None:
    """Begin a log: turnspit log begin cooling "turkey stock"."""
    body = {"kind": kind, "item": item, "kitchen": kitchen}
    with _keeper(server, reader("us", "en")) as keeper:
        show(keeper.begin(body), as_json, lambda given: str(given["id"]))


@log.command("add")
def add(
    log_id: Annotated[str, typer.Argument()],
    *,
    who: Who,
    temperature: Annotated[str | None, typer.Option(help='What it reads, as "136 F".')] = None,
    station: Annotated[str, typer.Option(help="breast, thigh, wing, stuffing, centre.")] = "",
    action: Annotated[Literal["cooked_on", "reheated", "chilled", "discarded"] | None, typer.Option()] = None,
    corrects: Annotated[int | None, typer.Option(help="Number of the reading this one replaces.")] = None,
    at: Annotated[str | None, typer.Option(help="When, ISO 8601 with an offset; by default now.")] = None,
    finished: Annotated[bool, typer.Option(help="It was served, or stored for good.")] = False,
    note: Annotated[str, typer.Option()] = "",
    server: Server = None,
    units: UnitsOption = "us",
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Add one entry and tell how it stands: turnspit log add ID --who AB --temperature "136 F"."""
    from turnspit.quantities import typed_celsius

    asker = reader(units, language)
    entry: Document = {"who": who, "station": station, "note": note, "finished": finished}
    more = {
        "temperature_c": None if temperature is None else typed_celsius(temperature),
        "action": action,
        "corrects": corrects,
        "at": at,
    }
    entry |= {name: value for name, value in more.items() if value is not None}
    with _keeper(server, asker) as keeper:
        show(keeper.add(log_id, entry), as_json, lambda given: _told(given, asker))


@log.command("show")
def show_log(
    log_id: Annotated[str, typer.Argument()],
    *,
    csv: Annotated[bool, typer.Option(help="Its entries as CSV.")] = False,
    server: Server = None,
    units: UnitsOption = "us",
    as_json: AsJson = False,
    language: LanguageOption = "en",
) -> None:
    """Show a log and how it stands now."""
    asker = reader(units, language)
    with _keeper(server, asker) as keeper:
        if csv:
            print(keeper.csv(log_id), end="", flush=True)
        else:
            show(keeper.read(log_id), as_json, lambda given: _told(given, asker))


@log.command("list")
def list_logs(*, server: Server = None, as_json: AsJson = False, language: LanguageOption = "en") -> None:
    """List the logs last begun, each with how it stands."""
    asker = reader("us", language)
    with _keeper(server, asker) as keeper:
        show(keeper.all(), as_json, lambda given: "\n".join(_named(one, asker) for one in given["logs"]))


class Keeper(Protocol):
    """Where logs are kept; every method gives what the route of that purpose gives."""

    def begin(self, body: Document) -> Document:
        """A new log."""

    def add(self, log_id: str, entry: Document) -> Document:
        """The log with one entry more."""

    def read(self, log_id: str) -> Document:
        """The log."""

    def csv(self, log_id: str) -> str:
        """Its entries."""

    def all(self) -> Document:
        """The logs there are."""


@dataclass(frozen=True, slots=True)
class Here:
    """The database that a service on this machine would use."""

    service: Service
    reader: Reader

    def begin(self, body: Document) -> Document:
        """A new log."""
        from turnspit.api import logs
        from turnspit.api.schemas.logs import NewLogBody

        return logs.begin(self.service, request(NewLogBody, **body), self.reader).model_dump(mode="json")

    def add(self, log_id: str, entry: Document) -> Document:
        """The log with one entry more."""
        from turnspit.api import logs
        from turnspit.api.schemas.logs import LogEntryBody

        return logs.add(self.service, log_id, request(LogEntryBody, **entry), self.reader).model_dump(mode="json")

    def read(self, log_id: str) -> Document:
        """The log."""
        from turnspit.api import logs

        return logs.shown(self.service, log_id, self.reader).model_dump(mode="json")

    def csv(self, log_id: str) -> str:
        """Its entries."""
        from turnspit.api import logs
        from turnspit.safety import log_csv

        return log_csv(logs.open_log(self.service, log_id).log)

    def all(self) -> Document:
        """The logs there are."""
        from turnspit.api import logs

        return {"logs": [one.model_dump(mode="json") for one in logs.logs_there_are(self.service)]}


@dataclass(frozen=True, slots=True)
class There:
    """A running service, by the Python client."""

    client: Any

    def begin(self, body: Document) -> Document:
        """A new log."""
        return dict(self.client.begin_log(body))

    def add(self, log_id: str, entry: Document) -> Document:
        """The log with one entry more."""
        return dict(self.client.add_to_log(log_id, entry))

    def read(self, log_id: str) -> Document:
        """The log."""
        return dict(self.client.show_log(log_id))

    def csv(self, log_id: str) -> str:
        """Its entries."""
        return str(self.client.log_csv(log_id))

    def all(self) -> Document:
        """The logs there are."""
        return dict(self.client.show_logs())


@contextmanager
def _keeper(server: str | None, asker: Reader) -> Iterator[Keeper]:
    if server is not None:
        from turnspit_client import Client

        with Client(server) as client:
            yield There(client)
        return
    from turnspit.api import Service
    from turnspit.moment import utc_now
    from turnspit_cli.kept import opened

    settings, store = opened()
    try:
        yield Here(Service(settings, store, utc_now), asker)
    finally:
        store.close()


def _named(one: Document, asker: Reader) -> str:
    return "  ".join((one["id"], _kind(one, asker), one["item"], _standing(one, asker)))


def _kind(log: Document, asker: Reader) -> str:
    return label(f"log-{log['kind']}", asker)


def _standing(log: Document, asker: Reader) -> str:
    return label("log-closed" if log["closed"] else f"grade-{log['grade']}", asker)


def _told(given: Document, asker: Reader) -> str:
    lines = [": ".join((_kind(given, asker), given["item"], _standing(given, asker)))]
    for entry in given["entries"]:
        gone = "" if entry["stands"] else f"  ({label('log-replaced', asker)})"
        said = f"{entry['number']:3}  {entry['at']}  {entry['who']}  {_seen(entry, asker)} {entry['note']}"
        lines.append(said.rstrip() + gone)
    for gap in given["gaps"]:
        lines.append(f"     {label('log-gap', asker, since=gap['since'], until=gap['until'])}")
    return "\n".join([*lines, findings(given, asker)])


def _seen(entry: Document, asker: Reader) -> str:
    """What was read, done or ended."""
    core_c = entry["temperature_c"]
    if core_c is not None:
        return f"{core_c * 1.8 + 32:.0f} F ({core_c:.1f} C) {entry['station']}".rstrip()
    if entry["action"]:
        return label(f"log-{entry['action']}", asker)
    return label("log-finished", asker) if entry["finished"] else ""
