"""Temperatures typed without their degrees, and the choice beside them that tells which."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

from turnspit.errors import Impossible
from turnspit.quantities import typed_celsius
from turnspit.words import Reader
from turnspit_web.forms import Field

CHOICE = Field(
    "degrees", kind="choice", options=("F", "C"), start={"us": "F", "metric": "C"}, told="form-degrees-", short=True
)
_WRITTEN = re.compile(r"-?\d+(?:[.,]\d+)?\s*[°º]?\s*[CF]?", re.IGNORECASE)


def degrees(text: str) -> str:
    """The text of a temperature, with or without its degrees. Raises Impossible for what is none."""
    if not _WRITTEN.fullmatch(text):
        raise Impossible("temperature", text, "is no temperature", "write it like 160 F, 71 C or 160")
    return text


def celsius(values: Mapping[str, Any], name: str, reader: Reader) -> float | None:
    """The temperature of that field in C, by its own degrees, those chosen, or else those of the reader's units."""
    text = values[name]
    if text is None:
        return None
    return typed_celsius(text, values["degrees"] or ("F" if reader.units == "us" else "C"))
