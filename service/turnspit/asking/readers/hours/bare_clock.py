"""Which bare number is an hour: `dinner 6`, `pass 330`, `in at 1045`, `from 0930`, `at two thirty`, `tomorrow 1.15`.

What stands beside it must make it an hour, and it must look like one: an hour up to 24, or hours and minutes written
together. An oven is set in steps of 25 F and an hour told in quarters, so `at 330` is an hour and `at 350` an oven.
"""

from __future__ import annotations

from turnspit.asking.grammar import Item
from turnspit.asking.readers.company.covers import Covers
from turnspit.asking.readers.heat.oven import counts_ovens
from turnspit.asking.readers.hours.clock import Clock, digits_clock, is_an_hour
from turnspit.asking.readers.hours.clock import clock as clock_of
from turnspit.asking.readers.hours.duration import Duration
from turnspit.asking.readers.hours.put_in import oven_stopped_at
from turnspit.asking.readers.roasts.counts import is_plural
from turnspit.asking.scene import Scene
from turnspit.asking.tokens import Number

_MEALS = ("<meal>", "<serve>", "<started>", "<starts_now>", "<when_day>")
_BESIDE = ("<meal>", "<serve>", "<start>", "<started>")
_CUES = (*_BESIDE, "<at>", "'make", "'to", "'for", "'from", "<when_day>")
# What is counted, measured or probed is no hour.
_NO_HOUR = ("<people>", "<mass_unit>", "<percent>", "<deg>")
_HEATED = ("<oven>", "<convection>", "<place>")
_SERVICE = ("'service", "'svc", "'seating", "'sitting")
_SHIFTED = (
    "push",
    "pushed",
    "move",
    "moved",
    "back",
    "forward",
    "bring",
    "slide",
    "slipped",
    "bump",
    "bumped",
    "pull",
)
_LATEST = 12
_FOUR_DIGITS = 1000
# `20h`, written in one, behind a break or alone.
_GLUED = 3
_PARTS = frozenset((",", ".", "-", "/", "|", "finally", "finalmente", "rather", "mejor", "vers", "um"))
_HOTTEST_F = 500
_FEWEST_MINUTES = 5


def clocks(scene: Scene) -> list[tuple[int, Clock]]:
    """Every hour of the line with its place."""
    found = []
    for place in range(len(scene.items)):
        clock = _clock_at(scene, place) if place not in scene.used else None
        if clock is not None:
            found.append((place, clock))
    return found


def _clock_at(scene: Scene, place: int) -> Clock | None:
    item = scene.items[place]
    if "<clock>" in item:
        clock: Clock = item.tags["<clock>"]
        return clock
    if "<number>" in item and _between(scene, place):
        return digits_clock(item.tags["<number>"])
    if "<from_to>" in item and scene.before_is(place, "<meal>", "<serve>") is not None:
        return clock_of(item.tags["<from_to>"].high)
    if "<duration>" in item:
        return hour_of_day(scene, place)
    if "<covers>" in item:
        return _for_an_hour(scene, place, item.tags["<covers>"])
    return bare_clock(scene, place) if "<number>" in item else None


def _between(scene: Scene, place: int) -> bool:
    """`dinner between 5 and 6`: by the later of the two."""
    if place < _BETWEEN_TWO or "<and_sign>" not in scene.items[place - 1] or "<number>" not in scene.items[place - 2]:
        return False
    between = place - _BETWEEN_TWO
    return scene.items[between].words == "between" and scene.before_is(between, "<meal>", "<serve>") is not None


_BETWEEN_TWO = 3


def bare_clock(scene: Scene, place: int) -> Clock | None:
    """A bare number as a clock time, None where it is none."""
    said: Number = scene.items[place].tags["<number>"]
    clock = digits_clock(said)
    if clock is None or scene.after_is(place, *_NO_HOUR) is not None or _counts(scene, place):
        return None
    cue = _cue(scene, place)
    if scene.after_is(place, *_HEATED) is not None and not _before_the_oven(scene, place, cue, clock):
        return None
    if cue is not None and "<at>" in scene.items[cue] and scene.before_is(cue, "<cold_place>") is not None:
        # "chiller at 3"
        return None
    if cue is not None and scene.items[cue].words == "by" and _is_off(scene, cue):
        return None
    if goes_in(scene, place):
        return clock if "." in said.digits and not clock.minute % _FEWEST_MINUTES else None
    if cue is not None and "'make" in scene.items[cue]:
        # "can we still make 4.15"; "make 6" may be six of anything.
        return clock if said.value > 24 or "." in said.digits else None
    if said.value <= 24 and said.value == int(said.value):
        led = cue is not None and ("'from" not in scene.items[cue] or _roasts_from(scene, cue, place))
        return clock if led or _meal_behind(scene, place, said) else None
    if clock.minute % _FEWEST_MINUTES:
        return None
    if said.digits.startswith("0") and said.value >= 1:
        return clock
    if cue is None:
        ahead = scene.after_is(place, *_BESIDE, *(("<when_day>",) if "." in said.digits else ()))
        probed = scene.before_is(place, "<place>", "<probe>", "<oven>") is not None
        return clock if ahead is not None and not probed and is_an_hour(said) else None
    served = "'for" in scene.items[cue] and scene.after_is(place, *_SERVICE) is not None
    return clock if served or _told_as_an_hour(scene, cue, said) else None


