"""What was understood, as the dinner that the planning room takes; nothing is supposed here, planning does that."""

from __future__ import annotations

from typing import TYPE_CHECKING

from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.answers.taken import USUAL_KIND, cut_as_said, usual_kind
from turnspit.asking.answers.topics import topic_of

if TYPE_CHECKING:
    from turnspit.planning import Dinner


def dinner_of(enquiry: Enquiry) -> Dinner:
    """The dinner with only what was said; what was not stays None."""
    from turnspit.planning import BrineWish, Dinner, OvenWish, RoastWish

    said = enquiry.said
    injected = said("roast.injected")
    return Dinner(
        roast=RoastWish(
            kind=_kind(enquiry),
            mass_kg=said("roast.mass_kg"),
            count=said("roast.count"),
            state=said("roast.state"),
            stuffed=said("roast.stuffed"),
            bone_in=said("roast.bone_in"),
            sold_as=None if injected is None else "injected" if injected else "plain",
            target_c=said("roast.target_c"),
            in_house=bool(topic_of(enquiry.text, "in_house")),
        ),
        serve_at=enquiry.moment("serve_at"),
        start_at=enquiry.moment("start_at"),
        covers=said("covers"),
        children=enquiry.children,
        non_eaters=enquiry.non_eaters,
        leftovers_wanted=said("leftovers_wanted"),
        oven=OvenWish(said("oven.temperature_c"), said("oven.convection"), said("oven.count")),
        brine=BrineWish(
            wanted=_brine_wanted(enquiry),
            done=brined(enquiry),
            hours=said("brine.hours"),
            water_l=said("brine.water_l"),
            vessel_l=said("brine.vessel_l"),
            salt_kind=said("brine.salt_kind"),
        ),
        kitchen=enquiry.kitchen,
        at_risk=topic_of(enquiry.text, "safety_at_risk") == "at_risk",
        altitude_m=float(said("altitude_m") or 0.0),
    )


def _kind(enquiry: Enquiry) -> str | None:
    """The roast as said and cut, None where planning may take the usual one."""
    said = enquiry.said("roast.kind")
    kind = cut_as_said(enquiry, said or usual_kind(enquiry))
    return kind if said or kind != USUAL_KIND else None


def brined(enquiry: Enquiry) -> bool:
    """Whether the roast has been in its brine already."""
    spoken_of = enquiry.said("brine") or any(word in enquiry.text.casefold() for word in _OF_SALT)
    return bool(spoken_of and topic_of(enquiry.text, "brine_done"))


# "Is medium rare still ok" speaks of no brine.
_OF_SALT = ("brin", "salm", "salad")


def _brine_wanted(enquiry: Enquiry) -> bool | None:
    wanted = enquiry.said("brine.wanted")
    return wanted if wanted is not None else (True if enquiry.said("brine") else None)
