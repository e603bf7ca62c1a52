"""For whom the answer is put into words: from the request's own fields, else from its Accept-Language."""

from __future__ import annotations

from datetime import datetime
from typing import NamedTuple

from fastapi import Request

from turnspit.words import LANGUAGES, Reader
from turnspit.words.reader import Clock, Language, Units


class Tongue(NamedTuple):
    """A language and, where the header tells, a region."""

    language: Language
    region: str


def reader_for(
    request: Request,
    now: datetime,
    language: Language | None = None,
    units: Units | None = None,
    clock: Clock | None = None,
) -> Reader:
    """The reader of this request. Units and clock follow the language's region where they are not named."""
    tongue = accepted(request.headers.get("accept-language", ""))
    spoken = language or tongue.language
    customary = (tongue.region or "US") == "US" and spoken == "en"
    held: Units = units or ("us" if customary else "metric")
    return Reader(now=now, language=spoken, units=held, clock=clock or ("12h" if held == "us" else "24h"))


def accepted(header: str) -> Tongue:
    """The best language of an Accept-Language header that there are texts in; English without one."""
    wishes: list[tuple[float, int, str]] = []
    for place, part in enumerate(header.split(",")[:20]):
        tag, _, weight = part.strip().partition(";q=")
        try:
            wishes.append((-float(weight or 1), place, tag))
        except ValueError:
            continue
    for _, _, tag in sorted(wishes):
        primary, _, rest = tag.partition("-")
        for language in LANGUAGES:
            if primary.lower() == language:
                return Tongue(language, rest.rpartition("-")[2].upper())
    return Tongue("en", "")
