"""Whether a piece asks about safety. `_CLUES` is the precedence: the first clue that speaks decides."""

from __future__ import annotations

from collections.abc import Callable

from turnspit.asking.intents.piece import Piece

# Whoever asks whether an oven as low as this will do asks of safety.
_LOW_OVEN_C = 136
_ROASTED_SLOWLY = ("pork_shoulder",)


def safety(piece: Piece) -> bool:
    """Whether the piece asks if something is safe, how long it may stand, or to what temperature."""
    return next((found for clue in _CLUES if (found := clue(piece)) is not None), False)


def _a_reading_is_judged(piece: Piece) -> bool | None:
    """`is 160 enough`, `can I serve it at 160`."""
    judged = piece.has("<can>") and (piece.has("<enough>", "<safe>", "<serve>") or piece.feeds)
    pulls = any(item.words.startswith(("take it out", "take", "pull")) for item in piece.items)
    return True if judged and piece.has("<temperature_read>") and not pulls else None


def _served_so(piece: Piece) -> bool | None:
    """`carved turkey, 4 hours in the cambro, reads 150, serve?`"""
    last = piece.items[-1] if piece.items else None
    serves = last is not None and last.get("<serve>") == "serve" and piece.is_asked
    held = piece.has("<carve>", "<cooked>", "<hold>", "<vessel>")
    return True if serves and held and piece.has("<temperature_read>") else None


def _a_place_or_a_night_is_judged(piece: Piece) -> bool | None:
    """`can I brine in the garage`, `can I roast it at 225 overnight`, `can I cook it the day before`; a night in the
    brine is a brine."""
    brine = piece.has("<brine>", "<brined>")
    kept = piece.has("<overnight>", "<cold_place>", "<ahead>")
    if not (piece.has("<can>") and kept and (brine or piece.has("<cook>"))):
        return None
    return not (brine and piece.has("<overnight>", "<ahead>"))


def _an_unsure_place_to_thaw(piece: Piece) -> bool | None:
    """`in the garage?`, in a talk about thawing."""
    return True if piece.talk_of == "thaw" and piece.has("<unsure_place>") and not piece.has("<how_long>") else None


def _how_long_it_may_stand(piece: Piece) -> bool | None:
    """`how long may gravy stand`."""
    stands = piece.has("<stands>") and piece.has("<how_long>", "<can>") and piece.has("<subject>")
    return True if stands and not piece.has("<brine>", "<rest>") else None


def _which_rest(piece: Piece) -> bool | None:
    """`do I leave the turkey to sit 20 minutes or an hour` asks which; nothing has stood yet."""
    fears = piece.has("<out>", "<danger>", "<temperature_read>", "<safe>", "<ok>")
    return False if piece.chooses_a_rest and not fears else None


def _how_long_raw_meat_keeps(piece: Piece) -> bool | None:
    asks = piece.has("<how_long>", "<can>") or piece.is_asked
    keeps = asks and piece.has("<keep>", "<cold_place>")
    raw = piece.has("<raw>") or (piece.has("<fresh>") and piece.has("<keep>") and not piece.has("<cooked>"))
    return True if keeps and raw else None


def _the_brine_itself(piece: Piece) -> bool | None:
    """`the brine got up to 50 F` is feared for, `how do I chill the brine` is a brine."""
    if not piece.has("<brine>"):
        return None
    if piece.said("reading.temperature_c"):
        return True
    if piece.said("elapsed_h") or piece.danger not in ("", "cooling"):
        return None
    return (piece.has("<safe>") or piece.ok_asked) and not piece.said("brine.hours")


def _a_pink_wish(piece: Piece) -> bool | None:
    """`leg of lamb for six at seven, pink`, `it's at 52, we like it pink`."""
    wished = piece.said("serve_at") or piece.has("'like", "'want", "'wants", "'quiero", "'gusta")
    return False if piece.danger == "pink" and wished and not piece.asks else None


def _a_low_oven_is_judged(piece: Piece) -> bool | None:
    """`can I slow roast a turkey at 225`."""
    low = piece.oven_c is not None and piece.oven_c < _LOW_OVEN_C
    return (
        True
        if low and piece.has("<can>", "<overnight>") and not piece.has("<how_long>", "<done>", "<when>")
        else None
    )


def _an_end_is_judged(piece: Piece) -> bool | None:
    """`do I have to cook stuffing to 165`, `can I take the chicken to 155`."""
    judged = piece.said("roast.target_c") and piece.has("<cook>", "<target>")
    asks = any("<can>" in item and item.words.startswith(_ASKS_LEAVE) for item in piece.items)
    return True if asks and judged and not piece.said("serve_at", "start_at", "roast.mass_kg") else None


_ASKS_LEAVE = ("can", "could", "should", "do ", "may", "puedo", "debo", "tengo", "hay")


