"""Plans as they are given out and kept."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from turnspit.api.problems import no_such
from turnspit.api.service import Service
from turnspit.storage import KeptPlan


def keep_plan(service: Service, plan: Mapping[str, Any], worded_for: Mapping[str, str]) -> dict[str, Any]:
    """Keep a plan that is given out, so that its page and its calendar can be opened; the plan as it is kept.

    `worded_for` names the language, units and clock of its texts: whoever shows it tells its times likewise.
    """
    document = {**plan, "reader": dict(worded_for)}
    service.store.keep_plan(document["id"], document, datetime.fromisoformat(document["serve_at"]), service.clock())
    return document


def kept_plan(service: Service, plan_id: str) -> KeptPlan:
    """The plan of that id. Raises NotKept without one. Blocks."""
    kept = service.store.plan(plan_id)
    if kept is None:
        raise no_such("plan", plan_id, "ask for it again")
    return kept
