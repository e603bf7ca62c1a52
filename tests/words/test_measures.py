from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.words import Reader
from turnspit.words.measures import clock, length, mass, oven, percent, rise, span, spans, temperature, volume, when

NOW = datetime(2026, 11, 25, 9, tzinfo=ZoneInfo("America/New_York"))
US = Reader(NOW)
METRIC = Reader(NOW, units="metric", clock="24h")
SPANISH = Reader(NOW, language="es", units="metric", clock="24h")


@pytest.mark.parametrize(
    ("kg", "us", "metric"),
    [
        (7.2575, "16 lb (7.3 kg)", "7.3 kg (16 lb)"),
        (0.34, "12 oz (340 g)", "340 g (12 oz)"),
        (0.012, "0.4 oz (12 g)", "12 g (0.4 oz)"),
        (40.1, "88.4 lb (40.1 kg)", "40.1 kg (88.4 lb)"),
        (500, "1,102 lb (500 kg)", "500 kg (1,102 lb)"),
    ],
)
def test_a_mass_leads_with_the_reader_s_unit(kg, us, metric):
    assert mass(kg, US) == us
    assert mass(kg, METRIC) == metric


@pytest.mark.parametrize(("c", "us"), [(163, "325 °F (163 °C)"), (73.9, "165 °F (74 °C)"), (-0.2, "32 °F (0 °C)")])
def test_a_temperature_is_told_to_the_degree(c, us):
    assert temperature(c, US) == us


@pytest.mark.parametrize(
    ("c", "us"), [(218, "425 °F (218 °C)"), (176.67, "350 °F (177 °C)"), (163, "325 °F (163 °C)")]
)
def test_an_oven_is_told_as_its_dial_reads(c, us):
    assert oven(c, US) == us


def test_a_difference_is_no_point():
    assert rise(4, US) == "7 °F (4 °C)"


@pytest.mark.parametrize(
    ("minutes", "text"),
    [
        (0.2, "0 min"),
        (45, "45 min"),
        (225, "3 h 45 min"),
        (240, "4 h"),
        (3240, "2 days 6 h"),
        (4300, "3 days"),
    ],
)
def test_spans_of_time(minutes, text):
    assert span(minutes, US) == text


def test_a_window_of_time():
    assert spans(15, 20, US) == "15–20 min"
    assert spans(223, 257, US) == "3 h 45 min – 4 h 15 min"
    assert spans(240, 241, US) == "4 h"


def test_clock_by_habit():
    at = datetime(2026, 11, 25, 13, 10, tzinfo=NOW.tzinfo)
    assert clock(at, US) == "1:10 pm"
    assert clock(at, METRIC) == "13:10"
    assert clock(at.replace(hour=0, minute=0), US) == "12 am"


def test_the_day_is_told_when_it_is_not_today():
    at = datetime(2026, 11, 25, 18, tzinfo=NOW.tzinfo)
    assert when(at, US) == "6 pm"
    assert when(at.replace(day=26), US) == "tomorrow 6 pm"
    assert when(at.replace(day=26), SPANISH) == "mañana 18:00"
    assert when(at.replace(day=28), US) == "Sat 6 pm"
    assert when(at.replace(month=12, day=24), US) == "Thu Dec 24 6 pm"
    assert when(at.replace(month=12, day=24), METRIC) == "Thu 24 Dec 18:00"


def test_volumes_lengths_and_percents():
    assert volume(9.4635, US) == "2.5 gal (9.5 L)"
    assert volume(0.2366, US) == "1 cup (235 mL)"
    assert volume(0.005, METRIC) == "5 mL (1 tsp)"
    assert volume(0.095, SPANISH) == "95 mL"
    assert volume(3.1, METRIC) == "3.1 L"
    assert mass(500, SPANISH) == "500 kg (1102 lb)"
    assert length(50.8, US) == "2 in (51 mm)"
    assert length(268, METRIC) == "27 cm (10.6 in)"
    assert percent(5.5, SPANISH) == "5,5%"


@pytest.mark.parametrize(
    ("hour", "day", "us", "spanish"),
    [
        (18, 25, "at 6 pm", "a las 18:00"),
        (13, 26, "tomorrow at 1 pm", "mañana a las 13:00"),
        (1, 26, "tomorrow at 1 am", "mañana a las 01:00"),
    ],
)
def test_a_time_inside_a_sentence(hour, day, us, spanish):
    at = datetime(2026, 11, day, hour, tzinfo=NOW.tzinfo)
    assert when(at, US, "at") == us
    assert when(at, SPANISH, "at") == spanish
    assert when(at.replace(hour=13, day=25), Reader(NOW, language="es"), "at") == "a la 1 pm"
