"""What each duration of the line is: hours in the brine, time gone by, or the time until dinner."""

from __future__ import annotations

from datetime import UTC, timedelta

from turnspit.asking.readers.heat.free_clauses import is_latest
from turnspit.asking.readers.hours import past, stood
from turnspit.asking.readers.hours.bare_clock import hour_of_day
from turnspit.asking.readers.hours.duration import Duration
from turnspit.asking.scene import Scene

_GONE_BY_TAGS = """
<out> <been_in> <leftovers> <ago> <safe> <ok> <cooked> <raw> <started> <start> <cold_place> <danger>
<temperature_read> <stands> <keep> <hold> <reheat> <rest> <overnight> <sink>
"""
_GONE_BY = tuple(_GONE_BY_TAGS.split())


def read(scene: Scene) -> None:
    """Put `brine.hours`, `elapsed_h`, and a serving time that is said as so long from now."""
    stood.read(scene)
    _on_the_table_since(scene)
    past.read(scene)
    for place, item in scene.find("<duration>", unused=True):
        duration: Duration = item.tags["<duration>"]
        if hour_of_day(scene, place) is not None:
            continue
        if _shifts(scene, place):
            scene.hints.setdefault("shift_h", duration.hours * _sign(scene, place))
            scene.hints.setdefault("shift_place", place)
            scene.used.add(place)
        elif "<when_day>" in item and scene.has("<meal>"):
            # "dinner 3 weeks ago": a day, not how long something stood.
            continue
        elif scene.after_is(place, "<to_go>") is not None or _to_come(scene, place) or _is_left(scene, place):
            # "with an hour to go", "me quedan 40 minutos" is yet to come, and so is "sink's free all night".
            continue
        elif _rests_then(scene, place):
            continue
        elif scene.after_is(place, "'early", "'ahead") is not None or _early(scene, place):
            # "finished 2 hours early".
            continue
        elif (
            _read_so_long_ago(scene, place, duration)
            or _until_dinner(scene, place, duration)
            or _thaws_overnight(scene, place, duration)
        ):
            continue
        elif _in_brine(scene, place):
            scene.put("brine.hours", _rounded(duration.hours), "brine: hours", place)
        elif duration.unit != "year" and _gone_by(scene):
            scene.put("elapsed_h", _rounded(duration.hours), "elapsed", place)


# What one may use for so long.
_FREE = ("free", "empty", "available", "spare", "libre", "libres", "vacio", "vacia", "disponible", "desocupado")


def _is_left(scene: Scene, place: int) -> bool:
    """`me quedan 40 minutos`, `50 minutes left`, `the sink is free all night`: time there is, and none gone by."""
    if scene.items[place].words.endswith(" left"):
        return True
    if scene.language == "es" and scene.before_is(place, "<to_go>") is not None:
        return True
    free = any(word in _FREE for item in scene.items for word in item.words.split())
    return free and scene.has("<sink>", "<oven>", "<cold_place>") and not scene.has("<danger>", "<been_in>")


# Told of what has been done, or asked.
_RESTED = ("resting", "rested")


def _rests_then(scene: Scene, place: int) -> bool:
    """`dinner at 6, rest 40 min`, `rest it 40 min`: yet to come."""
    rest = scene.nearest(place, "<rest>", reach=2)
    if rest is None:
        return False
    to_do = scene.items[rest[1]].words not in _RESTED and not scene.has("<can>", "<temperature_read>", "<been_in>")
    return to_do or scene.has("<meal>", "<serve>", "<holiday>")


_SINCE_THEN = ("<out>", "<been_in>", "<started>", "<danger>", "<rest>", "<done>", "<cold_place>")


def _read_so_long_ago(scene: Scene, place: int, duration: Duration) -> bool:
    """`the breast was 140 twenty minutes ago`: when it was read."""
    ago = scene.after_is(place, "<ago>") or scene.before_is(place, "<ago>")
    told = ago is not None and scene.items[ago].words in ("ago", "hace")
    latest = any(is_latest(scene, at) for at, _ in scene.find("<temperature_read>"))
    if told and latest and "readings" in scene.values:
        # "was 130 twenty minutes ago, now 141": when the one before was read.
        return True
    # "saqué el pavo hace 20 min y marca 71": since when it is out.
    taken_out = scene.has("'saque", "'sacamos") or any(
        item.tags["<oven_left>"] is False for _, item in scene.find("<oven_left>")
    )
    other = taken_out or scene.has(*_SINCE_THEN)
    if not told or duration.unit != "min" or other or not scene.has("<temperature_read>", "<place>", "<probe>"):
        return False
    at = (scene.now.astimezone(UTC) - timedelta(hours=duration.hours)).astimezone(scene.now.tzinfo)
    scene.put("reading.at", at.isoformat(), "moment: read so long ago", place)
    return True


