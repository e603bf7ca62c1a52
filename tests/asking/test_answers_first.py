"""What was asked is answered first, the stop above all else, in the reader's units and without contradiction."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask

NOW = datetime(2026, 11, 25, 9, tzinfo=ZoneInfo("America/New_York"))


def talk(*lines, now=NOW, **options):
    conversation = None
    for text in lines:
        reply, conversation = ask(Line(text, now, **options), conversation, "id")
    return reply


def words(reply):
    return "\n".join((reply.headline, *reply.lines))


def stops(reply):
    return {caution.rule for caution in reply.cautions if caution.severity == "stop"}


@pytest.mark.parametrize(
    ("text", "rule", "part"),
    [
        ("pulled the bird at 158, resting, is it safe", "poultry-165", "Not safe yet: 158 °F"),
        ("is it safe to eat turkey at 150 if I hold it for 5 minutes", "poultry-165", "must read 165 °F"),
        ("beef rib at 125 ok for the kids", "at-risk", "145 °F"),
        ("cooked turkey been in fridge 5 days", "leftovers-days", "Throw it away"),
        ("can I cook the turkey halfway tonight", "partial-cooking", "No, not half now"),
        ("reheat turkey in slow cooker", "reheat-165", "No, not in a slow cooker"),
        ("recalentar el pavo en olla lenta", "reheat-165", "olla lenta no"),
        ("turkey thawing in the garage, it's 50 degrees there", "cold-hold", "No: 50 °F"),
        ("stuffed it the night before", "stuffing-just-before", "No stuffing ahead"),
        ("lo rellené anoche", "stuffing-just-before", "Rellenar antes, no"),
        ("fridge was off 6 hours", "power-cut", "Throw it away"),
        ("la nevera estuvo apagada 6 horas", "power-cut", "Tírelo"),
        ("is 3 days too long in brine", "brine-cold", "Too long: two days at most"),
        ("¿son demasiado 3 días en salmuera?", "brine-cold", "Demasiado: dos días"),
    ],
)
def test_a_stop_is_the_headline(text, rule, part):
    reply = talk(text)
    assert rule in stops(reply)
    assert part in reply.headline


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("how long can i leave a cooked turkey out", "2 h in all"),
        ("how long can i leave stuffing out", "2 h in all"),
        ("¿cuánto tiempo puede estar fuera el pavo cocido?", "2 h en total"),
        ("can I refreeze a thawed turkey", "Yes, if it thawed in the refrigerator"),
        ("¿puedo volver a congelar el pavo?", "Sí, si se descongeló en el refrigerador"),
        ("can I brine a butterball", "No brine and no added salt"),
        ("¿puedo poner en salmuera un pavo?", "Lea primero la etiqueta"),
        ("is 8 hours long enough to brine", "Yes, 8 h is enough"),
        ("is a day too long to brine a turkey", "No, 24 h is not too long"),
        ("will a 12 lb turkey fit in a 4 gallon pot", "It fits"),
        ("will a 20 lb turkey fit in a 3 gallon pot", "It will not fit"),
        ("cold water overnite", "Not overnight"),
        ("will it be thawed by thursday", "No: in the refrigerator now"),
        ("can I thaw the turkey in the garage", "No, not there"),
        ("180 covers how many 22 lb turkeys", "9 turkeys of 22 lb"),
        ("is 125 ok for beef", "too rare to be safe: cook on to 145 °F"),
        ("wet brined 18 hours", "18 h is right"),
    ],
)
def test_what_was_asked_is_answered_first(text, part):
    assert part in talk(text).headline


def test_hours_of_roasting_are_not_hours_in_the_refrigerator():
    reply = talk("turkey been in the oven 3 hours, thigh reads 150, is it safe")
    assert "poultry-165" in stops(reply)


def test_a_plan_with_its_hour_stays_behind_the_danger():
    reply = talk("can I cook the 14 lb turkey halfway tonight, dinner tomorrow at 6")
    assert "partial-cooking" in stops(reply)
    assert reply.headline.startswith("No, not half now")


@pytest.mark.parametrize(
    "text", ["how long do I leave the turkey in the oven, then take it out", "stuffed 16 lb turkey tonight"]
)
def test_an_honest_roast_is_no_danger(text):
    assert not stops(talk(text))


@pytest.mark.parametrize(
    "text", ["left it out 3 hours", "cooked turkey been in fridge 5 days", "fridge was off 6 hours"]
)
def test_nothing_is_offered_for_what_was_thrown_away(text):
    offered = " ".join(talk(text).next)
    assert len(talk(text).next) == 3
    assert "reheat" not in offered
    assert "freeze" not in offered


@pytest.mark.parametrize(
    "text",
    [
        "5 lb pork shoulder, dinner at 6",
        "how long does a 5 lb pork shoulder take",
        "pork shoulder reads 135 in the centre",
    ],
)
def test_meat_that_rises_in_the_rest_is_measured_before_it_is_carved(text):
    reply = talk(text)
    assert "Before it is carved its centre must read 145 °F (63 °C), measured" in words(reply)
    assert "to pull it apart take it slowly to 199 °F" in words(reply)


def test_rare_meat_is_told_to_be_below_the_safe_minimum():
    assert "below the safe minimum of 145 °F (63 °C)" in words(talk("rare 7 lb beef rib, how long"))
    assert "measured" not in words(talk("16 lb turkey, how long"))


@pytest.mark.parametrize(
    "text", ["brined 16 lb turkey, dinner at 6", "16 lb turkey already brined, dinner tomorrow at 6"]
)
def test_a_brined_bird_is_not_salted_again(text):
    reply = talk(text)
    assert reply.assumptions[0] == "Taken as brined already: no more salt on it, or only lightly."
    told = str(reply.data["plan"])
    assert "brine_in" not in told
    assert "the skin is salted" not in " ".join(reply.assumptions)


def test_an_old_reading_is_overdue():
    at_five = NOW.replace(hour=16, minute=40)
    reply = talk("160 in the thigh at 3:15 pm, 14 lb turkey", now=at_five)
    assert "Read it again now" in reply.headline


def test_a_roast_that_is_not_in_yet_is_reckoned_from_its_reading():
    reply = talk("bird in at 1pm, 125 in breast now")
    assert reply.headline.startswith("125 °F")
    assert any("still to come" in assumption for assumption in reply.assumptions)


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("la pechuga marca 68", "68 °C (154 °F)"),
        ("68 in the breast", "68 °C (154 °F)"),
        ("el pavo sigue congelado", "6,4 kg (14 lb)"),
        ("pavo de 16 libras, ¿cuánto tarda?", "16 lb (7,3 kg)"),
        ("154 in the breast", "154 °F (68 °C)"),
    ],
)
def test_the_reader_s_own_units_lead(text, part):
    assert part in words(talk(text))


def test_a_spanish_span_is_no_clock_time():
    headline = talk("¿cuánto tarda un pavo de 7 kg?").headline
    assert "después de meterlo" in headline
    assert "a las 3 h" not in headline


def test_several_roasts_are_told_in_the_plural():
    assert "2 turkeys of 13 lb (5.9 kg) each" in talk("two 13 lb birds, how long").headline
    assert "2 pavos de 6 kg" in talk("dos pavos de 6 kg, ¿cuánto tardan?").headline


@pytest.mark.parametrize(("text", "part"), [("thanks!", "welcome"), ("muchas gracias", "De nada")])
def test_thanks_are_answered_in_kind_and_change_nothing(text, part):
    first, before = ask(Line("16 lb bird, dinner at 6", NOW), None, "id")
    reply, after = ask(Line(text, NOW), before, "id")
    assert part in reply.headline
    assert after == before
    assert first.understood == after.understood


@pytest.mark.parametrize("text", ["900 lb turkey", "turkey at 1200 F how long", "breast reads 400 F"])
def test_a_value_that_cannot_be_is_asked_again_with_lines_to_tap(text):
    reply, conversation = ask(Line(text, NOW), None, "id")
    assert len(reply.question.choices) == 3
    again, _ = ask(Line(reply.question.choices[1], NOW), conversation, "id")
    assert "refused" not in again.data


def test_why_is_three_reasons_with_numbers_and_then_the_sources():
    reply = talk("16 lb bird, dinner at 6", "why?")
    assert len(reply.lines) == 4
    assert "256 computed roasts" in reply.lines[0]
    assert reply.lines[-1].startswith("Sources:")
    assert len(talk("16 lb bird, dinner at 6", "why?", explain=True).lines) > 4


@pytest.mark.parametrize("text", ["why?", "how do I carve it?", "leftovers"])
def test_the_line_just_typed_is_not_offered_again(text):
    assert text not in talk("16 lb bird, dinner at 6", text).next


@pytest.mark.parametrize(
    ("text", "rule"),
    [
        ("is turkey at 155 held 1 minute safe", "poultry-165"),
        ("can I leave the turkey in the oven off overnight", "two-hours"),
        ("cooked turkey cooled on the counter all night", "two-hours"),
        ("left it out", "two-hours"),
        ("dejé el pavo fuera", "two-hours"),
        ("can I cook a stuffed frozen turkey", "from-frozen"),
        ("tengo un pavo relleno congelado, ¿lo descongelo?", "from-frozen"),
        ("llevo 3 días con el pavo en salmuera", "brine-cold"),
        ("turkey in the brine for 3 days, still ok?", "brine-cold"),
        ("can I roast it at 200 overnight", "slow-oven"),
        ("el pavo lleva 3 días en la nevera descongelado", "thawed-keeps"),
        ("can i leave the turkey on the counter overnight to thaw", "thaw-counter"),
        ("saqué el pavo a 70 grados, ¿es seguro?", "poultry-165"),
        ("walk-in is at 45 F", "cold-hold"),
        ("smells a little sour, is it ok", "leftovers-days"),
    ],
)
def test_of_several_readings_the_less_safe_stops(text, rule):
    assert rule in stops(talk(text))


@pytest.mark.parametrize("before", ["it's done early", "can I deep fry a turkey", "is it pink"])
def test_what_was_spoken_of_before_hides_no_danger(before):
    assert "two-hours" in stops(talk("14 lb turkey dinner at 5", before, "left it out 3 hours"))


def test_a_limit_is_asked_anew_after_an_accident():
    assert talk("left it out 3 hours", "how long can it sit out?").headline.startswith("2 h in all")


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("hold carved turkey at 150 on the steam table for 3 hours, ok?", "Keep it that hot"),
        ("fridge is at 38, ok?", "cold enough"),
        (
            "how do I know when a 3 kg pork loin is done",
            "Out when the centre, off the bone, reads 57 °C (134 °F); resting takes it to about 63 °C",
        ),
        ("how long do I brine a chicken", "¾ cup table salt a gallon"),
    ],
)
def test_what_is_safe_is_not_stopped(text, part):
    assert part in talk(text).headline
    assert not stops(talk(text))


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("turkey's done and dinner is at 6, what do I do", "Done early: take it out"),
        ("el pavo está listo y la cena es en dos horas", "Listo antes de tiempo"),
        ("how much salt per gallon for a brine", "¾ cup table salt a gallon"),
        ("what temp should stuffing be", "165 °F (74 °C) in the middle of the stuffing"),
        ("¿a qué temperatura está hecho el pollo?", "74 °C (165 °F), medidos"),
        ("popup timer popped, is it done", "nor does a pop-up button"),
        ("horno a 180 C en F", "180 °C ≈ 355 °F en el mando del horno"),
        ("how long does raw turkey keep in the fridge", "Raw it keeps 2 days"),
        ("turkey sat in the car 1.5 hours", "on a day above 90 °F"),
    ],
)
def test_the_short_answer_leads(text, part):
    assert part in talk(text).headline


def test_half_a_name_is_no_turkey():
    reply, _ = ask(Line("cordero de 2 kg a 180 grados, ¿cuánto tarda?", NOW), None, "id")
    assert reply.headline.startswith("Pierna de cordero de 2 kg")
    assert reply.understood["roast"]["kind"] == "lamb_leg"
    assert talk("lamb 5 lb dinner at 7").data["plan"]["roast"]["kind"] == "lamb_leg"


def test_guests_at_risk_are_named_in_the_cautions():
    assert "at-risk" in {caution.rule for caution in talk("my mother is pregnant, is pink beef ok").cautions}


def test_a_fan_oven_is_counted_by_what_it_does():
    rules = {caution.rule for caution in talk("6 kg turkey, fan oven 160 C, how long").cautions}
    assert "oven-325" not in rules
    still = {caution.rule for caution in talk("6 kg turkey, oven 150 C, how long").cautions}
    assert "oven-325" in still


@pytest.mark.parametrize(
    ("text", "part"),
    [("2 lb beef tenderloin, dinner at 7", "make it 3 lb"), ("30 lb turkey, dinner tomorrow at 7", "make it 22 lb")],
)
def test_another_size_is_one_that_can_be(text, part):
    assert talk(text).next[0] == part


def test_a_brine_offers_only_what_was_not_said():
    assert "use coarse kosher salt" not in talk("brine for a 16 lb turkey with coarse kosher salt").next
    assert not any("bucket" in text for text in talk("dry brine a 14 lb turkey").next)


@pytest.mark.parametrize(
    ("text", "rule", "part"),
    [
        ("the bird has been in the car for three hours, can I still cook it", "two-hours", "Throw it away"),
        ("leftovers read 150 after microwaving ok to eat?", "reheat-165", "Reheat it until"),
        ("brine 10000 hours", "brine-cold", "Too long: two days at most"),
    ],
)
def test_a_danger_in_another_question_is_still_a_stop(text, rule, part):
    reply = talk(text)
    assert rule in stops(reply)
    assert part in reply.headline


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("can you freeze cooked turkey", "Yes, into the freezer"),
        ("how do you carve a turkey breast", "each side off the breastbone"),
        ("do I rinse after brining", "No: washing"),
        ("can i cook the turkey at 250 F", "No: 250 °F"),
        ("is 145 safe for pork loin", "145 °F (63 °C) is enough"),
        ("¿puedo lavar el pavo?", "No: lavar"),
    ],
)
def test_a_yes_or_no_comes_first(text, part):
    assert part in talk(text).headline


def test_a_question_goes_on_about_another_dish():
    assert talk("how long can gravy sit out", "and stuffing?").headline.startswith("2 h in all")


def test_the_way_that_is_left_stands_before_why_the_other_is_not():
    reply = talk("frozen 20 lb turkey, dinner tomorrow at 2")
    assert reply.headline.startswith("Not as wished, but this way: roast it from frozen")
    assert reply.lines[0].startswith("A refrigerator thaw takes")


@pytest.mark.parametrize(
    ("text", "part"),
    [
        ("can I cook chicken to 60C if I hold it an hour", "must reach 74 °C"),
        ("can I cook turkey to 145 and rest it 10 minutes", "165 °F"),
        ("is 150 fine for turkey held 5 minutes", "must read 165 °F"),
        ("left the turkey out 3 hours, can I cook it to 165", "Throw it away"),
        ("turkey been in the fridge raw for 5 days since thawing", "Throw it away"),
        ("turkey on the counter 5 hours, ok if cooked to 165?", "Throw it away"),
        ("dejé el pavo fuera 3 horas, ¿puedo cocinarlo a 74?", "Tírelo"),
        ("how long can I hold the turkey at 140", "Only once it has read 165 °F"),
        ("cooled the stock on the stove all night, still warm, can I use it", "Throw it away"),
        ("stock has been cooling on the counter 3 hours", "Throw it away"),
    ],
)
def test_holding_is_no_cooking_and_cooling_unmeasured_is_standing(text, part):
    assert part in talk(text).headline
