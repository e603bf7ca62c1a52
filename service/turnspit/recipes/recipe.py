"""A recipe as a value: what it makes, what goes in, what is done, and what could hurt someone with an allergy."""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction

from turnspit.errors import Impossible
from turnspit.message import Message
from turnspit.quantities import Amount, Region


@dataclass(frozen=True, slots=True)
class Ingredient:
    """One line of the list. `text` is the line as it stood; one that could not be read has `read` False and is whole.

    `amount` is None where none is given ("salt to taste"). `preparation` is what is done to it first, `notes` are
    remarks in brackets, `purpose` what it is for ("for greasing"), `extra` more of it ("plus more for dusting").
    `alternatives` may stand in its place; `section` is the part of the dish ("For the brine").
    """

    text: str
    item: str
    amount: Amount | None = None
    preparation: str = ""
    notes: tuple[str, ...] = ()
    optional: bool = False
    to_taste: bool = False
    purpose: str = ""
    extra: str = ""
    alternatives: tuple[Ingredient, ...] = ()
    section: str = ""
    read: bool = True

    @property
    def food(self) -> str:
        """The item with what is done to it, by which its measures are found ("carrot, grated")."""
        return f"{self.item}, {self.preparation}" if self.preparation else self.item

    def kilograms(self) -> float | None:
        """Its mass in kg, or None where no published measure leads there."""
        return self.amount.kilograms(self.food) if self.amount is not None else None

    def litres(self) -> float | None:
        """Its volume in L where it is given by volume, else None."""
        return self.amount.litres() if self.amount is not None else None


@dataclass(frozen=True, slots=True)
class Yield:
    """What a recipe makes: `count` (to `high`) of `unit`: "serving", or what it is counted in ("cup", "loaf")."""

    count: Fraction
    unit: str = "serving"
    high: Fraction | None = None
    text: str = field(default="", compare=False)

    def __post_init__(self) -> None:
        if self.count <= 0:
            raise Impossible(
                "yield", str(self.count), "is not above zero", "say how many it serves, or how much it makes"
            )

    @property
    def usual(self) -> Fraction:
        """The middle of a range, or the count."""
        return self.count if self.high is None else (self.count + self.high) / 2


@dataclass(frozen=True, slots=True)
class Step:
    """One step of the method, with the minutes, oven temperatures (C) and equipment that its text names.

    `station` and `days_before` say where and how early a kitchen does it; a text that says nothing leaves them empty.
    """

    text: str
    minutes: tuple[float, float] | None = None
    temperatures_c: tuple[float, ...] = ()
    equipment: tuple[str, ...] = ()
    section: str = ""
    station: str = ""
    days_before: int = 0


@dataclass(frozen=True, slots=True)
class Recipe:
    """A recipe. Times are minutes; `region` is whose cups and spoons it uses, `region_signs` what showed it.

    `kind` is a course or category, `source` where it was published; both may be empty. `passed_on` is what a
    published recipe says beside (author, picture, nutrition), each a name and its JSON, kept for the next export.
    """

    name: str
    makes: Yield | None
    ingredients: tuple[Ingredient, ...]
    steps: tuple[Step, ...] = ()
    region: Region | None = None
    region_signs: tuple[str, ...] = ()
    prep_min: float | None = None
    cook_min: float | None = None
    total_min: float | None = None
    description: str = ""
    kind: str = ""
    keywords: tuple[str, ...] = ()
    remarks: tuple[str, ...] = ()
    source: str = ""
    notes: tuple[Message, ...] = ()
    passed_on: tuple[tuple[str, str], ...] = ()

    @property
    def equipment(self) -> tuple[str, ...]:
        """All that its steps name, each once, in their order."""
        return tuple(dict.fromkeys(name for step in self.steps for name in step.equipment))

    @property
    def unread(self) -> tuple[Ingredient, ...]:
        """The lines that could not be read; they are kept whole and go through scaling unchanged."""
        return tuple(ingredient for ingredient in self.ingredients if not ingredient.read)
