"""A licensed kitchen that goes by its local code: one setting of the operator."""

import pytest
from pydantic import ValidationError

from turnspit.api import Settings


def checked(client, core_c, **asked):
    question = {"topic": "warm_holding", "subject": "gravy", "temperature_c": core_c, "elapsed_h": 1}
    given = client.post("/v1/safety/checks", {"question": question, **asked}).json()
    return given["findings"][0]


def test_a_licensed_kitchen_is_judged_by_the_code_of_its_place(wales_api) -> None:
    found = checked(wales_api, 61, kitchen="licensed")
    assert (found["severity"], found["kitchen"]) == ("warn", "licensed_wales")
    assert "The Food Hygiene (Wales) Regulations 2006, Schedule 4, paragraph 6" in found["citation"]
    assert checked(wales_api, 63, kitchen="licensed")["severity"] == "ok"


def test_a_home_and_one_that_does_not_say_are_judged_as_everywhere(wales_api) -> None:
    assert checked(wales_api, 61, kitchen="home")["severity"] == "ok"
    assert checked(wales_api, 59)["kitchen"] == "home"


def test_a_log_keeps_the_code_it_was_begun_under(wales_api) -> None:
    begun = wales_api.post(
        "/v1/logs", {"kind": "cold_holding", "item": "sliced turkey", "kitchen": "licensed"}
    ).json()
    assert begun["kitchen"] == "licensed_wales"
    reading = {"who": "AB", "temperature_c": 7.5}
    kept = wales_api.post(f"/v1/logs/{begun['id']}/entries", reading).json()
    assert kept["grade"] == "ok"
    assert "Wales" in kept["findings"][-1]["seen"]


def test_a_place_without_a_code_is_refused_at_the_start() -> None:
    with pytest.raises(ValidationError, match="there is no local code of 'atlantis', only of wales"):
        Settings(local_code="atlantis")
