from datetime import UTC, datetime
from importlib import import_module

import pytest

from turnspit.errors import Unknown
from turnspit.message import SEVERITIES, Caution, Message
from turnspit.reference import ACTIONS, caution, is_licensed, rule, rule_ids, rules, tables
from turnspit.words import Reader, keys, say

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)

CITED_BY_THE_ROOMS = """
poultry-165 meat-145 beef-lamb-time-table stuffing-165 oven-325 thaw-refrigerator thaw-cold-water thaw-counter
thaw-four-hours two-hours hot-hold cold-hold cooling-two-stage reheat-165 leftovers-days date-marking brine-cold
brine-discard injected-no-brine no-washing colour-no-proof raw-juices refreeze partial-cooking slow-oven from-frozen
thawed-keeps allergens hot-fat carbon-monoxide glass-pan at-risk receiving-41 thermometer-decides local-codes
stuffing-just-before time-control
"""


@pytest.mark.parametrize("rule_id", CITED_BY_THE_ROOMS.split())
def test_every_rule_the_rooms_cite_is_there(rule_id):
    assert rule(rule_id).id == rule_id


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("rule_id", rule_ids())
def test_every_rule_has_its_words_without_values(rule_id, language):
    reader = Reader(NOW, language=language)
    assert "(" in say(rule(rule_id).text, reader)
    assert say(rule(rule_id).reason, reader).endswith(".")


def test_no_words_without_a_rule():
    texts = {key.removeprefix("rule-").removesuffix("-reason") for key in keys("en") if key.startswith("rule-")}
    assert texts == set(rule_ids())


@pytest.mark.parametrize("each", rules(), ids=lambda r: f"{r.source}:{r.id}")
def test_a_row_is_whole(each):
    assert each.applies_to
    assert each.document
    assert each.section
    assert each.severity in SEVERITIES
    assert each.action in ACTIONS
    assert 1990 <= each.year <= 2026
    assert all(
        name.rpartition("_")[2] in {"c", "k", "s", "min", "h", "days", "kg"} or "factor" in name
        for name in each.limits
    )


def test_the_kitchen_chooses_the_limit_and_unstated_the_stricter_holds():
    assert rule("hot-hold", "licensed").limits["food_min_c"] == 57.22
    assert rule("hot-hold", "home").limits["food_min_c"] == 60.0
    assert rule("hot-hold").source == "home"
    assert rule("cold-hold").limits["food_max_c"] == 4.44
    assert rule("two-hours", "licensed").source == "home"


@pytest.mark.parametrize("rule_id", rule_ids())
def test_unstated_no_limit_is_laxer_than_in_either_kitchen(rule_id):
    strict = rule(rule_id)
    for kitchen in ("home", "licensed"):
        other = rule(rule_id, kitchen)
        for name in strict.limits.keys() & other.limits.keys():
            if "_max_" in name:
                assert strict.limits[name] <= other.limits[name]
            if "_min_" in name:
                assert strict.limits[name] >= other.limits[name]


def test_an_unknown_rule_is_named():
    with pytest.raises(Unknown, match="do-what-you-like"):
        rule("do-what-you-like")


def test_a_caution_is_a_reminder_unless_its_severity_is_given():
    assert caution("thaw-counter") == Caution("thaw-counter", "warn", Message("rule-thaw-counter"))
    assert caution("thaw-counter", "stop").severity == "stop"
    assert caution("from-frozen").severity == "info"
    assert caution("oven-325", "info", oven_c=150.0).severity == "info"


def test_a_citation_names_document_section_and_year():
    assert rule("cooling-two-stage").citation == "FDA Food Code 2022, 3-501.14(A)"
    assert rule("stuffing-165", "home").citation.endswith("(2013)")


LOCAL_CODE = """
title = "A county that holds hot at 140 F"
source = "County food code"
obtained = "print"
[[row]]
id = "hot-hold"
applies_to = ["cooked food kept hot"]
limits = { food_min_c = 60.0, roast_min_c = 60.0 }
document = "County food code"
section = "12"
year = 2020
severity = "warn"
action = "reheat"
"""


@pytest.fixture
def county(monkeypatch):
    """A local code as one more file."""
    known, load = tables.names(), tables.table
    made = tables.parse("rules_licensed_county", LOCAL_CODE)
    reading = import_module("turnspit.reference.rules")
    caches = (reading.sources, reading._by_id, reading._file)
    monkeypatch.setattr(reading, "names", lambda: (*known, "rules_licensed_county"))
    monkeypatch.setattr(reading, "table", lambda name: made if name == made.name else load(name))
    for cache in caches:
        cache.cache_clear()
    yield
    for cache in caches:
        cache.cache_clear()


@pytest.mark.usefixtures("county")
def test_a_local_code_is_one_more_file_with_the_rows_that_differ():
    assert rule("hot-hold", "licensed_county").limits["food_min_c"] == 60.0
    assert rule("hot-hold", "licensed").limits["food_min_c"] == 57.22
    assert rule("cooling-two-stage", "licensed_county").citation == rule("cooling-two-stage", "licensed").citation
    assert [each.id for each in rules("licensed_county")] == ["hot-hold"]
    assert is_licensed("licensed_county")


def test_an_unknown_kitchen_is_named():
    with pytest.raises(Unknown, match="space station"):
        rule("hot-hold", "space station")


def test_what_plants_go_by_is_no_kitchen():
    with pytest.raises(Unknown, match="use one of home, licensed"):
        rule("poultry-165", "plants")
    assert rule("moist-heat").source == "plants"
