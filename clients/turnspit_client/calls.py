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


def delete_plan(plan_id: str) -> Call[None]:
    """Delete a plan for good."""
    return Call("DELETE", f"/v1/plans/{_part(plan_id)}", _nothing)


def plan_on_display() -> Call[Document]:
    """The plan on the kitchen display: the one last put on it, else the one last kept."""
    return Call("GET", "/v1/display", _json)


def put_on_display(plan_id: str) -> Call[None]:
    """Put a plan on the kitchen display."""
    return Call("PUT", f"/v1/display/{_part(plan_id)}", _nothing)


def forecast_roast(case: Mapping[str, Any]) -> Call[Document]:
    """When a roast is ready."""
    return Call("POST", "/v1/roasts/forecast", _json, case)


def forecast_chill(case: Mapping[str, Any]) -> Call[Document]:
    """How long something hot takes to be cold."""
    return Call("POST", "/v1/chills", _json, case)


def make_brine(case: Mapping[str, Any]) -> Call[Document]:
    """A brine that fits."""
    return Call("POST", "/v1/brines", _json, case)


def convert(
    value: float, unit: str, target_unit: str, item: str | None = None, region: str | None = None
) -> Call[Amount]:
    """An amount in another unit, by the cups and spoons of `region`."""
    body = {"value": value, "unit": unit, "target_unit": target_unit, "item": item, "region": region}
    return Call("POST", "/v1/convert", _json, body)


def size_roast(case: Mapping[str, Any]) -> Call[Document]:
    """How big a roast, or how many, for the diners."""
    return Call("POST", "/v1/sizes", _json, case)


def keep_recipe(recipe: str | Mapping[str, Any], region: str | None = None) -> Call[Document]:
    """Read a recipe (text, a page, a schema.org Recipe) and keep it."""
    return Call("POST", "/v1/recipes", _json, {"recipe": recipe, "region": region})


def show_recipes() -> Call[Document]:
    """The starter recipes, and those kept last."""
    return Call("GET", "/v1/recipes", _json)


def show_recipe(recipe_id: str) -> Call[Document]:
    """One recipe, by its id or by the key of a starter."""
    return Call("GET", f"/v1/recipes/{_part(recipe_id)}", _json)


def recipe_text(recipe_id: str) -> Call[str]:
    """The same as clean text."""
    return Call("GET", f"/v1/recipes/{_part(recipe_id)}", _text, headers={"accept": "text/plain"})


def recipe_json_ld(recipe_id: str) -> Call[Document]:
    """The same as a schema.org Recipe."""
    return Call("GET", f"/v1/recipes/{_part(recipe_id)}", _json, headers={"accept": "application/ld+json"})


def delete_recipe(recipe_id: str) -> Call[None]:
    """Delete a kept recipe for good."""
    return Call("DELETE", f"/v1/recipes/{_part(recipe_id)}", _nothing)


def make_lists(dinner: Mapping[str, Any]) -> Call[Document]:
    """Shopping, preparation, equipment, orders and allergens of a dinner."""
    return Call("POST", "/v1/lists", _json, dinner)


def scale_recipe(wish: Mapping[str, Any]) -> Call[Document]:
    """A recipe for another number of servings."""
    return Call("POST", "/v1/recipes/scale", _json, wish)


def check_safety(check: Mapping[str, Any]) -> Call[Document]:
    """What the rules say of one question, a plan, a log, a cooling, or measured readings (`lethality`)."""
    return Call("POST", "/v1/safety/checks", _json, check)


def begin_log(log: Mapping[str, Any]) -> Call[Document]:
    """Begin a log of one roast or food."""
    return Call("POST", "/v1/logs", _json, log)


def show_logs() -> Call[Document]:
    """The logs last begun, each with how it stands."""
    return Call("GET", "/v1/logs", _json)


def show_log(log_id: str) -> Call[Document]:
    """A log with its verdict as it stands now."""
    return Call("GET", f"/v1/logs/{_part(log_id)}", _json)


def log_csv(log_id: str) -> Call[str]:
    """Its entries as CSV."""
    return Call("GET", f"/v1/logs/{_part(log_id)}", _text, headers={"accept": "text/csv"})


def add_to_log(log_id: str, entry: Mapping[str, Any]) -> Call[Document]:
    """Add a reading, an action, a correction, a note or the end; the log with its new verdict."""
    return Call("POST", f"/v1/logs/{_part(log_id)}/entries", _json, entry)


def make_labels(boxes: Mapping[str, Any]) -> Call[Document]:
    """Labels for what is chilled."""
    return Call("POST", "/v1/labels", _json, boxes)


def show_card(kitchen: Kitchen | None = None) -> Call[Document]:
    """The one-page card for teaching staff, by the rules of a kitchen."""
    return Call("GET", f"/v1/card?kitchen={kitchen}" if kitchen else "/v1/card", _json)


def show_conversation(conversation_id: str) -> Call[Document]:
    """What was said in a conversation."""
    return Call("GET", f"/v1/conversations/{_part(conversation_id)}", _json)


def delete_conversation(conversation_id: str) -> Call[None]:
    """Delete a conversation for good."""
    return Call("DELETE", f"/v1/conversations/{_part(conversation_id)}", _nothing)


def reference_tables() -> Call[Document]:
    """The names of the published tables there are."""
    return Call("GET", "/v1/reference", _json)


def reference_table(name: str) -> Call[Document]:
    """One published table with its sources."""
    return Call("GET", f"/v1/reference/{_part(name)}", _json)


def health() -> Call[Document]:
    """Whether the service and its database answer, and its version."""
    return Call("GET", "/healthz", _json)


def metrics() -> Call[str]:
    """What was counted since the start, in the Prometheus text format."""
    return Call("GET", "/metrics", _text)


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
