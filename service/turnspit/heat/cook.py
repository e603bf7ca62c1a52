"""One roast cooked by every member at once: in the oven until it is well past done, then pulled and rested."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from turnspit.errors import Impossible
from turnspit.heat.cases import RestPlace, RoastCase
from turnspit.heat.ensemble import Members
from turnspit.heat.material import Floats
from turnspit.heat.oven import OFF_BELOW_C, stretches
from turnspit.heat.preparation import SAME_TIME, Surroundings, prepare, resting
from turnspit.heat.roasts import RoastRow, Station
from turnspit.heat.solver import Body, State, Surface, core_c, graded_times, march

Columns = NDArray[np.intp]

LONGEST_S = 40 * 3600.0
NEVER_SHARE = 1 / 12
"""Roasts of an ensemble that may fail to arrive: under one in ten, so that the 90th percentile is one that does."""
CARRIED_ON_K, CARRIED_ON_TIME = 6.0, 1.2
"""How far past the target the oven run goes, whichever comes first, so that a late reading finds a place on it."""
DIFFUSIVITY_M2_S = 1.25e-7
OVEN_STEP, REST_STEP = 0.055, 0.036
"""Longest step as a share of the time heat needs to get in: R^2 over the diffusivity, by the number of sides it comes
from (preparation.SAME_TIME). tests/benchmarks/heat_grid.py tells what that costs in accuracy."""
STEPS_S = 20.0, 650.0
FIRST_SHARE, GROWTH, FOLLOWING = 0.05, 2.0, 1.35
"""The first step as a share of the longest, and what each is of the one before: in steady air, and in an oven that
warms or cools, which short steps must follow."""


@dataclass(frozen=True, slots=True)
class Cook:
    """A roast in the oven, run until every place of every member is well past the target.

    Columns go station by station, each with all members. `core_c` is (steps, stations, members), held at the boiling
    point: moist meat gets no hotter.
    """

    places: tuple[Station, ...]
    members: int
    body: Body
    around: Surroundings
    rest_place: RestPlace
    last_set_c: float
    times_s: Floats
    core_c: Floats
    states: tuple[State, ...]

    @property
    def started_c(self) -> float:
        """The warmest any place was before the oven."""
        return float(self.core_c[0].max())

    def reached_s(self, temperature_c: float) -> Floats:
        """When each station of each member first reads `temperature_c`, (stations, members); linear in a step.

        Raises Impossible when more than one roast in twelve never does; those few count as the end of the run.
        """
        columns = self.core_c.reshape(len(self.times_s), -1)
        above = columns >= temperature_c
        arrived = above.any(axis=0)  # not whether it is there at the end: an oven turned off lets it cool again
        never = 1.0 - float(arrived.reshape(len(self.places), -1).all(axis=0).mean())
        if never > NEVER_SHARE:
            off = self.last_set_c < OFF_BELOW_C
            raise Impossible(
                "oven",
                "turned off" if off else f"at {self.last_set_c:g} C",
                f"leaves {never:.0%} of such roasts under {temperature_c:g} C after {self.times_s[-1] / 3600:.0f} h",
                "leave it on longer" if off else "set it hotter, or wrap the roast once its surface is brown",
            )
        step = np.where(arrived, np.maximum(above.argmax(axis=0), 1), len(self.times_s) - 1)
        every = np.arange(columns.shape[1])
        low, high = columns[step - 1, every], columns[step, every]
        share = np.clip((temperature_c - low) / np.where(high > low, high - low, 1.0), 0.0, 1.0)
        found = self.times_s[step - 1] + share * (self.times_s[step] - self.times_s[step - 1])
        return np.asarray(found.reshape(len(self.places), self.members))

    def at(self, times_s: Floats, columns: Columns) -> State:
        """The states of `columns`, each at its own one of `times_s`."""
        step = np.clip(np.searchsorted(self.times_s, times_s), 1, len(self.times_s) - 1)
        before = self.times_s[step - 1]
        share = np.clip((times_s - before) / (self.times_s[step] - before), 0.0, 1.0)
        gathered = [np.empty((len(values), len(columns))) for values in self.states[0]]
        order = np.argsort(step, kind="stable")
        for group in np.split(order, np.flatnonzero(np.diff(step[order])) + 1):
            early, late = self.states[step[group[0]] - 1], self.states[step[group[0]]]
            for values, first, second in zip(gathered, early, late, strict=True):
                begin, end = first[..., columns[group]], second[..., columns[group]]
                values[..., group] = begin + share[group] * (end - begin)
        return State(*gathered)

    def rest(
        self, start: State, columns: Columns, rest_min: float, longest: float = REST_STEP
    ) -> tuple[Floats, Floats, State]:
        """The rest in the room of `columns` from `start` on: seconds, core temperatures (times, columns), the end."""
        resting = self.body.part(columns)
        times_s = _times(resting, longest, rest_min * 60.0)
        room, boils_c = self.around.columns(columns).room(self.rest_place), self.around.boiling_c
        history = march(resting, start, room, times_s, boils_c=boils_c)
        return history.times_s, np.minimum(history.core_c, boils_c), history.end


def cook(case: RoastCase, row: RoastRow, members: Members, past_c: float) -> Cook:
    """Run the oven until every place of every member reads `past_c` and a little more."""
    places = row.places(case.stuffed)
    body, start, around = prepare(case, row, places, members)
    run = _Run(body, past_c, start, around.boiling_c)
    every = stretches(case)
    for stretch, following in zip(every, [*every[1:], None], strict=True):
        end_s = min(following.start_s, LONGEST_S) if following else LONGEST_S
        run.until(end_s, around.oven(stretch), GROWTH if stretch.steady else FOLLOWING)
    core_c = np.minimum(np.concatenate(run.cores), around.boiling_c)
    return Cook(
        places=places,
        members=members.count,
        body=body,
        around=around,
        rest_place=resting(case, row),
        last_set_c=every[-1].set_c,
        times_s=np.concatenate(run.times),
        core_c=core_c.reshape(len(core_c), len(places), members.count),
        states=tuple(run.states),
    )


class _Run:
    """The marches of one roast, joined: a new one at every change of the oven."""

    def __init__(self, body: Body, past_c: float, start: State, boils_c: float) -> None:
        self.body, self.past_c, self.boils_c = body, past_c, boils_c
        self.past_s: float | None = None
        self.times: list[Floats] = [np.zeros(1)]
        self.cores: list[Floats] = [core_c(body.temperature_c(start))[None]]
        self.states: list[State] = [start]

    def until(self, end_s: float, surface: Surface, growth: float) -> None:
        """March to `end_s` in steps that grow by `growth`, or until all is past enough."""
        begin_s = float(self.times[-1][-1])
        if begin_s >= end_s or self._enough(begin_s, self.cores[-1][-1]):
            return
        times_s = begin_s + _times(self.body, OVEN_STEP, end_s - begin_s, growth)
        times_s[-1] = end_s
        history = march(
            self.body,
            self.states[-1],
            surface,
            times_s,
            boils_c=self.boils_c,
            keep_states=True,
            stop=self._enough,
        )
        self.times.append(history.times_s[1:])
        self.cores.append(history.core_c[1:])
        self.states.extend(history.states[1:])

    def _enough(self, time_s: float, cores_c: Floats) -> bool:
        coldest_c = float(cores_c.min())
        if coldest_c > self.past_c and self.past_s is None:
            self.past_s = time_s
        late = self.past_s is not None and time_s > CARRIED_ON_TIME * self.past_s
        return late or coldest_c > self.past_c + CARRIED_ON_K


def _times(body: Body, share: float, duration_s: float, growth: float = GROWTH) -> Floats:
    """Times as fine as the middling column of `body` needs."""
    lengths_m = np.sort(body.radius_m / (1.0 + body.exponent) ** SAME_TIME)
    longest_s = share * float(lengths_m[len(lengths_m) // 2]) ** 2 / DIFFUSIVITY_M2_S
    longest_s = min(max(longest_s, STEPS_S[0]), STEPS_S[1])
    return graded_times(duration_s, FIRST_SHARE * longest_s, longest_s, growth)
