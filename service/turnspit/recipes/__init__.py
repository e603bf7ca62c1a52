"""Recipes as values: read, scaled and written; sizes, portions and lists for a dinner."""

from turnspit.recipes.carving import Carved, carved
from turnspit.recipes.portions import Flock, Side, SizeCase, Sizing, size_roast
from turnspit.recipes.recipe import Ingredient, Recipe, Step, Yield

__all__ = [
    "Carved",
    "Flock",
    "Ingredient",
    "Recipe",
    "Side",
    "SizeCase",
    "Sizing",
    "Step",
    "Yield",
    "carved",
    "size_roast",
]
