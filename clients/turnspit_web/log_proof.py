"""What the readings of a logged roast prove by the published tables, beside the verdict and never in its place."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from pydantic import ValidationError

from turnspit.api.logs import OpenLog
from turnspit.api.service import Service
from turnspit.errors import TurnspitError
from turnspit.heat import KINDS
from turnspit.message import Message
from turnspit.safety import LogVerdict, Measured
from turnspit.words import LANGUAGES, Reader, say
from turnspit_web.forms import Typed
from turnspit_web.rendering import Filled
from turnspit_web.worked.lethality import CONDITIONS, proof_of


@dataclass(frozen=True, slots=True)
class Earned:
    """What the readings of a roast prove under the conditions said; nothing is `found` before its kind is known."""

    typed: Typed
    found: Mapping[str, Any] | None = None


def earned(service: Service, opened: OpenLog, verdict: LogVerdict, given: Filled, reader: Reader) -> Earned | None:
    """What the readings that stand prove; None for what is no roast, holds no reading, or was thrown away."""
    readings = tuple(
        Measured(one.at.timestamp() / 60, one.temperature_c, one.station)
        for one in opened.log.readings()
        if one.temperature_c is not None
    )
    if opened.log.kind != "roast" or not readings or verdict.closed:
        return None
    kind = kind_named(opened.log.item, reader)
    typed = CONDITIONS.typed(given or ({"kind": [kind]} if kind else {}), reader)
    if not typed.begun or typed.problems:
        return Earned(typed)
    try:
        return Earned(typed, proof_of(readings, typed.values, service, reader))
    except (ValidationError, TurnspitError) as error:
        return Earned(typed.refused(error))


def kind_named(item: str, reader: Reader) -> str:
    """The roast that a log speaks of, "" where its words name none; the longest name leads ("turkey breast")."""
    readers = [replace(reader, language=each) for each in LANGUAGES]
    names = {kind: [say(Message(f"roast-{kind}"), each) for each in readers] for kind in KINDS}
    found = [(len(name), kind) for kind, told in names.items() for name in told if name in item.casefold()]
    return max(found, default=(0, ""))[1]
