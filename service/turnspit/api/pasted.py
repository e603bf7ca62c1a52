"""A recipe as the body of a request: JSON, or the file itself (plain text, an HTML page, JSON-LD)."""

from __future__ import annotations

from typing import Annotated, Any

from fastapi import Query, Request
from fastapi.exceptions import RequestValidationError
from pydantic import ValidationError

from turnspit.api.schemas.kept_recipes import RecipeBody
from turnspit.errors import Impossible
from turnspit.quantities import Region

FILES = ("text/plain", "text/html", "application/xhtml+xml", "application/ld+json")
_FILE: dict[str, Any] = {"schema": {"type": "string"}}
BODIES: dict[str, Any] = {
    "requestBody": {
        "required": True,
        "content": {
            "application/json": {"schema": RecipeBody.model_json_schema()},
            **dict.fromkeys(FILES, _FILE),
        },
    }
}
"""What `recipe_body` takes, for the OpenAPI document."""


async def recipe_body(
    request: Request,
    region: Annotated[Region | None, Query(description="Of a file sent as it is; in JSON it is a field.")] = None,
) -> RecipeBody:
    """The recipe sent. Raises RequestValidationError for JSON of another form, Impossible for other media."""
    media, _, options = request.headers.get("content-type", "application/json").partition(";")
    media = media.strip().casefold()
    content = await request.body()
    try:
        if media in FILES:
            return RecipeBody(recipe=_decoded(content, options), region=region)
        if media == "application/json" or (media.endswith("+json") and media.startswith("application/")):
            return RecipeBody.model_validate_json(content)
    except ValidationError as error:
        faults = [{**fault, "loc": ("body", *fault["loc"])} for fault in error.errors()]
        raise RequestValidationError(faults) from error
    raise Impossible("content-type", media, "is no form of a recipe", f"send application/json, or {', '.join(FILES)}")


def _decoded(content: bytes, options: str) -> str:
    """By the charset that is said, else as UTF-8; what is no character of it is replaced, so that nothing is lost."""
    charset = options.rpartition("charset=")[2].strip(" \"'") if "charset=" in options else "utf-8-sig"
    try:
        return content.decode(charset, "replace")
    except LookupError as error:
        raise Impossible("charset", charset, "is not known", "send UTF-8") from error
