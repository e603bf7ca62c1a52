"""Covers of numbers that no word counts: `for 12`, `feeds 8`, `serve 40`, `we were 10, now 13`.

Hours, weights and degrees have been read before.
"""

from __future__ import annotations

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.company.covers import FEWEST_OF_AN_HOUR, MOST_AT_TABLE, Covers, between, covers
from turnspit.asking.readers.hours.clock import is_an_hour
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.tokens import Number

grammar = Grammar("<covers>")
_MOST_SERVED = 600
_FIRST_OF_THE_AFTERNOON, _LAST_HOUR = 1300, 2359


@grammar.rule(
    "were|was|had|eramos <number> <habit>? ,|and|but|y? now|ahora <feeds>|were|are|its|we? <number>",
    gives="<covers>",
    keeps=True,
)
@grammar.rule(
    "were|was|had|eramos <covers> <habit>? ,|and|but|y? now|ahora <feeds>? <number>|<covers>", gives="<covers>"
)
def _now_so_many(_: object, *rest: object) -> Covers | None:
    """`we were 10, now we're 13`, `had 10 last year now 13`; `was 155 now 150` is a probe's."""
    now = next(value for value in reversed(rest) if isinstance(value, Number | Covers))
    if isinstance(now, Covers):
        return now if now.count else None
    return covers(now.value) if now.value <= MOST_AT_TABLE else None


@grammar.rule("<for>|<feeds> <number> -|to|or|a|o <number>", gives="<covers>")
def _for_range(*values: object) -> Covers | None:
    return between(*values)


@grammar.rule("<feeds> <number> !<carve>|<cooked>|<state>|<sizes>|<done>", gives="<covers>", keeps=True)
def _feeds(_: str, value: Number | float) -> Covers | None:
    return covers(number(value).value, sure=False)


@grammar.rule("<how_big> <roast>|<generic>? <number> <number>", gives="<covers>", keeps=True)
def _how_big_for(*values: object) -> Covers | None:
    """`what size bird 4 30`: the 4 is a "for"."""
    four, people = (value for value in values if isinstance(value, Number))
    return covers(people.value) if four.digits == "4" else None


@grammar.rule("<feeds> , <number> !<mass_unit>|<mass>", gives="<covers>", keeps=True)
def _a_crowd(_: str, value: Number | float) -> Covers | None:
    return covers(number(value).value, sure=False) if number(value).value > 12 else None


@grammar.rule("serve|serving|sirvo <number>", gives="<covers>", keeps=True)
def _serve(value: Number | float) -> Covers | None:
    # "serve 40" is people; "serve 7", "serve 545" and "serve 1845" are hours.
    said = number(value)
    hour = said.value >= _MOST_SERVED or (said.value >= FEWEST_OF_AN_HOUR and is_an_hour(said))
    return covers(said.value) if said.value > 12 and not hour else None


@grammar.rule("<for> those|these|all? <number> !service|svc|seating|sitting|<place>|<deg>", gives="<covers>")
def _for(_: str, value: Number | float) -> Covers | None:
    said = number(value)
    # "table laid for 1900", but "for 1500 covers".
    hour = said.digits.isdigit() and _FIRST_OF_THE_AFTERNOON <= said.value <= _LAST_HOUR and not said.value % 5
    return None if hour and said.value % 100 < 60 else covers(said.value, sure=False)
