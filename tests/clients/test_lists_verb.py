"""`turnspit lists`: every list of a dinner, as text and as the route's JSON."""

import json
from pathlib import Path

import pytest
from typer.testing import CliRunner

from turnspit.errors import Impossible
from turnspit_cli.commands import app


def run(*args: str) -> str:
    done = CliRunner().invoke(app, ["lists", *args], catch_exceptions=False)
    assert done.exit_code == 0, done.output
    return done.output


def test_all_lists_of_a_dinner_one_below_the_other():
    said = run("14", "--children", "3", "--serve-on", "2026-11-26", "--price", "potatoes=1.5")
    assert said.startswith("For 14 diners")
    for line in ("Fruit, vegetables and herbs", "russet potatoes: ", "The day before", "In use at once", "Orders"):
        assert line in said
    assert "→ 2026-11-21  turkey: 1 × " in said  # three days of work before it, and the 22nd is a Sunday


def test_a_dish_of_one_s_own_is_on_the_lists(tmp_path: Path):
    file = tmp_path / "butter.txt"
    file.write_text("Herb butter\nServes 4\n\nIngredients\n1 cup butter\n1 tbsp capers\n\nMethod\n1. Mix.\n")
    document = json.loads(run("8", "--side", "gravy", "--dish", str(file), "--json"))
    assert [dish["name"] for dish in document["dishes"]][-1] == "Herb butter"
    assert "capers" in json.dumps(document["shopping"])


def test_a_list_in_spanish():
    said = run("8", "--units", "metric", "--language", "es")
    assert "Fruta, verdura y hierbas" in said
    assert "papas harinosas: 1,5 kg" in said


@pytest.mark.parametrize("args", [("8", "--serve-on", "26/11"), ("8", "--price", "butter"), ("0",)])
def test_what_cannot_be_is_refused(args):
    with pytest.raises(Impossible):
        run(*args)
