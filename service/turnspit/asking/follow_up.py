"""A line in its conversation: is it a new question, an amendment, or about the answer itself; and what holds
after it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, timedelta
from typing import Any, Literal

from turnspit.asking.contract import Intent
from turnspit.asking.conversation import Conversation
from turnspit.asking.readers.amounts.amount import target_unit
from turnspit.asking.readers.hours.clock import Clock
from turnspit.asking.readers.hours.next_hour import at_clock, next_after
from turnspit.asking.readers.measures.measures import METRIC_UNITS, US_UNITS
from turnspit.asking.readers.talk.correction import is_slip
from turnspit.asking.scene import Scene

Move = Literal["ask", "amend", "why", "assumptions", "start_over", "show", "thanks"]
_ABOUT_THE_ANSWER: tuple[tuple[str, Move], ...] = (
    ("<start_over>", "start_over"),
    ("<assumptions>", "assumptions"),
    ("<why>", "why"),
    ("<show>", "show"),
    ("<thanks>", "thanks"),
)
_LONGEST_ASIDE = 6
# What a value belongs to. A new question about another group begins anew; the dinner is set aside and can be taken
# up again.
_APART = ("amount", "scale")
# Said of one moment: dropped by the next line, unless that one goes on about the same thing.
_STOOD = ("elapsed_h", "subject")
_PASSING = (*_STOOD, "reading", "readings")
_PASSING_INTENTS = frozenset(("safety", "doneness", "leftovers", "carve"))
# What a new value puts out of force: a plain mass the range before it, a factor the servings.
_UNDOES = {
    "roast.mass_kg": ("roast.mass_kg_range",),
    "scale.factor": ("scale.from", "scale.to"),
    "scale.to": ("scale.factor",),
}
# What is colder is no meat that roasts: a garage, a refrigerator.
_COLDEST_MEAT_C = 10.0
MAIN: frozenset[Intent] = frozenset(("plan", "roast_time"))
"""What a talk about a dinner is about; it goes back to these from a question asked in between."""


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
    _only_asked(scene, asked)
    move = _about_the_answer(scene)
    if move == "thanks" and (asked or scene.has("<start>", "<meal>", "<place>")):
        move = None
    if move is not None and (conversation is not None or move in ("start_over", "thanks")):
        if move == "start_over":
            return Turn(move, ("help",), {})
        return Turn(move, before.intents or ("help",), dict(before.understood), {"technique": before.technique})
    if conversation is None:
        return Turn("ask", asked, nested(scene.values), _kept(scene, before, scene.values, {}))
    _finish_serving_time(scene, asked, before)
    return _continued(scene, asked, before)


def _about_the_answer(scene: Scene) -> Move | None:
    if scene.values or len(scene.items) > _LONGEST_ASIDE or (scene.has("<repair>") and "day" in scene.hints):
        return None
    return next((move for tag, move in _ABOUT_THE_ANSWER if scene.has(tag)), None)


def _only_asked(scene: Scene, asked: tuple[Intent, ...]) -> None:
    """Who asks about a brine has not yet said that one is wanted."""
    told = "brine.hours" in scene.values or (scene.has("<brine>") and not scene.has("'or", "'o"))
    if _orders_a_brine(scene) or (asked == ("plan",) and told):
        scene.put("brine.wanted", True, "brine: told of with the dinner")
    lasts = "brine.hours" in scene.values and not scene.has("<how_much>", "<how_long>", "<can>")
    wishes = (
        (set(asked) == {"plan", "brine"} and lasts)
        or scene.has("<wish>")
        or scene.values.get("brine.wanted") is False
        or scene.talk
        or _orders_a_brine(scene)
    )
    if "brine" in asked and asked != ("plan", "brine") and not wishes:
        scene.drop("brine.wanted")


def _orders_a_brine(scene: Scene) -> bool:
    """`brine for 12 hours, then what time in the oven to eat at 6`: the brine of a dinner, and no question."""
    first = next((item for item in scene.items if "<soft>" not in item), None)
    opens = first is not None and ("<brine>" in first or "<brined>" in first)
    return opens and scene.values.keys() >= {"brine.hours", "serve_at"}


def _system(scene: Scene) -> None:
    for place, item in scene.find("<system>"):
        scene.put("units", item.tags["<system>"], "units", place)
    aside = scene.talk and not scene.values and len(scene.items) <= _LONGEST_ASIDE
    for place, item in enumerate(scene.items):
        unit = target_unit(item)
        if unit in US_UNITS | METRIC_UNITS and (aside or _asks_for_units(scene, place)):
            # `in pounds please`: a unit alone names the system.
            scene.put("units", "us" if unit in US_UNITS else "metric", "units: by a unit", place)


def _asks_for_units(scene: Scene, place: int) -> bool:
    """`14 lb turkey at 6, show me kilos`, `in celsius please`, `I cook in fahrenheit`."""
    measures = not scene.items[place].tags.keys().isdisjoint(_MEASURES)
    named = scene.before_is(place, "<in>", "'use", "'usa", "'me", "<show>") is not None
    favour = scene.has("<show>", "<cook>") or any(item.words in _FAVOURS for item in scene.items)
    return named and favour and not measures and "amount.value" not in scene.values


_MEASURES = ("<mass>", "<volume>", "<length>", "<temperature>")
_FAVOURS = ("please", "pls", "por favor", "porfa", "use", "usa", "show", "show me", "answer", "give", "dame", "dime")


def _finish_serving_time(scene: Scene, asked: tuple[Intent, ...], before: Conversation) -> None:
    """`push dinner to 7` keeps the day; `an hour later` and `make it Friday` keep what they do not name; `can I stuff
    it tonight` moves no dinner.
    """
    held = scene.before.get("serve_at") or before.shelved.get("serve_at")
    clock: Clock | None = scene.hints.get("serve_clock")
    place = scene.hints.get("serve_place")
    if clock is not None and place is not None:
        scene.put(
            "serve_at", next_after(scene.now, clock, None, "", "dinner").isoformat(), "moment: bare hour", place
        )
    if held is None:
        if before.day and clock is not None and not scene.has("<when_day>"):
            at = next_after(scene.now, clock, date.fromisoformat(before.day), "", before.meal or "dinner")
            scene.change("serve_at", at.isoformat())
        return
    served = datetime.fromisoformat(held)
    if "shift_h" in scene.hints and "serve_at" not in scene.values:
        at = (served.astimezone(UTC) + timedelta(hours=scene.hints["shift_h"])).astimezone(scene.now.tzinfo)
        scene.put("serve_at", at.isoformat(), "moment: later", scene.hints["shift_place"])
    elif "serve_at" in scene.values and clock is not None and not scene.has("<when_day>"):
        at = next_after(scene.now, clock, served.date(), "", "dinner")
        if at > scene.now:
            scene.change("serve_at", at.isoformat())
    elif scene.hints.get("day") is not None and _of_the_dinner(scene, asked):
        moved = at_clock(scene.now, scene.hints["day"], served.hour * 60 + served.minute)
        scene.put("serve_at", moved.isoformat(), "moment: another day")


def _of_the_dinner(scene: Scene, asked: tuple[Intent, ...]) -> bool:
    """Whether a day is one to dine on: no day of what is asked, and none of the sandwiches after."""
    tells = not asked or bool(MAIN.intersection(asked)) or bool(scene.hints.get("told"))
    return tells and "leftovers_wanted" not in scene.values


def _continued(scene: Scene, asked: tuple[Intent, ...], before: Conversation) -> Turn:
    said = dict(scene.values)
    old, shelved = dict(scene.before), dict(before.shelved)
    held, now = _group(before.intents, old), _group(asked, said)
    if not asked and said.keys() == {"units"}:
        now = held
    resumes = now == "dinner" and held == "apart" and bool(shelved) and bool(scene.has("<amend>"))
    amends = resumes or _amends(scene, asked, before, held == now)
    intents = asked
    if resumes:
        intents = asked if asked and not scene.hints.get("told") else before.main or ("plan",)
    elif amends:
        intents, now = _goes_on_with(scene, before), held
        if "help" in intents:
            scene.hints.setdefault("technique", before.technique)
    if not intents and not said:
        intents = _unread(scene, before)
        if not intents:
            # What was not understood changes nothing.
            return Turn("ask", (), nested(scene.before), _kept(scene, before, scene.before, shelved))
        amends = intents == before.intents
        now = held if amends else _group(intents, said)
    if now == "apart" and held == "dinner":
        shelved, old = {**shelved, **old}, {}
    elif now == "dinner" and held == "apart":
        old, shelved = shelved, {}
    elif now == "apart" and (not amends or _is_whole(said)):
        old = {}
    if now == "dinner":
        # A conversion that stood aside is done with.
        old = {path: value for path, value in old.items() if path.split(".")[0] not in _APART}
    merged = _merged(old, said, intents, scene)
    moved = amends or (bool(before.intents) and scene.has("<strong_amend>") and bool(said) and held == now)
    return Turn("amend" if moved else "ask", intents, nested(merged), _kept(scene, before, merged, shelved))


# What the answer to a question rests on, by the beginning of a path. What else is told is told of the dinner.
_ITS_ROAST = ("roast.kind", "roast.mass_kg", "roast.count")
_RESTS_ON: Mapping[Intent, tuple[str, ...]] = {
    "size": ("covers", "leftovers_wanted", "roast.bone_in", *_ITS_ROAST),
    "thaw": ("roast.state", "elapsed_h", *_ITS_ROAST),
    "brine": ("brine.", "roast.injected", "elapsed_h", *_ITS_ROAST),
    "doneness": ("reading", "roast.", "oven.", "elapsed_h", "serve_at", "start_at"),
    "carve": ("covers", "elapsed_h", "roast.bone_in", "roast.kind", "roast.count"),
    "leftovers": ("covers", "leftovers_wanted", "elapsed_h", "roast.kind"),
    "safety": ("reading", "elapsed_h", "brine.hours", "brine.water_l", "roast.kind"),
    "help": ("roast.kind", "oven."),
}
_OF_ANY = ("amount.", "scale.", "units")


def _rests_on(path: str, intents: tuple[Intent, ...]) -> bool:
    return path.startswith((*_OF_ANY, *(name for intent in intents for name in _RESTS_ON.get(intent, ()))))


def _goes_on_with(scene: Scene, before: Conversation) -> tuple[Intent, ...]:
    """What an amendment is about: the last question, where its answer rests on what is said, else the dinner."""
    told = [path for path in scene.values if path != "subject"]
    wonders = scene.has("'?") and not scene.has("<strong_amend>")
    stays = not told or wonders or any(_rests_on(path, before.intents) for path in told)
    return before.intents if stays else before.main or before.intents


# How much more must speak for something else than what was asked (log-odds), where no rule reads the line.
_CLEARLY_NEW, _CLEARLY_STRANGE = 4.0, 6.0
_MEANS_NOTHING = frozenset(("<soft>", "<break>", "<number>", "<a>"))


def _unread(scene: Scene, before: Conversation) -> tuple[Intent, ...]:
    """What a line is about that no rule reads: a new question where its words clearly speak for one, else what was
    asked last; nothing where they speak of other things.
    """
    means = any(tag[0] == "<" for tag in scene.tags - _MEANS_NOTHING)
    if not means or not before.intents or scene.has("<off_topic>") or lone_number(scene) is not None:
        return ()
    last = before.intents[0]
    best = max(scene.tenor, key=scene.tenor.__getitem__)
    ahead = scene.tenor[best] - scene.tenor[last]
    if best == "unknown" and ahead > _CLEARLY_STRANGE:
        return ()
    if best not in ("unknown", "help") and ahead > _CLEARLY_NEW:
        return (best,)
    stands = last != "unknown" and (last != "help" or bool(before.technique))
    scene.hints.setdefault("technique", before.technique)
    return before.intents if stands else ()


def _is_whole(said: Mapping[str, Any]) -> bool:
    """Whether a conversion or a scaling is said anew, from its amount to its goal."""
    return {"amount.value", "amount.target_unit"} <= said.keys() or {"scale.from", "scale.to"} <= said.keys()


def _group(asked: tuple[Intent, ...], values: Mapping[str, Any]) -> str:
    """Conversions and scaling stand apart from the dinner."""
    if asked and set(asked) - {"convert", "scale"}:
        return "dinner"
    if any(path.split(".")[0] in _APART for path in values) or (asked and asked[0] in ("convert", "scale")):
        return "apart"
    return "dinner"


# Told alone in a talk, these go on about what was asked: `in the fridge`, `a bucket`, `cold water`.
_DETAIL_TAGS = "<cold_place> <water> <vessel> <oven> <place> <birds> <subject> <generic> <salt> <weather>"
_DETAILS = tuple(_DETAIL_TAGS.split())
_ASKS = ("<how_long>", "<how_big>", "<how_much>", "<when>", "<what_temp>", "<where>", "<plan>")


def _amends(scene: Scene, asked: tuple[Intent, ...], before: Conversation, same_group: bool) -> bool:
    """Whether the line only changes what was asked before.

    A line that tells values and asks nothing does; so does "what if" with a value. A reading or a danger that is
    told in a talk about something else begins a new question.
    """
    if not before.intents or before.intents[0] == "unknown" or not same_group or scene.has("<off_topic>"):
        return False
    if before.intents[0] == "help" and not (before.technique and _told_only_what_it_rests_on(scene, before)):
        return False
    if not scene.values:
        goes_on = asked == before.intents and not scene.has(*_ASKS)
        adds = scene.has("<amend>", "<covers>", "<repair>") or (
            scene.has(*_DETAILS) and len(scene.items) <= _LONGEST_ASIDE
        )
        return goes_on or (not asked and adds)
    if not asked or asked == before.intents:
        return True
    if asked[0] in ("convert", "scale"):
        return asked == before.intents
    asks = scene.has(*_ASKS) or (bool(scene.items) and "<can>" in scene.items[0])
    if asked[0] == "plan" and not asks and before.intents[0] not in ("plan", "doneness"):
        return not any(path in scene.values for path in ("serve_at", "start_at"))
    if asked[0] == "doneness" and before.intents[0] == "safety" and not scene.has("<place>", "<done>"):
        return True
    if asked == ("roast_time",) and scene.has("<cook>") and before.intents[0] in ("brine", "thaw", "size", "carve"):
        # "and roast at 170 fan", after a brine.
        return False
    if scene.hints.get("told"):
        return asked[0] not in ("doneness", "safety") or (asked[0] == "safety" and "<out>" not in _tags(scene))
    return not asks and (scene.has("<strong_amend>") or "brine.wanted" in scene.values)


def _told_only_what_it_rests_on(scene: Scene, before: Conversation) -> bool:
    """`and for a duck`, after whether to baste a turkey."""
    asks = scene.has(*_ASKS, "<meal>") or not scene.values
    return not asks and all(_rests_on(path, before.intents) for path in scene.values)


def _tags(scene: Scene) -> set[str]:
    return {tag for item in scene.items for tag in item.tags}


def _merged(old: dict[str, Any], said: dict[str, Any], asked: tuple[Intent, ...], scene: Scene) -> dict[str, Any]:
    kind, was = said.get("roast.kind"), old.get("roast.kind")
    if was is None and scene.has("<changes>") and "roast.mass_kg" not in said:
        # `how about a goose` after a bird that was taken for a turkey is another roast.
        was = "turkey"
    if kind is not None and was is not None and kind != was and not is_slip(scene):
        old = _another_roast(scene, old, was, kind)
    if "reading.temperature_c" in said:
        old = {p: v for p, v in old.items() if p not in ("readings", "reading.at", "reading.temperature_c")}
    elif not _PASSING_INTENTS.intersection(asked):
        of_a_place = old.get("reading.temperature_c", _COLDEST_MEAT_C) < _COLDEST_MEAT_C
        passed = _PASSING if of_a_place or not MAIN.intersection(asked) else _STOOD
        old = {path: value for path, value in old.items() if path.split(".")[0] not in passed}
    if "amount.value" in said and "scale" in asked and scene.has("<only_have>"):
        # What there is not enough of sets the factor.
        undoes = {**_UNDOES, "amount.value": ("scale.to", "scale.factor")}
    else:
        undoes = _UNDOES
    for path, undone in undoes.items():
        if path in said:
            old = {name: value for name, value in old.items() if name not in undone or name in said}
    return {**old, **said}


def _another_roast(scene: Scene, old: dict[str, Any], was: str, kind: str) -> dict[str, Any]:
    """What holds when the talk turns to another roast: what was said of that one before, if it was spoken of."""
    left = {path: value for path, value in old.items() if path.startswith(("roast.", "oven."))}
    roasts = scene.hints.get("roasts", {})
    scene.hints["roasts"] = {**roasts, was: left}
    if kind in roasts and "roast.mass_kg" not in scene.values:
        return {**{path: value for path, value in old.items() if path not in left}, **roasts[kind]}
    return {path: value for path, value in old.items() if not path.startswith("roast.")}


def _kept(
    scene: Scene, before: Conversation, merged: Mapping[str, Any], shelved: Mapping[str, Any]
) -> dict[str, Any]:
    day = scene.hints.get("day")
    children, non_eaters = scene.hints.get("apart", scene.apart if "covers" in merged else (0, 0))
    meal = next((item.tags["<meal>"] for _, item in scene.find("<meal>")), before.meal)
    return {
        # "200 g honey in tablespoons" is a recipe's unit, and not the cook's.
        "units": before.units if "amount.value" in scene.values else scene.usual or before.units,
        "day": "" if "serve_at" in merged else day.isoformat() if day is not None else before.day,
        "shelved": dict(shelved),
        "lone": lone_number(scene),
        "meal": "" if "serve_at" in merged else meal,
        "said": tuple(scene.values),
        "technique": scene.hints.get("technique", ""),
        "children": children,
        "non_eaters": non_eaters,
        "earlier": _earlier(scene, merged),
        "roasts": scene.hints.get("roasts", {}),
    }


# What one goes back to: "no, stick with the 16".
_RETURNS_TO = ("roast.mass_kg", "oven.temperature_c", "roast.target_c", "serve_at", "start_at", "covers")
_KEPT_VALUES = 8


def _earlier(scene: Scene, merged: Mapping[str, Any]) -> dict[str, tuple[Any, ...]]:
    """The values that were said before those that hold now."""
    found = {path: tuple(values) for path, values in scene.hints.get("earlier", {}).items()}
    for path in _RETURNS_TO:
        if path in scene.before and path in merged and merged[path] != scene.before[path]:
            found[path] = (*found.pop(path, ()), scene.before[path])[-_KEPT_VALUES:]
    return found


def lone_number(scene: Scene) -> float | None:
    """The number of a line that is nothing else and gave no value."""
    said = [item.tags["<number>"] for item in scene.items if "<soft>" not in item and "<number>" in item]
    return said[0].value if len(said) == 1 and len(scene.items) <= 2 and not scene.values else None


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
