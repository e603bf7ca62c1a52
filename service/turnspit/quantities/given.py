"""What a caller in Python can get wrong before any table is asked: a text for a number, nothing for a text."""

from __future__ import annotations

import math
from numbers import Real

from turnspit.errors import Impossible


def check_number(name: str, value: object) -> None:
    """Raise Impossible unless the value is a finite number; true and false are none."""
    if isinstance(value, bool) or not isinstance(value, Real):
        raise Impossible(name, value, "is no number", "give a number, as 2.5")
    try:
        finite = math.isfinite(value)
    except OverflowError:
        finite = False
    if not finite:
        raise Impossible(name, value, "is not a number", "give an amount")


def check_text(name: str, value: object, way_out: str) -> None:
    """Raise Impossible unless the value is a text."""
    if not isinstance(value, str):
        raise Impossible(name, value, "is no text", way_out)
