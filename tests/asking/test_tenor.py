"""What the words of a line speak for in sum, and when that overrules the rules."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking.contract import INTENTS
from turnspit.asking.intents import tenor
from turnspit.asking.reading import items_of
from turnspit.asking.scene import Scene

NOW = datetime(2026, 11, 25, 9, tzinfo=ZoneInfo("America/New_York"))


def scene(talk=False, **ahead):
    found = Scene(items_of("how is it"), NOW, talk=talk)
    found.tenor = dict.fromkeys(INTENTS, -9.0) | ahead
    return found


@pytest.mark.parametrize(
    ("rule", "ahead", "settled"),
    [
        (("plan",), {"plan": 0.0, "thaw": 0.9}, ("plan",)),
        (("plan",), {"plan": 0.0, "thaw": 1.1}, ("thaw",)),
        (("safety",), {"safety": 0.0, "thaw": 2.4}, ("safety",)),
        (("safety",), {"safety": 0.0, "thaw": 2.6}, ("thaw",)),
        ((), {"unknown": 0.0, "carve": 1.1}, ("carve",)),
        (("plan",), {"plan": 0.0, "unknown": 1.1}, ()),
        (("size", "plan"), {"size": 3.0, "plan": -3.9}, ("size", "plan")),
        (("size", "plan"), {"size": 3.0, "plan": -4.1}, ("size",)),
    ],
)
def test_weights_overrule_the_rules_only_where_they_clearly_disagree(rule, ahead, settled):
    assert tenor.settle(scene(**ahead), rule) == settled


def test_a_line_within_a_talk_is_left_to_the_rules():
    assert tenor.settle(scene(talk=True, plan=0.0, thaw=5.0), ("plan",)) == ("plan",)


def test_what_has_the_shape_of_a_sum_stays_one_unless_much_speaks_against_it():
    assert not tenor.denies(scene(scale=0.0, plan=2.9), "scale")
    assert tenor.denies(scene(scale=0.0, plan=3.1), "scale")


def test_what_decided_is_traced():
    found = scene(plan=0.0, thaw=5.0)
    tenor.settle(found, ("plan",))
    assert [(trace.rule, trace.path, trace.value) for trace in found.traces] == [("weights", "intent", "thaw")]


def test_every_weight_belongs_to_an_intent():
    assert {intent for feature in ("", "w turkey", "<mass>") for intent, _ in tenor.weights(feature)} <= set(INTENTS)
    assert tenor.weights("no such feature") == ()
