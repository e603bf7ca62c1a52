"""From the raw weight to the hot roast, to carved meat, to servings."""

from __future__ import annotations

from dataclasses import dataclass

from turnspit.errors import OutOfRange, Unknown
from turnspit.reference import Row, table
from turnspit.spread import Spread

SERVING_KG = 0.17
"""Six ounces of carved meat: a generous plate (common practice, no source); the federal serving is 3 oz."""
MASS_KG_RANGE = (0.1, 2000.0)


@dataclass(frozen=True, slots=True)
class Carved:
    """What a roast gives, kg. `white_kg` and `dark_kg` are None for meat without such a difference.

    `cooked_kg` is the hot roast with its published range, `meat_kg` what comes off the bone, meat and skin.
    """

    kind: str
    raw_kg: float
    cooked_kg: Spread
    meat_kg: float
    bones_kg: float
    white_kg: float | None
    dark_kg: float | None
    servings: int
    serving_kg: float
    meat_of_raw: float
    source: str


def carved(kind: str, mass_kg: float, *, bone_in: bool | None = None, serving_kg: float = SERVING_KG) -> Carved:
    """What `mass_kg` of raw roast gives, whether one piece or several together.

    Published yields (USDA); white to dark 60 to 40 is common practice. Raises Unknown for a kind without a yield,
    OutOfRange outside 0.1 to 2000 kg.
    """
    OutOfRange.check("mass_kg", mass_kg, *MASS_KG_RANGE, "give the raw weight; is that pounds?")
    OutOfRange.check("serving_kg", serving_kg, 0.02, 1.0, "a serving is 85 to 250 g of carved meat")
    row = row_for("yields_carved", kind, bone_in)
    meat_kg = mass_kg * row["carved_of_raw"]
    cooked = Spread(*(mass_kg * row[column] for column in ("cooked_low", "cooked_of_raw", "cooked_high")))
    white = row.get("white_of_carved")
    return Carved(
        kind=kind,
        raw_kg=mass_kg,
        cooked_kg=cooked,
        meat_kg=meat_kg,
        bones_kg=max(cooked.p50 - meat_kg, 0.0),
        white_kg=None if white is None else meat_kg * white,
        dark_kg=None if white is None else meat_kg * (1.0 - white),
        servings=int(meat_kg / serving_kg + 1e-9),
        serving_kg=serving_kg,
        meat_of_raw=float(row["carved_of_raw"]),
        source=str(row["source"]),
    )


def row_for(name: str, kind: str, bone_in: bool | None) -> Row:
    """The row of a kind, with or without bone; where that is not said or not listed, the usual one (the first)."""
    rows = [row for row in table(name) if row["kind"] == kind]
    if not rows:
        raise Unknown("kind", kind, list(dict.fromkeys(str(row["kind"]) for row in table(name))))
    return next((row for row in rows if bone_in is not None and row["bone_in"] == bone_in), rows[0])
