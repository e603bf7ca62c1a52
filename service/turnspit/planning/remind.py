"""Rules as reminders: a plan that keeps a rule still says it, without the alarm of a broken one."""

from __future__ import annotations

from turnspit.message import Caution
from turnspit.reference import caution


def remind(rule_id: str) -> Caution:
    """The rule as a caution worth knowing (`info`), so that what wants a decision stands out beside it."""
    return caution(rule_id, "info")
