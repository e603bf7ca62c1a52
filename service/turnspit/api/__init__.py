"""The HTTP door: JSON in, the same core as every other door, JSON out; every error is one shape (RFC 9457)."""

from turnspit.api.app import create_app
from turnspit.api.service import Service, service_of
from turnspit.api.settings import Settings

__all__ = ["Service", "Settings", "create_app", "service_of"]
