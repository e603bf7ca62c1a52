"""What an answer takes for granted where nothing was said, each with its path so that one reply corrects it."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from turnspit.asking.answers.answer import Enquiry
from turnspit.asking.answers.topics import topic_of
from turnspit.message import Caution, Message
from turnspit.reference import caution

if TYPE_CHECKING:
    from turnspit.heat import RoastCase, RoastForecast, RoastRow
    from turnspit.recipes import SizeCase

BY_SUBJECT = {"ham": "fresh_ham", "lamb": "lamb_leg", "beef": "beef_rib", "pork": "pork_loin", "veal": "veal_loin"}
"""The roast that a meat asked about stands for."""
USUAL_KIND, USUAL_PINK_KIND = "turkey", "beef_rib"
_PLACES_OF_A_BIRD = frozenset(("breast", "thigh", "wing", "stuffing"))
TOLERANCE_K = 0.3
"""165 F is 73.9 C: a reading or wish of 74 C and one of 165 F are the same."""


class Taken:
    """Reads values off an enquiry and notes each that had to be supposed."""

    def __init__(self, enquiry: Enquiry) -> None:
        self.enquiry = enquiry
        self.assumed: dict[str, Any] = {}
        self.told: list[Message] = []
        self.cautions: list[Caution] = []

    def value(self, path: str, usual: Any, told: Message | None = None) -> Any:
        """What was said at `path`, else `usual`, noted (and said with `told`)."""
        said = self.enquiry.said(path)
        if said is not None:
            return said
        self.assumed[path] = usual
        if told is not None:
            self.told.append(told)
        return usual

    @property
    def assumptions(self) -> tuple[Message, ...]:
        """The sentences, in the order in which they were needed."""
        return tuple(self.told)


def usual_kind(enquiry: Enquiry) -> str:
    """The roast to suppose: a turkey, or a rib roast where it is wished pinker than a bird may be and no place of a
    bird is spoken of."""
    from turnspit.heat import roast

    if enquiry.likely_kind:
        return enquiry.likely_kind
    if enquiry.said("subject") in BY_SUBJECT:
        return BY_SUBJECT[enquiry.said("subject")]
    wished_c = enquiry.said("roast.target_c")
    probed = [enquiry.said("reading.place"), *(one.get("place") for one in enquiry.said("readings") or ())]
    if enquiry.said("roast.stuffed") or any(place in _PLACES_OF_A_BIRD for place in probed):
        return USUAL_KIND
    pink = wished_c is not None and wished_c < roast(USUAL_KIND).safe_c - TOLERANCE_K
    return USUAL_PINK_KIND if pink else USUAL_KIND


def kind_of(taken: Taken) -> str:
    """The kind of roast as it was named, else the usual one."""
    usual = usual_kind(taken.enquiry)
    key = "asking-taken-cut" if taken.enquiry.likely_kind else "asking-taken-kind"
    return cut_as_said(taken.enquiry, str(taken.value("roast.kind", usual, Message(key, roast=name_of(usual)))))


def cut_as_said(enquiry: Enquiry, kind: str) -> str:
    """The row of the heat room for a bird that is said to be cut flat or a shoulder of lamb, else the kind itself."""
    if kind == "lamb_leg" and topic_of(enquiry.text, "cut") == "shoulder":
        return "lamb_shoulder"
    return spatchcocked(kind) if topic_of(enquiry.text, "cut") == "spatchcock" else kind


def spatchcocked(kind: str) -> str:
    """The row of a bird with its backbone out, the kind itself where there is none."""
    from turnspit.heat import KINDS

    flat = f"{kind}_spatchcock"
    return flat if flat in KINDS else kind


def target_of(taken: Taken, row: RoastRow) -> float | None:
    """The wished end temperature; a bird's is never below the safe one, and that is said."""
    wished_c = taken.enquiry.said("roast.target_c")
    if wished_c is None or not row.poultry or wished_c >= row.safe_c - TOLERANCE_K:
        return None if wished_c is None else float(wished_c)
    taken.told.append(Message("asking-taken-bird-target", wished_c=wished_c, c=row.safe_c))
    taken.cautions.append(caution("poultry-165", "stop"))
    return None


