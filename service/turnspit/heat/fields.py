"""Whether the fields of a roast's case are of their types: what a caller in Python can get wrong before any range."""

from __future__ import annotations

from collections.abc import Sequence
from numbers import Integral, Real
from typing import get_args

from turnspit.errors import Impossible, Unknown
from turnspit.heat.cases import Cover, OvenStep, RestPlace, RoastCase, State


def check_types(case: RoastCase) -> None:
    """Raise Impossible for what is no number, no whole number or no yes or no, Unknown for a name there is not."""
    for name in ("mass_kg", "start_c", "rest_min", "altitude_m", "oven_vapour_pa"):
        _number(name, getattr(case, name))
    for name in ("target_c", "pull_c"):
        if getattr(case, name) is not None:
            _number(name, getattr(case, name))
    for name in ("count", "members", "seed"):
        _whole(name, getattr(case, name))
    for name in ("stuffed", "preheated"):
        _yes(name, getattr(case, name))
    if case.bone_in is not None:
        _yes("bone_in", case.bone_in)
    _one_of("state", case.state, get_args(State))
    _one_of("rest_place", case.rest_place, get_args(RestPlace))
    for minute in _several("openings_min", case.openings_min):
        _number("openings_min", minute)
    for step in _several("oven", case.oven):
        if not isinstance(step, OvenStep):
            raise Impossible("oven", step, "is no setting", "give OvenStep values")
        _number("oven.from_min", step.from_min)
        _number("oven.temperature_c", step.temperature_c)
        _yes("oven.convection", step.convection)
        _one_of("oven.cover", step.cover, get_args(Cover))


def _number(name: str, value: object) -> None:
    if isinstance(value, bool) or not isinstance(value, Real):
        raise Impossible(name, value, "is no number", "give a number")


def _whole(name: str, value: object) -> None:
    _number(name, value)
    if not isinstance(value, Integral):
        raise Impossible(name, value, "is no whole number", "give a whole number")


def _yes(name: str, value: object) -> None:
    if not isinstance(value, bool):
        raise Impossible(name, value, "is neither true nor false", "give true or false")


def _one_of(name: str, value: object, known: Sequence[str]) -> None:
    if not isinstance(value, str) or value not in known:
        raise Unknown(name, value, known)


def _several(name: str, values: object) -> Sequence[object]:
    if not isinstance(values, (tuple, list)):
        raise Impossible(name, values, "is no list", "give a tuple, empty for none")
    return values
