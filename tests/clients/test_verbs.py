"""The verbs of the command line: the same JSON as their routes, text for a reader, one line for what cannot be met."""

import io
import json
import os
import subprocess
import sys
from contextlib import redirect_stderr, redirect_stdout
from pathlib import Path
from typing import Any
from unittest.mock import patch

import httpx
import pytest

from turnspit_cli import main

RECIPE = "Herb butter\nServes 4\n\nIngredients\n1 cup butter\n1 tbsp dried thyme\n\nMethod\n1. Mix.\n"


def turnspit(*args: str, stdin: str = "", **environment: str) -> subprocess.CompletedProcess[str]:
    """The command as a shell runs it, in this process: test_cli.py tries it in one of its own."""
    out, err, code = io.StringIO(), io.StringIO(), 0
    with (
        patch.object(sys, "argv", ["turnspit", *args]),
        patch.object(sys, "stdin", io.StringIO(stdin)),
        patch.dict(os.environ, {"TZ": "America/New_York", "NO_COLOR": "1", **environment}),
        redirect_stdout(out),
        redirect_stderr(err),
    ):
        try:
            main()
        except SystemExit as left:
            code = left.code if isinstance(left.code, int) else 0
    return subprocess.CompletedProcess(args, code, out.getvalue(), err.getvalue())


def printed(*args: str, **options: str) -> str:
    done = turnspit(*args, **options)
    assert (done.returncode, done.stderr) == (0, ""), done.stderr
    return done.stdout


def given(*args: str, **options: str) -> dict[str, Any]:
    document: dict[str, Any] = json.loads(printed(*args, "--json", **options))
    return document


@pytest.mark.parametrize(
    ("args", "path", "body"),
    [
        (("convert", "2 cups", "g", "--of", "table salt"), "/v1/convert",
         {"value": 2, "unit": "cups", "target_unit": "g", "item": "table salt"}),
        (("convert", "325 F", "C"), "/v1/convert", {"value": 325, "unit": "degF", "target_unit": "degC"}),
        (("size", "14", "--leftovers", "--children", "4"), "/v1/sizes",
         {"covers": 14, "children": 4, "leftovers": True}),
        (("recipe", "scale", "gravy", "--to", "40", "--units", "both"), "/v1/recipes/scale",
         {"recipe_id": "gravy", "servings": 40, "units": "both"}),
        (("recipe", "scale", "gravy", "--short", "700 g stock", "--rule-off", "thickener-last"), "/v1/recipes/scale",
         {"recipe_id": "gravy", "short": {"item": "stock", "value": 700, "unit": "g"},
          "rules_off": ["thickener-last"]}),
        (("check", "left_out", "--subject", "turkey", "--hours", "3", "--kitchen", "home"), "/v1/safety/checks",
         {"question": {"topic": "left_out", "subject": "turkey", "elapsed_h": 3}, "kitchen": "home"}),
    ],
)  # fmt: skip
def test_a_verb_prints_the_json_of_its_route(server: str, args: tuple[str, ...], path: str, body: Any) -> None:
    assert given(*args) == httpx.post(server + path, json=body).json()


def test_a_cooling_by_depth_by_pan_and_in_a_pot(server: str) -> None:
    told = printed("cool", "stock", "--depth", "6 in")
    assert told.startswith("STOP: ")
    assert "would make it there" in told
    part = {"food": "stock", "shape": "slab", "medium": "ice_bath", "medium_c": 0, "from_c": 70, "dims_mm": [50]}
    body = {"cooling": part}
    mine = given("cool", "stock", "--depth", "5 cm", "--place", "ice_bath")
    assert mine == httpx.post(f"{server}/v1/safety/checks", json=body).json()
    assert given("cool", "stock", "--amount", "3 L", "--container", "GN 1/1 65 mm")["grade"] in ("ok", "warn")
    assert given("cool", "stock", "--amount", "20 lb")["grade"] == "stop"


READINGS = "0 40\n60 100\n120 140\n130 160\n140 166\n150 166"


