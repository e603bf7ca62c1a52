"""What a piece of a line asks: `ASKED`, in order of precedence."""

from __future__ import annotations

from collections.abc import Callable

from turnspit.asking.contract import Intent
from turnspit.asking.intents.fears import safety
from turnspit.asking.intents.piece import Piece

# From this age on a question about leftovers is how long they keep, and not how long they stood.
DAYS_OLD_H = 20


def _size(piece: Piece) -> bool:
    vessel = piece.has("<vessel>") or (piece.scene.has("<vessel>") and piece.scene.has("<brine>", "<brined>"))
    if piece.scene.has("<yield>") or vessel:
        return False
    if piece.only_counts and piece.said("covers"):
        return True
    if piece.has("<duration>", "<volume>") and piece.has("<enough>", "<feeds>") and not piece.said("covers"):
        # "is 4 hours enough for a 16 pound turkey", "is 5 litres of water enough".
        return False
    asks = piece.asks or piece.scene.has("'?")
    if piece.feeds and asks and piece.said("roast.mass_kg") and not piece.said("serve_at"):
        return True
    if piece.has("<how_big>") or piece.follows("<how_much>", "<roast>", "<generic>", "<mass>"):
        return True
    if piece.has("<how_much>") and piece.said("covers") and _counts_roasts(piece):
        return True
    if piece.has("'#") and piece.follows("'#", "'of") and piece.said("covers") and _counts_roasts(piece):
        # "need # of 24 lb turkeys for 310".
        return True
    if piece.has("<weigh>") and piece.said("covers") and not piece.said("roast.mass_kg"):
        return True
    if piece.said("covers") and piece.said("roast.mass_kg") and _enough(piece):
        return True
    enough = piece.has("<can>", "<enough>") or (piece.has("<feeds>") and piece.is_asked)
    if not (enough and piece.said("covers")) or (piece.said("serve_at") and not piece.is_asked):
        return False
    return piece.said("roast.mass_kg") or "roast.mass_kg" in piece.scene.before


def _counts_roasts(piece: Piece) -> bool:
    """`how many for 5 of us`, of ducks and not of potatoes."""
    dishes = piece.has("<brine>", "<brined>", "<salt>", "<ingredient>", "<convert>", "<keep>")
    return piece.scene.has("<roast>", "<generic>") and not dishes


def _enough(piece: Piece) -> bool:
    return any("enough" in item.words or item.words in ("basta", "alcanza") for item in piece.items)


def _carve(piece: Piece) -> bool:
    if piece.has("<yield>"):
        return not piece.has("<keep>")
    if piece.has("<when>") and piece.has("<carve>"):
        return not _carves_to_plan(piece)
    if _until_it_is_cut(piece):
        return True
    if piece.said("reading.place") and not piece.asks:
        # "thigh 168, breast 159, resting already".
        return False
    told = piece.said("reading.temperature_c") and not piece.has("<carve>", "<how_long>")
    if told and piece.scene.has("<done_word>"):
        # "lamb at 58 and resting, done?"
        return False
    if piece.has("<carve>") and piece.has("'how"):
        return True
    if piece.has("<rest>") and piece.has("<how_long>") and not piece.has("<thaw>", "<cook>"):
        return True
    return piece.has("<carve>", "<rest>") and not piece.has("<thaw>") and not piece.said("serve_at")


def _until_it_is_cut(piece: Piece) -> bool:
    """`how long til I can cut it`, `will it go cold if it stands ten minutes`, `20 minutes or an hour`: its rest."""
    waits = piece.has("<how_long>") and piece.has("'til", "'till", "'until", "'hasta")
    rests = piece.has("<can>", "'if") and piece.has("<stands>") and piece.has("<duration>") and piece.has("'cold")
    return (waits and piece.has("<carve>", "'cut", "'knife", "'cortar", "'cortarlo")) or rests or piece.chooses_a_rest


