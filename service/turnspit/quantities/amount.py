"""An amount as a recipe gives it: exact numbers, the unit that stands there, what one piece or tin holds."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from turnspit.errors import Impossible
from turnspit.quantities.foods import density_or_none, piece_mass
from turnspit.quantities.units import Region, unit


@dataclass(frozen=True, slots=True)
class Amount:
    """`value` (of a range the low end, with `high` beside it) of `unit`; the unit "" counts whole things.

    `each` is what one of a counted thing holds or weighs ("2 x 400 g tins"), `equals` the same amount as the recipe
    itself gives it in another unit ("2 cups (250 g)"). `size` is a word such as large or heaped. Numbers are exact,
    so that scaling there and back returns the amount.
    """

    value: Fraction
    unit: str = ""
    high: Fraction | None = None
    region: Region | None = None
    approximate: bool = False
    size: str = ""
    each: Amount | None = None
    equals: Amount | None = None

    def __post_init__(self) -> None:
        if self.value.numerator < 0 or (self.high is not None and self.high < self.value):
            raise Impossible(
                "amount", f"{self.value} to {self.high}", "is negative or upside down", "give low to high"
            )

    @property
    def usual(self) -> Fraction:
        """The middle of a range, or the value."""
        return self.value if self.high is None else (self.value + self.high) / 2

    def times(self, factor: Fraction) -> Amount:
        """The amount multiplied; what one piece holds stays."""
        return Amount(
            self.value * factor,
            self.unit,
            None if self.high is None else self.high * factor,
            self.region,
            self.approximate,
            self.size,
            self.each,
            None if self.equals is None else self.equals.times(factor),
        )

    def litres(self) -> float | None:
        """The usual volume in L where the amount is one (by the measures of its region), else None."""
        found = unit(self.unit, self.region) if self.unit else None
        if found is not None and found.dimension == "volume":
            return float(self.usual) * found.si
        inner = self._of_pieces()
        return inner.litres() if inner is not None else None

    def kilograms(self, item: str = "") -> float | None:
        """The usual mass in kg: as given, by the recipe's own equivalent, or by the food's published measures.

        None where no measure of `item` is known.
        """
        found = unit(self.unit, self.region) if self.unit else None
        if found is not None and found.dimension == "mass":
            return float(self.usual) * found.si
        for other in (self.equals, self._of_pieces()):
            mass = other.kilograms(item) if other is not None else None
            if mass is not None:
                return mass
        if not item:
            return None
        volume_l = self.litres()
        if volume_l is not None:
            dense = density_or_none(item)
            return dense.kg_per_l * volume_l if dense is not None else None
        piece = piece_mass(item, self.unit or "piece", self.size)
        return piece.kg * float(self.usual) if piece is not None else None

    def _of_pieces(self) -> Amount | None:
        return self.each.times(self.usual) if self.each is not None else None
