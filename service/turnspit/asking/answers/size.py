"""How big a roast for so many diners, with and without leftovers; or how many a given one feeds."""

from __future__ import annotations

from dataclasses import asdict
from math import ceil
from typing import TYPE_CHECKING, Any

from turnspit.asking.answers.answer import Answer, Enquiry, sources_line
from turnspit.asking.answers.taken import Taken, kind_of, name_of, roast_phrase, size_case_of
from turnspit.asking.answers.topics import topic_of
from turnspit.errors import OutOfRange
from turnspit.message import Caution, Message, Value

if TYPE_CHECKING:
    from turnspit.recipes import Sizing

WHOLE_BIRDS = ("turkey", "chicken", "capon", "duck", "goose", "game_hen")
BACKGROUND = ("recipes-size-edible", "recipes-size-white-dark", "recipes-size-sides")
"""Notes that answer "why?" rather than "how much do I buy?"."""
SHOPPING = ("recipes-size-frozen", "recipes-size-frozen-days", "recipes-size-fresh")
"""Notes for one who is still to buy it."""
SAID_ALREADY = ("recipes-size-assumed-no-leftovers",)
"""What the headline tells itself."""
OTHER_SIZES = (
    "recipes-size-least",
    "recipes-size-other",
    "recipes-size-two-smaller",
    "recipes-size-two-joints",
    "recipes-size-sides",
)
"""Notes for one who is still to choose the size."""
SIDES = {
    "gravy": "gravy",
    "dressing": "dressing",
    "mashed-potatoes": "potatoes",
    "roast-potatoes": "potatoes",
    "cranberry": "cranberry",
    "braised-greens": "greens",
    "glazed-carrots": "carrots",
}
"""The side dish in the portion table by the starter recipe that makes it."""
ENOUGH_SHARE, A_LITTLE = 0.95, 0.25
SOME_PIECES = 2
ROUNDING = 0.02
"""Of a piece: a weight that is as good as a whole number of them needs no further one."""
A_SCALES_STEP_KG = 0.05
MASS_KG_RANGE = 0.2, 200.0
"""What one roast may weigh to be counted."""
USUAL_PARTIES = (6, 8, 12, 16)


def answer(enquiry: Enquiry) -> Answer:
    """The weight to buy; without a number of diners, how many the named roast feeds, else a question."""
    taken = Taken(enquiry)
    kind = kind_of(taken)
    covers = enquiry.said("covers")
    side = SIDES.get(topic_of(enquiry.text, "dishes"))
    if side is not None and covers is not None and enquiry.said("roast.kind") is None:
        return _side(side, covers)
    if covers is None:
        return _asked(taken, kind) if enquiry.said("roast.mass_kg") is None else _feeds(taken, kind)
    return _sized(taken, kind, covers)


def _side(item: str, covers: int) -> Answer:
    """How much of a side dish, by the usual portions."""
    from turnspit.recipes import SizeCase, size_roast

    found = next(side for side in size_roast(SizeCase(covers=covers)).sides if side.item == item)
    measure = {"us_cups": "volume", "lb": "mass"}.get(found.basis, "pieces")
    dish = Message(f"asking-dish-{item}")
    measure += "-about" if found.low == found.high else ""
    return Answer(
        headline=Message(f"asking-size-side-{measure}", dish=dish, covers=covers, low=found.low, high=found.high),
        lines=(Message("asking-size-side-recipe", dish=dish, covers=covers),),
        reasons=sources_line([found.source]),
        next=(
            Message("asking-next-scale-gravy"),
            Message("asking-next-for", count=_some_more(covers)),
            Message("asking-next-why"),
        ),
        data={"size": {"dish": item, "covers": covers, "basis": found.basis, "low": found.low, "high": found.high}},
    )


