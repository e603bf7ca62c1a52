"""What a cook wants who asks nothing and tells something: `TOLD`, in order of precedence."""

from __future__ import annotations

from collections.abc import Callable

from turnspit.asking.contract import Intent
from turnspit.asking.intents.asked import DAYS_OLD_H
from turnspit.asking.intents.fears import eaten_by_animals
from turnspit.asking.intents.piece import Piece

_NOT_IN_THE_OVEN = ("<out>", "<raw>", "<keep>", "<cold_place>", "<brine>", "<thaw>")


def _plan(piece: Piece) -> bool:
    return piece.said("serve_at", "start_at")


def _reading(piece: Piece) -> bool:
    return piece.said("reading.temperature_c")


def _old(piece: Piece) -> bool:
    """Cooked food that is days old, or lies in the freezer, is kept as leftovers are."""
    if piece.has("<cooked>") and piece.has("<freezer>", "<keep>") and not piece.said("serve_at", "start_at"):
        return True
    if piece.has("'sandwich", "'sandwiches") and piece.has("'from") and piece.scene.has("<when_day>"):
        # "sandwiches with turkey from thursday".
        return not piece.said("serve_at", "covers")
    kept = piece.has("<cooked>") or "kept" in piece.scene.hints
    return piece.hours >= DAYS_OLD_H and kept and not piece.has("<out>")


def _danger(piece: Piece) -> bool:
    if piece.danger == "pink" and (piece.said("serve_at") or piece.has("'like", "'want", "'wants")):
        return False
    if eaten_by_animals(piece):
        return False
    if piece.has("<danger>", "<out>", "<safe>") or piece.ok_asked:
        # "14 lb, out on the table at noon": when it is served.
        served = piece.said("serve_at") and piece.said("roast.mass_kg") and not piece.said("elapsed_h")
        return not served or piece.has("<danger>", "<safe>") or piece.ok_asked
    if not piece.has("<subject>"):
        return False
    if piece.said("elapsed_h") and not piece.said("serve_at", "reading.temperature_c"):
        # Something stood, or was kept, for so long.
        return not ((piece.of_frozen and not piece.said("covers")) or piece.has("<brine>", "<brined>"))
    return piece.said("elapsed_h", "reading.temperature_c") and not piece.has("<roast>", "<place>")


def _brine(piece: Piece) -> bool:
    return any(path.startswith("brine.") for path in piece.scene.values)


def _state(piece: Piece) -> bool:
    # "frozen 16 lb turkey, dinner in 4 days" is a dinner without its hour.
    return piece.of_frozen and not (piece.said("covers") or (piece.has("<meal>") and piece.has("<when_day>")))


def _covers(piece: Piece) -> bool:
    if piece.has("<off_topic>"):
        return False
    # "capon, 3.2 kg, 12 people?" asks whether it is enough.
    return piece.said("covers") and (not piece.said("roast.mass_kg") or piece.has("'?"))


def _oven(piece: Piece) -> bool:
    held = piece.scene.before.keys() & {"roast.mass_kg", "roast.kind"}
    return piece.said("oven.temperature_c") and (bool(held) or piece.said("roast.mass_kg", "roast.kind"))


def _wished_end(piece: Piece) -> bool:
    """`lamb legs 2.6 kg x 9, boned and rolled, 58 core`: an order without its hour."""
    return piece.said("roast.target_c") and piece.said("roast.mass_kg") and not piece.said("covers")


def _under_way(piece: Piece) -> bool:
    return piece.has("<been_in>", "<started>") and piece.said("elapsed_h") and not piece.has(*_NOT_IN_THE_OVEN)


def _roast(piece: Piece) -> bool:
    if piece.has("<off_topic>"):
        return False
    return (
        any(path.startswith(("roast.", "oven.")) for path in piece.scene.values)
        or piece.said("roast.mass_kg", "roast.kind")
        or (piece.has("<generic>") and not piece.unknown_words)
    )


TOLD: tuple[tuple[Intent, Callable[[Piece], bool]], ...] = (
    ("leftovers", _old),
    ("doneness", _under_way),
    ("safety", _danger),
    ("doneness", _reading),
    ("plan", _plan),
    ("brine", _brine),
    ("thaw", _state),
    ("size", _covers),
    ("roast_time", _oven),
    ("roast_time", _wished_end),
    ("plan", _roast),
)
