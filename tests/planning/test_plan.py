"""The whole plan, on the real heat model: what it puts on the clock and what it does when the clock says no."""

from dataclasses import replace
from datetime import datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest

from turnspit.errors import Impossible, OutOfRange
from turnspit.heat import forecast_roast
from turnspit.planning import BrineWish, Dinner, OvenWish, RoastWish, Timetable, plan_dinner
from turnspit.planning.roasting import BASTING_COST_MIN

ZONE = ZoneInfo("America/New_York")
NOW = datetime(2026, 11, 25, 9, tzinfo=ZONE)
POUND_KG = 0.45359237


def at(hour: int, minute: int = 0, day: int = 25) -> datetime:
    return datetime(2026, 11, day, hour, minute, tzinfo=ZONE)


def bird(pounds: float, **wish) -> RoastWish:
    return RoastWish(kind="turkey", mass_kg=pounds * POUND_KG, **wish)


def starts(plan: Timetable) -> dict[str, datetime]:
    return {task.id: task.start for task in plan.tasks}


@pytest.fixture(scope="module")
def sixteen() -> Timetable:
    return plan_dinner(Dinner(bird(16), serve_at=at(18)), NOW)


def test_the_tasks_stand_in_the_order_of_the_work(sixteen):
    found = starts(sixteen)
    order = [
        "giblets_out",
        "truss_season",
        "oven_on",
        "roast_in",
        "baste_1",
        "check",
        "rest",
        "gravy",
        "carve",
        "serve",
        "leftovers",
    ]
    assert [found[name] for name in order if name != "oven_on"] == sorted(
        found[name] for name in order if name != "oven_on"
    )
    assert found["oven_on"] < found["roast_in"]
    assert found["serve"] == at(18)
    assert sixteen.as_wished


def test_the_roast_goes_in_by_the_later_finishing_side(sixteen):
    latest = sixteen.serve_at - timedelta(minutes=sixteen.forecast.ready_quantile_min(0.80))
    earliest = sixteen.serve_at - timedelta(minutes=sixteen.forecast.ready_quantile_min(0.90) + 5)
    after_the_oven = timedelta(minutes=30 + 20)
    assert earliest - after_the_oven <= sixteen.oven_in_at <= latest - after_the_oven


def test_a_window_and_not_a_point(sixteen):
    assert sixteen.check_from <= sixteen.ready.p10 < sixteen.ready.p50 < sixteen.ready.p90
    check = next(task for task in sixteen.tasks if task.id == "check")
    assert check.window == sixteen.ready
    assert any(task.id == "hold" for task in sixteen.tasks)


def test_the_pull_is_the_safe_minimum_for_birds_and_cited(sixteen):
    assert sixteen.pull_c >= 73.8
    rules = {caution.rule for caution in sixteen.cautions}
    assert {
        "poultry-165",
        "no-washing",
        "raw-juices",
        "two-hours",
        "hot-hold",
        "local-codes",
        "thermometer-decides",
    } <= rules
    assert sixteen.sources


def test_leftovers_are_cold_within_two_hours_of_the_oven(sixteen):
    (cold,) = (task for task in sixteen.tasks if task.id == "leftovers")
    (rest,) = (task for task in sixteen.tasks if task.id == "rest")
    assert cold.end <= rest.start + timedelta(hours=2)


def test_same_dinner_same_plan():
    dinner = Dinner(bird(12), serve_at=at(18))
    assert plan_dinner(dinner, NOW).oven_in_at == plan_dinner(dinner, NOW).oven_in_at


def test_a_late_wish_says_so_and_offers_later_and_smaller():
    plan = plan_dinner(Dinner(bird(20), serve_at=at(13)), NOW)
    assert not plan.as_wished
    assert plan.headline.key == "planning-headline-later"
    assert plan.serve_at > at(13)
    ways = {way.id: way for way in plan.ways}
    assert not ways["as_wished"].possible
    assert ways["later"].chosen
    assert ways["breast"].serve_at == at(13)


def test_a_bird_that_is_a_little_late_can_be_opened_flat():
    plan = plan_dinner(Dinner(bird(14), serve_at=at(13, 40)), NOW)
    ways = {way.id: way for way in plan.ways}
    assert not ways["as_wished"].possible
    assert ways["opened"].possible
    assert ways["opened"].oven_in_at > ways["as_wished"].oven_in_at


