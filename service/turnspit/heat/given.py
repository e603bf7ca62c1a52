"""Whether what is given is of its kind: a number in its range, a whole one, a known word, yes or no."""

from __future__ import annotations

from collections.abc import Sequence
from numbers import Integral, Real

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.heat.draws import MEMBERS_MOST

SEED_MOST = 2**32 - 1


def check_real(name: str, value: object, way_out: str = "give a number") -> float:
    """The value, or Impossible unless it is a number."""
    if isinstance(value, bool) or not isinstance(value, Real):
        raise Impossible(name, value, "is no number", way_out)
    return float(value)


def check_number(name: str, value: object, low: float, high: float, way_out: str) -> None:
    """Raise Impossible unless `value` is a number, OutOfRange unless it lies from `low` to `high` (NaN does not)."""
    OutOfRange.check(name, check_real(name, value, way_out), low, high, way_out)


def check_whole(name: str, value: object, low: int, high: int, way_out: str) -> None:
    """The same for whole numbers."""
    if isinstance(value, bool) or not isinstance(value, Integral):
        raise Impossible(name, value, "is no whole number", way_out)
    OutOfRange.check(name, int(value), low, high, way_out)


def check_mass(value: object, low: float, high: float) -> None:
    """Raise Impossible unless it is a number above 0, OutOfRange outside the range."""
    if isinstance(value, bool) or not isinstance(value, Real) or not float(value) > 0:
        raise Impossible("mass_kg", value, "is not above 0", "give the mass of one piece in kg")
    OutOfRange.check("mass_kg", float(value), low, high, "give the mass of one piece; is that pounds?")


def check_word(name: str, value: object, known: Sequence[str]) -> None:
    """Raise Unknown unless it is one of the `known` words."""
    if not isinstance(value, str) or value not in known:
        raise Unknown(name, value, known)


def check_yes(name: str, value: object) -> None:
    """Raise Impossible unless it is true or false."""
    if not isinstance(value, bool):
        raise Impossible(name, value, "is neither true nor false", "give true or false")


def check_draws(members: object, seed: object) -> None:
    """Raise unless an ensemble can be drawn: 1 to 4096 members, a seed from 0."""
    check_whole("members", members, 1, MEMBERS_MOST, "64 to 256 members are enough")
    check_whole("seed", seed, 0, SEED_MOST, f"give a whole number from 0 to {SEED_MOST}")


def check_several(name: str, values: object) -> Sequence[object]:
    """The values, or Impossible where they are no tuple or list."""
    if not isinstance(values, (tuple, list)):
        raise Impossible(name, values, "is no list", "give a tuple, empty for none")
    return values