def _sized(taken: Taken, kind: str, covers: int) -> Answer:
    from turnspit.recipes import size_roast

    wanted = bool(taken.value("leftovers_wanted", False))
    plain, more = (size_roast(size_case_of(taken.enquiry, kind, leftovers)) for leftovers in (False, True))
    advised = more if wanted else plain
    said: dict[str, Value] = {
        "kg": plain.total_kg,
        "more_kg": more.total_kg,
        "covers": _eaters(plain),
        "roast": name_of(kind),
    }
    several = Message("asking-size-several", count=advised.count, each_kg=advised.each_kg)
    enough = _enough(taken, kind, advised)
    background = (*BACKGROUND, *_no_matter(taken.enquiry), *((*OTHER_SIZES, *SHOPPING) if enough else ()))
    form = {True: "-leftovers", False: "-none"}.get(taken.enquiry.said("leftovers_wanted"), "")
    if more.total_kg - plain.total_kg < A_SCALES_STEP_KG:
        form = "-either"
    with_leftovers = [] if form else [Message("asking-size-with-leftovers", kg=more.needed_kg)]
    headline, *lines = (*enough, *with_leftovers) if enough else (Message(f"asking-size-headline{form}", **said),)
    return Answer(
        headline=headline,
        lines=(
            *lines,
            _edible(kind, advised),
            *([several] if advised.count > 1 and not enough else []),
            *(note for note in advised.notes if note.key not in background),
        ),
        reasons=(
            *_reasons(plain, more),
            *(note for note in advised.notes if note.key in (*BACKGROUND, *OTHER_SIZES)),
        ),
        assumptions=(*taken.assumptions, *(told for told in advised.assumptions if told.key not in SAID_ALREADY)),
        assumed={
            **taken.assumed,
            **({} if enough else {"roast.mass_kg": advised.each_kg, "roast.count": advised.count}),
        },
        cautions=_cautions(taken.enquiry, advised),
        next=(
            Message("asking-next-when-in" if taken.enquiry.said("serve_at") is None else "asking-next-how-long"),
            Message("asking-next-without-leftovers" if wanted else "asking-next-with-leftovers"),
            Message("asking-next-for", count=_some_more(covers)),
        ),
        data={
            "size": {**_document(advised), "without_leftovers_kg": plain.total_kg, "with_leftovers_kg": more.total_kg}
        },
    )


def _no_matter(enquiry: Enquiry) -> tuple[str, ...]:
    """Notes on buying and thawing that what was said has settled."""
    state, bought = enquiry.said("roast.state"), enquiry.said("roast.mass_kg") is not None
    thawed = ("recipes-size-frozen", "recipes-size-frozen-days") if state == "thawed" else ()
    return (*thawed, "recipes-size-fresh") if bought or state in ("frozen", "part_frozen") else thawed


def _enough(taken: Taken, kind: str, advised: Sizing) -> tuple[Message, ...]:
    """Whether the roast that was named is enough for the diners, where both were said."""
    mass_kg = taken.enquiry.said("roast.mass_kg")
    if mass_kg is None:
        return ()
    OutOfRange.check("mass_kg", float(mass_kg), *MASS_KG_RANGE, "what does it weigh?")
    count = int(taken.enquiry.said("roast.count") or 1)
    has_kg = float(mass_kg) * count
    enough = has_kg >= ENOUGH_SHARE * advised.needed_kg
    pieces = ceil(advised.needed_kg / mass_kg - ROUNDING)
    roast, short_kg = roast_phrase(kind, mass_kg, count), advised.needed_kg - has_kg
    key = "asking-size-short"
    if enough:
        key = "asking-size-enough"
    elif short_kg <= A_LITTLE * advised.needed_kg:
        key = "asking-size-a-little-short"
    elif taken.enquiry.said("roast.count") is None and pieces > SOME_PIECES:
        key = "asking-size-pieces"
    each = roast_phrase(kind, mass_kg, pieces)
    said = {"need_kg": advised.needed_kg, "short_kg": short_kg}
    eaters = advised.case.covers - advised.case.non_eaters if key == "asking-size-pieces" else _eaters(advised)
    return (Message(key, roast=roast, covers=eaters, pieces=each, **said),)


