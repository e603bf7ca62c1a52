"""Writes ingredient lines and yields so that they can be read back."""

from __future__ import annotations

from turnspit.quantities import Amount, System, is_package, is_size, write_amount, written_number, written_unit
from turnspit.recipes.ingredients import names_part_of_fruit
from turnspit.recipes.recipe import Ingredient, Yield
from turnspit.recipes.spanish import in_spanish

_WORDS = {
    "en": {
        "about": "about",
        "of": "of",
        "each": "each",
        "or": "or",
        "optional": "optional",
        "taste": "to taste",
        "plus": "plus more",
        "serves": "Serves",
    },
    "es": {
        "about": "unos",
        "of": "de",
        "each": "de cada uno:",
        "or": "o",
        "optional": "opcional",
        "taste": "al gusto",
        "plus": "y más",
        "serves": "Para",
    },
}


def write_ingredient(ingredient: Ingredient, system: System | None = None, language: str = "en") -> str:
    """One line: amount, item, preparation, brackets and what else was said. An unread line stands as it was."""
    if not ingredient.read:
        return ingredient.item
    words = _WORDS[language]
    food = ingredient.item
    if language == "es":
        ingredient = in_spanish(ingredient)
    amount = write_line_amount(ingredient.amount, food, system, language) if ingredient.amount else ""
    others = [f"{words['or']} {_alternative(one, ingredient, system, language)}" for one in ingredient.alternatives]
    joint = _joint(ingredient, words)
    head = " ".join(filter(None, (amount, joint, ingredient.item, *others)))
    part = names_part_of_fruit(ingredient.preparation) and amount and not others
    head = f"{ingredient.preparation} {words['of']} {head}" if part else head
    tail = (
        "" if part else ingredient.preparation,
        words["optional"] if ingredient.optional else "",
        words["taste"] if ingredient.to_taste else "",
        ingredient.purpose,
        _extra(ingredient.extra, words["plus"]),
    )
    weight = ingredient.amount.equals if ingredient.amount and not ingredient.amount.unit else None
    remarks = (*((_measure(weight, language),) if weight else ()), *ingredient.notes)
    notes = "".join(f" ({remark})" for remark in remarks)
    return ", ".join(filter(None, (f"{head}{notes}", *tail)))


def write_line_amount(amount: Amount, item: str, system: System | None = None, language: str = "en") -> str:
    """An amount with its size and what each piece holds, or its equivalent: "2 (400 g) tins", "2 cups (250 g)"."""
    number, unit = _split_unit(write_amount(amount, item=item, system=system, language=language), amount)
    each = f"({_each(amount, system, language)})" if amount.each else ""
    equals = f"({_measure(amount.equals, language)})" if amount.equals and amount.unit else ""
    about = _WORDS[language]["about"] if amount.approximate else ""
    return " ".join(filter(None, (about, number, amount.size, each, unit, equals)))


def _measure(amount: Amount, language: str, system: System | None = None) -> str:
    about = f"{_WORDS[language]['about']} " if amount.approximate else ""
    return f"{about}{write_amount(amount, system=system, language=language)}"


def _each(amount: Amount, system: System | None, language: str) -> str:
    """What each is: of a tin as its label says, of a bird rounded, in the system asked for."""
    assert amount.each is not None
    if amount.unit and is_package(amount.unit):
        return _as_printed(amount.each, language)
    return _measure(amount.each, language, system)


def _as_printed(amount: Amount, language: str) -> str:
    """What a tin or pack holds, as its label says it: never rounded."""
    ends = (amount.value,) if amount.high is None else (amount.value, amount.high)
    figures = "-".join(written_number(end, amount.unit, language) for end in ends)
    about = f"{_WORDS[language]['about']} " if amount.approximate else ""
    return f"{about}{figures} {written_unit(amount.unit, amount.value > 1, language)}"


def _joint(ingredient: Ingredient, words: dict[str, str]) -> str:
    """ "1 whole head of garlic", "1 oz each sage, thyme": the word without which these could not be read back."""
    amount = ingredient.amount
    if amount is None:
        return ""
    if ", " in ingredient.item:
        return words["each"]
    spanish = words is _WORDS["es"] and not ingredient.item.casefold().startswith("de ")
    described = bool(amount.size) and not is_size(amount.size)
    return words["of"] if amount.unit and (spanish or described) else ""


def write_yield(makes: Yield, language: str = "en") -> str:
    """ "Serves 6–8", "Makes 2 loaves"."""
    number = write_amount(Amount(makes.count, "", makes.high))
    if makes.unit == "serving":
        return f"{_WORDS[language]['serves']} {number}"
    return f"{'Makes' if language == 'en' else 'Rinde'} {number} {makes.unit}"


def _alternative(other: Ingredient, main: Ingredient, system: System | None, language: str) -> str:
    same = other.amount == main.amount or other.amount is None
    amount = "" if same or other.amount is None else write_line_amount(other.amount, other.item, system, language)
    return " ".join(filter(None, (amount, other.preparation, other.item)))


def _extra(extra: str, plus: str) -> str:
    if extra[:1].isdigit():
        return f"plus {extra}"
    return plus if extra == "more" else f"{plus} {extra}" if extra else ""


def _split_unit(text: str, amount: Amount) -> tuple[str, str]:
    """The number, and the unit (of two measures, all that follows) before which a size or a content is put."""
    if not (amount.size or amount.each) or not amount.unit:
        return text, ""
    first, plus, second = text.partition(" + ")
    number, _, unit = first.rpartition(" ")
    return number, f"{unit}{plus}{second}"
