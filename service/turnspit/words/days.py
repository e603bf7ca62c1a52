"""A day by its full name."""

from __future__ import annotations

from datetime import datetime

from babel.dates import format_date

from turnspit.words.measures import LOCALES
from turnspit.words.reader import Reader

SHORT_PATTERNS = {"en": "EEE, MMM d", "es": "EEE d MMM"}
PATTERNS = {"en": "EEEE, MMMM d", "es": "EEEE, d 'de' MMMM"}


def day_name(at: datetime, reader: Reader) -> str:
    """The day of `at` in its own zone: "Thursday, November 26", "jueves, 26 de noviembre"."""
    return str(format_date(at.date(), PATTERNS[reader.language], locale=LOCALES[reader.language]))


def day_heading(at: datetime, reader: Reader) -> str:
    """The same as it stands at the head of its hours: "Jueves, 26 de noviembre"."""
    name = day_name(at, reader)
    return name[0].upper() + name[1:]


def short_day(at: datetime, reader: Reader) -> str:
    """The same in short: "Thu, Nov 26", "jue 26 nov"."""
    return str(format_date(at.date(), SHORT_PATTERNS[reader.language], locale=LOCALES[reader.language]))
