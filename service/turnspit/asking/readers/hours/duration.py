"""Durations in hours: `3 hrs`, `90 min`, `two and a half hours`, `1h30`, `overnight`."""

from __future__ import annotations

from dataclasses import dataclass

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.tokens import Number

HOURS = {"s": 1 / 3600, "min": 1 / 60, "h": 1.0, "day": 24.0, "week": 168.0, "year": 8766.0}
grammar = Grammar("<duration>")


@dataclass(frozen=True, slots=True)
class Duration:
    """A stretch of time in hours; `unit` is what it was said in."""

    hours: float
    unit: str


@grammar.rule("<number> <time_unit> and|y|<and_sign>? <number> <time_unit>", gives="<duration>")
def _compound(
    large: Number | float, large_unit: str, _: str | None, small: Number | float, unit: str
) -> Duration | None:
    if HOURS[unit] >= HOURS[large_unit]:
        return None
    return Duration(number(large).value * HOURS[large_unit] + number(small).value * HOURS[unit], large_unit)


@grammar.rule("<a> <time_unit> and|y? <number> <time_unit>", gives="<duration>")
def _an_hour_and_minutes(_: float, large_unit: str, small: Number | float, unit: str) -> Duration | None:
    return _compound(1.0, large_unit, None, small, unit)


@grammar.rule(
    "<a>|<number> <time_unit> and|y <number> !<people>|<roast>|<generic>|<deg>|<ampm>|<oclock>|<percent>|<birds>",
    gives="<duration>",
)
def _an_hour_and_ten(large: Number | float, unit: str, small: Number | float) -> Duration | None:
    """`an hour and ten`: minutes, in fives."""
    minutes = number(small).value
    if unit != "h" or minutes % 5 or not 0 < minutes < 60:
        return None
    return Duration((large if isinstance(large, float) else number(large).value) + minutes / 60, unit)


_NOT_MINUTES = (
    "<people>|<covers>|<roast>|<generic>|<deg>|<ampm>|<percent>|<mass_unit>|<place>|<birds>|<temperature_unit>"
)


@grammar.rule(f"<number> <time_unit> <number> !{_NOT_MINUTES}", gives="<duration>")
def _two_hours_fifteen(large: Number | float, unit: str, small: Number | float) -> Duration | None:
    """`2 hrs 15`: minutes, in quarters."""
    return _an_hour_and_ten(large, unit, small) if number(small).value in (15, 30, 45) else None


@grammar.rule("<number> -|to|or|a|o <number> <time_unit>", gives="<duration>")
def _range(low: Number | float, high: Number | float, unit: str) -> Duration | None:
    low_value, high_value = number(low).value, number(high).value
    return Duration((low_value + high_value) / 2 * HOURS[unit], unit) if 0 <= low_value < high_value else None


@grammar.rule("<number> <time_unit> <and_part>", "<number> <time_unit> and|y <part>", gives="<duration>")
def _hours_and_a_half(value: Number | float, unit: str, part: float) -> Duration:
    return Duration((number(value).value + part) * HOURS[unit], unit)


@grammar.rule("<number> <time_unit>", "<number> - <time_unit>", gives="<duration>")
def _plain(value: Number | float, unit: str) -> Duration:
    return Duration(number(value).value * HOURS[unit], unit)


@grammar.rule("<number> <hours_for>", gives="<duration>")
def _hours_for(value: Number | float, unit: str) -> Duration:
    return Duration(number(value).value * HOURS[unit], unit)


@grammar.rule("<a> <time_unit> <and_part>", "<a> <time_unit> and|y <part>", gives="<duration>")
def _an_hour_and_a_half(_: float, unit: str, part: float) -> Duration:
    return Duration((1 + part) * HOURS[unit], unit)


@grammar.rule("<part> of? <a>? <time_unit>", gives="<duration>")
def _half_an_hour(part: float, _: float | None, unit: str) -> Duration:
    return Duration(part * HOURS[unit], unit)


@grammar.rule("<and_part> of? <a>? <time_unit>", gives="<duration>")
def _and_half_an_hour(part: float, _: float | None, unit: str) -> Duration:
    """`and half an hour later`: no number stands before it."""
    return Duration(part * HOURS[unit], unit)


@grammar.rule("<a> <time_unit>", gives="<duration>")
def _an_hour(_: float, unit: str) -> Duration:
    return Duration(HOURS[unit], unit)


@grammar.rule("<time_unit> <and_part>", gives="<duration>")
def _hour_and_a_half(unit: str, part: float) -> Duration:
    """`estuvo hora y media fuera`."""
    return Duration((1 + part) * HOURS[unit], unit)


@grammar.rule("<number> <time_left>", gives="<duration>")
def _minutes_left(value: Number | float, unit: str) -> Duration:
    return Duration(number(value).value * HOURS[unit], unit)


@grammar.rule("<time_unit> old", gives="<duration>")
def _a_week_old(unit: str) -> Duration:
    return Duration(HOURS[unit], unit)


@grammar.rule("<a_week>", gives="<duration>")
def _a_week(_: str) -> Duration:
    return Duration(HOURS["week"], "week")


@grammar.rule("<overnight>", gives="<duration>")
def _overnight(hours: float) -> Duration:
    return Duration(hours, "night")


@grammar.rule("<h_m>", gives="<duration>")
def _hours_h_minutes(hour_minute: tuple[int, int]) -> Duration | None:
    hour, minute = hour_minute
    return Duration(hour + minute / 60, "h") if hour < 10 and minute < 60 else None
