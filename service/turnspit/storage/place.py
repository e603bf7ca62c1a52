"""Where the database is unless someone says otherwise."""

from __future__ import annotations

from platformdirs import user_data_path


def default_url() -> str:
    """The URL of `turnspit.db` in the user's data folder, which is made if it is missing."""
    folder = user_data_path("turnspit", appauthor=False, ensure_exists=True)
    return f"sqlite:///{folder / 'turnspit.db'}"
