import json
import tomllib
from datetime import UTC, datetime, timedelta
from itertools import pairwise
from pathlib import Path

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from turnspit.errors import Impossible, OutOfRange, Unknown
from turnspit.safety import CORRECTIVES, GRADES, Log, check_log
from turnspit.safety.log import CLOCKS_APART
from turnspit.words import Reader, say

START = datetime(2026, 11, 26, 18, tzinfo=UTC)
SCENARIOS = tomllib.loads((Path(__file__).parent / "log_scenarios.toml").read_text(encoding="utf-8"))["scenario"]
KINDS = st.sampled_from(["cooling", "hot_holding", "cold_holding", "thaw", "roast"])
READINGS = st.lists(
    st.tuples(st.integers(0, 600), st.floats(0, 90)), min_size=1, max_size=8, unique_by=lambda r: r[0]
)


def at(minute):
    return START + timedelta(minutes=minute)


def log_of(kind, readings, item="stock"):
    log = Log(kind, item)
    for minute, core_c, *station in readings:
        log = log.reading(at(minute), core_c, "AB", recorded_at=at(minute), station=station[0] if station else "")
    return log


def of_scenario(scenario):
    readings = [(minute, (core_f - 32) / 1.8, *station) for minute, core_f, *station in scenario["readings"]]
    log = log_of(scenario["kind"], readings, scenario["item"])
    for minute, action in scenario.get("acts", []):
        log = log.act(action, at(minute), "AB")
    return log


def checked(scenario, kitchen=None):
    return check_log(
        of_scenario(scenario), at(scenario["now"]), kitchen, scenario.get("interval"), scenario.get("finished", False)
    )


def worse_or_same(after, before):
    return GRADES.index(after.severity) >= GRADES.index(before.severity)


@pytest.mark.parametrize("scenario", SCENARIOS, ids=lambda s: s["line"])
def test_a_log_shows_its_gravest_matter(scenario):
    verdict = checked(scenario, scenario.get("kitchen"))
    first = verdict.findings[0]
    assert (verdict.severity, first.rule) == (scenario["severity"], scenario["rule"])
    assert first.do == scenario.get("do", first.do)
    assert verdict.findings[-1].rule == "local-codes"
    for found in verdict.findings:
        for language in ("en", "es"):
            assert say(found.seen, Reader(START, language=language))
            assert say(found.action, Reader(START, language=language))


@pytest.mark.parametrize("scenario", SCENARIOS, ids=lambda s: s["line"])
def test_unstated_a_log_is_judged_by_the_stricter_kitchen(scenario):
    each = [GRADES.index(checked(scenario, kitchen).severity) for kitchen in ("home", "licensed")]
    assert GRADES.index(checked(scenario).severity) == max(each)


def test_a_stop_stays_until_the_action_that_answers_it():
    log = log_of("cooling", [(0, 60), (60, 45), (130, 40)])
    assert check_log(log, at(130)).open_stops
    for action in CORRECTIVES:
        answered = log.act(action, at(140), "CD").reading(at(150), 3.0, "CD")
        assert bool(check_log(answered, at(150)).open_stops) is (action != "discarded")


def test_a_correction_is_a_new_entry_and_the_stop_of_the_first_stays():
    log = log_of("cooling", [(0, 60), (60, 40), (121, 41)]).correct(
        3, 20.0, "CD", at(125), note="read the wrong probe"
    )
    assert [entry.temperature_c for entry in log.entries] == [60, 40, 41, 20.0]
    assert [entry.temperature_c for entry in log.readings()] == [60, 40, 20.0]
    assert check_log(log, at(125)).open_stops


def test_a_correction_does_not_judge_the_past_by_what_was_measured_later():
    log = log_of("cooling", [(0, 60), (50, 41)]).correct(2, 35.0, "CD", at(55))
    for minute, core_c in ((100, 20.0), (150, 14.0), (200, 9.0), (250, 4.0)):
        log = log.reading(at(minute), core_c, "AB")
    assert check_log(log, at(250), finished=True).severity == "ok"


