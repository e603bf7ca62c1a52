"""The store: keep, find, delete and expire. All calls block; the API makes them off its event loop."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from importlib.resources import as_file, files
from typing import Any

from alembic import command
from alembic.config import Config
from sqlalchemy import Engine, create_engine, delete, event, func, select
from sqlalchemy.engine import make_url
from sqlalchemy.exc import IntegrityError
from sqlalchemy.orm import Session
from sqlalchemy.pool import StaticPool

from turnspit.storage.kept import Document, KeptConversation, KeptLog, KeptPlan, KeptRecipe
from turnspit.storage.place import default_url
from turnspit.storage.tables import Base, ConversationRow, LogEntryRow, LogRow, PlanRow, RecipeRow

MOST_TRIES = 8
"""So many may add to the same log in the same instant."""


class Store:
    """All that is kept, in one database. Times are aware; `now` is always passed in."""

    def __init__(self, engine: Engine) -> None:
        self._engine = engine

    def keep_plan(self, plan_id: str, document: Document, serve_at: datetime, now: datetime) -> None:
        """Keep a plan; one of the same id is replaced."""
        self._keep(PlanRow(id=plan_id, document=dict(document), kept_at=now, serve_at=serve_at))

    def plan(self, plan_id: str) -> KeptPlan | None:
        """The plan of that id, or None."""
        with Session(self._engine) as session:
            return _plan(session.get(PlanRow, plan_id))

    def show_plan(self, plan_id: str, now: datetime) -> bool:
        """Put a plan on the kitchen display. False where there is no such plan."""
        with Session(self._engine) as session, session.begin():
            row = session.get(PlanRow, plan_id)
            if row is not None:
                row.shown_at = now
            return row is not None

    def shown_plan(self) -> KeptPlan | None:
        """What the kitchen display shows: the plan last put on it, else the one last kept."""
        latest = func.coalesce(PlanRow.shown_at, PlanRow.kept_at)
        order = (PlanRow.shown_at.is_(None), latest.desc())
        with Session(self._engine) as session:
            return _plan(session.scalars(select(PlanRow).order_by(*order).limit(1)).first())

    def delete_plan(self, plan_id: str) -> bool:
        """Delete a plan. False where there was none."""
        with Session(self._engine) as session, session.begin():
            return _count(session, delete(PlanRow).where(PlanRow.id == plan_id)) > 0

    def keep_conversation(self, conversation_id: str, document: Document, now: datetime) -> None:
        """Keep a conversation as it stands now."""
        self._keep(ConversationRow(id=conversation_id, document=dict(document), touched_at=now))

    def conversation(self, conversation_id: str, touched_since: datetime) -> KeptConversation | None:
        """The conversation of that id, or None without one or where its last line is older than `touched_since`."""
        with Session(self._engine) as session:
            row = session.get(ConversationRow, conversation_id)
            if row is None or row.touched_at < touched_since:
                return None
            return KeptConversation(row.id, row.document, row.touched_at)

    def delete_conversation(self, conversation_id: str) -> bool:
        """Delete a conversation. False where there was none."""
        with Session(self._engine) as session, session.begin():
            return _count(session, delete(ConversationRow).where(ConversationRow.id == conversation_id)) > 0

    def keep_recipe(self, recipe_id: str, document: Document, now: datetime) -> None:
        """Keep a recipe; one of the same id is replaced."""
        self._keep(RecipeRow(id=recipe_id, document=dict(document), kept_at=now))

    def recipe(self, recipe_id: str) -> KeptRecipe | None:
        """The recipe of that id, or None."""
        with Session(self._engine) as session:
            row = session.get(RecipeRow, recipe_id)
            return None if row is None else KeptRecipe(row.id, row.document, row.kept_at)

    def recipes(self, most: int) -> tuple[KeptRecipe, ...]:
        """The recipes last kept, the newest first."""
        with Session(self._engine) as session:
            rows = session.scalars(select(RecipeRow).order_by(RecipeRow.kept_at.desc(), RecipeRow.id).limit(most))
            return tuple(KeptRecipe(row.id, row.document, row.kept_at) for row in rows)

    def delete_recipe(self, recipe_id: str) -> bool:
        """Delete a recipe. False where there was none."""
        with Session(self._engine) as session, session.begin():
            return _count(session, delete(RecipeRow).where(RecipeRow.id == recipe_id)) > 0

    def open_log(self, log_id: str, document: Document, now: datetime) -> None:
        """Begin a log. There is no way to delete one, nor any of its entries."""
        with Session(self._engine) as session, session.begin():
            session.add(LogRow(id=log_id, document=dict(document), opened_at=now))

    def log(self, log_id: str) -> KeptLog | None:
        """The log of that id with its entries in the order of recording, or None."""
        with Session(self._engine) as session:
            row = session.get(LogRow, log_id)
            return None if row is None else _log(session, row)

    def logs(self, most: int) -> tuple[KeptLog, ...]:
        """The logs last begun, the newest first."""
        with Session(self._engine) as session:
            rows = session.scalars(select(LogRow).order_by(LogRow.opened_at.desc(), LogRow.id).limit(most))
            return tuple(_log(session, row) for row in rows.all())

    def add_to_log(self, log_id: str, entry: Callable[[KeptLog], Document]) -> KeptLog | None:
        """Add the entry that `entry` makes of the log as it stands; the log with it, or None without such a log.

        Where somebody else added one in between, the entry is made again. Raises what `entry` raises.
        """
        for _ in range(MOST_TRIES - 1):
            try:
                return self._add_to_log(log_id, entry)
            except IntegrityError:
                continue
        return self._add_to_log(log_id, entry)

    def _add_to_log(self, log_id: str, entry: Callable[[KeptLog], Document]) -> KeptLog | None:
        with Session(self._engine) as session, session.begin():
            row = session.get(LogRow, log_id)
            if row is None:
                return None
            before = _log(session, row)
            session.add(LogEntryRow(log_id=log_id, number=len(before.entries) + 1, document=dict(entry(before))))
            session.flush()
            return _log(session, row)

    def expire(self, touched_before: datetime, served_before: datetime) -> int:
        """Delete the conversations last touched, and the plans served, before the given times; how many went."""
        with Session(self._engine) as session, session.begin():
            return _count(
                session, delete(ConversationRow).where(ConversationRow.touched_at < touched_before)
            ) + _count(session, delete(PlanRow).where(PlanRow.serve_at < served_before))

    def _keep(self, row: Base) -> None:
        try:
            with Session(self._engine) as session, session.begin():
                session.merge(row)
        except IntegrityError:
            # Somebody kept the same between our look and our write; now it is there to be replaced.
            with Session(self._engine) as session, session.begin():
                session.merge(row)

    def answers(self) -> bool:
        """True where the database answers; raises what the database raises where it does not."""
        with self._engine.connect() as connection:
            return connection.scalar(select(1)) == 1

    def close(self) -> None:
        """Let go of the database."""
        self._engine.dispose()


def open_store(url: str | None = None) -> Store:
    """The store at `url` (an SQLAlchemy URL; by default SQLite in the user's data folder), brought up to date."""
    engine = _engine(url or default_url())
    with as_file(files("turnspit.storage") / "migrations") as folder:
        config = Config()
        config.set_main_option("script_location", str(folder).replace("%", "%%"))
        config.set_main_option("path_separator", "os")
        with engine.begin() as connection:
            config.attributes["connection"] = connection
            command.upgrade(config, "head")
    return Store(engine)


def _engine(url: str) -> Engine:
    parsed = make_url(url)
    if parsed.get_backend_name() != "sqlite":
        return create_engine(parsed, pool_pre_ping=True)
    if parsed.database in (None, "", ":memory:"):
        # One connection for all threads, or each would see a database of its own.
        return create_engine(parsed, poolclass=StaticPool, connect_args={"check_same_thread": False})
    engine = create_engine(parsed)
    event.listen(engine, "connect", _settle_sqlite)
    return engine


def _settle_sqlite(connection: Any, _record: object) -> None:
    # Readers do not wait for a writer, and a power cut costs at most the last answer, never the file.
    for pragma in ("journal_mode=WAL", "synchronous=NORMAL", "busy_timeout=5000"):
        connection.execute(f"PRAGMA {pragma}")


def _plan(row: PlanRow | None) -> KeptPlan | None:
    return None if row is None else KeptPlan(row.id, row.document, row.kept_at, row.serve_at)


def _log(session: Session, row: LogRow) -> KeptLog:
    entries = select(LogEntryRow.document).where(LogEntryRow.log_id == row.id).order_by(LogEntryRow.number)
    return KeptLog(row.id, row.document, row.opened_at, tuple(session.scalars(entries)))


def _count(session: Session, statement: Any) -> int:
    return int(getattr(session.execute(statement), "rowcount", 0))
