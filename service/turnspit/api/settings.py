"""What an operator may set, all from `TURNSPIT_*` variables."""

from __future__ import annotations

import os
from typing import Literal

from pydantic import Field, field_validator
from pydantic_settings import BaseSettings, SettingsConfigDict

from turnspit.reference.rules import sources


class Settings(BaseSettings):
    """The service's settings; each field is read from TURNSPIT_ and its name in capitals."""

    model_config = SettingsConfigDict(env_prefix="TURNSPIT_", frozen=True)

    database_url: str | None = Field(
        default=None, description="SQLAlchemy URL; by default SQLite in the user's data folder."
    )
    timezone: str | None = Field(
        default=None, description="IANA zone for requests that name none; by default the machine's own."
    )
    kitchen: Literal["home", "licensed"] | None = Field(
        default=None, description="Whose rules lead for requests that do not say; by default the stricter of both."
    )
    local_code: str | None = Field(
        default=None,
        description="The place whose code a licensed kitchen goes by in checks, logs, labels and the card: wales.",
    )
    conversation_days: float = Field(
        default=30, gt=0, description="Days after its last line that a conversation is kept."
    )
    plan_days: float = Field(default=90, gt=0, description="Days after its serving time that a plan is kept.")
    workers: int = Field(
        default_factory=lambda: os.cpu_count() or 1, ge=1, description="Computations that may run at once."
    )
    body_limit_bytes: int = Field(default=1_000_000, ge=1024, description="Largest request body that is read.")

    @field_validator("local_code")
    @classmethod
    def _known(cls, place: str | None) -> str | None:
        if place is not None and f"licensed_{place}" not in sources():
            raise ValueError(f"there is no local code of {place!r}, only of {', '.join(local_codes())}")
        return place


def local_codes() -> tuple[str, ...]:
    """The places whose codes are known."""
    return tuple(source.partition("_")[2] for source in sources() if source.startswith("licensed_"))