def _leftovers(piece: Piece) -> bool:
    if piece.has("<yield>") or (piece.has("<stock>") and piece.has("<carve>")):
        return False
    if piece.danger == "cooling" and piece.said("elapsed_h") and piece.ok_asked:
        # "turkey stock, cooling for 5 hours, still 80 F, ok?"
        return False
    if piece.has("<cooked>") and piece.has("<keep>") and piece.has("<how_long>"):
        # "how long is frozen cooked turkey good for".
        return not piece.has("<raw>")
    if piece.has("<stock>", "<reheat>"):
        # "3 bones, 7 lb, serving 19:30" is a rib roast.
        return not (piece.has("<thaw>") or piece.said("serve_at", "roast.bone_in") or piece.has("<how_big>"))
    hours = piece.hours
    eaten = piece.has("<cooked>", "<safe>", "<ok>") and not piece.has(
        "<out>", "<raw>", "<thaw>", "<temperature_read>"
    )
    if hours >= DAYS_OLD_H and eaten and not piece.said("roast.state"):
        return True
    if piece.has("<how_long>") and piece.scene.has("<cooked>") and piece.scene.has("<cold_place>"):
        # "cooked turkey. fridge. how many days".
        stands = piece.scene.has("<out>", "<stands>", "<unsure_place>", "<danger>", "<weather>")
        return not (stands or piece.has("<cook>", "<thaw>", "<raw>"))
    if piece.has("<out>") or (0 < hours < DAYS_OLD_H and piece.has("<safe>") and not piece.has("<keep>")):
        return False
    left = piece.has("<can>", "<leftovers>", "<rest>", "<to_go>")
    if piece.has("<freeze>") and left and not piece.has("<danger>", "<raw>", "<thaw>", "<state>"):
        return True
    if piece.talk_of == "leftovers" and piece.has("<freezer>", "<keep>"):
        return True
    if piece.danger == "cooling" and piece.has("<leftovers>") and piece.has("'how"):
        return True
    if piece.has("<danger>") and not piece.has("<how_long>"):
        return False
    if "leftovers_wanted" in piece.scene.values and not piece.has("<keep>"):
        return False
    return piece.has("<leftovers>") or (
        piece.has("<keep>")
        and piece.has("<how_long>", "<when>")
        and not _is_to_be_roasted(piece)
        and not (piece.scene.has("<freezer>", "<thaw>") and not piece.scene.has("<cooked>"))
        and not (piece.has("<brine>", "<thaw>", "<raw>") or (piece.said("roast.state") and not piece.said("covers")))
    )


def _is_to_be_roasted(piece: Piece) -> bool:
    """`cuánto dura un pavo de 5 kg a 160`, beside `cuánto dura el pavo cocido`."""
    lasts = all("<how_long>" in item for item in piece.items if "<keep>" in item)
    told = piece.said("oven.temperature_c", "roast.mass_kg") or piece.has("<cook>")
    return lasts and told and not piece.scene.has("<cooked>", "<cold_place>", "<leftovers>", "<safe>")


def _thaw(piece: Piece) -> bool:
    if (
        piece.has("<can>")
        and piece.has("<state>")
        and not (piece.has("<cook>", "<brine>", "<brined>", "<stuffed>") or piece.said("serve_at"))
    ):
        return True
    if piece.talk_of == "leftovers" and not piece.has("<thaw>"):
        return False
    if piece.has("<freezer>") and (piece.has("<when>", "<how_long>", "<done>") or piece.ok_asked):
        return True
    if _ready_to_roast(piece):
        return True
    if piece.has("<how_long>") and piece.has("<keep>", "<cold_place>") and piece.said("roast.state"):
        return True
    if _days_of_the_frozen(piece):
        return True
    # "brine it 16 hours in cold water" thaws nothing.
    thaws = [item.words for item in piece.items if "<thaw>" in item]
    in_brine = piece.has("<brine>", "<brined>") and all(words.startswith("cold water") for words in thaws)
    return bool(thaws) and not (piece.has("<no_thaw>") or in_brine)


