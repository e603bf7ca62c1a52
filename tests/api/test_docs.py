"""docs/api.md cannot lie: its examples are run, its routes and settings are those there are."""

import json
import re
from pathlib import Path
from typing import Any

import pytest

from turnspit.api import Settings

PAGE = (Path(__file__).parents[2] / "docs" / "api.md").read_text(encoding="utf-8")
EXAMPLE = re.compile(
    r"```http\n(?P<method>[A-Z]+) (?P<path>\S+)\n\n(?P<body>.*?)```\n```json\n(?P<reply>.*?)```", re.S
)
EXAMPLES = [match.groupdict() for match in EXAMPLE.finditer(PAGE)]
ANYTHING = "…"


def holds(shown: Any, given: Any) -> bool:
    """Whether what is shown stands in what is given: fields may be left out, lists shown by their beginning."""
    if shown == ANYTHING:
        return True
    if isinstance(shown, dict):
        return isinstance(given, dict) and all(key in given and holds(shown[key], given[key]) for key in shown)
    if isinstance(shown, list):
        return len(given) >= len(shown) and all(holds(one, other) for one, other in zip(shown, given, strict=False))
    return bool(shown == given)


def test_there_are_examples() -> None:
    assert len(EXAMPLES) == PAGE.count("```http")
    assert len(EXAMPLES) >= 8


@pytest.mark.parametrize("example", EXAMPLES, ids=[one["path"] for one in EXAMPLES])
def test_every_example_gives_what_it_shows(api: Any, example: dict[str, str]) -> None:
    response = api.send(example["method"], example["path"], json=json.loads(example["body"]))
    shown = json.loads(example["reply"])
    assert holds(shown, response.json()), response.text[:2000]


def test_every_route_is_listed_and_no_other(api: Any) -> None:
    paths = api.get("/openapi.json").json()["paths"]
    there_are = {(method.upper(), path) for path, methods in paths.items() for method in methods}
    listed = set(re.findall(r"^\| `([A-Z]+) (\S+)` \|", PAGE, re.M))
    assert listed == there_are


def test_every_setting_is_listed_with_its_meaning() -> None:
    rows = dict(re.findall(r"^\| `TURNSPIT_([A-Z_]+)` \| [^|]*\| ([^|]+) \|$", PAGE, re.M))
    assert rows == {name.upper(): field.description for name, field in Settings.model_fields.items()}


def test_every_kind_of_problem_is_listed() -> None:
    from turnspit import errors
    from turnspit.api.problems import NotKept

    kinds = {kind.slug for kind in (errors.Impossible, errors.OutOfRange, errors.Unknown, NotKept)}
    listed = set(re.findall(r"^\| `urn:turnspit:problem:([a-z-]+)` \|", PAGE, re.M))
    assert kinds | {"malformed", "too-large", "fault"} == listed
