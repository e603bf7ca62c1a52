"""The examples of docs/recipes.md give what they say, and its table of rules is that of the code."""

import doctest
from pathlib import Path

from turnspit.recipes import scaling_rules

PAGE = Path(__file__).parents[2] / "docs" / "recipes.md"


def test_the_examples_run():
    failed, tried = doctest.testfile(str(PAGE), module_relative=False)
    assert tried
    assert not failed


def test_every_scaling_rule_is_in_the_manual():
    page = PAGE.read_text(encoding="utf-8")
    assert [name for name in scaling_rules() if f"| {name} |" not in page] == []
