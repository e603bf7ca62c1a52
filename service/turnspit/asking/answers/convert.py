"""One amount in another unit, with its range where measures or foods vary."""

from __future__ import annotations

import re
from math import floor, log10
from typing import TYPE_CHECKING, Any

from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.taken import Taken
from turnspit.asking.answers.topics import topic_of
from turnspit.asking.clean import clean
from turnspit.errors import OutOfRange, Unknown
from turnspit.message import Message
from turnspit.quantities import celsius, convert, fan_oven_c, nearest_gas_mark, still_oven_c, written_unit
from turnspit.words import by_imperial_pints, territory

if TYPE_CHECKING:
    from turnspit.quantities import Conversion

COUNTERPARTS = {
    "g": "oz", "kg": "lb", "oz": "g", "lb": "g", "mL": "cup", "L": "quart", "tsp": "g", "tbsp": "g", "cup": "g",
    "floz": "mL", "pint": "mL", "quart": "L", "gal": "L", "degC": "degF", "degF": "degC", "gas_mark": "degF",
    "cm": "in", "in": "cm",
}  # fmt: skip
COUNTED = ("piece", "clove", "sprig", "stalk", "slice", "leaf", "bunch", "head")
OVEN = ("degF", "degC", "gas_mark")
SETTINGS_C = (50.0, 300.0)
FAN_LOWER_F = 25.0
"""What books in Fahrenheit take off for a fan (published convection rule); those in Celsius take off up to 20 C."""
FAN = re.compile(r"\b(?:fan|convection|conveccion|ventilador|ventilado|turbo)\b")
BY_VOLUME = {"tsp": "mL", "tbsp": "mL", "cup": "mL"}
IMPERIAL = frozenset(("pint", "quart", "gal", "floz"))
"""Measures that are larger or smaller in Britain and Ireland."""
CUPS, METRIC_CUPS = frozenset(("cup", "tbsp", "tsp")), ("AU", "NZ")
"""Measures that are metric in Australia and New Zealand; their cup holds 250 mL."""
US = re.compile(r"\b(?:us|usa|american)\b", re.IGNORECASE)
BRITISH = re.compile(r"\b(?:imperial|british|uk|english)\b", re.IGNORECASE)
SUPPOSED = ("quantities-us-measures",)
"""Notes that tell what was taken for granted."""


def answer(enquiry: Enquiry) -> Answer:
    """The converted amount; what is missing is asked for, except a target that follows from the unit."""
    taken = Taken(enquiry)
    unit, item = enquiry.said("amount.unit"), enquiry.said("amount.item")
    if unit is None:
        return _asked(enquiry)
    if unit in OVEN and enquiry.said("oven.convection") is not None:
        return _other_oven(enquiry, float(taken.value("amount.value", 1.0)), unit)
    target = _target(taken, unit, item)
    if target == "gas_mark" and unit in ("degC", "degF") and FAN.search(clean(enquiry.line)):
        return _gas_for_a_fan(float(taken.value("amount.value", 1.0)), unit)
    value = float(taken.value("amount.value", 1.0))
    imperial = not IMPERIAL.isdisjoint((unit, target)) and _by_imperial(enquiry)
    metric = "" if imperial else _metric_cups(enquiry, unit, target)
    result = convert(value, unit, target, item, "UK" if imperial else metric or None)
    return Answer(
        headline=_dial(enquiry, value, result) or _headline(enquiry, value, unit, result),
        lines=(*_kinds(result), *(note for note in result.notes if note.key not in SUPPOSED)),
        reasons=(Message("asking-why-source", source=result.source), *_exactness(result)),
        assumptions=(
            *taken.assumptions,
            *([Message("asking-taken-imperial")] if imperial else []),
            *([Message("asking-taken-metric-cups", region=metric)] if metric else []),
            *(note for note in result.notes if note.key in SUPPOSED),
        ),
        assumed=taken.assumed,
        next=_next(unit, target),
        data={"convert": _document(value, unit, result)},
    )


