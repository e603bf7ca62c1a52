from dataclasses import fields, replace

import pytest

from turnspit.brine import BrineCase, hours_to_salt, plan_brine, unaided_cooling
from turnspit.errors import Impossible, OutOfRange, Unknown

POUND_KG, GALLON_L = 0.45359237, 3.785411784
BUCKET = BrineCase(mass_kg=18 * POUND_KG, vessel_l=5 * GALLON_L)


def test_an_18_lb_bird_in_a_5_gallon_bucket():
    plan = plan_brine(BUCKET)
    assert plan.allowed
    assert plan.fits
    assert plan.strength_percent == pytest.approx(5.48)
    assert (plan.hours_low, plan.hours_high) == (8, 48)
    assert plan.water_l + plan.displaced_l < 5 * GALLON_L
    assert plan.salt_g / (plan.salt_g + plan.water_l * 998.2) == pytest.approx(0.0548, rel=1e-6)


def test_the_federal_brine_is_three_quarters_of_a_cup_of_table_salt_to_a_gallon():
    plan = plan_brine(replace(BUCKET, water_l=GALLON_L, vessel_l=None))
    low, high = plan.salt_cups
    assert low < 0.75 < high


def test_the_water_of_a_brine_is_all_accounted_for():
    for strength in (1.0, 5.48, 13.0, 20.0):
        plan = plan_brine(replace(BUCKET, strength_percent=strength))
        parts = plan.concentrate_water_l + plan.cold_water_l + plan.ice_kg / 0.9982
        assert parts == pytest.approx(plan.water_l)
        assert plan.full_weight_kg == pytest.approx(plan.water_l * 0.9982 + plan.salt_g / 1000 + BUCKET.mass_kg)


def test_a_weak_brine_is_dissolved_in_a_sixth_of_its_water():
    plan = plan_brine(replace(BUCKET, strength_percent=1.0))
    assert plan.concentrate_water_l == pytest.approx(plan.water_l / 6)


@pytest.mark.parametrize("sold_as", ["injected", "kosher"])
@pytest.mark.parametrize("method", ["wet", "dry", "equilibrium"])
def test_a_bird_that_is_salted_already_gets_no_salt(sold_as, method):
    plan = plan_brine(replace(BUCKET, sold_as=sold_as, method=method))
    assert not plan.allowed
    assert (plan.salt_g, plan.water_l, plan.hours_high) == (0, 0, 0)
    assert [caution.rule for caution in plan.cautions] == ["injected-no-brine"]
    assert "brine-note-no-added-salt" in [note.key for note in plan.notes]


def test_how_the_bird_is_sold_is_assumed_and_said():
    plan = plan_brine(BUCKET)
    assert "brine-assumed-plain" in [taken.key for taken in plan.assumptions]
    assert "injected-no-brine" in [caution.rule for caution in plan.cautions]
    stated = plan_brine(replace(BUCKET, sold_as="plain"))
    assert "brine-assumed-plain" not in [taken.key for taken in stated.assumptions]
    assert stated.salt_g == plan.salt_g


def test_a_strong_overnight_brine_is_flagged_and_has_fewer_hours():
    plan = plan_brine(replace(BUCKET, strength_percent=13.0, hours=16.0))
    assert plan.hours_high == pytest.approx(16)  # common practice, no source
    keys = [note.key for note in plan.notes]
    assert "brine-note-strong" in keys
    assert "brine-note-too-salty" in keys
    assert plan.finished_salt_percent.p50 > 2.0 > plan_brine(BUCKET).finished_salt_percent.p90


def test_few_hours_ask_for_a_stronger_brine():
    plan = plan_brine(replace(BUCKET, hours=4.0))
    assert 5.48 < plan.strength_percent <= 13
    assert plan.hours_low == pytest.approx(4.0)


def test_a_milder_brine_takes_the_published_twelve_hours():
    # NC State extension FAQ: 1 cup in 2 gallons (3.72 percent), 12 hours
    plan = plan_brine(replace(BUCKET, strength_percent=3.72))
    assert plan.hours_low == pytest.approx(12, abs=2)
    assert plan.hours_high == 48


def test_a_bird_too_large_for_the_vessel_is_told_by_how_much_and_what_would_do():
    plan = plan_brine(replace(BUCKET, mass_kg=24 * POUND_KG))
    assert plan.fits is False
    assert plan.short_l == pytest.approx(plan.vessel_needed_l - 5 * GALLON_L)
    assert plan.would_fit == "pot-24qt"
    assert plan_brine(replace(BUCKET, mass_kg=plan.largest_kg - 0.01)).fits
    assert plan_brine(replace(BUCKET, mass_kg=plan.largest_kg + 0.01)).fits is False


