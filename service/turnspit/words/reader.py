"""Who reads: language, units and clock decide how a message is put into words."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Literal

Language = Literal["en", "es"]
Units = Literal["us", "metric"]
Clock = Literal["12h", "24h"]


@dataclass(frozen=True, slots=True)
class Reader:
    """One reader. `now` is aware: clock times are told in its zone, and its date tells what "tomorrow" is."""

    now: datetime
    language: Language = "en"
    units: Units = "us"
    clock: Clock = "12h"