def _metric_cups(enquiry: Enquiry, *units: str) -> str:
    """The region whose cups and spoons are meant where they are of round millilitres; "" for those of the US."""
    here = territory(enquiry.now)
    meant = here in METRIC_CUPS and not (US.search(enquiry.line) or BRITISH.search(enquiry.line))
    return here if meant and not CUPS.isdisjoint(units) else ""


def _by_imperial(enquiry: Enquiry) -> bool:
    """Whether pints are the imperial ones: so named, else by the place of the reader."""
    if BRITISH.search(enquiry.line):
        return True
    return by_imperial_pints(enquiry.now) and not US.search(enquiry.line)


def _other_oven(enquiry: Enquiry, value: float, unit: str) -> Answer:
    """The setting that roasts alike in an oven of the other kind, as a dial has it: to five degrees."""
    fan = bool(enquiry.said("oven.convection"))
    given_c = celsius(value, unit)
    OutOfRange.check("oven.temperature_c", given_c, *SETTINGS_C, "say what the dial can be set to")
    if unit == "degF":
        found_c = celsius(value - FAN_LOWER_F if fan else value + FAN_LOWER_F, "degF")
    else:
        found_c = 5.0 * round((fan_oven_c(given_c) if fan else still_oven_c(given_c)) / 5)
    return Answer(
        headline=Message("asking-convert-fan", fan="yes" if fan else "no", given_c=given_c, c=found_c),
        lines=(Message("asking-convert-fan-check"),),
        reasons=(Message("asking-why-fan", rise_k=abs(found_c - given_c)),),
        next=(Message("asking-next-convert-oven"), Message("asking-next-why")),
        data={"convert": {"value": value, "unit": unit, "given_c": given_c, "result_c": found_c, "convection": fan}},
    )


def _gas_for_a_fan(value: float, unit: str) -> Answer:
    """The mark of a gas oven, which has no fan, for a fan oven's setting."""
    given_c = celsius(value, unit)
    mark = nearest_gas_mark(still_oven_c(given_c))
    return Answer(
        headline=Message("asking-convert-fan-gas", given_c=given_c, mark=mark),
        lines=(Message("asking-convert-fan-check"),),
        reasons=(Message("asking-why-fan", rise_k=still_oven_c(given_c) - given_c),),
        next=(Message("asking-next-in-unit", unit=_unit_name("degF")), Message("asking-next-why")),
        data={
            "convert": {"value": value, "unit": unit, "given_c": given_c, "result": mark, "target_unit": "gas_mark"}
        },
    )


def _target(taken: Taken, unit: str, item: str | None) -> str:
    target = taken.enquiry.said("amount.target_unit")
    if target is not None:
        return str(target)
    if unit in COUNTED:
        return str(taken.value("amount.target_unit", "g"))
    if unit not in COUNTERPARTS:
        raise Unknown("unit", unit, tuple(COUNTERPARTS))
    if unit == "gas_mark" and taken.enquiry.reader.units == "metric":
        return str(taken.value("amount.target_unit", "degC"))
    usual = COUNTERPARTS[unit] if item or unit not in BY_VOLUME else BY_VOLUME[unit]
    return str(taken.value("amount.target_unit", usual))


def _next(unit: str, target: str) -> tuple[Message, ...]:
    why = Message("asking-next-why")
    if unit in OVEN:
        other = next(one for one in OVEN if one not in {unit, target})
        return (Message("asking-next-in-unit", unit=_unit_name(other)), why)
    return (Message("asking-next-in-unit", unit=_unit_name(_other(target))), Message("asking-next-convert-oven"), why)


def _other(unit: str) -> str:
    nearest = {"g": "oz", "oz": "g", "kg": "lb", "lb": "kg", "mL": "cup", "cup": "mL"}
    return nearest.get(unit) or COUNTERPARTS.get(unit, "g")


