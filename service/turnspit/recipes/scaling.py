"""A recipe for another number, another roast, another vessel, or for what there is of one ingredient."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from fractions import Fraction
from typing import cast

from turnspit.errors import Impossible, OutOfRange
from turnspit.message import Caution, Message
from turnspit.quantities import Amount, Pan, System, is_package, measured, unit, write_amount
from turnspit.recipes.allergens import AllergenFlag, allergens
from turnspit.recipes.inflection import in_number
from turnspit.recipes.items import ingredient_words
from turnspit.recipes.recipe import Ingredient, Recipe, Yield
from turnspit.recipes.scaling_rules import AppliedRule, apply_rules
from turnspit.recipes.short import positive, shortage_in
from turnspit.recipes.spanish import food_message
from turnspit.recipes.writing import write_ingredient
from turnspit.reference import caution

FACTORS = (0.01, 1000.0)
"""A recipe is scaled by no less and no more than this."""
MOST_PARTS = 1_000_000
"""A factor is taken as a fraction of at most so many parts."""
EGGS = frozenset(("egg", "eggs", "yolk", "yolks", "white", "whites", "huevo", "huevos", "yema", "yemas"))
TBSP_OF_JUICE = Fraction(3)
"""A lemon gives 48 g of juice (USDA SR28, NDB 09152), three tablespoons."""
FILL = 0.85
"""How full a vessel is filled: 85 percent of the brim for liquids (note of the table `pans`)."""


@dataclass(frozen=True, slots=True)
class ScaledLine:
    """One line: as the recipe has it, times the factor, and as it is to be measured after `rule` ("" for none)."""

    original: Ingredient
    linear: Ingredient
    ingredient: Ingredient
    rule: str = ""

    def text(self, system: System | None = None, language: str = "en") -> str:
        """The line with its amount as a cook would measure it, in the recipe's own system or the one asked for."""
        return write_ingredient(self.shown(system), system, language)

    def shown(self, system: System | None = None) -> Ingredient:
        """The line as it is written: eggs in their number, part of an egg with what it comes to."""
        return _in_its_number(_with_part_measured(self.ingredient, system), self.original)

    def linear_text(self, system: System | None = None, language: str = "en") -> str:
        """The amount without the rule."""
        amount = self.linear.amount
        return write_amount(amount, item=self.linear.item, system=system, language=language) if amount else ""


@dataclass(frozen=True, slots=True)
class ScaledRecipe:
    """The recipe scaled: `recipe` as it is to be made, `linear` times the factor exactly (scaling back returns it).

    `rules` are all that speak of this scaling, those turned off included; `by` tells what set the factor.
    """

    factor: Fraction
    by: Message
    recipe: Recipe
    linear: Recipe
    lines: tuple[ScaledLine, ...]
    rules: tuple[AppliedRule, ...] = ()
    allergens: tuple[AllergenFlag, ...] = ()
    cautions: tuple[Caution, ...] = ()
    notes: tuple[Message, ...] = field(default=())

    def shown(self, system: System | None = None) -> Recipe:
        """The recipe as it is to be made, its lines as they are written."""
        return replace(self.recipe, ingredients=tuple(line.shown(system) for line in self.lines))


