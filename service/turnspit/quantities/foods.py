"""Foods by the names a cook uses, and what their measures weigh.

Masses come from the tables `household_masses` (USDA SR28), `household_masses_remembered` and `salts`; names from
`foods`; how far one cook's measure lies from another's from `measuring_scatter`.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from types import MappingProxyType

from turnspit.errors import Impossible, Unknown
from turnspit.quantities.given import check_text
from turnspit.quantities.units import litres
from turnspit.reference import Row, table

_WORDS = re.compile(r"[^\W\d_]+(?:['’-][^\W\d_]+)*")
_FORMS_SAID = {
    "minced": "chopped",
    "diced": "chopped",
    "cubes": "cubed",
    "crumbs": "crumbs",
    "breadcrumbs": "crumbs",
    "slices": "sliced",
    "halved": "halves",
    "flaked": "sliced",
}


@dataclass(frozen=True, slots=True)
class Density:
    """Kilograms in a litre of a food as cooks measure it: the usual value and the range.

    `weigh` says that a volume of this food is too uncertain to rely on; `kinds` are the kinds among which the cook
    has to say which (salt), each with the lowest and highest kg/L.
    """

    item: str
    kg_per_l: float
    low: float
    high: float
    weigh: bool
    source: str
    form: str = ""
    kinds: tuple[tuple[str, float, float], ...] = ()


@dataclass(frozen=True, slots=True)
class PieceMass:
    """Kilograms of one piece of a food (an egg, a clove, a stick): the usual size and the range of sizes."""

    item: str
    kg: float
    low: float
    high: float
    source: str


def density(item: str) -> Density:
    """Kilograms per litre of the food named in `item` ("kosher salt", "carrots, grated").

    Raises Unknown, with the nearest known foods, for a food of which no measure is published; Impossible for one that
    is only known by the piece.
    """
    check_text("item", item, "name a food, as flour")
    found = density_or_none(item)
    if found is None and food_named(item):
        raise Impossible("item", item, "has no published mass by volume", "give it by weight or by the piece")
    if found is None:
        raise unknown_food(item)
    return found


@lru_cache(maxsize=4096)
def density_or_none(item: str) -> Density | None:
    """As `density`, but None for a food without a published measure."""
    key = food_named(item)
    if key is None:
        return None
    if key in _salts():
        return _salt_density(_salts()[key])
    rows = [row for row in _masses()[key] if row["unit"] in _VOLUMES]
    if not rows:
        return None
    food = _foods()[key]
    form = _form_said(item, rows) or food.get("form", "")
    suited = [row for row in rows if row.get("form", "") == form] or rows
    best = max(suited, key=lambda row: litres(row["amount"], row["unit"]))
    usual = _kg_per_l(best)
    # Where a form is measured in several ways, only measures of a cup or so are precise enough to widen the range.
    coarse = [_kg_per_l(row) for row in suited if litres(row["amount"], row["unit"]) > 0.05] or [usual]
    scatter = _scatter()[food["kind"]]
    return Density(
        item=food["names"][0],
        kg_per_l=usual,
        low=min(coarse) * (1 - scatter["fraction"]),
        high=max(coarse) * (1 + scatter["fraction"]),
        weigh=scatter["weigh"],
        source=f"{best['source']}, NDB {best['ndb']}",
        form=best.get("form", ""),
    )


@lru_cache(maxsize=4096)
def piece_mass(item: str, unit_name: str, size: str = "") -> PieceMass | None:
    """The mass of one `unit_name` (piece, clove, stick, bunch, ...) of a food, or None where no table has one.

    An unsaid size is large for an egg and medium for the rest, with the range over the sizes of the table.
    """
    key = food_named(item)
    if key is None or key in _salts():
        return None
    rows = _rows_of_pieces(key, unit_name)
    if not rows:
        return _customary_piece(key, unit_name)
    wanted = size or ("large" if key.startswith("egg") else "medium")
    best = next((row for row in rows if row.get("size", "") == wanted), rows[0])
    each = [row["grams"] / row["amount"] / 1000 for row in rows]
    usual = best["grams"] / best["amount"] / 1000
    known_size = bool(size) and best.get("size") == size
    low, high = (usual, usual) if known_size or key.startswith("egg") else (min(each), max(each))
    if low == high:
        low, high = usual * 0.9, usual * 1.1
    if best["unit"] in ("stick", "packet", "envelope", "pat", "cake"):
        low = high = usual  # sold to weight
    return PieceMass(_foods()[key]["names"][0], usual, low, high, f"{best['source']}, NDB {best['ndb']}")


def _rows_of_pieces(key: str, unit_name: str) -> list[Row]:
    """The published measures of a piece; celery is counted by the stalk there, a juice by its fruit."""
    also = {"rib": ("stalk",), "stick": ("stalk",), "piece": WHOLE_FRUITS}.get(unit_name, ())
    named = [row for row in _masses()[key] if row["unit"] == unit_name]
    return named or [row for row in _masses()[key] if row["unit"] in also]


def _customary_piece(key: str, unit_name: str) -> PieceMass | None:
    """What a bunch or a head usually weighs where no published measure gives it."""
    row = _customary().get((key, unit_name))
    if row is None:
        return None
    usual, low, high = (row[f"grams{end}"] / 1000 for end in ("", "_low", "_high"))
    return PieceMass(_foods()[key]["names"][0], usual, low, high, row["source"])


@lru_cache(maxsize=4096)
def food_named(item: str) -> str | None:
    """The key of the food that `item` names ("chopped onion", "parsley leaves"), or None without a known one."""
    head = re.split(r"[,(;]", item, maxsplit=1)[0]
    return _longest_name(_words(head)) or (_longest_name(_words(item)) if head != item else None)


def _longest_name(words: tuple[str, ...]) -> str | None:
    """The longest name that ends the item; what follows a name may only describe it."""
    best: tuple[int, str] | None = None
    for end in range(len(words), 0, -1):
        if end < len(words) and words[end] not in _describing():
            break
        found = _name_that_ends(words, end)
        if found is not None and (best is None or found[0] > best[0]):
            best = found
    return best[1] if best else _spanish_name(words)


def _name_that_ends(words: tuple[str, ...], end: int) -> tuple[int, str] | None:
    """The longest name that ends there, with its length; none behind a word that makes it another food."""
    for start in range(max(0, end - LONGEST_NAME), end):
        key = _key_of(words[start:end])
        if key is not None:
            return None if start and words[start - 1] in _not_after(key) else (end - start, key)
    return None


def _key_of(words: tuple[str, ...]) -> str | None:
    return _by_words().get(words) or _by_words().get((*words[:-1], _singular(words[-1])))


def _spanish_name(words: tuple[str, ...]) -> str | None:
    """ "harina de trigo": in Spanish the food stands first."""
    end = next((at for at, word in enumerate(words) if word in ("de", "of", "with", "in", "for", "at", "from")), 0)
    return _longest_name(words[:end]) if end else None


def is_liquid(item: str) -> bool:
    """Whether the food is poured: the metric cook measures it in millilitres."""
    key = food_named(item)
    return key is not None and key in _foods() and _foods()[key]["kind"] in ("liquid", "oil")


def is_food_name(text: str) -> bool:
    """Whether the whole text is a name of a food that the table `foods` holds ("chicken stock")."""
    return _words(text) in _by_words()


def food_names() -> tuple[str, ...]:
    """Every food and salt with published measures, by the name we write."""
    return tuple(row["names"][0] for row in (*_salts().values(), *_foods().values()))


def nearest_foods(item: str, count: int = 3) -> tuple[str, ...]:
    """The known names that `item` may be a slip of, the most like first; none where it is like none."""
    from rapidfuzz import fuzz, process  # only a mistake needs it

    names = [name for row in (*_salts().values(), *_foods().values()) for name in row["names"]]
    alike = process.extract(item.casefold(), names, scorer=fuzz.ratio, score_cutoff=ALIKE, limit=count)
    return tuple(name for name, _, _ in alike)


def unknown_food(item: str) -> Unknown:
    """The error for a food without a published measure, with what it may be a slip of, else what to do."""
    return Unknown("item", item, nearest_foods(item), "weigh it: no measure of it is published here")


ALIKE = 75.0
"""From this likeness on (percent of the letters) a name may be what was meant: suger, potatoe, brocoli."""
WHOLE_FRUITS = ("lemon",)
"""Fruits whose juice the table counts by the fruit."""
LONGEST_NAME = 4
_VOLUMES = frozenset(("cup", "tbsp", "tsp", "floz", "quart"))


def _salt_density(row: Row) -> Density:
    usual, low, high = _salt_kg_per_l(row)
    kinds = tuple(
        (other["kind"], *_salt_kg_per_l(other)[1:])
        for other in _salts().values()
        if row["kind"] == "kosher" and other["kind"] in ("flake_kosher", "coarse_kosher")
    )
    return Density(row["names"][0], usual, low, high, True, row["source"], "", kinds)


def _salt_kg_per_l(row: Row) -> tuple[float, float, float]:
    cup_g_per_l = 1000 * litres(1, "cup", "US")
    usual, low, high = (row[f"g_per_us_cup{end}"] / cup_g_per_l for end in ("", "_low", "_high"))
    return usual, low, high


def _kg_per_l(row: Row) -> float:
    return float(row["grams"]) / 1000 / litres(row["amount"], row["unit"], "US")


def _form_said(item: str, rows: list[Row]) -> str:
    forms = {row.get("form", "") for row in rows} - {""}
    for word in _words(item):
        for said in (word, _FORMS_SAID.get(word, "")):
            if said in forms:
                return said
    return ""


@lru_cache(maxsize=4096)
def _words(text: str) -> tuple[str, ...]:
    return tuple(_WORDS.findall(text.casefold().replace("’", "'").replace("_", " ")))


def _singular(word: str) -> str:
    return word[:-1] if word.endswith("s") and not word.endswith("ss") else word


@cache
def _foods() -> Mapping[str, Row]:
    return table("foods").by("key")


@cache
def _scatter() -> Mapping[str, Row]:
    return table("measuring_scatter").by("kind")


@cache
def _salts() -> Mapping[str, Row]:
    """Salts by a key of their own; the plain names ("salt") stand for table salt, which `foods` has."""
    rows = {f"salt_{row['kind']}": row for row in table("salts") if row["kind"] != "table"}
    return MappingProxyType(rows)


@cache
def _masses() -> Mapping[str, tuple[Row, ...]]:
    found: dict[str, list[Row]] = {}
    for row in (*table("household_masses"), *table("household_masses_remembered")):
        found.setdefault(row["key"], []).append(row)
    return MappingProxyType({key: tuple(rows) for key, rows in found.items()})


@cache
def _customary() -> Mapping[tuple[str, str], Row]:
    return MappingProxyType({(row["key"], row["unit"]): row for row in table("piece_masses")})


@cache
def _describing() -> frozenset[str]:
    """Words that may follow a food's name without making it another food ("parsley leaves", "carrots peeled")."""
    kinds = ("preparation", "manner", "piece_of_food", "description")
    return frozenset(word for row in table("ingredient_words") if row["kind"] in kinds for word in row["words"])


@cache
def _not_after(key: str) -> frozenset[str]:
    return frozenset(_foods()[key].get("not_after", ())) if key in _foods() else frozenset()


def _is_measured(row: Row) -> bool:
    """Whether the row is of a food with measures, not of a roast or of one line's words."""
    return row.get("key", "") in _foods() or row.get("key", "") in _salts()


def _spanish(row: Row) -> tuple[str, ...]:
    return row["es"], row.get("many", row["es"])


@cache
def _by_words() -> Mapping[tuple[str, ...], str]:
    names = {
        _words(name): row["key"] for row in table("food_names_es") if _is_measured(row) for name in _spanish(row)
    }
    names |= {_words(name): row["key"] for row in table("foods") for name in row["names"]}
    names |= {_words(name): key for key, row in _salts().items() for name in row["names"]}
    keys = dict.fromkeys((*_foods(), *_salts()))
    names |= {_words(key): key for key in keys}
    names |= {("coarse", "kosher"): "salt_coarse_kosher", ("flake", "kosher"): "salt_flake_kosher"}
    return MappingProxyType(names)
