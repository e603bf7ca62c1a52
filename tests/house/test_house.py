"""The shape of the house: what stands at the top, one door a room, short files, every page linked."""

import importlib
import re
import subprocess
from pathlib import Path

import pytest

TOP = Path(__file__).parents[2]
SERVICE = TOP / "service" / "turnspit"
ROOMS = sorted(path.parent.name for path in SERVICE.glob("*/__init__.py"))
LONGEST_FILE = 400


def tracked(*patterns: str) -> list[Path]:
    listed = subprocess.run(["git", "ls-files", *patterns], cwd=TOP, capture_output=True, text=True, check=True)
    return [TOP / line for line in listed.stdout.splitlines() if (TOP / line).exists()]


def test_nothing_else_stands_at_the_top():
    names = {path.relative_to(TOP).parts[0] for path in tracked()}
    visible = {name for name in names if not name.startswith(".")}
    assert visible == {
        "README.md",
        "DEVELOPERS.md",
        "LICENSE",
        "pyproject.toml",
        "service",
        "clients",
        "tests",
        "docs",
    }


@pytest.mark.parametrize("room", ROOMS)
def test_a_room_lists_what_others_may_import(room):
    module = importlib.import_module(f"turnspit.{room}")
    assert module.__doc__
    assert len(set(module.__all__)) == len(module.__all__)
    assert [name for name in module.__all__ if not hasattr(module, name)] == []


def test_files_stay_short_enough_to_read():
    long = {
        str(path.relative_to(TOP)): lines
        for path in tracked("*.py", "*.js", "*.css")
        if (lines := count(path)) > LONGEST_FILE
    }
    assert long == {}


def count(path: Path) -> int:
    return len(path.read_text(encoding="utf-8").splitlines())


def test_every_page_of_the_manual_is_linked_and_every_link_leads_somewhere():
    index = (TOP / "docs" / "README.md").read_text(encoding="utf-8")
    linked = set(re.findall(r"\]\(([\w.]+\.md)\)", index))
    pages = {path.name for path in (TOP / "docs").glob("*.md")} - {"README.md"}
    assert linked == pages


def test_each_dependency_has_its_reason():
    declared = re.findall(r'^    "([\w.-]+)>=', (TOP / "pyproject.toml").read_text(encoding="utf-8"), re.MULTILINE)
    page = (TOP / "docs" / "dependencies.md").read_text(encoding="utf-8").lower()
    assert [name for name in declared if name.lower().removeprefix("pytest-") not in page] == []