def mass_of(taken: Taken, kind: str) -> float:
    """Kilograms of one piece: as said, else by the diners, else the usual size of its kind."""
    from turnspit.heat import roast

    covers = taken.enquiry.said("covers")
    if covers is not None and taken.enquiry.said("roast.mass_kg") is None:
        from turnspit.recipes import size_roast

        sizing = size_roast(size_case_of(taken.enquiry, kind, bool(taken.enquiry.said("leftovers_wanted"))))
        told = Message("asking-taken-mass-for-covers", kg=sizing.each_kg, covers=covers)
        return float(taken.value("roast.mass_kg", sizing.each_kg, told))
    usual_kg = roast(kind).usual_mass_kg
    told = Message("asking-taken-mass", kg=usual_kg, roast=name_of(kind))
    return float(taken.value("roast.mass_kg", usual_kg, told))


def size_case_of(enquiry: Enquiry, kind: str, leftovers: bool) -> SizeCase:
    """The diners as they were told, children and those who do not eat the roast apart."""
    from turnspit.heat import roast
    from turnspit.recipes import SizeCase

    return SizeCase(
        covers=enquiry.said("covers"),
        children=enquiry.children,
        non_eaters=enquiry.non_eaters,
        leftovers=leftovers,
        kind=roast(kind).bought_as,
        bone_in=enquiry.said("roast.bone_in"),
    )


def roast_case_of(taken: Taken) -> RoastCase:
    """The roast and its oven for the heat room. Raises what that room raises for values that cannot be."""
    from turnspit.heat import OvenStep, RoastCase, roast

    kind = kind_of(taken)
    row = roast(kind)
    mass_kg = mass_of(taken, kind)
    state = taken.value("roast.state", "thawed", Message("asking-taken-thawed"))
    stuffed = row.poultry and bool(taken.value("roast.stuffed", False, Message("asking-taken-unstuffed")))
    fan_said = taken.enquiry.said("oven.convection") is not None
    key = "asking-taken-oven" if fan_said else "asking-taken-oven-still"
    oven_c = float(taken.value("oven.temperature_c", row.usual_oven_c, Message(key, c=row.usual_oven_c)))
    convection = bool(taken.value("oven.convection", False))
    if not fan_said and "oven.temperature_c" not in taken.assumed:
        taken.told.append(Message("asking-taken-still"))
    return RoastCase(
        kind=kind,
        mass_kg=mass_kg,
        count=int(taken.enquiry.said("roast.count") or 1),
        state=state,
        stuffed=stuffed,
        bone_in=taken.enquiry.said("roast.bone_in"),
        oven=(OvenStep(0.0, oven_c, convection),),
        target_c=target_of(taken, row),
        altitude_m=float(taken.enquiry.said("altitude_m") or 0.0),
    )


def forecast_of(case: RoastCase) -> RoastForecast:
    """The forecast of the roast, pulled as it should be: birds at the target, meat so that its peak is the target."""
    from turnspit.heat import forecast_roast, roast

    forecast = forecast_roast(case)
    if roast(case.kind).poultry or forecast.advised_pull_c >= forecast.target_c:
        return forecast
    return forecast_roast(replace(case, pull_c=round(forecast.advised_pull_c, 1)))


def name_of(kind: str) -> Message:
    """The name of a roast as it stands in a sentence."""
    return Message(f"roast-{kind}")


def roast_phrase(kind: str, mass_kg: float, count: int = 1) -> Message:
    """ "16 lb turkey", "2 turkeys of 13 lb"."""
    if count > 1:
        return Message("asking-roasts", count=count, kg=mass_kg, roast=Message(f"roast-{kind}"))
    return Message("asking-roast", kg=mass_kg, roast=name_of(kind))
