"""How to roast: `should I baste it`, `foil or no foil?`, `the skin is getting too dark`."""

from __future__ import annotations

from turnspit.asking.intents.piece import Piece

# These are told as a worry and want advice unasked.
_WORRIES = frozenset(("smoke", "too_dark", "gravy_thin", "gravy_salty", "gravy_lumpy", "gravy_burnt"))
_ASKING = ("'or", "'o", "'need", "'why", "'worth", "'better", "'tips", "'como", "'que", "<help>")
_OPENS = ("what", "which", "how", "where", "should", "que", "cual", "como", "donde")
_MEASURED = ("<when>", "<how_long>", "<temperature_read>", "<done>", "<probe_where>", "<rest>", "<core_temp>")


def technique(piece: Piece) -> str:
    """The key of `[technique]` that the piece asks about and nothing else, "" for none."""
    named = next((item for item in piece.items if "<technique>" in item), None)
    if named is None or piece.has(*_MEASURED) or piece.of_frozen:
        return ""
    name = str(named.tags["<technique>"])
    asks = piece.asks or piece.is_asked or piece.has(*_ASKING) or named.words.split()[0] in _OPENS
    return name if asks or name in _WORRIES else ""
