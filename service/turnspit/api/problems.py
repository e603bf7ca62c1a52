"""One error shape on every road: RFC 9457 `application/problem+json`, made from the fields of the error."""

from __future__ import annotations

import logging
import math
from collections.abc import Mapping, Sequence
from http import HTTPStatus
from typing import Any

from fastapi import FastAPI, Request
from fastapi.exceptions import RequestValidationError
from fastapi.responses import Response
from pydantic import BaseModel, Field
from starlette.exceptions import HTTPException

from turnspit.errors import TurnspitError

MEDIA_TYPE = "application/problem+json"
_log = logging.getLogger("turnspit.api")


class Fault(BaseModel):
    """One field at fault."""

    name: str = Field(description="The field at fault, as a dotted path.", examples=["roast.mass_kg"])
    value: Any = Field(default=None, description="What was given, shortened.", examples=[410])
    limit: str = Field(description="The bound it breaks.", examples=["is above 45"])
    way_out: str = Field(description="What to do about it.", examples=["is that pounds?"])


class Problem(BaseModel):
    """An error, as RFC 9457 fixes it, with the field at fault beside it."""

    type: str = Field(description="What kind of problem.", examples=["urn:turnspit:problem:out-of-range"])
    title: str = Field(examples=["A value outside the checked range"])
    status: int = Field(examples=[422])
    detail: str = Field(examples=["mass_kg 410 is above 45: is that pounds?"])
    name: str | None = Field(default=None, description="The first field at fault.")
    value: Any = None
    limit: str | None = None
    way_out: str | None = None
    errors: list[Fault] | None = Field(default=None, description="Every field at fault, where there are several.")


PROBLEM_RESPONSES: dict[int | str, dict[str, Any]] = {
    status: {"description": text, "content": {MEDIA_TYPE: {"schema": {"$ref": "#/components/schemas/Problem"}}}}
    for status, text in {
        404: "There is no such thing.",
        413: "The body is too large.",
        422: "The request cannot be met: what, why and the way out.",
    }.items()
}

WAYS_OUT = {
    "missing": "give it",
    "json_invalid": "send well-formed JSON",
    "extra_forbidden": "leave it out or check its spelling",
    "timezone_aware": "add an offset such as -05:00",
}
SEE = "see /openapi.json for what is taken"


def problem_response(problem: Problem, headers: Mapping[str, str] | None = None) -> Response:
    """The problem as a response."""
    return Response(
        problem.model_dump_json(exclude_none=True),
        status_code=problem.status,
        media_type=MEDIA_TYPE,
        headers=dict(headers) if headers else None,
    )


def no_such(name: str, value: str, way_out: str) -> TurnspitError:
    """The error for an id that nothing is kept under; it is answered with 404."""
    return NotKept(name, value, "is not kept here", way_out)


class NotKept(TurnspitError):
    """An id that nothing is kept under: never made, deleted or expired."""

    slug = "not-kept"
    title = "Nothing is kept under that id"


def install(app: FastAPI) -> None:
    """Answer every error of `app` with a problem."""
    app.add_exception_handler(TurnspitError, _refused)
    app.add_exception_handler(RequestValidationError, _invalid)
    app.add_exception_handler(HTTPException, _http)
    app.add_exception_handler(Exception, _fault)


def problem_of(error: TurnspitError) -> Problem:
    """The problem that a refusal of the core is."""
    return Problem(
        type=f"urn:turnspit:problem:{error.slug}",
        title=error.title,
        status=404 if isinstance(error, NotKept) else 422,
        detail=_text(str(error)),
        name=error.name,
        value=_plain(error.value),
        limit=_text(error.limit),
        way_out=_text(error.way_out),
    )


async def _refused(_: Request, error: Exception) -> Response:
    assert isinstance(error, TurnspitError)
    return problem_response(problem_of(error))


async def _invalid(_: Request, error: Exception) -> Response:
    assert isinstance(error, RequestValidationError)
    faults = [_fault_of(entry) for entry in error.errors()]
    first = faults[0]
    return problem_response(
        Problem(
            type="urn:turnspit:problem:malformed",
            title="The request does not have the form that is taken",
            status=422,
            detail="; ".join(f"{fault.name} {fault.limit}: {fault.way_out}" for fault in faults[:5]),
            errors=faults if len(faults) > 1 else None,
            **first.model_dump(),
        )
    )


async def _http(_: Request, error: Exception) -> Response:
    assert isinstance(error, HTTPException)
    title = HTTPStatus(error.status_code).phrase
    return problem_response(
        Problem(type="about:blank", title=title, status=error.status_code, detail=_text(str(error.detail))),
        error.headers,
    )


async def _fault(request: Request, error: Exception) -> Response:
    request.app.state.service.meters.faults.inc()
    _log.error("fault in %s %s", request.method, request.url.path, exc_info=error)
    return problem_response(
        Problem(
            type="urn:turnspit:problem:fault",
            title="A fault in the service",
            status=500,
            detail="something broke on our side; it is in the log of the server",
        )
    )


def _fault_of(entry: Mapping[str, Any]) -> Fault:
    place: Sequence[object] = entry["loc"]
    path = ".".join(str(part) for part in place[1:]) or str(place[0])
    limit = str(entry["msg"]).removeprefix("Value error, ")
    if isinstance(entry.get("input"), bytes):  # the body was not read as JSON, because nothing said that it is
        return Fault(name="body", limit="is not said to be JSON", way_out="send Content-Type: application/json")
    return Fault(
        name="body" if entry["type"] == "json_invalid" else _text(path),
        value=None if entry["type"] in ("missing", "json_invalid") else _plain(entry.get("input")),
        limit=_text(limit[0].lower() + limit[1:]),
        way_out=WAYS_OUT.get(entry["type"], SEE),
    )


def _plain(value: object) -> object:
    """`value` as JSON can hold it, not longer than a line."""
    if isinstance(value, bool) or value is None:
        return value
    if isinstance(value, int) and abs(value) < 2**53:
        return value
    if isinstance(value, float) and math.isfinite(value):
        return value
    return _text(str(value), 60)


def _text(text: str, most: int = 500) -> str:
    # A lone surrogate is a string in Python that no UTF-8 can carry.
    clean = text.encode("utf-8", "replace").decode("utf-8")
    return clean if len(clean) <= most else f"{clean[: most - 3]}..."
