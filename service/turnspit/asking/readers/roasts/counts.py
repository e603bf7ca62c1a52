"""How many roasts there are: `6 x 14 lb`, `2.2 kg x 5`, `3 @ 16#`, `8 of em`, `two 22s`, `4 pcs`, `2 de 2,3 kg`.

A number that stands right before a roast or its weight ("six 10 lb breasts") counts without a sign; `roast.py` sees
to that.
"""

from __future__ import annotations

from dataclasses import dataclass

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.tokens import Number

grammar = Grammar("<count>")
MOST = 60
# What may be counted with a sign; a number between may be a weight that lacks its unit ("4 x 16").
_ROAST = "<mass>|<roast>|<generic>"


@dataclass(frozen=True, slots=True)
class Sized:
    """So many of one weight that was told without its unit: `two 22s`."""

    count: int
    size: Number


def count(said: Number | float) -> int | None:
    """A number as a count of roasts, None where it cannot be one."""
    value = number(said).value
    return int(value) if value == int(value) and 0 < value <= MOST else None


def is_plural(noun: str) -> bool:
    """Whether a noun names several: `3 geese` counts, `at 3 goose` does not."""
    head = noun.partition(" of ")[0].partition(" de ")[0]
    return noun.endswith(("s", "geese", "chix")) or head.endswith("s")


@grammar.rule(f"<number> x|* {_ROAST}", "<number> @ <mass>", gives="<count>", keeps=True)
def _six_times(how_many: Number | float, _: object) -> int | None:
    return count(how_many)


@grammar.rule("<mass> one|ones !<ampm>|<oclock>|<time_unit>|<people>|<night>|<mass_unit>", gives="<mass>", keeps=True)
def _the_heavy_one(weight: object) -> object:
    """`the 5 kg one` is no hour."""
    return weight


@grammar.rule(f"<number> no .? {_ROAST}", gives="<count>", keeps=True)
def _number_of(how_many: Number | float, _: object) -> int | None:
    """`4 no. turkeys`."""
    return count(how_many)


@grammar.rule(f"both|ambos|ambas|twin {_ROAST} !and|y", gives="<count>", keeps=True)
def _both(_: object) -> int:
    return 2


@grammar.rule(f"single|lone {_ROAST}", "un|una solo|sola <roast>|<generic>", gives="<count>", keeps=True)
def _a_single_one(_: object) -> int:
    return 1


@grammar.rule("<number> legs|piernas|breasts|pechugas|shoulders|joints|piezas <mass>", gives="<count>", keeps=True)
def _ten_legs(how_many: Number | float, _: object) -> int | None:
    """`10 piernas de 5 kg`."""
    return count(how_many)


@grammar.rule("<number> de|of|from <mass>", gives="<count>", keeps=True)
def _two_of_five_kilos(how_many: Number | float, _: object) -> int | None:
    return count(how_many) if number(how_many).value > 1 else None


@grammar.rule(
    f"{_ROAST} <birds>? ,|(? x|*|times <number> !<time_unit>|<people>|<mass_unit>", gives="<count>", keeps=True
)
def _times_four(_: object, __: object, how_many: Number | float) -> int | None:
    return count(how_many)


@grammar.rule("<number> <pcs> of|de? !<leftovers>|<people>|.", "x|* <number> <pcs>", gives="<count>")
def _pieces(how_many: Number | float, _: object) -> int | None:
    return count(how_many)


@grammar.rule("<number> <birds> !<people>|<part_of>", gives="<count>")
def _of_them(how_many: Number | float, which: str) -> int | None:
    return count(how_many) if which == "of_them" else None


_A_UNIT = "<people>|<mass_unit>|<time_unit>|<temperature_unit>|<deg>|<volume_unit>|<length_unit>|<c>"


@grammar.rule(
    f"<number> x|* <number> !{_A_UNIT}", f"^<roast>|<generic> <number> de|of <number> !{_A_UNIT}", gives="<sized>"
)
@grammar.rule("<number> <number> s !<people>", "<number> <sizes> !<people>", gives="<sized>")
@grammar.rule(f"^mejor|rather|or|o|sean <number> de|of <number> !{_A_UNIT}", gives="<sized>")
def _two_twenties(how_many: Number | float, size: Number | float) -> Sized | None:
    many = count(how_many)
    return Sized(many, number(size)) if many is not None and many > 1 else None


@grammar.rule(f"<number> de|of <number> !{_A_UNIT}", gives="<sized>")
def _two_of_a_decimal(how_many: Number | float, size: Number | float) -> Sized | None:
    """`two of 1.6 instead`: nobody counts tenths."""
    return _two_twenties(how_many, size) if number(size).value % 1 else None
