"""The `lethality` part of a safety check: what measured readings earn by the published time-temperature tables."""

from __future__ import annotations

from typing import Annotated, Self

from pydantic import Field

from turnspit.api.schemas.common import Body, Given, Number
from turnspit.reference import Kitchen
from turnspit.safety import Conditions, Measured, Moisture, Proof, prove, species_of

MOST_READINGS = 5000


class MeasuredBody(Body):
    """One measured temperature: minutes from any zero, C, and where it was probed."""

    minute: Number
    temperature_c: Number
    station: Annotated[str, Field(max_length=40)] = ""


class LethalityBody(Body):
    """Readings of one roast and the guideline's cooking conditions; what is left out counts as not met."""

    kind: Annotated[str, Field(max_length=40)] = "turkey"
    fat_percent: Number | None = Field(default=None, description="Unknown is read in the column of most fat.")
    readings: list[MeasuredBody] = Field(min_length=1, max_length=MOST_READINGS)
    moisture: Moisture | None = None
    mass_kg: Number | None = None
    lowest_oven_c: Number | None = None
    come_up_h: Number | None = None
    probe_error_k: Number = 1.0

    def proof(self, kitchen: Kitchen | None) -> Proof:
        """What the safety room makes of it."""
        readings = [Measured(each.minute, each.temperature_c, each.station) for each in self.readings]
        conditions = Conditions(self.moisture, self.mass_kg, self.lowest_oven_c, self.come_up_h, self.probe_error_k)
        return prove(readings, species_of(self.kind), conditions, self.fat_percent, kitchen or "home")


class LethalityGiven(Given):
    """Log10 reduction of Salmonella at the coldest station and what of it is credited; information beside the
    instant temperature of the code, which decides."""

    coldest: str
    by_station: dict[str, float]
    log10: float
    credited_log10: float
    required_log10: float
    met: bool

    @classmethod
    def of(cls, proof: Proof) -> Self:
        """From the safety room's proof."""
        return cls(
            coldest=proof.coldest,
            by_station={station: round(value, 3) for station, value in proof.by_station.items()},
            log10=round(proof.log10, 3),
            credited_log10=round(proof.credited_log10, 3),
            required_log10=proof.required_log10,
            met=proof.met,
        )
