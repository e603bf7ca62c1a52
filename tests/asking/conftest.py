"""What the tests of the answers share: an intent asked, its answer told, the rules it cites."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking.answers import Answer, Enquiry, answer_to
from turnspit.words import Reader, say

NOW = datetime(2026, 11, 25, 9, tzinfo=ZoneInfo("America/New_York"))
US = Reader(NOW)


@pytest.fixture
def asked():
    def ask(intent, understood=None, text="", reader=US, kitchen=None) -> Answer:
        return answer_to(intent, Enquiry(understood or {}, reader, NOW, kitchen, text))

    return ask


@pytest.fixture
def told():
    def tell(answer: Answer, reader=US) -> str:
        return "\n".join(say(message, reader) for message in (answer.headline, *answer.lines))

    return tell


@pytest.fixture
def rules():
    def cited(answer: Answer) -> set[str]:
        return {caution.rule for caution in answer.cautions}

    return cited