def test_too_little_water_is_said():
    keys = [note.key for note in plan_brine(replace(BUCKET, vessel_l=None, water_l=3.0)).notes]
    assert "brine-note-uncovered" in keys
    keys = [note.key for note in plan_brine(replace(BUCKET, water_l=15.0)).notes]
    assert "brine-note-overflows" in keys


def test_dry_salting_is_by_percent_of_the_weight():
    plan = plan_brine(BrineCase(mass_kg=5.0, method="dry", target_percent=0.5))
    assert plan.salt_g == pytest.approx(25)
    assert (plan.water_l, plan.vessel_needed_l) == (0, 0)
    assert plan_brine(BrineCase(mass_kg=5.0, method="dry")).salt_g == pytest.approx(5000 * 0.0069)


def test_an_equilibrium_brine_can_not_over_salt():
    case = BrineCase(kind="pork_loin", mass_kg=1.0, method="equilibrium", target_percent=1.0)
    plan = plan_brine(case)
    assert plan.salt_g == pytest.approx(1000 * 0.01 * (0.9 + plan.water_l * 0.9982) / 0.99)
    assert plan.hours_to_too_salty is None
    assert plan_brine(replace(case, kind="turkey", mass_kg=7.0)).finished_salt_percent.p90 < 2.0


def test_sodium_is_the_finished_salt_of_a_serving():
    plan = plan_brine(replace(BUCKET, serving_g=100.0))
    assert plan.sodium_mg_per_serving.p50 == pytest.approx(plan.finished_salt_percent.p50 * 1000 * 0.3934, rel=1e-3)


def test_the_same_seed_gives_the_same_plan():
    one, other = plan_brine(BUCKET), plan_brine(BUCKET)
    for field in fields(one):
        if field.name != "profiles":
            assert getattr(one, field.name) == getattr(other, field.name)
    assert plan_brine(replace(BUCKET, seed=2)).finished_salt_percent != one.finished_salt_percent


@pytest.mark.parametrize(
    ("change", "error", "said"),
    [
        ({"strength_percent": 40.0}, Impossible, r"strength_percent 40 is above 26\.395.*about 5\.5"),
        ({"strength_percent": 22.0}, OutOfRange, "is a cure"),
        ({"strength_percent": 0.0}, Impossible, "is not above 0"),
        (
            {"vessel_l": 3.0},
            Impossible,
            r"vessel_l 3 is smaller than the meat alone, 7\.7 L: take a vessel of 15\.8 L",
        ),
        ({"vessel_l": -1.0}, Impossible, "vessel_l"),
        ({"water_l": 0.0}, Impossible, "water_l"),
        ({"mass_kg": 410.0}, OutOfRange, "is that pounds"),
        ({"mass_kg": float("nan")}, Impossible, "mass_kg"),
        ({"count": 0}, Impossible, "count 0 is below 1"),
        ({"count": float("nan")}, Impossible, "count"),
        ({"count": 100_000}, OutOfRange, "in batches"),
        ({"method": "smoked"}, Unknown, "use one of wet, equilibrium, dry"),
        ({"sold_as": "smoked"}, Unknown, "use one of plain, injected, kosher"),
        ({"serving_g": -5.0}, OutOfRange, "serving_g"),
        ({"members": 0}, OutOfRange, "members"),
        ({"seed": -1}, OutOfRange, "seed"),
        ({"hours": 0.0}, Impossible, "hours"),
        ({"hours": 500.0}, OutOfRange, "8 to 48 hours"),
        ({"brine_c": 12.0}, OutOfRange, "at or below 4 C"),
        ({"kind": "unicorn"}, Unknown, "use one of turkey"),
        ({"salt_kind": "pink"}, Unknown, "use one of table"),
        ({"target_percent": 9.0}, OutOfRange, "about 1 percent"),
    ],
)
def test_what_cannot_be_is_refused_with_the_way_out(change, error, said):
    with pytest.raises(error, match=said):
        plan_brine(replace(BUCKET, **change))


