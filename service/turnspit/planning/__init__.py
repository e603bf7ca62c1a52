"""A dinner in, a timetable out: backward from the serving time, by what heat, brine and the safety rules allow."""

from turnspit.planning.dinner import BrineWish, Dinner, Kitchen, OvenWish, RoastWish
from turnspit.planning.document import timetable_document
from turnspit.planning.plan import plan_dinner
from turnspit.planning.timetable import Place, Task, Timetable, Way, Window

__all__ = [
    "BrineWish",
    "Dinner",
    "Kitchen",
    "OvenWish",
    "Place",
    "RoastWish",
    "Task",
    "Timetable",
    "Way",
    "Window",
    "plan_dinner",
    "timetable_document",
]
