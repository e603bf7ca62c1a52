"""Limits of the FDA Food Code 2022 and of the federal consumer guidance: at, just under and just over each boundary.
Sections beside each."""

from datetime import UTC, datetime, timedelta

import pytest

from turnspit.reference import rule, table
from turnspit.safety import Log, SafetyQuestion, check_log, check_question, hold_min

NOW = datetime(2026, 11, 26, 18, tzinfo=UTC)


def celsius(fahrenheit):
    return (fahrenheit - 32) / 1.8


def severity(topic, kitchen, **values):
    return check_question(SafetyQuestion(topic, **values), kitchen)[0].severity


LIMITS_F = [
    # rule, kitchen, limit, printed F
    ("poultry-165", "licensed", "core_min_c", 165),  # 3-401.11(A)(3)
    ("stuffing-165", "licensed", "core_min_c", 165),  # 3-401.11(A)(3)
    ("meat-145", "licensed", "core_min_c", 145),  # 3-401.11(A)(1)
    ("ground-155", "licensed", "core_min_c", 155),  # 3-401.11(A)(2)
    ("reheat-165", "licensed", "core_min_c", 165),  # 3-403.11
    ("thaw-refrigerator", "licensed", "food_max_c", 41),  # 3-501.13(A)
    ("thaw-cold-water", "licensed", "water_max_c", 70),  # 3-501.13(B)
    ("cooling-two-stage", "licensed", "from_c", 135),  # 3-501.14(A)
    ("cooling-two-stage", "licensed", "middle_c", 70),  # 3-501.14(A)
    ("cooling-two-stage", "licensed", "cold_c", 41),  # 3-501.14(A)
    ("hot-hold", "licensed", "food_min_c", 135),  # 3-501.16(A)(1)
    ("hot-hold", "licensed", "roast_min_c", 130),  # 3-501.16(A)(1)
    ("cold-hold", "licensed", "food_max_c", 41),  # 3-501.16(A)(2)
    ("roast-oven", "licensed", "still_under_4_5_kg_min_c", 350),  # 3-401.11(B)(2)
    ("roast-oven", "licensed", "convection_under_4_5_kg_min_c", 325),  # 3-401.11(B)(2)
    ("roast-oven", "licensed", "from_4_5_kg_min_c", 250),  # 3-401.11(B)(2)
    ("poultry-165", "home", "core_min_c", 165),  # Safe Minimum Internal Temperature Chart
    ("meat-145", "home", "core_min_c", 145),  # Safe Minimum Internal Temperature Chart
    ("ground-160", "home", "core_min_c", 160),  # Safe Minimum Internal Temperature Chart
    ("ham-reheat", "home", "core_min_c", 140),  # Ham Cooking Chart
    ("oven-325", "home", "oven_min_c", 325),  # Turkey Basics: Safe Cooking
    ("two-hours", "home", "hot_day_min_c", 90),  # Leftovers and Food Safety
    ("hot-hold", "home", "food_min_c", 140),  # Leftovers and Food Safety
    ("cold-hold", "home", "food_max_c", 40),  # Leftovers and Food Safety
]


@pytest.mark.parametrize(("rule_id", "kitchen", "name", "printed_f"), LIMITS_F)
def test_a_limit_is_the_printed_fahrenheit(rule_id, kitchen, name, printed_f):
    assert rule(rule_id, kitchen).limits[name] == pytest.approx(celsius(printed_f), abs=0.005)


BOUNDARIES = [
    # topic, kitchen, values, field, limit in F, severities just under, at, just over
    ("reading", "licensed", {"subject": "turkey"}, "temperature_c", 165, ("stop", "ok", "ok")),  # 3-401.11(A)(3)
    ("reading", "licensed", {"subject": "stuffing"}, "temperature_c", 165, ("stop", "ok", "ok")),  # 3-401.11(A)(3)
    ("reading", "licensed", {"subject": "ground"}, "temperature_c", 155, ("stop", "ok", "ok")),  # 3-401.11(A)(2)
    ("reading", "licensed", {"subject": "beef_rib"}, "temperature_c", 145, ("warn", "ok", "ok")),  # 3-401.11(A)(1)
    (
        "reading",
        "licensed",
        {"subject": "beef_rib"},
        "temperature_c",
        130,
        ("stop", "warn", "warn"),
    ),  # 3-401.11(B)(1)
    ("reheat", "licensed", {}, "temperature_c", 165, ("stop", "ok", "ok")),  # 3-403.11
    ("warm_holding", "licensed", {"elapsed_h": 5.0}, "temperature_c", 135, ("stop", "ok", "ok")),  # 3-501.16(A)(1)
    (
        "warm_holding",
        "licensed",
        {"elapsed_h": 5.0, "subject": "beef_rib"},
        "temperature_c",
        130,
        ("stop", "ok", "ok"),
    ),  # 3-501.16(A)(1)
    ("cold_holding", "licensed", {"elapsed_h": 5.0}, "temperature_c", 41, ("ok", "ok", "stop")),  # 3-501.16(A)(2)
    ("receiving", "licensed", {}, "temperature_c", 41, ("ok", "ok", "stop")),  # 3-202.11
    (
        "thaw_method",
        "licensed",
        {"method": "cold_water"},
        "temperature_c",
        70,
        ("info", "info", "stop"),
    ),  # 3-501.13(B)
    (
        "oven",
        "licensed",
        {"subject": "beef_rib", "mass_kg": 4.0},
        "oven_c",
        350,
        ("warn", "ok", "ok"),
    ),  # 3-401.11(B)(2)
    (
        "oven",
        "licensed",
        {"subject": "beef_rib", "mass_kg": 4.0, "convection": True},
        "oven_c",
        325,
        ("warn", "ok", "ok"),
    ),
    (
        "oven",
        "licensed",
        {"subject": "beef_rib", "mass_kg": 5.0},
        "oven_c",
        250,
        ("stop", "ok", "ok"),
    ),  # 3-401.11(B)(2)
    ("reading", "home", {"subject": "turkey"}, "temperature_c", 165, ("stop", "ok", "ok")),
    ("reading", "home", {"subject": "pork_loin"}, "temperature_c", 145, ("stop", "ok", "ok")),
    ("reading", "home", {"subject": "ground"}, "temperature_c", 160, ("stop", "ok", "ok")),
    ("warm_holding", "home", {"elapsed_h": 3.0}, "temperature_c", 140, ("stop", "ok", "ok")),
    ("cold_holding", "home", {"elapsed_h": 3.0}, "temperature_c", 40, ("ok", "ok", "stop")),
    ("brine_temperature", "home", {"elapsed_h": 3.0}, "temperature_c", 40, ("ok", "ok", "stop")),
    ("oven", "home", {"subject": "turkey"}, "oven_c", 325, ("warn", "ok", "ok")),
    ("left_out", "home", {"elapsed_h": 1.5}, "ambient_c", 90, ("ok", "ok", "stop")),
]


