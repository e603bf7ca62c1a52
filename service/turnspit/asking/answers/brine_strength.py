"""The strength of a brine as the cook named it: `5% brine`, `salmuera al 6 %`."""

from __future__ import annotations

import re

from turnspit.asking.clean import clean

_PERCENT = re.compile(
    r"(?<![\d.])(\d{1,2}(?:[.,]\d{1,2})?) ?(?:%|per ?cent\b|por ?ciento\b)(?! ?(?:off|more|less|solution|broth))"
)
_LABEL = re.compile(r"\b(?:solution|broth|saline|inject|inyectad|added|contains)")
_OF_SALT = re.compile(r"\b(?:brin|salt|saline|salmuera|sal\b|strength|equilibri)")


def named_percent(text: str) -> float | None:
    """The percent of salt that a line names, None for that of a label or of anything else."""
    for line in clean(text).split("\n"):
        if _OF_SALT.search(line) and not _LABEL.search(line):
            said = _PERCENT.search(line)
            if said is not None:
                return float(said.group(1).replace(",", "."))
    return None
