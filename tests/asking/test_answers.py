"""Each answer from what is understood: the numbers a cook acts on, what was assumed, the cautions, the questions."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking.contract import INTENTS
from turnspit.words import Reader, say

NOW = datetime(2026, 11, 25, 9, tzinfo=ZoneInfo("America/New_York"))
US = Reader(NOW)
SPANISH = Reader(NOW, language="es", units="metric", clock="24h")
LB = 0.45359237


def test_size_tells_both_weights_and_assumes_a_turkey(asked, told):
    answer = asked("size", {"covers": 14})
    assert say(answer.headline, US) == "About 14 lb (6.4 kg) of turkey for 14; 21 lb (9.5 kg) if you want leftovers."
    assert "edible" in told(answer)
    assert answer.assumed["roast.kind"] == "turkey"
    assert answer.data["size"]["total_kg"] == pytest.approx(14 * LB)


def test_size_with_leftovers_leads_with_the_larger(asked):
    answer = asked("size", {"covers": 14, "leftovers_wanted": True})
    assert say(answer.headline, US).startswith("About 21 lb")


def test_size_without_diners_asks_for_them_with_choices(asked):
    answer = asked("size", {"roast": {"kind": "goose"}})
    assert answer.asks == "covers"
    assert [say(choice, US) for choice in answer.choices][:2] == ["for 6", "for 8"]


def test_size_the_other_way_round_tells_how_many_it_feeds(asked):
    assert "feeds about 16, or 10 with leftovers" in say(asked("size", {"roast": {"mass_kg": 16 * LB}}).headline, US)


def test_roast_time_is_a_window_with_a_first_check(asked, rules):
    answer = asked("roast_time", {"roast": {"kind": "turkey", "mass_kg": 16 * LB}})
    ready = answer.data["forecast"]["ready_min"]
    assert ready["p10"] < ready["p50"] < ready["p90"]
    assert answer.data["forecast"]["check_from_min"] <= ready["p10"]
    assert "Start checking at" in say(answer.headline, US)
    assert {"poultry-165", "thermometer-decides"} <= rules(answer)
    assert answer.assumed["oven.temperature_c"] == 163.0


def test_roast_time_on_the_clock_when_the_start_is_said(asked):
    answer = asked("roast_time", {"roast": {"mass_kg": 16 * LB}, "start_at": "2026-11-25T13:00:00-05:00"})
    assert "in at 1 pm: ready" in say(answer.headline, US)


def test_what_was_said_is_not_assumed(asked):
    understood = {
        "roast": {"kind": "turkey", "mass_kg": 7.0, "state": "thawed", "stuffed": False},
        "oven": {"temperature_c": 163.0, "convection": True},
    }
    answer = asked("roast_time", understood)
    assert answer.assumed == {}
    assert answer.assumptions == ()


def test_thaw_tells_days_hours_and_the_way_from_frozen(asked, told, rules):
    answer = asked("thaw", {"roast": {"kind": "turkey", "mass_kg": 22 * LB}})
    words = told(answer)
    assert "5–6 days in the refrigerator" in words
    assert "30 min a pound" in words
    assert "11 h" in words
    assert "half as long again" in words
    assert {"thaw-counter", "thaw-cold-water"} <= rules(answer)


def test_thaw_today_leads_with_the_quick_ways(asked):
    headline = say(asked("thaw", {"roast": {"state": "frozen"}}, "it's still frozen").headline, US)
    assert "cold water, 30 min a pound" in headline
    assert "half as long again or more" in headline


def test_a_long_cold_water_thaw_is_no_way_for_a_licensed_kitchen(asked, told):
    understood = {"roast": {"kind": "turkey", "mass_kg": 22 * LB}}
    assert "licensed kitchen cold water may not do" in told(asked("thaw", understood, kitchen="licensed"))
    assert "licensed kitchen" not in told(asked("thaw", understood, kitchen="home"))


def test_brine_fits_the_bucket_and_asks_how_the_bird_was_sold(asked, told, rules):
    answer = asked("brine", {"roast": {"kind": "turkey", "mass_kg": 18 * LB}, "brine": {"vessel_l": 18.927}})
    assert "It fits" in told(answer)
    assert answer.asks == "roast.injected"
    assert len(answer.choices) == 3
    assert {"brine-cold", "brine-discard"} <= rules(answer)
    assert answer.data["brine"]["fits"] is True


def test_salt_by_volume_is_a_range_by_its_kind(asked):
    answer = asked("convert", {"amount": {"value": 2.0, "unit": "cup", "item": "kosher salt", "target_unit": "g"}})
    assert say(answer.headline, US) == "2 cups of kosher salt ≈ 270–500 g, by the kind: weigh it."
    assert answer.data["convert"]["weigh"] is True
    assert len(answer.data["convert"]["kinds"]) == 2


@pytest.mark.parametrize(
    ("amount", "headline"),
    [
        ({"value": 2.0, "unit": "lb"}, "2 lb = 907 g"),
        ({"value": 325.0, "unit": "degF"}, "325 °F = 163 °C"),
        ({"value": 4.0, "unit": "gas_mark"}, "gas mark 4 ≈ 350 °F"),
        ({"value": 1.0, "unit": "cup", "target_unit": "mL"}, "1 cup = 237 mL"),
        ({"value": 0.0, "unit": "degC"}, "0 °C = 32 °F"),
    ],
)
def test_conversions_in_one_line(amount, headline, asked):
    assert say(asked("convert", {"amount": amount}).headline, US) == headline


def test_a_cup_of_what_is_asked_back(asked):
    answer = asked("convert", {"amount": {"value": 2.0, "unit": "cup", "target_unit": "g"}})
    assert answer.asks == "amount.item"
    assert answer.question is not None


def test_scaling_an_amount_tells_what_does_not_follow(asked, told):
    answer = asked(
        "scale", {"scale": {"from": 6, "to": 15}, "amount": {"value": 2.0, "unit": "cup", "item": "flour"}}
    )
    assert say(answer.headline, US) == "2 cups of flour × 2.5 = 5 cups of flour"
    assert "salt" in told(answer)
    assert answer.data["scale"]["factor"] == 2.5


def test_a_reading_gives_a_window_and_weighs_it_against_dinner(asked, told):
    understood = {
        "roast": {"kind": "turkey", "mass_kg": 14 * LB},
        "reading": {"temperature_c": 54.44, "place": "breast", "at": "2026-11-25T16:30:00-05:00"},
        "serve_at": "2026-11-25T20:30:00-05:00",
    }
    answer = asked("doneness", understood)
    data = answer.data["doneness"]
    assert data["station"] == "breast"
    assert data["ready_at"][0] < data["ready_at"][1]
    assert "in hand before 8:30 pm" in told(answer)
    late = asked("doneness", {**understood, "serve_at": "2026-11-25T17:30:00-05:00"})
    assert "will be late" in told(late)


def test_of_several_readings_the_slowest_place_decides(asked):
    readings = [{"temperature_c": 70.0, "place": "breast"}, {"temperature_c": 58.0, "place": "thigh"}]
    answer = asked("doneness", {"roast": {"mass_kg": 6.0}, "reading": readings[1], "readings": readings})
    assert answer.data["doneness"]["station"] == "thigh"
    assert "reading.at" in answer.assumed


def test_probing_without_a_reading(asked, told):
    words = told(asked("doneness", {}, "where do I put the probe"))
    for part in ("deepest breast", "inner thigh", "wing joint", "off the bone", "coldest counts", "165 °F"):
        assert part in words


def test_early_is_held_hot(asked, rules):
    answer = asked("doneness", {}, "it's done early, two hours to go")
    assert "about 30 min" in say(answer.headline, US)
    assert "140 °F" in say(answer.headline, US)
    assert {"hot-hold", "two-hours"} <= rules(answer)


def test_carving_starts_with_the_rest(asked, told):
    words = told(asked("carve", {"roast": {"kind": "turkey", "mass_kg": 9.0}}, "how do I carve it"))
    assert "Rest" in words
    assert "legs off at the joint" in words
    assert "carved meat" in words


EXAMPLES = {
    "size": {"covers": 12},
    "roast_time": {"roast": {"mass_kg": 7.0}},
    "thaw": {"roast": {"mass_kg": 7.0, "state": "frozen"}},
    "brine": {"roast": {"mass_kg": 7.0}},
    "scale": {"scale": {"factor": 2.0}},
    "convert": {"amount": {"value": 2.0, "unit": "cup", "item": "flour"}},
    "doneness": {"roast": {"mass_kg": 7.0}, "reading": {"temperature_c": 60.0, "place": "thigh"}},
    "safety": {"elapsed_h": 3.0, "subject": "turkey"},
    "plan": {"roast": {"mass_kg": 7.0}, "serve_at": "2026-11-26T18:00:00-05:00"},
}


@pytest.mark.parametrize("intent", INTENTS)
@pytest.mark.parametrize("reader", [US, SPANISH, Reader(NOW, units="metric", clock="24h")])
def test_every_answer_can_be_said_in_every_language_with_reasons_and_next_lines(intent, reader, asked):
    answer = asked(intent, EXAMPLES.get(intent, {}), "left out 3 hours" if intent == "safety" else "", reader)
    assert say(answer.headline, reader)
    for message in (*answer.lines, *answer.reasons, *answer.assumptions, *answer.choices, *answer.next):
        assert say(message, reader)
    for caution in answer.cautions:
        assert say(caution.message, reader)
    assert 2 <= len(answer.next) <= 3
    assert answer.reasons or intent in {"help", "unknown"}


def test_a_frozen_roast_with_a_dinner_is_planned_at_once(asked, told):
    understood = {"roast": {"mass_kg": 9.0, "state": "frozen"}, "serve_at": "2026-11-26T18:00:00-05:00"}
    answer = asked("thaw", understood, "it's still frozen")
    assert answer.data["plan"]["serve_at"]
    assert "30 min a pound" in told(answer)
    early = {**understood, "serve_at": "2026-12-03T18:00:00-05:00"}
    assert "Thaw the 19.8 lb" in told(asked("thaw", early, "when do I take it out of the freezer"))


def test_a_named_roast_is_weighed_against_the_diners(asked):
    assert "is enough for 10" in say(asked("size", {"roast": {"mass_kg": 12 * LB}, "covers": 10}).headline, US)
    assert "short for 20 by about 8 lb" in say(
        asked("size", {"roast": {"mass_kg": 12 * LB}, "covers": 20}).headline, US
    )


def test_how_long_tells_the_dinner_that_is_known(asked, told):
    answer = asked("roast_time", {"roast": {"mass_kg": 7.0}, "serve_at": "2026-11-25T18:00:00-05:00"})
    assert "serve at 6 pm" in told(answer)


@pytest.mark.parametrize("intent", ["carve", "safety", "doneness"])
def test_done_early_is_one_answer_wherever_it_is_asked(intent, asked):
    assert "about 30 min" in say(asked(intent, {}, "it's done early").headline, US)


def test_a_named_recipe_is_scaled_line_by_line(asked, told, rules):
    answer = asked("scale", {"scale": {"to": 28}}, "scale the gravy to 28")
    words = told(answer)
    assert "for 28 (times 2, from 14)" in words
    assert "1 cup turkey drippings" in words
    assert answer.data["scale"]["factor"] == 2.0
    assert "allergens" in rules(answer)


def test_a_pasted_recipe_is_scaled_line_by_line(asked):
    text = "for 12 please\nserves 4\n2 cups flour\n1 tsp salt\n3 eggs"
    answer = asked("scale", {"scale": {"from": 4, "to": 12}}, text)
    assert {"6 cups flour", "1 tbsp salt", "9 eggs"} <= set(answer.data["scale"]["lines"])


def test_a_side_dish_is_sized_by_its_own_portions(asked):
    answer = asked("size", {"covers": 20}, "how much mashed potatoes for 20")
    assert say(answer.headline, US).startswith("potatoes for 20: 7.2 lb")
    assert answer.data["size"]["dish"] == "potatoes"


def test_a_scaled_amount_is_written_in_kitchen_fractions(asked):
    understood = {"scale": {"factor": 7 / 3}, "amount": {"value": 2.0, "unit": "cup", "item": "milk"}}
    assert "4 2/3 cups of milk" in say(asked("scale", understood, "2 cups milk").headline, US)


def test_a_part_frozen_roast_may_thaw_sooner(asked):
    frozen = asked("thaw", {"roast": {"mass_kg": 9.0, "state": "frozen"}})
    part = asked("thaw", {"roast": {"mass_kg": 9.0, "state": "part_frozen"}})
    assert part.data["thaw"]["refrigerator"]["model_h"]["p50"] < frozen.data["thaw"]["refrigerator"]["model_h"]["p50"]
    assert part.data["thaw"]["refrigerator"]["plan_h"] <= frozen.data["thaw"]["refrigerator"]["plan_h"]


def test_a_joint_is_pulled_before_its_target(asked, rules):
    roast = {"kind": "beef_rib", "mass_kg": 3.2, "target_c": 57.0}
    answer = asked("doneness", {"roast": roast, "reading": {"temperature_c": 54.0, "place": "centre"}})
    assert "take it out now" in say(answer.headline, US)
    assert "beef-lamb-time-table" in rules(answer)


def test_hours_said_are_weighed_against_the_thaw(asked):
    roast = {"kind": "turkey", "mass_kg": 20 * LB}
    short = asked("thaw", {"roast": roast, "elapsed_h": 48.0}, "is two days enough in the fridge")
    enough = asked("thaw", {"roast": roast, "elapsed_h": 144.0}, "are six days enough in the fridge")
    assert "may not be enough" in say(short.headline, US)
    assert "should do" in say(enough.headline, US)


def test_salting_dry_and_an_equilibrium_brine_are_their_own_ways(asked):
    roast = {"roast": {"kind": "turkey", "mass_kg": 14 * LB}}
    assert asked("brine", roast, "dry brine a 14 lb turkey").data["brine"]["water_l"] == 0
    weak = asked("brine", roast, "equilibrium brine for a 14 lb turkey").data["brine"]["strength_percent"]
    assert weak < asked("brine", roast, "brine for a 14 lb turkey").data["brine"]["strength_percent"]


def test_a_stick_is_a_measure_where_the_food_has_sticks(asked):
    amount = {"value": 1.0, "unit": "stick", "item": "butter", "target_unit": "g"}
    assert say(asked("convert", {"amount": amount}).headline, US).startswith("1 stick of butter ≈ 11")
