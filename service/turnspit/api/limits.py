"""No body is read past the limit, whatever its header says.

The framework has such a limit too, but answers it in plain text; here every error has one shape.
"""

from __future__ import annotations

from starlette.types import ASGIApp, Message, Receive, Scope, Send

from turnspit.api.problems import Problem, problem_response


class BodyLimit:
    """Answers 413 to a body above `limit_bytes`."""

    def __init__(self, app: ASGIApp, limit_bytes: int) -> None:
        self._app = app
        self._limit_bytes = limit_bytes

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Read the whole body, which the JSON routes need whole anyway, and pass it on."""
        if scope["type"] != "http" or scope["method"] in ("GET", "HEAD", "DELETE"):
            await self._app(scope, receive, send)
            return
        body = bytearray()
        more = True
        while more:
            message = await receive()
            if message["type"] != "http.request":
                return
            body += message.get("body", b"")
            more = message.get("more_body", False)
            if len(body) > self._limit_bytes:
                await problem_response(self._too_large())(scope, receive, send)
                return
        whole: list[Message] = [{"type": "http.request", "body": bytes(body), "more_body": False}]

        async def replay() -> Message:
            return whole.pop() if whole else await receive()

        await self._app(scope, replay, send)

    def _too_large(self) -> Problem:
        return Problem(
            type="urn:turnspit:problem:too-large",
            title="The body is too large",
            status=413,
            detail=f"the body is above {self._limit_bytes} bytes: send less at once",
            name="body",
            limit=f"is above {self._limit_bytes} bytes",
            way_out="send less at once",
        )
