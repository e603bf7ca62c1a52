"""Every sentence a reader sees, in one place: Fluent files per language and room, and `say`.

`en/<room>.ftl` and `es/<room>.ftl` hold the texts; the part of a key before its first hyphen names the file. A text
formats its values with the functions of `measures` (MASS, TEMPERATURE, OVEN, RISE, CLOCK, WHEN, SPAN, SPANS, VOLUME,
LENGTH, PERCENT, NUMBER), which lead with the reader's own units.
"""

from turnspit.words.catalog import LANGUAGES, keys, say
from turnspit.words.reader import Reader, by_imperial_pints, territory, usual_units

__all__ = ["LANGUAGES", "Reader", "by_imperial_pints", "keys", "say", "territory", "usual_units"]
