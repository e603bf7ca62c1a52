"""What the ensemble knows of one number: three percentiles instead of a point."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Self

import numpy as np
from numpy.typing import ArrayLike


@dataclass(frozen=True, slots=True)
class Spread:
    """The tenth, fiftieth and ninetieth percentile of one predicted value, in that value's unit."""

    p10: float
    p50: float
    p90: float

    @classmethod
    def of(cls, values: ArrayLike) -> Self:
        """Percentiles of the members' values (one-dimensional, finite)."""
        p10, p50, p90 = np.percentile(np.asarray(values, dtype=float), (10, 50, 90))
        return cls(float(p10), float(p50), float(p90))

    def document(self, digits: int = 2) -> dict[str, float]:
        """The JSON form, rounded to `digits`."""
        return {
            "p10": round(self.p10, digits),
            "p50": round(self.p50, digits),
            "p90": round(self.p90, digits),
        }