def test_a_frozen_bird_for_tomorrow_goes_in_frozen_and_unstuffed():
    plan = plan_dinner(Dinner(bird(20, state="frozen"), serve_at=at(14, day=26)), NOW)
    ways = {way.id: way for way in plan.ways}
    assert not ways["refrigerator"].possible
    assert ways["frozen"].chosen
    assert not plan.as_wished
    assert plan.forecast.case.state == "frozen"
    assert not plan.forecast.case.stuffed
    assert "from-frozen" in {caution.rule for caution in plan.cautions}


def test_with_a_week_it_thaws_in_the_refrigerator_and_nobody_works_at_night():
    serve_at = datetime(2026, 12, 2, 14, tzinfo=ZONE)
    plan = plan_dinner(Dinner(bird(20, state="frozen"), serve_at=serve_at), NOW)
    assert plan.as_wished
    (thaw,) = (task for task in plan.tasks if task.id == "thaw")
    assert thaw.place == "refrigerator"
    found = starts(plan)
    assert thaw.end <= found["giblets_out"] < found["roast_in"] < found["baste_1"]
    assert plan.forecast.case.state == "thawed"
    assert thaw.end - thaw.start >= timedelta(hours=plan.thaw.plan_h)
    assert time(6) <= thaw.start.time() <= time(23)
    assert plan.thaw.plan_h >= 20 / 4 * 24 - 0.01


@pytest.mark.parametrize(("kitchen", "offered"), [("licensed", False), (None, False), ("home", True)])
def test_cold_water_in_a_licensed_kitchen_is_bound_by_four_hours_above_41_f(kitchen, offered):
    dinner = Dinner(bird(9, state="frozen"), serve_at=at(22, 30, day=26), kitchen=kitchen, work_from=time(5))
    ways = {way.id: way for way in plan_dinner(dinner, NOW).ways}
    assert ways["cold_water"].possible is offered


def test_a_brine_has_its_hours_in_the_cold_before_the_roast():
    plan = plan_dinner(Dinner(bird(14), serve_at=at(18, day=27), brine=BrineWish(wanted=True)), NOW)
    (brine,) = (task for task in plan.tasks if task.id == "brine_in")
    hours = (brine.end - brine.start) / timedelta(hours=1)
    assert plan.brine.hours_low <= hours <= plan.brine.hours_high
    found = starts(plan)
    assert found["brine_make"] < brine.start < found["brine_out"] < found["dry"] < found["giblets_out"]
    assert {"brine-cold", "brine-discard"} <= {caution.rule for caution in plan.cautions}
    assert all(time(6) <= task.start.time() <= time(23) for task in plan.tasks if task.id.startswith("brine"))


def test_a_brine_without_time_is_left_out_and_said():
    plan = plan_dinner(Dinner(bird(14), serve_at=at(18), brine=BrineWish(wanted=True)), NOW)
    assert plan.brine is None
    assert "planning-no-time-for-brine" in {message.key for message in plan.assumptions}


def test_a_bird_brined_already_is_not_brined_nor_salted_again():
    plan = plan_dinner(Dinner(bird(14), serve_at=at(18), brine=BrineWish(wanted=True, done=True)), NOW)
    assert plan.brine is None
    (season,) = (task for task in plan.tasks if task.id == "truss_season")
    assert "planning-salt-lightly" in {message.key for message in season.details}
    assert "injected-no-brine" not in {caution.rule for caution in plan.cautions}


def test_an_injected_bird_gets_no_brine():
    plan = plan_dinner(
        Dinner(bird(14, sold_as="injected"), serve_at=at(18, day=27), brine=BrineWish(wanted=True)), NOW
    )
    assert plan.brine is None
    assert "injected-no-brine" in {caution.rule for caution in plan.cautions}


def test_a_roast_that_went_in_has_no_tasks_in_the_past():
    plan = plan_dinner(Dinner(bird(14), start_at=at(8), serve_at=at(18)), NOW)
    assert plan.oven_in_at == at(8)
    assert all(task.end > NOW for task in plan.tasks)
    assert plan.serve_at == at(18)


def test_two_birds_in_one_oven_take_no_less_than_one():
    one = plan_dinner(Dinner(bird(13), serve_at=at(17, 30)), NOW)
    two = plan_dinner(Dinner(bird(13, count=2), serve_at=at(17, 30)), NOW)
    assert two.oven_in_at < one.oven_in_at


def test_beef_is_pulled_before_its_target():
    plan = plan_dinner(Dinner(RoastWish(kind="beef_rib", mass_kg=3.0, target_c=63.0), serve_at=at(18)), NOW)
    assert plan.pull_c < 63.0
    assert not any(task.id == "giblets_out" for task in plan.tasks)


