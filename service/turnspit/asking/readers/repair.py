"""Slips put right in the same breath: `dinner at 6 no wait 7`, `16 lb, sorry, 18 lb`. The later word stands."""

from __future__ import annotations

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.clock import Clock, digits_clock
from turnspit.asking.readers.covers import Covers
from turnspit.asking.readers.measures import Measure
from turnspit.asking.readers.numbers import number
from turnspit.asking.tokens import Number

grammar = Grammar("repair")


@grammar.rule("<mass> ,? <repair> ,? <mass>", gives="<mass>")
def _another_mass(*values: object) -> object:
    return values[-1]


@grammar.rule("<mass> ,? <repair> ,? <number>", gives="<mass>")
def _mass_without_its_unit(first: Measure, _: str, later: Number | float) -> Measure | None:
    if not first.value:
        return None
    value = number(later).value
    return Measure(value, first.unit, first.si / first.value * value)


@grammar.rule("<covers> ,? <repair> ,? <covers>", gives="<covers>")
def _other_covers(*values: object) -> object:
    return values[-1]


@grammar.rule("<covers> ,? <repair> ,? <number>", gives="<covers>")
def _other_covers_bare(first: Covers, _: str, later: Number | float) -> Covers | None:
    value = number(later).value
    return Covers(int(value), sure=first.sure) if value == int(value) else None


@grammar.rule("<clock>|<number> ,? <repair> ,? <at>? <clock>", gives="<clock>")
def _another_clock(*values: object) -> object:
    return values[-1]


@grammar.rule("<clock> ,? <repair> ,? <at>? <number>", gives="<clock>")
def _clock_without_its_half(first: Clock, _: str, __: str | None, later: Number | float) -> Clock | None:
    found = digits_clock(number(later))
    return Clock(found.hour, found.minute, first.half, first.style) if found is not None and found.is_open else found


@grammar.rule("<number> ,? <repair> ,? <at>? <number>", gives="<number>")
def _another_number(*values: object) -> object:
    return values[-1]
