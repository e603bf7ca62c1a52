"""How a number in SI reads: the reader's own unit first, the other in brackets where both could be held.

Each function takes the value, the reader and an optional `style`: "both" (default) or "own" (no brackets).
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from babel.dates import format_date
from babel.numbers import format_decimal

from turnspit.quantities import written_unit
from turnspit.words.reader import Reader

POUND_KG = 0.45359237
OUNCE_KG = POUND_KG / 16
GALLON_L = 3.785411784
INCH_MM = 25.4

LOCALES = {"en": "en_US", "es": "es"}


def _number(value: float, digits: int, reader: Reader) -> str:
    rounded = round(value * (1 + 1e-9), digits) + 0.0  # 6.35 is 6.4, and there is no "-0"
    # "1.102 lb" would read as little more than one: Spanish groups from five digits on.
    grouped = reader.language != "es" or abs(rounded) >= 10_000
    pattern = ("#,##0" if grouped else "0") + ("." + "#" * digits if digits else "")
    return str(format_decimal(rounded, format=pattern, locale=LOCALES[reader.language]))


def _led(us: str, metric: str, reader: Reader, style: str) -> str:
    own, other = (us, metric) if reader.units == "us" else (metric, us)
    return own if style == "own" else f"{own} ({other})"


def mass(kg: float, reader: Reader, style: str = "both") -> str:
    """7.257 -> "16 lb (7.3 kg)"; under a pound in ounces, under a kilogram in grams."""
    ounces = kg / OUNCE_KG
    us = (
        f"{_number(kg / POUND_KG, 1 if kg < 45 else 0, reader)} lb"
        if kg >= POUND_KG * 0.999
        else f"{_number(ounces, 1 if ounces < 4 else 0, reader)} oz"
    )
    grams = kg * 1000
    metric = (
        f"{_number(kg, 1 if kg < 45 else 0, reader)} kg"
        if kg >= 1
        else f"{_number(5 * round(grams / 5) if grams >= 100 else grams, 0 if grams >= 10 else 1, reader)} g"
    )
    return _led(us, metric, reader, style)


def temperature(c: float, reader: Reader, style: str = "both") -> str:
    """163 -> "325 °F (163 °C)", to the whole degree."""
    return _led(f"{_number(c * 9 / 5 + 32, 0, reader)} °F", f"{_number(c, 0, reader)} °C", reader, style)


def oven(c: float, reader: Reader, style: str = "both") -> str:
    """An oven setting as its dial reads: Fahrenheit to five degrees, so that 218 is "425 °F (218 °C)"."""
    dial_f = 5 * round((c * 9 / 5 + 32) / 5)
    return _led(f"{_number(dial_f, 0, reader)} °F", f"{_number(c, 0, reader)} °C", reader, style)


def rise(k: float, reader: Reader, style: str = "both") -> str:
    """A temperature difference: 4 -> "7 °F (4 °C)"."""
    return _led(f"{_number(k * 9 / 5, 0, reader)} °F", f"{_number(k, 0, reader)} °C", reader, style)


def volume(litres: float, reader: Reader, style: str = "both") -> str:
    """9.46 -> "2.5 gal (9.5 L)"; small volumes in quarts, cups, spoons and millilitres. Who measures in litres reads
    no quarts or cups beside them."""
    gallons = litres / GALLON_L
    steps = ((1.0, 1.0, "gal"), (0.25, 4.0, "qt"), (1 / 64, 16.0, "cup"), (0.0, 768.0, "tsp"))
    factor, unit = next((factor, unit) for least, factor, unit in steps if gallons >= least * 0.999)
    amount = _number(gallons * factor, 1, reader)
    us = f"{amount} {unit if unit in ('gal', 'qt') else written_unit(unit, amount != '1', reader.language)}"
    millilitres = litres * 1000
    metric = (
        f"{_number(litres, 1, reader)} L"
        if litres >= 1
        else f"{_number(5 * round(millilitres / 5) if millilitres >= 50 else millilitres, 0, reader)} mL"
    )
    return metric if reader.units == "metric" and unit != "tsp" else _led(us, metric, reader, style)


def length(mm: float, reader: Reader, style: str = "both") -> str:
    """50 -> "2 in (50 mm)"; from 100 mm in centimetres."""
    metric = f"{_number(mm, 0, reader)} mm" if mm < 100 else f"{_number(mm / 10, 0, reader)} cm"
    return _led(f"{_number(mm / INCH_MM, 1, reader)} in", metric, reader, style)


def percent(value: float, reader: Reader, style: str = "both") -> str:  # noqa: ARG001 one form in every unit system
    """5.5 -> "5.5%"."""
    return f"{_number(value, 1, reader)}%"


def span(minutes: float, reader: Reader, style: str = "both") -> str:
    """225 -> "3 h 45 min"; from two days in days and hours. `style` "rough" rounds to five minutes."""
    whole = 5 * round(minutes / 5) if style == "rough" else round(minutes)
    days, rest = divmod(whole, 1440) if whole >= 2880 else (0, whole)
    hours, left = divmod(rest, 60)
    if days:
        hours, left = round(rest / 60), 0
        days, hours = (days + 1, 0) if hours == 24 else (days, hours)
    day_word = {"en": "days", "es": "días"}[reader.language]
    parts = [f"{days} {day_word}"] * bool(days) + [f"{hours} h"] * bool(hours) + [f"{left} min"] * bool(left)
    return " ".join(parts) or "0 min"


def spans(low_min: float, high_min: float, reader: Reader, style: str = "rough") -> str:
    """(225, 255) -> "3 h 45 min – 4 h 15 min"; one figure where both read alike."""
    low, high = span(low_min, reader, style), span(high_min, reader, style)
    low_unit, high_unit = low.rpartition(" ")[2], high.rpartition(" ")[2]
    if low == high:
        return low
    if low_unit == high_unit and low.count(" ") == high.count(" ") == 1:
        return f"{low.partition(' ')[0]}–{high}"
    return f"{low} – {high}"


def clock(at: datetime, reader: Reader, style: str = "both") -> str:  # noqa: ARG001 a clock has one style
    """18:00 or 6 pm, by the reader's habit and in the reader's zone."""
    local = at.astimezone(reader.now.tzinfo)
    if reader.clock == "24h":
        return f"{local:%H:%M}"
    hour = local.hour % 12 or 12
    half = "am" if local.hour < 12 else "pm"
    return f"{hour} {half}" if local.minute == 0 else f"{hour}:{local:%M} {half}"


def when(at: datetime, reader: Reader, style: str = "both") -> str:
    """The clock time, with its day wherever that is not today: "tomorrow 6 pm", "Fri Dec 4 6 pm".

    `style` "at" puts it into a sentence: "at 6 pm", "tomorrow at 6 pm", "el domingo a las 18:00".
    """
    local = at.astimezone(reader.now.tzinfo)
    told = clock(at, reader)
    if style == "at":
        one_o_clock = told.partition(":")[0].partition(" ")[0] == "1"
        told = {"en": "at ", "es": "a la " if one_o_clock else "a las "}[reader.language] + told
    ahead = (local.date() - reader.now.date()).days
    if ahead == 0:
        return told
    near = {"en": {1: "tomorrow", -1: "yesterday"}, "es": {1: "mañana", -1: "ayer"}}[reader.language]
    if ahead in near:
        return f"{near[ahead]} {told}"
    pattern = "EEE" if 0 < ahead < 7 else ("EEE MMM d" if reader.units == "us" else "EEE d MMM")
    spoken = style == "at" and reader.language == "es"
    if spoken and pattern == "EEE":
        pattern = "EEEE"
    return f"{'el ' * spoken}{format_date(local.date(), pattern, locale=LOCALES[reader.language])} {told}"


FUNCTIONS: dict[str, Callable[..., str]] = {
    "MASS": mass,
    "TEMPERATURE": temperature,
    "OVEN": oven,
    "RISE": rise,
    "VOLUME": volume,
    "LENGTH": length,
    "PERCENT": percent,
    "SPAN": span,
    "SPANS": spans,
    "CLOCK": clock,
    "WHEN": when,
}
