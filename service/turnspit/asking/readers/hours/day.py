"""Days: `tomorrow`, `Thursday`, `the 24th`, `Dec 24`, `Thanksgiving`, `in three days`, `a week from Friday`."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.hours.duration import Duration
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.tokens import Number
from turnspit.words import territory


@dataclass(frozen=True, slots=True)
class Day:
    """A day as it was said; `on(now)` finds it. `half` is the half of that day that was named ("tomorrow night");
    `abroad` finds it, by the code of the territory, where it is another day there.
    """

    find: Callable[[date], date | None]
    half: str = ""
    named: bool = True
    abroad: Mapping[str, Callable[[date], date | None]] = field(default_factory=dict)

    def on(self, now: datetime) -> date | None:
        """The date that is meant when it is said at `now`, in its zone; None where there is no such date."""
        find = self.abroad.get(territory(now), self.find) if self.abroad else self.find
        return find(now.date())


grammar = Grammar("<when_day>")
# `the 24th` without its letters is a day before `for 24` counts people.
number_grammar = Grammar("<when_day>")
_TEN = 10


def _offset(days: float, half: str = "") -> Day:
    return Day(lambda today: today + timedelta(days=int(days)), half)


@grammar.rule("<day>", gives="<when_day>")
def _today_or_tomorrow(days: float) -> Day:
    return _offset(days)


@grammar.rule("<morning>", gives="<when_day>")
def _this_morning(days: float) -> Day:
    return _offset(days, "am")


@grammar.rule("<night>", gives="<when_day>")
def _tonight(days: float) -> Day:
    return _offset(days, "pm")


@grammar.rule("week|<a_week> from|after|on? <weekday>", gives="<when_day>")
def _week_from_weekday(*values: float | str | None) -> Day:
    weekday = values[-1]
    return Day(lambda today: _next_weekday(today, int(weekday or 0)) + timedelta(days=7))


@grammar.rule("<next> <weekday>", gives="<when_day>")
def _next_weekday_named(_: str, weekday: float) -> Day:
    return Day(lambda today: _next_weekday(today, int(weekday), skip_today=True))


@grammar.rule("<a_week> <day>", "<day> week", "<day> en ocho", "de|desde <day> en ocho", gives="<when_day>")
def _a_week_today(*days: float | str) -> Day:
    """`a week today`, `tomorrow week`, `de hoy en ocho`."""
    return _offset(next(float(day) for day in days if not isinstance(day, str)) + 7)


@grammar.rule("<weekday> before <holiday>", gives="<when_day>")
def _weekday_before_holiday(weekday: float, name: str) -> Day:
    def find(today: date) -> date | None:
        found = _coming_holiday(name, today)
        return found - timedelta(days=(found.weekday() - int(weekday)) % 7 or 7) if found is not None else None

    return Day(find)


@grammar.rule("<weekday> after next", gives="<when_day>")
def _weekday_after_next(weekday: float) -> Day:
    return Day(lambda today: _next_weekday(today, int(weekday), skip_today=True) + timedelta(days=7))


@grammar.rule("last <weekday>", gives="<when_day>")
def _last_weekday(weekday: float) -> Day:
    return Day(lambda today: _next_weekday(today, int(weekday)) - timedelta(days=7))


@grammar.rule(
    "sat <clock>",
    "^<clock>|<number> sat !on|in|out|at|for|there|since|<cold_place>|<mass_unit>",
    "on|this|next|by|for sat",
    gives="<when_day>",
    keeps=True,
)
def _sat(*_: object) -> Day:
    return Day(lambda today: _next_weekday(today, 5))


@grammar.rule("day after <holiday>", gives="<when_day>")
def _day_after_holiday(name: str) -> Day:
    def find(today: date) -> date | None:
        found = _coming_holiday(name, today)
        return found + timedelta(days=1) if found is not None else None

    return Day(find)


@grammar.rule("<weekday> <daypart>", gives="<when_day>")
def _weekday_evening(weekday: float, half: str) -> Day:
    return Day(lambda today: _next_weekday(today, int(weekday)), half)


@grammar.rule("<weekday> week", gives="<when_day>")
def _weekday_week(weekday: float) -> Day:
    return Day(lambda today: _next_weekday(today, int(weekday)) + timedelta(days=7))


@grammar.rule(
    "<weekday> ,? <month> <ordinal>|<number>", "<weekday> ,? <ordinal>|<number> of|de? <month>", gives="<when_day>"
)
def _weekday_and_date(_: float, first: object, second: object) -> Day | None:
    return _month_day(first, second)


@grammar.rule("<weekday> <ordinal>", gives="<when_day>")
def _weekday_the_nth(_: float, day: int) -> Day | None:
    return _the_nth(day)


@grammar.rule("<weekday>", gives="<when_day>")
def _weekday(weekday: float) -> Day:
    return Day(lambda today: _next_weekday(today, int(weekday)))


@grammar.rule("<month> <ordinal>|<number>", "<ordinal>|<number> of|de? <month>", gives="<when_day>")
def _month_day(first: object, second: object) -> Day | None:
    month, day = (first, second) if isinstance(first, float) and not isinstance(second, float) else (second, first)
    wanted = int(day.value) if isinstance(day, Number) else day
    if not isinstance(month, float) or not isinstance(wanted, int) or not 1 <= wanted <= 31:
        return None
    return Day(lambda today: _coming(int(month), wanted, today))


@grammar.rule("<ordinal> of|in? <next> month", "<next> month on|,? <ordinal>", gives="<when_day>")
def _of_next_month(*values: object) -> Day | None:
    """`the 25th of next month`."""
    wanted = next((value for value in values if isinstance(value, int)), 0)

    def find(today: date) -> date | None:
        first = (today.replace(day=1) + timedelta(days=32)).replace(day=1)
        return _coming_day(wanted, first)

    return Day(find) if 1 <= wanted <= 31 else None


@grammar.rule("<ordinal>", gives="<when_day>")
def _the_nth(day: int) -> Day | None:
    return Day(lambda today: _coming_day(day, today)) if 1 <= day <= 31 else None


@grammar.rule("<slashed>", gives="<when_day>")
def _slashed(pair: tuple[int, int]) -> Day | None:
    first, second = pair
    month, day = (first, second) if first <= 12 else (second, first)
    if not (1 <= month <= 12 and 1 <= day <= 31) or (second in (2, 3, 4, 8) and first < second):
        return None
    return Day(lambda today: _coming(month, day, today))


@grammar.rule("<date>", gives="<when_day>")
def _iso_date(parts: tuple[int, int, int]) -> Day | None:
    try:
        wanted = date(*parts)
    except ValueError:
        return None
    return Day(lambda _: wanted)


@grammar.rule("<holiday> <daypart>?", gives="<when_day>")
def _holiday(name: str, half: str | None) -> Day:
    abroad = {"CA": _thanksgiving_in_canada} if name == "thanksgiving" else {}
    return Day(lambda today: _coming_holiday(name, today), half or "", abroad=abroad)


@grammar.rule("in|within|en <duration>", gives="<when_day>")
def _in_days(wait: Duration) -> Day | None:
    return _offset(round(wait.hours / 24)) if wait.unit in ("day", "week") else None


@grammar.rule("<duration> ago", gives="<when_day>", keeps=True)
def _days_ago(gone: Duration) -> Day | None:
    return _offset(-round(gone.hours / 24)) if gone.unit in ("day", "week") else None


@grammar.rule("<duration> from <day>", "<duration> from now|today", gives="<when_day>")
def _days_from(wait: Duration, *base: float) -> Day | None:
    if wait.unit not in ("day", "week"):
        return None
    return _offset(round(wait.hours / 24) + (base[0] if base else 0))


@grammar.rule("<duration> from|on <weekday>", gives="<when_day>")
def _week_from(wait: Duration, weekday: float) -> Day | None:
    days = timedelta(days=round(wait.hours / 24))
    return Day(lambda today: _next_weekday(today, int(weekday)) + days) if wait.unit in ("day", "week") else None


@number_grammar.rule(
    "comida|cena|comemos|cenamos|almuerzo|lunch|dinner <number> <at>|<hour_at> <clock>",
    gives="<when_day>",
    keeps=True,
)
def _meal_and_number(day: Number | float, *_: object) -> Day | None:
    """`comida 26 a las 14:00`."""
    value = number(day).value
    return _the_nth(int(value)) if value == int(value) and 13 <= value <= 31 else None


@number_grammar.rule("<number> <ordinal_word>", "the <number> <ordinal_word>", gives="<ordinal>")
def _twenty_sixth(tens: Number | float, ones: float) -> int | None:
    value = number(tens).value
    return int(value + ones) if value in (20, 30) and ones < _TEN else None


@number_grammar.rule("<ordinal_word> of <month>", gives="<when_day>")
def _fifth_of_december(day: float, month: float) -> Day | None:
    return _month_day(month, int(day))


@number_grammar.rule("^<month>|<weekday> <ordinal_word>", gives="<ordinal>")
def _december_fifth(day: float) -> int:
    return int(day)


@number_grammar.rule("^the <ordinal_word> !<roast>|<generic>|<time_unit>", gives="<ordinal>")
def _the_nineteenth(day: float) -> int | None:
    """`the nineteenth`; "the second" may be anything."""
    return int(day) if day > _TEN else None


@number_grammar.rule("dia <number>", gives="<when_day>")
def _dia(day: Number | float) -> Day | None:
    value = number(day).value
    return _the_nth(int(value)) if value == int(value) else None


@number_grammar.rule(
    "^<returns>|<hold> the|el|del|al <number>", "<number> after all", "the|el <number> after all", gives="<number>"
)
def _the_one_of_before(said: Number | float) -> Number:
    """`back to the 16`, of a weight: no day of the month."""
    return number(said)


@number_grammar.rule("the|el|del <number> of|de <month>", gives="<when_day>")
def _the_number_of_december(day: Number | float, month: float) -> Day | None:
    return _month_day(month, number(day))


@number_grammar.rule("the|el|del <number>", gives="<when_day>")
def _the_number(day: Number | float) -> Day | None:
    value = number(day).value
    return _the_nth(int(value)) if value == int(value) and 13 <= value <= 31 else None


def _next_weekday(today: date, weekday: int, skip_today: bool = False) -> date:
    days = (weekday - today.weekday()) % 7
    return today + timedelta(days=days or (7 if skip_today else 0))


def _coming(month: int, day: int, today: date) -> date | None:
    for year in range(today.year, today.year + 5):
        try:
            found = date(year, month, day)
        except ValueError:
            continue
        if found >= today:
            return found
    return None


def _coming_day(day: int, today: date) -> date | None:
    year, month = today.year, today.month
    for _ in range(13):
        try:
            found = date(year, month, day)
        except ValueError:
            found = None
        if found is not None and found >= today:
            return found
        year, month = (year + 1, 1) if month == 12 else (year, month + 1)
    return None


_FIXED = {"christmas": (12, 25), "christmas_eve": (12, 24), "boxing_day": (12, 26), "new_years_day": (1, 1)} | {
    "new_years_eve": (12, 31),
    "epiphany": (1, 6),
    "independence_day": (7, 4),
}


def _coming_holiday(name: str, today: date) -> date | None:
    if name in _FIXED:
        return _coming(*_FIXED[name], today)
    for year in (today.year, today.year + 1):
        found = _moving(name, year)
        if found >= today:
            return found
    return None


def _thanksgiving_in_canada(today: date) -> date | None:
    """The second Monday of October; from then on until November the feast of the neighbours is the one that comes."""
    from dateutil.relativedelta import MO, relativedelta

    mondays = (date(year, 10, 1) + relativedelta(weekday=MO(2)) for year in (today.year, today.year + 1))
    own: date = next(monday for monday in mondays if monday >= today)
    theirs = _coming_holiday("thanksgiving", today)
    return min(own, theirs) if theirs is not None else own


def _moving(name: str, year: int) -> date:
    """Thanksgiving, the fourth Thursday of November, and Easter; the library is only loaded when one is named."""
    if name == "easter":
        from dateutil.easter import easter

        sunday: date = easter(year)
        return sunday
    from dateutil.relativedelta import TH, relativedelta

    thursday: date = date(year, 11, 1) + relativedelta(weekday=TH(4))
    return thursday
