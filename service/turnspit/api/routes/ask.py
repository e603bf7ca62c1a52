"""A line in, an answer out, and the conversations that come of it."""

from __future__ import annotations

import logging
from typing import Annotated, Any
from uuid import uuid4

from fastapi import APIRouter, Depends, Response

from turnspit import asking
from turnspit.api.kept import keep_plan
from turnspit.api.problems import no_such
from turnspit.api.schemas.ask import AskBody, AskGiven
from turnspit.api.service import Service, service_of
from turnspit.asking import Conversation, Line, Reply
from turnspit.message import Message
from turnspit.words import Reader, say

router = APIRouter(tags=["asking"])
_log = logging.getLogger("turnspit.api")

EARLIER = "send the line without a conversation to start a new one"


@router.post("/v1/ask", response_model=AskGiven)
async def ask(body: AskBody, service: Annotated[Service, Depends(service_of)]) -> dict[str, Any]:
    """Answers a line as a cook would type it: "16 lb bird, dinner at 6"."""
    return await service.work(answer, service, body)


@router.get("/v1/conversations/{conversation_id}")
async def show(conversation_id: str, service: Annotated[Service, Depends(service_of)]) -> dict[str, Any]:
    """What was said in a conversation, and who set each value."""
    kept = await service.work(service.store.conversation, conversation_id, service.oldest_talk())
    if kept is None:
        raise no_such("conversation", conversation_id, EARLIER)
    return {"conversation": kept.id, "touched_at": kept.touched_at.isoformat(), **kept.document}


@router.delete("/v1/conversations/{conversation_id}", status_code=204)
async def forget(conversation_id: str, service: Annotated[Service, Depends(service_of)]) -> Response:
    """Deletes a conversation for good."""
    if not await service.work(service.store.delete_conversation, conversation_id):
        raise no_such("conversation", conversation_id, EARLIER)
    return Response(status_code=204)


def answer(service: Service, body: AskBody) -> dict[str, Any]:
    """The answer to a line, with its conversation and plan kept. Blocks; pages call it too."""
    now = service.now(body.now, body.timezone)
    line = Line(body.text.replace("\0", " "), now, body.units, body.kitchen or service.settings.kitchen, body.explain)
    before = _before(service, body.conversation)
    conversation_id = before.id if before else uuid4().hex
    try:
        reply, after = asking.ask(line, before, conversation_id)
    except Exception:
        service.meters.faults.inc()
        _log.exception("fault in answering %r", line.text[:500])
        return _at_fault(line, before or Conversation(conversation_id))
    document = reply.document()
    service.store.keep_conversation(after.id, after.document(), service.clock())
    service.meters.questions.labels(reply.intent).inc()
    plan = document["data"].get("plan")
    if plan:
        keep_plan(service, plan, document["data"]["reader"])
    return document


def _at_fault(line: Line, conversation: Conversation) -> dict[str, Any]:
    """What the cook is told where our own code broke: never an error page, and nothing invented."""
    reader = Reader(line.now, conversation.language)
    headline = say(Message("api-fault"), reader)
    return Reply(conversation.id, "unknown", ("unknown",), conversation.understood, headline).document()


def _before(service: Service, conversation_id: str | None) -> Conversation | None:
    if conversation_id is None:
        return None
    kept = service.store.conversation(conversation_id, service.oldest_talk())
    try:
        return Conversation.from_document(kept.document) if kept else None
    except (TypeError, ValueError):  # kept by a version that wrote it otherwise
        return None
