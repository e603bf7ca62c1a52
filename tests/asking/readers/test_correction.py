"""Every mark of a correction with every value that may be corrected, in a talk: the later word stands, all else stays."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking.contract import Line
from turnspit.asking.conversation import Conversation
from turnspit.asking.reading import flat, read_line, remember

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=ZoneInfo("America/New_York"))
DAY = "2026-11-25T"

# What is said first, the path that is corrected, what was meant and in whole and bare form, the value.
ENGLISH = [
    ("16 lb turkey dinner at 6", "roast.mass_kg", "16 lb", ("18 lb", "18"), 8.165),
    ("5 kg goose at 160 how long", "roast.mass_kg", "5 kg", ("6 kg", "6"), 6.0),
    ("16 lb turkey dinner at 6", "serve_at", "6", ("7 pm", "7"), f"{DAY}19:00:00-05:00"),
    ("16 lb turkey dinner at 6", "serve_at", "6 pm", ("6:30",), f"{DAY}18:30:00-05:00"),
    ("16 lb turkey dinner tomorrow at 6", "serve_at", "tomorrow", ("friday",), "2026-11-27T18:00:00-05:00"),
    ("14 lb turkey at 325 how long", "oven.temperature_c", "325", ("350 F", "350"), 176.67),
    ("5 kg turkey at 180 C how long", "oven.temperature_c", "180", ("160 C", "160"), 160.0),
    ("how big a turkey for 12", "covers", "12", ("14 people", "14"), 14),
    ("2 kg pork loin how long", "roast.kind", "loin", ("shoulder",), "pork_shoulder"),
    ("152 in the thigh", "reading.place", "the thigh", ("the breast", "breast"), "breast"),
    ("152 in the thigh", "reading.temperature_c", "152", ("158 F", "158"), 70.0),
    ("two 12 lb turkeys dinner at 6", "roast.count", "two", ("three turkeys", "three"), 3),
    ("brine a 12 lb turkey for 12 hours", "brine.hours", "12 hours", ("18 hours", "18"), 18),
    ("brine a 12 lb turkey in a 5 gallon bucket", "brine.vessel_l", "5 gallon", ("4 gallon", "4"), 15.142),
    ("12 lb turkey at 7000 feet how long", "altitude_m", "7000", ("5000 feet", "5000"), 1524.0),
    ("3 kg beef rib medium dinner at 6", "roast.target_c", "medium", ("rare",), 52.0),
    ("thaw a 12 lb frozen turkey", "roast.state", "frozen", ("half frozen",), "part_frozen"),
    ("turkey left out for 3 hours is it safe", "elapsed_h", "3 hours", ("4 hours", "4"), 4),
    ("put it in at 8 am, 14 lb turkey 325", "start_at", "8 am", ("7:30",), f"{DAY}07:30:00-05:00"),
]
SLIPS = [
    "sorry {y}", "sorry, {y}", "i meant {y}", "{y} not {x}", "not {x}, {y}", "not {x} but {y}", "oops {y}", "no, {y}",
    "no {y}", "actually {y}", "make that {y}", "{y} i mean", "{y}, sorry", "correction: {y}", "scratch that, {y}",
    "it's {y}, not {x}", "{x} was wrong, {y}", "i said {x} but its {y}", "{y} instead of {x}", "{y} rather than {x}",
    "{y}, my mistake", "that should be {y}", "wait, {y}", "hang on, {y}", "whoops {y} not {x}", "typo: {y}",
    "i got that wrong, {y}", "{y} is right, not {x}", "{x}? no, {y}", "should have said {y}",
]  # fmt: skip
SPANISH = [
    ("pavo de 6 kilos cena a las 8", "roast.mass_kg", "6 kilos", ("7 kilos", "7"), 7.0),
    ("pavo de 6 kilos cena a las 8", "serve_at", "a las 8", ("a las 9", "las 9"), f"{DAY}21:00:00-05:00"),
    ("pavo de 6 kilos cena mañana a las 8", "serve_at", "mañana", ("el viernes",), "2026-11-27T20:00:00-05:00"),
    ("pollo de 2 kilos a 180 cuánto tiempo", "oven.temperature_c", "180", ("200 grados", "200"), 200.0),
    ("qué tamaño de pavo para 12", "covers", "12", ("14 personas", "14"), 14),
    ("cuánto tarda un pato de 3 kilos", "roast.kind", "pato", ("ganso",), "goose"),
    ("60 en el muslo", "reading.place", "el muslo", ("la pechuga",), "breast"),
    ("60 en el muslo", "reading.temperature_c", "60", ("65 grados", "65"), 65.0),
    ("salmuera para un pavo de 6 kilos 12 horas", "brine.hours", "12 horas", ("18 horas", "18"), 18),
]
DESLICES = [
    "perdón, {y}", "digo {y}", "quise decir {y}", "no, {y}", "no {x}, {y}", "no {x} sino {y}", "{y}, perdón",
    "son {y}, no {x}", "es {y}, no {x}", "me equivoqué, {y}", "en realidad {y}", "mejor dicho {y}",
    "no es {x}, es {y}", "corrijo: {y}", "{y} en vez de {x}", "dije {x} pero es {y}", "espera, {y}", "quería decir {y}",
]  # fmt: skip


def told(*lines: str) -> list[dict[str, object]]:
    """What is understood after each line of a talk."""
    talk, found = None, []
    for text in lines:
        reading = read_line(Line(text, NOW), talk)
        found.append(flat(reading.understood))
        talk = remember(talk or Conversation("talk"), reading, text)
    return found


def without_subject(values: dict[str, object]) -> dict[str, object]:
    return {path: value for path, value in values.items() if path != "subject"}


@pytest.mark.parametrize(
    ("first", "path", "was", "meant", "value", "slip"),
    [
        (first, path, was, one, value, slip)
        for rows, slips in ((ENGLISH, SLIPS), (SPANISH, DESLICES))
        for first, path, was, meant, value in rows
        for one in meant
        for slip in slips
    ],
)
def test_the_later_word_stands_and_all_else_stays(first, path, was, meant, value, slip):
    before, after = told(first, slip.format(x=was, y=meant))
    assert without_subject(after) == pytest.approx(without_subject({**before, path: value}), abs=0.01)


@pytest.mark.parametrize(
    ("lines", "path", "value"),
    [
        (("16 kg turkey, dinner at 6", "no lb was right"), "roast.mass_kg", 7.257),
        (("chicken 5 lb dinner at 7", "it's kilos not pounds"), "roast.mass_kg", 5.0),
        (("5 kg turkey at 180 C, how long", "i meant 180 F"), "oven.temperature_c", 82.22),
        (("14 lb turkey dinner at 6", "one more turkey the same"), "roast.count", 2),
        (("how big a turkey for 10 adults and 4 kids", "actually only 2 kids"), "covers", 12),
        (("goose 4.5kg for 4 oclock", "duck, i meant duck"), "roast.mass_kg", 4.5),
        (
            ("14 lb turkey dinner at 4", "2 cups in ml", "ok back to the bird. can we do 5 instead"),
            "roast.kind",
            "turkey",
        ),
    ],
)
def test_what_a_correction_leaves_out(lines, path, value):
    found = told(*lines)[-1][path]
    assert found == (pytest.approx(value) if isinstance(value, float) else value)


def test_another_roast_that_is_wished_begins_anew_and_one_that_was_meant_keeps_its_weight():
    assert "roast.mass_kg" not in told("16 lb turkey dinner at 6", "how about a goose instead")[-1]
    assert told("16 lb turkey dinner at 6", "sorry, goose")[-1]["roast.mass_kg"] == 7.257


@pytest.mark.parametrize("line", ["scrap all that", "new question", "start over", "olvida todo eso"])
def test_a_new_beginning_holds_nothing(line):
    assert told("16 lb turkey dinner at 6", line)[-1] == {}


def test_a_new_beginning_with_a_question_holds_only_what_that_says():
    assert told("16 lb turkey dinner at 6", "new question: how big a goose for 8")[-1] == {
        "roast.kind": "goose",
        "covers": 8,
    }


@pytest.mark.parametrize(
    ("text", "path", "value"),
    [
        ("dinner not before 6, 14 lb turkey", "serve_at", f"{DAY}18:00:00-05:00"),
        ("sorry to bother you, how long for a 14 lb turkey at 325", "roast.mass_kg", 6.35),
        ("no more than 14 lb turkey for 10", "roast.mass_kg", 6.35),
        ("breast 150 not done, thigh 165", "reading.place", "breast"),
        ("is it safe if it sat out 4 hours not 2", "elapsed_h", 4),
    ],
)
def test_a_mark_that_corrects_nothing_changes_nothing(text, path, value):
    assert told(text)[0][path] == value