def _asked(enquiry: Enquiry) -> Answer:
    value = enquiry.said("amount.value")
    return Answer(
        headline=Message("asking-convert-incomplete"),
        question=Message("asking-ask-unit" if value is not None else "asking-ask-amount"),
        asks="amount.unit",
        next=(Message("asking-next-convert"), Message("asking-next-convert-oven"), Message("asking-next-help")),
    )


def _item(enquiry: Enquiry, unit: str, result: Conversion) -> str:
    """The food by its name in the tables, which tells what was taken; in another language, and where it is counted,
    as the cook said it."""
    named = enquiry.reader.language == "en" and unit != "piece"
    return result.item if named else str(enquiry.said("amount.item") or "")


def _headline(enquiry: Enquiry, value: float, unit: str, result: Conversion) -> Message:
    reader, item = enquiry.reader, _item(enquiry, unit, result)
    given = _said(value, unit, reader.language)
    if unit == "piece":
        given = Message("asking-line", text=f"{value:g} {item}")
    elif result.item and item:
        given = Message("asking-amount-of", amount=given, item=item)
    low, high = _rounded(result.low), _rounded(result.high)
    if result.exact or low == high or result.unit in OVEN:
        key = "asking-convert-exact" if result.exact else "asking-convert-about"
        return Message(key, given=given, found=amount(result.value, result.unit))
    if result.kinds or not result.low <= result.value <= result.high:
        return Message("asking-convert-range", given=given, low=low, found=amount(result.high, result.unit))
    found = amount(result.value, result.unit)
    return Message("asking-convert-between", given=given, found=found, low=low, high=high)


def _dial(enquiry: Enquiry, value: float, result: Conversion) -> Message | None:
    """An oven's degrees Celsius in Fahrenheit as its dial reads, to five degrees."""
    if result.unit != "degF" or enquiry.said("amount.unit") != "degC" or not topic_of(enquiry.text, "oven"):
        return None
    dial = float(5 * round(result.value / 5))
    if dial == round(result.value):
        return None
    given, exact = _said(value, "degC", enquiry.reader.language), amount(result.value, "degF")
    return Message("asking-convert-dial", given=given, found=amount(dial, "degF"), exact=exact)


def _kinds(result: Conversion) -> tuple[Message, ...]:
    return tuple(
        Message(
            "asking-convert-kind",
            kind=Message(f"brine-salt-{kind}"),
            low=_rounded(low),
            found=amount(high, result.unit),
        )
        for kind, low, high in result.kinds
    )


def _said(value: float, unit: str, language: str) -> Message:
    """The amount as it was given."""
    if unit in COUNTERPARTS:
        return Message(f"asking-amount-{unit}", value=value)
    return Message("asking-line", text=f"{value:g} {written_unit(unit, value != 1, language)}")


def amount(value: float, unit: str) -> Message:
    """An amount as a kitchen would say it, to three figures."""
    if unit not in COUNTERPARTS:
        return Message("asking-line", text=f"{_rounded(value):g} {unit}".strip())
    return Message(f"asking-amount-{unit}", value=_rounded(value, unit))


def _unit_name(unit: str) -> Message:
    return Message(f"asking-unit-{unit}")


def _rounded(value: float, unit: str = "") -> float:
    """Three figures, which is more than a kitchen measures."""
    if value == 0 or unit == "gas_mark":
        return value
    if unit in {"degC", "degF"}:
        return float(round(value))
    return round(value, 2 - floor(log10(abs(value))))


def _exactness(result: Conversion) -> tuple[Message, ...]:
    return (Message("asking-why-exact" if result.exact else "asking-why-measured"),)


def _document(value: float, unit: str, result: Conversion) -> dict[str, Any]:
    return {
        "value": value,
        "unit": unit,
        "item": result.item or None,
        "result": result.value,
        "target_unit": result.unit,
        "low": result.low,
        "high": result.high,
        "exact": result.exact,
        "weigh": result.weigh,
        "source": result.source,
        "kinds": [{"kind": kind, "low": low, "high": high} for kind, low, high in result.kinds],
    }