def _a_danger(piece: Piece) -> bool | None:
    out_for = any(item.words == "out for" for item in piece.items) and not piece.said("elapsed_h")
    if not piece.has("<danger>") and (out_for or not piece.has("<out>")):
        # "in at 10, out for 13 o'clock".
        return None
    if piece.danger == "oven" and piece.scene.values.get("roast.kind") in _ROASTED_SLOWLY:
        return None
    if piece.said("serve_at") and not (piece.has("<danger>", "<safe>", "<can>") or piece.said("elapsed_h")):
        # "out of the fridge now, what time in if we eat at 2".
        return None
    return not (piece.has("<thaw>") and piece.has("<how_long>"))


def _only_names_who_comes(piece: Piece) -> bool | None:
    """`buffet for 60, how many kilos`, `three teens and a baby, what size`: who is fed, and no fear."""
    named = any("<danger>" in item and item.words in _BABIES for item in piece.items)
    fed = any("<danger>" in item and "<covers>" in item for item in piece.items)
    fears = piece.has("<safe>", "<ok>", "<out>", "<temperature_read>", "<hold>") or piece.said("elapsed_h")
    sizes = piece.said("covers") and piece.scene.has("<how_big>")
    return False if (fed or (named and sizes)) and not fears else None


_BABIES = ("baby", "toddler", "infant", "infants")


def _an_animal_ate_it(piece: Piece) -> bool | None:
    """`the dogs ate it`: nobody at the table did."""
    return False if eaten_by_animals(piece) and not piece.has("<safe>", "<ok>", "<can>") else None


def eaten_by_animals(piece: Piece) -> bool:
    """Whether dogs or cats are what has eaten."""
    ate = any("<danger>" in item and item.words in ("ate it", "ate some", "already ate") for item in piece.items)
    return ate and piece.has("'dog", "'dogs", "'cat", "'cats", "'puppy")


def _hours_in_the_brine(piece: Piece) -> bool | None:
    """`is 36 hours too long to brine`."""
    return False if piece.has("<brine>", "<brined>") and piece.said("brine.hours") else None


def _too_long_a_rest(piece: Piece) -> bool | None:
    return False if piece.has("<rest>") and not piece.has("<temperature_read>") else None


def _safely_thawed(piece: Piece) -> bool | None:
    """`how do I safely thaw a turkey` asks how to thaw."""
    return False if piece.has("<thaw>") and piece.has("'how") else None


def _a_vessel_holds(piece: Piece) -> bool | None:
    """`will my pot hold a 12 lb turkey and brine`."""
    held = piece.danger == "warm_holding" and piece.has("<vessel>")
    return False if held and (piece.has("<brine>", "<brined>") or piece.said("brine.vessel_l")) else None


def _out_of_the_freezer(piece: Piece) -> bool | None:
    """`out of the freezer this morning, is it ok for tomorrow at 3`: whether it thaws in time."""
    fears = piece.has("<danger>", "<out>", "<safe>")
    return False if piece.has("<freezer>") and piece.said("serve_at") and not fears else None


def _eaten_at_an_hour(piece: Piece) -> bool | None:
    """`can we eat at 4` asks of the hour."""
    asked = any("<safe>" in item and item.words.endswith("eat") for item in piece.items)
    return False if asked and piece.said("serve_at") and not piece.said("elapsed_h") else None


def _safe_or_ok(piece: Piece) -> bool | None:
    return not piece.has("<done>") if piece.has("<safe>") or piece.ok_asked else None


def _something_kept_cold(piece: Piece) -> bool | None:
    """`turkey in the fridge at 45 F`."""
    return True if piece.has("<cold_place>") and piece.has("<temperature_read>") else None


def _to_what_temperature(piece: Piece) -> bool | None:
    if piece.has("<core_temp>") and piece.has("<what_temp>", "'what"):
        return not piece.has("<temperature_read>") or piece.has("'what", "'whats", "'que")
    if piece.talk_of == "roast_time":
        return False
    return piece.has("<what_temp>") and not piece.has("<oven>", "<brine>", "<cook>", "<oven_temp>")


def _held_for_hours(piece: Piece) -> bool | None:
    """`can I hold carved turkey 3 hours`."""
    cold = piece.has("<brine>", "<brined>", "<cold_place>", "<thaw>", "<state>", "<raw>", "<vessel>")
    return True if piece.has("<can>") and piece.has("<hold>") and piece.said("elapsed_h") and not cold else None


_CLUES: tuple[Callable[[Piece], bool | None], ...] = (
    _an_unsure_place_to_thaw,
    _a_reading_is_judged,
    _served_so,
    _a_place_or_a_night_is_judged,
    _which_rest,
    _how_long_it_may_stand,
    _how_long_raw_meat_keeps,
    _the_brine_itself,
    _a_pink_wish,
    _a_low_oven_is_judged,
    _an_end_is_judged,
    _a_vessel_holds,
    _held_for_hours,
    _only_names_who_comes,
    _an_animal_ate_it,
    _a_danger,
    _hours_in_the_brine,
    _too_long_a_rest,
    _safely_thawed,
    _out_of_the_freezer,
    _eaten_at_an_hour,
    _safe_or_ok,
    _something_kept_cold,
    _to_what_temperature,
)
