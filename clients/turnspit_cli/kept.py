"""The settings and the database of the service; what is wrong with them is told in one line."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from pydantic import ValidationError
from sqlalchemy.exc import SQLAlchemyError

from turnspit.api import Settings
from turnspit.errors import Impossible
from turnspit.storage import Store, open_store


def opened() -> tuple[Settings, Store]:
    """The settings, and the store they name. Raises Impossible where a setting is wrong or the database shut."""
    with told_plainly():
        settings = Settings()
        return settings, open_store(settings.database_url)


@contextmanager
def told_plainly() -> Iterator[None]:
    """Raises Impossible for a setting that is wrong and a database that cannot be used."""
    try:
        yield
    except ValidationError as error:
        first = error.errors()[0]
        name = f"TURNSPIT_{'_'.join(map(str, first['loc'])).upper()}"
        raise Impossible(name, first["input"], f"is wrong ({first['msg']})", "correct it or leave it out") from error
    except SQLAlchemyError as error:
        shown = str(error).splitlines()[0]
        raise Impossible("the database", shown, "cannot be used", "look at TURNSPIT_DATABASE_URL") from error