def test_meat_pulled_below_its_safe_minimum_is_measured_before_it_is_carved():
    plan = plan_dinner(Dinner(RoastWish(kind="pork_shoulder", mass_kg=2.5, target_c=63.0), serve_at=at(18)), NOW)
    (rest,) = (task for task in plan.tasks if task.id == "rest")
    assert plan.pull_c < 62.7
    assert "planning-measure-before-carving" in {message.key for message in rest.details}


def test_a_thaw_without_a_federal_rule_tells_none():
    serve_at = datetime(2026, 12, 2, 18, tzinfo=ZONE)
    plan = plan_dinner(Dinner(RoastWish(kind="lamb_leg", mass_kg=3.0, state="frozen"), serve_at=serve_at), NOW)
    (thaw,) = (task for task in plan.tasks if task.id == "thaw")
    assert [message.key for message in thaw.details] == ["planning-thaw-computed", "planning-thaw-check"]


def test_nobody_is_sent_shopping_at_night():
    plan = plan_dinner(Dinner(bird(20), serve_at=datetime(2026, 11, 29, 7, tzinfo=ZONE)), NOW)
    (shop,) = (task for task in plan.tasks if task.id == "shop")
    assert time(8) <= shop.start.time() <= time(20)


def test_a_roast_served_pink_is_not_held_hot():
    plan = plan_dinner(Dinner(RoastWish(kind="beef_rib", mass_kg=3.0, target_c=55.0), serve_at=at(18)), NOW)
    (hold,) = (task for task in plan.tasks if task.id == "hold")
    assert hold.title.key == "planning-hold-warm"
    assert "two-hours" in {caution.rule for caution in hold.cautions}


def test_a_cool_oven_for_a_bird_is_warned_about():
    plan = plan_dinner(Dinner(bird(12), serve_at=at(20), oven=OvenWish(temperature_c=150.0)), NOW)
    severity = {caution.rule: caution.severity for caution in plan.cautions}
    assert severity["oven-325"] in {"warn", "stop"}


@pytest.mark.parametrize(
    ("dinner", "error", "text"),
    [
        (Dinner(bird(16)), Impossible, "say when dinner is"),
        (Dinner(bird(16), serve_at=at(18, day=24)), Impossible, "is not after"),
        (Dinner(bird(900), serve_at=at(18)), OutOfRange, "mass_kg"),
        (Dinner(bird(-3), serve_at=at(18)), (Impossible, OutOfRange), "mass_kg"),
        (Dinner(bird(16, count=0), serve_at=at(18)), OutOfRange, "count"),
        (Dinner(bird(16), serve_at=at(18) + timedelta(days=90)), OutOfRange, "days ahead"),
        (Dinner(bird(16), serve_at=datetime(2026, 11, 25, 18)), Impossible, "offset"),
        (Dinner(bird(16), serve_at=at(18), temper_min=300), OutOfRange, "temper_min"),
    ],
)
def test_what_no_plan_can_serve_is_refused_with_the_way_out(dinner, error, text):
    with pytest.raises(error, match=text):
        plan_dinner(dinner, NOW)


def test_a_plan_is_told_in_the_kitchen_s_zone():
    utc = NOW.astimezone(ZoneInfo("UTC"))
    plan = plan_dinner(replace(Dinner(bird(12), serve_at=at(18))), utc)
    assert plan.serve_at == at(18)


@pytest.mark.parametrize(
    ("dinner", "rule", "mended"),
    [
        (Dinner(bird(12), serve_at=at(23), oven=OvenWish(temperature_c=93.0)), "slow-oven", "oven"),
        (
            Dinner(RoastWish("pork_shoulder", 3.6, target_c=95.0), serve_at=at(18, day=26), oven=OvenWish(121.0)),
            "slow-oven",
            "oven",
        ),
        (Dinner(RoastWish("turkey", 5.0, target_c=63.0), serve_at=at(20)), "poultry-165", "target"),
        (Dinner(RoastWish("lamb_leg", 3.0, target_c=55.0), serve_at=at(20), at_risk=True), "at-risk", "target"),
    ],
)
def test_a_wish_against_a_rule_is_refused_with_the_nearest_that_keeps_it(dinner, rule, mended):
    plan = plan_dinner(dinner, NOW)
    assert not plan.as_wished
    assert plan.headline.key == "planning-headline-refused"
    stops = {caution.rule for caution in plan.cautions if caution.severity == "stop"}
    assert stops
    if mended == "oven":
        (told,) = (message for message in plan.assumptions if message.key == "planning-assume-oven")
        assert told.values["oven_c"] == plan.forecast.case.oven[0].temperature_c
        assert plan.forecast.case.oven[0].temperature_c >= 162.7
    else:
        assert plan.forecast.target_c >= 62.7
        assert plan.forecast.target_c > dinner.roast.target_c


