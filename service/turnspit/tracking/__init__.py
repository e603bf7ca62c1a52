"""A live roast: readings in, what is left of the time out."""

from turnspit.tracking.placing import Placed, place_reading

__all__ = ["Placed", "place_reading"]
