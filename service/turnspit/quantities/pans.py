"""Pans by name or by inside measure: what they hold, and the area they give to browning and evaporation."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.quantities.given import check_text
from turnspit.quantities.numbers import plain, take_number
from turnspit.reference import Row, table

LARGEST_MM = 2000.0
_NUMBERS = re.compile(r"(?:\d[\d\s/]*/\s?\d+|\d+(?:\.\d+)?)(?=\s*(?:x|in\b|inch|\"|cm\b|mm\b|-|$|\s))", re.IGNORECASE)
_ALSO = {
    "steam table": "hotel",
    "steam-table": "hotel",
    "tin": "pan",
    "dish": "pan",
    "tray": "pan",
    "gastronorm": "gn",
}


@dataclass(frozen=True, slots=True)
class Pan:
    """A pan: brim volume in L, area in m2, depth in m, and where the figures come from."""

    name: str
    litres: float
    area_m2: float
    depth_m: float
    source: str


def pan(name: str) -> Pan:
    """The pan of that name: "GN 1/1 65 mm", "half hotel pan 4 in", "13 x 9 x 2 in", "9-inch round", "half sheet pan".

    Raises Unknown, with the nearest names, for one that is in no table and has no three measures of its own.
    """
    check_text("pan", name, "name a pan, as 13 x 9 x 2 in")
    wanted = _key(name)
    for row in table("pans"):
        if _key(row["name"]) == wanted:
            return _from_row(row)
    measured = _from_measures(name)
    if measured is not None:
        return measured
    words = set(wanted.split())
    near = [row for row in table("pans") if words <= set(_key(row["name"]).split())] if words else []
    if near:
        return _from_row(near[0])
    from rapidfuzz import process  # only a mistake needs it

    names = [row["name"] for row in table("pans")]
    raise Unknown("pan", name, tuple(found for found, _, _ in process.extract(name, names, limit=4)))


def box_pan(length_mm: float, width_mm: float, depth_mm: float) -> Pan:
    """A rectangular pan by its inside measures. Raises Impossible for a side of nothing, OutOfRange beyond 2 m."""
    _check(length_mm=length_mm, width_mm=width_mm, depth_mm=depth_mm)
    area = length_mm * width_mm / 1e6
    return Pan(f"{length_mm:g} x {width_mm:g} x {depth_mm:g} mm", area * depth_mm, area, depth_mm / 1000, "measured")


def round_pan(diameter_mm: float, depth_mm: float) -> Pan:
    """A round pan or pot by its inside measures. Raises as `box_pan`."""
    _check(diameter_mm=diameter_mm, depth_mm=depth_mm)
    area = math.pi / 4 * diameter_mm**2 / 1e6
    return Pan(f"{diameter_mm:g} mm round, {depth_mm:g} mm deep", area * depth_mm, area, depth_mm / 1000, "measured")


def _check(**measures: float) -> None:
    for name, value in measures.items():
        if not value > 0:
            raise Impossible(name, value, "is not above zero", "measure the pan inside, in millimetres")
        OutOfRange.check(name, value, 0, LARGEST_MM, "measure the pan inside, in millimetres")


def _from_row(row: Row) -> Pan:
    depth = row["depth_mm"]
    across = row.get("diameter_mm")
    area = math.pi / 4 * across**2 / 1e6 if across else row["length_mm"] * row["width_mm"] / 1e6
    return Pan(row["name"], row.get("litres", area * depth), area, depth / 1000, row["source"])


def _from_measures(name: str) -> Pan | None:
    """A pan of two or three measures that no chart holds: "12 x 8 x 2 in", "30 x 20 x 5 cm", "11 x 3 in round"."""
    said = plain(name).casefold()
    numbers = [float(number) for text in _NUMBERS.findall(said) if (number := _number(text)) is not None]
    per = 25.4 if re.search(r"in\b|inch|\"", said) else 10.0 if "cm" in said else 1.0 if "mm" in said else 0.0
    if not per or len(numbers) not in (2, 3) or "/" in said:
        return None
    sizes = [number * per for number in numbers]
    if len(sizes) == 3:
        return box_pan(*sizes)
    return round_pan(*sizes) if "round" in said else None


def _number(text: str) -> Fraction | None:
    found = take_number(text.strip())
    return found[0] if found else None


@cache
def _key(name: str) -> str:
    said = plain(name).casefold()
    for other, word in _ALSO.items():
        said = said.replace(other, word)
    words = re.findall(r"\d+/\d+|\d+(?:\.\d+)?|[a-z-]+", re.sub(r"(?<=\d)\s*-?\s*(?:inch(?:es)?|in|\")", " in", said))
    words = [word.strip("-") for word in words]
    return " ".join(
        word for word in words if word not in ("pan", "a", "the", "x", "of", "deep", "in", "size", "baking", "")
    )