def _early(scene: Scene, place: int) -> bool:
    behind = scene.items[place + 1] if place + 1 < len(scene.items) else None
    if behind is not None and behind.words == "after" and not scene.has("<out>", "<danger>", "<safe>", "<ok>"):
        # "carve 30 minutes after it comes out".
        return True
    before = " ".join(item.words for item in scene.items[max(0, place - 2) : place])
    if before.endswith("isnt for"):
        # "done but dinner isn't for 2 hours".
        return True
    return behind is not None and behind.words.startswith(("early", "too early", "ahead of"))


def _to_come(scene: Scene, place: int) -> bool:
    """`in 20 minutes it's 158`."""
    near = scene.nearest(place, "<meal>", "<serve>", "<start>", reach=4)
    ahead = scene.before_is(place, "'in", "<within>") is not None and near is None
    return ahead and scene.has("<temperature_read>") and not scene.has("<out>", "<danger>", "<been_in>")


def _on_the_table_since(scene: Scene) -> None:
    """`en la mesa desde las 2`, `since 2 on the table`: what was put there stands there, and is not served then."""
    for place, item in scene.find("<on_table>"):
        hour = scene.before_is(place, "<number>", "<clock>")
        since = scene.before_is(place if hour is None else hour, "<started>")
        since = scene.after_is(place, "<started>") if since is None else since
        if since is not None and (hour is None or scene.items[since].words in _SINCE):
            item.tags["<out>"] = "out"
            scene.tags.add("<out>")


_SINCE = ("since", "desde")


def _shifts(scene: Scene, place: int) -> bool:
    """`an hour later`, `push it back by 30 minutes`."""
    if scene.has("<safe>", "<ok>", "<leftovers>", "<stock>", "<out>"):
        # "4 days later ok?".
        return False
    later = scene.after_is(place, "<later>") or scene.before_is(place, "<later>")
    return later is not None or scene.before_is(place, "<shift>", "'by") is not None


def _thaws_overnight(scene: Scene, place: int, duration: Duration) -> bool:
    """`defrost it overnight` tells when, not how long it has been."""
    if "<brined>" in scene.items[place] or scene.before_is(place, "<brine>", "<brined>") is not None:
        return False
    return duration.unit == "night" and scene.has("<thaw>") and not scene.has("<out>", "<danger>", "<cold_place>")


def _sign(scene: Scene, place: int) -> float:
    shift = next((item for _, item in scene.find("<shift>")), None)
    if shift is not None:
        return float(shift.tags["<shift>"])
    after = scene.after_is(place, "<later>") or scene.before_is(place, "<later>")
    return float(scene.items[after].tags["<later>"]) if after is not None else 1.0


def _until_dinner(scene: Scene, place: int, duration: Duration) -> bool:
    """`dinner in 5 hours`: so long from now."""
    before = scene.before_is(place, "'in", "<within>", "'en") is not None
    behind = (
        scene.after_is(place, "'till", "'until", "'til", "'from", "'before", "'away", "'hasta", "'to") is not None
    )
    if not (before or behind) or duration.unit not in ("h", "min"):
        return False
    near = scene.nearest(place, "<meal>", "<serve>", "<start>", reach=4)
    if near is None or "serve_at" in scene.values:
        return False
    at_hour = scene.after_is(near[1], "<at>")
    if scene.after_is(near[1] if at_hour is None else at_hour, "<clock>", "<number>", "<noon>") is not None:
        # "up by 8 in 20 minutes, dinner at noon": dinner has its hour.
        return False
    at = (scene.now.astimezone(UTC) + timedelta(hours=duration.hours)).astimezone(scene.now.tzinfo)
    path = "start_at" if near[2] == "<start>" else "serve_at"
    scene.put(path, at.isoformat(), "moment: in so long", place, near[1])
    return True


def _in_brine(scene: Scene, place: int) -> bool:
    if scene.before_is(place, "<thaw>", "<rest>", "<cook>") is not None:
        # "thaw 3 days, brine 1 day".
        return False
    wished = scene.before.get("brine.wanted") is True and scene.before_is(place, "<for>") is not None
    if (wished or scene.hints.get("talk_of") == "brine") and not scene.has("<out>", "<been_in>"):
        return True
    if "<brine>" in scene.items[place] or "<brined>" in scene.items[place]:
        return True
    brine = scene.nearest(place, "<brine>", "<brined>", reach=11)
    if brine is None:
        return scene.has("<brine>", "<brined>", "<salt>") and not scene.has(
            "<out>", "<been_in>", "<thaw>", "<danger>"
        )
    if brine[0] <= 2:
        return True
    other = scene.nearest(place, "<out>", "<been_in>", reach=6)
    return other is None or brine[0] <= other[0]


def _gone_by(scene: Scene) -> bool:
    if scene.has("<thaw>") and not scene.has("<out>", "<been_in>", "<danger>", "<state>"):
        # "is 2 days enough to thaw it" is yet to come.
        return False
    if scene.has("<covers>") and scene.has("<leftovers>") and not scene.has("<out>", "<safe>", "<ok>", "<keep>"):
        # "with leftovers for 2 days" is a wish.
        return False
    if scene.has(*_GONE_BY):
        return True
    return scene.hints.get("talk_of") in ("safety", "leftovers")


def _rounded(hours: float) -> float:
    return round(hours, 4)