def test_longer_than_two_days_is_stopped():
    plan, nearest = plan_brine(replace(BUCKET, hours=72.0)), plan_brine(replace(BUCKET, hours=48.0))
    assert (plan.allowed, plan.hours, plan.case.hours) == (False, 48.0, 72.0)
    assert [caution.severity for caution in plan.cautions if caution.rule == "brine-cold"] == ["stop"]
    assert plan.cautions[0].severity == "stop"
    assert plan.headline.key == "brine-headline-too-long"
    assert plan.headline.values["nearest"] == nearest.headline
    assert (plan.salt_g, plan.finished_salt_percent) == (nearest.salt_g, nearest.finished_salt_percent)
    assert nearest.allowed


def test_a_bird_is_salted_dry_for_two_days_and_a_joint_as_long_as_it_keeps():
    bird = plan_brine(BrineCase(mass_kg=6.0, method="dry", hours=72.0))
    assert (bird.allowed, bird.hours) == (False, 48.0)
    assert ("thawed-keeps", "stop") in [(one.rule, one.severity) for one in bird.cautions]
    assert plan_brine(BrineCase(kind="pork_loin", mass_kg=3.0, method="dry", hours=72.0)).allowed
    assert not plan_brine(BrineCase(kind="pork_loin", mass_kg=3.0, method="wet", hours=72.0)).allowed


@pytest.mark.parametrize(
    "change",
    [
        {"mass_kg": "18 lb"},
        {"mass_kg": True},
        {"hours": "overnight"},
        {"kind": 3},
        {"count": None},
        {"vessel_l": [5]},
    ],
)
def test_wrong_types_are_refused_by_their_name(change):
    (name,) = change
    with pytest.raises(Impossible) as refused:
        plan_brine(replace(BUCKET, **change))
    assert refused.value.name == name


def test_hours_to_a_wished_salt_grow_with_the_wish_and_the_bird():
    seasoned, saltier = hours_to_salt(BUCKET, 0.8), hours_to_salt(BUCKET, 1.2)
    assert seasoned.p10 < seasoned.p50 < seasoned.p90
    assert saltier.p50 > 1.5 * seasoned.p50
    assert hours_to_salt(replace(BUCKET, mass_kg=5.0, vessel_l=None), 0.8).p50 < seasoned.p50
    assert hours_to_salt(replace(BUCKET, strength_percent=1.0), 2.0) is None
    assert hours_to_salt(BUCKET, 0.8).p50 == plan_brine(BUCKET).hours_to_seasoned.p50


def test_the_salt_profile_falls_from_skin_to_bone():
    plan = plan_brine(BUCKET)
    assert [profile.part for profile in plan.profiles] == ["white", "dark"]
    for profile in plan.profiles:
        assert profile.hours == plan.hours
        assert list(profile.salt_percent) == sorted(profile.salt_percent, reverse=True)
        assert profile.salt_percent[-1] < 1 < profile.salt_percent[0]


def test_a_pot_without_ice_takes_a_night_and_longer():
    small, large = unaided_cooling(2.0), unaided_cooling(10.0)
    assert 3 < small.p50 < large.p50
    assert large.p50 > 12
    with pytest.raises(OutOfRange, match="several pots"):
        unaided_cooling(100.0)


def test_many_birds_share_the_brine_over_several_vessels():
    plan = plan_brine(BrineCase(mass_kg=6.8, count=13))
    assert plan.vessels > 1
    assert plan.full_weight_kg < 100
    assert "brine-assumed-vessels" in [taken.key for taken in plan.assumptions]
    buckets = plan_brine(BrineCase(mass_kg=6.8, count=2, vessel_l=5 * GALLON_L))
    assert (buckets.fits, buckets.vessels) == (False, 2)
    assert "brine-note-vessels" in [note.key for note in buckets.notes]


def test_the_shelf_must_be_as_high_as_a_vessel_of_that_size():
    assert plan_brine(BUCKET).shelf_height_mm == 370  # a 5 gallon bucket (common practice, no source)
    assert plan_brine(replace(BUCKET, method="dry")).shelf_height_mm == 0


def test_a_vessel_that_takes_the_bird_may_still_be_too_small_for_the_water_that_was_said():
    roomy = plan_brine(replace(BUCKET, mass_kg=7.0, vessel_l=15.0, water_l=8.0))
    full = plan_brine(replace(BUCKET, mass_kg=7.0, vessel_l=15.0, water_l=9.0))
    assert (roomy.fits, roomy.overflows) == (True, False)
    assert (full.fits, full.overflows) == (False, True)
    assert full.short_l == pytest.approx(9.0 + full.displaced_l - 15.0)