@pytest.mark.parametrize("mass_kg", [4.0, 7.3, 10.0])
def test_what_a_basting_is_said_to_cost_is_what_the_model_makes_of_it(mass_kg):
    basted = plan_dinner(Dinner(RoastWish("turkey", mass_kg), serve_at=at(23)), NOW).forecast
    shut = forecast_roast(replace(basted.case, bastings_min=()))
    cost_min = (basted.ready_min.p50 - shut.ready_min.p50) / len(basted.case.bastings_min)
    assert cost_min == pytest.approx(BASTING_COST_MIN, abs=0.5)


def test_a_boned_bird_has_no_giblets_and_no_legs_to_carve():
    plan = plan_dinner(Dinner(bird(12, bone_in=False), serve_at=at(18)), NOW)
    assert not {"giblets_out", "stock"} & starts(plan).keys()
    carve = next(task for task in plan.tasks if task.id == "carve")
    assert carve.title.key == "planning-carve"


@pytest.mark.parametrize(
    ("pounds", "serve_at", "key"),
    [
        (18, at(17, day=26), "planning-last-ice-refrigerator"),
        (14, at(17), "planning-last-ice-cold-water"),
    ],
)
def test_what_still_holds_ice_goes_on_thawing_from_now_on(pounds, serve_at, key):
    plan = plan_dinner(Dinner(bird(pounds, state="part_frozen"), serve_at=serve_at), NOW)
    thaw = next(task for task in plan.tasks if task.id == "thaw")
    assert (thaw.title.key, thaw.start) == (key, NOW)
    assert thaw.end <= plan.oven_in_at
    assert plan.as_wished


def test_a_bird_that_is_in_and_runs_late_is_planned_from_when_it_went_in():
    dinner = Dinner(bird(14), start_at=at(6), serve_at=at(9, 30))
    plan = plan_dinner(dinner, NOW)
    assert not plan.as_wished
    assert plan.oven_in_at == at(6)
    assert plan.serve_at > at(9, 30)
    assert plan.headline.values["why"].key == "planning-way-in-late-why"


def test_what_is_in_and_will_likely_make_it_is_planned_as_wished():
    surely = plan_dinner(Dinner(bird(14), start_at=at(8)), NOW).serve_at
    plan = plan_dinner(Dinner(bird(14), start_at=at(8), serve_at=surely - timedelta(minutes=10)), NOW)
    assert plan.as_wished
    assert plan.serve_at == surely - timedelta(minutes=10)


@pytest.mark.parametrize(
    ("kind", "mass_kg", "count", "hands", "span_min"),
    [
        ("turkey", 6.4, 1, 1, 20),
        ("turkey", 6.4, 2, 1, 30),
        ("turkey", 6.4, 4, 2, 25),
        ("chicken", 1.8, 12, 2, 25),
        ("duck", 2.4, 6, 1, 30),
        ("lamb_leg", 2.2, 12, 2, 25),
    ],
)
def test_many_pieces_are_carved_by_several_hands(kind, mass_kg, count, hands, span_min):
    roast = RoastWish(kind=kind, mass_kg=mass_kg, count=count)
    plan = plan_dinner(Dinner(roast, serve_at=at(18), oven=OvenWish(count=4)), NOW)
    carve = next(task for task in plan.tasks if task.id == "carve")
    assert carve.title.values["hands"] == hands
    assert carve.end - carve.start == timedelta(minutes=span_min)


def test_one_piece_that_could_never_serve_the_covers_is_taken_for_as_many_as_they_want():
    lamb = RoastWish(kind="lamb_leg", mass_kg=2.2)
    service = plan_dinner(Dinner(lamb, serve_at=at(19, 30), covers=90, oven=OvenWish(count=2)), NOW)
    assert {told.key: told for told in service.assumptions}["planning-assume-mass-covers"].values["count"] == 14
    home = plan_dinner(Dinner(bird(14), serve_at=at(18), covers=25), NOW)
    assert "planning-assume-mass-covers" not in {told.key for told in home.assumptions}
