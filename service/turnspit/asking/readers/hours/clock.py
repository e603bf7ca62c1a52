"""Clock times: `at 6`, `6ish`, `5:30`, `half past five`, `quarter to 7`, `18:00`, `1830`, `noon`, `a las seis y
media`.

A clock time is read here without its day; `half` says which half of the day was named ("" for neither).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.measures.numbers import number
from turnspit.asking.tokens import Number

Half = Literal["", "am", "pm"]


@dataclass(frozen=True, slots=True)
class Clock:
    """A time of day. With `half` "" and an hour up to 12 the half of the day is still open.

    With `hourless` only the minute was said ("at ten past"): the hour is the one that now is, or the one beside it.
    """

    hour: int
    minute: int = 0
    half: Half = ""
    style: Literal["", "12h", "24h"] = ""
    hourless: bool = False

    @property
    def is_open(self) -> bool:
        """Whether the half of the day is still to be found."""
        return not self.half and self.style != "24h" and 1 <= self.hour <= 12 and not self.hourless

    def minutes(self, half: Half = "") -> int:
        """Minutes after midnight, in the named half or, where it is open, in `half`."""
        hour, half = self.hour, self.half or half
        if half == "pm" and hour < 12:
            hour += 12
        elif half == "am" and hour == 12:
            hour = 0
        return hour % 24 * 60 + self.minute


grammar = Grammar("<clock>")
# These are told so plainly that no number of them counts people: "twenty past six for dinner".
plain_grammar = Grammar("<clock>")
_FOUR_DIGITS = 1000
_OVEN_STEP_F = 25
_QUARTER = 15


def clock(hour: float, minute: float = 0, half: Half = "") -> Clock | None:
    """A clock time, None where the numbers are none."""
    if hour != int(hour) or not 0 <= hour <= 24 or not 0 <= minute < 60 or (hour == 24 and minute):
        return None
    style: Literal["", "12h", "24h"] = "24h" if hour > 12 or hour == 0 else "12h" if half else ""
    return Clock(int(hour) % 24, int(minute), half if hour <= 12 else "", style)


def digits_clock(said: Number, half: Half = "") -> Clock | None:
    """`530`, `0600`, `1830`, `13.30`, or a plain hour, as a clock time."""
    digits = said.digits
    if said.spoken is not None:
        return clock(*said.spoken, half)
    if len(digits) in (3, 4) and digits.isdigit():
        found = clock(int(digits[:-2]), int(digits[-2:]), half)
        if found is not None and digits[0] == "0":
            return Clock(found.hour, found.minute, half, "24h")
        return found
    whole, dot, minutes = digits.replace(",", ".").partition(".")
    if dot:
        return clock(int(whole or "0"), int(minutes), half) if len(minutes) == 2 and whole else None
    return clock(said.value, 0, half)


def is_an_hour(said: Number) -> bool:
    """Whether hours and minutes written together are no oven setting: quarters of an hour, and no step of 25."""
    if said.value >= _FOUR_DIGITS or "." in said.digits:
        return True
    return said.value % _OVEN_STEP_F != 0 and said.value % 100 % _QUARTER == 0


@plain_grammar.rule("<part> past|<past>|<and_sign> <number> <ampm>?", gives="<clock>")
def _half_past(part: float, _: str | None, hour: Number | float, half: Half | None) -> Clock | None:
    return clock(number(hour).value, part * 60, half or "")


@plain_grammar.rule("^<at>|by <number> for <meal>", gives="<clock>", keeps=True)
def _at_six_for_dinner(said: Number | float, _: str) -> Clock | None:
    """`eat at 6 for dinner`; `16 for dinner` are people."""
    return digits_clock(number(said))


@plain_grammar.rule("<serve> <number> for <meal>", gives="<clock>", keeps=True)
def _ready_at_six_for_dinner(cue: str, said: Number | float, _: str) -> Clock | None:
    """`ready at 6 for dinner`; `serve 10 for dinner` are people."""
    return digits_clock(number(said)) if cue == "ready" else None


@grammar.rule("<part> to|til|till|of|before <number> <ampm>?", gives="<clock>")
def _quarter_to(part: float, hour: Number | float, half: Half | None) -> Clock | None:
    return _before(hour, part * 60, half)


@plain_grammar.rule("<number> <minutes_word>? past <number> <ampm>?", gives="<clock>")
def _ten_past(minutes: Number | float, _: str | None, hour: Number | float, half: Half | None) -> Clock | None:
    return clock(number(hour).value, number(minutes).value, half or "")


@grammar.rule("<number> <minutes_word>? to|til|till|before <number> <ampm>?", gives="<clock>")
def _ten_to(minutes: Number | float, _: str | None, hour: Number | float, half: Half | None) -> Clock | None:
    value = number(minutes).value
    return _before(hour, value, half) if value in (5, 10, 20, 25) else None


@grammar.rule("^<at>|<start>|<started> <part>|<number> past|<past> !<time_unit>", gives="<clock>")
def _at_ten_past(minutes: Number | float, *_: object) -> Clock | None:
    """`at ten past`: the minute of an hour that is not said."""
    return _hourless(minutes, 0)


@grammar.rule(
    "^<at>|<start>|<started> <part>|<number> to|till|til !<serve>|<meal>|<number>|<time_unit>|be|have|get|rest|the",
    gives="<clock>",
)
def _at_quarter_to(minutes: Number | float) -> Clock | None:
    return None if isinstance(minutes, Number) and minutes.digits else _hourless(minutes, 60)


def _hourless(minutes: Number | float, before: int) -> Clock | None:
    said = minutes * 60 if isinstance(minutes, float) else minutes.value
    return Clock(0, int(abs(before - said)), hourless=True) if said in (5, 10, 15, 20, 25, 30) else None


@grammar.rule("<number> menos <part> <ampm>?", gives="<clock>")
def _menos_cuarto(hour: Number | float, part: float, half: Half | None) -> Clock | None:
    return _before(hour, part * 60, half)


@grammar.rule("<number> menos <number> <ampm>?", gives="<clock>")
def _menos_diez(hour: Number | float, minutes: Number | float, half: Half | None) -> Clock | None:
    return _before(hour, number(minutes).value, half)


@grammar.rule("<number> hrs|hours|hr", gives="<clock>")
def _military_hours(hour: Number | float) -> Clock | None:
    said = number(hour)
    military = len(said.digits) == 4 and said.digits.isdigit() and (said.value >= 1300 or said.digits[0] == "0")
    return digits_clock(said) if military else None


@grammar.rule("<hour_at> <number> horas|h|hs", gives="<clock>")
def _a_las_15_horas(_: str, hour: Number | float) -> Clock | None:
    return digits_clock(number(hour))


@grammar.rule("alas <number> <ampm>? !<mass_unit>|<deg>|<temperature_unit>|<c>|<time_unit>", gives="<clock>")
def _alas_10(hour: Number | float, half: Half | None) -> Clock | None:
    """`ceno alas 10`: a thumb's "a las", where wings would be hotter."""
    said = number(hour)
    return digits_clock(said, half or "") if 1 <= said.value <= 24 else None


