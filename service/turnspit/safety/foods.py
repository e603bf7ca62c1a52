"""What a one-word subject is to the rules: bird, intact red meat, ground meat, stuffing ..."""

from __future__ import annotations

from typing import Literal

Family = Literal["poultry", "beef_lamb", "pork", "ham", "ground", "stuffing", "sauce", "leftovers"]

_WORDS: dict[Family, str] = {
    "poultry": "turkey turkey_breast chicken capon duck goose game_hen bird hen fowl pheasant quail giblets wings",
    "beef_lamb": "beef beef_rib beef_tenderloin beef_round roast_beef steak lamb lamb_leg lamb_shoulder mutton veal "
    "veal_loin",
    "pork": "pork pork_loin pork_shoulder pork_belly fresh_ham",
    "ham": "ham smoked_ham cooked_ham",
    "ground": "ground ground_beef ground_pork ground_meat mince sausage meatloaf",
    "stuffing": "stuffing dressing",
    "sauce": "gravy stock broth soup sauce drippings",
    "leftovers": "leftovers leftover casserole",
}
_FAMILY: dict[str, Family] = {word: family for family, words in _WORDS.items() for word in words.split()}


def family(subject: str) -> Family | None:
    """The family of a subject, or None for one the rules do not know: it is then held to the strictest."""
    return _FAMILY.get(subject.strip().lower().replace(" ", "_").replace("-", "_"))


def red_meat(subject: str) -> bool:
    """Whether it is a cut of beef, lamb, veal or pork; an unknown subject is not."""
    return family(subject) in ("beef_lamb", "pork")
