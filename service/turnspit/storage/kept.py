"""What the store gives back: documents as they were kept, with their times."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any

Document = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class KeptPlan:
    """A plan as it was given out, and when."""

    id: str
    document: Document
    kept_at: datetime
    serve_at: datetime


@dataclass(frozen=True, slots=True)
class KeptConversation:
    """A conversation's document, and when a line was last said in it."""

    id: str
    document: Document
    touched_at: datetime


@dataclass(frozen=True, slots=True)
class KeptRecipe:
    """A recipe as it was given to us, and when."""

    id: str
    document: Document
    kept_at: datetime


@dataclass(frozen=True, slots=True)
class KeptLog:
    """What a log is about, and its entries in the order of recording."""

    id: str
    document: Document
    opened_at: datetime
    entries: tuple[Document, ...]
