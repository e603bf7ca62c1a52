"""Covers: `for 12`, `feeds 8`, `9 adults and 4 kids`, `a dozen of us`, `party of ten`, `two more guests`."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.hours.clock import is_an_hour
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.tokens import Number


@dataclass(frozen=True, slots=True)
class Covers:
    """Diners; `more` counts those that are added to (or taken from) the number said before, `sure` where a word said
    that people are meant. `kids` and `non_eaters` (of the roast) are among them; with `among` all of them are among
    those said before."""

    count: int
    kids: int = 0
    more: int = 0
    sure: bool = True
    non_eaters: int = 0
    among: bool = False


grammar = Grammar("<covers>")
_MOST = 10_000_000
MOST_AT_TABLE = 99
_FARTHEST = 60
FEWEST_OF_AN_HOUR = 200


def covers(value: float, sure: bool = True) -> Covers | None:
    """Covers of a number, None where it is none."""
    return Covers(int(value), sure=sure) if value == int(value) and abs(value) <= _MOST else None


_APART = ("kids", "non_eaters")


def _counted(found: Covers | None, values: tuple[object, ...]) -> Covers | None:
    """The diners with those apart: `values` are the numbers and, behind each, the word for who they are."""
    if found is None:
        return None
    apart: dict[str, int] = {}
    last = 0
    for value in values:
        if isinstance(value, Number):
            last = int(value.value)
        elif isinstance(value, str) and value in _APART:
            apart[value] = min(last, abs(found.count) + abs(found.more))
    return replace(found, kids=apart.get("kids", found.kids), non_eaters=apart.get("non_eaters", found.non_eaters))


@dataclass(frozen=True, slots=True)
class FromTo:
    """Two numbers of a change: `from 6 to 20`."""

    low: float
    high: float


@grammar.rule("<scale> <recipe>? <for> <number> <people>? to|a <number> <people>?", gives="<from_to>", keeps=True)
def _recipe_for_4_to_10(*values: object) -> FromTo | None:
    low, high = (value.value for value in values if isinstance(value, Number))
    return FromTo(low, high)


@grammar.rule("<recipe> <for> <number> and|<and_sign> <number> <people>", gives="<from_to>", keeps=True)
def _recipe_and_guests(*values: object) -> FromTo:
    """`a recipe for 8 and 20 people coming`."""
    low, high = (value.value for value in values if isinstance(value, Number))
    return FromTo(low, high)


@grammar.rule("<recipe> <for> <number> <people>? to|a <number> <people>?", gives="<from_to>", keeps=True)
def _recipe_far_up(*values: object) -> FromTo | None:
    """`recipe for 6 to 15` scales, `recipe for 6 to 8` is for about seven."""
    low, high = (value.value for value in values if isinstance(value, Number))
    return FromTo(low, high) if high >= 2 * low or high < low else None


@grammar.rule("from|de <number> <people>? to|a|<scale_to> <number> <people>?", gives="<from_to>")
def _from_to(
    first: Number | float, _: str | None, __: str | None, last: Number | float, *___: object
) -> FromTo | None:
    low, high = number(first).value, number(last).value
    # "de 2,2 a 190" is a weight and an oven.
    return FromTo(low, high) if low == int(low) and high <= _FARTHEST * max(low, 1) else None


_WENT = "went|goes|jumped|gone|up|down|rose|fell|grew|grown|increased|dropped|changed|now"


@grammar.rule(
    f"<covers_are>|<people> has|have? {_WENT}? up|down? from <number> to|a <number> <half_of>? <people>?",
    f"weve|we {_WENT} up|down? from <number> to|a <number> <half_of>? <people>?",
    gives="<covers>",
)
def _count_went_up(*values: object) -> Covers | None:
    """`guest count went from 80 to 110`, `the list just went from 8 to 15 and half of them are kids`."""
    now = [value for value in values if isinstance(value, Number)][-1]
    return _half_of_whom(now, *values)


@grammar.rule("<number> <people>? ,|(? <half_of> <people>", gives="<covers>")
def _half_of_whom(value: Number | float, *who: object) -> Covers | None:
    """`15 and half of them kids`, `twelve, half of us vegetarian`."""
    found = covers(number(value).value)
    if found is None or "half_of" not in who or who[-1] not in _APART:
        return found
    half = found.count // 2
    return replace(found, kids=half) if who[-1] == "kids" else replace(found, non_eaters=half)


@grammar.rule("<covers_are> stands|comes|came|up at|to <number>", gives="<covers>")
@grammar.rule("<covers_are> :|=|is? <number> !<people>|<mass_unit>|<time_unit>|x|:", gives="<covers>")
def _covers_are(_: str, value: Number | float) -> Covers | None:
    """`covers 96`."""
    return covers(number(value).value)


@grammar.rule(
    "banquet|wedding|reception|buffet|function|party <number> "
    "!<people>|<mass_unit>|<time_unit>|<month>|<ampm>|<oclock>|<birds>|<roast>|<generic>|x|:",
    gives="<covers>",
)
def _banquet(value: Number | float) -> Covers | None:
    """`banquet 45`; `banquet 7` is an hour."""
    said = number(value)
    return (
        covers(said.value) if said.value > 12 and not (said.value >= FEWEST_OF_AN_HOUR and is_an_hour(said)) else None
    )


@grammar.rule("<number> <tables> <number> <people>?", "<number> <number> tops|top", gives="<covers>")
@grammar.rule("<number> <family> <number>", gives="<covers>")
def _tables_of_ten(*values: object) -> Covers | None:
    """`three tables of 8`, `two 8 tops`, `two families of 4`."""
    tables, seats = (value.value for value in values if isinstance(value, Number))
    return covers(tables * seats)


@grammar.rule(
    "<number> <people> ,|(|and|with|y|con? <number> <part_of> <people>",
    "<feeds>|<for> <number> ,|(|and|with|y|con? <number> <part_of> <people>",
    "<number> <people> ,|(? <including> <number> <people>",
    "<feeds>|<for> <number> ,|(? <including> <number> <people>",
    "<number> <people>? ,|(? <including> . <number> <people>",
    "<number> ,|(? <including> <number> <people>",
    "<feeds>|<for> <number> <people>? ( <number> <people>",
    "<number> <people> ( <number> <people>",
    gives="<covers>",
)
def _of_whom_some(*values: object) -> Covers | None:
    """`we're 9, two of us kids`: those two are among the nine."""
    whole, part = (number(value).value for value in values if isinstance(value, Number))
    return _counted(covers(whole), values) if whole >= part else None


@grammar.rule("<number> <people>? <including> .? <relatives>", gives="<covers>")
def _with_one_of_the_family(whole: Number | float, *_: object) -> Covers | None:
    """`ten incl. grandma`."""
    return covers(number(whole).value)


@grammar.rule(
    "<feeds>|<only_have>|<for>|only us <number> !<mass_unit>|<deg>|<roast>|<generic>|<number>",
    gives="<covers>",
)
def _just_us_six(_: str | None, value: Number | float) -> Covers | None:
    return covers(number(value).value)


@grammar.rule(
    "^<and_sign>|<break> us <number> !<mass_unit>|<deg>|<roast>|<generic>|<number>|<time_unit>", gives="<covers>"
)
def _us_two(value: Number | float) -> Covers | None:
    """`my parents and us two`."""
    return covers(number(value).value)


@grammar.rule("<number> <people> ,|( <number> .? <people>", gives="<covers>")
def _some_eat_no_meat(*values: object) -> Covers | None:
    """`8 people, one vegetarian`; `8 people and 2 vegans` are ten."""
    return _of_whom_some(*values) if values[-1] == "non_eaters" else None


@grammar.rule("<number> <people> so|makes|thats|total|altogether <number> <people>", gives="<covers>")
def _so_many_in_all(*values: object) -> Covers | None:
    """`the four of us so seven people`: the later is the sum."""
    total = [number(value).value for value in values if isinstance(value, Number)][-1]
    return covers(total)


@grammar.rule(
    "<number> <people> and|n|<and_sign>|,? <number> <people>",
    "<number> <pcs> .? <people> and|n|<and_sign>|,? <number> <people>",
    "<number> and|<and_sign> <number> <people>",
    gives="<covers>",
)
def _adults_and_kids(*values: object) -> Covers | None:
    counts = [number(value).value for value in values if isinstance(value, Number)]
    return _counted(covers(sum(counts)), values)


@grammar.rule("<number> <birds> are|is|son|being? <people>", gives="<covers>")
def _some_of_them(value: Number | float, which: str, who: str) -> Covers | None:
    """`2 of them are kids`, told of a company that was counted."""
    found = _counted(covers(number(value).value), (number(value), who)) if which == "of_them" else None
    return replace(found, among=True) if found is not None and (found.kids or found.non_eaters) else None


@grammar.rule("<number> <people> and|<and_sign>|, <number> <birds>", gives="<covers>")
def _us_and_them(us: Number | float, _: str, *rest: object) -> Covers | None:
    """`2 of us plus 4 of them`."""
    them, which = rest[-2], rest[-1]
    return covers(number(us).value + them.value) if which == "of_them" and isinstance(them, Number) else None


@grammar.rule(
    "<number> -|to|or|a|o <number> <people>",
    "between|entre <number> and|y <number> <people>",
    "anywhere|somewhere|anything from|between <number> to|and <number> <people>",
    gives="<covers>",
)
def between(*values: object) -> Covers | None:
    """The middle of two numbers, rounded up; None where they are no range of diners."""
    low, high = (value.value for value in values if isinstance(value, Number))
    return covers(math.ceil((low + high) / 2)) if 0 < low < high <= 3 * low else None


@grammar.rule("<and_sign> <number>|<a> <people>", gives="<covers>")
def _and_kids(_: str, value: Number | float, who: str) -> Covers | None:
    return _add_people("add", value, who) if who == "kids" else None


@grammar.rule("<and_sign> <number> staff|crew|servers|server|waiters|helpers|vendors|musicians", gives="<covers>")
def _and_staff(_: str, value: Number | float) -> Covers | None:
    """`and 4 staff`: who works at a dinner eats beside its guests."""
    return _add_people("add", value, "people")


@grammar.rule("minus|less|menos|without <number> <people>", gives="<covers>")
def _fewer_people(value: Number | float, who: str) -> Covers | None:
    """`minus two adults`."""
    return _add_people("add", Number(-number(value).value), who)


@grammar.rule(
    "plus|+ <number> !<mass_unit>|<time_unit>|<deg>|<temperature_unit>|<c>|<volume_unit>|<roast>|<people>",
    gives="<covers>",
)
def _plus_one(value: Number | float) -> Covers | None:
    said = number(value).value
    return Covers(0, more=int(said)) if said == int(said) and 0 < said <= 12 else None


@grammar.rule("minus|less|menos <number> !<mass_unit>|<time_unit>|<deg>|<temperature_unit>|<c>", gives="<covers>")
def _minus_two(value: Number | float) -> Covers | None:
    said = number(value).value
    return Covers(0, more=-int(said)) if said == int(said) and 0 < said <= MOST_AT_TABLE else None


@grammar.rule("<add> <number> <people>", gives="<covers>")
def _add_people(_: str, value: Number | float, who: str) -> Covers | None:
    said = number(value).value
    found = Covers(0, more=int(said)) if said == int(said) and abs(said) < _MOST else None
    return _counted(found, (value, who))


@grammar.rule("<number> <more> <people>? ,? so|makes|now|leaving|quedamos|somos <number>", gives="<covers>")
def _so_many_now(*values: object) -> Covers | None:
    """`two cancelled so 8`: the sum is told."""
    said = [value for value in values if isinstance(value, Number)]
    return covers(said[-1].value) if len(said) == 2 else None


@grammar.rule(
    "<number> <people>? plus|and|<and_sign> <relatives>? <family> <number>",
    "<feeds>|<for> <number> plus|and|<and_sign> <relatives>? <family> <number>",
    gives="<covers>",
)
def _and_a_family(*values: object) -> Covers | None:
    """`9 plus my brother's family of 4`."""
    return covers(sum(value.value for value in values if isinstance(value, Number)))


@grammar.rule("plus|and|<and_sign> <relatives>? <family> <number>", gives="<covers>")
def _one_family_more(*values: object) -> Covers | None:
    said = [value.value for value in values if isinstance(value, Number)]
    return Covers(0, more=int(said[0])) if said and said[0] == int(said[0]) and said[0] < _MOST else None


@grammar.rule("<number> <more> <people>? !<part>|<number>", gives="<covers>")
def _more_people(value: Number | float, sign: float, _: str | None) -> Covers | None:
    said = number(value).value
    return Covers(0, more=int(sign * said)) if said == int(said) and abs(said) < _MOST else None


@grammar.rule("<number> of|de <people> <more> !<number>", "<number> <people> <more> !<number>", gives="<covers>")
def _so_many_people_more(value: Number | float, who: str, sign: float) -> Covers | None:
    """`dos bebés más`, `two adults can't come`, `two of the kids aren't coming`."""
    return _add_people("add", Number(sign * number(value).value), who)


@grammar.rule("<number> <birds> <more>", gives="<covers>")
def _of_them_fewer(value: Number | float, which: str, sign: float) -> Covers | None:
    """`4 of them cancelled`."""
    return Covers(0, more=int(sign * number(value).value)) if which == "of_them" and sign < 0 else None


@grammar.rule("<people> <number> <pcs>", gives="<covers>")
def _people_in_numbers(_: str, value: Number | float, __: str) -> Covers | None:
    """`guests 8 nos`."""
    return covers(number(value).value)


@grammar.rule("<number> <weekday> lunches|dinners|covers|roasts", gives="<covers>")
def _sunday_lunches(value: Number | float, _: float) -> Covers | None:
    return covers(number(value).value)


@grammar.rule("<number> <pcs> .? <people>", gives="<covers>")
def _numbers_of_people(value: Number | float, _: str, who: str) -> Covers | None:
    return _counted(covers(number(value).value), (value, who))


@grammar.rule("<number> coming !up|along|down|out|off|<place>", gives="<covers>")
def _so_many_coming(value: Number | float) -> Covers | None:
    """`140 coming for dinner`: who comes is no temperature."""
    return covers(number(value).value) if number(value).value > MOST_AT_TABLE else None


@grammar.rule("<number> odd|strong? <people>", "<number> hungry !<people>|<relatives>|<roast>", gives="<covers>")
def _people(value: Number | float, who: str = "people") -> Covers | None:
    # "to 130 for dinner", "oven 325 eating at 7": so many do not sit at one table.
    if who == "at_table" and number(value).value > MOST_AT_TABLE:
        return None
    return _counted(covers(number(value).value), (value, who))


@grammar.rule("<feeds>|only|solo me|myself|yo !or|o|in|cooking|doing|en", gives="<covers>")
def _just_me(_: str | None) -> Covers:
    """`just me this year`."""
    return Covers(1)


@grammar.rule("<number> for <holiday>|<weekday>|<night>? <meal>", gives="<covers>", keeps=True)
def _sixteen_for_lunch(value: Number | float, _: object, __: str) -> Covers | None:
    """`16 for christmas lunch`; the day and the meal are still told."""
    return covers(number(value).value) if number(value).value <= MOST_AT_TABLE else None


@grammar.rule("<number> <couples>", gives="<covers>")
def _couples(value: Number | float, _: str) -> Covers | None:
    return covers(2 * number(value).value)


@grammar.rule("plus|mas <relatives>", gives="<covers>")
def _relatives(count: float) -> Covers:
    return Covers(0, more=int(count))


@grammar.rule(
    "<relatives> coming|joining|come too|also|tambien !,|so",
    "bringing|brings|trae her|his|their? <relatives> !,|so",
    gives="<covers>",
)
def _relatives_come_too(count: float) -> Covers:
    """`my mum and dad are coming too`, `my sister's bringing her boyfriend`."""
    return Covers(0, more=int(count))


@grammar.rule("<relatives> <more>", gives="<covers>")
def _relative_cancels(count: float, sign: float) -> Covers | None:
    """`my brother can't make it`."""
    return Covers(0, more=-int(count)) if sign < 0 else None


@grammar.rule("minus|menos <relatives>", gives="<covers>")
def _without_relatives(count: float) -> Covers:
    return Covers(0, more=-int(count))
