"""The pages: a phone page that asks, a stored plan as a wall sheet, a kitchen display. No build step, no network."""

from turnspit_web.pages import mount

__all__ = ["mount"]
