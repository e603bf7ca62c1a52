"""The tables as SQLAlchemy sees them; `migrations` makes them, and one test holds both to be the same."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

from sqlalchemy import JSON, DateTime, Dialect, ForeignKey, String, TypeDecorator
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column


class Moment(TypeDecorator[datetime]):
    """An aware datetime, kept in UTC: SQLite has no zones of its own."""

    impl = DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:  # noqa: ARG002
        """To UTC; a database without zones keeps the figures alone."""
        return value.astimezone(UTC) if value else None

    def process_result_value(self, value: datetime | None, dialect: Dialect) -> datetime | None:  # noqa: ARG002
        """Back in UTC."""
        if value is None:
            return None
        return value.replace(tzinfo=UTC) if value.tzinfo is None else value.astimezone(UTC)


class Base(DeclarativeBase):
    """All tables."""


class PlanRow(Base):
    """One plan as it was given out; `shown_at` is when it was last put on the kitchen display."""

    __tablename__ = "plans"

    id: Mapped[str] = mapped_column(String(64), primary_key=True)
    document: Mapped[dict[str, Any]] = mapped_column(JSON)
    kept_at: Mapped[datetime] = mapped_column(Moment, index=True)
    serve_at: Mapped[datetime] = mapped_column(Moment, index=True)
    shown_at: Mapped[datetime | None] = mapped_column(Moment, default=None)


class ConversationRow(Base):
    """One conversation; `touched_at` is when a line was last said in it."""

    __tablename__ = "conversations"

    id: Mapped[str] = mapped_column(String(64), primary_key=True)
    document: Mapped[dict[str, Any]] = mapped_column(JSON)
    touched_at: Mapped[datetime] = mapped_column(Moment, index=True)


class RecipeRow(Base):
    """One recipe as it was given to us; it is read anew each time."""

    __tablename__ = "recipes"

    id: Mapped[str] = mapped_column(String(64), primary_key=True)
    document: Mapped[dict[str, Any]] = mapped_column(JSON)
    kept_at: Mapped[datetime] = mapped_column(Moment, index=True)


class LogRow(Base):
    """What a log is about; what was measured stands in its entries."""

    __tablename__ = "logs"

    id: Mapped[str] = mapped_column(String(64), primary_key=True)
    document: Mapped[dict[str, Any]] = mapped_column(JSON)
    opened_at: Mapped[datetime] = mapped_column(Moment, index=True)


class LogEntryRow(Base):
    """One entry of a log, numbered from 1 in the order of recording. Never changed, never deleted."""

    __tablename__ = "log_entries"

    log_id: Mapped[str] = mapped_column(ForeignKey("logs.id"), primary_key=True)
    number: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    document: Mapped[dict[str, Any]] = mapped_column(JSON)