def test_a_stop_of_a_corrected_reading_is_answered_by_the_action_too():
    log = log_of("cooling", [(0, 60), (60, 40), (121, 41)]).correct(3, 20.0, "CD", at(125))
    assert not check_log(log.act("discarded", at(130), "CD"), at(131)).open_stops


def test_a_correction_of_a_harmless_reading_changes_the_finding():
    log = log_of("hot_holding", [(0, 65), (30, 50)])
    assert check_log(log, at(30)).severity == "warn"
    assert check_log(log.correct(2, 65.0, "CD", at(31)), at(31)).severity in ("ok", "warn")


def test_a_log_survives_being_kept():
    log = log_of("cooling", [(0, 60), (60, 40), (121, 41)]).correct(3, 20.0, "CD", at(125), note="wrong probe")
    log = log.act("discarded", at(130), "CD").note("binned", at(131), "CD")
    assert Log.from_document(json.loads(json.dumps(log.document()))) == log


def test_gaps_are_shown():
    verdict = check_log(log_of("hot_holding", [(0, 70), (200, 70)]), at(500))
    assert [(gap.since, gap.until) for gap in verdict.gaps] == [(at(0), at(200)), (at(200), at(500))]


@given(KINDS, READINGS, st.integers(0, 900), st.integers(1, 120))
def test_a_gap_longer_than_the_interval_is_never_ok(kind, readings, now, interval):
    verdict = check_log(log_of(kind, readings), at(now), interval_min=interval)
    minutes = sorted(minute for minute, _ in readings if at(minute) <= at(now) + CLOCKS_APART)
    spans = [late - early for early, late in pairwise([*minutes, max([now, *minutes])])] if minutes else []
    assert len(verdict.gaps) == sum(span > interval for span in spans)
    if any(span > interval for span in spans):
        assert verdict.severity in ("warn", "stop")


@given(KINDS, READINGS, st.randoms())
def test_the_order_of_recording_does_not_matter(kind, readings, random):
    shuffled = list(readings)
    random.shuffle(shuffled)
    now = at(700)
    assert check_log(log_of(kind, readings), now).severity == check_log(log_of(kind, shuffled), now).severity


@given(KINDS, READINGS, st.integers(0, 900), st.integers(0, 600))
def test_waiting_longer_never_improves_a_finding(kind, readings, now, more):
    log = log_of(kind, readings)
    now = max(now, *(minute for minute, _ in readings))
    assert worse_or_same(check_log(log, at(now + more)), check_log(log, at(now)))


@given(READINGS.filter(lambda readings: len(readings) > 1), st.floats(0, 30))
def test_colder_hot_food_never_improves_a_finding(readings, colder):
    now = max(minute for minute, _ in readings)
    cooler = [(minute, core_c - colder) for minute, core_c in readings]
    before, after = (check_log(log_of("hot_holding", each), at(now)) for each in (readings, cooler))
    assert worse_or_same(after, before)


@given(KINDS, READINGS, st.lists(st.tuples(st.integers(601, 1200), st.floats(0, 90)), max_size=4))
@example("cooling", [(0, 58.0)], [(1080, 58.0)])
def test_a_stop_survives_whatever_is_measured_later(kind, readings, more):
    verdict = check_log(log_of(kind, readings), at(600))
    if verdict.open_stops:
        later = check_log(log_of(kind, [*readings, *more]), at(1200))
        assert {stop.rule for stop in verdict.open_stops} <= {
            stop.rule for stop in later.open_stops
        } or later.severity == "stop"


ENTRIES = st.one_of(
    st.tuples(st.just("reading"), st.floats(0, 90)),
    st.tuples(st.just("correct"), st.floats(0, 90)),
    st.tuples(st.just("act"), st.sampled_from(["cooked_on", "reheated", "chilled"])),
)