_NEARER = ("closer", "nearer", "close", "near", "next")
# What may stand between a meal and its hour: "dinner has to be 6", "dinner's 6".
_BETWEEN = ("is", "be", "to be", "has", "needs", "must", "will", "should", "moved", "to")


def _cue(scene: Scene, place: int) -> int | None:
    """The word that may make the number an hour: just before it, or a meal over "has to be"; the oven that something
    "went in at 8"."""
    cue = scene.before_is(place, *_CUES)
    if cue is not None and cue > 0 and scene.items[cue].words == "to" and scene.items[cue - 1].words in _NEARER:
        # "closer to 19"
        cue = None
    if cue is None and _behind_a_comma(scene, place):
        return place - 2
    meal = meal_over_is(scene, place)
    if meal is not None:
        return meal
    if cue is None and place and scene.items[place - 1].words.endswith("oven at"):
        return scene.before_is(place - 1, "<start>", "<started>")
    return cue


def meal_over_is(scene: Scene, place: int) -> int | None:
    """The meal before a place, over "has to be" and its like; None where there is none or nothing between."""
    at = place - 1
    while at > 0 and scene.items[at].words in _BETWEEN:
        at -= 1
    return at if 0 <= at < place - 1 and "<meal>" in scene.items[at] else None


_WENT_IN = ("<started>", "<starts_now>", "<start>")


def _behind_a_comma(scene: Scene, place: int) -> bool:
    """`late dinner, 9`, `tonight, 8`: nothing else follows that would be counted; `shoved it in. 8.50`."""
    if place < _ROW or scene.items[place - 1].words not in (",", ":", ";", "-", ".", "!"):
        return False
    led = scene.items[place - _ROW]
    if "." in scene.items[place].tags["<number>"].digits and any(tag in led for tag in _WENT_IN):
        return True
    if scene.items[place - 1].words in (".", "!"):
        return False
    ended = place + 1 == len(scene.items) or scene.items[place + 1].words in (",", ".", ";")
    return ended and ("<meal>" in led or "<night>" in led) and not scene.has("<clock>")


_ROW = 2


def _is_off(scene: Scene, by: int) -> bool:
    """`the probe is off by 2`, `out by 3`: a difference."""
    before = scene.items[by - 1] if by else None
    return before is not None and ("<off_by>" in before or before.words in ("out", "wrong", "reads"))


def goes_in(scene: Scene, place: int) -> bool:
    """`5 kg. in 12.15. oven 180`: what a ticket says of when it goes in; `in 1.15 hours` is no hour of the day."""
    led = place > 0 and scene.items[place - 1].words == "in"
    begins = led and (place == 1 or "<break>" in scene.items[place - 2] or "<mass>" in scene.items[place - 2])
    return begins and scene.after_is(place, "<time_unit>") is None


def _before_the_oven(scene: Scene, place: int, cue: int | None, clock: Clock) -> bool:
    """`dinner at 6 oven 325`, `at 11 the breast was 110`: an hour, and what comes next begins anew."""
    led = cue is not None and any(tag in scene.items[cue] for tag in (*_MEALS, "<start>", "<at>"))
    return led and clock.is_open and not counts_ovens(scene, place)


def _roasts_from(scene: Scene, cue: int, place: int) -> bool:
    """`roasting a 13 lb turkey from 2`, but no `from 2 to 6` of anything."""
    ends = place + 1 == len(scene.items) or "<break>" in scene.items[place + 1]
    return ends and scene.nearest(cue, "<cook>", reach=_ROW * 2) is not None


def _meal_behind(scene: Scene, place: int, said: Number) -> bool:
    """`turkey 14 lb, 7 service`, `2 dinner`: an hour, where no other is told and the meals are not counted."""
    meal = scene.after_is(place, "<meal>", *_SERVICE)
    if meal is None or not said.digits or said.value > _LATEST or scene.has("<clock>", "<covers>"):
        return False
    then = scene.after_is(
        meal, "<people>", "<at>", "<for>", "<number>", "<roast>", "<generic>", "<birds>", "<ingredient>"
    )
    plural = scene.items[meal].words.endswith("s")
    return (
        then is None
        and not plural
        and scene.before_is(place, "<for>", "<feeds>", "<in>", "<temperature_read>") is None
    )


