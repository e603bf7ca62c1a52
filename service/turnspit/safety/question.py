"""One question about safety, as plain values: the asking room reads the words and fills it in."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, get_args

from turnspit.errors import OutOfRange

Topic = Literal[
    "left_out",  # it stood out of the cold for elapsed_h; place, ambient_c, state, temperature_c
    "standing_limit",  # how long may it stand; ambient_c
    "tempering",  # taken out of the cold before roasting, for elapsed_h
    "thawed_on_counter",  # elapsed_h
    "thaw_method",  # is this way of thawing safe: method, temperature_c of the water or the refrigerator, elapsed_h
    "thawed_keeps",  # raw, thawed or fresh, in the refrigerator for elapsed_h
    "stuffed_ahead",  # stuffed elapsed_h before roasting; bought_stuffed with state "frozen" for one sold so
    "from_frozen",  # roasting it frozen; stuffed, method "slow_cooker"
    "washed",  # the bird was washed, or should it be
    "pink",  # pink meat, juices or bones; temperature_c if it was measured
    "reading",  # temperature_c at place: is that safe to serve
    "target",  # a wished end temperature_c; without one: to what temperature
    "oven",  # oven_c (convection, elapsed_h "overnight"): hot enough
    "partial_cooking",  # part today, the rest another day
    "interrupted",  # the oven went off half way, elapsed_h ago; temperature_c reached
    "brine_temperature",  # temperature_c of the brine (or ambient_c of the place), elapsed_h
    "brine_injected",  # brining an injected, self-basted or kosher bird
    "brine_reuse",  # using brine or marinade again, or for gravy
    "refreeze",  # method by which it thawed, elapsed_h out of the cold
    "reheat",  # temperature_c aimed at, whole (not carved), method
    "warm_holding",  # kept warm at temperature_c for elapsed_h
    "cold_holding",  # refrigerator, cool box or buffet at temperature_c for elapsed_h
    "power_cut",  # the refrigerator without power for elapsed_h
    "cooling",  # cooked food cooling for elapsed_h and now at temperature_c
    "keeping",  # leftovers after elapsed_h in the refrigerator; without: how long do they keep
    "receiving",  # a delivery at temperature_c
    "cross_contact",  # raw juices on board, knife or food; cooked_after True when that food is cooked afterwards
    "giblets",  # giblets or their bag left in the bird; method "plastic" | "paper"
    "allergens",  # a guest with an allergy
    "frying",  # deep frying; state of the bird, temperature_c of the oil
    "charcoal",  # charcoal, wood or gas; place
    "glass",  # a glass or ceramic dish in the oven
    "at_risk",  # infants, pregnant, elderly, ill guests; temperature_c as in "target"
    "thermometer",  # is the probe right: temperature_c in method "ice" | "boiling", altitude_m
]
TOPICS: tuple[Topic, ...] = get_args(Topic)
State = Literal["raw", "cooked", "frozen", "part_frozen"]
Method = Literal[
    "refrigerator",
    "cold_water",
    "hot_water",
    "microwave",
    "counter",
    "oven",
    "slow_cooker",
    "plastic",
    "paper",
    "ice",
    "boiling",
]


@dataclass(frozen=True, slots=True)
class SafetyQuestion:
    """What was asked. None is "not said": it is taken at its less safe value, and the finding names it.

    `subject` is one word: a kind of roast (`turkey`, `beef_rib`), or bird, beef, veal, pork, lamb, ham, ground,
    stuffing, gravy, stock, brine, leftovers ... `place` is where it stood (`counter`, `outdoors`, `car`, `garage`,
    `refrigerator`) or where it was probed (`breast`, `thigh`, `wing`, `stuffing`, `centre`, `leftovers`).
    Temperatures in C (-60 to 130, oven up to 350, oil up to 260), times in hours (0 to 10 years). Raises OutOfRange.
    """

    topic: Topic
    subject: str = ""
    elapsed_h: float | None = None
    temperature_c: float | None = None
    ambient_c: float | None = None
    oven_c: float | None = None
    place: str = ""
    state: State | None = None
    method: Method | None = None
    mass_kg: float | None = None
    altitude_m: float | None = None
    stuffed: bool = False
    whole: bool = False
    convection: bool = False
    injected: bool = False
    cooked_after: bool | None = None
    held: bool = False  # temperature_c was measured the whole time, not only now
    bought_stuffed: bool = False  # sold stuffed and frozen, with a mark of inspection
    procedure: bool = False  # a written, approved procedure for time control or two-stage cooking is followed
    at_risk: bool = False

    def __post_init__(self) -> None:
        hottest = 260.0 if self.topic == "frying" else 130.0
        for name, low, high, way_out in (
            ("elapsed_h", 0.0, 87600.0, "give hours from 0 upward"),
            ("temperature_c", -60.0, hottest, "is that Fahrenheit?"),
            ("ambient_c", -60.0, 60.0, "is that Fahrenheit?"),
            ("oven_c", 0.0, 350.0, "is that Fahrenheit?"),
            ("mass_kg", 0.0, 200.0, "is that pounds?"),
            ("altitude_m", -450.0, 5500.0, "is that feet?"),
        ):
            value = getattr(self, name)
            if value is not None:
                OutOfRange.check(name, value, low, high, way_out)