@given(KINDS, READINGS, st.lists(ENTRIES, max_size=6), st.sampled_from([None, "home", "licensed"]))
@example("cooling", [(0, 60.0), (200, 40.0)], [("act", "reheated"), ("reading", 2.0)], "licensed")
@example("hot_holding", [(0, 40.0)], [("correct", 70.0), ("act", "chilled")], "home")
def test_a_stop_stays_open_until_the_action_that_answers_it(kind, readings, entries, kitchen):
    """Whatever else is measured, corrected or done; only throwing away closes every one of them."""
    log = log_of(kind, readings)
    stops = {(stop.rule, stop.do) for stop in check_log(log, at(600), kitchen).open_stops}
    done = set()
    for minute, (what, value) in enumerate(entries, 601):
        if what == "act":
            log, done = log.act(value, at(minute), "CD"), done | {value}
        elif what == "correct":
            log = log.correct(len(readings), value, "CD", at(minute))
        else:
            log = log.reading(at(minute), value, "CD")
    still = {(stop.rule, stop.do) for stop in check_log(log, at(610), kitchen).open_stops}
    answered = {(rule, do) for rule, do in stops if do in ("cook_on", "measure") and "cooked_on" in done}
    assert stops - answered <= still
    assert not check_log(log.act("discarded", at(611), "CD"), at(612), kitchen).open_stops


@given(KINDS, st.lists(st.tuples(st.integers(0, 600), st.integers(320, 1940)), min_size=1, max_size=8,
                       unique_by=lambda reading: reading[0]))  # fmt: skip
def test_the_unit_of_the_readings_does_not_matter(kind, tenths_f):
    """Readings in tenths of a degree F are judged alike when they are kept in C to two decimals."""
    exact = [(minute, (tenths / 10 - 32) / 1.8) for minute, tenths in tenths_f]
    kept = [(minute, round(core_c, 2)) for minute, core_c in exact]
    one, other = (check_log(log_of(kind, readings), at(700)) for readings in (exact, kept))
    assert (one.severity, [each.rule for each in one.findings]) == (
        other.severity,
        [each.rule for each in other.findings],
    )


def test_food_once_measured_too_cool_stays_on_the_clock_until_it_is_measured_again():
    cool = log_of("hot_holding", [(0, 50.0)])
    assert [check_log(cool, at(minute), "home").severity for minute in (0, 119, 121)] == ["warn", "warn", "stop"]


def test_who_and_when_are_needed():
    log = Log("cooling", "stock")
    with pytest.raises(Impossible, match="initials"):
        log.reading(at(0), 60.0, " ")
    with pytest.raises(Impossible, match="offset"):
        log.reading(datetime(2026, 11, 26, 18), 60.0, "AB")
    with pytest.raises(OutOfRange, match="Fahrenheit"):
        log.reading(at(0), 165.0, "AB")
    with pytest.raises(Impossible, match="no reading"):
        log.correct(1, 60.0, "AB", at(1))
    with pytest.raises(Impossible, match="discarded"):
        log.act("prayed", at(1), "AB")


def test_a_reading_of_the_future_shows_nothing_and_is_not_written_down():
    ahead = log_of("hot_holding", [(600, 70.0)])
    assert check_log(ahead, at(0)).findings[0].seen.key == "safety-log-empty"
    with pytest.raises(Impossible, match="is later than it was written down"):
        Log("hot_holding", "gravy").reading(at(60), 70.0, "AB", recorded_at=at(0))


def test_clocks_may_differ_by_some_minutes():
    log = Log("hot_holding", "gravy").reading(at(3), 70.0, "AB", recorded_at=at(0))
    assert check_log(log, at(0)).severity == "ok"


@pytest.mark.parametrize("interval_min", [0.0, -5.0, 1e9, float("nan"), float("inf")])
def test_an_interval_that_would_hide_every_gap_is_refused(interval_min):
    with pytest.raises(OutOfRange, match="interval_min"):
        check_log(log_of("cooling", [(0, 60.0)]), at(30), interval_min=interval_min)


def test_a_kind_of_log_that_is_not_kept_and_a_now_without_a_zone_are_refused():
    with pytest.raises(Unknown, match="kind freezing"):
        Log("freezing", "stock")
    with pytest.raises(Impossible, match="now"):
        check_log(log_of("cooling", [(0, 60.0)]), datetime(2026, 11, 26))
