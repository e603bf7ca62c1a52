"""Several conversions in one line: `2 kg sugar how many cups, and 500 ml oil in tbsp`."""

from __future__ import annotations

import re
from dataclasses import replace

from turnspit.asking.contract import Line
from turnspit.asking.reading import Reading, read_line

_BETWEEN = re.compile(r"[,;?]\s+(?:and\s+|y\s+)?|\s+(?:and|y|plus|\+|&)\s+", re.IGNORECASE)
_WHOLE = ("value", "unit", "target_unit")
_MOST = 6


def conversions(line: Line) -> list[tuple[Line, Reading]]:
    """The parts of a line that are each a conversion by themselves; none where there are not two."""
    found: list[tuple[Line, Reading]] = []
    for text in _BETWEEN.split(line.text)[:_MOST]:
        part = replace(line, text=text)
        reading = read_line(part, None)
        amount = reading.understood.get("amount", {})
        told = [other.understood["amount"] for _, other in found]
        if reading.intents == ("convert",) and all(name in amount for name in _WHOLE) and amount not in told:
            found.append((part, reading))
    return found if len(found) > 1 else []
