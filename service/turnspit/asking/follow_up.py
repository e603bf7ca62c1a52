"""A line in its conversation: is it a new question, an amendment, or about the answer itself; and what holds
after it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from typing import Any, Literal

from turnspit.asking.contract import Intent
from turnspit.asking.conversation import Conversation
from turnspit.asking.readers.clock import Clock
from turnspit.asking.readers.moment import next_after
from turnspit.asking.scene import Scene

Move = Literal["ask", "amend", "why", "assumptions", "start_over", "show"]
_ABOUT_THE_ANSWER: tuple[tuple[str, Move], ...] = (
    ("<start_over>", "start_over"),
    ("<assumptions>", "assumptions"),
    ("<why>", "why"),
    ("<show>", "show"),
)
_LONGEST_ASIDE = 6
# What a value belongs to. A new question about another group begins anew; the dinner is set aside and can be taken
# up again.
_APART = ("amount", "scale")
# Said of one moment: dropped by the next line, unless that one goes on about the same thing.
_PASSING = ("elapsed_h", "subject", "reading", "readings", "leftovers_day")
_PASSING_INTENTS = frozenset(("safety", "doneness", "leftovers", "carve"))


@dataclass(frozen=True, slots=True)
class Turn:
    """What this turn is, and what is understood after it."""

    move: Move
    intents: tuple[Intent, ...]
    understood: dict[str, Any]
    kept: Mapping[str, Any] = field(default_factory=dict)


def turn(scene: Scene, asked: tuple[Intent, ...], conversation: Conversation | None) -> Turn:
    """Put the line into its conversation."""
    before = conversation or Conversation("")
    _system(scene)
    move = _about_the_answer(scene)
    if move is not None and (conversation is not None or move == "start_over"):
        if move == "start_over":
            return Turn(move, ("help",), {})
        return Turn(move, before.intents or ("help",), dict(before.understood))
    if conversation is None:
        return Turn("ask", asked, nested(scene.values), _kept(scene, before, scene.values, {}))
    _finish_serving_time(scene, before)
    return _continued(scene, asked, before)


def _about_the_answer(scene: Scene) -> Move | None:
    if scene.values or len(scene.items) > _LONGEST_ASIDE:
        return None
    return next((move for tag, move in _ABOUT_THE_ANSWER if scene.has(tag)), None)


def _system(scene: Scene) -> None:
    for place, item in scene.find("<system>"):
        scene.put("units", item.tags["<system>"], "units", place)


def _finish_serving_time(scene: Scene, before: Conversation) -> None:
    """`push dinner to 7` keeps the day; `an hour later` and `make it Friday` keep what they do not name."""
    held = scene.before.get("serve_at") or before.shelved.get("serve_at")
    if held is None:
        day = before.day
        clock: Clock | None = scene.hints.get("serve_clock")
        if day and clock is not None and not scene.has("<when_day>"):
            at = next_after(scene.now, clock, date.fromisoformat(day), "", "dinner")
            scene.values["serve_at"] = at.isoformat()
        return
    served = datetime.fromisoformat(held)
    if "shift_h" in scene.hints and "serve_at" not in scene.values:
        at = (served + timedelta(hours=scene.hints["shift_h"])).astimezone(scene.now.tzinfo)
        scene.put("serve_at", at.isoformat(), "moment: later")
    elif "serve_at" in scene.values and not scene.has("<when_day>"):
        clock = scene.hints.get("serve_clock")
        if (clock is not None and scene.has("<amend>")) or clock is not None:
            at = next_after(scene.now, clock, served.date(), "", "dinner")
            if at > scene.now:
                scene.values["serve_at"] = at.isoformat()
    elif scene.hints.get("day") is not None:
        moved = datetime.combine(scene.hints["day"], served.timetz().replace(tzinfo=None), tzinfo=scene.now.tzinfo)
        scene.put("serve_at", moved.isoformat(), "moment: another day")


def _continued(scene: Scene, asked: tuple[Intent, ...], before: Conversation) -> Turn:
    said = dict(scene.values)
    fresh = _group(asked, said)
    old = dict(scene.before)
    shelved = dict(before.shelved)
    amends = not _asks_anew(scene, asked) and bool(said or scene.has("<amend>"))
    intents = asked
    if amends and before.intents:
        intents = before.intents
        fresh = _group(intents, said)
    held_group = "apart" if any(path.split(".")[0] in _APART for path in old) else "dinner"
    if fresh == "apart" and held_group == "dinner":
        shelved, old = {**shelved, **old}, {}
    elif fresh == "dinner" and held_group == "apart":
        old, shelved = shelved, {}
    elif fresh == "apart" and not amends:
        old = {}
    merged = _merged(old, said, intents, amends)
    return Turn("amend" if amends else "ask", intents, nested(merged), _kept(scene, before, merged, shelved))


def _group(asked: tuple[Intent, ...], said: Mapping[str, Any]) -> str:
    if any(path.split(".")[0] in _APART for path in said) or (asked and asked[0] in ("convert", "scale")):
        return "apart"
    return "dinner"


def _asks_anew(scene: Scene, asked: tuple[Intent, ...]) -> bool:
    if not asked:
        return False
    if scene.has("<amend>") and not scene.has("<how_big>", "<how_long>", "<when>", "<what_temp>", "<can>", "<where>"):
        return asked[0] not in (
            "thaw",
            "brine",
            "safety",
            "leftovers",
            "carve",
            "doneness",
            "convert",
            "scale",
            "help",
        )
    return True


def _merged(old: dict[str, Any], said: dict[str, Any], asked: tuple[Intent, ...], amends: bool) -> dict[str, Any]:
    kind, was = said.get("roast.kind"), old.get("roast.kind")
    if kind is not None and was is not None and kind != was:
        old = {path: value for path, value in old.items() if not path.startswith("roast.")}
    if "reading.temperature_c" in said:
        old = {p: v for p, v in old.items() if p not in ("readings", "reading.at", "reading.temperature_c")}
    elif not _PASSING_INTENTS.intersection(asked):
        old = {path: value for path, value in old.items() if path.split(".")[0] not in _PASSING}
    if "roast.mass_kg" in said and "roast.mass_kg_range" not in said:
        old.pop("roast.mass_kg_range", None)
    if "serve_at" in said and "start_at" not in said and amends is False:
        pass
    return {**old, **said}


def _kept(
    scene: Scene, before: Conversation, merged: Mapping[str, Any], shelved: Mapping[str, Any]
) -> dict[str, Any]:
    day = scene.hints.get("day")
    return {
        "units": scene.usual or before.units,
        "day": "" if "serve_at" in merged else day.isoformat() if day is not None else before.day,
        "shelved": dict(shelved),
    }


def nested(values: Mapping[str, Any]) -> dict[str, Any]:
    """Values by dotted path as the nested object of the contract."""
    found: dict[str, Any] = {}
    for path, value in values.items():
        *above, name = path.split(".")
        node = found
        for part in above:
            node = node.setdefault(part, {})
        node[name] = value
    return found