def scale_recipe(
    recipe: Recipe,
    *,
    factor: float | Fraction | None = None,
    servings: float | Fraction | None = None,
    covers: int | None = None,
    roast_kg: float | None = None,
    vessel_l: float | None = None,
    pan_from: Pan | None = None,
    pan_to: Pan | None = None,
    short: tuple[str, float, str] | None = None,
    rules_off: Iterable[str] = (),
) -> ScaledRecipe:
    """The recipe times one factor, which exactly one of the targets sets.

    `factor`; `servings` or `covers` (a serving each); `roast_kg`, the mass of the roast that the recipe names;
    `vessel_l`, a vessel filled to 85 percent; `pan_from` and `pan_to`, by volume; `short`, the item of which there is
    only (item, value, unit). Raises Impossible for no or several targets, for nothing or less, and where the recipe
    lacks what the target needs; OutOfRange for a factor outside FACTORS; Unknown for a rule that is none.
    """
    targets = {
        "factor": factor,
        "servings": servings,
        "covers": covers,
        "roast_kg": roast_kg,
        "vessel_l": vessel_l,
        "pan_to": pan_to,
        "short": short,
    }
    given = {name: value for name, value in targets.items() if value is not None}
    if len(given) != 1:
        raise Impossible(
            "target", ", ".join(given) or "(none)", "is not one target", f"give one of {', '.join(targets)}"
        )
    (name, value), *_ = given.items()
    ratio, by = _ratio(recipe, name, value, pan_from)
    ratio = ratio.limit_denominator(MOST_PARTS)
    OutOfRange.check("factor", float(ratio), *FACTORS, "check the amounts, or scale in steps")
    whole = named_roast(recipe)[0] if name == "roast_kg" else None
    return _scaled(recipe, ratio, by, frozenset(rules_off), whole)


def total_litres(recipe: Recipe) -> float:
    """The volume of what goes in: litres as given, and masses at the density of water. Raises Impossible for none."""
    volumes = (one.litres() for one in recipe.ingredients)
    masses = (one.kilograms() for one in recipe.ingredients if one.litres() is None)
    total = sum(volume for volume in volumes if volume) + sum(mass for mass in masses if mass)
    if not total:
        raise Impossible("recipe", recipe.name, "has no amounts with a volume", "scale it by factor or servings")
    return total


def named_roast(recipe: Recipe) -> tuple[Ingredient, float]:
    """The heaviest ingredient that has a mass of at least half a kilogram and is a roast, with that mass in kg."""
    weighed = [(one, one.kilograms()) for one in recipe.ingredients if _is_roast(one)]
    found = max(((one, kg) for one, kg in weighed if kg and kg >= 0.5), key=lambda pair: pair[1], default=None)
    if found is None:
        raise Impossible(
            "roast_kg", recipe.name, "names no roast with its weight", "scale by factor, or add the roast's weight"
        )
    return found


def _is_roast(ingredient: Ingredient) -> bool:
    words = set(ingredient.item.casefold().replace(",", " ").split())
    return bool(words & ingredient_words("roast")) and not words & ingredient_words("no_roast")


def _ratio(recipe: Recipe, name: str, value: object, pan_from: Pan | None) -> tuple[Fraction, Message]:
    if isinstance(value, (int, float, Fraction)):
        number = positive(name, value)
        if name == "factor":
            return number, Message("recipes-by-factor", factor=float(number))
        if name in ("servings", "covers"):
            made = _servings_made(recipe)
            return number / made, Message("recipes-by-servings", made=float(made), wanted=float(number))
        if name == "roast_kg":
            roast, kg = named_roast(recipe)
            return number / Fraction(kg), Message(
                "recipes-by-roast", item=food_message(roast.item), from_kg=kg, to_kg=float(number)
            )
        holds = float(number) * FILL
        made_l = total_litres(recipe)
        return Fraction(holds / made_l), Message(
            "recipes-by-vessel", vessel_l=float(number), from_l=made_l, to_l=holds
        )
    if isinstance(value, Pan):
        return _by_pan(pan_from, value)
    shortage = shortage_in(recipe, *cast("tuple[str, float, str]", value))
    return shortage.factor, shortage.message()


def _by_pan(old: Pan | None, new: Pan) -> tuple[Fraction, Message]:
    """By volume; where the depth changes by more than a tenth, the time does too, and that is said."""
    if old is None:
        raise Impossible("pan_from", "(none)", "is not given", "say which pan the recipe is for")
    deeper = new.depth_m / old.depth_m
    key = "deeper" if deeper > 1.1 else "shallower" if deeper < 0.9 else ""
    message = Message(f"recipes-by-pan-{key}" if key else "recipes-by-pan", old=old.name, new=new.name)
    return Fraction(new.litres / old.litres), message


