"""What an hour or a number is that serves nothing: when the roast goes in, when its oven stopped, a table."""

from __future__ import annotations

import itertools
from datetime import timedelta

from turnspit.asking.grammar import Grammar
from turnspit.asking.readers.hours.clock import Clock
from turnspit.asking.readers.hours.next_hour import last_before
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Number

grammar = Grammar("put in")

_GOES = frozenset(("go", "goes", "going", "go to", "gets", "hit", "hits", "reaches", "entra", "entran", "van"))
_LOADED = frozenset(("loading", "loaded", "metemos", "cargamos"))
_HEATED = ("<oven>", "<convection>", "<cook>")
_ANOTHER_CLAUSE = ("<break>", "<meal>", "<serve>", "<clock>", "<when>", "<other_event>")
_ASKED_OF_ITS_END = (
    "ready",
    "done",
    "out",
    "cooked",
    "finished",
    "off",
    "check",
    "look",
    "come out",
    "miro",
    "salen",
)
_MOST_TABLES = 300
# The roast is out, and the oven may be on.
_TAKEN_OUT = ("out", "took", "taken", "came", "pulled", "fuera", "saque")


_HEAT = "<oven>|<convection>|gas|breaker|fuse|element|pilot|burner"


@grammar.rule(
    f"{_HEAT} has|had|is|just? died|dead|failed|tripped|quit|broke|blew",
    f"{_HEAT} broke|went|cut|gave|packed|conked|shut|clicked down|off|out|up|in",
    gives="<danger>",
)
def _oven_died(*_: object) -> str:
    """`oven broke down`, `gas went off`, `the breaker tripped`."""
    return "interrupted"


@grammar.rule(
    "table|room|ticket|docket|chit|mesa|habitacion|comanda <number> !<people>|<mass_unit>|<ampm>|<birds>",
    gives="<label>",
)
def _table_twelve(said: Number) -> str | None:
    """`table 12 wants the bill`: a name of who asks."""
    return "label" if said.value == int(said.value) and said.value <= _MOST_TABLES else None


def goes_in_at(scene: Scene, place: int) -> bool:
    """`goose on at 2`, `go into two ovens at 10:30`, `being loaded at 11`, `meto dos pavos de 6 kg a las 11`."""
    if _goes_on(scene, place):
        return True
    heated = False
    for _, at, item in scene.walk(place, -1):
        heated = heated or any(tag in item for tag in _HEATED)
        if item.words in _LOADED or (item.words in _GOES and heated) or item.words.startswith("meto"):
            return scene.before_is(at, "<when>", "'if") is None
        if any(tag in item for tag in _ANOTHER_CLAUSE):
            return False
    return False


def _goes_on(scene: Scene, place: int) -> bool:
    """`bird on 11 am`, `goose 4 kg, on at 2`."""
    at = scene.before_is(place, "<at>")
    on = (place if at is None else at) - 1
    if on < 0 or scene.items[on].words != "on":
        return False
    led = ("<roast>", "<generic>", "<mass>") if at is None else ("<roast>", "<generic>", "<mass>", "<break>")
    if scene.items[on - 1].words in _GOES:
        return scene.before_is(on - 1, "<oven>", "<convection>") is None
    return (on == 0 and at is not None) or scene.before_is(on, *led) is not None


def asks_its_end(scene: Scene) -> bool:
    """Whether it is asked when the roast is ready: an hour that is told beside is the one it starts from, not one of
    another day, nor where it is asked when it should be."""
    another = scene.has("<when_day>", "<holiday>", "<freezer>", "<cold_place>", "<thaw>")
    if another or any("should" in item.words.split() for item in scene.items):
        return False
    for place, item in enumerate(scene.items):
        if "<done>" in item and item.words.startswith(("when", "what time")):
            return True
        if "<when>" in item:
            behind = itertools.takewhile(
                lambda other: "<break>" not in other and "<start>" not in other,
                (other for _, _, other in scene.walk(place, 1)),
            )
            clause = [*scene.items[max(0, place - 1) : place], *behind]
            if any(other.words in _ASKED_OF_ITS_END for other in clause):
                return True
    return False


def read(scene: Scene) -> None:
    """Put that the oven is off of a roast that was probed after it died, unless it was off `for 30 min`."""
    if "reading.temperature_c" in scene.values:
        for place, item in scene.find("<danger>"):
            behind = scene.items[place + 1].words if place + 1 < len(scene.items) else ""
            if item.tags["<danger>"] == "interrupted" and not f"{behind} ".startswith("for "):
                scene.put("reading.oven_left_on", False, "oven: it died", place, keep=True)


def off_since(scene: Scene, clock: Clock) -> None:
    """Put how long the oven has been off; what the roast was in before that tells when it went in."""
    at = last_before(scene.now, clock, None, "")
    was_in_h = scene.values.get("elapsed_h")
    if was_in_h is not None and scene.has("<been_in>", "<duration>"):
        scene.drop("elapsed_h")
        scene.put("start_at", (at - timedelta(hours=was_in_h)).isoformat(), "moment: in before the oven died")
    scene.put("elapsed_h", round((scene.now - at).total_seconds() / 3600, 2), "elapsed: the oven off since")


def is_turned_on(scene: Scene, place: int) -> bool:
    """`oven on at 11`, `the oven goes on at 11`: neither the roast's hour nor that of dinner."""
    at = scene.before_is(place, "<at>")
    led = list(scene.items[max(0, place - 4) : place if at is None else at])
    if not led or (led[-1].words != "on" and led[-1].get("<oven_left>") is not True):
        return False
    return led[-1].words.startswith("oven") or any("<oven>" in item for item in led)


def oven_stopped_at(scene: Scene, place: int) -> bool:
    """`oven died at 1`, `power cut at 9:40`, `turned the oven off at 2`, of a roast that is in it."""
    at = scene.before_is(place, "<at>")
    by = (place if at is None else at) - 1
    by -= by > 0 and scene.items[by].words in ("down", "off", "out", "on us", "on me")
    if by < 0:
        return False
    led = scene.items[by]
    if led.get("<oven_left>") is False and not led.words.startswith(_TAKEN_OUT):
        return True
    danger = led.get("<danger>")
    return danger == "interrupted" or (danger == "power_cut" and "reading.temperature_c" in scene.values)
