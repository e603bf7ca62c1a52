"""The two roads to an answer, which give the same JSON: in this process, or over a running service."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Literal, Protocol

if TYPE_CHECKING:
    from turnspit.asking.conversation import Conversation

Document = dict[str, Any]


@dataclass(frozen=True, slots=True)
class Asker:
    """Who asks: what the options of the command say."""

    now: str | None = None
    timezone: str | None = None
    units: Literal["us", "metric"] | None = None
    kitchen: Literal["home", "licensed"] | None = None
    explain: bool = False


class Road(Protocol):
    """One conversation: each line gives the ask response, in the light of the lines before it."""

    def ask(self, text: str) -> Document:
        """The response to one line."""


class InProcess:
    """The core itself, without a server or a database; the conversation lasts as long as this object."""

    def __init__(self, asker: Asker) -> None:
        self._asker = asker
        self._conversation: Conversation | None = None

    def ask(self, text: str) -> Document:
        """The response to one line."""
        from uuid import uuid4

        from turnspit.asking import ask
        from turnspit.asking.contract import Line
        from turnspit.moment import moment, utc_now

        asker, before = self._asker, self._conversation
        now = moment(asker.now, asker.timezone, utc_now())
        line = Line(text, now, asker.units, asker.kitchen, asker.explain)
        reply, self._conversation = ask(line, before, before.id if before else uuid4().hex)
        return reply.document()


class OverServer:
    """A running service, by the Python client."""

    def __init__(self, server: str, asker: Asker) -> None:
        from turnspit_client import Client

        self._client = Client(server)
        self._asker = asker
        self._conversation: str | None = None

    def ask(self, text: str) -> Document:
        """The response to one line."""
        from turnspit.moment import moment, utc_now

        asker = self._asker
        now = moment(asker.now, asker.timezone, utc_now())
        reply = self._client.ask(
            text,
            conversation=self._conversation,
            now=now,
            timezone=getattr(now.tzinfo, "key", None),  # the cook stands here, wherever the server does
            units=asker.units,
            kitchen=asker.kitchen,
            explain=asker.explain,
        )
        self._conversation = reply["conversation"]
        return dict(reply)


def road_to(server: str | None, asker: Asker) -> Road:
    """To the service at that address, or to the core in this process."""
    return OverServer(server, asker) if server else InProcess(asker)
