"""`POST /v1/convert`: an amount in another unit."""

from __future__ import annotations

from typing import Annotated, Any, Self

from pydantic import ConfigDict, Field

from turnspit.api.schemas.common import Given, Number, ReaderFields
from turnspit.quantities import Conversion, Region
from turnspit.words import Reader, say

CONVERT_EXAMPLE: dict[str, Any] = {"value": 2, "unit": "cup", "item": "table salt", "target_unit": "g"}
UnitName = Annotated[str, Field(max_length=40)]


class ConvertBody(ReaderFields):
    """The amount, as the contract names its parts."""

    model_config = ConfigDict(extra="forbid", frozen=True, json_schema_extra={"examples": [CONVERT_EXAMPLE]})

    value: Number
    unit: UnitName
    target_unit: UnitName
    item: Annotated[str, Field(max_length=100)] | None = Field(
        default=None, description="What is measured; needed between mass, volume and pieces."
    )
    region: Region | None = Field(default=None, description="Whose cups and spoons; by default US ones.")


class Kind(Given):
    """One kind of an item whose kinds must be told apart."""

    item: str
    low: float
    high: float


class ConvertGiven(Given):
    """The amount in the target unit, as a range where measures or foods vary."""

    value: float
    low: float
    high: float
    unit: str
    exact: bool = Field(description="Both units are defined by one another.")
    weigh: bool = Field(description="Scales should decide.")
    item: str
    kinds: list[Kind]
    notes: list[str]
    source: str

    @classmethod
    def of(cls, conversion: Conversion, reader: Reader) -> Self:
        """From the quantities room's answer, in the reader's words."""
        return cls(
            value=conversion.value,
            low=conversion.low,
            high=conversion.high,
            unit=conversion.unit,
            exact=conversion.exact,
            weigh=conversion.weigh,
            item=conversion.item,
            kinds=[Kind(item=item, low=low, high=high) for item, low, high in conversion.kinds],
            notes=[say(note, reader) for note in conversion.notes],
            source=conversion.source,
        )