def _told_as_an_hour(scene: Scene, cue: int, said: Number) -> bool:
    """Whether the word before hours and minutes makes them a time."""
    words = scene.items[cue]
    if "<when_day>" in words:
        return said.value >= _FOUR_DIGITS or is_an_hour(said)
    if "'for" in words:
        # "table laid for 1900"
        return ("." in said.digits or said.value >= _FOUR_DIGITS) and is_an_hour(said)
    if "<hour_at>" in words and (said.spoken is not None or said.value >= _FOUR_DIGITS):
        return True
    if "<at>" not in words:
        if any(tag in words for tag in _MEALS):
            return True
        shifted = words.words == "to" and (cue and scene.items[cue - 1].words in _SHIFTED)
        return ("<start>" in words or bool(shifted)) and is_an_hour(said)
    probed = scene.before_is(cue, "<number>", "<temperature>") is not None and scene.has("<place>")
    if "." in said.digits and (probed or oven_stopped_at(scene, cue + 1)):
        # "core 72 at 11.20", "oven died at 1.15"
        return is_an_hour(said)
    if said.digits.isdigit() and (said.value >= _FOUR_DIGITS or (said.value > _HOTTEST_F and is_an_hour(said))):
        return True
    led = scene.before_is(cue, *_BESIDE, "<when_day>")
    if led is None:
        return False
    if "<when_day>" in scene.items[led] or "<start>" in scene.items[led]:
        # "tomorrow at 250" and "start at 350" are ovens.
        return "." in said.digits or ("<start>" in scene.items[led] and is_an_hour(said))
    return True


def _counts(scene: Scene, place: int) -> bool:
    noun = scene.after_is(place, "<roast>")
    return noun is not None and is_plural(scene.items[noun].words)


def hour_of_day(scene: Scene, place: int) -> Clock | None:
    """`dinner 20h`, `gigot, pink, 20h`, `finally 21h`: an hour of the day, not twenty hours."""
    item = scene.items[place]
    duration: Duration = item.tags["<duration>"]
    if duration.unit != "h" or duration.hours not in range(13, 24):
        return None
    before = scene.before_is(place, "<meal>", "<serve>", "<at>", "<when_day>", "<oven>")
    at = before is not None and ("<oven>" not in scene.items[before] or scene.items[before].words.endswith(" at"))
    at_the_hour = place > 0 and scene.items[place - 1].words in ("at", "@")
    told = at and (item.words.endswith((" h", " horas")) or at_the_hour)
    alone = item.end - item.start == _GLUED and (place == 0 or _ends(scene.items[place - 1]))
    lasts = scene.has("<brine>", "<brined>", "<out>", "<been_in>", "<thaw>", "<how_long>")
    return Clock(int(duration.hours), 0, "", "24h") if told or (alone and not lasts) else None


def _ends(item: Item) -> bool:
    """Whether what stands before an hour is complete without it: `8 personas 21h`, but not `brine 20h`."""
    return item.words in _PARTS or any(tag in item for tag in ("<covers>", "<mass>", "<roast>", "<generic>"))


def _for_an_hour(scene: Scene, place: int, covers: Covers) -> Clock | None:
    """`when do I put it in for 6`, `in at 2 for dinner`: an hour."""
    if _goes_in_for_a_meal(scene, place, covers):
        return digits_clock(Number(float(covers.count), str(covers.count)))
    start = scene.before_is(place, "<start>", "<plan>", "<when>")
    asked = start is not None and (scene.has("<when>") or scene.items[start].words.startswith(("when", "what time")))
    if start is not None and "<when>" in scene.items[start]:
        # "in when for 1"
        asked = scene.before_is(start, "'in") is not None
    if not asked or covers.sure or covers.more:
        return None
    said = Number(float(covers.count), str(covers.count))
    return digits_clock(said) if covers.count <= 12 or (covers.count > 99 and is_an_hour(said)) else None


def _goes_in_for_a_meal(scene: Scene, place: int, covers: Covers) -> bool:
    """`in at 2 for dinner at 6`: two is when it goes in, and dinner is at what comes next."""
    item = scene.items[place]
    meal = next((meal for meal in ("dinner", "lunch", "supper") if item.words.endswith(f" for {meal}")), "")
    if not meal or covers.count > _LATEST or scene.before_is(place, "<start>", "<started>") is None:
        return False
    item.tags.setdefault("<meal>", "lunch" if meal == "lunch" else "dinner")
    scene.tags.add("<meal>")
    return True
