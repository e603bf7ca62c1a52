"""A recipe as the body of a request: JSON, or the file itself (plain text, an HTML page, JSON-LD)."""

from __future__ import annotations

import json
from collections.abc import Callable, Coroutine
from typing import Any, get_args

from fastapi import Request
from fastapi.responses import Response
from fastapi.routing import APIRoute

from turnspit.errors import Impossible
from turnspit.quantities import Region

FILES = ("text/plain", "text/html", "application/xhtml+xml", "application/ld+json")
TAKES_FILES: dict[str, Any] = {
    "requestBody": {"content": {media: {"schema": {"type": "string"}} for media in FILES}},
    "parameters": [
        {
            "name": "region",
            "in": "query",
            "description": "Whose cups and spoons, for a file sent as it is; in JSON it is a field.",
            "schema": {"type": "string", "enum": list(get_args(Region))},
        }
    ],
}
"""What the route takes besides JSON, for the OpenAPI document."""


class FileRoute(APIRoute):
    """A route that takes a recipe's file as the body, and reads it as the JSON that would hold it."""

    def get_route_handler(self) -> Callable[[Request], Coroutine[Any, Any, Response]]:
        """The handler, with what was sent made JSON first."""
        handle = super().get_route_handler()

        async def handle_file(request: Request) -> Response:
            return await handle(await _as_json(request))

        return handle_file


async def _as_json(request: Request) -> Request:
    """The request with JSON for a body. Raises Impossible for media that are no form of a recipe."""
    media, _, options = request.headers.get("content-type", "application/json").partition(";")
    media = media.strip().casefold()
    if media == "application/json":
        return request
    if media not in FILES:
        raise Impossible(
            "content-type", media, "is no form of a recipe", f"send application/json, or {', '.join(FILES)}"
        )
    text = _decoded(await request.body(), options)
    body = json.dumps({"recipe": text, "region": request.query_params.get("region")}).encode()

    async def receive() -> dict[str, Any]:
        return {"type": "http.request", "body": body, "more_body": False}

    headers = [(name, value) for name, value in request.scope["headers"] if name != b"content-type"]
    return Request({**request.scope, "headers": [*headers, (b"content-type", b"application/json")]}, receive)


def _decoded(content: bytes, options: str) -> str:
    """By the charset that is said, else as UTF-8; what is no character of it is replaced, so that nothing is lost."""
    charset = options.rpartition("charset=")[2].strip(" \"'") if "charset=" in options else "utf-8-sig"
    try:
        return content.decode(charset, "replace")
    except LookupError as error:
        raise Impossible("charset", charset, "is not known", "send UTF-8") from error