def _ready_to_roast(piece: Piece) -> bool:
    """`frozen goose in the fridge since sunday, is it ready`, `how many hours til thawed`: not of the oven."""
    until = ("'til", "'till", "'until", "'be", "'hasta")
    if any(piece.scene.before_is(place, *until) is not None for place in piece.places("<state>")):
        return piece.has("<how_long>", "<when>", "<done>")
    if piece.has("<time_unit>") and piece.has("<cold_place>") and piece.of_frozen and not piece.said("elapsed_h"):
        # "days in fridge frozen".
        return True
    roasts = piece.said("reading.temperature_c", "oven.temperature_c", "start_at") or _longer_than_usual(piece)
    ready = piece.has("<done>") or (piece.has("<when>") and piece.has("<serve>") and not piece.serves)
    if roasts or not ready:
        return False
    frozen = piece.of_frozen or (piece.scene.before.get("roast.state") in _FROZEN and not piece.said("roast.state"))
    return frozen or (piece.has("<state>") and not piece.said("serve_at"))


_FROZEN = ("frozen", "part_frozen")


def _days_of_the_frozen(piece: Piece) -> bool:
    """`20 lb frozen, days?`, `en el refri, 11 kilos congelado, cuántos días`."""
    if not piece.has("<how_long>") or not piece.of_frozen or piece.has("<cook>", "<oven_temp>"):
        return False
    days = any("<how_long>" in item and ("day" in item.words or "dia" in item.words) for item in piece.items)
    return days or piece.scene.has("<cold_place>")


def _brine(piece: Piece) -> bool:
    first = next((item for item in piece.items if "<soft>" not in item and "<break>" not in item), None)
    if first is not None and first.get("<brined>") is True and first.words.startswith("brine ") and piece.parted:
        # "brine a 15 lb turkey and when do I put it in".
        return True
    if not piece.asks and not piece.has("'or", "'o") and piece.said("serve_at", "start_at"):
        return False
    if piece.has("<brine>"):
        return True
    if piece.has("<how_long>") and piece.has("'in") and piece.has("'it") and piece.scene.has("<brine>"):
        # "can I reuse the brine, and how long should a 12 lb turkey be in it".
        return True
    if (
        piece.talk_of == "brine"
        and piece.has("<how_long>")
        and not piece.has("<cook>", "<roast>", "<keep>", "<thaw>")
    ):
        # "how long in it".
        return True
    if piece.scene.has("<how_long>") and piece.follows("<brined>", "<roast>", "<generic>"):
        # "does a brined turkey cook faster".
        return False
    return (piece.has("<brined>") and piece.asks) or (piece.has("<how_much>") and piece.has("<salt>"))


def _when_done(piece: Piece) -> bool:
    """`put it in at 1, when will it be done`: nothing is probed yet, the time is still to come."""
    ready = piece.has("<done_word>") or (piece.has("<serve>") and not piece.serves)
    if not (piece.has("<done>") or (piece.has("<when>") and ready)):
        return False
    start = piece.scene.values.get("start_at", "")
    if not start and piece.said("roast.mass_kg") and piece.said("oven.temperature_c"):
        # "chicken 1.6 kg at 190, done when": an order, where nothing is in the oven.
        under_way = ("<temperature_read>", "<been_in>", "<started>", "<oven_left>", "<probe>", "<place>")
        return (
            not (piece.scene.has(*under_way) or piece.said("serve_at", "elapsed_h")) and piece.talk_of != "doneness"
        )
    return start > piece.scene.now.isoformat() and not piece.scene.has("<temperature_read>", "<been_in>")


def _longer_than_usual(piece: Piece) -> bool:
    """`without thawing, how much longer?`: longer than others take, where nothing roasts yet."""
    longer = any("<done>" in item and item.words.endswith("longer") for item in piece.items)
    roasts = piece.scene.has("<temperature_read>", "<been_in>", "<started>") or piece.talk_of == "doneness"
    return longer and not roasts and (piece.of_frozen or piece.scene.has("<no_thaw>", "<stuffed>"))


def _guests_are_late(piece: Piece) -> bool:
    """`guests running late so dinner at 7:15 now`: not the roast."""
    late = [item for item in piece.items if "<done>" in item]
    return (
        bool(late) and all("late" in item.words for item in late) and piece.has("<people>") and piece.said("serve_at")
    )


