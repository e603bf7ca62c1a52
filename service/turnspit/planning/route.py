"""One way to the table with the times and forecasts it rests on."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from turnspit.heat import ThawForecast
from turnspit.message import Message
from turnspit.planning.settle import Settled
from turnspit.planning.timetable import Way
from turnspit.planning.timing import Timing


@dataclass(frozen=True, slots=True)
class Route:
    """A way with all that is needed for its tasks. `water_from`: when it goes from the refrigerator into water."""

    way: Way
    settled: Settled
    timing: Timing
    thaw: ThawForecast | None = None
    thaw_from: datetime | None = None
    thaw_until: datetime | None = None
    water_from: datetime | None = None


def title(way: str, settled: Settled) -> Message:
    """What a way is called."""
    return Message(
        f"planning-way-{way}",
        roast=Message(f"roast-{settled.row.kind}"),
        mass_kg=settled.mass_kg,
        count=settled.count,
    )
