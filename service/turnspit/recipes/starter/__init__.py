"""A starter set of recipes of our own, as data: the Thursday roast at the Lock House.

The Lock House is invented: an old lock-keeper's house with one long table for fourteen, and a roast dinner every
Thursday. Each file tells what the recipe makes and how much is lost on the way, so that the yield can be checked.
"""

from turnspit.recipes.starter.read import Starter, read_starter, starter_keys, starters

__all__ = ["Starter", "read_starter", "starter_keys", "starters"]
