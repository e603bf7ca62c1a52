"""Building a request and reading its response, as plain functions: the two clients differ only in how they send."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, Generic, Literal, TypeVar
from urllib.parse import quote

import httpx

from turnspit_client.shapes import Amount, Reply
from turnspit_client.trouble import NoService, Refused

T = TypeVar("T")
Document = dict[str, Any]
Units = Literal["us", "metric"]
Kitchen = Literal["home", "licensed"]


@dataclass(frozen=True, slots=True)
class Call(Generic[T]):
    """One request, and how its response is read."""

    method: str
    path: str
    read: Callable[[httpx.Response], T]
    body: Mapping[str, Any] | None = None
    headers: Mapping[str, str] = field(default_factory=dict)


def ask(
    text: str,
    *,
    conversation: str | None = None,
    now: datetime | str | None = None,
    timezone: str | None = None,
    units: Units | None = None,
    kitchen: Kitchen | None = None,
    explain: bool = False,
) -> Call[Reply]:
    """Ask one plain line; give the reply's `conversation` with the next one."""
    body = {
        "text": text,
        "conversation": conversation,
        "now": now.isoformat() if isinstance(now, datetime) else now,
        "timezone": timezone,
        "units": units,
        "kitchen": kitchen,
        "explain": explain,
    }
    return Call("POST", "/v1/ask", _json, body)


def make_plan(dinner: Mapping[str, Any]) -> Call[Document]:
    """Plan a dinner and keep the plan."""
    return Call("POST", "/v1/plans", _json, dinner)


def show_plan(plan_id: str) -> Call[Document]:
    """A plan kept before."""
    return Call("GET", f"/v1/plans/{_part(plan_id)}", _json)


def plan_calendar(plan_id: str) -> Call[str]:
    """The same as iCalendar text."""
    return Call("GET", f"/v1/plans/{_part(plan_id)}", _text, headers={"accept": "text/calendar"})


def forecast_roast(case: Mapping[str, Any]) -> Call[Document]:
    """When a roast is ready."""
    return Call("POST", "/v1/roasts/forecast", _json, case)


def forecast_chill(case: Mapping[str, Any]) -> Call[Document]:
    """How long something hot takes to be cold."""
    return Call("POST", "/v1/chills", _json, case)


def make_brine(case: Mapping[str, Any]) -> Call[Document]:
    """A brine that fits."""
    return Call("POST", "/v1/brines", _json, case)


def convert(value: float, unit: str, target_unit: str, item: str | None = None) -> Call[Amount]:
    """An amount in another unit."""
    body = {"value": value, "unit": unit, "target_unit": target_unit, "item": item}
    return Call("POST", "/v1/convert", _json, body)


def scale_recipe(wish: Mapping[str, Any]) -> Call[Document]:
    """A recipe for another number of servings."""
    return Call("POST", "/v1/recipes/scale", _json, wish)


def check_safety(check: Mapping[str, Any]) -> Call[Document]:
    """What the rules say of a plan, a log or one question."""
    return Call("POST", "/v1/safety/checks", _json, check)


def show_conversation(conversation_id: str) -> Call[Document]:
    """What was said in a conversation."""
    return Call("GET", f"/v1/conversations/{_part(conversation_id)}", _json)


def delete_conversation(conversation_id: str) -> Call[None]:
    """Delete a conversation for good."""
    return Call("DELETE", f"/v1/conversations/{_part(conversation_id)}", _nothing)


def reference_table(name: str) -> Call[Document]:
    """One published table with its sources."""
    return Call("GET", f"/v1/reference/{_part(name)}", _json)


def _part(name: str) -> str:
    return quote(name, safe="")


def _json(response: httpx.Response) -> Any:
    try:
        return _checked(response).json()
    except ValueError as error:
        if isinstance(error, Refused):
            raise
        raise _stranger(response) from error


def _text(response: httpx.Response) -> str:
    return _checked(response).text


def _nothing(response: httpx.Response) -> None:
    _checked(response)


def _checked(response: httpx.Response) -> httpx.Response:
    if response.is_success:
        return response
    if response.headers.get("content-type", "").startswith("application/problem+json"):
        raise Refused(response.json())
    raise _stranger(response)


def _stranger(response: httpx.Response) -> NoService:
    return NoService(f"{response.url} answered {response.status_code}, but not as this service would")
