"""Recipes as values: read, scaled and written; sizes, portions and lists for a dinner."""

from turnspit.recipes.allergens import AllergenFlag, allergen_caution, allergens
from turnspit.recipes.carving import Carved, carved
from turnspit.recipes.ingredients import read_ingredient
from turnspit.recipes.json_ld import write_json_ld
from turnspit.recipes.portions import Flock, Side, SizeCase, Sizing, size_roast
from turnspit.recipes.reading import read_recipe
from turnspit.recipes.recipe import Ingredient, Recipe, Step, Yield
from turnspit.recipes.regions import RegionFound, infer_region
from turnspit.recipes.text import write_text
from turnspit.recipes.writing import write_ingredient, write_yield

__all__ = [
    "AllergenFlag",
    "Carved",
    "Flock",
    "Ingredient",
    "Recipe",
    "RegionFound",
    "Side",
    "SizeCase",
    "Sizing",
    "Step",
    "Yield",
    "allergen_caution",
    "allergens",
    "carved",
    "infer_region",
    "read_ingredient",
    "read_recipe",
    "size_roast",
    "write_ingredient",
    "write_json_ld",
    "write_text",
    "write_yield",
]