def test_what_readings_from_the_input_earn(server: str, tmp_path: Path) -> None:
    file = tmp_path / "readings.txt"
    file.write_text(READINGS, encoding="utf-8")
    options = ("--degrees", "F", "--mass", "16 lb", "--lowest-oven", "325 F", "--kitchen", "home")
    mine = given("lethality", str(file), *options)
    assert mine == given("lethality", "-", *options, stdin=READINGS)
    readings = [line.split() for line in READINGS.splitlines()]
    part = {
        "readings": [{"minute": float(at), "temperature_c": (float(f) - 32) / 1.8} for at, f in readings],
        "mass_kg": 16 * 0.45359237,
        "lowest_oven_c": (325 - 32) / 1.8,
    }
    assert mine == httpx.post(f"{server}/v1/safety/checks", json={"lethality": part, "kitchen": "home"}).json()
    assert mine["lethality"]["met"]
    told = printed("lethality", "-", *options, stdin=READINGS)
    assert "Credited" in told
    assert "the instant temperature decides" in told
    cold = printed("lethality", "-", "--degrees", "F", stdin="0 40\n60 90")
    assert "proves nothing yet" in cold


def test_the_frame_is_spanish_where_spanish_is_asked_for(tmp_path: Path) -> None:
    assert printed("check", "left_out", "--hours", "9", "--language", "es").startswith("ALTO: ")
    there = {"TURNSPIT_DATABASE_URL": f"sqlite:///{tmp_path / 'kept.db'}"}
    log_id = printed("log", "begin", "cooling", "caldo", **there).strip()
    printed("log", "add", log_id, "--who", "AB", "--temperature", "58 C", **there)
    printed("log", "add", log_id, "--who", "AB", "--temperature", "57 C", "--corrects", "1", **there)
    told = printed("log", "add", log_id, "--who", "AB", "--action", "discarded", "--language", "es", **there)
    assert told.startswith("enfriamiento: caldo: TIRADO")
    assert "(sustituida)" in told
    assert "tirado" in told.splitlines()[3]
    assert "enfriamiento  caldo  TIRADO" in printed("log", "list", "--language", "es", **there)


def test_a_brine_from_pounds_and_gallons(server: str) -> None:
    mine = given("brine", "18 lb", "--vessel", "5 gal", "--method", "equilibrium")
    body = {"mass_kg": 18 * 0.45359237, "vessel_l": 5 * 3.785411784, "method": "equilibrium"}
    assert mine == httpx.post(f"{server}/v1/brines", json=body).json()


def test_a_recipe_from_a_file_from_the_input_and_by_its_key(tmp_path: Path) -> None:
    file = tmp_path / "butter.txt"
    file.write_text(RECIPE, encoding="utf-8")
    assert "2 cups butter" in printed("recipe", "scale", str(file), "--to", "8")
    assert "2 cups butter" in printed("recipe", "scale", "-", "--factor", "2", stdin=RECIPE)
    ld = printed("recipe", "show", str(file), "--json")
    assert json.loads(ld)["@type"] == "Recipe"
    assert printed("recipe", "show", "-", stdin=ld).splitlines()[0] == "Herb butter"
    assert "20 lb" in printed("recipe", "scale", "roast-turkey", "--roast", "20 lb")


def test_a_check_that_stops_says_so_first() -> None:
    assert printed("check", "left_out", "--hours", "9").startswith("STOP: ")
    log = {"log": {"kind": "cooling", "item": "stock", "entries": []}}
    assert given("check", "-", stdin=json.dumps(log))["grade"] == "warn"


