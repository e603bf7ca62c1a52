"""A Python client for a turnspit service, sync and async, over httpx."""

from turnspit_client.calls import Call
from turnspit_client.clients import AsyncClient, Client
from turnspit_client.shapes import Amount, Answer, Caution, Question, Reply
from turnspit_client.trouble import NoService, Refused

__all__ = [
    "Amount",
    "Answer",
    "AsyncClient",
    "Call",
    "Caution",
    "Client",
    "NoService",
    "Question",
    "Refused",
    "Reply",
]
