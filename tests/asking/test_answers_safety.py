"""Where an answer could hurt: dangers and their rules, what is refused, and several answers put together."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask
from turnspit.asking.answers import Answer, gravest_first, together
from turnspit.message import Caution, Message
from turnspit.words import Reader, say

NOW = datetime(2026, 11, 25, 9, tzinfo=ZoneInfo("America/New_York"))
US = Reader(NOW)
SPANISH = Reader(NOW, language="es", units="metric", clock="24h")
LB = 0.45359237


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
def test_a_caution_where_it_applies_and_only_there(understood, rule, asked, rules):
    plain = {"roast": {"kind": understood.get("roast", {}).get("kind", "turkey"), "mass_kg": 3.0}}
    with_it = {**plain, **understood, "roast": {**plain["roast"], **understood.get("roast", {})}}
    assert rule in rules(asked("roast_time", with_it))
    assert rule not in rules(asked("roast_time", plain))


def test_an_injected_bird_gets_no_brine_and_no_question(asked, rules):
    answer = asked("brine", {"roast": {"mass_kg": 6.0, "injected": True}})
    assert answer.data["brine"]["allowed"] is False
    assert answer.data["brine"]["salt_g"] == 0
    assert answer.question is None
    assert "No brine" in say(answer.headline, US)
    assert "injected-no-brine" in rules(answer)


def test_one_warm_place_is_no_proof_for_the_others(asked, rules):
    answer = asked("doneness", {"roast": {"mass_kg": 6.0}, "reading": {"temperature_c": 75.0, "place": "wing"}})
    assert answer.data["doneness"]["done"] is True
    assert "every other place" in say(answer.headline, US)
    assert "poultry-165" in rules(answer)


def test_leftovers_carry_the_hours_the_days_and_the_reheating(asked, told, rules):
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
def test_what_cannot_be_is_refused_kindly_and_never_planned(intent, understood, reader, asked, told):
    answer = asked(intent, understood, reader=reader)
    assert "refused" in answer.data
    assert answer.question is not None
    assert "plan" not in answer.data
    assert told(answer, reader)


def test_a_heavy_bird_is_told_the_limits(asked):
    headline = say(asked("roast_time", {"roast": {"mass_kg": 900 * LB}}).headline, US)
    assert headline.startswith("900 lb (408 kg) is more than I can plan one turkey for")


def test_an_empty_line_is_greeted(asked):
    assert say(asked("unknown", {}, "   ").headline, US) == "Ask me about your roast dinner."
    assert "did not catch" in say(asked("unknown", {}, "flux capacitor").headline, US)


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
def test_a_danger_is_named_with_its_rule_and_what_to_do(text, intent, understood, rule, severity, asked):
    answer = asked(intent, understood, text)
    assert (rule, severity) in {(caution.rule, caution.severity) for caution in answer.cautions}
    assert answer.data["safety"]["findings"]


@pytest.mark.parametrize(
    ("kitchen", "part"),
    [("home", "federal consumer guidance"), ("licensed", "FDA Food Code"), (None, "Judged by")],
)
def test_the_kitchen_whose_rule_was_applied_is_named(kitchen, part, asked, told):
    assert part in told(asked("safety", {"elapsed_h": 3.0}, "left it out 3 hours", kitchen=kitchen))


def test_a_roast_of_room_temperature_is_not_what_temperature_means(asked, rules):
    answer = asked("safety", {"roast": {"kind": "turkey"}}, "what temperature should turkey be")
    assert rules(answer) >= {"poultry-165"}
    assert answer.data["safety"]["topic"] == "target"


def test_a_day_old_roast_was_kept_and_a_forgotten_one_stood(asked):
    kept = asked("safety", {"elapsed_h": 72.0}, "is 3 day old turkey ok")
    stood = asked("safety", {"elapsed_h": 30.0}, "turkey sat on the counter for 30 hours")
    assert kept.data["safety"]["topic"] == "keeping"
    assert stood.data["safety"]["topic"] == "left_out"


def test_a_reading_in_the_stuffing_means_a_stuffed_bird(asked, rules):
    answer = asked("doneness", {"reading": {"temperature_c": 65.0, "place": "stuffing"}})
    assert answer.data["doneness"]["station"] == "stuffing"
    assert "stuffing-165" in rules(answer)


def test_hours_in_the_oven_are_not_hours_on_the_counter(asked):
    understood = {"elapsed_h": 3.0, "reading": {"temperature_c": 75.0, "place": "thigh"}}
    answer = asked("safety", understood, "been in the oven 3 hours and the thigh reads 167, safe?")
    assert answer.data["safety"]["topic"] == "reading"


@pytest.mark.parametrize(
    ("temperature_c", "says"), [(75.0, "let it rest"), (70.5, "measure again"), (60.0, "Back into the hot oven")]
)
def test_out_of_the_oven_it_only_rises_so_far(temperature_c, says, asked, rules):
    reading = {"temperature_c": temperature_c, "place": "thigh", "oven_left_on": False}
    answer = asked("doneness", {"roast": {"mass_kg": 7.0}, "reading": reading})
    assert says in say(answer.headline, US)
    assert answer.data["doneness"]["rise_k"] >= 0
    assert "poultry-165" in rules(answer)


def test_a_bird_is_never_reckoned_below_its_safe_temperature(asked):
    answer = asked("roast_time", {"roast": {"kind": "turkey", "mass_kg": 6.0, "target_c": 57.0}})
    assert answer.data["forecast"]["pull_c"] >= 73.8
    assert ("poultry-165", "stop") in {(caution.rule, caution.severity) for caution in answer.cautions}


def test_a_pink_roast_without_a_name_is_no_bird_and_is_asked_for(asked):
    answer = asked("plan", {"roast": {"mass_kg": 3.2, "target_c": 57.0}, "serve_at": "2026-11-25T19:00:00-05:00"})
    assert answer.data["plan"]["roast"]["kind"] == "beef_rib"
    assert answer.asks == "roast.kind"
    assert [say(choice, US) for choice in answer.choices] == ["beef rib roast", "beef tenderloin", "leg of lamb"]


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
def test_of_two_readings_of_a_danger_the_less_safe_is_answered(text, understood, topic, asked):
    assert asked("safety", understood, text).data["safety"]["topic"] == topic


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
def test_what_is_refused_or_missing_is_told_in_words(intent, understood, text, part, asked):
    assert part in say(asked(intent, understood, text).headline, US)


@pytest.mark.parametrize("text", ["crown, 3.1 kg, in at 8, 160 fan, we ok?", "turkey 5 kg at 160 fan, is that safe?"])
def test_the_setting_of_a_fan_oven_is_no_reading(text):
    headline = ask(Line(text, datetime(2026, 12, 13, 12, tzinfo=ZoneInfo("Europe/London"))), None, "id")[0].headline
    assert "It reads" not in headline


def test_an_oven_that_is_hot_enough_is_said_to_be():
    reply = ask(
        Line("turkey 5 kg at 180C ok?", datetime(2026, 12, 13, 12, tzinfo=ZoneInfo("Europe/London"))), None, "id"
    )
    assert "Go on" in reply[0].headline


@pytest.mark.parametrize(
    ("text", "worst"),
    [
        ("my thermometer is out by 2, breast 74 C, ok?", "72 °C"),
        ("thermometer is off by 4, breast 167 F, ok?", "163 °F"),
        ("probe is off by a degree or two, 72 C in the thigh", "70 °C"),
    ],
)
def test_a_probe_that_may_be_off_is_judged_at_its_worst(text, worst):
    reply = ask(Line(text, NOW), None, "id")[0]
    assert worst in reply.headline
    assert any("taken at its worst" in line for line in reply.lines)


def test_an_alarm_that_went_off_is_no_error_of_the_probe():
    assert "worst" not in "".join(
        ask(Line("thermometer went off 10 minutes ago, breast 74", NOW), None, "id")[0].lines
    )


def test_which_rule_holds_is_answered_where_nothing_stood():
    assert ask(Line("2 hour rule or 4 hour rule, buffet", NOW), None, "id")[0].headline.startswith("4 h in all")
    stood = ask(Line("ham sat out 4 hours, is the 2 hour rule strict or not?", NOW), None, "id")[0]
    assert "Throw it away" in stood.headline