@pytest.mark.parametrize(
    ("args", "told"),
    [
        (("convert", "2 furlongs", "g"), "turnspit: unit furlongs is not known"),
        (("convert", "many", "g"), "turnspit: amount many is not an amount"),
        (("convert", "2 cups", "g"), "turnspit: "),
        (("brine", "18"), "turnspit: mass 18 has no unit"),
        (("brine", "18 gal"), "turnspit: "),
        (("brine", "18 lb", "--method", "equilibrium", "--target", "40"), "turnspit: target_percent 40"),
        (("size", "0"), "turnspit: covers 0 is below 1"),
        (("size", "some"), "covers"),
        (("size", "14", "--kind", "mammoth"), "turnspit: kind mammoth is not known"),
        (("recipe", "scale", "gravy"), "turnspit: target (none)"),
        (("recipe", "scale", "gravy", "--to", "0"), "turnspit: servings 0 is not above zero"),
        (("recipe", "scale", "gravy", "--to", "nan"), "turnspit: servings nan"),
        (("recipe", "scale", "/nowhere/at/all", "--to", "4"), "turnspit: recipe /nowhere/at/all cannot be read"),
        (("recipe", "scale", "/", "--to", "4"), "turnspit: recipe / cannot be read"),
        (("recipe", "show", "-"), "turnspit: recipe (empty)"),
        (("check", "sunshine"), "turnspit: question.topic sunshine"),
        (("check", "reading", "--temperature", "60"), "turnspit: temperature 60 is no temperature"),
        (("check", "-"), "turnspit: request"),
        (("check", "thermometer", "--altitude", "5000"), "turnspit: length 5000 has no unit"),
        (("cool", "stock"), "turnspit: depth (none)"),
        (("cool", "stock", "--depth", "2"), "turnspit: length 2 has no unit"),
        (("cool", "stock", "--amount", "9 L", "--container", "GN 1/1 65 mm"), "use 2 of them"),
        (("cool", "stock", "--amount", "9 L", "--container", "trough"), "turnspit: pan trough is not known"),
        (("lethality", "/nowhere/at/all"), "turnspit: readings /nowhere/at/all cannot be read"),
        (("lethality", "-"), "turnspit: readings"),
        (("size", "14", "--largest", "16"), "turnspit: mass 16 has no unit"),
        (("log", "add", "none", "--who", "AB", "--note", "x"), "turnspit: log none is not kept here"),
        (("log", "show", "none"), "turnspit: log none is not kept here"),
        (("log", "list", "--server", "http://127.0.0.1:1"), "turnspit: no answer from"),
        (("log", "begin", "baking", "bread"), "baking"),
    ],
)
def test_what_cannot_be_met_is_one_line_and_exit_code_2(args: tuple[str, ...], told: str, tmp_path: Path) -> None:
    done = turnspit(*args, TURNSPIT_DATABASE_URL=f"sqlite:///{tmp_path / 'kept.db'}")
    assert done.returncode == 2, done.stdout
    assert told in done.stderr
    assert "Traceback" not in done.stderr
    assert done.stdout == ""


def test_a_log_is_kept_between_two_commands(tmp_path: Path) -> None:
    there = {"TURNSPIT_DATABASE_URL": f"sqlite:///{tmp_path / 'kept.db'}"}
    log_id = printed("log", "begin", "cooling", "stock", "--kitchen", "licensed", **there).strip()
    told = printed("log", "add", log_id, "--who", "AB", "--temperature", "136.4 F", **there)
    assert "136 F (58.0 C)" in told
    assert printed("log", "show", log_id, "--csv", **there).splitlines()[1].startswith("cooling,stock,1,")
    assert log_id in printed("log", "list", **there)
    closed = printed("log", "add", log_id, "--who", "AB", "--action", "discarded", **there)
    assert closed.startswith("cooling: stock: THROWN AWAY")
    assert "thrown away" in closed


def test_a_log_over_a_running_service_is_the_same(server: str) -> None:
    log_id = printed("log", "begin", "cooling", "stock", "--server", server).strip()
    entry = ("--who", "AB", "--temperature", "58 C", "--server", server)
    assert given("log", "add", log_id, *entry) == httpx.get(f"{server}/v1/logs/{log_id}").json()
    assert log_id in printed("log", "list", "--server", server)


def test_a_database_that_is_shut_is_told_in_one_line() -> None:
    done = turnspit("log", "list", TURNSPIT_DATABASE_URL="sqlite:////nowhere/at/all.db")
    assert done.returncode == 2
    assert done.stderr.startswith("turnspit: the database")
