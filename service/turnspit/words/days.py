"""A day by its full name, as a heading over its hours."""

from __future__ import annotations

from datetime import datetime

from babel.dates import format_date

from turnspit.words.measures import LOCALES
from turnspit.words.reader import Reader

PATTERNS = {"en": "EEEE, MMMM d", "es": "EEEE, d 'de' MMMM"}


def day_name(at: datetime, reader: Reader) -> str:
    """The day of `at` in its own zone: "Thursday, November 26", "Jueves, 26 de noviembre"."""
    name = str(format_date(at.date(), PATTERNS[reader.language], locale=LOCALES[reader.language]))
    return name[0].upper() + name[1:]
