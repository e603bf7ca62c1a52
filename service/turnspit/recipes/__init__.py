"""Recipes as values: read, scaled and written; sizes, portions and lists for a dinner."""

from turnspit.recipes.recipe import Ingredient, Recipe, Step, Yield

__all__ = ["Ingredient", "Recipe", "Step", "Yield"]
