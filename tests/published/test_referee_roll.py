"""One column against finite cylinders of meat that thaw or freeze: `referee/roll.py`, stored in `referee/rolls.toml`."""

import importlib.util
import sys
import tomllib
from functools import cache
from pathlib import Path

import numpy as np
import pytest

from turnspit.heat.properties import composition, material
from turnspit.heat.shapes import cylinder
from turnspit.heat.solver import Body, graded_times, march
from turnspit.heat.surface import Film

pytestmark = pytest.mark.slow

FOLDER = Path(__file__).parent / "referee"
STORED_H = {row["name"]: row["hours"] for row in tomllib.loads((FOLDER / "rolls.toml").read_text())["row"]}


@cache
def roll():
    spec = importlib.util.spec_from_file_location("referee_roll", FOLDER / "roll.py")
    module = importlib.util.module_from_spec(spec)
    sys.modules["referee_roll"] = module  # dataclasses look their module up by name
    spec.loader.exec_module(module)
    return module


@pytest.mark.parametrize("name", sorted(STORED_H))
def test_a_column_thaws_and_freezes_like_the_roll_within_5_percent(name):
    case = next(case for case in roll().CASES if case.name == name)
    meat = material(composition(roll().FOOD))
    column = cylinder(case.diameter_m, case.height_m, case.film / meat.conductivity)
    body = Body(np.array([column.radius_m]), np.array([column.exponent]), meat, cells=24)
    surface = Film(case.medium_c, case.film * column.area_factor)
    expected_s = STORED_H[name] * 3600
    history = march(body, body.state(case.start_c), surface, graded_times(1.6 * expected_s, 5.0, expected_s / 200))
    sense = 1 if case.medium_c > case.start_c else -1
    hours = np.interp(sense * case.end_c, sense * history.core_c[:, 0], history.times_s) / 3600
    assert hours == pytest.approx(STORED_H[name], rel=0.05)


def test_the_stored_hours_are_those_of_the_command_and_do_not_hang_on_the_grid():
    case = roll().CASES[3]
    assert roll().hours(case, cells=12) == pytest.approx(STORED_H[case.name], rel=0.02)