@grammar.rule("^sat <number> !<people>|<mass_unit>|<time_unit>|<deg>|<temperature_unit>", gives="<clock>")
def _sat_1900(hour: Number | float) -> Clock | None:
    """`sat 1900`: no bird sat at so many degrees."""
    said = number(hour)
    quarters = said.value >= _FOUR_DIGITS and said.value % 100 % _QUARTER == 0
    return digits_clock(said) if quarters and said.digits.isdigit() else None


@grammar.rule("<number> y <number> <ampm>?", gives="<clock>")
def _siete_y_diez(hour: Number | float, minutes: Number | float, half: Half | None) -> Clock | None:
    value = number(minutes).value
    return clock(number(hour).value, value, half or "") if value in (5, 10, 20, 25) else None


@grammar.rule("<la_hour> una <and_part>", "<la_hour> una y <part>", gives="<clock>")
def _la_una_y_media(_: str, part: float) -> Clock | None:
    return clock(1, part * 60)


@grammar.rule("<la_hour> una <ampm>?", gives="<clock>")
def _la_una(_: str, half: Half | None) -> Clock | None:
    return clock(1, 0, half or "")


@grammar.rule("^<started> la una <ampm>?", gives="<clock>")
def _desde_la_una(half: Half | None) -> Clock | None:
    return clock(1, 0, half or "")


