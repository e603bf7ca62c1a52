"""A store in memory."""

from collections.abc import Iterator

import pytest

from turnspit.storage import Store, open_store


@pytest.fixture
def store() -> Iterator[Store]:
    opened = open_store("sqlite://")
    yield opened
    opened.close()