@pytest.mark.parametrize(("topic", "kitchen", "values", "name", "printed_f", "expected"), BOUNDARIES)
def test_just_under_at_and_just_over_a_temperature(topic, kitchen, values, name, printed_f, expected):
    found = [severity(topic, kitchen, **values, **{name: celsius(printed_f + by)}) for by in (-0.1, 0.0, 0.1)]
    assert tuple(found) == expected


HOURS = [
    ("left_out", "home", {"ambient_c": 20.0}, 2.0, ("ok", "ok", "stop")),  # Leftovers and Food Safety
    ("left_out", "home", {"ambient_c": 35.0}, 1.0, ("ok", "ok", "stop")),  # Leftovers and Food Safety
    ("left_out", "licensed", {"procedure": True}, 4.0, ("info", "info", "stop")),  # 3-501.19(B)
    ("thawed_on_counter", "licensed", {}, 4.0, ("warn", "warn", "stop")),  # 3-501.13(B)(4)
    ("partial_cooking", "licensed", {"procedure": True}, 1.0, ("info", "info", "stop")),  # 3-401.14
    ("reheat", "licensed", {"temperature_c": 75.0}, 2.0, ("ok", "ok", "stop")),  # 3-403.11
    ("keeping", "licensed", {}, 144.0, ("ok", "ok", "stop")),  # 3-501.17: day of preparation is day 1, seven days
    ("keeping", "home", {}, 96.0, ("ok", "ok", "stop")),  # Cold Food Storage Chart
    ("thawed_keeps", "home", {"subject": "turkey"}, 48.0, ("ok", "ok", "stop")),  # The Big Thaw
    ("thawed_keeps", "home", {"subject": "beef_rib"}, 120.0, ("ok", "ok", "stop")),  # The Big Thaw
    ("power_cut", "home", {}, 4.0, ("warn", "warn", "stop")),  # Refrigerated Food and Power Outages
]


@pytest.mark.parametrize(("topic", "kitchen", "values", "hours", "expected"), HOURS)
def test_just_under_at_and_just_over_a_time(topic, kitchen, values, hours, expected):
    found = [severity(topic, kitchen, **values, elapsed_h=hours + by) for by in (-0.02, 0.0, 0.02)]
    assert tuple(found) == expected


@pytest.mark.parametrize(
    ("readings_f", "severe"),
    [  # 3-501.14(A): 135 F to 70 F in 2 h, to 41 F in 6 h of leaving 135 F
        ([(0, 135), (120, 70), (360, 41)], "ok"),
        ([(0, 135), (121, 70), (360, 41)], "stop"),
        ([(0, 135), (120, 70.1), (122, 70), (360, 41)], "stop"),
        ([(0, 135), (120, 70), (361, 41)], "stop"),
        ([(0, 135), (120, 70), (360, 41.1), (362, 41)], "stop"),
        ([(0, 135), (60, 70), (360, 41)], "ok"),
    ],
)
def test_cooling_at_and_beside_its_limits(readings_f, severe):
    log = Log("cooling", "stock")
    for minute, core_f in readings_f:
        log = log.reading(NOW + timedelta(minutes=minute), celsius(core_f), "AB")
    end = NOW + timedelta(minutes=readings_f[-1][0])
    assert check_log(log, end, "licensed", interval_min=600, finished=True).severity == severe


def test_every_cell_of_the_whole_roast_table():  # 3-401.11(B)(1)
    for row in table("food_code_roasts").rows:
        at_c = celsius(row["printed_f"])
        assert hold_min(at_c) == pytest.approx(row["hold_s"] / 60)
        assert hold_min(at_c + 0.2) == pytest.approx(row["hold_s"] / 60)  # between rows the longer time
    assert hold_min(celsius(129.9)) is None
    assert hold_min(celsius(170)) == 0.0


def test_the_zone_differs_between_the_kitchens():
    assert (rule("cold-hold", "home").limits["food_max_c"], rule("hot-hold", "home").limits["food_min_c"]) == (
        4.44,
        60.0,
    )
    assert (
        rule("cold-hold", "licensed").limits["food_max_c"],
        rule("hot-hold", "licensed").limits["food_min_c"],
    ) == (5.0, 57.22)
