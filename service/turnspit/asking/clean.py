"""The raw line made plain: one spelling for quotes, dashes, fractions and degrees; no markup, no control characters.

Every step is one pass over the text. Lines longer than `LONGEST` are read up to there: no question of a cook is
longer,
and what a line costs stays bounded.
"""

from __future__ import annotations

import re
import unicodedata

LONGEST = 800

_MARKUP = re.compile(r"<[a-zA-Z/!][^<>]{0,200}>")
_FRACTIONS = {
    "½": "1/2", "⅓": "1/3", "⅔": "2/3", "¼": "1/4", "¾": "3/4", "⅕": "1/5", "⅖": "2/5", "⅗": "3/5", "⅘": "4/5",
    "⅙": "1/6", "⅚": "5/6", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
}  # fmt: skip
_SIGNS = {
    **{ord(sign): f" {text} " for sign, text in _FRACTIONS.items()},
    **dict.fromkeys(map(ord, "‘’‛′`´ʼ"), "'"),
    **dict.fromkeys(map(ord, "“”„″«»"), '"'),
    **dict.fromkeys(map(ord, "‐‑‒–—−"), "-"),
    **dict.fromkeys(map(ord, "º˚°"), " deg "),
    ord("℃"): " degc ",
    ord("℉"): " degf ",
    ord("⁄"): "/",
    ord("…"): " , ",
    ord("×"): " x ",
    ord("→"): " to ",
    ord("⇒"): " to ",
    ord("ß"): "ss",
    ord("œ"): "oe",
    ord("æ"): "ae",
    ord("Œ"): "oe",
    ord("Æ"): "ae",
    ord("¿"): " ",
    ord("¡"): " ",
    ord("\u200b"): "",
    ord("\u200d"): "",
    ord("\ufe0f"): "",
    ord("\ufeff"): "",
}
# Shorthand of tickets that a slash would part: `w/ stuffing`, `w/o`, `b/in`.
_SLASHED = {
    "w/o": "without",
    "w/": "with ",
    "b/in": "bone in",
    "b/out": "boneless",
    "b/less": "boneless",
    "c/u": "cada uno",
}
_SLASHED_WORD = re.compile(r"\b(?:w/o\b|b/in\b|b/out\b|b/less\b|c/u\b|w/)")
# `B 150 / T 158`: letters stand for places where several of them stand before a reading.
_PLACE_LETTERS = re.compile(r"\b([btws])[ :=]{0,2}(\d{2,3})(?=\s*[/,;.]|\s*$|\s+[btws]\b)")
_PLACES = {"b": "breast", "t": "thigh", "w": "wing", "s": "stuffing"}
# `135c fan to 54 hrs?`, `oven 375 - minutes?`: the hours are asked for, not told.
_HOURS_ASKED = re.compile(r"((?:\bfan|\bconv|[cf]) to \d{2,3}|\b\d{3} -) (hrs|hours|mins|minutes)\b(?=\s*\?)")
# `1kg800` and `2k500` are kilograms and grams.
_KILOS_AND_GRAMS = re.compile(r"\b(\d{1,2})kg?(\d{3})\b")
_FEET = re.compile(r"(?<=\d{4}|,\d{3})'(?!\w)")
# The point of an abbreviation ends no sentence: `14 lb. turkey`, `1 c. salt to the gal. of water`.
_ABBREVIATED = re.compile(
    r"\b(lbs?|ozs?|tsps?|tbsps?|gals?|qts?|pts?|hrs?|mins?|kg|(?<=\d )c|(?<=\d)c)\.(?=,|\s+[a-z])"
)
# A refrigerator keeps as cold wherever it stands: `the garage fridge`, `fridge in the cellar`, `nevera del garaje`.
_ROOMS = r"(?:garage|basement|cellar|porch|shed|utility room|laundry room|mud ?room)"
_FRIDGE = r"(?:fridge|refrigerator|freezer)"
_FRIDGES = re.compile(
    rf"\b(?:{_ROOMS}s?|spare|second|beer|drinks) (?:beer |spare |second |extra |mini |drinks )?({_FRIDGE})\b"
    rf"|\b({_FRIDGE})(?: that'?s| that is| [wi]e? have)?(?: out| down)? in (?:the|our|my|her|his|their) {_ROOMS}\b"
    r"|\b(nevera|refri|refrigerador|frigorifico|heladera|congelador) (?:del|de la|en el|en la) "
    r"(?:garaje|cochera|sotano|patio)\b"
)
# What is said with a picture, in words. Others are passed over.
_PICTURES = {"🦃": "turkey", "🦆": "duck", "🐔": "chicken", "🐓": "chicken", "🧊": "frozen", "❄": "frozen"}
_PICTURE_SIGNS = {ord(sign): f" {word} " for sign, word in _PICTURES.items()}


def clean(text: str) -> str:
    """The line in lower case, without accents, markup and control characters, at most `LONGEST` characters of it."""
    text = text[:LONGEST]
    if not text.isascii():
        text = text.translate(_SIGNS).translate(_PICTURE_SIGNS)
        decomposed = unicodedata.normalize("NFKD", text)
        text = "".join(sign if sign.isascii() else "" if unicodedata.combining(sign) else " " for sign in decomposed)
    if "<" in text:
        text = _MARKUP.sub(" ", text)
    text = text.replace("->", " to ").replace("=>", " to ").replace("&", " and ")
    if "." in text:
        text = _ABBREVIATED.sub(r"\1", text)
    text = text.lower()
    text = _FEET.sub(" ft ", text)
    text = _FRIDGES.sub(lambda found: found.group(found.lastindex or 0), text)
    text = _HOURS_ASKED.sub(r"\1 , \2", text)
    text = _KILOS_AND_GRAMS.sub(r"\1.\2 kg", text)
    if len({found.group(1) for found in _PLACE_LETTERS.finditer(text)}) > 1:
        text = _PLACE_LETTERS.sub(lambda found: f"{_PLACES[found.group(1)]} {found.group(2)}", text)
    if "/" in text:
        text = _SLASHED_WORD.sub(lambda found: _SLASHED[found.group()], text)
    return "".join(sign if sign.isprintable() else " " for sign in text)
