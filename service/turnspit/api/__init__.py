"""The HTTP door: JSON in, the same core as every other door, JSON out; every error is one shape (RFC 9457)."""

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from turnspit.api.app import create_app
    from turnspit.api.service import Service, service_of
    from turnspit.api.settings import Settings

__all__ = ["Service", "Settings", "create_app", "service_of"]

_HOMES = {"Service": "service", "Settings": "settings", "create_app": "app", "service_of": "service"}


def __getattr__(name: str) -> Any:
    """Load what is asked for: the command line needs the schemas alone, and must not wait for a server."""
    from importlib import import_module

    if name not in _HOMES:
        raise AttributeError(f"turnspit.api has no {name}")
    return getattr(import_module(f"turnspit.api.{_HOMES[name]}"), name)
