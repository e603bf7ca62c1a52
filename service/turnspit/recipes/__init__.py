"""Recipes as values: read, scaled and written; sizes, portions and lists for a dinner."""

from turnspit.recipes.allergens import AllergenFlag, allergens
from turnspit.recipes.carving import Carved, carved
from turnspit.recipes.flocks import FlockCooking, compare_flocks
from turnspit.recipes.ingredients import read_ingredient, read_ingredients
from turnspit.recipes.json_ld import write_json_ld
from turnspit.recipes.listed import (
    aisle_heading,
    bought_line,
    day_heading,
    equipment_line,
    order_line,
    station_heading,
)
from turnspit.recipes.menu import Menu, menu
from turnspit.recipes.order import OrderLine, OrderSheet, order_sheet
from turnspit.recipes.portions import Flock, Side, SizeCase, Sizing, size_roast
from turnspit.recipes.prep import EquipmentNeed, PrepDay, PrepTask, equipment_at_once, prep_list
from turnspit.recipes.reading import read_recipe
from turnspit.recipes.recipe import Ingredient, Recipe, Step, Yield
from turnspit.recipes.regions import RegionFound, infer_region
from turnspit.recipes.scaling import ScaledLine, ScaledRecipe, named_roast, scale_recipe, total_litres
from turnspit.recipes.scaling_rules import AppliedRule, scaling_rules
from turnspit.recipes.shopping import Bought, Need, ShoppingList, shopping_list
from turnspit.recipes.short import Shortage, shortage, shortage_in
from turnspit.recipes.spanish import in_language, spanish_food
from turnspit.recipes.starter import Starter, read_starter, starter_keys, starters
from turnspit.recipes.text import write_text
from turnspit.recipes.writing import write_ingredient, write_yield

__all__ = [
    "AllergenFlag",
    "AppliedRule",
    "Bought",
    "Carved",
    "EquipmentNeed",
    "Flock",
    "FlockCooking",
    "Ingredient",
    "Menu",
    "Need",
    "OrderLine",
    "OrderSheet",
    "PrepDay",
    "PrepTask",
    "Recipe",
    "RegionFound",
    "ScaledLine",
    "ScaledRecipe",
    "ShoppingList",
    "Shortage",
    "Side",
    "SizeCase",
    "Sizing",
    "Starter",
    "Step",
    "Yield",
    "aisle_heading",
    "allergens",
    "bought_line",
    "carved",
    "compare_flocks",
    "day_heading",
    "equipment_at_once",
    "equipment_line",
    "in_language",
    "infer_region",
    "menu",
    "named_roast",
    "order_line",
    "order_sheet",
    "prep_list",
    "read_ingredient",
    "read_ingredients",
    "read_recipe",
    "read_starter",
    "scale_recipe",
    "scaling_rules",
    "shopping_list",
    "shortage",
    "shortage_in",
    "size_roast",
    "spanish_food",
    "starter_keys",
    "starters",
    "station_heading",
    "total_litres",
    "write_ingredient",
    "write_json_ld",
    "write_text",
    "write_yield",
]
