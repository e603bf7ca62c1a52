"""For whom an answer is worded."""

from typing import Any

import pytest

from turnspit.api.readers import accepted


@pytest.mark.parametrize(
    ("header", "language", "region"),
    [
        ("", "en", ""),
        ("es", "es", ""),
        ("es-MX,es;q=0.9,en;q=0.8", "es", "MX"),
        ("en-GB", "en", "GB"),
        ("de-DE,de;q=0.9,es;q=0.4,en;q=0.3", "es", ""),
        ("en;q=0.2, es-419;q=0.7", "es", "419"),
        ("zh-Hant-TW", "en", ""),
        ("*", "en", ""),
        (";;;q=x,,es;q=nonsense", "en", ""),
    ],
)
def test_the_best_language_there_is(header: str, language: str, region: str) -> None:
    assert accepted(header) == (language, region)


def test_texts_follow_the_header_and_the_body_beats_it(api: Any) -> None:
    amount = {"value": 2, "unit": "cup", "item": "table salt", "target_unit": "g"}
    english = api.post("/v1/convert", amount).json()
    spanish = api.post("/v1/convert", amount, headers={"accept-language": "es-ES"}).json()
    said = api.post("/v1/convert", {**amount, "language": "en"}, headers={"accept-language": "es-ES"}).json()
    assert english["notes"]
    assert english["notes"] != spanish["notes"]
    assert said["notes"] == english["notes"]
