"""The examples of docs/quantities.md give what they say."""

import doctest
from pathlib import Path


def test_the_examples_run():
    page = Path(__file__).parents[2] / "docs" / "quantities.md"
    failed, tried = doctest.testfile(str(page), module_relative=False)
    assert tried
    assert not failed
