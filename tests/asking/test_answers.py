"""Each answer from what is understood: the numbers a cook acts on, what was assumed, the cautions, the questions."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking.answers import Answer, Enquiry, answer_to, gravest_first, together
from turnspit.asking.contract import INTENTS
from turnspit.message import Caution, Message
from turnspit.words import Reader, say

NOW = datetime(2026, 11, 25, 9, tzinfo=ZoneInfo("America/New_York"))
US = Reader(NOW)
SPANISH = Reader(NOW, language="es", units="metric", clock="24h")
LB = 0.45359237


def asked(intent, understood=None, text="", reader=US, kitchen=None) -> Answer:
    return answer_to(intent, Enquiry(understood or {}, reader, NOW, kitchen, text))


def told(answer: Answer, reader=US) -> str:
    return "\n".join(say(message, reader) for message in (answer.headline, *answer.lines))


def rules(answer: Answer) -> set[str]:
    return {caution.rule for caution in answer.cautions}


def test_size_tells_both_weights_and_assumes_a_turkey():
    answer = asked("size", {"covers": 14})
    assert say(answer.headline, US) == "About 14 lb (6.4 kg) of turkey for 14; 21 lb (9.5 kg) if you want leftovers."
    assert "edible" in told(answer)
    assert answer.assumed["roast.kind"] == "turkey"
    assert answer.data["size"]["total_kg"] == pytest.approx(14 * LB)


def test_size_with_leftovers_leads_with_the_larger():
    answer = asked("size", {"covers": 14, "leftovers_wanted": True})
    assert say(answer.headline, US).startswith("About 21 lb")


def test_size_without_diners_asks_for_them_with_choices():
    answer = asked("size", {"roast": {"kind": "goose"}})
    assert answer.asks == "covers"
    assert [say(choice, US) for choice in answer.choices][:2] == ["for 6", "for 8"]


def test_size_the_other_way_round_tells_how_many_it_feeds():
    assert "feeds about 16, or 10 with leftovers" in say(asked("size", {"roast": {"mass_kg": 16 * LB}}).headline, US)


def test_roast_time_is_a_window_with_a_first_check():
    answer = asked("roast_time", {"roast": {"kind": "turkey", "mass_kg": 16 * LB}})
    ready = answer.data["forecast"]["ready_min"]
    assert ready["p10"] < ready["p50"] < ready["p90"]
    assert answer.data["forecast"]["check_from_min"] <= ready["p10"]
    assert "Start checking at" in say(answer.headline, US)
    assert {"poultry-165", "thermometer-decides"} <= rules(answer)
    assert answer.assumed["oven.temperature_c"] == 163.0


def test_roast_time_on_the_clock_when_the_start_is_said():
    answer = asked("roast_time", {"roast": {"mass_kg": 16 * LB}, "start_at": "2026-11-25T13:00:00-05:00"})
    assert "in at 1 pm: ready" in say(answer.headline, US)


def test_what_was_said_is_not_assumed():
    understood = {
        "roast": {"kind": "turkey", "mass_kg": 7.0, "state": "thawed", "stuffed": False},
        "oven": {"temperature_c": 163.0, "convection": True},
    }
    answer = asked("roast_time", understood)
    assert answer.assumed == {}
    assert answer.assumptions == ()


@pytest.mark.parametrize(
    ("understood", "rule"),
    [
        ({"oven": {"temperature_c": 150.0}}, "oven-325"),
        ({"roast": {"stuffed": True}}, "stuffing-165"),
        ({"roast": {"state": "frozen"}}, "from-frozen"),
        ({"roast": {"kind": "beef_rib", "target_c": 54.0}}, "beef-lamb-time-table"),
        ({"roast": {"kind": "pork_loin", "target_c": 57.0}}, "meat-145"),
    ],
)
def test_a_caution_where_it_applies_and_only_there(understood, rule):
    plain = {"roast": {"kind": understood.get("roast", {}).get("kind", "turkey"), "mass_kg": 3.0}}
    with_it = {**plain, **understood, "roast": {**plain["roast"], **understood.get("roast", {})}}
    assert rule in rules(asked("roast_time", with_it))
    assert rule not in rules(asked("roast_time", plain))


def test_thaw_tells_days_hours_and_the_way_from_frozen():
    answer = asked("thaw", {"roast": {"kind": "turkey", "mass_kg": 22 * LB}})
    words = told(answer)
    assert "5–6 days in the refrigerator" in words
    assert "30 min a pound" in words
    assert "11 h" in words
    assert "half as long again" in words
    assert {"thaw-counter", "thaw-cold-water"} <= rules(answer)


def test_thaw_today_leads_with_the_quick_ways():
    headline = say(asked("thaw", {"roast": {"state": "frozen"}}, "it's still frozen").headline, US)
    assert "cold water, 30 min a pound" in headline
    assert "half as long again or more" in headline


def test_a_long_cold_water_thaw_is_no_way_for_a_licensed_kitchen():
    understood = {"roast": {"kind": "turkey", "mass_kg": 22 * LB}}
    assert "licensed kitchen cold water may not do" in told(asked("thaw", understood, kitchen="licensed"))
    assert "licensed kitchen" not in told(asked("thaw", understood, kitchen="home"))


def test_brine_fits_the_bucket_and_asks_how_the_bird_was_sold():
    answer = asked("brine", {"roast": {"kind": "turkey", "mass_kg": 18 * LB}, "brine": {"vessel_l": 18.927}})
    assert "It fits" in told(answer)
    assert answer.asks == "roast.injected"
    assert len(answer.choices) == 3
    assert {"brine-cold", "brine-discard"} <= rules(answer)
    assert answer.data["brine"]["fits"] is True


def test_an_injected_bird_gets_no_brine_and_no_question():
    answer = asked("brine", {"roast": {"mass_kg": 6.0, "injected": True}})
    assert answer.data["brine"]["allowed"] is False
    assert answer.data["brine"]["salt_g"] == 0
    assert answer.question is None
    assert "No brine" in say(answer.headline, US)
    assert "injected-no-brine" in rules(answer)


def test_salt_by_volume_is_a_range_by_its_kind():
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
def test_conversions_in_one_line(amount, headline):
    assert say(asked("convert", {"amount": amount}).headline, US) == headline


def test_a_cup_of_what_is_asked_back():
    answer = asked("convert", {"amount": {"value": 2.0, "unit": "cup", "target_unit": "g"}})
    assert answer.asks == "amount.item"
    assert answer.question is not None


def test_scaling_an_amount_tells_what_does_not_follow():
    answer = asked(
        "scale", {"scale": {"from": 6, "to": 15}, "amount": {"value": 2.0, "unit": "cup", "item": "flour"}}
    )
    assert say(answer.headline, US) == "2 cups of flour × 2.5 = 5 cups of flour"
    assert "salt" in told(answer)
    assert answer.data["scale"]["factor"] == 2.5


def test_a_reading_gives_a_window_and_weighs_it_against_dinner():
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


def test_of_several_readings_the_slowest_place_decides():
    readings = [{"temperature_c": 70.0, "place": "breast"}, {"temperature_c": 58.0, "place": "thigh"}]
    answer = asked("doneness", {"roast": {"mass_kg": 6.0}, "reading": readings[1], "readings": readings})
    assert answer.data["doneness"]["station"] == "thigh"
    assert "reading.at" in answer.assumed


def test_one_warm_place_is_no_proof_for_the_others():
    answer = asked("doneness", {"roast": {"mass_kg": 6.0}, "reading": {"temperature_c": 75.0, "place": "wing"}})
    assert answer.data["doneness"]["done"] is True
    assert "every other place" in say(answer.headline, US)
    assert "poultry-165" in rules(answer)


def test_probing_without_a_reading():
    words = told(asked("doneness", {}, "where do I put the probe"))
    for part in ("deepest breast", "inner thigh", "wing joint", "off the bone", "coldest counts", "165 °F"):
        assert part in words


def test_early_is_held_hot():
    answer = asked("doneness", {}, "it's done early, two hours to go")
    assert "about 30 min" in say(answer.headline, US)
    assert "140 °F" in say(answer.headline, US)
    assert {"hot-hold", "two-hours"} <= rules(answer)


def test_carving_starts_with_the_rest():
    words = told(asked("carve", {"roast": {"kind": "turkey", "mass_kg": 9.0}}, "how do I carve it"))
    assert "Rest" in words
    assert "legs off at the joint" in words
    assert "carved meat" in words


def test_leftovers_carry_the_hours_the_days_and_the_reheating():
    answer = asked("leftovers", {}, "leftovers", kitchen="home")
    words = told(answer)
    for part in ("Within 2 h", "off the bone", "shallow", "3–4 days", "165 °F"):
        assert part in words
    assert {"two-hours", "leftovers-days", "reheat-165"} <= rules(answer)
    assert "70 °F" not in words
    assert "70 °F" in told(asked("leftovers", {}, "leftovers", kitchen="licensed"))


@pytest.mark.parametrize(
    ("intent", "understood"),
    [
        ("roast_time", {"roast": {"mass_kg": 408.2}}),
        ("roast_time", {"roast": {"mass_kg": -3.0}}),
        ("thaw", {"roast": {"mass_kg": 408.2}}),
        ("brine", {"roast": {"mass_kg": 408.2}}),
        ("doneness", {"reading": {"temperature_c": 400.0, "place": "breast"}}),
        ("size", {"covers": -4}),
        ("size", {"covers": 10**7}),
        ("convert", {"amount": {"value": -2.0, "unit": "cup", "item": "flour"}}),
        ("convert", {"amount": {"value": -500.0, "unit": "degC", "target_unit": "degF"}}),
        ("scale", {"scale": {"from": 0, "to": 4}}),
        ("scale", {"scale": {"factor": 1e9}}),
    ],
)
@pytest.mark.parametrize("reader", [US, SPANISH])
def test_what_cannot_be_is_refused_kindly_and_never_planned(intent, understood, reader):
    answer = asked(intent, understood, reader=reader)
    assert "refused" in answer.data
    assert answer.question is not None
    assert "plan" not in answer.data
    assert told(answer, reader)


def test_a_heavy_bird_is_told_the_limits():
    headline = say(asked("roast_time", {"roast": {"mass_kg": 900 * LB}}).headline, US)
    assert headline.startswith("900 lb (408 kg) is more than I can plan one turkey for")


def test_an_empty_line_is_greeted():
    assert say(asked("unknown", {}, "   ").headline, US) == "Ask me about your roast dinner."
    assert "did not catch" in say(asked("unknown", {}, "flux capacitor").headline, US)


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
def test_every_answer_can_be_said_in_every_language_with_reasons_and_next_lines(intent, reader):
    answer = asked(intent, EXAMPLES.get(intent, {}), "left out 3 hours" if intent == "safety" else "", reader)
    assert say(answer.headline, reader)
    for message in (*answer.lines, *answer.reasons, *answer.assumptions, *answer.choices, *answer.next):
        assert say(message, reader)
    for caution in answer.cautions:
        assert say(caution.message, reader)
    assert 2 <= len(answer.next) <= 3
    assert answer.reasons or intent in {"help", "unknown"}


def test_together_the_first_leads_and_nothing_is_lost():
    one = Answer(Message("a"), lines=(Message("b"),), next=(Message("n1"), Message("n2")), data={"one": 1})
    two = Answer(Message("c"), lines=(Message("b"), Message("d")), next=(Message("m1"),), data={"two": 2}, asks="x")
    both = together([one, two])
    assert both.headline == Message("a")
    assert both.lines == (Message("b"), Message("c"), Message("d"))
    assert both.next == (Message("n1"), Message("m1"), Message("n2"))
    assert both.data == {"one": 1, "two": 2}


def test_each_rule_once_at_its_gravest():
    cautions = [
        Caution("a", "info", Message("x")),
        Caution("b", "stop", Message("y")),
        Caution("a", "warn", Message("x")),
    ]
    assert [(c.rule, c.severity) for c in gravest_first(cautions)] == [("b", "stop"), ("a", "warn")]


@pytest.mark.parametrize(
    ("text", "intent", "understood", "rule", "severity"),
    [
        ("left it out 3 hours", "safety", {"elapsed_h": 3.0}, "two-hours", "stop"),
        ("can I thaw it on the counter?", "safety", {}, "thaw-counter", "stop"),
        ("stuffed the night before", "safety", {"roast": {"stuffed": True}}, "stuffing-just-before", "stop"),
        ("I washed the bird", "safety", {}, "no-washing", "warn"),
        ("can I refreeze it", "safety", {}, "refreeze", "warn"),
        ("brine in the garage at 48 F", "brine", {"reading": {"temperature_c": 8.89}}, "brine-cold", "stop"),
        ("can I use the brine again", "brine", {}, "brine-discard", "stop"),
        ("can I brine a kosher turkey", "brine", {}, "injected-no-brine", "warn"),
        ("reheat it whole", "leftovers", {}, "reheat-165", "warn"),
        ("leftovers from 5 days ago", "leftovers", {"elapsed_h": 120.0}, "leftovers-days", "stop"),
        ("partial cooking today, finish tomorrow", "safety", {}, "partial-cooking", "stop"),
        ("gravy kept warm at 120", "safety", {"reading": {"temperature_c": 48.89}}, "hot-hold", "stop"),
        (
            "is 160 in the thigh ok",
            "safety",
            {"reading": {"temperature_c": 71.1, "place": "thigh"}},
            "poultry-165",
            "stop",
        ),
        ("slow oven at 200 F", "safety", {"oven": {"temperature_c": 93.3}, "elapsed_h": 12.0}, "slow-oven", "stop"),
        ("¿puedo descongelarlo en la encimera?", "safety", {}, "thaw-counter", "stop"),
        ("lo dejé fuera 3 horas", "safety", {"elapsed_h": 3.0}, "two-hours", "stop"),
    ],
)
def test_a_danger_is_named_with_its_rule_and_what_to_do(text, intent, understood, rule, severity):
    answer = asked(intent, understood, text)
    assert (rule, severity) in {(caution.rule, caution.severity) for caution in answer.cautions}
    assert answer.data["safety"]["findings"]


@pytest.mark.parametrize(
    ("kitchen", "part"),
    [("home", "federal consumer guidance"), ("licensed", "FDA Food Code"), (None, "Judged by")],
)
def test_the_kitchen_whose_rule_was_applied_is_named(kitchen, part):
    assert part in told(asked("safety", {"elapsed_h": 3.0}, "left it out 3 hours", kitchen=kitchen))


def test_a_roast_of_room_temperature_is_not_what_temperature_means():
    answer = asked("safety", {"roast": {"kind": "turkey"}}, "what temperature should turkey be")
    assert rules(answer) >= {"poultry-165"}
    assert answer.data["safety"]["topic"] == "target"


def test_a_day_old_roast_was_kept_and_a_forgotten_one_stood():
    kept = asked("safety", {"elapsed_h": 72.0}, "is 3 day old turkey ok")
    stood = asked("safety", {"elapsed_h": 30.0}, "turkey sat on the counter for 30 hours")
    assert kept.data["safety"]["topic"] == "keeping"
    assert stood.data["safety"]["topic"] == "left_out"


def test_a_reading_in_the_stuffing_means_a_stuffed_bird():
    answer = asked("doneness", {"reading": {"temperature_c": 65.0, "place": "stuffing"}})
    assert answer.data["doneness"]["station"] == "stuffing"
    assert "stuffing-165" in rules(answer)


def test_a_frozen_roast_with_a_dinner_is_planned_at_once():
    understood = {"roast": {"mass_kg": 9.0, "state": "frozen"}, "serve_at": "2026-11-26T18:00:00-05:00"}
    answer = asked("thaw", understood, "it's still frozen")
    assert answer.data["plan"]["serve_at"]
    assert "30 min a pound" in told(answer)
    early = {**understood, "serve_at": "2026-12-03T18:00:00-05:00"}
    assert "Thaw the 19.8 lb" in told(asked("thaw", early, "when do I take it out of the freezer"))


def test_hours_in_the_oven_are_not_hours_on_the_counter():
    understood = {"elapsed_h": 3.0, "reading": {"temperature_c": 75.0, "place": "thigh"}}
    answer = asked("safety", understood, "been in the oven 3 hours and the thigh reads 167, safe?")
    assert answer.data["safety"]["topic"] == "reading"


def test_a_named_roast_is_weighed_against_the_diners():
    assert "is enough for 10" in say(asked("size", {"roast": {"mass_kg": 12 * LB}, "covers": 10}).headline, US)
    assert "short for 20 by about 8 lb" in say(
        asked("size", {"roast": {"mass_kg": 12 * LB}, "covers": 20}).headline, US
    )


def test_how_long_tells_the_dinner_that_is_known():
    answer = asked("roast_time", {"roast": {"mass_kg": 7.0}, "serve_at": "2026-11-25T18:00:00-05:00"})
    assert "serve at 6 pm" in told(answer)


@pytest.mark.parametrize("intent", ["carve", "safety", "doneness"])
def test_done_early_is_one_answer_wherever_it_is_asked(intent):
    assert "about 30 min" in say(asked(intent, {}, "it's done early").headline, US)


def test_a_named_recipe_is_scaled_line_by_line():
    answer = asked("scale", {"scale": {"to": 28}}, "scale the gravy to 28")
    words = told(answer)
    assert "for 28 (times 2)" in words
    assert "1 cup turkey drippings" in words
    assert answer.data["scale"]["factor"] == 2.0
    assert "allergens" in rules(answer)


def test_a_pasted_recipe_is_scaled_line_by_line():
    text = "for 12 please\nserves 4\n2 cups flour\n1 tsp salt\n3 eggs"
    answer = asked("scale", {"scale": {"from": 4, "to": 12}}, text)
    assert {"6 cups flour", "1 tbsp salt", "9 eggs"} <= set(answer.data["scale"]["lines"])


def test_a_side_dish_is_sized_by_its_own_portions():
    answer = asked("size", {"covers": 20}, "how much mashed potatoes for 20")
    assert say(answer.headline, US).startswith("potatoes for 20: 7.2 lb")
    assert answer.data["size"]["dish"] == "potatoes"


def test_a_scaled_amount_is_written_in_kitchen_fractions():
    understood = {"scale": {"factor": 7 / 3}, "amount": {"value": 2.0, "unit": "cup", "item": "milk"}}
    assert "4 2/3 cups of milk" in say(asked("scale", understood, "2 cups milk").headline, US)


@pytest.mark.parametrize(
    ("temperature_c", "says"), [(75.0, "let it rest"), (70.5, "measure again"), (60.0, "Back into the hot oven")]
)
def test_out_of_the_oven_it_only_rises_so_far(temperature_c, says):
    reading = {"temperature_c": temperature_c, "place": "thigh", "oven_left_on": False}
    answer = asked("doneness", {"roast": {"mass_kg": 7.0}, "reading": reading})
    assert says in say(answer.headline, US)
    assert answer.data["doneness"]["rise_k"] >= 0
    assert "poultry-165" in rules(answer)


def test_a_part_frozen_roast_may_thaw_sooner():
    frozen = asked("thaw", {"roast": {"mass_kg": 9.0, "state": "frozen"}})
    part = asked("thaw", {"roast": {"mass_kg": 9.0, "state": "part_frozen"}})
    assert part.data["thaw"]["refrigerator"]["model_h"]["p50"] < frozen.data["thaw"]["refrigerator"]["model_h"]["p50"]
    assert part.data["thaw"]["refrigerator"]["plan_h"] <= frozen.data["thaw"]["refrigerator"]["plan_h"]


def test_a_bird_is_never_reckoned_below_its_safe_temperature():
    answer = asked("roast_time", {"roast": {"kind": "turkey", "mass_kg": 6.0, "target_c": 57.0}})
    assert answer.data["forecast"]["pull_c"] >= 73.8
    assert ("poultry-165", "stop") in {(caution.rule, caution.severity) for caution in answer.cautions}


def test_a_pink_roast_without_a_name_is_no_bird_and_is_asked_for():
    answer = asked("plan", {"roast": {"mass_kg": 3.2, "target_c": 57.0}, "serve_at": "2026-11-25T19:00:00-05:00"})
    assert answer.data["plan"]["roast"]["kind"] == "beef_rib"
    assert answer.asks == "roast.kind"
    assert [say(choice, US) for choice in answer.choices] == ["beef rib roast", "beef tenderloin", "leg of lamb"]


def test_a_joint_is_pulled_before_its_target():
    roast = {"kind": "beef_rib", "mass_kg": 3.2, "target_c": 57.0}
    answer = asked("doneness", {"roast": roast, "reading": {"temperature_c": 54.0, "place": "centre"}})
    assert "take it out now" in say(answer.headline, US)
    assert "beef-lamb-time-table" in rules(answer)


@pytest.mark.parametrize(
    ("text", "understood", "topic"),
    [
        ("leftovers left out for 4 hours, still good?", {"elapsed_h": 4.0, "subject": "leftovers"}, "left_out"),
        ("is 3 hours too long on the buffet", {"elapsed_h": 3.0}, "left_out"),
        ("can I roast it at 225 overnight", {"elapsed_h": 12.0, "oven": {"temperature_c": 107.0}}, "oven"),
        ("start the turkey the night before at 180", {"reading": {"temperature_c": 82.2}}, "oven"),
        ("turkey thawed a week ago still ok", {"elapsed_h": 168.0}, "thawed_keeps"),
        ("can I serve lamb pink", {"subject": "lamb"}, "target"),
        ("can you stuff a frozen turkey", {"roast": {"state": "frozen"}}, "from_frozen"),
        ("how long can gravy stand at room temperature", {"subject": "gravy"}, "standing_limit"),
        ("leftovers in the fridge for 12 hours", {"elapsed_h": 12.0}, "keeping"),
    ],
)
def test_of_two_readings_of_a_danger_the_less_safe_is_answered(text, understood, topic):
    assert asked("safety", understood, text).data["safety"]["topic"] == topic


def test_hours_said_are_weighed_against_the_thaw():
    roast = {"kind": "turkey", "mass_kg": 20 * LB}
    short = asked("thaw", {"roast": roast, "elapsed_h": 48.0}, "is two days enough in the fridge")
    enough = asked("thaw", {"roast": roast, "elapsed_h": 144.0}, "are six days enough in the fridge")
    assert "may not be enough" in say(short.headline, US)
    assert "should do" in say(enough.headline, US)


def test_salting_dry_and_an_equilibrium_brine_are_their_own_ways():
    roast = {"roast": {"kind": "turkey", "mass_kg": 14 * LB}}
    assert asked("brine", roast, "dry brine a 14 lb turkey").data["brine"]["water_l"] == 0
    weak = asked("brine", roast, "equilibrium brine for a 14 lb turkey").data["brine"]["strength_percent"]
    assert weak < asked("brine", roast, "brine for a 14 lb turkey").data["brine"]["strength_percent"]


@pytest.mark.parametrize(
    ("intent", "understood", "text", "part"),
    [
        ("brine", {"roast": {"mass_kg": 6.0}, "brine": {"vessel_l": 5000.0}}, "", "outside what I can answer for"),
        ("roast_time", {"roast": {"kind": "unicorn"}}, "", "I do not know “unicorn”"),
        ("convert", {"amount": {"value": 3.0, "unit": "m"}}, "", "I do not know “m”"),
        (
            "convert",
            {"amount": {"value": 2.0, "unit": "cup", "item": "gold dust", "target_unit": "g"}},
            "",
            "gold dust",
        ),
        ("convert", {"amount": {"value": 350.0}}, "convert 350", "I need an amount and its unit"),
        ("scale", {}, "scale the recipe", "from how many servings"),
        ("roast_time", {"roast": {"mass_kg": 0.05}}, "", "less than I can plan one turkey for"),
        ("roast_time", {"oven": {"temperature_c": 900.0}}, "", "outside what I can answer for"),
    ],
)
def test_what_is_refused_or_missing_is_told_in_words(intent, understood, text, part):
    assert part in say(asked(intent, understood, text).headline, US)


def test_a_stick_is_a_measure_where_the_food_has_sticks():
    amount = {"value": 1.0, "unit": "stick", "item": "butter", "target_unit": "g"}
    assert say(asked("convert", {"amount": amount}).headline, US).startswith("1 stick of butter ≈ 11")
