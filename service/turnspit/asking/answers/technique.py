"""How to roast: basting, foil, bags, fans and the like, with what each does to this very roast where the heat model
knows it.

`asking/vocabulary` names the techniques by the words for them (`[technique]`), `words/*/technique.ftl` says what the
trade does (common practice, no source), and `CHANGES` holds what the model can work out.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from contextlib import suppress
from dataclasses import replace
from types import MappingProxyType
from typing import TYPE_CHECKING

from turnspit.asking.answers.answer import Answer, Enquiry
from turnspit.asking.answers.taken import Taken, roast_case_of, roast_phrase, spatchcocked
from turnspit.errors import TurnspitError
from turnspit.message import Caution, Message
from turnspit.reference import caution

if TYPE_CHECKING:
    from turnspit.heat import RoastCase
    from turnspit.heat.cases import Cover

BASTED_EVERY_MIN = 30
HOT_START_C, HOT_START_MIN = 232.2, 30
STEAM_PA = 30_000
FELT_LOSS = 0.005
OVERDONE_K = 8.3
"""15 F past the target."""

CAUTIONS: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "cavity": ("stuffing-165", "allergens"),
        "butter": ("allergens",),
        "steam": ("glass-pan",),
        "smoke": ("glass-pan",),
        "pan": ("glass-pan",),
        "spatchcock": ("raw-juices",),
        "truss": ("raw-juices",),
        "breast_down": ("raw-juices",),
        "gravy_burnt": ("allergens",),
        "gravy_lumpy": ("hot-hold",),
        "gravy_salty": ("allergens",),
        "gravy_thin": ("allergens", "hot-hold"),
        "crisp": ("no-washing", "raw-juices"),
    }
)
"""The rules that a technique touches; that the thermometer decides stands under each that is about the roast."""


def answer(enquiry: Enquiry) -> Answer:
    """What the trade does, then what it changes on this roast."""
    name = enquiry.technique
    taken = Taken(enquiry)
    computed: tuple[Message, ...] = ()
    with suppress(TurnspitError):
        # A roast that cannot be timed still deserves the advice.
        computed = _computed(name, roast_case_of(taken))
    key = f"technique-{name}".replace("_", "-")
    return Answer(
        headline=Message(key),
        lines=(Message(f"{key}-how"), *computed),
        reasons=(Message("technique-why"), *([Message("technique-why-computed")] if computed else [])),
        assumptions=taken.assumptions if computed else (),
        assumed=taken.assumed if computed else {},
        cautions=tuple(_cautions(name)),
        next=(Message("asking-next-how-long"), Message("asking-next-plan"), Message("asking-next-why")),
    )


def _cautions(name: str) -> list[Caution]:
    return [
        *(caution(rule, "warn") for rule in CAUTIONS.get(name, ())),
        *([] if name.startswith("gravy") else [caution("thermometer-decides", "info")]),
    ]


def _computed(name: str, case: RoastCase) -> tuple[Message, ...]:
    """Time and loss without the technique and with it; nothing where the model does not know it."""
    change = CHANGES.get(name)
    if change is None:
        return ()
    from turnspit.heat import forecast_roast

    plain = _plain(case)
    before = forecast_roast(plain)
    after = forecast_roast(change(plain, before.ready_min.p50))
    dries = abs(after.loss_fraction.p50 - before.loss_fraction.p50) >= FELT_LOSS
    found = Message(
        "technique-hotter" if name == "juicy" else "technique-computed" if dries else "technique-computed-time",
        roast=roast_phrase(plain.kind, plain.mass_kg, plain.count),
        oven_c=plain.oven[0].temperature_c,
        before_min=before.ready_min.p50,
        after_min=after.ready_min.p50,
        before_loss=before.loss_fraction.p50 * 100,
        after_loss=after.loss_fraction.p50 * 100,
        before_c=before.pull_c,
        after_c=after.pull_c,
    )
    return (found, Message("technique-rough")) if name in _ROUGH else (found,)


_ROUGH = frozenset(("cover", "lid", "bag", "steam", "spatchcock"))
"""Of these only the direction is sure (docs/heat.md)."""


def _plain(case: RoastCase) -> RoastCase:
    """The roast before anything is done to it: whole, in a still oven."""
    kind = case.kind.removesuffix("_spatchcock")
    return replace(case, kind=kind, oven=tuple(replace(step, convection=False) for step in case.oven))


def _covered(cover: Cover) -> Callable[[RoastCase, float], RoastCase]:
    return lambda case, _: replace(case, oven=tuple(replace(step, cover=cover) for step in case.oven))


def _basted(case: RoastCase, ready_min: float) -> RoastCase:
    every = range(BASTED_EVERY_MIN, int(ready_min), BASTED_EVERY_MIN)
    return replace(case, bastings_min=tuple(float(minute) for minute in every))


def _opened_once(case: RoastCase, ready_min: float) -> RoastCase:
    return replace(case, openings_min=(round(ready_min / 2),))


def _fanned(case: RoastCase, _: float) -> RoastCase:
    return replace(case, oven=tuple(replace(step, convection=True) for step in case.oven))


def _hot_start(case: RoastCase, _: float) -> RoastCase:
    first = case.oven[0]
    hot = replace(first, temperature_c=max(HOT_START_C, first.temperature_c))
    return replace(case, oven=(hot, replace(first, from_min=HOT_START_MIN)))


def _from_a_cold_oven(case: RoastCase, _: float) -> RoastCase:
    return replace(case, preheated=False)


def _steamed(case: RoastCase, _: float) -> RoastCase:
    return replace(case, oven_vapour_pa=STEAM_PA)


def _spatchcocked(case: RoastCase, _: float) -> RoastCase:
    return replace(case, kind=spatchcocked(case.kind), stuffed=False)


def _overdone(case: RoastCase, _: float) -> RoastCase:
    from turnspit.heat import roast

    target_c = case.target_c if case.target_c is not None else roast(case.kind).default_target_c
    return replace(case, target_c=target_c + OVERDONE_K, pull_c=None)


CHANGES: Mapping[str, Callable[[RoastCase, float], RoastCase]] = MappingProxyType(
    {
        "bag": _covered("bag"),
        "baste": _basted,
        "cover": _covered("foil"),
        "door": _opened_once,
        "fan": _fanned,
        "hot_start": _hot_start,
        "juicy": _overdone,
        "lid": _covered("lid"),
        "preheat": _from_a_cold_oven,
        "spatchcock": _spatchcocked,
        "steam": _steamed,
    }
)
"""By technique: the roast with it, from the plain one and the minutes that takes."""
