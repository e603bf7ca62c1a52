"""How every page is made: its template, its texts in the reader's language, and headers that let nothing else in."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated, Any
from urllib.parse import parse_qs

from fastapi import Depends, Request
from fastapi.responses import HTMLResponse, RedirectResponse, Response
from jinja2 import Environment, PackageLoader, StrictUndefined
from pydantic import ValidationError

from turnspit.api import Service, service_of
from turnspit.api.problems import NotKept
from turnspit.api.readers import reader_for
from turnspit.errors import TurnspitError
from turnspit.message import Message
from turnspit.words import Reader, say
from turnspit.words.measures import length, mass, percent, span, spans, temperature, volume
from turnspit_web.view import label

SAFE_HEADERS = {
    "content-security-policy": "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; "
    "connect-src 'self'; form-action 'self'; base-uri 'none'",
    "referrer-policy": "same-origin",
    "x-content-type-options": "nosniff",
}
Served = Annotated[Service, Depends(service_of)]
Refusal = TurnspitError | ValidationError
Filled = Mapping[str, list[str]]

templates = Environment(
    loader=PackageLoader("turnspit_web"), autoescape=True, undefined=StrictUndefined, trim_blocks=True
)
templates.globals.update(
    length=length, mass=mass, percent=percent, span=span, spans=spans, temperature=temperature, volume=volume
)


def page(template: str, status: int = 200, /, *, reader: Reader, **values: Any) -> Response:
    """The page of that template for a reader."""
    html = templates.get_template(template).render(
        reader=reader,
        t=lambda key, **v: label(key, reader, **v),
        f=lambda key, **v: say(Message(f"form-{key}", **v), reader),
        **values,
    )
    return HTMLResponse(html, status_code=status, headers=SAFE_HEADERS)


def missing(request: Request, service: Service, error: NotKept) -> Response:
    """The page for what is not kept here."""
    return page("missing.html", 404, reader=reader_for(request, service.now()), line=str(error))


def from_elsewhere(request: Request) -> bool:
    """Whether another site sent this form; then nothing is changed."""
    return request.headers.get("sec-fetch-site", "same-origin") not in ("same-origin", "none")


def see_other(path: str) -> Response:
    """Go on there with GET, so that a page loaded again changes nothing a second time."""
    return RedirectResponse(path, status_code=303)


async def filled(request: Request) -> Filled:
    """The fields of a form that was sent, without those left empty."""
    return parse_qs((await request.body()).decode("utf-8", "replace"), max_num_fields=500)


def field(form: Filled, name: str) -> str:
    """The last value of that field, "" for none."""
    return form.get(name, [""])[-1].strip()