def _servings_made(recipe: Recipe) -> Fraction:
    if recipe.makes is None:
        raise Impossible("servings", recipe.name, "does not say how many it serves", "give its yield, or a factor")
    if recipe.makes.unit != "serving":
        raise Impossible(
            "servings",
            recipe.name,
            f"makes {float(recipe.makes.usual):g} {recipe.makes.unit}, not servings",
            "scale by factor, or say how many it serves",
        )
    return recipe.makes.usual


def _scaled(
    recipe: Recipe, factor: Fraction, by: Message, rules_off: frozenset[str], whole: Ingredient | None
) -> ScaledRecipe:
    """`whole` is the roast that stays one piece and only weighs more or less."""
    linear = tuple(_weighing(one, factor) if one is whole else _times(one, factor) for one in recipe.ingredients)
    measured, changed_by, rules = apply_rules(recipe, linear, factor, rules_off)
    makes = recipe.makes
    scaled_yield = None if makes is None else _yield_times(makes, factor)
    flags = allergens(recipe.ingredients)
    return ScaledRecipe(
        factor=factor,
        by=by,
        recipe=replace(recipe, ingredients=measured, makes=scaled_yield),
        linear=replace(recipe, ingredients=linear, makes=scaled_yield),
        lines=tuple(map(ScaledLine, recipe.ingredients, linear, measured, changed_by)),
        rules=rules,
        allergens=flags,
        cautions=(caution("allergens"),) if flags else (),
        notes=recipe.notes,
    )


def _with_part_measured(ingredient: Ingredient, system: System | None) -> Ingredient:
    """Part of an egg, of a tin or of a lemon's juice with what it comes to: "1 1/3 large eggs (67 g)"."""
    amount = ingredient.amount
    if amount is None or amount.equals or amount.high or amount.value.denominator == 1 or amount.value > 10:
        return ingredient
    egg = ingredient.item.casefold().rpartition(" ")[2] in EGGS and not amount.unit
    if amount.each is not None and amount.unit and is_package(amount.unit):
        comes_to = _in_system(amount.each.times(amount.value), system)
    elif egg:
        comes_to = _in_system(Amount(Fraction(round(1000 * (ingredient.kilograms() or 0), 1)), "g"), system)
    elif not amount.unit and ingredient.preparation in ("juice", "jugo", "zumo") and "lemon" in ingredient.item:
        comes_to = Amount(amount.value * TBSP_OF_JUICE, "tbsp")
    else:
        return ingredient
    return replace(ingredient, amount=replace(amount, equals=comes_to))


def _in_system(amount: Amount, system: System | None) -> Amount:
    """A mass in the units of the system, as it stands where none is asked for."""
    kg = amount.kilograms()
    if kg is None or system is None:
        return amount
    return Amount(Fraction(kg * 1000), "g") if system == "metric" else Amount(Fraction(kg / unit("oz").si), "oz")


def _in_its_number(ingredient: Ingredient, original: Ingredient) -> Ingredient:
    """Counted things in the plural where one became several, in the singular where several became one."""
    now, before = ingredient.amount, original.amount
    if now is None or before is None or now.unit:
        return ingredient
    many = measured(now.usual, "", ingredient.item).si > 1
    return (
        ingredient if many == (before.usual > 1) else replace(ingredient, item=in_number(ingredient.item, many=many))
    )


def _weighing(roast: Ingredient, factor: Fraction) -> Ingredient:
    """The same number of roasts, each so much heavier; a roast given by weight alone is simply heavier."""
    amount = roast.amount
    if amount is None or amount.unit or not (amount.each or amount.equals):
        return _times(roast, factor)
    each = amount.each.times(factor) if amount.each else None
    equals = amount.equals.times(factor) if amount.equals else None
    return replace(roast, amount=replace(amount, each=each, equals=equals))


def _times(ingredient: Ingredient, factor: Fraction) -> Ingredient:
    if ingredient.amount is None:
        return ingredient
    others = tuple(_times(one, factor) for one in ingredient.alternatives)
    return replace(ingredient, amount=ingredient.amount.times(factor), alternatives=others)


def _yield_times(makes: Yield, factor: Fraction) -> Yield:
    return replace(
        makes, count=makes.count * factor, text="", high=None if makes.high is None else makes.high * factor
    )