def _doneness(piece: Piece) -> bool:
    if _when_done(piece) or _longer_than_usual(piece) or _guests_are_late(piece):
        return False
    if piece.has("<probe_where>", "<done>") or (piece.has("<when>") and piece.has("<serve>") and not piece.serves):
        return True
    if piece.has("<subject>") and not piece.has("<roast>", "<generic>", "<place>"):
        return False
    return piece.has("<temperature_read>") or (
        piece.has("<probe>") and (piece.asks or piece.has("<when>")) and not piece.said("serve_at")
    )


def _done_word(piece: Piece) -> bool:
    if piece.follows("<cooked>", "<roast>", "<generic>", "<subject>"):
        return False
    if piece.has("<place>") and piece.asks and not (piece.has("<subject>") or piece.said("covers")):
        return True
    if piece.hours >= DAYS_OLD_H:
        return False
    return piece.has("<done_word>") and not piece.said("serve_at")


def _carves_to_plan(piece: Piece) -> bool:
    """`chicken 1.9kg for 6:15, when do I carve`: a step of the dinner."""
    return piece.has("<when>") and piece.has("<carve>") and piece.said("serve_at") and piece.said("roast.mass_kg")


_HOURS = ("timing", "timings", "whats the timing", "times pls", "times please", "tell timing", "time pls")


def _asks_the_hours(piece: Piece) -> bool:
    """`64 covers at 12.30, 5 crowns, times pls`, `six 10 lb breasts, when do I pull em to carve at noon`."""
    if not piece.said("serve_at") or piece.scene.has("<temperature_read>", "<been_in>", "<started>"):
        return False
    pulled = (
        piece.said("roast.mass_kg")
        and piece.has("<done>")
        and any("<done>" in item and item.words.startswith(_WHEN) for item in piece.items)
    )
    return pulled or piece.only_asks("<when>") or any(item.words in _HOURS for item in piece.items)


_WHEN = ("when", "what time", "cuando", "a que hora")


def _plan(piece: Piece) -> bool:
    if _when_done(piece):
        return False
    if piece.has("<plan>", "<in_time>") or _carves_to_plan(piece) or _asks_the_hours(piece):
        return True
    return piece.has("<when>") and (piece.has("<start>", "<meal>") or piece.serves)


def _roast_time(piece: Piece) -> bool:
    if _when_done(piece) or _longer_than_usual(piece):
        return True
    if piece.has("<can>") and piece.has("<duration>") and piece.said("roast.mass_kg") and not piece.said("serve_at"):
        return True
    if piece.has("<can>") and piece.has("<cook>") and piece.said("roast.state"):
        return True
    if piece.has("<can>") and piece.has("<cook>") and piece.has("<together>") and not piece.said("serve_at"):
        return True
    if piece.has("<can>") and piece.has("<cook>") and piece.has("'or", "'o") and not piece.said("serve_at"):
        # "should I roast at 325 or 350".
        return True
    if piece.has("'what", "'whats", "'que") and piece.has("<oven>") and not piece.said("oven.temperature_c"):
        return True
    if piece.has("<what_temp>") and piece.talk_of == "roast_time":
        return True
    return piece.has("<how_long>", "<oven_temp>") or (piece.has("<what_temp>") and piece.has("<cook>", "<oven>"))


def _recipe(piece: Piece) -> bool:
    """`have you got a gravy recipe`: one of ours, for so many where that is said."""
    return (
        piece.has("<recipe>")
        and piece.has("<subject>", "<ingredient>")
        and not (piece.has("<brine>") or piece.said("serve_at"))
    )


ASKED: tuple[tuple[Intent, Callable[[Piece], bool]], ...] = (
    ("scale", _recipe),
    ("size", _size),
    ("leftovers", _leftovers),
    ("safety", safety),
    ("carve", _carve),
    ("thaw", _thaw),
    ("brine", _brine),
    ("plan", _plan),
    ("doneness", _doneness),
    ("roast_time", _roast_time),
    ("doneness", _done_word),
)
