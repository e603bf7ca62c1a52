"""A brine for this bird and this vessel: water, salt, hours, fit and cold, as the brine room plans it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from turnspit.asking.answers import safety
from turnspit.asking.answers.answer import Answer, once, sources_line
from turnspit.asking.answers.brine_in_time import in_time, with_what_is_to_come
from turnspit.asking.answers.brine_strength import named_percent
from turnspit.asking.answers.taken import Taken, kind_of, mass_of
from turnspit.asking.answers.topics import topic_of
from turnspit.message import Message

if TYPE_CHECKING:
    from turnspit.asking.answers.answer import Enquiry
    from turnspit.brine import BrineCase, BrinePlan

FEDERAL_PERCENT = 5.5
"""About 3/4 cup of table salt a gallon."""
MADE_BY = ("brine-step-dissolve", "brine-step-dissolve-sugar", "brine-step-ice", "brine-step-ice-only")
"""The steps that an answer in words tells; all of them stand in a timetable."""
TOLD_APART = ("brine-assumed-plain", "brine-assumed-strength")
"""What the question about the label, and the strength behind "why?", say already."""
OF_A_TIMETABLE = ("raw-juices",)
"""Rules that stand with the task in a timetable; an answer on water and salt leaves them there."""
VERDICTS = ("brine-note-too-long", "brine-note-too-short")
"""Notes in whose place the answer itself says whether the hours are right."""
FITS = ("brine-note-fits", "brine-note-misfit", "brine-note-overflows")
POUND_KG, TEASPOONS_A_CUP = 0.45359237, 48
OF_NO_BIRD = ("asking-brine-ratio", "asking-brine-per-mass", "asking-brine-longest")
"""Headlines that hold for any bird of the kind, whatever was taken for granted to compute them."""
LONGEST_H = 96.0
"""Hours beyond this are as far too long as these, and the brine room plans no cure."""
MOST_H = 48.0
"""Raw meat stays in brine two days at most (FSIS; the rule `brine-cold`)."""
OF_WHAT_IS_ADDED = ("brine-note-allergens",)
"""Notes on butter, spices and stuffing, of which an answer on salt and water says nothing."""
BACKGROUND = (
    "brine-note-percent",
    "brine-note-freezing",
    "brine-note-finished",
    "brine-note-weigh-salt",
    "brine-note-gravy",
)
"""Notes that answer "why?" rather than "what do I do?"."""


def answer(enquiry: Enquiry) -> Answer:
    """The brine to make; a bird sold injected or kosher gets none, and how it was sold is asked where unsaid."""
    if _endangers(enquiry):
        return safety.answer(enquiry)
    from turnspit.brine import plan_brine

    so_far, enquiry = enquiry, with_what_is_to_come(enquiry)
    taken = Taken(enquiry)
    plan = plan_brine(_case(taken))
    if plan.case.brinable and topic_of(enquiry.text, "brine_done") and _hours(enquiry) is not None:
        return _brined(taken, plan)
    unsaid = plan.case.sold_as is None
    recipe = [*_ratio(enquiry, plan), *_headline(plan), *_steps(plan), *_notes(plan)]
    amount_known = any(enquiry.said(path) is not None for path in ("brine.water_l", "roast.mass_kg"))
    if topic_of(enquiry.line, "strength") and not (amount_known and named_percent(enquiry.text) is not None):
        recipe = [*_strength(enquiry, plan), *recipe]
    asks_fit = topic_of(enquiry.line, "brine_asked") == "fits"
    verdict = _verdict(enquiry, plan)
    if topic_of(enquiry.line, "per_mass") and plan.case.method == "dry":
        recipe = [_per_mass(plan), *(_headline(plan) if amount_known else ())]
    elif verdict and verdict[0].key == "asking-brine-longest":
        recipe = []
    elif _per_water(enquiry) and recipe[0].key == "asking-brine-ratio":
        recipe = recipe[:1]
    elif verdict and ((plan.case.hours or 0.0) > MOST_H or so_far is not enquiry):
        recipe = []
    elif asks_fit:
        fits = [note for note in recipe if note.key in FITS]
        recipe = [*fits, *_headline(plan)] if plan.fits or plan.overflows else [*_headline(plan), *fits]
    elif verdict and topic_of(enquiry.line, "brine_asked"):
        recipe = [*_headline(plan)]
    timed = in_time(enquiry, plan)
    if timed and timed[0].key == "asking-brine-too-late":
        recipe = []
    headline, *lines = once([*timed, *_label_first(enquiry, plan), *verdict, *_dry_or_wet(enquiry), *recipe])
    return Answer(
        headline=headline,
        lines=tuple(lines),
        reasons=_reasons(plan),
        assumptions=_assumptions(taken, plan, headline),
        assumed={**taken.assumed, **({"roast.injected": False} if unsaid else {})},
        cautions=tuple(caution for caution in plan.cautions if caution.rule not in OF_A_TIMETABLE),
        question=Message("asking-ask-sold-as") if unsaid else None,
        choices=tuple(Message(f"asking-choice-{kind}") for kind in ("plain", "injected", "kosher")) if unsaid else (),
        asks="roast.injected" if unsaid else "",
        next=(
            *(Message(f"asking-next-{name}") for name in _what_next(enquiry, plan)),
            Message("asking-next-why"),
        ),
        data={"brine": _document(plan)},
    )


def _assumptions(taken: Taken, plan: BrinePlan, headline: Message) -> tuple[Message, ...]:
    """What was taken for granted: nothing for a bird that gets no salt, nor for the salt of so much water or meat."""
    if not plan.case.brinable or headline.key in OF_NO_BIRD:
        return ()
    told = (*taken.assumptions, *plan.assumptions)
    return tuple(each for each in told if each.key not in TOLD_APART or plan.case.sold_as is not None)


def _what_next(enquiry: Enquiry, plan: BrinePlan) -> list[str]:
    """Two lines that tell what was not said yet."""
    if not plan.case.brinable:
        return ["how-long", "probe"]
    dry = topic_of(enquiry.text, "brine") == "dry"
    unsaid = {
        **({} if dry else {"bucket": "brine.vessel_l"}),
        **({} if dry else {"overnight": "brine.hours"}),
        "kosher-salt": "brine.salt_kind",
        "brine-plan": "serve_at",
    }
    return [*(name for name, path in unsaid.items() if enquiry.said(path) is None), "how-long", "probe"][:2]


def _brined(taken: Taken, plan: BrinePlan) -> Answer:
    """It has been in the brine already: whether so long was right, and what to do with it now."""
    lost = (plan.case.hours or 0.0) > MOST_H
    notes = [note for note in plan.notes if note.key in ("brine-note-gravy", "brine-note-salty-after")]
    after = [] if lost else [Message("asking-brine-after"), *notes]
    headline, *lines = [*_verdict(taken.enquiry, plan, done=True), *after]
    return Answer(
        headline=headline,
        lines=tuple(lines),
        reasons=_reasons(plan),
        assumptions=taken.assumptions,
        assumed=taken.assumed,
        cautions=plan.cautions,
        next=(
            Message("asking-next-brine" if lost else "asking-next-brined-plan"),
            Message("asking-next-keeps" if lost else "asking-next-how-long"),
            Message("asking-next-why"),
        ),
        data={"brine": _document(plan)},
    )


def _label_first(enquiry: Enquiry, plan: BrinePlan) -> tuple[Message, ...]:
    """Whether this bird may be brined at all hangs on its label."""
    asks = topic_of(enquiry.line, "brine_asked") == "may"
    return (Message("asking-brine-label-first"),) if asks and plan.case.brinable and plan.case.sold_as is None else ()


def _dry_or_wet(enquiry: Enquiry) -> tuple[Message, ...]:
    return (Message("asking-brine-dry-or-wet"),) if topic_of(enquiry.line, "dry_or_wet") else ()


def _verdict(enquiry: Enquiry, plan: BrinePlan, done: bool = False) -> tuple[Message, ...]:
    """Whether the hours that were said are right, where that is asked or they are wrong."""
    from turnspit.heat import roast

    hours = plan.case.hours
    if not plan.case.brinable:
        return ()
    if hours is None:
        asks_most = topic_of(enquiry.line, "brine_asked") == "longest"
        said = {"low": plan.hours_low, "high": plan.hours_high}
        return (Message("asking-brine-longest", method=plan.case.method, **said),) if asks_most else ()
    said = {"hours_min": hours * 60, "low": plan.hours_low, "high": plan.hours_high}
    asked = topic_of(enquiry.line, "brine_asked")
    if hours > MOST_H:
        form = "bird" if roast(plan.case.kind).poultry else "joint"
        return (Message(f"asking-brine-over-two-days-{form}", **said),)
    if hours > plan.hours_high:
        return (Message("asking-brine-too-long", **said),)
    if hours < plan.hours_low:
        return (Message("asking-brine-too-short", **said),)
    if done:
        return (Message("asking-brine-done", **said),)
    return (Message(f"asking-brine-{asked}", **said),) if asked in {"enough", "not-too-long", "safe"} else ()


def _endangers(enquiry: Enquiry) -> bool:
    """A used brine, a kosher bird, a brine with its temperature: questions about safety, answered as such."""
    if enquiry.said("roast.injected") is None and safety.speaks_of(enquiry, "brine_injected"):
        return True
    return safety.speaks_of(enquiry, "brine_reuse") or enquiry.said("reading.temperature_c") is not None


def _case(taken: Taken) -> BrineCase:
    from turnspit.brine import BrineCase

    said = taken.enquiry.said
    kind = kind_of(taken)
    injected = said("roast.injected")
    method = topic_of(taken.enquiry.text, "brine", "wet")
    percent = named_percent(taken.enquiry.text)
    return BrineCase(
        kind=kind,
        mass_kg=mass_of(taken, kind),
        count=int(said("roast.count") or 1),
        sold_as=None if injected is None else "injected" if injected else "plain",
        vessel_l=said("brine.vessel_l"),
        water_l=said("brine.water_l"),
        hours=_hours(taken.enquiry),
        method=method,  # type: ignore[arg-type]
        strength_percent=percent if method == "wet" else None,
        target_percent=None if method == "wet" else percent,
        salt_kind=_salt_kind(taken),
    )


def _salt_kind(taken: Taken) -> Any:
    """The salt as named; a kosher salt of no brand is taken as the coarse one, of which a cup holds more."""
    if topic_of(taken.enquiry.text, "kosher_salt") == "kosher_salt":
        return taken.value("brine.salt_kind", "coarse_kosher", Message("asking-taken-coarse-kosher"))
    return taken.value("brine.salt_kind", "table", Message("asking-taken-table-salt"))


def _hours(enquiry: Enquiry) -> float | None:
    """The hours in the brine, or those that have gone by, which here are the same."""
    hours: float | None = enquiry.said("brine.hours")
    gone: float | None = enquiry.said("elapsed_h") if hours is None else hours
    return None if gone is None else min(gone, LONGEST_H)


def _headline(plan: BrinePlan) -> tuple[Message, ...]:
    return () if plan.headline is None else (plan.headline,)


def _ratio(enquiry: Enquiry, plan: BrinePlan) -> tuple[Message, ...]:
    """How much salt, where neither bird nor vessel was named."""
    if (
        not plan.case.brinable
        or plan.case.method != "wet"
        or (enquiry.said("brine") and not _per_water(enquiry))
        or any(enquiry.said(path) is not None for path in ("roast.mass_kg", "covers"))
    ):
        return ()
    if abs(plan.strength_percent - FEDERAL_PERCENT) > 0.1:
        return ()
    return (Message("asking-brine-ratio", **_salt(plan), low=plan.hours_low, high=plan.hours_high),)


def _per_water(enquiry: Enquiry) -> bool:
    """Whether the salt of so much water is asked for, and no vessel or hours are given."""
    given = any(enquiry.said(f"brine.{name}") is not None for name in ("vessel_l", "hours"))
    return bool(topic_of(enquiry.text, "per_water")) and not given


def _strength(enquiry: Enquiry, plan: BrinePlan) -> tuple[Message, ...]:
    if not plan.case.brinable or plan.case.method == "dry" or _ratio(enquiry, plan):
        return ()
    federal = abs(plan.strength_percent - FEDERAL_PERCENT) <= 0.1
    return (Message("asking-brine-per-gallon" if federal else "asking-brine-strength", **_salt(plan)),)


def _salt(plan: BrinePlan) -> dict[str, float]:
    percent = plan.strength_percent
    return {"percent": percent, "grams": round(1000 * percent / (100 - percent))}


def _notes(plan: BrinePlan) -> list[Message]:
    return [note for note in plan.notes if note.key not in (*BACKGROUND, *VERDICTS, *OF_WHAT_IS_ADDED)]


def _steps(plan: BrinePlan) -> list[Message]:
    """How the brine is made, in one line where it is of salt, hot water, ice and cold water alone."""
    by = {step.key: step.values for step in plan.steps if step.key in MADE_BY}
    if by.keys() == {"brine-step-dissolve", "brine-step-ice"}:
        hot, iced = by["brine-step-dissolve"], by["brine-step-ice"]
        return [Message("asking-brine-make", hot_l=hot["water_l"], **iced)]
    return [step for step in plan.steps if step.key in MADE_BY]


def _per_mass(plan: BrinePlan) -> Message:
    """The dry salt of a pound and of a kilogram, in spoons of that salt."""
    per_kg = plan.salt_g / (plan.case.mass_kg * plan.case.count)
    spoons = sum(plan.salt_cups) / 2 * TEASPOONS_A_CUP * POUND_KG / (plan.case.mass_kg * plan.case.count)
    salt = Message(f"brine-salt-{plan.case.salt_kind}")
    said = {"grams": per_kg * POUND_KG, "per_kg": per_kg, "spoons": spoons}
    return Message("asking-brine-per-mass", salt=salt, **said)


def _reasons(plan: BrinePlan) -> tuple[Message, ...]:
    background = [note for note in plan.notes if note.key in BACKGROUND]
    sources = sources_line(plan.sources)
    if not plan.case.brinable:
        return (Message("asking-why-brine-none"), *sources)
    cover = Message("asking-why-brine-cover", cover_l=plan.cover_l, displaced_l=plan.displaced_l)
    return (Message("asking-why-brine-strength", percent=plan.strength_percent), cover, *background, *sources)


def _document(plan: BrinePlan) -> dict[str, Any]:
    return {
        "allowed": plan.allowed,
        "strength_percent": round(plan.strength_percent, 2),
        "hours": [plan.hours_low, plan.hours_high],
        "water_l": round(plan.water_l, 2),
        "salt_g": round(plan.salt_g, 1),
        "sugar_g": round(plan.sugar_g, 1),
        "salt_kind": plan.case.salt_kind,
        "salt_cups": [round(cups, 2) for cups in plan.salt_cups],
        "vessel_needed_l": round(plan.vessel_needed_l, 2),
        "fits": plan.fits,
        "concentrate_water_l": round(plan.concentrate_water_l, 2),
        "ice_kg": round(plan.ice_kg, 2),
        "full_weight_kg": round(plan.full_weight_kg, 1),
        "finished_salt_percent": plan.finished_salt_percent.document(),
    }