def _eaters(sizing: Sizing) -> Value:
    """How many it is for: all, or those of them who eat of it."""
    case = sizing.case
    if not case.non_eaters:
        return case.covers
    return Message("asking-size-eaters", eaters=case.covers - case.non_eaters, covers=case.covers)


def _cautions(enquiry: Enquiry, sizing: Sizing) -> tuple[Caution, ...]:
    """On thawing where something is frozen, on leftovers where some are wanted or offered."""
    offered = enquiry.said("leftovers_wanted") is not False and enquiry.said("roast.mass_kg") is None
    applies = {
        "thaw-counter": enquiry.said("roast.state") in ("frozen", "part_frozen"),
        "leftovers-days": bool(enquiry.said("leftovers_wanted")) or offered,
    }
    return tuple(caution for caution in sizing.cautions if applies.get(caution.rule, True))


def _edible(kind: str, sizing: Sizing) -> Message:
    meat = sizing.carved
    key = "asking-size-half" if kind in WHOLE_BIRDS else "asking-size-meat"
    return Message(key, meat_kg=meat.meat_kg, servings=meat.servings, serving_kg=meat.serving_kg)


def _feeds(taken: Taken, kind: str) -> Answer:
    """How many diners a roast of the said weight is enough for."""
    from turnspit.heat import roast
    from turnspit.recipes import SizeCase, carved, size_roast

    bought = roast(kind).bought_as
    said = taken.enquiry.said
    count, mass_kg = int(said("roast.count") or 1), float(said("roast.mass_kg"))
    meat = carved(bought, mass_kg * count, bone_in=said("roast.bone_in"))
    plain, more = (size_roast(SizeCase(covers=10, leftovers=leftovers, kind=bought)) for leftovers in (False, True))
    feeds = [max(1, int(mass_kg * count / sizing.per_cover_kg + 0.25)) for sizing in (plain, more)]
    phrase = roast_phrase(kind, mass_kg, count)
    return Answer(
        headline=Message("asking-size-feeds", roast=phrase, plain=feeds[0], more=feeds[1]),
        lines=(Message("asking-carve-amount", roast=phrase, kg=meat.meat_kg, servings=meat.servings),),
        reasons=_reasons(plain, more),
        assumptions=taken.assumptions,
        assumed=taken.assumed,
        next=(Message("asking-next-how-long"), Message("asking-next-when-in"), Message("asking-next-why")),
        data={"size": {"total_kg": mass_kg * count, "feeds": feeds[0], "feeds_with_leftovers": feeds[1]}},
    )


def _some_more(covers: int) -> int:
    """A few diners more, as a party grows: 4 at a table, a tenth in a hall, in round figures."""
    return covers + 4 if covers < 40 else covers + 10 * round(covers / 100 + 0.5)


def _asked(taken: Taken, kind: str) -> Answer:
    return Answer(
        headline=Message("asking-size-unknown"),
        assumptions=taken.assumptions,
        assumed=taken.assumed,
        question=Message("asking-ask-covers"),
        choices=tuple(Message("asking-choice-covers", count=count) for count in USUAL_PARTIES),
        asks="covers",
        next=(Message("asking-next-size"), Message("asking-next-plan"), Message("asking-next-help")),
        data={"size": {"kind": kind}},
    )


def _reasons(plain: Sizing, more: Sizing) -> tuple[Message, ...]:
    portions = Message("asking-why-size", per_kg=plain.per_cover_kg, more_per_kg=more.per_cover_kg)
    return (portions, *sources_line(plain.sources))


def _document(sizing: Sizing) -> dict[str, Any]:
    return {
        "kind": sizing.case.kind,
        "covers": sizing.case.covers,
        "leftovers": sizing.case.leftovers,
        "count": sizing.count,
        "each_kg": sizing.each_kg,
        "total_kg": sizing.total_kg,
        "meat_kg": sizing.carved.meat_kg,
        "servings": sizing.carved.servings,
        "others": [{"count": flock.count, "each_kg": flock.each_kg} for flock in sizing.others],
        "sides": [asdict(side) for side in sizing.sides],
        "buy_frozen_days": sizing.buy_frozen_days,
    }
