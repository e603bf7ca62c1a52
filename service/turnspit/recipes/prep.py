"""A prep list by day and by station, and the equipment that a dinner needs at the same time."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType

from turnspit.recipes.recipe import Recipe, Step
from turnspit.reference import table

UNTIMED_MIN = 10.0
"""What a step takes that names no time (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class PrepTask:
    """One step of one recipe; `from_min` and `to_min` are minutes before the end of its day, at the longest."""

    recipe: str
    number: int
    step: Step
    station: str
    from_min: float
    to_min: float


@dataclass(frozen=True, slots=True)
class PrepDay:
    """What is done on one day, `days_before` the dinner, by station; a station's tasks start with the earliest."""

    days_before: int
    stations: Mapping[str, tuple[PrepTask, ...]]

    @property
    def busy_min(self) -> float:
        """Minutes of all tasks of the day together, waiting included."""
        return sum(task.from_min - task.to_min for tasks in self.stations.values() for task in tasks)


@dataclass(frozen=True, slots=True)
class EquipmentNeed:
    """How many of one thing are in use at once on the day, by which recipes, when first (minutes before serving)."""

    equipment: str
    count: int
    recipes: tuple[str, ...]
    from_min: float
    to_min: float


def prep_list(recipes: Sequence[Recipe]) -> tuple[PrepDay, ...]:
    """The steps of all `recipes`, the earliest day first. Every step stands in exactly one place."""
    tasks = [(task.step.days_before, task) for recipe in recipes for task in _tasks(recipe)]
    days = sorted({day for day, _ in tasks}, reverse=True)
    return tuple(PrepDay(day, _by_station([task for on, task in tasks if on == day])) for day in days)


def equipment_at_once(recipes: Sequence[Recipe], days_before: int = 0) -> tuple[EquipmentNeed, ...]:
    """For each thing the recipes use that day, how many at the busiest moment, most wanted first.

    Each recipe's steps follow one another and all dishes are ready together: what a timetable staggers may need
    fewer. `oven` counts dishes in an oven, not ovens.
    """
    spans: dict[str, list[tuple[PrepTask, str]]] = {}
    for recipe in recipes:
        for task in _tasks(recipe):
            if task.step.days_before == days_before:
                for thing in dict.fromkeys(task.step.equipment):
                    spans.setdefault(thing, []).append((task, recipe.name))
    needs = [_busiest(thing, tasks) for thing, tasks in spans.items()]
    return tuple(sorted(needs, key=lambda need: (-need.count, need.equipment)))


def station_of(step: Step) -> str:
    """Where a step is done: its own station, or the first of the table whose words stand in it; else the board."""
    if step.station:
        return step.station
    for text in (" ".join(step.equipment), step.text):
        words = set(re.findall(r"[^\W\d_]+", text.casefold()))
        for row in table("stations"):
            if words & set(row["words"]):
                return str(row["station"])
    return "board"


def _tasks(recipe: Recipe) -> list[PrepTask]:
    """The steps with their times, laid backward from serving within each day."""
    tasks: list[PrepTask] = []
    ends: dict[int, float] = {}
    for number in range(len(recipe.steps), 0, -1):
        step = recipe.steps[number - 1]
        end = ends.get(step.days_before, 0.0)
        start = end + (step.minutes[1] if step.minutes else UNTIMED_MIN)
        ends[step.days_before] = start
        tasks.append(PrepTask(recipe.name, number, step, station_of(step), start, end))
    return tasks[::-1]


def _by_station(tasks: list[PrepTask]) -> Mapping[str, tuple[PrepTask, ...]]:
    stations = dict.fromkeys(str(row["station"]) for row in table("stations"))
    return MappingProxyType(
        {
            name: tuple(sorted((t for t in tasks if t.station == name), key=lambda t: -t.from_min))
            for name in dict.fromkeys((*stations, *(task.station for task in tasks)))
            if any(task.station == name for task in tasks)
        }
    )


def _busiest(thing: str, tasks: list[tuple[PrepTask, str]]) -> EquipmentNeed:
    """The moment with the most recipes at it; a recipe that uses it in two steps in a row counts once."""
    best: tuple[tuple[str, ...], float] = ((), 0.0)
    for moment in sorted({task.from_min for task, _ in tasks}, reverse=True):
        users = tuple(dict.fromkeys(name for task, name in tasks if task.to_min < moment <= task.from_min))
        if len(users) > len(best[0]):
            best = (users, moment)
    users, moment = best
    until = max(task.to_min for task, name in tasks if name in users and task.to_min < moment <= task.from_min)
    return EquipmentNeed(thing, len(users), users, moment, until)
