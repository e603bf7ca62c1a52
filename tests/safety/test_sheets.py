import csv
import io
from datetime import UTC, datetime, timedelta

import pytest

from turnspit.errors import Impossible
from turnspit.safety import Log, check_log, label, log_csv, sheet_rows, staff_card
from turnspit.words import Reader, say

START = datetime(2026, 11, 26, 18, tzinfo=UTC)


def at(minute):
    return START + timedelta(minutes=minute)


def cooling():
    log = Log("cooling", "stock").reading(at(0), 60.0, "AB").reading(at(50), 41.0, "AB").reading(at(200), 4.0, "AB")
    return log.correct(2, 14.0, "CD", at(60), note='=HYPERLINK("x")')


def test_a_sheet_shows_every_entry_and_every_gap():
    rows = sheet_rows(cooling(), check_log(cooling(), at(200)))
    assert [(row.entry.number if row.entry else "gap", row.stands) for row in rows] == [
        (1, True),
        (2, False),
        (4, True),
        ("gap", True),
        (3, True),
    ]


def test_the_csv_keeps_what_was_corrected_and_no_formula():
    rows = list(csv.DictReader(io.StringIO(log_csv(cooling()))))
    assert [(row["number"], row["temperature_c"], row["corrects"], row["stands"]) for row in rows] == [
        ("1", "60.0", "", "yes"),
        ("2", "41.0", "", "no"),
        ("3", "4.0", "", "yes"),
        ("4", "14.0", "2", "yes"),
    ]
    assert rows[3]["note"].startswith("'=")
    assert rows[0]["measured_at"] == "2026-11-26T18:00:00+00:00"


def test_an_action_stands_in_the_csv():
    rows = list(csv.DictReader(io.StringIO(log_csv(cooling().act("discarded", at(210), "CD")))))
    assert rows[-1]["action"] == "discarded"


@pytest.mark.parametrize(
    ("kitchen", "days", "rule"),
    [("home", 4, "leftovers-days"), (None, 4, "leftovers-days"), ("licensed", 6, "date-marking")],
)
def test_a_label_carries_the_last_day(kitchen, days, rule):
    made = label("turkey", START, "AB", kitchen)
    assert (made.use_by - made.made_at, made.rule) == (timedelta(days=days), rule)


def test_a_frozen_box_has_no_last_day_and_a_label_needs_initials():
    assert label("turkey", START, "AB", storage="freezer").use_by is None
    with pytest.raises(Impossible, match="initials"):
        label("turkey", START, "")


@pytest.mark.parametrize("kitchen", [None, "home", "licensed"])
@pytest.mark.parametrize("language", ["en", "es"])
def test_the_staff_card_can_be_said(kitchen, language):
    for section in staff_card(kitchen):
        for message in (section.title, *section.lines):
            assert say(message, Reader(START, language=language))