@grammar.rule("<number> <number> <ampm>?", gives="<clock>")
def _six_fifteen(hour: Number | float, minute: Number | float, half: Half | None) -> Clock | None:
    said, past = number(hour), number(minute)
    # "one fifteen" may be a temperature.
    spoken = not said.digits and not past.digits and past.value == 15 and 4 <= said.value <= 12
    return clock(said.value, past.value, half or "") if spoken else None


@grammar.rule(
    "^<meal>|<serve>|<at>|<start>|<started> <number> <number> <ampm>? "
    "!<people>|<mass_unit>|<time_unit>|<deg>|<temperature_unit>|<roast>|<generic>",
    gives="<clock>",
)
def _at_six_thirty(hour: Number | float, minute: Number | float, half: Half | None) -> Clock | None:
    """`at 6 30`, `dinner 6 30`."""
    said, past = number(hour), number(minute)
    apart = past.digits in ("00", "15", "30", "45") and said.digits and 1 <= said.value <= 12
    return clock(said.value, past.value, half or "") if apart else None


@grammar.rule("<by_half> <number> <ampm>?", gives="<clock>")
def _by_half_five(_: str, hour: Number | float, half: Half | None) -> Clock | None:
    return _half_five(hour, half)


@grammar.rule("half <number> <ampm>?", gives="<clock>")
def _half_five(hour: Number | float, half: Half | None) -> Clock | None:
    value = number(hour).value
    return clock(value, 30, half or "") if 1 <= value <= 12 else None


@grammar.rule("<hm> <ampm>", "<hm> <oclock>? <ampm>", gives="<clock>")
def _hours_minutes_half(hour_minute: tuple[int, int], *rest: Half | None) -> Clock | None:
    return clock(*hour_minute, rest[-1] or "")


@grammar.rule("<hm> <oclock>?", gives="<clock>")
def _hours_minutes(hour_minute: tuple[int, int], _: str | None) -> Clock | None:
    return clock(*hour_minute)


@grammar.rule("<h_m>", gives="<clock>")
def _hours_h_minutes(hour_minute: tuple[int, int]) -> Clock | None:
    return clock(*hour_minute)


@grammar.rule("<number> <oclock>? <ampm>", gives="<clock>")
def _hour_half(hour: Number | float, _: str | None, half: Half) -> Clock | None:
    found = digits_clock(number(hour))
    return found if found is None or not found.is_open else Clock(found.hour, found.minute, half, "12h")


@grammar.rule("<number>|<hm> <half_of_day>", gives="<clock>")
def _six_in_the_evening(hour: Number | float | tuple[int, int], half: Half) -> Clock | None:
    found = clock(*hour) if isinstance(hour, tuple) else digits_clock(number(hour))
    return found and (Clock(found.hour, found.minute, half, "12h") if found.is_open else found)


@grammar.rule("<number> <oclock>", gives="<clock>")
def _oclock(hour: Number | float, _: str) -> Clock | None:
    return digits_clock(number(hour))


@grammar.rule("<noon>", gives="<clock>")
def _noon(which: str) -> Clock:
    return Clock(12, 0, "pm", "") if which == "noon" else Clock(0, 0, "", "24h")


def _before(hour: Number | float, minutes: float, half: Half | None) -> Clock | None:
    value = number(hour).value
    if value != int(value) or not 1 <= value <= 24 or not 0 < minutes < 60:
        return None
    earlier = value - 1 if value > 1 else 12
    return clock(earlier, 60 - minutes, half or "")
